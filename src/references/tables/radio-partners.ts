/** With whom a boat usually talks, or whom she looks for, and how high their antennas stand. Common practice, no source. */
import type { Citation } from '../bibliography.js'

export interface RadioPartner { readonly key: string; readonly title: string; readonly heightM: number }

export const radioPartners: readonly RadioPartner[] = [
  { key: 'coast', title: 'Coast station', heightM: 100 },
  { key: 'masthead', title: 'Ship, or masthead of a yacht', heightM: 15 },
  { key: 'motor-boat', title: 'Motor boat', heightM: 4 },
  { key: 'handheld', title: 'Handheld, dinghy', heightM: 1.5 },
]
export const partnersCitation: Citation = { source: 'common-practice', place: 'usual heights of antennas' }
