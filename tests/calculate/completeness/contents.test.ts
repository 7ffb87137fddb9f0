/** What the rules find in vessels made for them. What each content needs is from `tests/reference/required-contents.csv` and common practice. */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { contentState } from '../../../src/model/results/completeness.js'
import type { ManualContent, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { contentKeys, type ContentKey } from '../../../src/references/tables/required-contents.js'
import { aBattery, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'

const completenessOf = (vessel: Vessel) => calculate(vessel, bases[vessel.basis]).completeness
function contentOf(key: ContentKey, given: Partial<Vessel>) {
  const content = completenessOf(aVessel(given)).contents.find(content => content.key === key)!
  return { state: contentState(content), pages: content.pageKeys, lacks: content.lacks, notApplicable: content.notApplicable }
}
const stateOf = (key: ContentKey, given: Partial<Vessel>): string => contentOf(key, given).state
const identity = aVessel().identity
const document = aVessel().document
const anEntry = (contentKey: string, state: ManualContent['state']): ManualContent =>
  ({ contentKey, state, where: state === 'elsewhere' ? 'leaflet, page 2' : null, reason: state === 'elsewhere' ? null : 'there is none' })

describe('each content has a result, in the order of the list', () => {
  it.each([['an empty vessel', aVessel()], ['one by American rules', aVessel({ basis: 'abyc' })]])('%s', (_, vessel) => {
    expect(completenessOf(vessel).contents.map(({ key }) => key)).toEqual(contentKeys)
  })
})

describe('the state of a content', () => {
  const shore = { equipment: [anEquipment({ tag: 'X91', kind: 'shore inlet', zoneTag: 'cockpit' })] }

  it('is "in the pack" where the fact is recorded, with the page', () => {
    expect(contentOf('craft-identification', { identity: { ...identity, hullIdentification: 'GB-ABC00042D626' } })).toMatchObject({ state: 'in the pack', pages: ['identifiers'], lacks: [] })
    expect(contentOf('shore-connection', shore)).toMatchObject({ state: 'in the pack', pages: ['owner/shore-power-connect', 'owner/shore-power-disconnect', 'mains'] })
  })

  it('is "missing" where it is not, and says what', () => {
    expect(contentOf('craft-identification', {})).toMatchObject({ state: 'missing', pages: [], lacks: ['the craft identification number'] })
  })

  it('is "in part" where some of it is, and says what is not', () => {
    expect(contentOf('craft-data', { identity: { ...identity, lengthM: 7, beamM: 2.4, builder: 'A yard' } })).toMatchObject({
      state: 'in part', pages: ['vessel'], lacks: ['the model', 'the year of build', 'the design category', 'the draught', 'the displacement'],
    })
  })

  it('is "not applicable" with a reason out of the data', () => {
    expect(contentOf('shore-connection', {})).toMatchObject({ state: 'not applicable', notApplicable: 'no shore inlet is recorded' })
    expect(contentOf('shore-connection', { absences: [{ kind: 'shore inlet', reason: 'charged by the sun' }] })).toMatchObject({ state: 'not applicable', notApplicable: 'charged by the sun' })
    // What was taken off the boat is not there.
    expect(stateOf('shore-connection', { equipment: shore.equipment.map(item => ({ ...item, status: 'removed' as const })) })).toBe('not applicable')
  })

  it('is "missing", not "not applicable", where nobody says whether there is a liferaft or an extinguisher', () => {
    expect(stateOf('liferaft-stowage', {})).toBe('missing')
    expect(stateOf('fire-protection', {})).toBe('missing')
    expect(stateOf('liferaft-stowage', { absences: [{ kind: 'liferaft', reason: 'sheltered water only' }] })).toBe('not applicable')
  })

  it('takes an entry for what the pack does not hold, whole or in part', () => {
    const manualContents = [anEntry('handling', 'elsewhere'), anEntry('visibility', 'not applicable'), anEntry('builders-plate', 'elsewhere'), anEntry('language', 'not applicable')]
    const given = { manualContents, identity: { ...identity, builder: 'A yard' } }
    expect(stateOf('handling', given)).toBe('elsewhere')
    expect(stateOf('visibility', given)).toBe('not applicable')
    expect(stateOf('builders-plate', given)).toBe('elsewhere')
    // The general text is there; what else is asked does not apply.
    expect(stateOf('language', given)).toBe('in the pack')
  })

  it('never takes an entry against what the pack holds', () => {
    expect(stateOf('warning-ratings', { manualContents: [anEntry('warning-ratings', 'not applicable')] })).toBe('in the pack')
  })
})

describe('rules', () => {
  const circuits = [aCircuit({ tag: 'F1', fedFromTag: 'G1', protection: aProtection('blade fuse', 3) }), aCircuit({ tag: 'F2', fedFromTag: 'G1', unprotectedReason: 'engine starting' }), aCircuit({ tag: 'F3', fedFromTag: 'G1' })]

  it('the list of circuits needs the device of each, or the reason why there is none', () => {
    expect(contentOf('circuit-list', { circuits })).toMatchObject({ state: 'in part', lacks: ['the protective device of F3'] })
    expect(stateOf('circuit-list', { circuits: circuits.slice(0, 2) })).toBe('in the pack')
    expect(stateOf('circuit-list', {})).toBe('missing')
  })

  it('batteries need chemistry and capacity', () => {
    expect(contentOf('batteries', { batteries: [aBattery({ tag: 'G1', chemistry: 'agm', capacityAh: 90 }), aBattery({ tag: 'G2', chemistry: 'agm' }), aBattery({ tag: 'G3', capacityAh: 90 })] }))
      .toMatchObject({ state: 'in part', lacks: ['chemistry or capacity of G2 and G3'] })
  })

  it('a plan of switches needs the place of each', () => {
    const panels = [aPanel({ tag: 'A1', zoneTag: 'helm' }), aPanel({ tag: 'A2' })]
    expect(contentOf('switch-plan', { panels, equipment: [anEquipment({ tag: 'Q1', kind: 'battery isolator' })] })).toMatchObject({ state: 'in part', lacks: ['the place of Q1 and A2'] })
  })

  it('mains without residual-current protection has no test of it, which is not the same as not applicable', () => {
    const inlet = anEquipment({ tag: 'X91', kind: 'shore inlet' })
    expect(stateOf('residual-current-test', {})).toBe('not applicable')
    expect(stateOf('residual-current-test', { equipment: [inlet] })).toBe('missing')
  })

  it('ignition protection is told of every zone, or it is not told', () => {
    const zones = [aZone({ tag: 'a', ignitionProtection: false }), aZone({ tag: 'b', ignitionProtection: false })]
    expect(stateOf('ignition-protection', { zones })).toBe('not applicable')
    expect(stateOf('ignition-protection', { zones: [zones[0]!, { ...zones[1]!, ignitionProtection: true }] })).toBe('in the pack')
    expect(contentOf('ignition-protection', { zones: [zones[0]!, { ...zones[1]!, ignitionProtection: null }] })).toMatchObject({ state: 'in part', lacks: ['whether it is needed in Zone b'] })
    expect(stateOf('ignition-protection', {})).toBe('missing')
  })

  it('SI units come first, or it is told', () => {
    expect(stateOf('units', {})).toBe('in the pack')
    expect(stateOf('units', { units: 'us' })).toBe('in part')
  })

  it('who may change the system needs somebody to ask', () => {
    expect(stateOf('who-may-modify', {})).toBe('in part')
    expect(stateOf('who-may-modify', { document: { ...document, contact: 'Basin 3' } })).toBe('in the pack')
  })

  it('fuel, gas and discharge ask nothing of a boat without', () => {
    expect((['fuel', 'gas', 'discharge'] as const).map(key => stateOf(key, {}))).toEqual(['not applicable', 'not applicable', 'not applicable'])
    const equipment = (['engine', 'gas appliance', 'toilet'] as const).map((kind, i) => anEquipment({ tag: `M${i}`, kind, zoneTag: 'x' }))
    expect((['fuel', 'gas', 'discharge'] as const).map(key => stateOf(key, { equipment }))).toEqual(['missing', 'in part', 'missing'])
  })
})

describe('findings', () => {
  const idsOf = (given: Partial<Vessel>): readonly string[] => completenessOf(aVessel(given)).findings.map(({ id }) => id)
  const delivered = { ...identity, deliveredOn: '2026-05-29' }

  it('are told from the day of delivery on, and not while she is being built', () => {
    expect(idsOf({})).toEqual([])
    expect(idsOf({ identity: delivered })).toEqual(['CMP201', 'CMP202'])
  })

  it('count what is required only: by American rules the sources are advice', () => {
    expect(idsOf({ identity: delivered, basis: 'abyc' })).toEqual([])
    // The makers' manuals of the electronics are recommended.
    const entries = contentKeys.filter(key => key !== 'electronic-equipment').map(key => anEntry(key, 'elsewhere'))
    expect(idsOf({ identity: delivered, manualContents: entries }).filter(id => id.startsWith('CMP20'))).toEqual([])
  })

  it('point out entries that say nothing, or say too much', () => {
    expect(idsOf({ manualContents: [anEntry('stabiility', 'elsewhere'), anEntry('glossary', 'elsewhere'), anEntry('definitions', 'elsewhere'), anEntry('definitions', 'not applicable'), anEntry('handling', 'elsewhere')] }))
      .toEqual(['CMP301', 'CMP301', 'CMP302', 'CMP303'])
  })
})

describe('progress', () => {
  const zones = [aZone({ tag: 'helm' }), aZone({ tag: 'bow' }), aZone({ tag: 'empty' })]
  const items = [
    anEquipment({ tag: 'P1', kind: 'display', zoneTag: 'helm', status: 'commissioned', software: '1.0' }), anEquipment({ tag: 'P2', kind: 'display', zoneTag: 'helm', status: 'fitted' }),
    anEquipment({ tag: 'E1', zoneTag: 'bow', status: 'planned' }), anEquipment({ tag: 'E2', zoneTag: 'bow' }), anEquipment({ tag: 'E3', status: 'commissioned' }),
    anEquipment({ tag: 'E4', zoneTag: 'bow', status: 'removed' }),
  ]
  const { progress } = completenessOf(aVessel({ zones, equipment: items }))

  it('counts what is there by zone and status, what has no zone last', () => {
    expect(progress.byZone.map(({ zoneTag, counts: { planned, fitted, commissioned, none } }) => [zoneTag, planned, fitted, commissioned, none]))
      .toEqual([['helm', 0, 1, 1, 0], ['bow', 1, 0, 0, 1], [null, 0, 0, 1, 0]])
    expect(progress.byZone.flatMap(({ open }) => open.map(({ tag }) => tag))).toEqual(['P2', 'E1', 'E2'])
  })

  it('lists software that nobody has read', () => {
    expect(progress.softwareUnread).toEqual(['P2'])
  })

  it('lists what is due for a test and has not all its readings', () => {
    const vessel = aVessel({ batteries: [aBattery({ tag: 'G1' })], circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1' })] })
    expect(completenessOf(vessel).progress.testsDue).toEqual([
      { tag: 'F1', what: 'circuit', begun: false, missing: ['voltage drop', 'current', 'insulation resistance', 'polarity'] },
      { tag: 'G1', what: 'battery', begun: false, missing: ['voltage', 'internal resistance'] },
    ])
  })
})
