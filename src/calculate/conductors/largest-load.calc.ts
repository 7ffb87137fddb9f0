import type { Method } from '../method.js'
import { noDropLeft } from './minimum-cross-section.calc.js'
import { abycConstant, abycConstantCitation } from './voltage-drop-by-abyc-constant.calc.js'
import { isoConstantCitation, isoConstantOhmMm2PerM } from './voltage-drop-by-iso-constant.calc.js'

export type IsoLargestLoadInput = Readonly<{
  allowedDropV: number
  crossSectionMm2: number
  conductorLengthM: number
  currentCarryingCapacityA: number
}>
export type AbycLargestLoadInput = Readonly<{
  allowedDropV: number
  conductorAreaCmil: number
  conductorLengthFt: number
  currentCarryingCapacityA: number
}>
export type LargestLoadOutput = Readonly<{ largestCurrentA: number }>

/**
 * The largest current that a fitted cable allows, by the constant of the small-craft standard.
 *
 * Formula   I = min(E · S / (0.0164 · L), Iz)
 * Units     E allowed drop [V], S [mm²], L conductor length out and back [m], Iz capacity [A]; I [A]
 * Source    iso-13297
 */
export function largestLoadByIsoConstant(q: IsoLargestLoadInput): LargestLoadOutput {
  const byDropA = (q.allowedDropV * q.crossSectionMm2) / (isoConstantOhmMm2PerM * q.conductorLengthM)
  return { largestCurrentA: Math.min(byDropA, q.currentCarryingCapacityA) }
}

/**
 * The largest current that a fitted cable allows, by the constant of the American standard.
 *
 * Formula   I = min(E · CM / (K · L), Iz), with K = 10.75
 * Units     E allowed drop [V], CM [cmil], L conductor length out and back [ft], Iz capacity [A]; I [A]
 * Source    abyc-e11
 */
export function largestLoadByAbycConstant(q: AbycLargestLoadInput): LargestLoadOutput {
  const byDropA = (q.allowedDropV * q.conductorAreaCmil) / (abycConstant * q.conductorLengthFt)
  return { largestCurrentA: Math.min(byDropA, q.currentCarryingCapacityA) }
}

const assumes = ['The whole of the allowed drop is spent in this cable; feeders above it take their share first.']

export const largestLoadByIsoConstantMethod: Method<IsoLargestLoadInput, LargestLoadOutput> = {
  id: 'largest-load-by-iso-constant',
  title: 'Largest load of a cable, by the constant of ISO 13297',
  formula: String.raw`I = \min\left(\frac{E\,S}{0.0164\,L},\; I_z\right)`,
  symbols: { allowedDropV: 'E', crossSectionMm2: 'S', conductorLengthM: 'L', currentCarryingCapacityA: 'I_z', largestCurrentA: 'I' },
  citations: [isoConstantCitation],
  assumes,
  compute: largestLoadByIsoConstant,
  notApplicable: noDropLeft,
  checks: [
    {
      origin: 'by hand', place: '6 mm², 24 m out and back, 3 % of 12 V: 0.36 · 6 / (0.0164 · 24) = 2.16 / 0.3936, below the capacity of 60 A',
      input: { allowedDropV: 0.36, crossSectionMm2: 6, conductorLengthM: 24, currentCarryingCapacityA: 60 },
      expected: { largestCurrentA: 5.4878 }, tolerance: 5e-5,
    },
    {
      origin: 'by hand', place: 'the same cable 0.5 m out and back would lose little enough for 263 A; its capacity of 60 A decides',
      input: { allowedDropV: 0.36, crossSectionMm2: 6, conductorLengthM: 0.5, currentCarryingCapacityA: 60 },
      expected: { largestCurrentA: 60 }, tolerance: 1e-9,
    },
  ],
}

export const largestLoadByAbycConstantMethod: Method<AbycLargestLoadInput, LargestLoadOutput> = {
  id: 'largest-load-by-abyc-constant',
  title: 'Largest load of a cable, by the constant of ABYC E-11',
  formula: String.raw`I = \min\left(\frac{E\,CM}{10.75\,L},\; I_z\right)`,
  symbols: { allowedDropV: 'E', conductorAreaCmil: 'CM', conductorLengthFt: 'L', currentCarryingCapacityA: 'I_z', largestCurrentA: 'I' },
  citations: [abycConstantCitation],
  assumes,
  compute: largestLoadByAbycConstant,
  notApplicable: noDropLeft,
  checks: [
    {
      origin: 'by hand', place: '12 AWG taken as 6530 cmil, 40 ft out and back, 10 % of 12 V: 1.2 · 6530 / (10.75 · 40) = 7836 / 430, below the capacity of 45 A',
      input: { allowedDropV: 1.2, conductorAreaCmil: 6530, conductorLengthFt: 40, currentCarryingCapacityA: 45 },
      expected: { largestCurrentA: 18.223 }, tolerance: 5e-4,
    },
  ],
}
