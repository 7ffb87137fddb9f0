import { blankBusFacts } from '../../src/model/blank.js'
import { describe, expect, test } from 'vitest'
import { check } from '../../src/check/check.js'
import type { ItemBase } from '../../src/model/vessel.js'
import { aBattery, aDuty, aMeasurement, aMode, anEquipment, anOutput, aProtection } from '../support/vessel-builder.js'
import { changed, type Files, smallVessel, smallVesselAttached, sourceOf } from '../support/vessel-files.js'

const vesselOf = (files: Files, catalogue?: Files) => {
  const { vessel, findings } = check(sourceOf(files, { attached: smallVesselAttached, ...(catalogue === undefined ? {} : { catalogue }) }))
  expect(findings).toEqual([])
  return vessel!
}
const vessel = vesselOf(smallVessel)

const item = (tag: string, name: string, own: Partial<ItemBase> = {}): ItemBase => ({
  tag, name, zoneTag: null, systemTag: null, pointTag: null, location: null, maker: null, model: null, serial: null, status: null, notes: null,
  fittedOn: null, madeOn: null, expiresOn: null, documents: [], ...own,
})

const noBatteryFacts = {
  ratedTimeH: null, peukertNumber: null, internalResistanceMilliOhm: null, shortCircuitCurrentA: null, depthOfDischargePercent: null,
  chargeCurrentMaxA: null, dischargeCurrentMaxA: null, massKg: null, positionM: null, blocks: null,
}
const noFacts = {
  softwareDate: null, deviceInstanceNumber: null, sends: [], forwards: [], addressing: null, macAddress: null, streams: [], networkPowerW: null, powerBudgetW: null,
  powerVoltageV: null, passesEthernet: null, loopProtection: null, transmitters: [], radar: null, antenna: null, portLosses: [], compassClass: null,
  compassSafeStandardM: null, compassSafeSteeringM: null, navigationLight: null, transducer: null, mmsi: null, beaconIdentity: null, maintenance: [],
  ratedCurrentA: null, startingCurrentA: null, makersFuseA: null, outputs: [], efficiencyPercent: null, peakPowerW: null, loadColumn: null, safetyService: null,
  dataFromTags: [], residualCurrentA: null, tripTimeMs: null, galvanicIsolationTag: null, polarityIndicatorTag: null,
}

describe('the small vessel, field by field', () => {
  test('identity, document control and conditions', () => {
    expect(vessel.identity).toEqual({
      name: 'Tern', model: 'Skerry 31', builder: null, hullNumber: '007', hullIdentification: null, designCategory: null, yearBuilt: 2026,
      flag: null, homePort: null, callSign: null, mmsi: '002320001', lengthM: expect.closeTo(31.5 * 0.3048, 9), beamM: null, draughtM: null,
      displacementKg: 4200, maximumPersons: null, description: null, propulsion: null,
      stability: { centreOfGravityM: null, metacentricHeightM: null, includesEquipment: null, gunwaleHeightM: null },
      deliveredOn: null, season: null,
    })
    expect(vessel.document).toEqual({
      number: 'HP-1', issue: null, issuedOn: '2026-05-04', preparedBy: null, checkedBy: null, approvedBy: null, installer: null, contact: null, manualAddress: null,
    })
    expect([vessel.basis, vessel.units]).toEqual(['iso', 'metric'])
    expect(vessel.conditions).toEqual({
      ambientCBySpace: { interior: 30, machinery: 55, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30 }, cableTailM: 0.4,
      cableSparePercent: 10, latitudeDeg: null, deviceDistanceMm: null, horizontalFieldMicroT: null,
    })
    expect(vessel.changes).toEqual([{ issue: 'A', date: '2026-05-04', by: null, what: 'First issue.', why: null }])
  })

  test('places', () => {
    expect(vessel.systems).toEqual([{ tag: 'nav', name: 'Navigation', purpose: null, kind: null }])
    expect(vessel.zones).toEqual([
      { tag: 'helm', name: 'Helm', space: 'cockpit', ambientC: 30, ignitionProtection: null, access: null, box: null },
      { tag: 'engine-space', name: 'Engine space', space: 'machinery', ambientC: 55, ignitionProtection: true, access: null, box: null },
      // 77 °F is 25 °C by definition of the scale: (77 − 32) · 5 / 9.
      { tag: 'bilge', name: 'Bilge', space: 'bilge', ambientC: 25, ignitionProtection: null, access: null, box: null },
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
        ports: [{ name: 'power', kind: 'power', speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null }, { name: 'net', kind: 'ethernet', speedMbitPerS: 1000, powerClass: 3, baudRates: [], direction: null, signalCurrentA: null }],
        address: null, ...noFacts,
      },
      {
        ...item('K1', 'Network switch', { zoneTag: 'helm' }), kind: 'network switch', description: null, software: null, positionM: null, massKg: null, supplyMinV: null,
        supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, loadEquivalencyNumber: null, ports: [], address: null, ...noFacts, passesEthernet: true,
      },
      {
        ...item('X9', 'Spare connector'), kind: 'other', description: null, software: null, positionM: null, massKg: null, supplyMinV: null,
        supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, loadEquivalencyNumber: null, ports: [], address: null, ...noFacts,
      },
    ])
    expect(vessel.batteries).toEqual([{ ...item('G1', 'House battery', { zoneTag: 'engine-space' }), chemistry: 'lfp', nominalVoltageV: 12, capacityAh: 200, crankingCurrentA: null, ...noBatteryFacts, ...blankBusFacts }])
    expect(vessel.busbars).toEqual([{ ...item('X1', 'Positive busbar', { zoneTag: 'engine-space' }), ratedCurrentA: 150, polarity: 'positive' }])
    expect(vessel.panels).toEqual([{ ...item('A1', 'Helm panel', { zoneTag: 'helm' }), kind: 'fuse panel', ways: 6, ratedCurrentA: null, networkLoss: null, ...blankBusFacts }])
  })

  test('circuits', () => {
    const circuit = {
      purpose: null, way: null, unprotectedReason: null, loadClass: 'general', designCurrentA: null, demandFactor: 1, normalState: 'closed', zoneTag: null, location: null,
      manualBypass: null, returnCableTags: [], fedFromTerminal: null, interlockTag: null, networkLoss: null,
    }
    expect(vessel.circuits).toEqual([
      { ...circuit, tag: 'F1', name: 'Main', fedFromTag: 'G1', protection: aProtection('class T fuse', 100), loadTags: ['X1'], zoneTag: 'engine-space' },
      { ...circuit, tag: 'F2', name: 'Feeder of the helm panel', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 30), loadTags: ['A1'], demandFactor: 0.6 },
      { ...circuit, tag: 'A1.1', name: 'Helm display', fedFromTag: 'A1', way: 1, protection: aProtection('blade fuse', 5), loadClass: 'critical', loadTags: ['P1', 'K1'] },
    ])
  })

  test('cables', () => {
    const cable = { name: null, routeTags: null, lengthM: null, serviceLoopM: 0, parallelCount: 1, labelFrom: null, labelTo: null, status: null, notes: null, connectorCount: null }
    const end = (tag: string, terminal: string | null = null) => ({ tag, terminal })
    expect(vessel.cableTypes).toEqual([
      { tag: '2x2.5', name: 'Two-core', use: 'power', cores: 2, size: { system: 'mm2', designation: '2.5', crossSectionMm2: 2.5 }, insulationC: 105, tinned: true, outerDiameterMm: 9, shielded: null, busCable: null, conductorResistanceOhmPerKm: null, coax: null },
      // ASTM B258 prints 6 AWG as 13.30 mm².
      { tag: '1x6AWG', name: 'Single', use: 'power', cores: 1, size: { system: 'awg', designation: '6', crossSectionMm2: expect.closeTo(13.3, 2) }, insulationC: null, tinned: null, outerDiameterMm: null, shielded: null, busCable: null, conductorResistanceOhmPerKm: null, coax: null },
      { tag: 'can', name: 'Bus cable', use: 'can bus', cores: null, size: null, insulationC: null, tinned: null, outerDiameterMm: null, shielded: null, busCable: null, conductorResistanceOhmPerKm: null, coax: null },
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
      tag: 'N1', name: 'Main bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [
        { kind: 'terminator', tag: 'R1', zoneTag: 'helm', resistanceOhm: null },
        { kind: 'segment', cableTag: 'W10' },
        { kind: 'tee', tag: 'T1', zoneTag: 'helm', deviceTag: 'P1', dropCableTag: 'W11', deviceTerminal: null },
        { kind: 'power', tag: 'T2', zoneTag: null, circuitTag: 'A1.1', dropCableTag: null, supplyVoltageV: null },
        { kind: 'terminator', tag: 'R2', zoneTag: null, resistanceOhm: null },
      ],
    }])
    expect(vessel.ethernetNetworks).toEqual([{ tag: 'N2', name: 'Network', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: ['K1'] }])
  })
})

describe('what is left out', () => {
  // The ambients for which the tables of the two bases give currents: reference document on ampacity, sections 1 and 3.
  test.each([['iso', 60], ['abyc', 50]] as const)('machinery spaces by %s: %i °C', (basis, machineryC) => {
    const { conditions } = vesselOf({ 'vessel.yaml': `vessel: {name: Tern, basis: ${basis}}` })
    expect(conditions).toEqual({
      ambientCBySpace: { interior: 30, machinery: machineryC, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30 }, cableTailM: 0.5,
      cableSparePercent: 10, latitudeDeg: null, deviceDistanceMm: null, horizontalFieldMicroT: null,
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

describe('sources, use and readings', () => {
  const files = {
    'vessel.yaml': 'vessel: {name: Tern, basis: iso, conditions: {latitude: 50.5 °S, device-distance: 300 mm}}',
    'power.yaml': `
batteries:
  - {tag: G1, name: House, nominal-voltage: 24 V, chemistry: agm, rated-time: 1200 min, peukert: 1.15, depth-of-discharge: 50 %, charge-current-max: 80 A, discharge-current-max: 300 A, blocks: {series: 2, parallel: 3, voltage: 12 V, capacity: 100 Ah, internal-resistance: 0.004 ohm, short-circuit-current: 2400 A, cranking-current: 700 A}}
models:
  - {model: conv, title: Conv, kind: inverter charger, efficiency: 88 %, outputs: [{terminal: ac, form: ac, voltage: 230 V, frequency: 50 Hz, current: 7 A, short-circuit-current: 20 A, neutral-bonded: true}, {terminal: dc, voltage: 24 V, current: 40 A}]}
equipment:
  - {tag: T1, name: Inverter, model: conv}
  - {tag: X1, name: Inlet, kind: shore inlet, outputs: [{voltage: 230 V}], galvanic-isolation: R1, polarity-indicator: P1}
  - {tag: G2, name: Alternator, kind: alternator, outputs: [{voltage: 24 V, current: 60 A, curve: [{speed: 1500 rpm, current: 20 A}]}]}
  - {tag: R1, name: Isolator, kind: galvanic isolator, rating: 60 A}
  - {tag: P1, name: Lamp, kind: polarity indicator, data-from: [G1 T1], safety-service: alarms, load-column: a, starting-current: 3 A, makers-fuse: 500 mA, peak-power: 100 W}
  - {tag: F9, name: RCD, kind: residual-current device, residual-current: 30 mA, trip-time: 0.1 s}
circuits:
  - {tag: F1, name: Sockets, fed-from: T1:ac, interlock: F9, network-loss: hold, protection: {type: circuit breaker, rating: 10 A, interrupting-capacity: 3 kA, voltage-rating: 240 V, poles: 2, residual-current: 30 mA, trip-time: 40 ms, distance: 15 cm, enclosed: yes}}
operating-modes:
  - {tag: anchor, name: At anchor, days: 7, month: 7, sunshine: 60 %, start-charge: 90 %}
duties:
  - {item: P1, mode: anchor, hours: 18:30-23:00 22:00-06:00, duty: 40 %, current: 2 A}
  - {item: G2, mode: anchor, speed: 1500 rpm}
measurements:
  - {number: "7", subject: F1, at: P1, date: 2026-05-04, voltage: 229 V, insulation: 2 Gohm, trip-time: 28 ms, residual-current: 22 mA, polarity: right, internal-resistance: 1.2 mohm}
`.replace('[G1 T1]', 'G1 T1').replace('3 kA', '3000 A'),
  }
  const made = vesselOf(files)

  test('conditions, battery and its blocks', () => {
    expect(made.conditions).toMatchObject({ latitudeDeg: -50.5, deviceDistanceMm: 300 })
    expect(made.batteries).toEqual([aBattery({
      tag: 'G1', name: 'House', nominalVoltageV: 24, chemistry: 'agm', ratedTimeH: 20, peukertNumber: 1.15, depthOfDischargePercent: 50, chargeCurrentMaxA: 80,
      dischargeCurrentMaxA: 300,
      blocks: { seriesCount: 2, parallelCount: 3, nominalVoltageV: 12, capacityAh: 100, internalResistanceMilliOhm: 4, shortCircuitCurrentA: 2400, crankingCurrentA: 700 },
    })])
  })

  test('outputs, their form by the kind of equipment unless said', () => {
    const [inverter, inlet, alternator, isolator, lamp, device] = made.equipment
    expect(isolator?.ratedCurrentA).toBe(60)
    expect(inverter).toEqual(anEquipment({ tag: 'T1', name: 'Inverter', model: 'Conv', kind: 'inverter charger', efficiencyPercent: 88, outputs: [
      anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 7, shortCircuitCurrentA: 20, neutralBonded: true }),
      anOutput({ terminal: 'dc', nominalVoltageV: 24, ratedCurrentA: 40 }),
    ] }))
    expect(inlet).toMatchObject({ outputs: [anOutput({ form: 'ac', nominalVoltageV: 230 })], galvanicIsolationTag: 'R1', polarityIndicatorTag: 'P1' })
    expect(alternator?.outputs).toEqual([anOutput({ nominalVoltageV: 24, ratedCurrentA: 60, curve: [{ speedRpm: 1500, currentA: 20 }] })])
    expect(lamp).toMatchObject({ dataFromTags: ['G1', 'T1'], safetyService: 'alarms', loadColumn: 'a', startingCurrentA: 3, makersFuseA: 0.5, peakPowerW: 100 })
    expect(device).toMatchObject({ residualCurrentA: 0.03, tripTimeMs: 100 })
  })

  test('a circuit fed from an output, and its device', () => {
    expect(made.circuits[0]).toMatchObject({
      fedFromTag: 'T1', fedFromTerminal: 'ac', interlockTag: 'F9', networkLoss: 'hold',
      protection: aProtection('circuit breaker', 10, { interruptingCapacityA: 3000, voltageRatingV: 240, poles: 2, residualCurrentA: 0.03, tripTimeMs: 40, distanceM: 0.15, enclosed: true }),
    })
  })

  test('modes, duties with hours over midnight, readings', () => {
    expect(made.operatingModes).toEqual([aMode({ tag: 'anchor', name: 'At anchor', daysCount: 7, monthNumber: 7, sunshinePercent: 60, startChargePercent: 90 })])
    expect(made.duties).toEqual([
      aDuty({ itemTag: 'P1', modeTag: 'anchor', periods: [{ fromH: 18.5, toH: 23 }, { fromH: 22, toH: 30 }], dutyPercent: 40, currentA: 2 }),
      aDuty({ itemTag: 'G2', modeTag: 'anchor', speedRpm: 1500 }),
    ])
    expect(made.measurements).toEqual([aMeasurement({
      number: '7', subjectTag: 'F1', atTag: 'P1', date: '2026-05-04', voltageV: 229, insulationMOhm: 2000, tripTimeMs: 28, residualCurrentA: 0.022,
      polarity: 'right', internalResistanceMilliOhm: 1.2,
    })])
  })

  test('a circuit is not fed from equipment that gives nothing', () => {
    const { findings } = check(sourceOf({ ...files, 'power.yaml': files['power.yaml'].replace('fed-from: T1:ac', 'fed-from: P1') }, { attached: smallVesselAttached }))
    expect(findings.map(({ id }) => id)).toEqual(['REF104'])
  })

  test('a reading’s number stands once', () => {
    const twice = files['power.yaml'].replace('measurements:\n', 'measurements:\n  - {number: "7", subject: P1}\n')
    const { findings } = check(sourceOf({ ...files, 'power.yaml': twice }, { attached: smallVesselAttached }))
    expect(findings.map(({ id, message }) => `${id} ${message}`)).toEqual([expect.stringMatching(/^REF101 Measurement 7: this tag is already taken by measurement 7 at power\.yaml:\d+:\d+$/)])
  })

  test.each([
    ['efficiency: 88 %', 'efficiency: 0 %'], ['efficiency: 88 %', 'efficiency: 150 %'], ['voltage: 230 V, frequency', 'voltage: 0 V, frequency'], ['nominal-voltage: 24 V', 'nominal-voltage: 0 V'],
    ['capacity: 100 Ah', 'capacity: 0 Ah'], ['start-charge: 90 %', 'start-charge: 150 %'], ['sunshine: 60 %', 'sunshine: 200 %'], ['duty: 40 %', 'duty: 450 %'],
    ['depth-of-discharge: 50 %', 'depth-of-discharge: 150 %'],
  ])('no sum is made with what cannot be: %s → %s', (written, instead) => {
    expect(files['power.yaml']).toContain(written)
    const { findings } = check(sourceOf({ ...files, 'power.yaml': files['power.yaml'].replace(written, instead) }, { attached: smallVesselAttached }))
    expect(findings.map(({ id }) => id.slice(0, 4))).toEqual(['SCH1'])
  })
})
