/** Which cautions hold where. Expected from outside the project: what hurts is named in standards or is common practice. */
import { describe, expect, it } from 'vitest'
import { lookup } from '../../../src/model/lookup.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { kindsOf } from '../../../src/model/item-kinds.js'
import { cautionBlocks, cautionsFor, type Where } from '../../../src/view/cautions/cautions.js'
import { withCautions } from '../../../src/view/cautions/caution-pages.js'
import { printedIntroduction } from '../../../src/view/pages/circuits/circuit-printed.js'
import { plainText } from '../../../src/view/tables.js'
import type { Page } from '../../../src/view/view-model.js'
import { vesselAt } from '../../calculate/dependency/support.js'
import { aBattery, aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aVessel } from '../../support/vessel-builder.js'
import { contextOf } from '../pages/support.js'

const of = (...kinds: readonly string[]): Vessel => aVessel({ equipment: kinds.map((kind, i) => anEquipment({ tag: `Z${i}`, kind })) })
const keys = (vessel: Vessel, where: Where): readonly string[] => cautionsFor(contextOf(vessel), where).map(({ key }) => key)

describe('by kind', () => {
  // What can hurt at each: ISO 10240 5.8/5.9 and Directive 2013/53/EU annex I (shock, explosion), COLREG rule 5 (look-out), IEC 60945
  // (compass), 47 CFR 1.1310 (radiation), ISO 10239 (gas); the rest common practice, no source.
  it.each([
    ['shore inlet', ['mains-voltage', 'shore-power-and-mains']], ['inverter', ['mains-voltage', 'stored-charge', 'hot-surfaces', 'magnets-and-pacemakers']],
    ['engine', ['rotating-machinery', 'carbon-monoxide', 'fuel', 'lifting-heavy-things']], ['starter motor', ['engine-starting-circuit', 'rotating-machinery']],
    ['radar scanner', ['radar-and-antennas', 'working-aloft', 'stored-charge', 'navigation-is-an-aid', 'magnets-and-pacemakers']],
    ['vhf transceiver', ['radar-and-antennas', 'false-distress-alerts']], ['wind sensor', ['working-aloft']], ['display', ['navigation-is-an-aid']],
    ['loudspeaker', ['magnets-and-pacemakers']], ['gas cylinder', ['cooking-gas']], ['gas appliance', ['cooking-gas', 'carbon-monoxide']],
    ['windlass', ['rotating-machinery', 'lifting-heavy-things']], ['bilge pump', ['bilge-pump-circuits']], ['gyro stabiliser', ['gyro-stabiliser', 'stored-charge']],
    ['fuse holder', ['fuse-ratings']], ['battery isolator', ['battery-short-circuit', 'isolator-under-charge']], ['seacock', ['water-ingress']],
  ])('%s', (kind, expected) => expect(keys(of(kind, 'battery isolator'), { kinds: [kind] })).toEqual(expect.arrayContaining(expected)))

  it('of a battery by its chemistry, of both where it is not recorded', () => {
    const bank = (chemistry: 'agm' | 'lfp' | null) => aVessel({ batteries: [aBattery({ tag: 'G1', chemistry })] })
    const keysOf = (vessel: Vessel) => keys(vessel, { kinds: kindsOf(vessel.batteries[0]!) })
    expect(keysOf(bank('agm'))).toContain('battery-gas')
    expect(keysOf(bank('agm'))).not.toContain('lithium-banks')
    expect(keysOf(bank('lfp'))).toContain('lithium-banks')
    expect(keysOf(bank('lfp'))).not.toContain('battery-gas')
    expect(keysOf(bank(null))).toEqual(expect.arrayContaining(['battery-gas', 'lithium-banks', 'battery-short-circuit', 'lifting-heavy-things']))
  })
  it('of a charger by what it charges', () => {
    const charged = (chemistry: 'agm' | 'lfp') => ({ ...of('charger'), batteries: [aBattery({ tag: 'G1', chemistry })] })
    expect(keys(charged('agm'), { kinds: ['charger'] })).toContain('battery-gas')
    expect(keys(charged('agm'), { kinds: ['charger'] })).not.toContain('lithium-banks')
    expect(keys(charged('lfp'), { kinds: ['charger'] })).toContain('lithium-banks')
  })
})

describe('by task, system and page', () => {
  it('a task has what its action can do, as far as it is on board', () => {
    expect(keys(of('gas cylinder', 'engine'), { task: 'fire' })).toEqual(expect.arrayContaining(['smoke-and-heat', 'cooking-gas', 'fuel']))
    expect(keys(of('display'), { task: 'fire' })).toEqual(['smoke-and-heat'])
    expect(keys(of('shore inlet'), { task: 'shore-power-connect' })).toEqual(['shore-power-and-mains'])
  })
  it('a system by its kind', () => expect(keys({ ...of('windlass'), systems: [{ tag: 'deck', name: 'Deck', purpose: null, kind: null }] }, { system: 'deck' })).toEqual(['rotating-machinery']))
  it('mains cables without a source count as mains', () => {
    const vessel = aVessel({ cableTypes: [aCableType({ tag: 'AC', use: 'ac power' })], cables: [aCable({ tag: 'W1', from: 'X1', to: 'K1', typeTag: 'AC' })] })
    expect(keys(vessel, { pages: ['mains'] })[0]).toBe('mains-voltage')
    expect(keys(of('display'), { pages: ['mains'] })).toEqual([])
  })
  it('a detector for carbon monoxide makes no gas', () => expect(keys(of('gas detector'), { kinds: ['gas detector'] })).toEqual([]))
  it('what is removed is not there', () => {
    const gone = aVessel({ equipment: [anEquipment({ tag: 'Z1', kind: 'gas cylinder', status: 'removed' })] })
    expect(keys(gone, { task: 'leaving-the-boat' })).toEqual([])
  })
})

describe('order and number', () => {
  const where: Where = { kinds: ['inverter', 'charger', 'shore inlet'], pages: ['mains', 'circuits', 'commissioning'] }
  const context = contextOf({ ...of('inverter', 'charger', 'shore inlet'), batteries: [aBattery({ tag: 'G1', chemistry: 'agm' })] })
  it('most severe first, each once', () => {
    const found = cautionsFor(context, where)
    const words = found.map(({ signal }) => ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'].indexOf(signal))
    expect(words).toEqual(words.toSorted((a, b) => a - b))
    expect(new Set(found).size).toBe(found.length)
    expect(found.length).toBeGreaterThan(6)
  })
  it('never more than two in full, the rest one line of links', () => {
    const [first, second, line, ...more] = cautionBlocks(context, where)
    expect([first, second].map(block => block?.is === 'callout' && block.signal)).toEqual(['DANGER', 'WARNING'])
    expect(line?.is === 'paragraph' && plainText(line.text)).toMatch(/^Read also: WARNING .*; CAUTION Hot surfaces; NOTICE /)
    expect(more).toEqual([])
  })
})

describe('pages', () => {
  const vessel = aVessel({
    batteries: [aBattery({ tag: 'G1', chemistry: 'agm' })], panels: [aPanel({ tag: 'A1' })],
    equipment: [anEquipment({ tag: 'T1', kind: 'inverter', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230 })] })],
    circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['A1'] }), aCircuit({ tag: 'A1.1', fedFromTag: 'A1' }), aCircuit({ tag: 'F9', fedFromTag: 'T1', fedFromTerminal: 'ac' })],
  })
  const bare = (key: string): Page => ({ key, title: '', kicker: null, lead: null, printed: null, trail: [], blocks: [{ is: 'heading', text: 'first', anchor: null }, { is: 'heading', text: 'second', anchor: null }] })
  const shapeOf = (key: string, which: 'blocks' | 'printed' = 'blocks') => withCautions(contextOf(vessel), [bare(key)])[0]![which]?.map(block => (block.is === 'callout' ? block.signal : block.is))
  it('of a mains circuit in full, of others a line, after the facts', () => {
    expect(shapeOf('circuits/f9')).toEqual(['heading', 'DANGER', 'heading'])
    expect(shapeOf('circuits/f1')).toEqual(['heading', 'WARNING', 'heading'])
    expect(shapeOf('circuits/a1.1')).toEqual(['heading', 'paragraph', 'heading'])
  })
  it('in an emergency after what to do, in a task before it, on paper too', () => {
    expect(shapeOf('emergency/fire')).toEqual(['heading', 'heading', 'WARNING'])
    expect(shapeOf('owner/shore-power-connect', 'printed')).toEqual(['WARNING', 'heading', 'heading'])
    expect(shapeOf('circuits/f9', 'printed')).toEqual(['heading', 'paragraph', 'heading'])
  })
  it('of a common circuit once on paper, at the head of the chapter', () => {
    expect(shapeOf('circuits/a1.1', 'printed')).toEqual(['heading', 'heading'])
    expect(plainText(printedIntroduction(contextOf(vessel)))).toMatch(/^WARNING: Isolate before any work\. /)
  })
  it('of others untouched', () => expect(shapeOf('findings')).toEqual(['heading', 'heading']))
})

// Everything of the sample that can hurt whoever works on it, by kind; kinds that are not here hurt nobody by themselves.
const harmless = new Set([
  'instrument', 'alarm panel', 'joystick control', 'keypad', 'remote control', 'engine control', 'computer', 'camera', 'temperature monitor', 'temperature sensor', 'pressure sensor', 'tank sensor',
  'compass', 'rudder sensor', 'smoke alarm', 'gas detector', 'antenna splitter', 'mobile-data router', 'wireless access point', 'microphone', 'network switch', 'gateway', 'engine gateway',
  'serial multiplexer', 'can bus tee', 'can bus terminator', 'horn', 'toilet', 'socket', 'battery monitor', 'refrigerator', 'switch', 'junction box', 'connector', 'terminal block', 'galvanic isolator',
  'fire extinguisher', 'fixed fire extinguisher', 'fire blanket', 'escape hatch', 'manual bilge pump', 'emergency tiller', 'liferaft', 'hydrostatic release', 'lifejackets', 'lifebuoy', 'boarding ladder', 'distress signals',
  'first-aid kit', 'torch', 'tools and spares', 'anode', 'engine stop', 'other', 'vhf handset',
])
it('every kind of the sample that can hurt has its caution', async () => {
  const vessel = await vesselAt('sample-vessel')
  const context = contextOf(vessel)
  const kinds = new Set([...lookup(vessel).items.values()].flatMap(kindsOf))
  const without = [...kinds].filter(kind => !harmless.has(kind) && cautionsFor(context, { kinds: [kind] }).length === 0)
  expect(without).toEqual([])
}, 60_000)
