import type { Method } from '../method.js'

export type ChargeTakenInput = Readonly<{
  offeredA: number
  timeH: number
  capacityAh: number
  startPercent: number
  acceptanceA: number
  taperFromPercent: number
  endCurrentA: number
  chargeEfficiencyPercent: number
}>
export type ChargeTakenOutput = Readonly<{ takenAh: number; endPercent: number }>

/**
 * What a battery takes of a current offered to it for a time: all it accepts up to a state of charge, then less and less.
 *
 * Formula   i = min(I, a(s)),   a(s) = I_a up to s_0, from there linear to I_e at 100 %,   ds/dt = η · i / C
 * Units     I offered [A], t [h], C [Ah], s state of charge [%], I_a highest charging current, I_e current when full [A], η [%]
 * Source    common-practice; solved in closed form: a constant current, then one that falls by exp(−η · k · t / C)
 * Assumes   when full it takes nothing
 */
export function chargeTaken(q: ChargeTakenInput): ChargeTakenOutput {
  const efficiency = q.chargeEfficiencyPercent / 100
  const chargeAt = (percent: number) => (percent / 100) * q.capacityAh
  const endA = Math.min(q.endCurrentA, q.acceptanceA)
  // Amperes that the acceptance falls for each ampere-hour of charge above the taper's start.
  const fallPerAh = (q.acceptanceA - endA) / (q.capacityAh - chargeAt(q.taperFromPercent))
  let charge = chargeAt(q.startPercent)
  let takenAh = 0
  let leftH = q.timeH

  const constantA = Math.min(q.offeredA, q.acceptanceA)
  const untilAh = constantA <= endA ? q.capacityAh : chargeAt(q.taperFromPercent) + (q.acceptanceA - constantA) / fallPerAh
  if (charge < untilAh && constantA > 0) {
    const constantH = Math.min(leftH, (untilAh - charge) / (efficiency * constantA))
    takenAh += constantA * constantH
    charge += efficiency * constantA * constantH
    leftH -= constantH
  }
  if (leftH > 0 && constantA > endA && charge < q.capacityAh) {
    const acceptedA = q.acceptanceA - fallPerAh * (charge - chargeAt(q.taperFromPercent))
    const rate = efficiency * fallPerAh
    const taperH = Math.min(leftH, Math.log(acceptedA / endA) / rate)
    const taperAh = (acceptedA * -Math.expm1(-rate * taperH)) / rate
    takenAh += taperAh
    charge += efficiency * taperAh
  }
  return { takenAh, endPercent: Math.min(100, (100 * charge) / q.capacityAh) }
}

const battery = { capacityAh: 100, acceptanceA: 40, taperFromPercent: 80, endCurrentA: 2 } as const

export const chargeTakenMethod: Method<ChargeTakenInput, ChargeTakenOutput> = {
  id: 'charge-taken',
  title: 'What a battery takes of a charge offered to it',
  formula: String.raw`i = \min(I,\, a(s)) \qquad a(s) = \begin{cases} I_a & s \le s_0 \\ I_a - (I_a - I_e)\,\frac{s - s_0}{100 - s_0} & s > s_0 \end{cases} \qquad s_t = s_1 + \frac{\eta\,Q}{C} \qquad Q = \int_0^t i\,dt`,
  symbols: {
    offeredA: 'I', timeH: 't', capacityAh: 'C', startPercent: 's_1', acceptanceA: 'I_a', taperFromPercent: 's_0', endCurrentA: 'I_e',
    chargeEfficiencyPercent: String.raw`\eta`, takenAh: 'Q', endPercent: 's_t',
  },
  citations: [{ source: 'common-practice', place: 'lead-acid takes less from 80 % on and 2 % of its capacity when full; lithium iron phosphate from 97 % on' }],
  assumes: ['When full it takes nothing more.'],
  compute: chargeTaken,
  notApplicable: q => (q.capacityAh > 0 && q.acceptanceA > 0 && q.endCurrentA > 0 && q.chargeEfficiencyPercent > 0 && q.taperFromPercent < 100 ? null : 'the capacity, a current, the efficiency or the taper is out of range'),
  checks: [
    {
      origin: 'by hand', place: 'from 50 %, 20 A for an hour at 85 %: 20 Ah, 50 + 17',
      input: { ...battery, offeredA: 20, timeH: 1, startPercent: 50, chargeEfficiencyPercent: 85 }, expected: { takenAh: 20, endPercent: 67 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'from 80 %, all it takes for an hour without loss: it falls by 38 A over 20 Ah, 1.9 A/Ah, so (40 − 40·e^−1.9)/1.9 = 17.904',
      input: { ...battery, offeredA: 60, timeH: 1, startPercent: 80, chargeEfficiencyPercent: 100 }, expected: { takenAh: 17.904, endPercent: 97.904 }, tolerance: 0.001,
    },
    {
      origin: 'by hand', place: '21 A is all taken up to half of the taper, 90 %: 10 Ah in 10/21 h, then (21 − 21·e^(−1.9·11/21))/1.9 = 6.967',
      input: { ...battery, offeredA: 21, timeH: 1, startPercent: 80, chargeEfficiencyPercent: 100 }, expected: { takenAh: 16.967 }, tolerance: 0.001,
    },
    {
      origin: 'by hand', place: 'full: nothing',
      input: { ...battery, offeredA: 20, timeH: 1, startPercent: 100, chargeEfficiencyPercent: 85 }, expected: { takenAh: 0, endPercent: 100 }, tolerance: 1e-9,
    },
  ],
}
