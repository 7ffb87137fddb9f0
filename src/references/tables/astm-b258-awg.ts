/**
 * American Wire Gauge by its defining formula (astm-b258): each size is the 39th root of 92 thinner than the one before.
 *
 * Formula   d = 0.005 in · 92^((36 − n)/39), with n = 0, −1, −2, −3 for 1/0 … 4/0
 * Units     d [in]; the areas below in mm² and in circular mils, 1 cmil being the square of a diameter of 0.001 in
 */
import type { Citation } from '../bibliography.js'
import type { ConductorSize } from '../../units/conductor-size.js'

export const awgCitation: Citation = { source: 'astm-b258', place: 'formula of the diameter' }

/** Sizes in common use on boats, thin to thick. */
export const awgSizes = [
  '24', '22', '20', '18', '16', '14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0',
] as const
const thinnest = 24

/** The n of the formula: 14 for "14", −1 for "2/0" or "00". Null when it is no gauge from 24 to 4/0. */
export function awgNumber(designation: string): number | null {
  const aught = /^([1-4])\/0$/.exec(designation)?.[1]
  if (aught !== undefined) return 1 - Number(aught)
  if (/^0{1,4}$/.test(designation)) return 1 - designation.length
  if (!/^[1-9]\d?$/.test(designation)) return null
  const n = Number(designation)
  return n <= thinnest ? n : null
}

const designationOf = (n: number): string => (n > 0 ? String(n) : `${1 - n}/0`)
const diameterInch = (n: number): number => 0.005 * 92 ** ((36 - n) / 39)

/** Area in mm² of the gauge number n. */
export const awgAreaMm2 = (n: number): number => (Math.PI / 4) * (25.4 * diameterInch(n)) ** 2

/** The gauge as a conductor size, or null when the designation is no gauge from 24 to 4/0. */
export function awgSize(designation: string): ConductorSize | null {
  const n = awgNumber(designation)
  return n === null ? null : { system: 'awg', designation: designationOf(n), crossSectionMm2: awgAreaMm2(n) }
}
