/** A vessel of the size that a diagram has to bear: invented, and only as complete as the drawings need. */
import type { Cable, Circuit, Equipment, Vessel } from '../../../src/model/vessel.js'
import {
  aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone, mm2,
} from '../../support/vessel-builder.js'

const zones = [
  aZone({ tag: 'Z1', name: 'Wheelhouse' }), aZone({ tag: 'Z2', name: 'Electrical locker', space: 'locker' }),
  aZone({ tag: 'Z3', name: 'Engine space', space: 'machinery' }), aZone({ tag: 'Z4', name: 'Mast', space: 'mast' }),
  aZone({ tag: 'Z5', name: 'Foredeck', space: 'deck' }),
]

const cableTypes = [
  aCableType({ tag: '1x95', cores: 1, size: mm2(95) }), aCableType({ tag: '1x35', cores: 1, size: mm2(35) }),
  aCableType({ tag: '2x6', size: mm2(6) }), aCableType({ tag: '2x2.5', size: mm2(2.5) }), aCableType({ tag: '2x1.5', size: mm2(1.5) }),
  aCableType({ tag: 'can', use: 'can bus' }), aCableType({ tag: 'eth', use: 'ethernet' }), aCableType({ tag: 'coax', use: 'coax' }),
  aCableType({ tag: 'serial', use: 'serial' }), aCableType({ tag: 'signal', use: 'signal' }),
]

const powerCable = (tag: string, typeTag: string, from: string, to: string): Cable =>
  aCable({ tag, typeTag, from, to, carries: typeTag.startsWith('1x') ? 'positive' : 'both' })

const batteries = [
  aBattery({ tag: 'G1', name: 'House battery', capacityAh: 400, chemistry: 'lfp', zoneTag: 'Z2' }),
  aBattery({ tag: 'G2', name: 'Starting battery', capacityAh: 110, chemistry: 'agm', zoneTag: 'Z3' }),
]
const busbars = [
  aBusbar({ tag: 'X1', name: 'House positive busbar', ratedCurrentA: 400, zoneTag: 'Z2' }),
  aBusbar({ tag: 'X2', name: 'Starting positive busbar', ratedCurrentA: 300, zoneTag: 'Z3' }),
  aBusbar({ tag: 'X9', name: 'Negative busbar', ratedCurrentA: 400, polarity: 'negative', zoneTag: 'Z2' }),
]
const panels = [
  aPanel({ tag: 'A1', name: 'Wheelhouse panel', kind: 'breaker panel', ways: 24, ratedCurrentA: 100, zoneTag: 'Z1' }),
  aPanel({ tag: 'A2', name: 'Electronics fuse block', kind: 'fuse block', ways: 12, ratedCurrentA: 60, zoneTag: 'Z2' }),
  aPanel({ tag: 'K1', name: 'Forward switching module', kind: 'switching module', ways: 16, ratedCurrentA: 80, zoneTag: 'Z5' }),
]

const throughEquipment = [
  anEquipment({ tag: 'Q1', name: 'House isolator', kind: 'battery isolator', zoneTag: 'Z2' }),
  anEquipment({ tag: 'Q2', name: 'Starting isolator', kind: 'battery isolator', zoneTag: 'Z3' }),
  anEquipment({ tag: 'R1', name: 'House shunt', kind: 'shunt', zoneTag: 'Z2' }),
  anEquipment({ tag: 'X5', name: 'Mast foot terminal block', kind: 'terminal block', zoneTag: 'Z4' }),
  anEquipment({ tag: 'S1', name: 'Float switch, engine bilge', kind: 'float switch', zoneTag: 'Z3' }),
]

/** Feeders and what hangs on the busbars directly: circuit, its cable(s), what it feeds. */
const mainCircuits: readonly Circuit[] = [
  aCircuit({ tag: 'F1', name: 'House main', fedFromTag: 'G1', protection: aProtection('class T fuse', 300), loadTags: ['X1'] }),
  aCircuit({ tag: 'F2', name: 'Starting main', fedFromTag: 'G2', protection: aProtection('bolt-in fuse, large', 250), loadTags: ['X2'] }),
  aCircuit({ tag: 'F3', name: 'Wheelhouse panel', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 100), loadTags: ['A1'] }),
  aCircuit({ tag: 'F4', name: 'Electronics fuse block', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 60), loadTags: ['A2'] }),
  aCircuit({ tag: 'F5', name: 'Forward module', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 80), loadTags: ['K1'] }),
  aCircuit({ tag: 'F6', name: 'Bow thruster', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, large', 250), loadTags: ['M1'] }),
  aCircuit({ tag: 'F7', name: 'Windlass', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 125), loadTags: ['M2'] }),
  aCircuit({ tag: 'F8', name: 'Charger', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 80), loadTags: ['T1'] }),
  aCircuit({ tag: 'F9', name: 'Bilge pump, engine space', fedFromTag: 'X1', protection: aProtection('blade fuse', 10), loadClass: 'critical', loadTags: ['M3'] }),
  aCircuit({ tag: 'F10', name: 'Port engine starter', fedFromTag: 'X2', unprotectedReason: 'engine starting', loadTags: ['M4'] }),
  aCircuit({ tag: 'F11', name: 'Emergency link', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, large', 250), normalState: 'open', loadTags: ['X2'] }),
]
const mainCables: readonly Cable[] = [
  powerCable('W1', '1x95', 'G1', 'F1'), powerCable('W2', '1x95', 'F1', 'Q1:in'), powerCable('W3', '1x95', 'Q1:out', 'R1'), powerCable('W4', '1x95', 'R1', 'X1'),
  powerCable('W5', '1x95', 'G2', 'F2'), powerCable('W6', '1x95', 'F2', 'Q2'), powerCable('W7', '1x95', 'Q2', 'X2'),
  powerCable('W8', '1x35', 'F3', 'A1'), powerCable('W9', '1x35', 'F4', 'A2'), powerCable('W10', '1x35', 'F5', 'K1'),
  powerCable('W11', '1x95', 'F6', 'M1'), powerCable('W12', '1x35', 'F7', 'M2'), powerCable('W13', '1x35', 'F8', 'T1'),
  powerCable('W14', '2x2.5', 'F9', 'S1'), powerCable('W15', '2x2.5', 'S1', 'M3'), powerCable('W16', '1x95', 'F10', 'M4'), powerCable('W17', '1x95', 'F11', 'X2'),
]
const mainLoads = [
  anEquipment({ tag: 'M1', name: 'Bow thruster', kind: 'thruster', currentMaxA: 220, zoneTag: 'Z5' }),
  anEquipment({ tag: 'M2', name: 'Windlass', kind: 'windlass', currentMaxA: 90, zoneTag: 'Z5' }),
  anEquipment({ tag: 'T1', name: 'Shore charger', kind: 'charger', currentMaxA: 60, zoneTag: 'Z2' }),
  anEquipment({ tag: 'M3', name: 'Bilge pump, engine space', kind: 'bilge pump', currentMaxA: 6.5, zoneTag: 'Z3' }),
  anEquipment({ tag: 'M4', name: 'Port engine starter', kind: 'starter motor', zoneTag: 'Z3' }),
]

/** A panel's ways: `name, kind, rating, current`; each with a load and a cable of its own. */
type Way = readonly [name: string, kind: string, ratedCurrentA: number, currentMaxA: number]
const wheelhouse: readonly Way[] = [
  ['Steaming light', 'navigation light', 5, 0.8], ['Side lights', 'navigation light', 5, 1.6], ['Stern light', 'navigation light', 5, 0.8],
  ['Anchor light', 'navigation light', 5, 0.4], ['Compass light', 'light', 5, 0.2], ['Horn', 'horn', 15, 8], ['Wiper, port', 'wiper', 10, 5],
  ['Wiper, starboard', 'wiper', 10, 5], ['Searchlight on the wheelhouse roof', 'searchlight', 15, 9], ['Cabin lights, saloon', 'light', 10, 3],
  ['Cabin lights, forward', 'light', 10, 2], ['Fresh-water pump', 'pump', 15, 7], ['Refrigerator', 'refrigerator', 15, 5.5],
  ['Heater', 'heater', 20, 12], ['Toilet', 'toilet', 25, 18], ['Engine-space fan', 'fan', 10, 6],
  ['Deck-wash pump', 'pump', 15, 9], ['Chart light', 'light', 3, 0.2], ['Socket, wheelhouse', 'socket', 10, 4], ['Socket, saloon', 'socket', 10, 4],
  ['Trim tabs', 'trim tab', 20, 14], ['Gas alarm', 'gas detector', 3, 0.2],
]
const electronics: readonly Way[] = [
  ['Helm display, port', 'display', 10, 3.5], ['Helm display, starboard', 'display', 10, 3.5], ['Radar power unit', 'radar power unit', 15, 6],
  ['Network switch', 'network switch', 5, 1.2], ['Sonar module', 'sonar module', 5, 1.5], ['VHF transceiver', 'vhf transceiver', 10, 6],
  ['AIS transceiver', 'ais transceiver', 5, 1.5], ['Autopilot computer', 'autopilot computer', 20, 12], ['Mobile-data router', 'mobile-data router', 3, 0.9],
]
const forward: readonly Way[] = [
  ['Bilge pump, forward', 'bilge pump', 10, 6], ['Deck lights, forward', 'light', 5, 2], ['Locker light', 'light', 3, 0.3], ['Anchor chain wash pump', 'pump', 15, 9],
]
function wired(panelTag: string, letter: string, firstCable: number, ways: readonly Way[]): { circuits: Circuit[]; equipment: Equipment[]; cables: Cable[] } {
  return {
    circuits: ways.map(([name, , ratedCurrentA], i) => aCircuit({
      tag: `${panelTag}.${i + 1}`, name, fedFromTag: panelTag, way: i + 1, loadTags: [`${letter}${firstCable + i}`],
      protection: aProtection(panelTag === 'A1' ? 'circuit breaker' : panelTag === 'A2' ? 'blade fuse' : 'electronic channel', ratedCurrentA),
    })),
    equipment: ways.map(([name, kind, , currentMaxA], i) => anEquipment({ tag: `${letter}${firstCable + i}`, name, kind, currentMaxA, zoneTag: 'Z1' })),
    cables: ways.map((_, i) => powerCable(`W${firstCable + i}`, i % 3 === 0 ? '2x2.5' : '2x1.5', `${panelTag}.${i + 1}`, `${letter}${firstCable + i}`)),
  }
}
const parts = [wired('A1', 'E', 100, wheelhouse), wired('A2', 'P', 200, electronics), wired('K1', 'L', 300, forward)]

/** The steaming light's cable goes by way of the terminal block at the mast foot, and so does the anchor light's. */
const byTheMast = (cables: readonly Cable[]): readonly Cable[] => cables.flatMap(cable => {
  const terminal = { W100: '1', W103: '2' }[cable.tag]
  return terminal === undefined ? [cable] : [
    { ...cable, to: { tag: 'X5', terminal } },
    aCable({ tag: `${cable.tag}A`, typeTag: '2x1.5', from: `X5:${terminal}`, to: cable.to.tag }),
  ]
})

const ethernetPort = (name: string, powerClass: number | null = null) => ({ name, kind: 'ethernet' as const, speedMbitPerS: 1000, powerClass, baudRates: [], direction: null, signalCurrentA: null })
const network = {
  equipment: [
    anEquipment({ tag: 'N1', name: 'Wheelhouse network switch', kind: 'network switch', zoneTag: 'Z1', systemTag: 'NET', ports: ['1', '2', '3', '4', '5', '6', '7', '8'].map(name => ethernetPort(name, Number(name) <= 4 ? 4 : null)) }),
    anEquipment({ tag: 'N2', name: 'Mast network switch', kind: 'network switch', zoneTag: 'Z4', systemTag: 'NET', ports: ['1', '2', '3', '4', '5'].map(name => ethernetPort(name, Number(name) <= 2 ? 4 : null)) }),
    anEquipment({ tag: 'B1', name: 'Radar scanner', kind: 'radar scanner', zoneTag: 'Z4', systemTag: 'NAV' }),
    anEquipment({ tag: 'B2', name: 'Thermal camera', kind: 'thermal camera', zoneTag: 'Z4', systemTag: 'NAV', ports: [ethernetPort('net', 4)] }),
    anEquipment({ tag: 'B3', name: 'Stern camera', kind: 'camera', zoneTag: 'Z4', systemTag: 'NAV', ports: [ethernetPort('net', 2)] }),
    anEquipment({ tag: 'B4', name: 'Engine-space camera', kind: 'camera', zoneTag: 'Z3', systemTag: 'NAV', ports: [ethernetPort('net', 2)] }),
  ],
  cables: ([
    ['W401', 'N1:1', 'B4:net'], ['W402', 'N1:5', 'P200:net'], ['W403', 'N1:6', 'P201:net'], ['W404', 'N1:7', 'P204:net'], ['W405', 'N1:8', 'N2:5'],
    ['W406', 'N2:1', 'B2:net'], ['W407', 'N2:2', 'B3:net'], ['W408', 'N2:3', 'B1'], ['W409', 'N2:4', 'P208:lan'],
  ] as const).map(([tag, from, to]) => aCable({ tag, from, to, typeTag: 'eth', carries: 'none' })),
}

const busDevices = ['P200', 'P201', 'B10', 'P206', 'P207', 'B11', 'B12', 'B13', 'P205', 'K10', 'S10', 'B14']
const bus = {
  equipment: [
    anEquipment({ tag: 'B10', name: 'Attitude and heading sensor', kind: 'attitude and heading sensor', zoneTag: 'Z2', systemTag: 'NAV', loadEquivalencyNumber: 3 }),
    anEquipment({ tag: 'B11', name: 'GNSS antenna', kind: 'gnss antenna', zoneTag: 'Z4', systemTag: 'NAV', loadEquivalencyNumber: 2 }),
    anEquipment({ tag: 'B12', name: 'Wind sensor', kind: 'wind sensor', zoneTag: 'Z4', systemTag: 'NAV', loadEquivalencyNumber: 2 }),
    anEquipment({ tag: 'B13', name: 'Rudder sensor', kind: 'rudder sensor', zoneTag: 'Z3', systemTag: 'NAV', loadEquivalencyNumber: 1 }),
    anEquipment({ tag: 'K10', name: 'Engine gateway', kind: 'engine gateway', zoneTag: 'Z3', systemTag: 'NAV', loadEquivalencyNumber: 2 }),
    anEquipment({ tag: 'S10', name: 'Autopilot remote control', kind: 'remote control', zoneTag: 'Z1', systemTag: 'NAV', loadEquivalencyNumber: 1 }),
    anEquipment({ tag: 'B14', name: 'Fuel tank sensor, port', kind: 'tank sensor', zoneTag: 'Z3', systemTag: 'NAV', loadEquivalencyNumber: 1 }),
  ],
  cables: [
    ...busDevices.map((tag, i) => aCable({ tag: `W${520 + i}`, from: `TB${i + 1}`, to: `${tag}:can`, typeTag: 'can', carries: 'none', lengthM: 1.5 })),
    ...busDevices.slice(1).map((_, i) => aCable({ tag: `W${500 + i}`, from: `TB${i + 1}`, to: `TB${i + 2}`, typeTag: 'can', carries: 'none', lengthM: 2.4 })),
  ],
  bus: {
    tag: 'C1', name: 'Navigation bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null,
    backbone: [
      { kind: 'terminator' as const, tag: 'R10', zoneTag: 'Z1', resistanceOhm: null },
      ...busDevices.flatMap((deviceTag, i) => [
        ...(i === 0 || i === 4 ? [] : [{ kind: 'segment' as const, cableTag: `W${500 + i - 1}` }]),
        ...(i === 6 ? [{ kind: 'power' as const, tag: 'TB20', zoneTag: 'Z2', circuitTag: 'A2.9', dropCableTag: null, supplyVoltageV: null }] : []),
        { kind: 'tee' as const, tag: `TB${i + 1}`, zoneTag: i < 5 ? 'Z1' : 'Z3', deviceTag, dropCableTag: `W${520 + i}`, deviceTerminal: null },
      ]),
      { kind: 'terminator' as const, tag: 'R11', zoneTag: 'Z3', resistanceOhm: null },
    ],
  },
}

const radio = {
  equipment: [
    anEquipment({ tag: 'T30', name: 'VHF antenna', kind: 'vhf antenna', zoneTag: 'Z4', systemTag: 'COM' }),
    anEquipment({ tag: 'X30', name: 'Antenna splitter', kind: 'antenna splitter', zoneTag: 'Z1', systemTag: 'COM' }),
    anEquipment({ tag: 'P30', name: 'VHF handset', kind: 'vhf handset', zoneTag: 'Z1', systemTag: 'COM' }),
    anEquipment({ tag: 'P31', name: 'VHF loudspeaker', kind: 'loudspeaker', zoneTag: 'Z1', systemTag: 'COM' }),
  ],
  cables: ([
    ['W601', 'coax', 'T30', 'X30'], ['W602', 'coax', 'X30', 'P205'], ['W603', 'coax', 'X30', 'P206'],
    ['W604', 'signal', 'P205', 'P30'], ['W605', 'signal', 'P205', 'P31'], ['W606', 'serial', 'P206', 'P200'],
  ] as const).map(([tag, typeTag, from, to]) => aCable({ tag, typeTag, from, to, carries: 'none' })),
}

const systemOf: Readonly<Record<string, string>> = { P200: 'NAV', P201: 'NAV', P202: 'NAV', P203: 'NET', P204: 'NAV', P205: 'COM', P206: 'COM', P207: 'NAV', P208: 'NET' }

export const mediumVessel: Vessel = aVessel({
  systems: [{ tag: 'NAV', name: 'Navigation', purpose: null, kind: null }, { tag: 'COM', name: 'Communication', purpose: null, kind: null }, { tag: 'NET', name: 'Data network', purpose: null, kind: null }],
  zones, cableTypes, batteries, busbars, panels,
  equipment: [
    ...throughEquipment, ...mainLoads, ...network.equipment, ...bus.equipment, ...radio.equipment,
    ...parts.flatMap(({ equipment }) => equipment).map(item => ({ ...item, systemTag: systemOf[item.tag] ?? null })),
  ],
  circuits: [...mainCircuits, ...parts.flatMap(({ circuits }) => circuits)],
  cables: [...mainCables, ...byTheMast(parts.flatMap(({ cables }) => cables)), ...network.cables, ...bus.cables, ...radio.cables],
  canBuses: [bus.bus],
  ethernetNetworks: [{ tag: 'E1', name: 'Ship network', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: ['N1', 'N2'] }],
})
