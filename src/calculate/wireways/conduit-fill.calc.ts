import type { CheckRow, Method } from '../method.js'

export type ConduitFillInput = Readonly<{ boreMm: number; cableAreaMm2: number; cableCount: number }>
export type ConduitFillOutput = Readonly<{ fillPercent: number }>

/**
 * Cross-section over the outside of a round cable: S = π/4 · d².
 * d [mm]; S [mm²].
 */
export const outsideAreaMm2 = (outerDiameterMm: number): number => (Math.PI / 4) * outerDiameterMm ** 2

/**
 * Share of a conduit's inside cross-section that the cables in it take.
 *
 * Formula   f = 100 · A / (π/4 · D²),   A = Σ π/4 · d_k²
 * Units     D inside diameter of the conduit [mm], d outside diameter of a cable [mm], A [mm²]; f [%]
 * Source    nec-chapter-9, table 1, whose limit goes by the number of cables
 * Assumes   round cables; a cable of several cores counts as one
 */
export function conduitFill(q: ConduitFillInput): ConduitFillOutput {
  return { fillPercent: (100 * q.cableAreaMm2) / outsideAreaMm2(q.boreMm) }
}

const row = (place: string, boreMm: number, cableCount: number, outerDiameterMm: number, fillPercent: number): CheckRow<ConduitFillInput, ConduitFillOutput> => ({
  origin: 'by hand',
  place: `${place}: ${cableCount} · π/4 · ${outerDiameterMm}² over π/4 · ${boreMm}²`,
  input: { boreMm, cableAreaMm2: (cableCount * Math.PI * outerDiameterMm ** 2) / 4, cableCount },
  expected: { fillPercent },
  tolerance: 0.05,
})

export const conduitFillMethod: Method<ConduitFillInput, ConduitFillOutput> = {
  id: 'conduit-fill',
  title: 'Fill of a conduit',
  formula: String.raw`f = 100\,A\,/\left(\tfrac{\pi}{4} D^2\right) \qquad A = \sum_{k=1}^{n} \tfrac{\pi}{4} d_k^2`,
  symbols: { boreMm: 'D', cableAreaMm2: 'A', cableCount: 'n', fillPercent: 'f' },
  citations: [{ source: 'nec-chapter-9', place: 'table 1' }],
  assumes: ['Cables are round, and a cable of several cores counts as one.', 'The rule is one for buildings, taken here as advice.'],
  compute: conduitFill,
  notApplicable: q => (q.boreMm > 0 ? null : 'the bore is not above zero'),
  checks: [
    row('nine cables in 32 mm', 32, 9, 6.5, 37.1),
    row('ten cables in 32 mm', 32, 10, 6.5, 41.3),
    row('twenty conductors in 20 mm', 20, 20, 2.8, 39.2),
    row('twenty-one conductors in 20 mm', 20, 21, 2.8, 41.2),
    row('two cables in 25 mm', 25, 2, 10, 32.0),
    row('one cable in 13 mm', 13, 1, 10, 59.2),
    row('three cables in 24 mm', 24, 3, 8, 33.3),
  ],
}
