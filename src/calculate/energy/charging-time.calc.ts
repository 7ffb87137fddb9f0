import type { Method } from '../method.js'

export type ChargingTimeInput = Readonly<{
  dischargedAh: number
  sourceCurrentA: number
  loadCurrentA: number
  acceptanceA: number
  chargeEfficiencyPercent: number
  tailFactor: number
}>
export type ChargingTimeOutput = Readonly<{ chargeAh: number; chargingCurrentA: number; bulkTimeH: number; chargingTimeH: number }>

/**
 * Time in which charging sources bring back what was taken out.
 *
 * Formula   Q_c = Q / (η / 100),   I = min(I_s − I_l, I_a),   t_b = Q_c / I,   t = x · t_b
 * Units     Q taken out [Ah], η charge efficiency [%], I_s of the sources, I_l of the loads meanwhile, I_a that the battery takes [A],
 *           x whole time over bulk time; times [h]
 * Source    common-practice
 */
export function chargingTime(q: ChargingTimeInput): ChargingTimeOutput {
  const chargeAh = q.dischargedAh / (q.chargeEfficiencyPercent / 100)
  const chargingCurrentA = Math.min(q.sourceCurrentA - q.loadCurrentA, q.acceptanceA)
  const bulkTimeH = chargeAh / chargingCurrentA
  return { chargeAh, chargingCurrentA, bulkTimeH, chargingTimeH: q.tailFactor * bulkTimeH }
}

export const chargingTimeMethod: Method<ChargingTimeInput, ChargingTimeOutput> = {
  id: 'charging-time',
  title: 'Time to charge a battery',
  formula: String.raw`Q_c = \frac{Q}{\eta/100} \qquad I = \min(I_s - I_l,\; I_a) \qquad t_b = Q_c/I \qquad t = x\,t_b`,
  symbols: {
    dischargedAh: 'Q', sourceCurrentA: 'I_s', loadCurrentA: 'I_l', acceptanceA: 'I_a', chargeEfficiencyPercent: String.raw`\eta`, tailFactor: 'x',
    chargeAh: 'Q_c', chargingCurrentA: 'I', bulkTimeH: 't_b', chargingTimeH: 't',
  },
  citations: [{ source: 'common-practice', place: 'bulk charge, with 1.3 to 1.5 of its time for the whole charge of lead-acid' }],
  assumes: ['The sources run without a break until the battery is full, and its loads draw their average.'],
  compute: chargingTime,
  notApplicable: q => (q.sourceCurrentA <= q.loadCurrentA ? 'the sources give no more than the loads take' : q.acceptanceA > 0 && q.chargeEfficiencyPercent > 0 ? null : 'the battery takes nothing'),
  checks: [
    {
      origin: 'by hand', place: '117.4 Ah into lead-acid at 85 % and 40 A: 138.1 Ah, 3.45 h of bulk',
      input: { dischargedAh: 117.4, sourceCurrentA: 40, loadCurrentA: 0, acceptanceA: 80, chargeEfficiencyPercent: 85, tailFactor: 1.3 },
      expected: { chargeAh: 138.1, bulkTimeH: 3.45 }, tolerance: 0.05,
    },
    {
      origin: 'by hand', place: 'the same with a tail of half the bulk: 1.5 · 138.118 / 40',
      input: { dischargedAh: 117.4, sourceCurrentA: 50, loadCurrentA: 10, acceptanceA: 80, chargeEfficiencyPercent: 85, tailFactor: 1.5 },
      expected: { chargingCurrentA: 40, chargingTimeH: 5.179 }, tolerance: 0.001,
    },
  ],
}
