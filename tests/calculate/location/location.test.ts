/** Where things are: numbers, places in a box and levels counted by hand. */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { levelsOf } from '../../../src/calculate/location/levels.js'
import { placesWithin } from '../../../src/calculate/location/places-within.js'
import type { LocationResults } from '../../../src/model/results/location.js'
import type { Box, Photograph, Position, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBusbar, aCircuit, anEquipment, aPanel, aVessel, aZone } from '../../support/vessel-builder.js'

const aBox = (fromM: Position, toM: Position): Box => ({ fromM, toM })
const locationOf = (given: Partial<Vessel>): LocationResults => calculate(aVessel(given), bases.iso).location
const idsOf = (given: Partial<Vessel>) => locationOf(given).findings.map(({ id, subject }) => `${id} ${subject.id}`)
const torch = (tag: string, zoneTag: string | null, positionM: Position | null = null, given = {}) => anEquipment({ tag, kind: 'torch', zoneTag, positionM, ...given })

const cabin = aZone({ tag: 'cabin', box: aBox([2, -1, 0], [6, 1, 2]) })

describe('numbers', () => {
  const { byItem } = locationOf({
    zones: [cabin, aZone({ tag: 'bow' })],
    equipment: [torch('E10', 'cabin'), torch('E2', 'cabin', [3, 0, 1]), torch('E1', 'bow'), torch('E3', null), torch('E4', 'cabin', null, { status: 'removed' })],
    batteries: [aBattery({ tag: 'G1', zoneTag: 'cabin', positionM: [5, 0.5, 0.2] })], panels: [aPanel({ tag: 'A1', zoneTag: 'cabin' })], busbars: [aBusbar({ tag: 'X1', zoneTag: 'cabin' })],
  })
  const numberOf = (tag: string) => byItem.get(tag)?.placeNumber

  it('go from 1 in each zone in the order in which people read tags, over equipment, batteries, busbars and panels', () =>
    expect(['A1', 'E2', 'E10', 'G1', 'X1', 'E1'].map(numberOf)).toEqual([1, 2, 3, 4, 5, 1]))
  it('are given to nothing that has no zone, and what has been removed has no place', () => {
    expect(byItem.get('E3')).toEqual({ zoneTag: null, placeNumber: null, positionM: null, drawnAtM: null })
    expect(byItem.has('E4')).toBe(false)
  })
  it('stand where the item is, else somewhere in the box, else nowhere', () => {
    expect(byItem.get('E2')!.drawnAtM).toEqual([3, 0, 1])
    expect(byItem.get('E1')!.drawnAtM).toBeNull()
    for (const tag of ['A1', 'E10', 'X1']) expect(byItem.get(tag)!.positionM).toBeNull()
  })
})

describe('places of what is only known to be in a zone', () => {
  // 4 m long, 2 m broad: two cells of 2 by 2 m, their middles 1 m from the ends; height 0 to 2 m.
  it('are the middles of equal cells', () => expect(placesWithin(cabin.box!, [], 2)).toEqual([[3, 0, 1], [5, 0, 1]]))
  // √(2 · 4 / 2) = 2 columns, 1 row. Of the two cells one is taken; of three, √6 = 2.4, 2 columns and 2 rows: 2 by 1 m each, the first holds it.
  it('leave out the cells in which something is known to be', () => expect(placesWithin(cabin.box!, [[3, 0.5, 1]], 2)).toEqual([[5, 0.5, 1], [3, -0.5, 1]]))
  it('are found in a box without breadth, length or both', () => {
    expect(placesWithin(aBox([0, 1, 0], [4, 1, 0]), [], 2)).toEqual([[1, 1, 0], [3, 1, 0]])
    expect(placesWithin(aBox([1, -1, 0], [1, 1, 0]), [], 2)).toEqual([[1, 0.5, 0], [1, -0.5, 0]])
    expect(placesWithin(aBox([1, 1, 1], [1, 1, 1]), [[1, 1, 1], [1, 1, 1]], 3)).toEqual([[1, 1, 1], [1, 1, 1], [1, 1, 1]])
  })
  it('are as many as are asked for, apart from one another and from what is known', () => {
    const taken = Array.from({ length: 13 }, (_, i): Position => [2 + 0.3 * i, -1 + 0.15 * i, 0])
    const places = placesWithin(cabin.box!, taken, 22)
    expect(places).toHaveLength(22)
    expect(new Set(places.map(String)).size).toBe(22)
  })
})

describe('levels', () => {
  const zone = (tag: string, fromM: Position, toM: Position) => ({ tag, box: aBox(fromM, toM) })
  it('put a space above those that lie under it, and side by side what does not touch in plan', () => {
    const boat = [
      zone('wheelhouse', [2, -1, 1], [5, 1, 3]), zone('bilge', [2, -1, -1], [4, 1, 0]), zone('locker', [3, -1, 0], [4, 1, 1]), zone('lazarette', [0, -1, 0], [2, 1, 1]), zone('cockpit', [0, -1, 1], [2, 1, 2]),
    ]
    expect(levelsOf(boat)).toEqual([['bilge', 'lazarette'], ['locker', 'cockpit'], ['wheelhouse']])
  })
  // Of the smaller, 1 m² in plan, 0.1 and 0.11 m² are shared.
  it('do not count a tenth of the smaller as lying over it', () => {
    expect(levelsOf([zone('a', [0, 0, 0], [1, 1, 1]), zone('b', [0.9, 0, 1], [3, 1, 2])])).toEqual([['a', 'b']])
    expect(levelsOf([zone('a', [0, 0, 0], [1, 1, 1]), zone('b', [0.89, 0, 1], [3, 1, 2])])).toEqual([['a'], ['b']])
  })
  it('are none without boxes', () => expect(levelsOf([])).toEqual([]))
})

describe('positions held against boxes', () => {
  // The box ends at 6 m ahead, 1 m to port, 2 m up.
  it.each<readonly [Position, number]>([[[6.3, 1.4, 1], 0.5], [[4, 0, -0.7], 0.7], [[1, -3, 4], 3]])('%j is %d m outside', (positionM, distanceM) => {
    const [finding] = locationOf({ zones: [cabin], equipment: [torch('E1', 'cabin', positionM)] }).findings
    expect(finding).toMatchObject({ id: 'LOC301', evidence: { distanceM: expect.closeTo(distanceM, 9) }, limit: { value: 0.05 } })
  })
  it.each<Position>([[2, -1, 0], [6, 1, 2], [6.05, 0, 1], [4, -1.04, 1]])('%d %d %d counts as inside', (...positionM) =>
    expect(idsOf({ zones: [cabin], equipment: [torch('E1', 'cabin', positionM)] })).toEqual([]))
  it('tell of batteries too, and not of what has been removed', () => {
    expect(idsOf({ zones: [cabin], batteries: [aBattery({ tag: 'G1', zoneTag: 'cabin', positionM: [0, 0, 0] })] })).toEqual(['LOC301 G1'])
    expect(idsOf({ zones: [cabin], equipment: [torch('E1', 'cabin', [0, 0, 0], { status: 'removed' })] })).toEqual([])
  })
})

describe('zones', () => {
  it('without a box are told of once each where others have one, and only where something is in them', () =>
    expect(idsOf({ zones: [cabin, aZone({ tag: 'bow' }), aZone({ tag: 'mast' })], equipment: [torch('E1', 'bow'), torch('E2', 'bow')] })).toEqual(['LOC201 bow']))
  it('none of which has a box leave one gap and no finding', () => {
    const none = locationOf({ zones: [aZone({ tag: 'bow' }), aZone({ tag: 'aft' })], equipment: [torch('E1', 'bow'), torch('E2', 'aft')] })
    expect(none.findings).toEqual([])
    expect(none.notAssessed).toEqual([{ subjectTag: 'Test vessel', reason: 'no zone has a box (from and to), so there is no plan of the boat' }])
    expect(locationOf({ zones: [cabin], equipment: [torch('E1', 'cabin')] }).notAssessed).toEqual([])
  })
  it('may lie in one another, but not in one box', () => {
    const inside = aZone({ tag: 'locker', box: aBox([2, -1, 0], [3, 1, 2]) })
    expect(idsOf({ zones: [cabin, inside] })).toEqual([])
    expect(idsOf({ zones: [cabin, aZone({ tag: 'galley', box: cabin.box })] })).toEqual(['LOC304 galley'])
  })
})

describe('pictures', () => {
  const zones = [cabin, aZone({ tag: 'bow', box: aBox([6, -1, 0], [8, 1, 2]) })]
  const photograph = (given: Partial<Photograph>): Photograph => ({ file: 'a.jpg', caption: 'A', zoneTag: 'cabin', date: null, by: null, callOuts: [], ...given })
  const callOut = (itemTag: string) => ({ itemTag, fromLeftPercent: 1, fromTopPercent: 1, words: null })
  it('name what is in their zone, or in any where they name none', () => {
    const equipment = [torch('E1', 'cabin'), torch('E2', 'bow'), torch('E3', null)]
    const circuits = [aCircuit({ tag: 'C1', fedFromTag: 'G1', zoneTag: 'bow' }), aCircuit({ tag: 'C2', fedFromTag: 'G1' })]
    const batteries = [aBattery({ tag: 'G1', zoneTag: 'cabin', positionM: [3, 0, 0] })]
    const of = (given: Partial<Photograph>) => locationOf({ zones, equipment, circuits, batteries, photographs: [photograph(given)] }).findings.map(({ id, field, context }) => `${id} ${field} ${context?.['item'] ?? ''}`)
    expect(of({ callOuts: ['E1', 'E2', 'E3', 'C1', 'C2', 'cabin'].map(callOut) })).toEqual(['LOC302 callOuts.1.itemTag E2', 'LOC302 callOuts.3.itemTag C1'])
    expect(of({ zoneTag: null, callOuts: [callOut('E2')] })).toEqual([])
  })
  it('do not name what is gone', () =>
    expect(idsOf({ zones, equipment: [torch('E1', 'cabin', null, { status: 'removed' })], photographs: [photograph({ callOuts: [callOut('E1')] })] })).toEqual(['LOC303 a.jpg']))
  it.each([['a.JPG', []], ['a.jpeg', []], ['b/a.png', []], ['a.heic', ['LOC202 a.heic']], ['photo.d/a', ['LOC202 photo.d/a']], ['a.pdf', ['LOC202 a.pdf']]])('%s: %j', (file, ids) =>
    expect(idsOf({ photographs: [photograph({ file, zoneTag: null })] })).toEqual(ids))
  it('hold for the yard’s drawings', () =>
    expect(idsOf({ arrangementDrawings: [{ file: 'plan.dwg', view: 'plan', lowerLeftM: [0, 0, 0], upperRightM: [1, 1, 1] }] })).toEqual(['LOC202 plan.dwg']))
})
