import type { Method } from '../method.js'

export type ConduitJamInput = Readonly<{ boreMm: number; meanDiameterMm: number }>
export type ConduitJamOutput = Readonly<{ jamRatioFactor: number }>

/** Ratios between which three cables can wedge side by side across the conduit (nec-chapter-9, informational note 2). */
export const jamRange = { fromFactor: 2.8, toFactor: 3.2 } as const

/**
 * Ratio that says whether three cables can jam in a bend of the conduit while they are pulled in.
 *
 * Formula   r = D / d
 * Units     D inside diameter of the conduit [mm], d mean outside diameter of the three cables [mm]; r without unit
 * Source    nec-chapter-9, informational note 2 to table 1
 */
export function conduitJam(q: ConduitJamInput): ConduitJamOutput {
  return { jamRatioFactor: q.boreMm / q.meanDiameterMm }
}

export const conduitJamMethod: Method<ConduitJamInput, ConduitJamOutput> = {
  id: 'conduit-jam',
  title: 'Jamming of three cables in a conduit',
  formula: 'r = D/d',
  symbols: { boreMm: 'D', meanDiameterMm: 'd', jamRatioFactor: 'r' },
  citations: [{ source: 'nec-chapter-9', place: 'table 1, informational note 2' }],
  assumes: ['Three cables of much the same diameter; two fit side by side, four or more rarely jam.'],
  compute: conduitJam,
  notApplicable: q => (q.meanDiameterMm > 0 ? null : 'the diameter is not above zero'),
  checks: [
    { origin: 'by hand', place: 'three cables of 8 mm in 24 mm: 24 / 8', input: { boreMm: 24, meanDiameterMm: 8 }, expected: { jamRatioFactor: 3 }, tolerance: 1e-9 },
  ],
}
