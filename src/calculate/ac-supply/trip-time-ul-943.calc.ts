import type { Method } from '../method.js'

export type TripTimeUl943Input = Readonly<{ leakageCurrentA: number }>
export type TripTimeUl943Output = Readonly<{ longestTripTimeMs: number }>

/**
 * Longest time in which a class A ground-fault circuit interrupter (5 mA nominal) has to trip.
 *
 * Formula   t = 1000 · (20 / (1000 · I_Δ))^1.43
 * Units     I_Δ current that leaks to earth [A]; t [ms]
 * Source    ul-943
 * Errors    none below 6 mA, at which it has to trip at the latest, nor above 264 mA, where the curve ends
 */
export function tripTimeUl943(q: TripTimeUl943Input): TripTimeUl943Output {
  return { longestTripTimeMs: 1000 * (20 / (1000 * q.leakageCurrentA)) ** 1.43 }
}

export const tripTimeUl943Method: Method<TripTimeUl943Input, TripTimeUl943Output> = {
  id: 'trip-time-ul-943',
  title: 'Longest trip time of a class A device (GFCI)',
  formula: String.raw`t = 1000\left(\frac{20}{1000\,I_\Delta}\right)^{1.43}`,
  symbols: { leakageCurrentA: String.raw`I_\Delta`, longestTripTimeMs: 't' },
  citations: [{ source: 'ul-943', place: 'curve of the longest trip time, class A' }],
  assumes: [],
  compute: tripTimeUl943,
  notApplicable: q => (q.leakageCurrentA >= 0.006 && q.leakageCurrentA <= 0.264 ? null : 'the curve runs from 6 mA to 264 mA'),
  checks: ([[0.006, 5590, 5], [0.03, 560, 0.5], [0.264, 25, 0.5]] as const).map(([leakageCurrentA, longestTripTimeMs, tolerance]) => ({
    origin: 'published', place: `UL 943 as repeated in makers’ leaflets (from memory): ${1000 * leakageCurrentA} mA, ${longestTripTimeMs / 1000} s`,
    input: { leakageCurrentA }, expected: { longestTripTimeMs }, tolerance,
  })),
}
