import { describe, expect, it } from 'vitest'
import { placementPages } from '../../../src/view/pages/placement/placement.view.js'
import { placementFacts } from '../../../src/view/pages/placement/item-facts.js'
import { equipmentPages } from '../../../src/view/pages/equipment/equipment.view.js'
import { aBattery, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aBoat, aLight, aStructure, lightsAsTheyShould } from '../../calculate/placement/support.js'
import { locate } from '../../../src/findings/locate.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

type Given = Parameters<typeof contextOf>[0]
function pageOf(vessel: Given) {
  const context = contextOf(vessel)
  return placementPages(contextOf(vessel, { findings: locate(context.results.placement.findings, () => null) }))[0]!
}

const compass = anEquipment({ tag: 'B1', name: 'Compass', kind: 'compass', compassClass: 'steering', positionM: [8, 0, 2] })
const speaker = anEquipment({ tag: 'P1', name: 'Loudspeaker', kind: 'loudspeaker', positionM: [8, 0.3, 2], compassSafeStandardM: 1, compassSafeSteeringM: 0.6, massKg: 1.2 })
const transducer = anEquipment({
  tag: 'B3', name: 'Depth', kind: 'transducer', positionM: [6, 0, -0.6],
  transducer: { frequencyKHz: 200, powerW: 600, beamDeg: 20, beamAcrossDeg: 60, blindM: 0.5, depthOffset: { reads: 'below keel', offsetM: 0.6 } },
})
const radar = anEquipment({
  tag: 'B7', name: 'Radar', kind: 'radar scanner', positionM: [4, 0, 4],
  radar: { frequencyMHz: null, peakPowerW: null, pulseUs: null, repetitionHz: null, gainDbi: null, horizontalBeamDeg: null, verticalBeamDeg: 25, meanPowerW: null, safeDistanceM: null },
})
const heavy = anEquipment({ tag: 'M1', name: 'Air conditioner', massKg: 300, positionM: [9, 1, 0.5] })
const boat = aBoat({
  equipment: [compass, speaker, transducer, radar, heavy, ...lightsAsTheyShould],
  structures: [aStructure('ST1', [5.3, 0.1, 2], [5.5, -0.1, 10])],
  standingPlaces: [{ tag: 'SP1', name: 'At the wheel', zoneTag: null, positionM: [7, 0, 1], headHeightM: 1.8 }],
})

describe('a vessel with nothing to place', () => {
  it('has no such page', () => expect(placementPages(contextOf(aVessel()))).toEqual([]))
})

describe('the page', () => {
  const page = pageOf(boat)
  const words = wordsOn(page)

  it('says in plain words what is wrong, and defers to flag state and naval architect', () => {
    expect(words).toContain('P1 Loudspeaker stands too close.')
    expect(words).toContain('B3 Depth shows depth below keel. 1.90 m too deep: there is less water than it shows. Where the transducer measures 5.00 m it shows 5.60 m; right is 3.70 m.')
    expect(words).toMatch(/B7 Radar: blind or weak over 355\.6 ° to 4\.4 °, right ahead\./)
    for (const who of ['for the flag state to decide', 'work for a naval architect', 'common practice']) expect(words).toContain(who)
  })
  it('begins with the caution about magnets', () => {
    expect(page.blocks.find(block => block.is === 'callout')).toMatchObject({ signal: 'WARNING', title: 'Magnets and currents turn the compass' })
  })
  it('gives each distance with the one that is declared', () => {
    expect(cellsOf(tableIn(page, 'compass-b1'))).toEqual([['P1 Loudspeaker', '0.30 m', '0.60 m steering', '-0.30 m too close']])
    expect(tableIn(page, 'compass-b1').rows[0]!.level).toBe('error')
  })
  it('lists the lights that she must have and those that there are', () => {
    expect(cellsOf(tableIn(page, 'lights-required'))).toContainEqual(['masthead light', 'under power', 'E3'])
    expect(cellsOf(tableIn(page, 'lights')).find(([light]) => light!.startsWith('E3'))).toEqual(['E3 Equipment E3, masthead light, white', '6.0 NM limit at least 3.0 NM within', '–', '225.0 ° 247.5 ° to 112.5 °', '0.0 ° limit at most 0.0 ° within'])
  })
  it('gives both offsets that may be set, with their sign', () => {
    expect(cellsOf(tableIn(page, 'depth-offsets'))).toEqual([['B3 Depth', '+0.60 m (2.0 ft) below keel wrong sign', '+0.60 m (2.0 ft)', '−1.30 m (4.3 ft)']])
    // 2 · 5 · tan 10° and 2 · 5 · tan 30°
    expect(cellsOf(tableIn(page, 'footprints'))[0]![1]).toBe('1.76 m × 5.77 m')
  })
  it('gives mass and moment of each item, heaviest first, so that the sums can be redone', () => {
    expect(cellsOf(tableIn(page, 'moments'))).toEqual([
      ['M1 Air conditioner', '300 kg', '9 m 2700 kg·m', '1 m 300 kg·m', '0.5 m 150 kg·m'], ['P1 Loudspeaker', '1.2 kg', '8 m 9.6 kg·m', '0.3 m 0.36 kg·m', '2 m 2.4 kg·m'],
    ])
    expect(words).toContain('Sums: 301.2 kg; 2709.6 kg·m forward, 300.36 kg·m to port, 152.4 kg·m up.')
    // atan(300.36 / (9301.2 · 0.9)) = 2.055°
    expect(words).toContain('heels her by 2.1 ° to port')
  })
  it('shows the working of what it says', () => {
    const titles = workingsOf(page).map(({ title }) => title.replaceAll('\u00A0', ' '))
    for (const title of ['P1 from B1', 'Offset of B3, depth below keel', 'Error with the offset that is set on B3', 'Intensity for 2.0 NM', 'Blind distance of B7', 'Heel from the fit', 'Centre of gravity of the fit']) expect(titles).toContain(title)
  })
  it('draws lights and radar with the same in words', () => {
    const drawings = page.blocks.filter(block => block.is === 'drawing')
    expect(drawings.map(({ id }) => id)).toEqual(['light-sectors', 'radar-sectors'])
    expect(words).toContain('E1 shows red from 247.5 ° to 0.0 °.')
    expect(words).toContain('B7 is blind 355.6 ° to 4.4 °.')
  })
  it('lists what stands in the way, and people', () => {
    expect(cellsOf(tableIn(page, 'structures'))).toEqual([['ST1 Structure ST1', '5.30 m to 5.50 m', '-0.10 m to 0.10 m', '2.00 m to 10.00 m']])
    expect(cellsOf(tableIn(page, 'standing-places'))).toEqual([['SP1 At the wheel', '7.00 m', '0.00 m', '1.00 m', '1.80 m']])
  })
  it('keeps its tables narrow and names each once', () => {
    const tables = tablesOf(page)
    expect(tables.filter(({ columns }) => columns.length > 5).map(({ id }) => id)).toEqual([])
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length)
  })
  it('ends with the findings and what is not assessed, by reason', () => {
    expect(words).toContain('PLC102')
    const silent = pageOf({ ...boat, structures: [] })
    expect(wordsOn(silent)).toContain('Sandpiper | what hides navigation lights: no structure is recorded')
  })
})

describe('on paper', () => {
  it('shows the items nearest to their limit', () => {
    const many = Array.from({ length: 15 }, (_, i) => ({ ...speaker, tag: `P${i + 1}`, positionM: [8, 1 + i, 2] as const }))
    const page = pageOf(aBoat({ equipment: [compass, ...many] }))
    expect(tableIn(page, 'compass-b1').rows).toHaveLength(15)
    const printed = tablesOf({ ...page, blocks: page.printed! }).find(({ id }) => id === 'compass-b1')!
    expect(printed.rows).toHaveLength(12)
    expect(JSON.stringify(printed.note)).toContain('3 items more')
  })
})

describe('doubtful and missing data', () => {
  it('is marked, and never as right', () => {
    const words = wordsOn(pageOf(aBoat({ equipment: [{ ...transducer, positionM: null }, { ...radar, positionM: null }, compass, aLight('E1', 'stern', null, { rangeNmi: null })] })))
    expect(words).toContain('B3 Depth shows depth below keel. wrong sign; by how much it is wrong: not assessed, the position of the transducer is not recorded.')
    expect(words).toContain('blind sector not assessed')
    expect(words).toContain('masthead light | under power | missing')
    expect(words).not.toMatch(/\bright, to within\b/)
  })
  it('draws more lights than one sheet holds on two', () => {
    const lights = Array.from({ length: 7 }, (_, i) => aLight(`E${i}`, 'all-round white', [5, 0, 9]))
    expect(pageOf(aBoat({ equipment: lights })).blocks.filter(block => block.is === 'drawing').map(({ id }) => id)).toEqual(['light-sectors', 'light-sectors-2'])
  })
})

describe('pages of items', () => {
  it('say what is recorded for their place', () => {
    const facts = (tag: string) => placementFacts(contextOf(boat), boat.equipment.find(item => item.tag === tag)!).map(({ label, value }) => `${label}: ${value.join('')}`.replaceAll('\u00A0', ' '))
    expect(facts('P1')).toEqual(['Compass safe distance: 1.00 m to a standard compass, 0.60 m to a steering compass'])
    expect(facts('E3')).toEqual(['Navigation light: masthead light, 6.0 NM, 225.0 °'])
    expect(facts('B3')).toEqual(['Transducer: 200 kHz, 600 W, 20.0 ° beam, 60.0 ° across, 0.50 m blind', 'Depth offset set: 0.60 m, for depth below keel'])
  })
  it('give mass and position of a battery too', () => {
    const page = equipmentPages(contextOf(aVessel({ batteries: [aBattery({ tag: 'G1', massKg: 60, positionM: [4, 0.5, 0.2] })] }))).find(({ key }) => key.endsWith('g1'))!
    expect(wordsOn(page)).toContain('Position 4.00 m forward of the transom, 0.50 m to port, 0.20 m above the waterline')
  })
})
