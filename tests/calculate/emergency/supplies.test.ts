/** Banks, links, what to switch off, pumps: expected by thinking the wiring of `twoBanks` through. */
import { describe, expect, it } from 'vitest'
import { aCircuit, anEquipment, aProtection } from '../../support/vessel-builder.js'
import { vesselAt } from '../dependency/support.js'
import { emergencyOf, twoBanks } from './support.js'

const results = emergencyOf(twoBanks())

describe('a bank that is dead', () => {
  it('takes what it alone feeds; the link brings the house side back', () => {
    const house = results.banks.find(({ tag }) => tag === 'G1')!
    expect([...house.endedTags].toSorted()).toEqual(['A1', 'A2', 'E1', 'E31', 'E33', 'G11', 'M17', 'P19', 'T1', 'T2', 'X1'])
    expect(house.linkTags).toEqual(['F9'])
    expect(house.services.map(({ service, ended }) => `${service} ${ended}`)).toEqual(['bilge pumping true', 'distress radio true', 'navigation lights true', 'alarms true'])
  })

  it('ends engine control where it takes every engine, whatever levers are left', async () => {
    const start = emergencyOf(await vesselAt('sample-vessel')).banks.find(({ tag }) => tag === 'G2')!
    // F36, F37, F39 and F40 hang on G2: both engines, one lever, one pump of four.
    expect(start.services).toEqual([
      { service: 'engine control', ended: true, lostTags: ['M11', 'M12', 'S16'], leftTags: ['S11', 'S12'] },
      { service: 'bilge pumping', ended: false, lostTags: ['G14'], leftTags: ['G11', 'G12', 'G13'] },
    ])
  })
})

describe('links', () => {
  it('join a bank to the side of another, through their switch', () => {
    expect(results.links).toEqual([{ circuitTag: 'F9', switchTags: ['Q3'], fromBatteryTag: 'G2', ontoTag: 'X1', ontoBatteryTags: ['G1'] }])
  })

  it('are not the open circuits of a pump by hand, nor a second source of the mains', async () => {
    expect(emergencyOf(await vesselAt('sample-vessel')).links.map(({ circuitTag }) => circuitTag)).toEqual(['F38'])
  })
})

describe('what is switched off first', () => {
  it('is by what it counts for in its feeder: heater 8 · 0.4 A, fridge 5 · 0.5 A; the inverter’s 100 · 0.2 A are most', () => {
    expect(results.shedding.map(({ circuitTag, meanCurrentA }) => [circuitTag, Number(meanCurrentA.toFixed(6))])).toEqual([['F6', 20], ['A1.4', 3.2], ['A1.3', 2.5]])
  })

  it('is nothing that safety needs, nor what draws only while somebody works it', () => {
    const tags = results.shedding.map(({ circuitTag }) => circuitTag)
    for (const kept of ['A1.1', 'A1.2', 'A1.5', 'A1.6', 'F2', 'A2.1', 'F3', 'S1']) expect(tags).not.toContain(kept)
  })

  it('is not a critical circuit, whatever it feeds', () => {
    const vessel = twoBanks({ circuits: twoBanks().circuits.map(circuit => (circuit.tag === 'A1.4' ? { ...circuit, loadClass: 'critical' } : circuit)) })
    expect(emergencyOf(vessel).shedding.map(({ circuitTag }) => circuitTag)).toEqual(['F6', 'A1.3'])
  })
})

describe('bilge pumps', () => {
  it('run by themselves through their float switch, by hand by the other circuit; live with the isolators open or not', () => {
    expect(results.pumps).toEqual([{ pumpTag: 'G11', byFloat: [{ circuitTag: 'F2', alwaysLive: true }], byHand: [{ circuitTag: 'A1.5', alwaysLive: false }] }])
  })

  it('of which no way is recorded are told of', () => {
    const vessel = twoBanks()
    const added = { ...vessel, equipment: [...vessel.equipment, anEquipment({ tag: 'G12', kind: 'bilge pump' })] }
    expect(emergencyOf(added).pumps[1]).toEqual({ pumpTag: 'G12', byFloat: [], byHand: [] })
    const removed = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'G11' ? { ...item, status: 'removed' as const } : item)), circuits: [...vessel.circuits, aCircuit({ tag: 'X', fedFromTag: 'A1', protection: aProtection('blade fuse', 5) })] }
    expect(emergencyOf(removed).pumps).toEqual([])
  })
})
