/** Power density to which people may be exposed, by frequency and by whether they know of it and can keep away. */
import type { Citation } from '../bibliography.js'

export type ExposedPeople = 'general' | 'occupational'
export interface ExposureLimit {
  readonly title: string
  readonly people: ExposedPeople
  readonly fromMHz: number
  readonly toMHz: number
  /** As the table prints it. */
  readonly formula: string
  readonly limitWPerM2: (frequencyMHz: number) => number
  /** Time over which exposure is averaged. */
  readonly averaging: string
  readonly citation: Citation
}

const always = (limitWPerM2: number) => () => limitWPerM2
const fcc = { title: '47 CFR 1.1310', citation: { source: '47-cfr-1-1310', place: 'table 1' } } as const
const wholeBody = { title: 'ICNIRP 2020, whole body', averaging: '30 min', citation: { source: 'icnirp-2020', place: 'reference levels, whole body', standing: 'from memory' } } as const
const local = { title: 'ICNIRP 2020, local', averaging: '6 min', citation: { source: 'icnirp-2020', place: 'reference levels, local exposure' } } as const

/** Limits of the law first, the public before those who work with it. */
export const exposureLimits: readonly ExposureLimit[] = [
  { ...fcc, people: 'general', averaging: '30 min', fromMHz: 30, toMHz: 300, formula: '2', limitWPerM2: always(2) },
  { ...fcc, people: 'general', averaging: '30 min', fromMHz: 300, toMHz: 1500, formula: 'f/150', limitWPerM2: f => f / 150 },
  { ...fcc, people: 'general', averaging: '30 min', fromMHz: 1500, toMHz: 100_000, formula: '10', limitWPerM2: always(10) },
  { ...fcc, people: 'occupational', averaging: '6 min', fromMHz: 30, toMHz: 300, formula: '10', limitWPerM2: always(10) },
  { ...fcc, people: 'occupational', averaging: '6 min', fromMHz: 300, toMHz: 1500, formula: 'f/30', limitWPerM2: f => f / 30 },
  { ...fcc, people: 'occupational', averaging: '6 min', fromMHz: 1500, toMHz: 100_000, formula: '50', limitWPerM2: always(50) },
  { ...wholeBody, people: 'general', fromMHz: 30, toMHz: 400, formula: '2', limitWPerM2: always(2) },
  { ...wholeBody, people: 'general', fromMHz: 2000, toMHz: 300_000, formula: '10', limitWPerM2: always(10) },
  { ...wholeBody, people: 'occupational', fromMHz: 30, toMHz: 400, formula: '10', limitWPerM2: always(10) },
  { ...wholeBody, people: 'occupational', fromMHz: 2000, toMHz: 300_000, formula: '50', limitWPerM2: always(50) },
  { ...local, people: 'general', fromMHz: 30, toMHz: 400, formula: '10', limitWPerM2: always(10) },
  { ...local, people: 'general', fromMHz: 2000, toMHz: 6000, formula: '40', limitWPerM2: always(40) },
  { ...local, people: 'general', fromMHz: 6000, toMHz: 300_000, formula: '55·(f/1000)^−0.177', limitWPerM2: f => 55 * (f / 1000) ** -0.177 },
  { ...local, people: 'occupational', fromMHz: 30, toMHz: 400, formula: '50', limitWPerM2: always(50) },
  { ...local, people: 'occupational', fromMHz: 2000, toMHz: 6000, formula: '200', limitWPerM2: always(200) },
  { ...local, people: 'occupational', fromMHz: 6000, toMHz: 300_000, formula: '275·(f/1000)^−0.177', limitWPerM2: f => 275 * (f / 1000) ** -0.177 },
]

/** Those that hold at a frequency; at the border of two rows the lower row's. */
export const exposureLimitsAt = (frequencyMHz: number): readonly ExposureLimit[] => {
  const holding = exposureLimits.filter(({ fromMHz, toMHz }) => frequencyMHz >= fromMHz && frequencyMHz <= toMHz)
  return holding.filter((row, i) => !holding.slice(0, i).some(({ title, people }) => title === row.title && people === row.people))
}

/** Power that comes back from sea and deck, by which the density can be larger than in free space. */
export const groundFactors = {
  antenna: { groundFactor: 2.56, citation: { source: 'fcc-oet-65', place: 'factor for reflection from the ground' } },
  radar: { groundFactor: 1, citation: { source: 'fcc-oet-65', place: 'main beam, no reflection' } },
} as const satisfies Record<string, { readonly groundFactor: number; readonly citation: Citation }>

/** Who talks also listens. */
export const voiceDuty = { dutyPercent: 50, citation: { source: 'common-practice', place: 'voice: transmitting half of the time' } } as const
