/** Supply: expected by thinking the boat through; no source but the wiring itself. */
import { describe, expect, it } from 'vitest'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aVessel } from '../../support/vessel-builder.js'
import { boat, cables, circuit, junction, load } from '../feeding/support.js'
import { dependencyOf, lossOf } from './support.js'

const lamp = boat({ equipment: [load('E1', 1), junction('Q5', 'switch')], circuits: [circuit('A1.1', ['E1'])], cables: cables('W1: A1.1 > Q5', 'W2: Q5 > E1') })

describe('one way of supply', () => {
  it.each(['A1.1', 'Q5', 'W1', 'W2'])('%s takes the lamp', tag => expect(lossOf(lamp, tag)).toEqual(['E1 dead']))
  it.each(['G1', 'F1', 'Q1', 'WM1', 'WM2', 'WM3'])('%s takes all', tag => expect(lossOf(lamp, tag)).toEqual(['E1 dead', 'X1 dead', 'A1 dead']))
  it('the lamp takes nothing', () => expect(lossOf(lamp, 'E1')).toEqual([]))
  it('lists where to look, nearest first', () => {
    const [line] = dependencyOf(lamp).traces.get('E1')!.supplies
    expect(line!.steps.map(({ tag, what }) => `${tag} ${what}`)).toEqual(['A1.1 device', 'Q5 switch', 'A1 panel', 'F2 device', 'X1 busbar', 'F1 device', 'Q1 switch', 'G1 battery'])
    expect(line!.steps[0]!.cableTags).toEqual(['W1', 'W2'])
  })
})

describe('several ways of supply', () => {
  const twice = (normalState: 'open' | 'closed') => boat({
    equipment: [load('E1', 1)],
    circuits: [circuit('A1.1', ['E1']), aCircuit({ tag: 'F9', fedFromTag: 'G2', loadTags: ['E1'], normalState })],
    cables: cables('W1: A1.1 > E1', 'W9: F9 > E1'),
  }, { batteries: [aBattery({ tag: 'G1' }), aBattery({ tag: 'G2' })] })

  it('dead only when both are, with less when one is', () => {
    expect(lossOf(twice('closed'), 'A1.1')).toEqual(['E1 degraded'])
    expect(lossOf(twice('closed'), 'F9')).toEqual(['E1 degraded'])
    expect(lossOf(twice('closed'), 'E1')).toEqual([])
  })
  it('a normally open one is no supply, and brings it back', () => {
    expect(lossOf(twice('open'), 'A1.1')).toEqual(['E1 dead, by hand F9'])
    expect(lossOf(twice('open'), 'F9')).toEqual([])
    expect(dependencyOf(twice('open')).traces.get('E1')!.supplies.map(({ circuitTag, open }) => [circuitTag, open])).toEqual([['A1.1', false], ['F9', true]])
  })
  it('a link between busbars brings back what hangs below', () => {
    const linked = boat({
      equipment: [load('E1', 1)],
      circuits: [circuit('A1.1', ['E1']), aCircuit({ tag: 'F9', fedFromTag: 'G2', loadTags: ['X1'], normalState: 'open' })],
      cables: cables('W1: A1.1 > E1', 'W9: F9 > X1'),
    }, { batteries: [aBattery({ tag: 'G1' }), aBattery({ tag: 'G2' })] })
    expect(lossOf(linked, 'G1')).toEqual(['E1 dead, by hand F9', 'X1 dead, by hand F9', 'A1 dead, by hand F9'])
    expect(lossOf(linked, 'F2')).toEqual(['E1 dead', 'A1 dead'])
  })
})

describe('a switching module', () => {
  const module = (networkLoss: 'off' | 'hold', manualBypass: string | null) => boat({
    equipment: [load('E1', 1)], circuits: [circuit('A1.1', ['E1'], { manualBypass })], cables: cables('W1: A1.1 > E1'),
  }, {
    panels: [aPanel({ tag: 'A1', kind: 'switching module', networkLoss })],
    canBuses: [{ tag: 'N1', name: 'Bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [{ kind: 'tee', tag: 'T1', zoneTag: null, deviceTag: 'A1', dropCableTag: 'W7', deviceTerminal: null }] }],
  })
  it('takes its channels with it, and the bypass brings them back', () => {
    expect(lossOf(module('hold', 'row 1'), 'A1')).toEqual(['E1 dead, by hand A1.1'])
    expect(lossOf(module('hold', null), 'A1')).toEqual(['E1 dead'])
  })
  it('is not bypassed without its feed', () => expect(lossOf(module('hold', 'row 1'), 'F2')).toEqual(['E1 dead', 'A1 dead']))
  it.each(['W7', 'T1', 'N1'])('goes off or holds when %s is lost', tag => {
    expect(lossOf(module('off', null), tag)).toEqual(['E1 dead', 'A1 degraded'])
    expect(lossOf(module('hold', null), tag)).toEqual(['A1 degraded'])
  })
})

it('counts a named way back, and the busbar in it', () => {
  const vessel = boat({
    equipment: [load('M1', 10)],
    circuits: [aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['M1'], returnCableTags: ['WN1', 'WN2'] })],
    cables: [aCable({ tag: 'W9', from: 'F9', to: 'M1', carries: 'positive' }), aCable({ tag: 'WN1', from: 'M1', to: 'X2', carries: 'negative' }), aCable({ tag: 'WN2', from: 'X2', to: 'G1', carries: 'negative' })],
  }, { busbars: [aBusbar({ tag: 'X1' }), aBusbar({ tag: 'X2', polarity: 'negative' })] })
  for (const tag of ['WN1', 'WN2', 'X2', 'W9', 'F9']) expect(lossOf(vessel, tag)).toEqual(['M1 dead'])
})

it('a bus feeds its devices as far as the backbone is whole; a switch port feeds its device', () => {
  const vessel = boat({
    equipment: [
      load('B1'), load('B2'),
      anEquipment({ tag: 'K1', kind: 'network switch', ports: [{ name: 'power', kind: 'power', speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null }, { name: 'p1', kind: 'ethernet', speedMbitPerS: 100, powerClass: 3, baudRates: [], direction: null, signalCurrentA: null }] }),
      anEquipment({ tag: 'C1', kind: 'camera', ports: [{ name: 'lan', kind: 'ethernet', speedMbitPerS: 100, powerClass: 2, baudRates: [], direction: null, signalCurrentA: null }] }),
    ],
    circuits: [circuit('A1.1', ['N1']), circuit('A1.2', ['K1'])],
    cables: [...cables('W1: A1.1 > T2', 'W2: A1.2 > K1:power'), aCable({ tag: 'WE', from: 'K1:p1', to: 'C1:lan', typeTag: 'eth', carries: 'none' })],
  }, {
    cableTypes: [aCableType({ tag: 'eth', use: 'ethernet' })],
    ethernetNetworks: [{ tag: 'LAN', name: 'LAN', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags: ['K1'] }],
    canBuses: [{ tag: 'N1', name: 'Bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [
      { kind: 'tee', tag: 'T1', zoneTag: null, deviceTag: 'B1', dropCableTag: 'D1', deviceTerminal: null }, { kind: 'segment', cableTag: 'S1' },
      { kind: 'power', tag: 'T2', zoneTag: null, circuitTag: 'A1.1', dropCableTag: 'W1', supplyVoltageV: null }, { kind: 'segment', cableTag: 'S2' },
      { kind: 'tee', tag: 'T3', zoneTag: null, deviceTag: 'B2', dropCableTag: 'D2', deviceTerminal: null },
    ] }],
  })
  expect(lossOf(vessel, 'A1.1')).toEqual(['B1 dead', 'B2 dead'])
  expect(lossOf(vessel, 'S1')).toEqual(['B1 dead', 'B2 degraded'])
  expect(lossOf(vessel, 'S2')).toEqual(['B2 dead', 'B1 degraded'])
  expect(lossOf(vessel, 'D1')).toEqual(['B1 dead'])
  expect(lossOf(vessel, 'A1.2')).toEqual(['K1 dead', 'C1 dead'])
  expect(lossOf(vessel, 'WE')).toEqual(['C1 dead'])
  expect(dependencyOf(vessel).traces.get('C1')!.supplies[0]!.steps.slice(0, 2).map(({ tag }) => tag)).toEqual(['K1', 'A1.2'])
})

describe('sources', () => {
  it('a charger hangs on no circuit that it charges through', () => {
    const vessel = boat({
      equipment: [anEquipment({ tag: 'T1', kind: 'charger', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 20 })] })],
      circuits: [aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['T1'] })], cables: cables('W9: F9 > T1'),
    })
    const { losses } = dependencyOf(vessel)
    expect(losses.get('F9')).toEqual([{ tag: 'T1', how: 'degraded', causes: [{ of: 'charging', tag: 'F9' }], restoreBy: [] }])
  })
  it('an inverter lives on its battery, and what it feeds on it', () => {
    const vessel = boat({
      equipment: [anEquipment({ tag: 'T2', kind: 'inverter', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 4 })] }), load('E9', 1)],
      circuits: [aCircuit({ tag: 'F9', fedFromTag: 'X1', loadTags: ['T2'] }), aCircuit({ tag: 'F10', fedFromTag: 'T2', fedFromTerminal: 'ac', loadTags: ['E9'] })],
      cables: [...cables('W9: F9 > T2:dc'), aCable({ tag: 'W10', from: 'F10', to: 'E9', typeTag: 'ac' })],
    }, { cableTypes: [aCableType({ tag: 'ac', use: 'ac power' })] })
    expect(lossOf(vessel, 'F9')).toEqual(['T2 dead', 'E9 dead'])
    expect(lossOf(vessel, 'F10')).toEqual(['E9 dead'])
  })
})

it('says what it could not follow', () => {
  const vessel = aVessel({
    panels: [aPanel({ tag: 'A9' })], equipment: [load('E1', 1), load('E2', 1), anEquipment({ tag: 'E3', kind: 'navigation light' })],
    circuits: [aCircuit({ tag: 'A9.1', fedFromTag: 'A9', loadTags: ['E1'] })], cables: cables('W1: A9.1 > E1'),
    canBuses: [{ tag: 'N1', name: 'Bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [] }],
  })
  expect(dependencyOf(vessel).notAssessed.map(({ subjectTag, reason }) => `${subjectTag}: ${reason}`)).toEqual([
    'E2: it draws power, and no circuit or network that supplies it is recorded',
    'N1: no circuit that feeds it is recorded, so it counts as fed',
    'E1: no source is reached by the circuits that supply it',
    'E3: what it lives on is not recorded, so it is not counted for navigation lights',
  ])
})
