import { intensityTable } from '../../references/tables/navigation-lights.js'
import type { CheckRow, Method } from '../method.js'

export type LightIntensityInput = Readonly<{ rangeNmi: number }>
export type LightIntensityOutput = Readonly<{ intensityCd: number }>

const thresholdLx = 2e-7
const transmission = 0.8

/**
 * Luminous intensity that a navigation light needs to be seen at a distance.
 *
 * Formula   I = 3.43 · 10⁶ · T · D² · K^(−D), with T = 2 · 10⁻⁷ lx and K = 0.8
 * Units     D range of visibility [NM]; I [cd]
 * Source    cfr-33-84, 84.15, as COLREG annex I section 8 has it
 */
export function lightIntensity(q: LightIntensityInput): LightIntensityOutput {
  return { intensityCd: 3.43e6 * thresholdLx * q.rangeNmi ** 2 * transmission ** -q.rangeNmi }
}

const byFormula: readonly (readonly [number, number])[] = [[1, 0.8575], [2, 4.2875], [3, 12.0586], [4, 26.7969], [5, 52.3376], [6, 94.2078]]
type Row = CheckRow<LightIntensityInput, LightIntensityOutput>

export const lightIntensityMethod: Method<LightIntensityInput, LightIntensityOutput> = {
  id: 'navigation-light-intensity',
  title: 'Luminous intensity of a navigation light',
  formula: String.raw`I = 3.43 \cdot 10^6\, T\, D^2\, K^{-D} \qquad T = 2 \cdot 10^{-7}\,\mathrm{lx} \qquad K = 0.8`,
  symbols: { rangeNmi: 'D', intensityCd: 'I' },
  citations: [{ source: 'cfr-33-84', place: '84.15, formula and table; the same in COLREG annex I, section 8' }],
  assumes: ['The air is as clear as at a meteorological visibility of about 13 nautical miles (K = 0.8).'],
  compute: lightIntensity,
  notApplicable: q => (q.rangeNmi > 0 ? null : 'the range is not above zero'),
  checks: [
    ...byFormula.map(([rangeNmi, intensityCd]): Row => ({
      origin: 'by hand', place: `0.686 · ${rangeNmi}² · 0.8^(−${rangeNmi})`, input: { rangeNmi }, expected: { intensityCd }, tolerance: 5e-5,
    })),
    ...intensityTable.map(({ rangeNmi, intensityCd }): Row => ({
      origin: 'published', place: `33 CFR 84.15, table: ${rangeNmi} NM, ${intensityCd} cd`, input: { rangeNmi }, expected: { intensityCd },
      tolerance: intensityCd < 10 ? 0.0501 : 0.501,
    })),
  ],
}
