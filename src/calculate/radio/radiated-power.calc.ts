import type { Method } from '../method.js'

export type RadiatedPowerInput = Readonly<{ antennaPowerW: number; gainDbi: number }>
export type RadiatedPowerOutput = Readonly<{ radiatedPowerW: number }>

/**
 * Equivalent isotropically radiated power (EIRP): what an antenna without gain would need for the same field in the beam's axis.
 *
 * Formula   P_EIRP = P_a · 10^(G/10)
 * Units     P_a at the antenna [W], G gain over an isotropic antenna [dBi]; P_EIRP [W]
 * Source    radio-theory
 */
export function radiatedPower(q: RadiatedPowerInput): RadiatedPowerOutput {
  return { radiatedPowerW: q.antennaPowerW * 10 ** (q.gainDbi / 10) }
}

const rows = [[25, 2.15, 41.01], [25, 3, 49.88], [25, 6, 99.53], [25, 9, 198.58], [12.5, 3, 24.94], [2, 3, 3.99], [0.672, 27, 336.8], [1.68, 27, 842], [16.25, 30, 16250]] as const

export const radiatedPowerMethod: Method<RadiatedPowerInput, RadiatedPowerOutput> = {
  id: 'radiated-power',
  title: 'Radiated power (EIRP)',
  formula: String.raw`P_{EIRP} = P_a \cdot 10^{G/10}`,
  symbols: { antennaPowerW: 'P_a', gainDbi: 'G', radiatedPowerW: 'P_{EIRP}' },
  citations: [{ source: 'radio-theory', place: 'gain in decibels' }],
  assumes: [],
  compute: radiatedPower,
  notApplicable: q => (q.antennaPowerW >= 0 ? null : 'a power is not below zero'),
  checks: rows.map(([antennaPowerW, gainDbi, radiatedPowerW]) => ({
    origin: 'by hand', place: `${antennaPowerW} W into ${gainDbi} dBi: ${antennaPowerW} · 10^${gainDbi / 10}`,
    input: { antennaPowerW, gainDbi }, expected: { radiatedPowerW }, tolerance: radiatedPowerW > 300 ? 0.05 : 0.006,
  })),
}
