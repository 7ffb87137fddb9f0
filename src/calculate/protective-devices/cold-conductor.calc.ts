import { copperCitation, resistivityAt20COhmMm2PerM } from '../../references/tables/iec-60028-copper.js'
import type { Method } from '../method.js'

export type ColdConductorInput = Readonly<{ conductorLengthM: number; crossSectionMm2: number; parallelCount: number }>
export type ColdConductorOutput = Readonly<{ conductorResistanceMilliOhm: number }>

/**
 * Resistance of a copper conductor at 20 °C by its nominal cross-section: as small as it can be, for the largest current.
 *
 * Formula   R_c = 1000 · ρ · L / (n · S)
 * Units     ρ = 1/58 Ω·mm²/m, L out and back [m], S of one [mm²], n alike in parallel; R_c [mΩ]
 * Source    iec-60028
 * Assumes   the whole cross-section is copper; strand lay and tinning, which add up to a fifth, are left out
 */
export function coldConductor(q: ColdConductorInput): ColdConductorOutput {
  return { conductorResistanceMilliOhm: (1000 * resistivityAt20COhmMm2PerM * q.conductorLengthM) / (q.parallelCount * q.crossSectionMm2) }
}

export const coldConductorMethod: Method<ColdConductorInput, ColdConductorOutput> = {
  id: 'cold-conductor',
  title: 'Least resistance of a conductor',
  formula: String.raw`R_c = \frac{1000\,L}{58\,n\,S}`,
  symbols: { conductorLengthM: 'L', crossSectionMm2: 'S', parallelCount: 'n', conductorResistanceMilliOhm: 'R_c' },
  citations: [copperCitation],
  assumes: [
    'The conductor is at 20 °C and its whole nominal cross-section is copper. A real one has up to a fifth more resistance, so the current comes out rather too large.',
  ],
  compute: coldConductor,
  notApplicable: q => (q.conductorLengthM >= 0 && q.crossSectionMm2 > 0 && q.parallelCount >= 1 ? null : 'the length or the cross-section is out of range'),
  checks: [
    {
      origin: 'published', place: 'ASTM B258 area of 2/0 AWG, 67.4309 mm², 0.2557 mΩ/m at 20 °C as tabulated: 6 m',
      input: { conductorLengthM: 6, crossSectionMm2: 67.4309, parallelCount: 1 }, expected: { conductorResistanceMilliOhm: 1.5342 }, tolerance: 3e-4,
    },
    {
      origin: 'by hand', place: '1 m of 58 mm²: 1000 / (58 · 58) = 0.297265; two in parallel have half of it',
      input: { conductorLengthM: 1, crossSectionMm2: 58, parallelCount: 2 }, expected: { conductorResistanceMilliOhm: 0.148633 }, tolerance: 1e-6,
    },
  ],
}
