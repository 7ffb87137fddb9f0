import type { Method } from '../method.js'

export type DailyBalanceInput = Readonly<{ surplusAh: number; chargeEfficiencyPercent: number; shortfallAh: number }>
export type DailyBalanceOutput = Readonly<{ balanceAh: number }>

/**
 * What a day adds to a battery, or takes from it, while it is not full.
 *
 * Formula   ΔQ = Q_+ · η / 100 − Q_−
 * Units     Q_+ what sources give beyond the loads, hour by hour and no more than the battery takes [Ah]; Q_− what loads take beyond
 *           the sources [Ah]; η charge efficiency [%]
 * Source    circuit-theory; the efficiency is common-practice
 */
export function dailyBalance(q: DailyBalanceInput): DailyBalanceOutput {
  return { balanceAh: (q.surplusAh * q.chargeEfficiencyPercent) / 100 - q.shortfallAh }
}

export const dailyBalanceMethod: Method<DailyBalanceInput, DailyBalanceOutput> = {
  id: 'daily-balance',
  title: 'Daily balance of a battery',
  formula: String.raw`\Delta Q = Q_+\,\eta/100 - Q_-`,
  symbols: { surplusAh: 'Q_+', chargeEfficiencyPercent: String.raw`\eta`, shortfallAh: 'Q_-', balanceAh: String.raw`\Delta Q` },
  citations: [{ source: 'circuit-theory', place: 'what goes in less what goes out' }, { source: 'common-practice', place: 'charge efficiency by chemistry' }],
  assumes: ['The battery is never full, so that it takes all it can.', 'What sources give while loads draw goes to the loads first, without loss.'],
  compute: dailyBalance,
  notApplicable: q => (q.surplusAh >= 0 && q.shortfallAh >= 0 ? null : 'a sum is below zero'),
  checks: [
    { origin: 'by hand', place: '60 Ah put in at 85 %, 40 Ah taken out: 51 − 40', input: { surplusAh: 60, chargeEfficiencyPercent: 85, shortfallAh: 40 }, expected: { balanceAh: 11 }, tolerance: 1e-9 },
    {
      origin: 'by hand', place: '117.4 Ah taken out and 138.1 Ah put in at 85 %: as good as even', input: { surplusAh: 138.118, chargeEfficiencyPercent: 85, shortfallAh: 117.4 },
      expected: { balanceAh: 0 }, tolerance: 0.001,
    },
  ],
}
