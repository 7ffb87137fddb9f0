import type { Method } from '../method.js'

export type ProtectionRatingInput = Readonly<{ currentCarryingCapacityA: number; permittedFactor: number }>
export type ProtectionRatingOutput = Readonly<{ largestRatedCurrentA: number }>

/**
 * The largest rating of a protective device that a conductor allows.
 *
 * Formula   In ≤ k · Iz
 * Units     Iz capacity of the conductor [A], k share that the rules permit; In [A]
 * Source    33-cfr-183 (183.455(c)): k = 1.5 below 50 V; iso-13297: k = 1
 */
export function protectionRating(q: ProtectionRatingInput): ProtectionRatingOutput {
  return { largestRatedCurrentA: q.permittedFactor * q.currentCarryingCapacityA }
}

export const protectionRatingMethod: Method<ProtectionRatingInput, ProtectionRatingOutput> = {
  id: 'protection-rating',
  title: 'Largest rating of a protective device',
  formula: String.raw`I_n \le k\,I_z`,
  symbols: { currentCarryingCapacityA: 'I_z', permittedFactor: 'k', largestRatedCurrentA: 'I_n' },
  citations: [
    { source: '33-cfr-183', place: '183.455(c)' },
    { source: 'iso-13297', place: 'overcurrent protection', standing: 'from memory' },
  ],
  assumes: [
    'The cable with the least capacity between the device and the next one decides.',
    'From 50 V on the American rule permits only the next standard rating above the capacity, and never more than 150 %.',
  ],
  compute: protectionRating,
  notApplicable: q => (q.currentCarryingCapacityA > 0 ? null : 'the current-carrying capacity is not above zero'),
  checks: [
    {
      origin: 'published', place: '33 CFR 183.455(c)(1), below 50 V: 14 AWG of 105 °C outside engine spaces, 35 A, permits 150 %',
      input: { currentCarryingCapacityA: 35, permittedFactor: 1.5 }, expected: { largestRatedCurrentA: 52.5 }, tolerance: 1e-9,
    },
    {
      origin: 'published', place: '33 CFR 183.455(c)(2), from 50 V: 14 AWG of 105 °C in an engine space with 3 conductors, 20.825 A, permits 31.2 A at most',
      input: { currentCarryingCapacityA: 20.825, permittedFactor: 1.5 }, expected: { largestRatedCurrentA: 31.2 }, tolerance: 0.05,
    },
  ],
}
