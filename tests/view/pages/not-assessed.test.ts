import { describe, expect, it } from 'vitest'
import {
  aBattery, aBusbar, aCable, aCableType, aCircuit, aDuty, aMode, anEquipment, aPanel, aProtection, aVessel, aWireway, aZone, mm2,
} from '../../support/vessel-builder.js'
import { calculate } from '../../../src/calculate/calculate.js'
import { bases } from '../../../src/references/basis/bases.js'
import { notAssessedPages } from '../../../src/view/pages/not-assessed.view.js'
import { plainText } from '../../../src/view/tables.js'
import { cellsOf, contextOf, tablesOf } from './support.js'

const zones = [aZone({ tag: 'AFT', box: { fromM: [0, -1, 0], toM: [2, 1, 1] } }), aZone({ tag: 'HELM', box: { fromM: [2, -1, 0], toM: [4, 1, 2] } })]
const sound = aVessel({
  zones,
  wireways: [aWireway({ tag: 'WW1', fromTag: 'AFT', toTag: 'HELM', lengthM: 5, kind: 'conduit', boreMm: 40 })],
  cableTypes: [aCableType({ tag: '2x6', size: mm2(6), outerDiameterMm: 9 })],
  batteries: [aBattery({ tag: 'B1', zoneTag: 'AFT', chemistry: 'agm', capacityAh: 100, internalResistanceMilliOhm: 5 })],
  operatingModes: [aMode({ tag: 'under-way' })],
  duties: [aDuty({ modeTag: 'under-way', itemTag: 'P1' })],
  equipment: [anEquipment({ tag: 'P1', zoneTag: 'HELM', currentMaxA: 3 })],
  circuits: [aCircuit({ tag: 'F1', fedFromTag: 'B1', zoneTag: 'AFT', loadTags: ['P1'], protection: aProtection('blade fuse', 5) })],
  cables: [aCable({ tag: 'W0', from: 'B1', to: 'F1', typeTag: '2x6' }), aCable({ tag: 'W1', from: 'F1', to: 'P1', typeTag: '2x6' })],
})
/** Something is missing in every calculation. */
const wanting = aVessel({
  ...sound,
  wireways: [...sound.wireways, aWireway({ tag: 'WW2', fromTag: 'AFT', toTag: 'HELM', lengthM: 9, kind: 'tray' }), aWireway({ tag: 'WW3', fromTag: 'AFT', toTag: 'HELM', lengthM: 9, kind: 'conduit' })],
  cableTypes: [...sound.cableTypes, aCableType({ tag: 'unsized' }), aCableType({ tag: 'unrated', size: mm2(2.5), insulationC: null }), aCableType({ tag: 'shore', use: 'ac power' }), aCableType({ tag: 'antenna', use: 'coax' })],
  busbars: [aBusbar({ tag: 'X1', zoneTag: 'AFT' })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'HELM' })],
  equipment: [
    ...sound.equipment, anEquipment({ tag: 'P2', zoneTag: 'HELM' }), anEquipment({ tag: 'P3', currentMaxA: 2 }), anEquipment({ tag: 'P4', zoneTag: 'HELM', currentMaxA: 1 }),
    anEquipment({ tag: 'P5', zoneTag: 'HELM', currentMaxA: 1 }), anEquipment({ tag: 'R1', kind: 'compass', compassClass: 'steering' }),
  ],
  circuits: [
    ...sound.circuits,
    aCircuit({ tag: 'F2', fedFromTag: 'B1', zoneTag: 'AFT', loadTags: ['P2'], protection: aProtection('blade fuse', 5) }),
    aCircuit({ tag: 'F3', fedFromTag: 'B1', zoneTag: 'AFT', loadTags: ['P3'] }),
    aCircuit({ tag: 'F4', fedFromTag: 'B1', zoneTag: 'AFT', loadTags: ['P4'], protection: aProtection('blade fuse', 5) }),
    aCircuit({ tag: 'F5', fedFromTag: 'B1', zoneTag: 'AFT', loadTags: ['P5'], protection: aProtection('blade fuse', 5) }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['P1'] }),
  ],
  cables: [
    ...sound.cables,
    aCable({ tag: 'W2', from: 'F2', to: 'P2', typeTag: '2x6' }), aCable({ tag: 'W3', from: 'F3', to: 'P3', typeTag: '2x6' }),
    aCable({ tag: 'W4', from: 'F4', to: 'P4', typeTag: 'unsized' }), aCable({ tag: 'W5', from: 'F5', to: 'P5', typeTag: 'unrated' }),
    aCable({ tag: 'W7', from: 'F1', to: 'P2', typeTag: '2x6', status: 'removed' }), aCable({ tag: 'W8', from: 'X1', to: 'P2', typeTag: 'shore' }), aCable({ tag: 'W9', from: 'X1', to: 'P2', typeTag: 'antenna', carries: 'none' }),
  ],
})
const context = contextOf(wanting)
const page = notAssessedPages(context)[0]!
const rows = tablesOf(page).filter(({ id }) => id.startsWith('not-assessed-')).flatMap(cellsOf)

/** Every reason anywhere in the results, with the tag it stands under, found without knowing how the results are built. */
function reasonsIn(value: unknown, tag: string): readonly { readonly tag: string; readonly reason: string }[] {
  if (value instanceof Map) return [...value].flatMap(([key, held]) => reasonsIn(held, String(key)))
  if (Array.isArray(value)) return value.flatMap(held => reasonsIn(held, tag))
  if (value === null || typeof value !== 'object') return []
  const record = value as Record<string, unknown>
  if (record['status'] === 'not computed') return [{ tag, reason: String(record['reason']) }]
  return Object.entries(record).flatMap(([key, held]) =>
    key === 'notAssessed'
      ? (held as readonly (string | { readonly reason: string })[]).map(entry => ({ tag, reason: typeof entry === 'string' ? entry : entry.reason }))
      : reasonsIn(held, tag))
}

describe('a vessel with gaps', () => {
  // A tray has no fill and a removed cable no length: nothing is missing there.
  const noGap = ['it is not a conduit', 'the cable has been removed']
  const { protectiveDevices, acSupply, energy, dependency, reserve, commissioning, placement, ...conductors } = context.results
  const later = [protectiveDevices, acSupply, energy, dependency, reserve, commissioning, placement]
  const all = reasonsIn(conductors, '')
  const reasons = all.filter(({ reason }) => !noGap.includes(reason))

  it('holds also what is no gap, and that is not listed', () => {
    expect(new Set(all.filter(({ reason }) => noGap.includes(reason)).map(({ tag }) => tag))).toEqual(new Set(['WW2', 'W7']))
    expect(rows.flatMap(([, , subjects]) => subjects!.split(/[ ,()]+/)).filter(tag => ['WW2', 'W7'].includes(tag))).toEqual([])
  })

  it('is one in which something is missing in every calculation', () => {
    expect(page.blocks.filter(block => block.is === 'heading').map(({ text }) => text)).toEqual([
      'Length of cables', 'Conduit fill', 'Design current', 'Current-carrying capacity (ampacity)', 'Voltage drop', 'Voltage drop by resistance',
      'Overcurrent protection', 'Advice on conductor size', 'Protective devices and short circuit', 'Load analysis and energy', 'Dependency', 'Reserve', 'Placement',
    ])
  })

  it('has every outcome that is not computed listed under its reason', () => {
    expect(reasons.length).toBeGreaterThan(15)
    for (const { tag, reason } of reasons) {
      const under = rows.filter(([because]) => because === reason)
      expect(under.some(([, , subjects]) => subjects!.split(/[ ,()]+/).includes(tag)), `${tag}: ${reason}`).toBe(true)
    }
  })

  it('lists what the later domains say they could not assess, and no outcome of theirs is left out of what they say', () => {
    const listed = later.flatMap(({ notAssessed }) => notAssessed)
    expect(listed.length).toBeGreaterThan(5)
    for (const { subjectTag, reason } of listed) {
      expect(rows.some(([because, , subjects]) => because === reason && subjects!.split(/[ ,()]+/).includes(subjectTag)), `${subjectTag}: ${reason}`).toBe(true)
    }
    for (const { reason } of reasonsIn(later, '')) expect(rows.some(([because]) => because!.includes(reason)), reason).toBe(true)
  })

  it('lists nothing that was computed', () => {
    const known = new Set([...reasons, ...later.flatMap(({ notAssessed }) => notAssessed)].map(({ reason }) => reason))
    for (const [because] of rows) expect(known).toContain(because)
  })

  it('counts what it lists', () => {
    const listed = rows.reduce((sum, [, count]) => sum + Number(count), 0)
    expect(plainText(page.lead!)).toMatch(new RegExp(`^${listed} results could not be calculated\\. None of them is a pass\\.`))
    for (const [, count, subjects] of rows) expect(subjects!.split(', ')).toHaveLength(Number(count))
  })

  it('says for each calculation what to record', () => {
    const [lengths] = page.blocks.filter(block => block.is === 'paragraph')
    expect(plainText(lengths!.text)).toBe('1 of 8 cables. Record the zone of what the cable joins and the wireways between the two, or the length as measured.')
  })
})

describe('a vessel without gaps', () => {
  const complete = notAssessedPages(contextOf(sound))[0]!

  it('is told so', () => {
    expect(reasonsIn(calculate(sound, bases.iso), '')).toEqual([])
    expect(plainText(complete.lead!)).toBe('Everything that this version calculates was calculated.')
    expect(complete.blocks).toEqual([])
  })
})
