import type { Method } from '../method.js'

export type StandingWaveBehindCableInput = Readonly<{ antennaVswrFactor: number; lossDb: number }>
export type StandingWaveBehindCableOutput = Readonly<{ readReturnLossDb: number; readVswrFactor: number }>

/**
 * Standing wave ratio read at the near end of a cable whose far end carries an antenna of known ratio.
 *
 * Formula   RL = −20 · log((S_a − 1)/(S_a + 1)) + 2 · A,   S = (1 + 10^(−RL/20))/(1 − 10^(−RL/20))
 * Units     S_a at the antenna, A loss of the cable one way [dB]; RL return loss at the near end [dB], S read there
 * Source    radio-theory
 * Assumes   cable and connectors reflect nothing themselves: what comes back has gone through the cable twice
 */
export function standingWaveBehindCable({ antennaVswrFactor, lossDb }: StandingWaveBehindCableInput): StandingWaveBehindCableOutput {
  const readReturnLossDb = -20 * Math.log10((antennaVswrFactor - 1) / (antennaVswrFactor + 1)) + 2 * lossDb
  const reflection = 10 ** (-readReturnLossDb / 20)
  return { readReturnLossDb, readVswrFactor: (1 + reflection) / (1 - reflection) }
}

export const standingWaveBehindCableMethod: Method<StandingWaveBehindCableInput, StandingWaveBehindCableOutput> = {
  id: 'standing-wave-behind-cable',
  title: 'Standing wave ratio to be read behind a cable',
  formula: String.raw`RL = -20\,\lg\frac{S_a - 1}{S_a + 1} + 2\,A \qquad S = \frac{1 + 10^{-RL/20}}{1 - 10^{-RL/20}}`,
  symbols: { antennaVswrFactor: 'S_a', lossDb: 'A', readReturnLossDb: 'RL', readVswrFactor: 'S' },
  citations: [{ source: 'radio-theory', place: 'reflection on a line with loss' }],
  assumes: ['Cable and connectors reflect nothing themselves; what comes back has gone through the cable twice.'],
  compute: standingWaveBehindCable,
  notApplicable: q => (q.antennaVswrFactor > 1 && q.lossDb >= 0 ? null : 'at a standing wave ratio of 1 nothing comes back, whatever the cable'),
  checks: [
    {
      origin: 'by hand', place: 'antenna of 1.5, Γ 1/5, no loss: 1.5 is read',
      input: { antennaVswrFactor: 1.5, lossDb: 0 }, expected: { readReturnLossDb: 13.979, readVswrFactor: 1.5 }, tolerance: 1e-3,
    },
    {
      origin: 'by hand', place: 'antenna of 3, Γ 1/2; 3.0103 dB halve the wave on its way and back: Γ 1/4, (1 + 1/4)/(1 − 1/4) = 1.667',
      input: { antennaVswrFactor: 3, lossDb: 3.0103 }, expected: { readReturnLossDb: 12.041, readVswrFactor: 1.6667 }, tolerance: 1e-3,
    },
    {
      origin: 'by hand', place: 'antenna of 2, Γ 1/3; 3.0103 dB: Γ 1/6, (7/6)/(5/6) = 1.4',
      input: { antennaVswrFactor: 2, lossDb: 3.0103 }, expected: { readReturnLossDb: 15.563, readVswrFactor: 1.4 }, tolerance: 1e-3,
    },
  ],
}
