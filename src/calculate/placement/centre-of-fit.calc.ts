import type { Method } from '../method.js'

export type CentreOfFitInput = Readonly<{ massKg: number; forwardMomentKgM: number; portMomentKgM: number; upMomentKgM: number }>
export type CentreOfFitOutput = Readonly<{ forwardM: number; toPortM: number; upM: number }>

/**
 * Centre of gravity of what was fitted.
 *
 * Formula   x = M_x / m,  y = M_y / m,  z = M_z / m
 * Units     m sum of the masses [kg], M sums of mass times distance [kg·m]; x forward of the transom, y to port, z above the waterline [m]
 * Source    rigid-statics
 */
export function centreOfFit(q: CentreOfFitInput): CentreOfFitOutput {
  return { forwardM: q.forwardMomentKgM / q.massKg, toPortM: q.portMomentKgM / q.massKg, upM: q.upMomentKgM / q.massKg }
}

export const centreOfFitMethod: Method<CentreOfFitInput, CentreOfFitOutput> = {
  id: 'centre-of-fit',
  title: 'Centre of gravity of what was fitted',
  formula: String.raw`x = \frac{M_x}{m} \qquad y = \frac{M_y}{m} \qquad z = \frac{M_z}{m}`,
  symbols: { massKg: 'm', forwardMomentKgM: 'M_x', portMomentKgM: 'M_y', upMomentKgM: 'M_z', forwardM: 'x', toPortM: 'y', upM: 'z' },
  citations: [{ source: 'rigid-statics', place: 'centre of gravity from moments' }],
  assumes: ['The mass of each item acts at the position recorded for it. Cables are not counted.'],
  compute: centreOfFit,
  notApplicable: q => (q.massKg > 0 ? null : 'no item has both mass and position recorded'),
  checks: [{
    origin: 'by hand', place: '60 kg at 1 m forward, 2 m to port, 0.5 m up and 40 kg at 6, −0.5 and 3 m: 300, 100 and 150 kg·m, divided by 100 kg',
    input: { massKg: 100, forwardMomentKgM: 300, portMomentKgM: 100, upMomentKgM: 150 }, expected: { forwardM: 3, toPortM: 1, upM: 1.5 }, tolerance: 1e-9,
  }],
}
