import { expect, it } from 'vitest'
import { multipliedVessel } from '../src/multiplied-vessel.js'
import { aBattery, aCable, aCircuit, aDuty, aMode, anEquipment, aPanel, aVessel, aZone } from './support/vessel-builder.js'

const vessel = aVessel({
  zones: [aZone({ tag: 'helm' })],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'helm' })],
  panels: [aPanel({ tag: 'A1', name: 'A1', zoneTag: 'helm' })],
  equipment: [anEquipment({ tag: 'P1', zoneTag: 'helm', kind: 'display' })],
  circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['A1'] }), aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['P1'] })],
  cables: [aCable({ tag: 'W1', from: 'A1.1', to: 'P1:power', routeTags: [] })],
  operatingModes: [aMode({ tag: 'under-way' })],
  duties: [aDuty({ modeTag: 'under-way', itemTag: 'P1' })],
  canBuses: [{ tag: 'bus', name: 'bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [{ kind: 'tee', tag: 'X1', zoneTag: 'helm', deviceTag: 'P1', dropCableTag: null, deviceTerminal: null }] }],
})

it('renames every tag and every reference alike, and leaves names, kinds and terminals', () => {
  const doubled = multipliedVessel(vessel, 2)
  expect(doubled.identity).toEqual(vessel.identity)
  expect(doubled.circuits.map(({ tag, fedFromTag, loadTags }) => [tag, fedFromTag, loadTags])).toEqual([
    ['F1+1', 'G1+1', ['A1+1']], ['A1.1+1', 'A1+1', ['P1+1']], ['F1+2', 'G1+2', ['A1+2']], ['A1.1+2', 'A1+2', ['P1+2']],
  ])
  expect(doubled.cables[1]).toMatchObject({ tag: 'W1+2', from: { tag: 'A1.1+2', terminal: null }, to: { tag: 'P1+2', terminal: 'power' } })
  expect(doubled.panels[1]).toMatchObject({ tag: 'A1+2', name: 'A1', zoneTag: 'helm+2' })
  expect(doubled.equipment[1]).toMatchObject({ kind: 'display', ports: [] })
  expect(doubled.canBuses[1]!.backbone).toEqual([{ kind: 'tee', tag: 'X1+2', zoneTag: 'helm+2', deviceTag: 'P1+2', dropCableTag: null, deviceTerminal: null }])
})

it('is used in the same ways, with each copy of a load in them', () => {
  const { operatingModes, duties } = multipliedVessel(vessel, 2)
  expect(operatingModes).toEqual(vessel.operatingModes)
  expect(duties.map(({ modeTag, itemTag }) => [modeTag, itemTag])).toEqual([['under-way', 'P1+1'], ['under-way', 'P1+2']])
})

it('has a tag once each', () => {
  const { zones, equipment, batteries, circuits, cables } = multipliedVessel(vessel, 10)
  const tags = [...zones, ...equipment, ...batteries, ...circuits, ...cables].map(({ tag }) => tag)
  expect(new Set(tags).size).toBe(tags.length)
  expect(tags).toHaveLength(60)
})
