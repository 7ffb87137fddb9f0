import type { Method } from '../method.js'

export type ContinuousLoadInput = Readonly<{ continuousCurrentA: number; ratingFactor: number }>
export type ContinuousLoadOutput = Readonly<{ leastRatedCurrentA: number }>

/**
 * Least rating of a device for a load that runs 3 h or more without a break.
 *
 * Formula   I_n ≥ k · I_d
 * Units     I_d the lasting current [A], k = 1.25; I_n [A]
 * Source    nec-210
 * Assumes   the device is not one that is rated for 100 % of its value
 */
export function continuousLoad(q: ContinuousLoadInput): ContinuousLoadOutput {
  return { leastRatedCurrentA: q.ratingFactor * q.continuousCurrentA }
}

export const continuousLoadMethod: Method<ContinuousLoadInput, ContinuousLoadOutput> = {
  id: 'device-for-continuous-load',
  title: 'Least rating for a load that runs on and on',
  formula: String.raw`I_n \ge k\,I_d`,
  symbols: { continuousCurrentA: 'I_d', ratingFactor: 'k', leastRatedCurrentA: 'I_n' },
  citations: [{ source: 'nec-210', place: '210.20(A)', standing: 'published' }],
  assumes: ['A device that is rated for 100 % of its value is exempt (from memory). What runs for less than 3 h at a time does not count here.'],
  compute: continuousLoad,
  notApplicable: q => (q.continuousCurrentA >= 0 && q.ratingFactor >= 1 ? null : 'the current is below zero'),
  checks: [
    { origin: 'published', place: 'a catalogue of fuse holders: a 40 A fuse carries 32 A continuously', input: { continuousCurrentA: 32, ratingFactor: 1.25 }, expected: { leastRatedCurrentA: 40 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '12 A without a break: 12 · 1.25 = 15', input: { continuousCurrentA: 12, ratingFactor: 1.25 }, expected: { leastRatedCurrentA: 15 }, tolerance: 1e-9 },
  ],
}
