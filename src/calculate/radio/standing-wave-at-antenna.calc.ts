import type { Method } from '../method.js'

export type StandingWaveAtAntennaInput = Readonly<{ readVswrFactor: number; lossDb: number }>
export type StandingWaveAtAntennaOutput = Readonly<{ antennaReturnLossDb: number; antennaVswrFactor: number }>

/**
 * Standing wave ratio of an antenna, from what was read at the near end of its cable.
 *
 * Formula   RL_a = −20 · log((S − 1)/(S + 1)) − 2 · A,   S_a = (1 + 10^(−RL_a/20))/(1 − 10^(−RL_a/20))
 * Units     S read, A loss of the cable one way [dB]; RL_a return loss at the antenna [dB], S_a there
 * Source    radio-theory
 * Assumes   cable and connectors reflect nothing themselves
 * Errors    none where that leaves a return loss of nothing or less: no antenna reflects more than it gets
 */
export function standingWaveAtAntenna({ readVswrFactor, lossDb }: StandingWaveAtAntennaInput): StandingWaveAtAntennaOutput {
  const antennaReturnLossDb = returnLossBehind(readVswrFactor, lossDb)
  const reflection = 10 ** (-antennaReturnLossDb / 20)
  return { antennaReturnLossDb, antennaVswrFactor: (1 + reflection) / (1 - reflection) }
}

const returnLossBehind = (readVswrFactor: number, lossDb: number): number => -20 * Math.log10((readVswrFactor - 1) / (readVswrFactor + 1)) - 2 * lossDb

/** Whether any antenna at the end of that cable, an open end included, could give the reading. */
export const isExplained = ({ readVswrFactor, lossDb }: StandingWaveAtAntennaInput): boolean => readVswrFactor <= 1 || returnLossBehind(readVswrFactor, lossDb) > 0

export const standingWaveAtAntennaMethod: Method<StandingWaveAtAntennaInput, StandingWaveAtAntennaOutput> = {
  id: 'standing-wave-at-antenna',
  title: 'Standing wave ratio at the antenna, from a reading behind a cable',
  formula: String.raw`RL_a = -20\,\lg\frac{S - 1}{S + 1} - 2\,A \qquad S_a = \frac{1 + 10^{-RL_a/20}}{1 - 10^{-RL_a/20}}`,
  symbols: { readVswrFactor: 'S', lossDb: 'A', antennaReturnLossDb: 'RL_a', antennaVswrFactor: 'S_a' },
  citations: [{ source: 'radio-theory', place: 'reflection on a line with loss' }],
  assumes: ['Cable and connectors reflect nothing themselves; what comes back has gone through the cable twice.', 'The loss is as calculated. A cable that lost more, as a wet one does, would mean an antenna that is worse.'],
  compute: standingWaveAtAntenna,
  notApplicable: q => (q.readVswrFactor <= 1 ? 'at a standing wave ratio of 1 nothing comes back, whatever the cable'
    : isExplained(q) ? null : 'more comes back than an open end of the cable would send'),
  checks: [
    {
      origin: 'by hand', place: '1.4 read, Γ 1/6; 3.0103 dB double it: Γ 1/3, VSWR 2',
      input: { readVswrFactor: 1.4, lossDb: 3.0103 }, expected: { antennaReturnLossDb: 9.542, antennaVswrFactor: 2 }, tolerance: 1e-3,
    },
    {
      origin: 'by hand', place: '5/3 read, Γ 1/4; 3.0103 dB: Γ 1/2, VSWR 3',
      input: { readVswrFactor: 5 / 3, lossDb: 3.0103 }, expected: { antennaReturnLossDb: 6.021, antennaVswrFactor: 3 }, tolerance: 1e-3,
    },
    { origin: 'by hand', place: '1.2 read at the antenna itself', input: { readVswrFactor: 1.2, lossDb: 0 }, expected: { antennaReturnLossDb: 20.828, antennaVswrFactor: 1.2 }, tolerance: 1e-3 },
  ],
}
