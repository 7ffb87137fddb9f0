import type { Method } from '../method.js'

export type DailyChargeInput = Readonly<{ currentA: number; timeH: number; dutyPercent: number; carriedAh: number }>
export type DailyChargeOutput = Readonly<{ chargeAh: number; totalAh: number }>

/**
 * Charge that a load takes from the battery in a day, and the sum with what the loads before it take.
 *
 * Formula   Q = I · t · d / 100,   Q_Σ = Q_0 + Q
 * Units     I current while it runs [A], t time in a day [h], d share of that current on average [%], Q_0 carried forward [Ah]
 * Source    circuit-theory
 * Assumes   the current is an average at the nominal voltage
 */
export function dailyCharge(q: DailyChargeInput): DailyChargeOutput {
  const chargeAh = (q.currentA * q.timeH * q.dutyPercent) / 100
  return { chargeAh, totalAh: q.carriedAh + chargeAh }
}

export const dailyChargeMethod: Method<DailyChargeInput, DailyChargeOutput> = {
  id: 'daily-load-charge',
  title: 'Charge that a load takes in a day',
  formula: String.raw`Q = I\,t\,d/100 \qquad Q_\Sigma = Q_0 + Q`,
  symbols: { currentA: 'I', timeH: 't', dutyPercent: 'd', carriedAh: 'Q_0', chargeAh: 'Q', totalAh: String.raw`Q_\Sigma` },
  citations: [{ source: 'circuit-theory', place: 'charge is current times time' }],
  assumes: ['A load counts with the current of its duty, else its typical current, else its maximum current, else its power over the nominal voltage.'],
  compute: dailyCharge,
  notApplicable: q => (q.currentA >= 0 && q.timeH >= 0 && q.timeH <= 24 && q.dutyPercent >= 0 ? null : 'a current, a time or a duty is out of range'),
  checks: [
    {
      origin: 'by hand', place: 'a refrigerator of 4.5 A all day, running 45 % of the time: 4.5 · 24 · 0.45',
      input: { currentA: 4.5, timeH: 24, dutyPercent: 45, carriedAh: 0 }, expected: { chargeAh: 48.6 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'an autopilot of 3 A on average for 10 h, the first of four loads: 30',
      input: { currentA: 3, timeH: 10, dutyPercent: 100, carriedAh: 0 }, expected: { chargeAh: 30, totalAh: 30 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'with instruments of 1.2 A all day: 30 + 28.8',
      input: { currentA: 1.2, timeH: 24, dutyPercent: 100, carriedAh: 30 }, expected: { chargeAh: 28.8, totalAh: 58.8 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'with lights of 2 A for 5 h: 58.8 + 10',
      input: { currentA: 2, timeH: 5, dutyPercent: 100, carriedAh: 58.8 }, expected: { chargeAh: 10, totalAh: 68.8 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'with the refrigerator: 68.8 + 48.6 = 117.4',
      input: { currentA: 4.5, timeH: 24, dutyPercent: 45, carriedAh: 68.8 }, expected: { chargeAh: 48.6, totalAh: 117.4 }, tolerance: 1e-9,
    },
  ],
}
