import type { Method } from '../method.js'

export type SolarOutputInput = Readonly<{ peakPowerW: number; irradiationKWhPerM2: number; performanceFactor: number; batteryV: number }>
export type SolarOutputOutput = Readonly<{ energyWh: number; chargeAh: number }>

/**
 * What solar panels give for what the sun brings.
 *
 * Formula   W = P · R_s · x,   Q = W / U
 * Units     P peak power under standard test conditions, at 1 kW/m² [W], R_s irradiation [kWh/m²], x performance ratio, U of the battery [V]; W [Wh], Q [Ah]
 * Source    common-practice
 */
export function solarOutput(q: SolarOutputInput): SolarOutputOutput {
  const energyWh = q.peakPowerW * q.irradiationKWhPerM2 * q.performanceFactor
  return { energyWh, chargeAh: energyWh / q.batteryV }
}

export const solarOutputMethod: Method<SolarOutputInput, SolarOutputOutput> = {
  id: 'solar-output',
  title: 'What solar panels give',
  formula: String.raw`W = P\,R_s\,x \qquad Q = W/U`,
  symbols: { peakPowerW: 'P', irradiationKWhPerM2: 'R_s', performanceFactor: 'x', batteryV: 'U', energyWh: 'W', chargeAh: 'Q' },
  citations: [{ source: 'common-practice', place: 'performance ratio 0.60 to 0.70 for panels that lie flat on a boat, 0.4 to 0.5 in the shade of a rig' }],
  assumes: ['The panels lie flat; shade is in the performance ratio or in the duty of the controller.'],
  compute: solarOutput,
  notApplicable: q => (q.peakPowerW >= 0 && q.batteryV > 0 && q.performanceFactor > 0 ? null : 'the peak power, the voltage or the performance ratio is out of range'),
  checks: [{
    origin: 'by hand', place: '200 W, 5 kWh/m², 0.7 at 12.8 V: 700 Wh, 54.7 Ah; the rule of thumb, a quarter of the peak power, says 50 Ah',
    input: { peakPowerW: 200, irradiationKWhPerM2: 5, performanceFactor: 0.7, batteryV: 12.8 }, expected: { energyWh: 700, chargeAh: 54.7 }, tolerance: 0.05,
  }],
}
