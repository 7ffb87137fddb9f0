import type { Method } from '../method.js'

export type TripTimeIec61008Input = Readonly<{ leakageCurrentA: number; residualCurrentA: number }>
export type TripTimeIec61008Output = Readonly<{ longestTripTimeMs: number }>

/**
 * Longest time in which a residual-current device of the general type has to trip, by how far the leakage is above its
 * rated residual current.
 *
 * Formula   t = 300 ms from once, 150 ms from twice, 40 ms from five times I_Δn
 * Units     I_Δ current that leaks to earth [A], I_Δn rated residual current [A]; t [ms]
 * Source    iec-61008
 * Errors    none below the rated residual current: it need not trip
 */
export function tripTimeIec61008({ leakageCurrentA, residualCurrentA }: TripTimeIec61008Input): TripTimeIec61008Output {
  const [, longestTripTimeMs] = steps.find(([times]) => leakageCurrentA >= times * residualCurrentA * (1 - 1e-9))!
  return { longestTripTimeMs }
}
const steps = [[5, 40], [2, 150], [0, 300]] as const

export const tripTimeIec61008Method: Method<TripTimeIec61008Input, TripTimeIec61008Output> = {
  id: 'trip-time-iec-61008',
  title: 'Longest trip time of a residual-current device, general type',
  formula: String.raw`t = \begin{cases} 40 & I_\Delta \ge 5\,I_{\Delta n} \\ 150 & 2\,I_{\Delta n} \le I_\Delta < 5\,I_{\Delta n} \\ 300 & I_{\Delta n} \le I_\Delta < 2\,I_{\Delta n} \end{cases}`,
  symbols: { leakageCurrentA: String.raw`I_\Delta`, residualCurrentA: String.raw`I_{\Delta n}`, longestTripTimeMs: 't' },
  citations: [{ source: 'iec-61008', place: 'table of trip times, general type' }],
  assumes: [],
  compute: tripTimeIec61008,
  notApplicable: q => (q.leakageCurrentA >= q.residualCurrentA && q.residualCurrentA > 0 ? null : 'below its rated residual current it need not trip'),
  checks: ([[0.03, 300], [0.06, 150], [0.15, 40]] as const).map(([leakageCurrentA, longestTripTimeMs]) => ({
    origin: 'published', place: `IEC 61008 table of trip times, general type (from memory): ${1000 * leakageCurrentA} mA at a device of 30 mA`,
    input: { leakageCurrentA, residualCurrentA: 0.03 }, expected: { longestTripTimeMs }, tolerance: 1e-9,
  })),
}
