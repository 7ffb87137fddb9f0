/** Navigation lights against the table of rule 22 and annex I; what is from memory is said in tests/reference and beside the case. */
import { describe, expect, it } from 'vitest'
import { fullSectorOf, intensityTable, lengthClassOf, lightTypes, rangesNmi } from '../../../src/references/tables/navigation-lights.js'
import type { Equipment, Identity, NavigationLightKind } from '../../../src/model/vessel.js'
import { referenceTable } from '../../support/reference-table.js'
import { anEquipment } from '../../support/vessel-builder.js'
import { aBoat, aLight, aStructure, idsOf, lightsAsTheyShould, placementOf, reasonsOf } from './support.js'

const boatWith = (lights: readonly Equipment[], identity: Partial<Identity> = {}) => aBoat({ equipment: lights }, identity)
/** The sound set with some lights replaced by others of their tags; `null` leaves one out. */
const replaced = (changes: Readonly<Record<string, Equipment | null>>): readonly Equipment[] =>
  lightsAsTheyShould.flatMap(light => (light.tag in changes ? changes[light.tag] ?? [] : [light]))

describe('tables', () => {
  const lengths = { length_lt_12m_nm: 'under 12 m', '12_to_lt_20m_nm': '12 m to under 20 m', '20_to_lt_50m_nm': '20 m to under 50 m', ge_50m_nm: '50 m and over' } as const
  const kinds: Readonly<Record<string, readonly NavigationLightKind[]>> = {
    'masthead': ['masthead'], 'sidelight': ['port side', 'starboard side'], 'sternlight': ['stern'], 'towing light': ['towing'],
    'all-round white/red/green/yellow': ['all-round white', 'all-round red', 'all-round green', 'all-round yellow'],
  }
  it.each(referenceTable('placement-navlight-ranges'))('has the ranges of rule 22 for a $light', row => {
    expect(kinds[row['light']!]).toBeDefined()
    for (const kind of kinds[row['light']!]!) {
      for (const [column, length] of Object.entries(lengths)) expect(rangesNmi[lightTypes[kind].ranges][length]).toBe(Number(row[column]))
      expect(lightTypes[kind].sector.widthDeg).toBe(Number(row['arc_deg']))
    }
  })
  it('has the intensities that the law prints', () => {
    expect(intensityTable).toEqual(referenceTable('placement-navlight-intensity').map(row => ({ rangeNmi: Number(row['range_nm']), intensityCd: Number(row['intensity_cd_published']) })))
  })
  // Rule 21: two sidelights and a sternlight, or masthead light and sternlight, make a whole round.
  it('has sectors that make a whole round and meet', () => {
    const [port, starboard, stern, masthead] = (['port side', 'starboard side', 'stern', 'masthead'] as const).map(kind => lightTypes[kind].sector)
    expect(port!.widthDeg + starboard!.widthDeg + stern!.widthDeg).toBe(360)
    expect(masthead!.widthDeg + stern!.widthDeg).toBe(360)
    expect([(port!.fromDeg + port!.widthDeg) % 360, starboard!.widthDeg, (stern!.fromDeg + stern!.widthDeg) % 360]).toEqual([starboard!.fromDeg, stern!.fromDeg, port!.fromDeg])
  })
  it('classes lengths from their lower end', () => {
    expect([11.99, 12, 19.99, 20, 49.99, 50].map(lengthClassOf)).toEqual(['under 12 m', '12 m to under 20 m', '12 m to under 20 m', '20 m to under 50 m', '20 m to under 50 m', '50 m and over'])
  })
  it('lets a light fade at the ends of its sector, a sidelight not ahead', () => {
    expect(fullSectorOf('starboard side')).toEqual({ fromDeg: 0, widthDeg: 107.5 })
    expect(fullSectorOf('port side')).toEqual({ fromDeg: 252.5, widthDeg: 107.5 })
    expect(fullSectorOf('stern')).toEqual({ fromDeg: 117.5, widthDeg: 125 })
    expect(fullSectorOf('all-round white')).toEqual({ fromDeg: 0, widthDeg: 360 })
  })
})

describe('what she must have', () => {
  const some = (...kinds: readonly NavigationLightKind[]): readonly Equipment[] => kinds.map((kind, i) => aLight(`E${i}`, kind, null))
  const missingFor = (lights: readonly Equipment[], identity: Partial<Identity>): readonly string[] =>
    placementOf(boatWith(lights, identity)).findings.filter(({ id }) => id === 'PLC104').map(({ context }) => `${context!['what']} ${context!['when']}`)
  it('is there on a sound boat of 15 and of 24 m', () => {
    expect(idsOf(boatWith(lightsAsTheyShould))).toEqual([])
    expect(idsOf(boatWith(replaced({ E3: aLight('E3', 'masthead', [12, 0, 8]) }), { lengthM: 24, beamM: 6 }))).toEqual([])
  })
  it.each([
    ['power-driven', 15, ['port side', 'starboard side', 'masthead'], ['sternlight under power', 'all-round white light at anchor']],
    ['power-driven', 15, ['both sides', 'masthead', 'stern', 'all-round white'], []],
    ['power-driven', 20, ['both sides', 'masthead', 'stern', 'all-round white'], ['sidelights under power']],
    ['power-driven', 10, ['both sides', 'all-round white'], []],
    ['power-driven', 12, ['both sides', 'all-round white'], ['masthead light under power', 'sternlight under power']],
    ['power-driven', 6.9, ['both sides', 'masthead', 'stern'], []],
    ['power-driven', 50, ['port side', 'starboard side', 'masthead', 'stern', 'all-round white'], ['two masthead lights under power', 'two all-round white lights at anchor']],
    ['sailing', 15, ['tricolour', 'all-round white'], []],
    ['sailing', 20, ['tricolour', 'all-round white'], ['sidelights under sail', 'sternlight under sail']],
    ['sailing', 15, ['port side', 'stern', 'all-round white'], ['sidelights, in one lantern or tricolour light under sail']],
  ] as const)('%s, %d m, with %j misses %j', (propulsion, lengthM, kinds, missing) => {
    expect(missingFor(some(...kinds), { propulsion, lengthM })).toEqual(missing)
  })
  it('is that of a power-driven vessel as well where a sailing vessel has an engine', () => {
    expect(missingFor([...some('tricolour', 'all-round white'), anEquipment({ tag: 'M1', kind: 'engine' })], { propulsion: 'sailing' })).toHaveLength(3)
  })
  it('is not known to be missing while a light is not described, nor without length, propulsion or lights', () => {
    expect(placementOf(boatWith([...replaced({ E4: null }), anEquipment({ tag: 'E9', kind: 'navigation light' })])).findings).toEqual([])
    expect(reasonsOf(boatWith([...replaced({ E4: null }), anEquipment({ tag: 'E9', kind: 'navigation light' })]))).toContain('Sandpiper: whether all navigation lights are there: the kind of E9 is not recorded')
    expect(reasonsOf(boatWith(lightsAsTheyShould, { propulsion: null })).join()).toContain('whether she is power-driven or sailing is not recorded')
    expect(reasonsOf(boatWith(lightsAsTheyShould, { lengthM: null })).join()).toContain('the length of the vessel is not recorded')
    expect(reasonsOf(aBoat())).toEqual(['Sandpiper: which navigation lights she needs: no navigation light is recorded'])
  })
})

describe('range and intensity', () => {
  // A motor boat of 15 m: sidelights 2 NM and 4.3 cd, masthead light 3 NM and 12 cd.
  it.each([
    ['port side', { rangeNmi: 2, intensityCd: 4.3 }, []], ['port side', { rangeNmi: 1.9 }, ['PLC105 E1']], ['port side', { rangeNmi: 2, intensityCd: 4.29 }, ['PLC106 E1']],
    ['port side', { rangeNmi: 1, intensityCd: 0.9 }, ['PLC105 E1']], ['port side', { rangeNmi: null, intensityCd: 4 }, ['PLC106 E1']],
    ['masthead', { rangeNmi: 3, intensityCd: 12 }, []], ['masthead', { rangeNmi: 2 }, ['PLC105 E3']], ['masthead', { rangeNmi: 3, intensityCd: 11.9 }, ['PLC106 E3']],
    ['port side', { arcDeg: 112 }, []], ['port side', { arcDeg: 135 }, ['PLC107 E1']],
  ] as const)('of a %s with %j: %j', (kind, given, ids) => {
    const light = kind === 'masthead' ? aLight('E3', kind, [8.5, 0, 8], given) : aLight('E1', kind, [8, 1.6, 2.5], given)
    expect(idsOf(boatWith(replaced({ [light.tag]: light })))).toEqual(ids)
  })
  it('are not assessed where neither is recorded', () => {
    expect(reasonsOf(boatWith(replaced({ E1: aLight('E1', 'port side', [8, 1.6, 2.5], { rangeNmi: null }) })))).toContain('E1: navigation light: its range is not recorded')
    expect(reasonsOf(boatWith(replaced({ E1: aLight('E1', 'port side', [8, 1.6, 2.5], { arcDeg: null }) })))).toContain('E1: navigation light: the arc over which it shows is not recorded')
  })
})

describe('places', () => {
  const masthead = (heightM: number, forwardM = 8.5) => replaced({ E3: aLight('E3', 'masthead', [forwardM, 0, heightM]) })
  const low = (id: string, lights: readonly Equipment[], identity: Partial<Identity> = {}) => idsOf(boatWith(lights, identity)).includes(id)
  // Annex I 2(c), from memory: 2.5 m above the gunwale, which is at 1.5 m.
  it('12 m to under 20 m: masthead light 2.5 m above the gunwale', () => {
    expect([low('PLC108 E3', masthead(4)), low('PLC108 E3', masthead(3.99))]).toEqual([false, true])
  })
  // Annex I 2(a), from memory: 6 m above the hull, the beam where that is more, at most 12 m.
  it.each([[4.4, 7.5], [8, 9.5], [14, 13.5]] as const)('20 m and over, beam %d m: at least %d m above the waterline', (beamM, heightM) => {
    const identity = { lengthM: 24, beamM }
    expect([low('PLC108 E3', masthead(heightM, 13), identity), low('PLC108 E3', masthead(heightM - 0.01, 13), identity)]).toEqual([false, true])
  })
  // Annex I 2(d), from memory: 1 m above the sidelights, which are at 2.5 m; an all-round light in its place as well.
  it('under 12 m: masthead or all-round light 1 m above the sidelights', () => {
    expect([low('PLC108 E3', masthead(3.5), { lengthM: 10 }), low('PLC108 E3', masthead(3.49), { lengthM: 10 })]).toEqual([false, true])
    expect(low('PLC108 E5', replaced({ E3: null, E4: null, E5: aLight('E5', 'all-round white', [5, 0, 3.4]) }), { lengthM: 10 })).toBe(true)
  })
  // Annex I 2(h): lantern of both sidelights at least 1 m below the masthead light.
  it('a lantern of both sidelights lies 1 m below the masthead light', () => {
    const lantern = (heightM: number) => [...replaced({ E1: null, E2: null }), aLight('E6', 'both sides', [9, 0, heightM])]
    expect([low('PLC108 E3', lantern(7)), low('PLC108 E3', lantern(7.01))]).toEqual([false, true])
  })
  // Annex I 2(g), from memory: masthead light at 8 m, 6.5 m above the gunwale; three quarters are 4.875 m, 6.375 m above the water.
  it('sidelights are at most three quarters as high above the hull', () => {
    const side = (heightM: number) => replaced({ E1: aLight('E1', 'port side', [8, 1.6, heightM]) })
    expect([low('PLC109 E1', side(6.375)), low('PLC109 E1', side(6.38))]).toEqual([false, true])
  })
  it('sidelights are on their own sides', () => {
    expect(idsOf(boatWith(replaced({ E2: aLight('E2', 'starboard side', [8, 1.6, 2.5]) })))).toEqual(['PLC110 E2'])
    expect(idsOf(boatWith(replaced({ E1: aLight('E1', 'port side', [8, 0, 2.5]) })))).toEqual(['PLC110 E1'])
  })
  it('from 20 m: one masthead light forward of amidships, sidelights not forward of it', () => {
    const identity = { lengthM: 24, beamM: 5 }
    expect(idsOf(boatWith(masthead(8, 12), identity))).toEqual([])
    expect(idsOf(boatWith(masthead(8, 11.9), identity))).toEqual(['PLC112 E3'])
    expect(idsOf(boatWith([...masthead(8, 12)].map(light => (light.tag === 'E1' ? aLight('E1', 'port side', [12.1, 1.6, 2.5]) : light)), identity))).toEqual(['PLC112 E1'])
  })
  it('two masthead lights stand half the length apart, the forward one in the first quarter', () => {
    const two = (forwardM: number, afterM: number) => [...masthead(12, forwardM), aLight('E7', 'masthead', [afterM, 0, 18]), aLight('E8', 'all-round white', [1, 0, 9])]
    const identity = { lengthM: 60, beamM: 9 }
    expect(idsOf(boatWith(two(45, 15), identity))).toEqual([])
    expect(idsOf(boatWith(two(45, 15.1), identity))).toEqual(['PLC112 E7'])
    expect(idsOf(boatWith(two(44.9, 14), identity))).toEqual(['PLC112 E3'])
  })
  it('are not judged without the height of the gunwale or a position', () => {
    const vessel = boatWith(lightsAsTheyShould, { stability: { centreOfGravityM: null, metacentricHeightM: null, includesEquipment: null, gunwaleHeightM: null } })
    expect(reasonsOf(vessel)).toContain('Sandpiper: height of masthead light and sidelights: the height of the gunwale is not recorded')
    expect(reasonsOf(boatWith(replaced({ E3: aLight('E3', 'masthead', null) })))).toContain('E1: navigation light: its height against the masthead light: the position of E3 is not recorded')
    expect(reasonsOf(boatWith(replaced({ E3: aLight('E3', 'masthead', null) })))).toContain('E3: navigation light: where it stands and what hides it: its position is not recorded')
  })
})

describe('what hides a light', () => {
  const hidden = (structures: Parameters<typeof aStructure>[], lights: readonly Equipment[] = lightsAsTheyShould) => ({ ...boatWith(lights), structures: structures.map(given => aStructure(...given)) })
  // The all-round light at 5, 0, 9: a pole 1 m ahead of it, w wide, hides 2 · atan(w / 2): 0.1048 m are 6°.
  it.each([[0.1048, []], [0.105, ['PLC111 E5']]] as const)('all round up to 6°: a pole of %d m at 1 m', (wideM, ids) => {
    expect(idsOf(hidden([['ST1', [6, wideM / 2, 8.5], [6.1, -wideM / 2, 10]]]))).toEqual(ids)
  })
  it('counts only where the light must show: abaft a masthead light nothing, before it all', () => {
    const before = placementOf(hidden([['ST1', [9.5, 0.1, 7], [9.6, -0.1, 9]]])).lights.lights.find(({ tag }) => tag === 'E3')!.obscured!
    // 2 · atan(0.1)
    expect(before.comparison).toMatchObject({ value: expect.closeTo(11.421, 3), within: false, limit: { value: 0 } })
    expect(idsOf(hidden([['ST1', [7.4, 0.1, 7], [7.5, -0.1, 8.5]]]))).toEqual([])
  })
  it('is not what lies more than 5° below, nor what the light itself stands in, which is said', () => {
    // 1 m below at 11.5 m is 4.97° down, at 11.4 m 5.01°.
    expect(idsOf(hidden([['ST1', [9, 0.5, 2], [19.9, -0.5, 7]]]))).toEqual([])
    expect(idsOf(hidden([['ST1', [9, 0.5, 2], [20, -0.5, 7]]]))).toEqual(['PLC111 E3'])
    expect(idsOf(hidden([['ST1', [8.4, 0.1, 2], [8.6, -0.1, 10]]]))).toEqual([])
    expect(reasonsOf(hidden([['ST1', [8.4, 0.1, 2], [8.6, -0.1, 10]]]))).toContain('E3: navigation light: whether ST1 hides it: its position lies inside it')
  })
  it('is not assessed where no structure is recorded', () => {
    expect(reasonsOf(boatWith(lightsAsTheyShould))).toEqual(['Sandpiper: what hides navigation lights: no structure is recorded'])
  })
})
