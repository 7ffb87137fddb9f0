import type { Method } from '../method.js'

export type AcceptedCurrentInput = Readonly<{ recordedCurrentA: number; allowanceFactor: number }>
export type AcceptedCurrentOutput = Readonly<{ acceptedCurrentA: number }>

/**
 * Where a measured current stops being what is recorded for the load.
 *
 * Formula   I = k · I₀
 * Units     I₀, I [A]; k 1.2 of the highest current, 0.5 of the typical one
 * Source    common-practice: a clamp reads to some 3 %, a load of constant power draws up to 15 % more at the low end of its
 *           supply range, and a typical current is an average about which the load moves
 */
export function acceptedCurrent(q: AcceptedCurrentInput): AcceptedCurrentOutput {
  return { acceptedCurrentA: q.allowanceFactor * q.recordedCurrentA }
}

export const currentAllowanceFactor = { highest: 1.2, typical: 0.5 } as const
export const acceptedCurrentCitation = { source: 'common-practice', place: 'measured current: at most 1.2 times the highest, at least half of the typical current' } as const

export const acceptedCurrentMethod: Method<AcceptedCurrentInput, AcceptedCurrentOutput> = {
  id: 'accepted-current',
  title: 'Measured current against the recorded one',
  formula: String.raw`I = k\,I_0`,
  symbols: { recordedCurrentA: 'I_0', allowanceFactor: 'k', acceptedCurrentA: 'I' },
  citations: [acceptedCurrentCitation],
  assumes: ['All loads of the circuit were switched on and at work.', 'The factor covers the meter, the voltage at the time and the spread of a load about its average.'],
  compute: acceptedCurrent,
  notApplicable: q => (q.recordedCurrentA > 0 ? null : 'the recorded current is not above zero'),
  checks: [
    { origin: 'by hand', place: 'a fifth above 10 A', input: { recordedCurrentA: 10, allowanceFactor: 1.2 }, expected: { acceptedCurrentA: 12 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'half of 3 A', input: { recordedCurrentA: 3, allowanceFactor: 0.5 }, expected: { acceptedCurrentA: 1.5 }, tolerance: 1e-9 },
  ],
}
