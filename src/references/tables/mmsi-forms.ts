/** The forms of maritime mobile service identities: what the first digits say. `MID` stands for maritime identification digits. */
import type { Citation } from '../bibliography.js'

export interface MmsiForm {
  /** As the recommendation writes it: X is any digit. */
  readonly pattern: string
  readonly use: string
  /** Digits that stand first, before the maritime identification digits where it has them. */
  readonly prefix: string
  readonly hasMid: boolean
}

const form = (pattern: string, use: string): MmsiForm => {
  const hasMid = pattern.includes('MID')
  return { pattern, use, prefix: (hasMid ? pattern.split('MID')[0] : /^\d+/.exec(pattern)?.[0]) ?? '', hasMid }
}

export const mmsiForms = {
  'ship': form('MIDXXXXXX', 'ship station'),
  'group': form('0MIDXXXXX', 'group of ship stations'),
  'coast': form('00MIDXXXX', 'coast station'),
  'rescue aircraft': form('111MIDXXX', 'aircraft in search and rescue'),
  'aid to navigation': form('99MIDXXXX', 'AIS aid to navigation'),
  'associated craft': form('98MIDXXXX', 'craft associated with a parent ship'),
  'handheld': form('8MIDXXXXX', 'handheld radio with DSC'),
  'rescue transmitter': form('970XXYYYY', 'AIS search and rescue transmitter (AIS-SART)'),
  'man overboard': form('972XXYYYY', 'person overboard device'),
  'beacon': form('974XXYYYY', 'AIS transmitter of a distress beacon (EPIRB-AIS)'),
} as const satisfies Record<string, MmsiForm>
export type MmsiFormKey = keyof typeof mmsiForms

/** "a ship station", "an AIS aid to navigation" */
export const aStation = (key: MmsiFormKey): string => `${/^[aeiou]/i.test(mmsiForms[key].use) ? 'an' : 'a'} ${mmsiForms[key].use}`

/** The longest first digits decide: 00 is a coast station, not a group. */
export const mmsiFormKeys = (Object.keys(mmsiForms) as MmsiFormKey[]).toSorted((a, b) => mmsiForms[b].prefix.length - mmsiForms[a].prefix.length)

/** Maritime identification digits are given out within these. */
export const lowestMid = 201
export const highestMid = 775

export const mmsiCitation: Citation = { source: 'itu-m585', place: 'annexes 1 and 2' }
