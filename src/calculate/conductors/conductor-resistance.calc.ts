import { copperCitation, temperatureCoefficientPerK } from '../../references/tables/iec-60028-copper.js'
import type { Method } from '../method.js'

export type ConductorResistanceInput = Readonly<{ resistanceAt20COhmPerKm: number; conductorTemperatureC: number }>
export type ConductorResistanceOutput = Readonly<{ resistanceOhmPerKm: number }>

/**
 * Resistance of a copper conductor at its temperature.
 *
 * Formula   R′(θ) = R′₂₀ · (1 + 0.00393 · (θ − 20))
 * Units     R′ [Ω/km], θ [°C]
 * Source    iec-60028
 * Assumes   annealed copper, between −40 °C and 200 °C
 */
export function conductorResistance(q: ConductorResistanceInput): ConductorResistanceOutput {
  return { resistanceOhmPerKm: q.resistanceAt20COhmPerKm * (1 + temperatureCoefficientPerK * (q.conductorTemperatureC - 20)) }
}

export const conductorResistanceMethod: Method<ConductorResistanceInput, ConductorResistanceOutput> = {
  id: 'conductor-resistance',
  title: 'Resistance of a conductor at its temperature',
  formula: String.raw`R'(\theta) = R'_{20}\,\bigl(1 + 0.00393\,(\theta - 20)\bigr)`,
  symbols: { resistanceAt20COhmPerKm: "R'_{20}", conductorTemperatureC: String.raw`\theta`, resistanceOhmPerKm: String.raw`R'(\theta)` },
  citations: [copperCitation],
  assumes: ['The conductor is of annealed copper.'],
  compute: conductorResistance,
  notApplicable: q =>
    !(q.resistanceAt20COhmPerKm > 0) ? 'the resistance is not above zero'
    : q.conductorTemperatureC < -40 || q.conductorTemperatureC > 200 ? 'the temperature is outside −40 °C to 200 °C'
    : null,
  checks: [
    {
      origin: 'by hand', place: '16 AWG, 13.174 Ω/km, warmed from 20 °C to 50 °C: 1 + 0.00393 · 30 = 1.1179; 13.174 · 1.1179 = 14.727',
      input: { resistanceAt20COhmPerKm: 13.174, conductorTemperatureC: 50 }, expected: { resistanceOhmPerKm: 14.727 }, tolerance: 0.001,
    },
    {
      origin: 'published', place: 'IEC 60228 factor of correction to 20 °C, 0.781 at 90 °C by the standard’s rounded coefficient 0.004: 1/0.781 = 1.280; agreement within 0.5 %',
      input: { resistanceAt20COhmPerKm: 1, conductorTemperatureC: 90 }, expected: { resistanceOhmPerKm: 1.28 }, tolerance: 0.0064,
    },
  ],
}
