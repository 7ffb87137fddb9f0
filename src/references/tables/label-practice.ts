/** What labels are read from, and what is usual on them. */
import type { Citation } from '../bibliography.js'

/** From where a label is read, and how many times the height of its letters that may be. */
export interface Reading { readonly readingDistanceMm: number; readonly distanceFactor: number; readonly citation: Citation }

const heights = (place: string): Citation => ({ source: 'ansi-z535', place: `one unit of height for ${place}, favourable conditions; the distance is common practice` })

/** Held in the hand, or bent down to. The distance is common practice, no source. */
export const closeReading: Reading = { readingDistanceMm: 500, distanceFactor: 300, citation: heights('300 of distance, from 0.5 m') }
/** At arm's length, before the cover is opened. The distance is common practice, no source. */
export const dangerReading: Reading = { readingDistanceMm: 750, distanceFactor: 300, citation: heights('300 of distance, from 0.75 m') }
export const signalReading: Reading = { readingDistanceMm: 750, distanceFactor: 150, citation: heights('150 of distance for signal words, from 0.75 m') }

/** Larger letters make a label no clearer. Common practice, no source. */
export const largestLetterMm = { signal: 9, tag: 7, words: 3.6 } as const

/** Nearer than that to an antenna is only who works on it: no label warns of less. Common practice, no source. */
export const leastWarnedDistanceM = 0.3

/** Left free inside a label, and from the edge of the sheet, where printers do not print. Common practice, no source. */
export const labelMarginMm = { sheet: 1.5, wrap: 1.2, pageEdge: 5 } as const

/**
 * A code is read when each of its modules has four dots of a label printer of 300 dots to the inch: 4 · 25.4 / 300. Four dots a
 * module are the published advice of the code's inventor; the printer is common practice.
 */
export const leastModuleMm = (4 * 25.4) / 300
/** Around the code (ISO/IEC 18004, from memory), in modules. */
export const quietZoneModuleCount = 4
/** The largest code on a label: more is not read any better from the hand. Common practice, no source. */
export const largestCodeMm = 25
/** A code of 29 modules (42 letters at level M) with its quiet zone, at the least module. */
export const leastCodeMm = (29 + 2 * quietZoneModuleCount) * leastModuleMm

/** By what a label is as it is. */
export const labelCitations = {
  bothEnds: { source: 'iec-62491', place: 'each end of a cable carries the cable’s own designation' },
  code: { source: 'iso-18004', place: 'error correction M, quiet zone of four modules' },
} as const satisfies Record<string, Citation>
