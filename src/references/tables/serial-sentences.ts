/**
 * Length and usual rate of sentences by formatter. Lengths are counted on published examples, start and line end
 * included; where two forms are in use, the longer. How often each is sent is common practice.
 */
import type { Citation } from '../bibliography.js'

export interface UsualSentence {
  readonly what: string
  readonly lengthCharacterCount: number
  /** Null where it is sent on an event and no rate is usual. */
  readonly ratePerS: number | null
}

/** Start and line end included. */
export const longestSentence = { lengthCharacterCount: 82, citation: { source: 'iec-61162-1', place: 'length of a sentence with its start and line end' } satisfies Citation } as const

export const usualSentenceCitation: Citation = { source: 'sentence-examples', place: 'by formatter' }

const sentences: Readonly<Record<string, UsualSentence>> = {
  RMC: { what: 'position, course, speed, time', lengthCharacterCount: 77, ratePerS: 1 },
  GGA: { what: 'position and its quality', lengthCharacterCount: 67, ratePerS: 1 },
  VTG: { what: 'course and speed over ground', lengthCharacterCount: 45, ratePerS: 1 },
  ZDA: { what: 'time and date', lengthCharacterCount: 38, ratePerS: 1 },
  HDT: { what: 'true heading', lengthCharacterCount: 20, ratePerS: 10 },
  HDG: { what: 'magnetic heading', lengthCharacterCount: 29, ratePerS: 10 },
  DBT: { what: 'depth below transducer', lengthCharacterCount: 33, ratePerS: 1 },
  DPT: { what: 'depth', lengthCharacterCount: 19, ratePerS: 1 },
  MWV: { what: 'wind', lengthCharacterCount: 28, ratePerS: 1 },
  VHW: { what: 'heading and speed through water', lengthCharacterCount: 35, ratePerS: 1 },
  MTW: { what: 'water temperature', lengthCharacterCount: 18, ratePerS: 0.5 },
  RSA: { what: 'rudder angle', lengthCharacterCount: 20, ratePerS: 5 },
  XDR: { what: 'one measured value', lengthCharacterCount: 28, ratePerS: 0.5 },
  VDM: { what: 'AIS report in one sentence', lengthCharacterCount: 49, ratePerS: null },
}

/**
 * The three letters that say what a sentence is: `GPRMC` and `$GPRMC` → `RMC`. What begins with P and is longer than three
 * letters belongs to one maker and is kept whole.
 */
export function formatterOf(written: string): string {
  const address = written.trim().toUpperCase().replace(/^[$!]/, '')
  return address.length === 5 && !address.startsWith('P') ? address.slice(2) : address
}

/** Null for what is not in the table. */
export function usualSentence(written: string): UsualSentence | null {
  const formatter = formatterOf(written)
  return Object.hasOwn(sentences, formatter) ? sentences[formatter]! : null
}
