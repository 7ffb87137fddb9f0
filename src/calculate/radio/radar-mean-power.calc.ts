import type { Method } from '../method.js'

export type RadarMeanPowerInput = Readonly<{ peakPowerW: number; pulseUs: number; repetitionHz: number }>
export type RadarMeanPowerOutput = Readonly<{ meanPowerW: number }>

/**
 * Mean power of a pulsed radar.
 *
 * Formula   P = P_p · τ · n / 10^6
 * Units     P_p peak [W], τ length of the pulse [µs], n pulses a second [Hz]; P [W]
 * Source    radio-theory
 */
export function radarMeanPower(q: RadarMeanPowerInput): RadarMeanPowerOutput {
  return { meanPowerW: (q.peakPowerW * q.pulseUs * q.repetitionHz) / 1e6 }
}

const rows = [[4000, 0.08, 2100, 0.672], [4000, 0.7, 600, 1.68], [25_000, 1, 650, 16.25]] as const

export const radarMeanPowerMethod: Method<RadarMeanPowerInput, RadarMeanPowerOutput> = {
  id: 'radar-mean-power',
  title: 'Mean power of a pulsed radar',
  formula: String.raw`P = \frac{P_p\,\tau\,n}{10^6}`,
  symbols: { peakPowerW: 'P_p', pulseUs: String.raw`\tau`, repetitionHz: 'n', meanPowerW: 'P' },
  citations: [{ source: 'radio-theory', place: 'mean power of pulses' }],
  assumes: ['Pulse and repetition rate belong to one range setting.'],
  compute: radarMeanPower,
  notApplicable: q => (q.pulseUs * q.repetitionHz <= 1e6 ? null : 'the pulses would overlap'),
  checks: rows.map(([peakPowerW, pulseUs, repetitionHz, meanPowerW]) => ({
    origin: 'by hand', place: `${peakPowerW} W · ${pulseUs} µs · ${repetitionHz} Hz`, input: { peakPowerW, pulseUs, repetitionHz }, expected: { meanPowerW }, tolerance: 1e-9,
  })),
}
