import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { examine } from '../../../src/build.js'
import { isThere } from '../../../src/model/lookup.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { conductorColours, type ConductorFunction } from '../../../src/references/tables/conductor-colours.js'
import type { ViewContext } from '../../../src/view/context.js'
import { endText, labelText } from '../../../src/model/cable-label.js'
import { legendCards, legendsOf } from '../../../src/view/pages/workshop/legends.view.js'
import { wireListPages } from '../../../src/view/pages/workshop/wire-lists.view.js'
import { workshopPages } from '../../../src/view/pages/workshop/workshop.view.js'
import { volumes } from '../../../src/view/volumes.js'
import type { Block, Page } from '../../../src/view/view-model.js'
import { aBus, aCable, aCableType, aCircuit, anEnd, anEquipment, anOutput, aPanel, aProtection, aSerialLink, aVessel, aWireway, aZone, mm2 } from '../../support/vessel-builder.js'
import { referenceTable } from '../../support/reference-table.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

const sample = await examine(fileURLToPath(new URL('../../../sample-vessel', import.meta.url)))
if (sample.status !== 'examined') throw new Error('the sample is no vessel')

const power = { use: 'power' as const, cores: 2, size: mm2(2.5) }
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'locker' }), aZone({ tag: 'helm' })],
  wireways: [aWireway({ tag: 'WW1', fromTag: 'helm', toTag: 'locker', lengthM: 4 })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'locker', ways: 4 })],
  circuits: [
    aCircuit({ tag: 'A1.9', fedFromTag: 'A1', way: 2, name: 'Second', loadTags: ['P2'] }), aCircuit({ tag: 'A1.10', fedFromTag: 'A1', way: 1, name: 'First', loadTags: ['P1'], protection: aProtection('blade fuse', 5) }),
    aCircuit({ tag: 'A1.3', fedFromTag: 'A1', way: 4, name: 'At the helm', zoneTag: 'helm', unprotectedReason: 'engine starting', loadTags: ['P1', 'P2'] }),
  ],
  equipment: [anEquipment({ tag: 'P1', zoneTag: 'helm' }), anEquipment({ tag: 'P2', zoneTag: 'locker' }), anEquipment({ tag: 'P3' })],
  cableTypes: [
    aCableType({ tag: '2x2.5', ...power }), aCableType({ tag: '1x16', ...power, cores: 1 }), aCableType({ tag: 'AC', ...power, use: 'ac power', cores: 3 }), aCableType({ tag: 'BD', use: 'bonding', cores: 1 }),
    aCableType({ tag: 'SG', use: 'signal', cores: 4 }), aCableType({ tag: 'BUS', use: 'can bus', busCable: 'light' }),
  ],
  cables: [
    aCable({ tag: 'W1', from: 'A1.10', to: 'P1:power', typeTag: '2x2.5' }), aCable({ tag: 'W2', from: 'A1.9', to: 'P2:power', typeTag: '2x2.5', status: 'planned' }),
    aCable({ tag: 'W3', from: 'P2:-', to: 'A1:-', typeTag: '1x16', carries: 'negative' }), aCable({ tag: 'W4', from: 'P3:x', to: 'P2:y', typeTag: 'SG', carries: 'none' }),
    aCable({ tag: 'W5', from: 'A1.3', to: 'P1:b', typeTag: 'AC' }), aCable({ tag: 'W6', from: 'P1:c', to: 'P2:c', typeTag: 'BD', carries: 'none' }), aCable({ tag: 'W9', from: 'P1:d', to: 'P2:d', status: 'removed' }),
  ],
  ...given,
})
const listsOf = (vessel: Vessel): ReadonlyMap<string, readonly (readonly string[])[]> =>
  new Map(wireListPages(contextOf(vessel)).map(page => [page.key, cellsOf(tableIn(asPrinted(page), 'wire-list'))]))
const asPrinted = (page: Page): Page => ({ ...page, blocks: page.printed ?? page.blocks })

/** How often each end of a cable stands in the lists, by cable, terminal and label. */
function endsListed(context: ViewContext): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const page of wireListPages(context)) {
    for (const [at, cable, , label] of cellsOf(tableIn(page, 'wire-list'))) {
      const key = `${cable!.split(' ')[0]} at ${at!.split(' ')[0]}: ${label}`
      counts.set(key, (counts.get(key) ?? 0) + 1)
    }
  }
  return counts
}

describe('wire lists', () => {
  it.each([['the sample vessel', sample.vessel], ['a boat with an item that has no zone', boat()]] as const)('have each end of each cable that is there once: %s', (_, vessel) => {
    const listed = endsListed(contextOf(vessel))
    const there = vessel.cables.filter(isThere)
    const counts = there.flatMap(cable => (['from', 'to'] as const).map(end => [`${cable.tag} at ${endText(cable[end])}: ${labelText(cable, end)}`, 1]))
    expect(there.length).toBeGreaterThan(4)
    expect([...listed].filter(([key]) => /^W\d+ at /.test(key))).toHaveLength(counts.length)
    for (const [key, count] of counts) expect([key, listed.get(key as string)]).toEqual([key, count])
  })

  it('go through a zone panel first, way by way, and then item by item; a device elsewhere is listed where it is', () => {
    const lists = listsOf(boat())
    expect([...lists.keys()]).toEqual(['workshop/wires-locker', 'workshop/wires-helm', 'workshop/zone-not-recorded'])
    expect(lists.get('workshop/wires-locker')!.map(([at]) => at)).toEqual(['A1:- Panel A1', 'A1.10 First', 'A1.9 Second', 'P2:- Equipment P2', 'P2:c', 'P2:power', 'P2:y'])
    expect(lists.get('workshop/wires-helm')!.map(([at]) => at)).toEqual(['A1.3 At the helm', 'P1:b Equipment P1', 'P1:c', 'P1:power'])
    expect(lists.get('workshop/zone-not-recorded')!.map(([at]) => at)).toEqual(['P3:x Equipment P3'])
  })

  it('say conductors with the colours of the rules, type, label, far end, length and route, and have boxes on paper', () => {
    const [, way] = listsOf(boat()).get('workshop/wires-locker')!
    expect(way).toEqual(['A1.10 First', 'W1 status not recorded', 'positive red, negative yellow or black', 'W1 A1.10 / P1:power', '2x2.5 2 × 2.5 mm²', 'P1:power Equipment P1 Zone helm', '4.00 m WW1', '☐', '☐', '☐'])
    const helm = listsOf(boat()).get('workshop/wires-helm')!
    expect(helm.map(row => row[2])).toEqual([
      'line brown or black, neutral light blue or white, protective earth green-yellow or green', 'line brown or black, neutral light blue or white, protective earth green-yellow or green',
      'bonding green-yellow or green', 'positive red, negative yellow or black',
    ])
    expect(listsOf(boat()).get('workshop/wires-locker')!.map(row => row[2])).toContain('4 cores')
    expect(cellsOf(tableIn(wireListPages(contextOf(boat()))[0]!, 'wire-list'))[0]).toHaveLength(7)
  })

  it('list a serial link wire by wire, with its cores, at both ends', () => {
    const wires = [{ signal: 'A', from: anEnd('P1:1'), to: anEnd('P2:3'), cableTag: 'W4', core: 'white' }, { signal: 'B', from: anEnd('P1:2'), to: anEnd('P2:4'), cableTag: null, core: null }]
    const lists = listsOf(boat({ serialLinks: [aSerialLink({ tag: 'SL1', talker: 'P1:1', listeners: ['P2:3'], wires })] }))
    // One of its four is used by a wire that is recorded.
    expect(lists.get('workshop/wires-locker')!.find(([, cable]) => cable!.startsWith('W4 '))![2]).toBe('4 cores, 3 spare')
    const rows = [...lists.values()].flat().filter(([, cable]) => /core of|not recorded$/.test(cable!) && !/status/.test(cable!))
    expect(rows.map(([at, cable, conductors, , , to]) => [at, cable, conductors, to])).toEqual([
      ['P2:3', 'core of W4', 'A white', 'P1:1 Equipment P1 Zone helm'], ['P2:4', 'cable not recorded', 'B', 'P1:2 Equipment P1 Zone helm'],
      ['P1:1 Equipment P1', 'core of W4', 'A white', 'P2:3 Equipment P2 Zone locker'], ['P1:2', 'cable not recorded', 'B', 'P2:4 Equipment P2 Zone locker'],
    ])
  })

  it('list drops with the colours of bus cable, devices that sit on their tee, and what is plugged together', () => {
    const tee = (tag: string, deviceTag: string, dropCableTag: string | null) => ({ kind: 'tee' as const, tag, zoneTag: 'helm', deviceTag, dropCableTag, deviceTerminal: 'can' })
    const pages = wireListPages(contextOf(boat({
      canBuses: [aBus({ tag: 'N1', backbone: [{ kind: 'terminator', tag: 'R1', zoneTag: 'helm', resistanceOhm: null }, tee('X1', 'P1', 'W7'), tee('X2', 'P2', null), { kind: 'segment', cableTag: 'W8' }, tee('X3', 'P3', null)] })],
      cables: [aCable({ tag: 'W7', from: 'X1', to: 'P1:can', typeTag: 'BUS', carries: 'none' }), aCable({ tag: 'W8', from: 'X2', to: 'X3', typeTag: 'BUS', carries: 'none' })],
    })))
    const helm = pages.find(({ key }) => key === 'workshop/wires-helm')!
    expect(cellsOf(tableIn(helm, 'wire-list')).map(([at, cable, conductors, , , to]) => [at, cable, conductors, to])).toEqual([
      ['P1:can Equipment P1', 'W7 status not recorded', 'supply + red, supply − black, CAN high white, CAN low blue, screen bare', 'X1 tee of N1 in this zone'],
      ['X1 tee of N1', 'W7 status not recorded', 'supply + red, supply − black, CAN high white, CAN low blue, screen bare', 'P1:can Equipment P1 in this zone'],
      ['X2 tee of N1', 'plugged on', '', 'P2:can Equipment P2 Zone locker'], ['X2', 'W8 status not recorded', 'supply + red, supply − black, CAN high white, CAN low blue, screen bare', 'X3 tee of N1 in this zone'],
      ['X3 tee of N1', 'plugged on', '', 'P3:can Equipment P3 zone not recorded'], ['X3', 'W8 status not recorded', 'supply + red, supply − black, CAN high white, CAN low blue, screen bare', 'X2 tee of N1 in this zone'],
    ])
    expect(wordsOn(helm)).toContain('N1 Bus N1 R1 terminator, X1 tee, X2 tee')
  })

  it('are counted on the first page, by status', () => {
    expect(cellsOf(tableIn(workshopPages(contextOf(boat()))[0]!, 'wire-lists'))).toEqual([
      ['Zone locker', '7', '2 planned, 5 with no status'], ['Zone helm', '4', '4 with no status'], ['zone not recorded', '1', '1 with no status'],
    ])
  })
})

describe('colours', () => {
  // tests/reference/manual-colours.csv: which row each function has there
  const rows: readonly (readonly [ConductorFunction, string, string])[] = [
    ['positive', 'DC', 'positive main'], ['negative', 'DC', 'negative'], ['bonding', 'DC', 'grounding / bonding'],
    ['line', 'AC', 'ungrounded (line)'], ['neutral', 'AC', 'grounded neutral'], ['protective earth', 'AC', 'protective earth'],
  ]
  it.each(rows)('%s is as in the published tables', (of, system, written) => {
    const published = referenceTable('manual-colours').find(row => row['system'] === system && row['function'] === written)!['colour']!
    // There: "green or green with yellow stripe", "black, yellow, or black with yellow stripe".
    const words = published.replace('green with yellow stripe', 'green-yellow').split(/, | or |or /).map(word => word.trim())
    for (const colour of conductorColours[of].colour.split(' or ')) expect(words).toContain(colour)
  })
})

describe('panel legends', () => {
  const outlet = boat({
    panels: [aPanel({ tag: 'A1', zoneTag: 'locker', ways: 4 })],
    equipment: [...boat().equipment, anEquipment({ tag: 'X9', kind: 'shore inlet', zoneTag: 'helm', outputs: [anOutput({ nominalVoltageV: 230, form: 'ac' })] })],
    circuits: [...boat().circuits, aCircuit({ tag: 'F9', fedFromTag: 'X9', name: 'Shore', protection: aProtection('miniature circuit breaker', 16) })],
  })
  it('have each way in its order, spare ways too, with what protects it and what it feeds', () => {
    const [card] = legendsOf(contextOf(boat()))
    expect(card).toMatchObject({ tag: 'A1', name: 'Panel A1', wayTitle: 'Way' })
    expect(card!.rows.map(({ way, name, rating, feeds, spare, unprotected }) => [way, name, rating.replaceAll('\u00A0', ' '), feeds, spare, unprotected])).toEqual([
      ['1', 'First', 'blade fuse 5 A', 'P1 Equipment P1', false, false],
      ['2', 'Second', 'no device recorded', 'P2 Equipment P2', false, true],
      ['3', 'spare', '', '', true, false],
      ['4', 'At the helm', 'no device: engine starting', 'P1 Equipment P1; P2 Equipment P2', false, true],
    ])
  })
  it('share out more rows than a card holds evenly among several', () => {
    const cards = legendCards(contextOf(boat({ panels: [aPanel({ tag: 'A1', zoneTag: 'locker', ways: 20 })] })))
    expect(cards.map(({ tag, part, rows }) => [tag, part, rows.length, rows[0]!.way])).toEqual([['A1', '1 of 2', 10, '1'], ['A1', '2 of 2', 10, '11']])
  })
  it('warn of mains voltage, by the source or by the cable', () => {
    // The circuit at the helm has a cable for mains, though no source of it is recorded.
    const cards = legendsOf(contextOf(outlet))
    expect(cards.map(({ tag, mains }) => [tag, mains?.replaceAll('\u00A0', ' ').split(':')[0]])).toEqual([['A1', 'Mains voltage'], ['X9', 'Mains voltage 230 V a.c.']])
    const direct = boat({ cables: boat().cables.filter(({ typeTag }) => typeTag !== 'AC') })
    expect(legendsOf(contextOf(direct))[0]!.mains).toBeNull()
  })
  it('say of which panel the spare ways are not known', () => {
    const legends = workshopPages(contextOf(boat({ panels: [aPanel({ tag: 'A1', zoneTag: 'locker', ways: null })] }))).find(({ key }) => key === 'workshop/legends')!
    expect(legends.blocks.find((block): block is Block & { is: 'paragraph' } => block.is === 'paragraph')?.text.map(part => (typeof part === 'string' ? part : 'text' in part ? part.text : '')).join(''))
      .toBe('Without their spare ways: A1 (number of ways not recorded).')
  })
})

describe('the printed document', () => {
  it('has wire lists on their side, the bill, legends and test sheets, and no sheet is left in the manual', () => {
    const context = contextOf(sample.vessel)
    const pages = workshopPages(context)
    const [workshop] = volumes(context, pages).filter(({ file }) => file === 'workshop.pdf')
    expect(workshop!.chapters.map(({ title, landscape }) => [title, landscape])).toEqual([['Wire lists', true], ['Bill of cable and parts', false], ['Panel legends', false], ['Test sheets', false]])
    expect(workshop!.chapters.flatMap(({ pageKeys }) => pageKeys).toSorted()).toEqual(pages.map(({ key }) => key).toSorted())
    expect(volumes(context, pages).find(({ file }) => file === 'manual.pdf')?.chapters.flatMap(({ pageKeys }) => pageKeys) ?? []).not.toContain('workshop/test-sheets')
  })
  it('is not made for a vessel without cables and circuits', () => expect(workshopPages(contextOf(aVessel()))).toEqual([]))
})

it('paper has no chapter for lists that hold nothing, and has them where they hold something', () => {
  const bare = ['panels', 'circuits', 'cables', 'wireways', 'energy', 'workshop', 'workshop/bill', 'workshop/legends'].map(key => ({ key }) as Page)
  const printed = (vessel: Vessel): readonly string[] => volumes(contextOf(vessel), bare).flatMap(({ chapters }) => chapters.flatMap(({ pageKeys }) => pageKeys))
  expect(printed(aVessel({ equipment: [anEquipment({ tag: 'P1' })] }))).toEqual([])
  expect(printed(boat()).toSorted()).toEqual(bare.map(({ key }) => key).toSorted())
})
