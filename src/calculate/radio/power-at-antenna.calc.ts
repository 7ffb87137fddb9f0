import type { Method } from '../method.js'

export type PowerAtAntennaInput = Readonly<{ powerW: number; lossDb: number }>
export type PowerAtAntennaOutput = Readonly<{ antennaPowerW: number }>

/**
 * Power that reaches the antenna.
 *
 * Formula   P_a = P · 10^(−A/10)
 * Units     P at the transmitter's connector [W], A loss on the way [dB]; P_a [W]
 * Source    radio-theory
 */
export function powerAtAntenna(q: PowerAtAntennaInput): PowerAtAntennaOutput {
  return { antennaPowerW: q.powerW * 10 ** (-q.lossDb / 10) }
}

/** Loss in dB, and what is left of 25 W. */
const rows = [
  ['10 m of RG-58 C/U', 2.067, 15.53], ['20 m of RG-58 C/U', 4.134, 9.65], ['10 m of RG-8X', 1.593, 17.33], ['20 m of RG-8X', 3.185, 12.01],
  ['20 m of low-loss cable, 6 mm', 2.033, 15.65], ['10 m of RG-213/U', 0.915, 20.25], ['20 m of RG-213/U', 1.83, 16.4], ['20 m of RG-8 foam', 1.491, 17.74],
  ['10 m of low-loss cable, 10 mm', 0.508, 22.24], ['20 m of low-loss cable, 10 mm', 1.017, 19.78], ['20 m of low-loss cable, 15 mm', 0.678, 21.39],
] as const

export const powerAtAntennaMethod: Method<PowerAtAntennaInput, PowerAtAntennaOutput> = {
  id: 'power-at-antenna',
  title: 'Power at the antenna',
  formula: String.raw`P_a = P \cdot 10^{-A/10}`,
  symbols: { powerW: 'P', lossDb: 'A', antennaPowerW: 'P_a' },
  citations: [{ source: 'radio-theory', place: 'ratio of powers in decibels' }],
  assumes: ['The antenna takes all that reaches it.'],
  compute: powerAtAntenna,
  notApplicable: q => (q.lossDb >= 0 ? null : 'a loss is not below zero'),
  checks: rows.map(([what, lossDb, antennaPowerW]) => ({
    origin: 'by hand', place: `25 W through ${what}, ${lossDb} dB: 25 · 10^(−${lossDb}/10)`,
    input: { powerW: 25, lossDb }, expected: { antennaPowerW }, tolerance: 0.007,
  })),
}
