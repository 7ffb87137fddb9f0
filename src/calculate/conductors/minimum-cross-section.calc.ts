import type { Method } from '../method.js'
import { abycConstant, abycConstantCitation } from './voltage-drop-by-abyc-constant.calc.js'
import { isoConstantCitation, isoConstantOhmMm2PerM } from './voltage-drop-by-iso-constant.calc.js'

export type IsoMinimumInput = Readonly<{ currentA: number; conductorLengthM: number; allowedDropV: number }>
export type IsoMinimumOutput = Readonly<{ minimumCrossSectionMm2: number }>
export type AbycMinimumInput = Readonly<{ currentA: number; conductorLengthFt: number; allowedDropV: number }>
export type AbycMinimumOutput = Readonly<{ minimumAreaCmil: number }>

/**
 * Smallest cross-section that keeps to an allowed voltage drop, by the constant of the small-craft standard.
 *
 * Formula   S = 0.0164 · I · L / E
 * Units     I [A], L conductor length out and back [m], E allowed drop [V]; S [mm²]
 * Source    iso-13297
 */
export function minimumCrossSectionByIsoConstant(q: IsoMinimumInput): IsoMinimumOutput {
  return { minimumCrossSectionMm2: (isoConstantOhmMm2PerM * q.currentA * q.conductorLengthM) / q.allowedDropV }
}

/**
 * Smallest area that keeps to an allowed voltage drop, by the constant of the American standard.
 *
 * Formula   CM = K · I · L / E, with K = 10.75
 * Units     I [A], L conductor length out and back [ft], E allowed drop [V]; CM [cmil]
 * Source    abyc-e11
 */
export function minimumAreaByAbycConstant(q: AbycMinimumInput): AbycMinimumOutput {
  return { minimumAreaCmil: (abycConstant * q.currentA * q.conductorLengthFt) / q.allowedDropV }
}

export const noDropLeft = (q: { readonly allowedDropV: number }): string | null => (q.allowedDropV > 0 ? null : 'no voltage drop is left for this circuit')
const assumes = ['L is the length of conductor out and back.', 'When the result falls between two sizes, the larger one is taken.']

export const minimumCrossSectionByIsoConstantMethod: Method<IsoMinimumInput, IsoMinimumOutput> = {
  id: 'minimum-cross-section-by-iso-constant',
  title: 'Smallest cross-section for a voltage drop, by the constant of ISO 13297',
  formula: String.raw`S = \frac{0.0164\,I\,L}{E}`,
  symbols: { currentA: 'I', conductorLengthM: 'L', allowedDropV: 'E', minimumCrossSectionMm2: 'S' },
  citations: [isoConstantCitation],
  assumes,
  compute: minimumCrossSectionByIsoConstant,
  notApplicable: noDropLeft,
  checks: [
    {
      origin: 'by hand', place: '12 V, 3 %, 5 A, 12 m each way: 0.0164 · 5 · 24 / 0.36 = 1.968 / 0.36',
      input: { currentA: 5, conductorLengthM: 24, allowedDropV: 0.36 }, expected: { minimumCrossSectionMm2: 5.467 }, tolerance: 5e-4,
    },
  ],
}

export const minimumAreaByAbycConstantMethod: Method<AbycMinimumInput, AbycMinimumOutput> = {
  id: 'minimum-area-by-abyc-constant',
  title: 'Smallest area for a voltage drop, by the constant of ABYC E-11',
  formula: String.raw`CM = \frac{10.75\,I\,L}{E}`,
  symbols: { currentA: 'I', conductorLengthFt: 'L', allowedDropV: 'E', minimumAreaCmil: 'CM' },
  citations: [abycConstantCitation],
  assumes,
  compute: minimumAreaByAbycConstant,
  notApplicable: noDropLeft,
  checks: [
    {
      origin: 'published', place: 'distributor’s guide: 12 V, 3 %, 10 A, 11 ft out and 10 ft back, 6270.8 cmil',
      input: { currentA: 10, conductorLengthFt: 21, allowedDropV: 0.36 }, expected: { minimumAreaCmil: 6270.8 }, tolerance: 0.05,
    },
    {
      origin: 'published', place: 'distributor’s guide: the same at 10 %, 1881.3 cmil',
      input: { currentA: 10, conductorLengthFt: 21, allowedDropV: 1.2 }, expected: { minimumAreaCmil: 1881.3 }, tolerance: 0.05,
    },
    {
      origin: 'published', place: 'chart for 12 V and 3 %: 30 A over 50 ft out and back needs 44 791.7 cmil',
      input: { currentA: 30, conductorLengthFt: 50, allowedDropV: 0.36 }, expected: { minimumAreaCmil: 44791.7 }, tolerance: 0.05,
    },
  ],
}
