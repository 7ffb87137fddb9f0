import type { Method } from '../method.js'

export type GravityShiftInput = Readonly<{
  massKg: number; referenceMassKg: number
  fitForwardM: number; fitToPortM: number; fitUpM: number
  vesselForwardM: number; vesselToPortM: number; vesselUpM: number
}>
export type GravityShiftOutput = Readonly<{ shiftForwardM: number; shiftToPortM: number; shiftUpM: number }>

/**
 * How far what was fitted moves the centre of gravity of the vessel.
 *
 * Formula   s = m · (g − G) / M, for each direction
 * Units     m mass of the fit, M displacement with the fit where the one recorded is without it, else displacement less the fit [kg];
 *           g centre of the fit, G centre of the vessel as recorded [m]; s [m]
 * Source    rigid-statics
 */
export function gravityShift(q: GravityShiftInput): GravityShiftOutput {
  const share = q.massKg / q.referenceMassKg
  return {
    shiftForwardM: share * (q.fitForwardM - q.vesselForwardM), shiftToPortM: share * (q.fitToPortM - q.vesselToPortM), shiftUpM: share * (q.fitUpM - q.vesselUpM),
  }
}

export const gravityShiftMethod: Method<GravityShiftInput, GravityShiftOutput> = {
  id: 'gravity-shift',
  title: 'Shift of the vessel’s centre of gravity',
  formula: String.raw`s_x = \frac{m\,(x_g - x_G)}{M} \qquad s_y = \frac{m\,(y_g - y_G)}{M} \qquad s_z = \frac{m\,(z_g - z_G)}{M}`,
  symbols: {
    massKg: 'm', referenceMassKg: 'M', fitForwardM: 'x_g', fitToPortM: 'y_g', fitUpM: 'z_g', vesselForwardM: 'x_G', vesselToPortM: 'y_G', vesselUpM: 'z_G',
    shiftForwardM: 's_x', shiftToPortM: 's_y', shiftUpM: 's_z',
  },
  citations: [{ source: 'rigid-statics', place: 'centre of gravity of two masses' }],
  assumes: [
    'Where the displacement recorded is without the fit, M is displacement plus fit: G moves by s. Where it counts the fit, M is displacement less fit: without the fit G would lie s back.',
    'Cables are not counted.',
  ],
  compute: gravityShift,
  notApplicable: q => (q.referenceMassKg > 0 ? null : 'the displacement is not more than the mass of the fit'),
  checks: [
    {
      origin: 'by hand', place: '100 kg at 3, 1, 2 m on a boat of 900 kg with her centre at 4, 0, 0.5 m: new centre (3600 + 300)/1000 = 3.9, 100/1000 = 0.1, (450 + 200)/1000 = 0.65 m',
      input: { massKg: 100, referenceMassKg: 1000, fitForwardM: 3, fitToPortM: 1, fitUpM: 2, vesselForwardM: 4, vesselToPortM: 0, vesselUpM: 0.5 },
      expected: { shiftForwardM: -0.1, shiftToPortM: 0.1, shiftUpM: 0.15 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'the same boat given with the fit, 1000 kg at 3.9, 0.1, 0.65 m; without it she was at 4, 0, 0.5 m',
      input: { massKg: 100, referenceMassKg: 900, fitForwardM: 3, fitToPortM: 1, fitUpM: 2, vesselForwardM: 3.9, vesselToPortM: 0.1, vesselUpM: 0.65 },
      expected: { shiftForwardM: -0.1, shiftToPortM: 0.1, shiftUpM: 0.15 }, tolerance: 1e-9,
    },
  ],
}
