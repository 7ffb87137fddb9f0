import { describe, expect, test } from 'vitest'
import { check } from '../../src/check/check.js'
import type { ItemBase } from '../../src/model/vessel.js'
import { changed, type Files, smallVessel, smallVesselAttached, sourceOf } from '../support/vessel-files.js'

const vesselOf = (files: Files, catalogue?: Files) => {
  const { vessel, findings } = check(sourceOf(files, { attached: smallVesselAttached, ...(catalogue === undefined ? {} : { catalogue }) }))
  expect(findings).toEqual([])
  return vessel!
}
const vessel = vesselOf(smallVessel)

const item = (tag: string, name: string, own: Partial<ItemBase> = {}): ItemBase => ({
  tag, name, zoneTag: null, systemTag: null, pointTag: null, location: null, maker: null, model: null, serial: null, status: null, notes: null, documents: [], ...own,
})

describe('the small vessel, field by field', () => {
  test('identity, document control and conditions', () => {
    expect(vessel.identity).toEqual({
      name: 'Tern', model: 'Skerry 31', builder: null, hullNumber: '007', hullIdentification: null, designCategory: null, yearBuilt: 2026,
      flag: null, homePort: null, callSign: null, mmsi: '002320001', lengthM: expect.closeTo(31.5 * 0.3048, 9), beamM: null, draughtM: null,
      displacementKg: 4200, maximumPersons: null, description: null,
    })
    expect(vessel.document).toEqual({
      number: 'HP-1', issue: null, issuedOn: '2026-05-04', preparedBy: null, checkedBy: null, approvedBy: null, installer: null, contact: null,
    })
    expect([vessel.basis, vessel.units]).toEqual(['iso', 'metric'])
    expect(vessel.conditions).toEqual({
      ambientCBySpace: { interior: 30, machinery: 55, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30 }, cableTailM: 0.4,
    })
    expect(vessel.changes).toEqual([{ issue: 'A', date: '2026-05-04', by: null, what: 'First issue.', why: null }])
  })

  test('places', () => {
    expect(vessel.systems).toEqual([{ tag: 'nav', name: 'Navigation', purpose: null }])
    expect(vessel.zones).toEqual([
      { tag: 'helm', name: 'Helm', space: 'cockpit', ambientC: 30, ignitionProtection: null, access: null },
      { tag: 'engine-space', name: 'Engine space', space: 'machinery', ambientC: 55, ignitionProtection: true, access: null },
      // 77 °F is 25 °C by definition of the scale: (77 − 32) · 5 / 9.
      { tag: 'bilge', name: 'Bilge', space: 'bilge', ambientC: 25, ignitionProtection: null, access: null },
    ])
    expect(vessel.points).toEqual([{ tag: 'J1', name: 'Behind the helm', zoneTag: 'helm' }])
    expect(vessel.wireways).toEqual([
      { tag: 'WW1', name: null, fromTag: 'helm', toTag: 'J1', lengthM: 1.5, kind: 'tray', boreMm: null, zoneTags: ['helm'] },
      // The foot is 0.3048 m since the international agreement of 1959.
      { tag: 'WW2', name: null, fromTag: 'J1', toTag: 'engine-space', lengthM: expect.closeTo(3.048, 9), kind: 'conduit', boreMm: 32, zoneTags: ['helm', 'bilge', 'engine-space'] },
    ])
  })

  test('equipment, with what its model adds', () => {
    expect(vessel.equipment).toEqual([
      {
        ...item('P1', 'Helm display', { zoneTag: 'helm', systemTag: 'nav', pointTag: 'J1', maker: 'Brook', model: 'Brook 7', status: 'fitted', documents: [{ file: 'docs/p1.pdf', title: 'Certificate' }] }),
        kind: 'display', description: null, software: null, positionM: [4.1, -0.35, expect.closeTo(6 * 0.3048, 9)],
        // The pound is 0.45359237 kg since the same agreement.
        massKg: expect.closeTo(0.90718474, 9), supplyMinV: 9, supplyMaxV: 32, currentTypicalA: 0.8, currentMaxA: 1.5, powerW: null, loadEquivalencyNumber: 2,
        ports: [{ name: 'power', kind: 'power', speedMbitPerS: null, powerClass: null }, { name: 'net', kind: 'ethernet', speedMbitPerS: 1000, powerClass: 3 }],
        address: null,
      },
      {
        ...item('K1', 'Network switch', { zoneTag: 'helm' }), kind: 'network switch', description: null, software: null, positionM: null, massKg: null, supplyMinV: null,
        supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, loadEquivalencyNumber: null, ports: [], address: null,
      },
      {
        ...item('X9', 'Spare connector'), kind: 'other', description: null, software: null, positionM: null, massKg: null, supplyMinV: null,
        supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, loadEquivalencyNumber: null, ports: [], address: null,
      },
    ])
    expect(vessel.batteries).toEqual([{ ...item('G1', 'House battery', { zoneTag: 'engine-space' }), chemistry: 'lfp', nominalVoltageV: 12, capacityAh: 200, crankingCurrentA: null }])
    expect(vessel.busbars).toEqual([{ ...item('X1', 'Positive busbar', { zoneTag: 'engine-space' }), ratedCurrentA: 150, polarity: 'positive' }])
    expect(vessel.panels).toEqual([{ ...item('A1', 'Helm panel', { zoneTag: 'helm' }), kind: 'fuse panel', ways: 6, ratedCurrentA: null }])
  })

  test('circuits', () => {
    const circuit = {
      purpose: null, way: null, unprotectedReason: null, loadClass: 'general', designCurrentA: null, demandFactor: 1, normalState: 'closed', zoneTag: null, location: null,
      manualBypass: null, returnCableTags: [],
    }
    expect(vessel.circuits).toEqual([
      { ...circuit, tag: 'F1', name: 'Main', fedFromTag: 'G1', protection: { device: 'class T fuse', ratedCurrentA: 100 }, loadTags: ['X1'], zoneTag: 'engine-space' },
      { ...circuit, tag: 'F2', name: 'Feeder of the helm panel', fedFromTag: 'X1', protection: { device: 'bolt-in fuse, small', ratedCurrentA: 30 }, loadTags: ['A1'], demandFactor: 0.6 },
      { ...circuit, tag: 'A1.1', name: 'Helm display', fedFromTag: 'A1', way: 1, protection: { device: 'blade fuse', ratedCurrentA: 5 }, loadClass: 'critical', loadTags: ['P1', 'K1'] },
    ])
  })

  test('cables', () => {
    const cable = { name: null, routeTags: null, lengthM: null, serviceLoopM: 0, labelFrom: null, labelTo: null, status: null, notes: null }
    const end = (tag: string, terminal: string | null = null) => ({ tag, terminal })
    expect(vessel.cableTypes).toEqual([
      { tag: '2x2.5', name: 'Two-core', use: 'power', cores: 2, size: { system: 'mm2', designation: '2.5', crossSectionMm2: 2.5 }, insulationC: 105, tinned: true, outerDiameterMm: 9, shielded: null },
      // ASTM B258 prints 6 AWG as 13.30 mm².
      { tag: '1x6AWG', name: 'Single', use: 'power', cores: 1, size: { system: 'awg', designation: '6', crossSectionMm2: expect.closeTo(13.3, 2) }, insulationC: null, tinned: null, outerDiameterMm: null, shielded: null },
      { tag: 'can', name: 'Bus cable', use: 'can bus', cores: null, size: null, insulationC: null, tinned: null, outerDiameterMm: null, shielded: null },
    ])
    expect(vessel.cables).toEqual([
      { ...cable, tag: 'W1', from: end('A1.1'), to: end('P1', 'power'), typeTag: '2x2.5', carries: 'both' },
      { ...cable, tag: 'W2', from: end('X1', '+'), to: end('F2'), typeTag: '1x6AWG', carries: 'positive', routeTags: ['WW2', 'WW1'] },
      { ...cable, tag: 'W10', from: end('R1'), to: end('T1'), typeTag: 'can', carries: 'none', lengthM: 2 },
      { ...cable, tag: 'W11', from: end('T1'), to: end('P1'), typeTag: 'can', carries: 'none', lengthM: 0.5 },
      { ...cable, tag: 'W12', from: end('X9'), to: end('X9'), typeTag: null, carries: 'none' },
    ])
  })

  test('networks', () => {
    expect(vessel.canBuses).toEqual([{
      tag: 'N1', name: 'Main bus', purpose: null, backbone: [
        { kind: 'terminator', tag: 'R1', zoneTag: 'helm' },
        { kind: 'segment', cableTag: 'W10' },
        { kind: 'tee', tag: 'T1', zoneTag: 'helm', deviceTag: 'P1', dropCableTag: 'W11' },
        { kind: 'power', tag: 'T2', zoneTag: null, circuitTag: 'A1.1', dropCableTag: null },
        { kind: 'terminator', tag: 'R2', zoneTag: null },
      ],
    }])
    expect(vessel.ethernetNetworks).toEqual([{ tag: 'N2', name: 'Network', purpose: null, subnet: null, switchTags: ['K1'] }])
  })
})

describe('what is left out', () => {
  // The ambients for which the tables of the two bases give currents: reference document on ampacity, sections 1 and 3.
  test.each([['iso', 60], ['abyc', 50]] as const)('machinery spaces by %s: %i °C', (basis, machineryC) => {
    const { conditions } = vesselOf({ 'vessel.yaml': `vessel: {name: Tern, basis: ${basis}}` })
    expect(conditions).toEqual({
      ambientCBySpace: { interior: 30, machinery: machineryC, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30 }, cableTailM: 0.5,
    })
  })

  test('a power cable of unknown cores carries both ways', () => {
    const { cables } = vesselOf(changed(smallVessel, 'cable-types.yaml', 'use: power, cores: 2,', 'use: power,'))
    expect(cables[0]?.carries).toBe('both')
  })

  test('a cable without a type that starts at a circuit carries both ways', () => {
    const { cables } = vesselOf(changed(smallVessel, 'cables.csv', 'W1,A1.1,P1:power,2x2.5,,,', 'W1,A1.1,P1:power,,,,'))
    expect(cables[0]).toMatchObject({ typeTag: null, carries: 'both' })
  })

  test('an author’s word stands before the type’s', () => {
    const { cables } = vesselOf(changed(smallVessel, 'cables.csv', 'W1,A1.1,P1:power,2x2.5,,,', 'W1,A1.1,P1:power,2x2.5,,,positive'))
    expect(cables[0]?.carries).toBe('positive')
  })

  test('a key without a value does not hide the model’s value', () => {
    const { equipment } = vesselOf(changed(smallVessel, 'equipment.yaml', 'current-max: 1.5 A', 'current-max:'))
    expect(equipment[0]?.currentMaxA).toBe(1.4)
  })

  test('an item’s own ports stand in place of the model’s', () => {
    const { equipment } = vesselOf(changed(smallVessel, 'equipment.yaml', 'current-max: 1.5 A', 'ports: [{name: power, kind: signal}]'))
    expect(equipment[0]?.ports.map(({ kind }) => kind)).toEqual(['signal'])
  })
})

test('a model may stand in the catalogue', () => {
  const [models = '', rest = ''] = smallVessel['equipment.yaml']!.split('equipment:\n')
  const { equipment } = vesselOf({ ...smallVessel, 'equipment.yaml': `equipment:\n${rest}` }, { '../catalogue/models.yaml': models })
  expect(equipment[0]?.model).toBe('Brook 7')
})

test('a table gives the same as a list', () => {
  const csv = 'tag;name;zone;position;mass;ports\nQ1;Switch;helm;1 m, -2 ft, 0 m;1 kg;\n'
  const { equipment } = vesselOf({ ...smallVessel, 'equipment-more.csv': csv })
  expect(equipment.at(-1)).toMatchObject({ tag: 'Q1', zoneTag: 'helm', positionM: [1, expect.closeTo(-0.6096, 9), 0], massKg: 1 })
})

describe('the voltage-drop class that is left out', () => {
  const classOf = (kind: string, given = '') => {
    const { circuits } = vesselOf({
      'vessel.yaml': 'vessel: {name: Tern, basis: iso}',
      'boat.yaml': `batteries:\n  - {tag: G1, name: Battery, nominal-voltage: 12 V}\nequipment:\n  - {tag: M1, name: Load, kind: ${kind}}\ncircuits:\n  - {tag: F1, name: Load, fed-from: G1, loads: M1${given}}\n`,
    })
    return circuits[0]!.loadClass
  }
  // ISO 10133:2012 4.7–4.8 and ABYC E-11 name navigation lights and bilge pumps with 3 %.
  test.each([['bilge pump', 'critical'], ['navigation light', 'critical'], ['vhf transceiver', 'critical'], ['light', 'general']])('%s: %s', (kind, expected) => {
    expect(classOf(kind)).toBe(expected)
  })
  test('gives way to the author’s word', () => {
    expect(classOf('bilge pump', ', load-class: general')).toBe('general')
  })
})
