import { cfrBundleFactors, cfrTable5 } from '../../references/tables/cfr-33-183-table-5.js'
import { isoAnnexA } from '../../references/tables/iso-13297-annex-a.js'
import type { Method } from '../method.js'

export type CapacityInput = Readonly<{ tableCurrentA: number; parallelCount: number; ambientFactor: number; bundleFactor: number }>
export type CapacityOutput = Readonly<{ currentCarryingCapacityA: number }>

/**
 * Current-carrying capacity (ampacity) of a conductor where it is fitted.
 *
 * Formula   Iz = n · It · ka · kb
 * Units     n alike conductors in parallel, It [A] from the table of the basis, ka factor of the ambient, kb factor of the bundle; Iz [A]
 * Source    33-cfr-183, iso-13297
 * Assumes   the hottest place and the fullest wireway on the way count for the whole cable
 */
export function currentCarryingCapacity(q: CapacityInput): CapacityOutput {
  return { currentCarryingCapacityA: q.parallelCount * q.tableCurrentA * q.ambientFactor * q.bundleFactor }
}

const row = (
  origin: 'published' | 'by hand', place: string, tableCurrentA: number, ambientFactor: number, bundleFactor: number,
  currentCarryingCapacityA: number, tolerance: number, parallelCount = 1,
) => ({ origin, place, input: { tableCurrentA, parallelCount, ambientFactor, bundleFactor }, expected: { currentCarryingCapacityA }, tolerance })

export const currentCarryingCapacityMethod: Method<CapacityInput, CapacityOutput> = {
  id: 'current-carrying-capacity',
  title: 'Current-carrying capacity (ampacity)',
  formula: String.raw`I_z = n\,I_t\,k_a\,k_b`,
  symbols: { tableCurrentA: 'I_t', parallelCount: 'n', ambientFactor: 'k_a', bundleFactor: 'k_b', currentCarryingCapacityA: 'I_z' },
  citations: [cfrTable5.citation, cfrBundleFactors.citation, isoAnnexA.citation],
  assumes: [
    'The hottest zone and the fullest wireway that the cable passes count for the whole of it.',
    'Copper conductors.',
    'Conductors in parallel are alike in size, length and run, so that they share the current evenly.',
  ],
  compute: currentCarryingCapacity,
  notApplicable: q => (q.tableCurrentA > 0 && q.ambientFactor > 0 && q.bundleFactor > 0 ? null : 'the table has no current for these conditions'),
  checks: [
    row('published', '33 CFR 183.425 table 5: 14 AWG, 105 °C, outside engine spaces, 2 conductors', 35, 1, 1, 35, 1e-9),
    row('published', 'boat-cable table: 14 AWG, 105 °C, in an engine space, printed 29.8', 35, 0.85, 1, 29.8, 0.05001),
    row('published', 'boat-cable table: 10 AWG, 105 °C, in an engine space, 4 to 6 conductors', 60, 0.85, 0.6, 30.6, 0.05),
    row('published', 'boat-cable table: 4/0, 105 °C, in an engine space, 7 to 24 conductors, printed 189.1', 445, 0.85, 0.5, 189.1, 0.05),
    row('by hand', '10 AWG, 75 °C, in an engine space: 40 · 0.75', 40, 0.75, 1, 30, 1e-9),
    row('by hand', '6 AWG, 60 °C, in an engine space: 80 · 0.58', 80, 0.58, 1, 46.4, 1e-9),
    row('by hand', '16 mm², 105 °C, in an engine space: 130 · 0.86', 130, 0.86, 1, 111.8, 1e-9),
    row('by hand', 'two of 35 mm², 105 °C, in parallel: 2 · 210', 210, 1, 1, 420, 1e-9, 2),
    row('by hand', '6 mm², 85 to 90 °C, bundle of 8: 50 · 0.60', 50, 1, 0.6, 30, 1e-9),
  ],
}
