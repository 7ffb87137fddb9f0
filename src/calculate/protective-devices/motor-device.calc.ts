import type { Method } from '../method.js'

export type MotorDeviceInput = Readonly<{ runningCurrentA: number; ratingFactor: number }>
export type MotorDeviceOutput = Readonly<{ highestRatedCurrentA: number }>

/**
 * Highest rating advised for the device of a d.c. motor whose maker states none.
 *
 * Formula   I_n ≤ k · I_m
 * Units     I_m of the motor at full load [A], k = 1.5; I_n [A]
 * Source    nec-430
 * Assumes   a land rule for d.c. motors, fuse or breaker; advice only
 */
export function motorDevice(q: MotorDeviceInput): MotorDeviceOutput {
  return { highestRatedCurrentA: q.ratingFactor * q.runningCurrentA }
}

export const motorDeviceMethod: Method<MotorDeviceInput, MotorDeviceOutput> = {
  id: 'device-for-motor',
  title: 'Highest rating advised for a d.c. motor',
  formula: String.raw`I_n \le k\,I_m`,
  symbols: { runningCurrentA: 'I_m', ratingFactor: 'k', highestRatedCurrentA: 'I_n' },
  citations: [{ source: 'nec-430', place: '430.52, d.c. motors' }],
  assumes: ['The value that the maker of the motor asks for comes first. A land rule, used as advice.'],
  compute: motorDevice,
  notApplicable: q => (q.runningCurrentA >= 0 && q.ratingFactor > 0 ? null : 'the current is below zero'),
  checks: [
    { origin: 'by hand', place: 'a motor of 8 A: 8 · 1.5 = 12', input: { runningCurrentA: 8, ratingFactor: 1.5 }, expected: { highestRatedCurrentA: 12 }, tolerance: 1e-9 },
  ],
}
