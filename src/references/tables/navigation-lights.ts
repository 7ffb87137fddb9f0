/** Navigation lights by the collision regulations: what each shows, how far, and which a vessel must have. */
import type { LengthClass } from '../../model/results/placement.js'
import type { Sector } from '../../model/results/sector.js'
import type { Identity, NavigationLightKind } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'

const classes: readonly (readonly [LengthClass, number])[] = [['50 m and over', 50], ['20 m to under 50 m', 20], ['12 m to under 20 m', 12], ['under 12 m', 0]]
export const lengthClassOf = (lengthM: number): LengthClass => classes.find(([, fromM]) => lengthM >= fromM)?.[0] ?? 'under 12 m'

type Ranges = Readonly<Record<LengthClass, number>>
const ranges = (under12: number, under20: number, under50: number, from50: number): Ranges =>
  ({ 'under 12 m': under12, '12 m to under 20 m': under20, '20 m to under 50 m': under50, '50 m and over': from50 })
/** Least range of visibility in nautical miles, rule 22. */
export const rangesNmi = { masthead: ranges(2, 3, 5, 6), side: ranges(1, 2, 2, 3), stern: ranges(2, 2, 2, 3), towing: ranges(2, 2, 2, 3), allRound: ranges(2, 2, 2, 3) } as const

export interface LightType {
  readonly title: string
  readonly colours: readonly LightColour[]
  /** What it shows altogether. */
  readonly sector: Sector
  readonly ranges: keyof typeof rangesNmi
}
export type LightColour = 'white' | 'red' | 'green' | 'yellow'

const ahead: Sector = { fromDeg: 247.5, widthDeg: 225 }
const astern: Sector = { fromDeg: 112.5, widthDeg: 135 }
const around: Sector = { fromDeg: 0, widthDeg: 360 }
const light = (title: string, colours: readonly LightColour[], sector: Sector, ofRanges: LightType['ranges']): LightType => ({ title, colours, sector, ranges: ofRanges })

/** Rule 21, from memory. A tricolour light counts as the sternlight that it contains, which must be seen farther than sidelights under 12 m. */
export const lightTypes: Readonly<Record<NavigationLightKind, LightType>> = {
  'masthead': light('Masthead light', ['white'], ahead, 'masthead'),
  'port side': light('Port sidelight', ['red'], { fromDeg: 247.5, widthDeg: 112.5 }, 'side'),
  'starboard side': light('Starboard sidelight', ['green'], { fromDeg: 0, widthDeg: 112.5 }, 'side'),
  'both sides': light('Sidelights in one lantern', ['red', 'green'], ahead, 'side'),
  'stern': light('Sternlight', ['white'], astern, 'stern'),
  'tricolour': light('Tricolour light', ['red', 'green', 'white'], around, 'stern'),
  'all-round white': light('All-round white light', ['white'], around, 'allRound'),
  'all-round red': light('All-round red light', ['red'], around, 'allRound'),
  'all-round green': light('All-round green light', ['green'], around, 'allRound'),
  'all-round yellow': light('All-round yellow light', ['yellow'], around, 'allRound'),
  'towing': light('Towing light', ['yellow'], astern, 'towing'),
}

export function rangeCitation(kind: NavigationLightKind, length: LengthClass): Citation {
  const fromMemory = lightTypes[kind].ranges === 'stern' && (length === 'under 12 m' || length === '50 m and over')
  return { source: 'colreg', place: `rule 22, vessels of ${length}`, standing: fromMemory ? 'from memory' : 'public law' }
}
export const arcCitation: Citation = { source: 'colreg', place: 'rule 21' }
/** Makers print 112° for 112.5°. Common practice, no source. */
export const arcToleranceDeg = 1

/** Least intensity by range, as the law prints it: the formula, rounded. */
export const intensityTable = [
  { rangeNmi: 1, intensityCd: 0.9 }, { rangeNmi: 2, intensityCd: 4.3 }, { rangeNmi: 3, intensityCd: 12 }, { rangeNmi: 4, intensityCd: 27 },
  { rangeNmi: 5, intensityCd: 52 }, { rangeNmi: 6, intensityCd: 94 },
] as const
export const intensityCitation: Citation = { source: 'cfr-33-84', place: '84.15, table; the same in COLREG annex I, section 8' }

/** Where a light must be seen in full: 5° above and below the horizontal (annex I, section 10, from memory). */
export const lightBand = { lowestDeg: -5, highestDeg: 5 } as const
/** Within 5° of the ends of its sector a light may already fade, but not a sidelight ahead. */
export const fadingDeg = 5
export const sectorCitation: Citation = { source: 'colreg', place: 'annex I, section 9: full intensity to within 5° of the ends of the sector', standing: 'published' }
export const allRoundObscured = { widthDeg: 6, citation: { source: 'colreg', place: 'annex I, section 9: all-round lights not obscured over more than 6°; anchor lights as high as practicable', standing: 'published' } } as const

/** Where a light must shine in full. */
export function fullSectorOf(kind: NavigationLightKind): Sector {
  const { fromDeg, widthDeg } = lightTypes[kind].sector
  if (widthDeg === 360) return { fromDeg, widthDeg }
  const [start, end] = [kind === 'starboard side' ? 0 : fadingDeg, kind === 'port side' ? 0 : fadingDeg]
  return { fromDeg: fromDeg + start, widthDeg: widthDeg - start - end }
}

// --- what a vessel must have -----------------------------------------------------------------------------------------
export interface LightNeed {
  readonly when: 'under power' | 'under sail' | 'at anchor'
  readonly what: string
  /** Any of these sets makes it up. */
  readonly sets: readonly (readonly NavigationLightKind[])[]
  readonly citation: Citation
}
const apart: readonly NavigationLightKind[] = ['port side', 'starboard side']

/** Rules 23, 25 and 30, from memory. A sailing vessel that has an engine is power-driven while it runs. */
export function lightNeeds(propulsion: NonNullable<Identity['propulsion']>, lengthM: number, hasEngine: boolean): readonly LightNeed[] {
  const rule = (place: string): Citation => ({ source: 'colreg', place })
  const [small, short] = [lengthM < 12, lengthM < 20]
  const sides = short ? [apart, ['both sides'] as const] : [apart]
  const powered: readonly LightNeed[] = [
    { when: 'under power', what: lengthM >= 50 ? 'two masthead lights' : small ? 'masthead light, or all-round white light' : 'masthead light', sets: lengthM >= 50 ? [['masthead', 'masthead']] : small ? [['masthead'], ['all-round white']] : [['masthead']], citation: rule('rule 23') },
    { when: 'under power', what: short ? 'sidelights, or both in one lantern' : 'sidelights', sets: sides, citation: rule('rules 21 and 23') },
    { when: 'under power', what: small ? 'sternlight, or all-round white light' : 'sternlight', sets: small ? [['stern'], ['all-round white']] : [['stern']], citation: rule('rule 23') },
  ]
  const sailing: readonly LightNeed[] = [
    { when: 'under sail', what: short ? 'sidelights, in one lantern or tricolour light' : 'sidelights', sets: short ? [...sides, ['tricolour']] : sides, citation: rule('rule 25') },
    { when: 'under sail', what: short ? 'sternlight, or tricolour light' : 'sternlight', sets: short ? [['stern'], ['tricolour']] : [['stern']], citation: rule('rule 25') },
  ]
  return [
    ...(propulsion === 'sailing' ? sailing : []),
    ...(propulsion === 'power-driven' || hasEngine ? powered : []),
    ...(lengthM >= 7 ? [{ when: 'at anchor' as const, what: lengthM >= 50 ? 'two all-round white lights' : 'all-round white light', sets: [lengthM >= 50 ? ['all-round white', 'all-round white'] as const : ['all-round white'] as const], citation: rule('rule 30') }] : []),
  ]
}

// --- where they stand ------------------------------------------------------------------------------------------------
const annexI = (place: string, standing?: Citation['standing']): Citation => ({ source: 'colreg', place: `annex I, ${place}`, ...(standing === undefined ? {} : { standing }) })
export const lightPlaces = {
  /** 20 m and over: 6 m above the hull, or the beam where that is more, up to 12 m. */
  mastheadAboveHull: { leastM: 6, mostM: 12, citation: annexI('section 2(a): 6 m above the hull, or the beam up to 12 m') },
  mastheadAboveGunwale: { leastM: 2.5, citation: annexI('section 2(c): 12 m to under 20 m') },
  mastheadAboveSidelights: { leastM: 1, citation: annexI('section 2(d): under 12 m') },
  lanternBelowMasthead: { leastM: 1, citation: annexI('section 2(h): sidelights in one lantern at least 1 m below the masthead light', 'published') },
  sidelightShare: { shareFactor: 0.75, citation: annexI('section 2(g): not higher than three quarters of the height of the masthead light above the hull') },
  sidelightsAbaftMasthead: { citation: annexI('section 3: from 20 m the sidelights not forward of the masthead light', 'published') },
  oneMasthead: { citation: annexI('section 3: from 20 m one masthead light forward of amidships', 'published') },
  twoMastheads: { lengthFactor: 0.5, mostM: 100, stemFactor: 0.25, citation: annexI('section 3: two masthead lights', 'published') },
} as const
