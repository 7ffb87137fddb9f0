import type { Method } from '../method.js'

export type ExposureDistanceInput = Readonly<{ radiatedPowerW: number; groundFactor: number; limitWPerM2: number }>
export type ExposureDistanceOutput = Readonly<{ exposureDistanceM: number }>

/**
 * Distance from an antenna beyond which the power density is within a limit.
 *
 * Formula   R = √(P_EIRP · k / (4 · π · S))
 * Units     P_EIRP radiated power, averaged as the limit asks [W], k factor for reflection from the ground, S limit [W/m²]; R [m]
 * Source    fcc-oet-65
 * Assumes   far field and the beam's axis, which near the antenna makes the distance larger than it is
 */
export function exposureDistance(q: ExposureDistanceInput): ExposureDistanceOutput {
  return { exposureDistanceM: Math.sqrt((q.radiatedPowerW * q.groundFactor) / (4 * Math.PI * q.limitWPerM2)) }
}

/** Power and gain as a label, EIRP, then R at 2 W/m² with k 1, 2.56 and 4, and at 10 W/m² with k 1 and 2.56. */
const rows = [
  ['25 W, 2.15 dBi', 41.01, 1.28, 2.04, 2.55, 0.57, 0.91], ['25 W, 3 dBi', 49.88, 1.41, 2.25, 2.82, 0.63, 1.01], ['25 W, 6 dBi', 99.53, 1.99, 3.18, 3.98, 0.89, 1.42],
  ['25 W, 9 dBi', 198.58, 2.81, 4.5, 5.62, 1.26, 2.01], ['12.5 W, 3 dBi', 24.94, 1, 1.59, 1.99, 0.45, 0.71], ['2 W, 3 dBi', 3.99, 0.4, 0.64, 0.8, 0.18, 0.29],
] as const
const columns = [[2, 1], [2, 2.56], [2, 4], [10, 1], [10, 2.56]] as const
/** Radars at 10 W/m²: stopped, then turning with 4° and 1.8°. */
const radars = [['4 kW, 0.08 µs', 336.8, 1.64], ['4 kW, 0.7 µs', 842, 2.59], ['25 kW, 1 µs', 16_250, 11.37], ['4 kW, 0.08 µs, turning', 3.742, 0.17], ['4 kW, 0.7 µs, turning', 9.356, 0.27], ['25 kW, 1 µs, turning', 81.25, 0.8]] as const

export const exposureDistanceMethod: Method<ExposureDistanceInput, ExposureDistanceOutput> = {
  id: 'exposure-distance',
  title: 'Distance at which radiation comes to the limit for people',
  formula: String.raw`R = \sqrt{\frac{P_{EIRP}\,k}{4\,\pi\,S}}`,
  symbols: { radiatedPowerW: 'P_{EIRP}', groundFactor: 'k', limitWPerM2: 'S', exposureDistanceM: 'R' },
  citations: [{ source: 'fcc-oet-65', place: 'power density in the far field' }],
  assumes: ['Far field and the axis of the beam. Near the antenna that makes the distance larger than it is.', 'k is 2.56 where sea and deck reflect, 1 in a radar’s beam.'],
  compute: exposureDistance,
  notApplicable: q => (q.limitWPerM2 > 0 && q.radiatedPowerW >= 0 ? null : 'there is no limit to hold it against'),
  checks: [
    ...rows.flatMap(([what, radiatedPowerW, ...distances]) => columns.map(([limitWPerM2, groundFactor], i) => ({
      origin: 'by hand' as const, place: `${what}, k ${groundFactor}: √(${radiatedPowerW} · ${groundFactor} / (4π · ${limitWPerM2}))`,
      input: { radiatedPowerW, groundFactor, limitWPerM2 }, expected: { exposureDistanceM: distances[i]! }, tolerance: 0.0055,
    }))),
    ...radars.map(([what, radiatedPowerW, exposureDistanceM]) => ({
      origin: 'by hand' as const, place: `radar, ${what}: √(${radiatedPowerW} / (4π · 10))`, input: { radiatedPowerW, groundFactor: 1, limitWPerM2: 10 }, expected: { exposureDistanceM }, tolerance: 0.0055,
    })),
  ],
}
