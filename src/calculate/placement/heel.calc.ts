import type { Method } from '../method.js'

export type HeelInput = Readonly<{ portMomentKgM: number; displacementKg: number; metacentricHeightM: number }>
export type HeelOutput = Readonly<{ heelDeg: number }>

/**
 * How far the fit heels the vessel; above zero to port.
 *
 * Formula   φ = atan(M_y / (Δ · GM))
 * Units     M_y sum of mass times distance to port [kg·m], Δ displacement with the fit [kg], GM metacentric height [m]; φ [°]
 * Source    rigid-statics
 */
export function heel(q: HeelInput): HeelOutput {
  return { heelDeg: (Math.atan(q.portMomentKgM / (q.displacementKg * q.metacentricHeightM)) * 180) / Math.PI }
}

export const heelMethod: Method<HeelInput, HeelOutput> = {
  id: 'heel-of-fit',
  title: 'Heel from what was fitted',
  formula: String.raw`\varphi = \arctan\frac{M_y}{\Delta\,GM}`,
  symbols: { portMomentKgM: 'M_y', displacementKg: String.raw`\Delta`, metacentricHeightM: 'GM', heelDeg: String.raw`\varphi` },
  citations: [{ source: 'rigid-statics', place: 'inclining moment and metacentric height, as in an inclining experiment' }],
  assumes: ['The boat without the fit floats upright, the heel is small, and the metacentric height recorded holds with the fit on board.'],
  compute: heel,
  notApplicable: q => (q.displacementKg > 0 && q.metacentricHeightM > 0 ? null : 'displacement and metacentric height are not above zero'),
  checks: [
    {
      origin: 'by hand', place: '50 kg 1.2 m to port on 4000 kg with GM 0.9 m: 60 / 3600 = 0.016667, whose arctangent is 0.9548°',
      input: { portMomentKgM: 60, displacementKg: 4000, metacentricHeightM: 0.9 }, expected: { heelDeg: 0.9548 }, tolerance: 5e-5,
    },
    {
      origin: 'by hand', place: 'a moment of Δ · GM to starboard would lay her over by 45°',
      input: { portMomentKgM: -1000, displacementKg: 1000, metacentricHeightM: 1 }, expected: { heelDeg: -45 }, tolerance: 1e-9,
    },
  ],
}
