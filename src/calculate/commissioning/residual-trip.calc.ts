import type { Method } from '../method.js'

export type ResidualTripInput = Readonly<{ ratedResidualCurrentA: number }>
export type ResidualTripOutput = Readonly<{ leastTripCurrentA: number; mostTripCurrentA: number }>

/**
 * Range in which a residual-current device must trip when the residual current rises slowly.
 *
 * Formula   I₁ = 0.5 · IΔn,   I₂ = IΔn
 * Units     [A]
 * Source    iec-61008
 * Assumes   a.c. residual current of mains frequency
 */
export function residualTrip(q: ResidualTripInput): ResidualTripOutput {
  return { leastTripCurrentA: 0.5 * q.ratedResidualCurrentA, mostTripCurrentA: q.ratedResidualCurrentA }
}

export const residualTripCitation = { source: 'iec-61008', place: 'trips between 0.5 and 1 times its rated residual current' } as const

/** At its rated residual current; what guards the whole craft has a shorter one by the basis. */
export const generalTripTimeMs = {
  relation: 'at most', value: 300, citation: { source: 'iec-61008', place: 'general type: 300 ms at its rated residual current' },
} as const

export const residualTripMethod: Method<ResidualTripInput, ResidualTripOutput> = {
  id: 'residual-trip',
  title: 'Residual current at which a device must trip',
  formula: String.raw`I_1 = 0.5\,I_{\Delta n} \qquad I_2 = I_{\Delta n}`,
  symbols: { ratedResidualCurrentA: String.raw`I_{\Delta n}`, leastTripCurrentA: 'I_1', mostTripCurrentA: 'I_2' },
  citations: [residualTripCitation],
  assumes: ['The residual current is an alternating one of mains frequency and rises slowly.', 'The trip time was read at the rated residual current.'],
  compute: residualTrip,
  // Ground-fault interrupters of class A (nominal 5 mA) trip between 4 mA and 6 mA, at times that depend on the current.
  notApplicable: q => (q.ratedResidualCurrentA > 0.006 ? null : 'a device of 6 mA or less is built to another rule, which is not calculated here'),
  checks: [
    { origin: 'published', place: 'IEC 61008 (from memory), 30 mA: trips above 15 mA and by 30 mA', input: { ratedResidualCurrentA: 0.03 }, expected: { leastTripCurrentA: 0.015, mostTripCurrentA: 0.03 }, tolerance: 1e-9 },
  ],
}
