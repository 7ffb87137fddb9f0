import type { Method } from '../method.js'
import { abycConstant, abycConstantCitation } from './voltage-drop-by-abyc-constant.calc.js'
import { isoConstantCitation, isoConstantOhmMm2PerM } from './voltage-drop-by-iso-constant.calc.js'

export type IsoLongestRunInput = Readonly<{ allowedDropV: number; crossSectionMm2: number; currentA: number }>
export type IsoLongestRunOutput = Readonly<{ conductorLengthM: number; oneWayLengthM: number }>
export type AbycLongestRunInput = Readonly<{ allowedDropV: number; conductorAreaCmil: number; currentA: number }>
export type AbycLongestRunOutput = Readonly<{ conductorLengthFt: number; oneWayLengthFt: number }>

/**
 * The longest way that a given cable can carry a given current, by the constant of the small-craft standard.
 *
 * Formula   L = E · S / (0.0164 · I),   l = L / 2
 * Units     E allowed drop [V], S [mm²], I [A]; L conductor length out and back, l one way [m]
 * Source    iso-13297
 */
export function longestRunByIsoConstant(q: IsoLongestRunInput): IsoLongestRunOutput {
  const conductorLengthM = (q.allowedDropV * q.crossSectionMm2) / (isoConstantOhmMm2PerM * q.currentA)
  return { conductorLengthM, oneWayLengthM: conductorLengthM / 2 }
}

/**
 * The longest way that a given cable can carry a given current, by the constant of the American standard.
 *
 * Formula   L = E · CM / (K · I),   l = L / 2, with K = 10.75
 * Units     E allowed drop [V], CM [cmil], I [A]; L conductor length out and back, l one way [ft]
 * Source    abyc-e11
 */
export function longestRunByAbycConstant(q: AbycLongestRunInput): AbycLongestRunOutput {
  const conductorLengthFt = (q.allowedDropV * q.conductorAreaCmil) / (abycConstant * q.currentA)
  return { conductorLengthFt, oneWayLengthFt: conductorLengthFt / 2 }
}

const noCurrent = (q: { readonly currentA: number }): string | null => (q.currentA > 0 ? null : 'without a current any length will do')
const assumes = ['The whole of the allowed drop is spent in this cable; feeders above it take their share first.']

export const longestRunByIsoConstantMethod: Method<IsoLongestRunInput, IsoLongestRunOutput> = {
  id: 'longest-run-by-iso-constant',
  title: 'Longest run of a cable, by the constant of ISO 13297',
  formula: String.raw`L = \frac{E\,S}{0.0164\,I} \qquad l = L/2`,
  symbols: { allowedDropV: 'E', crossSectionMm2: 'S', currentA: 'I', conductorLengthM: 'L', oneWayLengthM: 'l' },
  citations: [isoConstantCitation],
  assumes,
  compute: longestRunByIsoConstant,
  notApplicable: noCurrent,
  checks: [
    {
      origin: 'by hand', place: '6 mm², 5 A, 3 % of 12 V: 0.36 · 6 / (0.0164 · 5) = 2.16 / 0.082',
      input: { allowedDropV: 0.36, crossSectionMm2: 6, currentA: 5 }, expected: { conductorLengthM: 26.341, oneWayLengthM: 13.171 }, tolerance: 5e-4,
    },
  ],
}

export const longestRunByAbycConstantMethod: Method<AbycLongestRunInput, AbycLongestRunOutput> = {
  id: 'longest-run-by-abyc-constant',
  title: 'Longest run of a cable, by the constant of ABYC E-11',
  formula: String.raw`L = \frac{E\,CM}{10.75\,I} \qquad l = L/2`,
  symbols: { allowedDropV: 'E', conductorAreaCmil: 'CM', currentA: 'I', conductorLengthFt: 'L', oneWayLengthFt: 'l' },
  citations: [abycConstantCitation],
  assumes,
  compute: longestRunByAbycConstant,
  notApplicable: noCurrent,
  checks: [
    {
      origin: 'by hand', place: '12 AWG taken as 6530 cmil, 10 A, 3 % of 12 V: 0.36 · 6530 / 107.5 = 2350.8 / 107.5',
      input: { allowedDropV: 0.36, conductorAreaCmil: 6530, currentA: 10 }, expected: { conductorLengthFt: 21.868, oneWayLengthFt: 10.934 }, tolerance: 5e-4,
    },
  ],
}
