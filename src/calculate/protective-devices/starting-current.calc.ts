import type { Method } from '../method.js'

export type StartingCurrentInput = Readonly<{ startingCurrentA: number; otherCurrentA: number }>
export type StartingCurrentOutput = Readonly<{ highestCurrentA: number }>

/**
 * Current through a device while one of its loads starts and the others run.
 *
 * Formula   I_h = I_a + I_r
 * Units     I_a of the load that starts, I_r of the other loads of the circuit [A]; I_h [A]
 * Source    circuit-theory
 * Assumes   one load starts at a time
 */
export function startingCurrent(q: StartingCurrentInput): StartingCurrentOutput {
  return { highestCurrentA: q.startingCurrentA + q.otherCurrentA }
}

export const startingCurrentMethod: Method<StartingCurrentInput, StartingCurrentOutput> = {
  id: 'starting-current',
  title: 'Current while a load starts',
  formula: String.raw`I_h = I_a + I_r`,
  symbols: { startingCurrentA: 'I_a', otherCurrentA: 'I_r', highestCurrentA: 'I_h' },
  citations: [{ source: 'circuit-theory', place: 'currents add at a node' }],
  assumes: ['One load of the circuit starts at a time while the others run.'],
  compute: startingCurrent,
  notApplicable: q => (q.startingCurrentA >= 0 && q.otherCurrentA >= 0 ? null : 'a current is below zero'),
  checks: [
    { origin: 'by hand', place: 'a pump that starts with 18 A beside a lamp of 2 A: 18 + 2', input: { startingCurrentA: 18, otherCurrentA: 2 }, expected: { highestCurrentA: 20 }, tolerance: 1e-9 },
  ],
}
