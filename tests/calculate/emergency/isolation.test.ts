/** Isolators and what stays live: expected by thinking the wiring of `twoBanks` through; no source but the wiring itself. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { aCircuit, anEquipment, anOutput, aProtection } from '../../support/vessel-builder.js'
import { cables } from '../feeding/support.js'
import { vesselAt } from '../dependency/support.js'
import { emergencyOf, twoBanks } from './support.js'

const results = emergencyOf(twoBanks())
const isolator = (tag: string) => results.isolators.find(each => each.tag === tag)!
/** `F2: G11` */
const rows = (vessel: Vessel) => emergencyOf(vessel).alwaysLive.map(({ circuitTag, itemTags, assumed }) => `${circuitTag}: ${itemTags.join(' ')}${assumed ? ', assumed' : ''}`)

describe('isolators', () => {
  it('are opened in this order: what ends most first, the link, which stays open, last', () => {
    expect(results.isolators.map(({ tag, inLink }) => `${tag}${inLink ? ' link' : ''}`)).toEqual(['Q1', 'Q2', 'Q3 link'])
  })

  it('end what lives behind them alone', () => {
    // Behind Q1: radio, light, fridge, heater, windlass, inverter, the busbar and the panel; not the pump, which has its float side.
    expect([...isolator('Q1').endedTags].toSorted()).toEqual(['A1', 'E1', 'E31', 'E33', 'M17', 'T1', 'T2', 'X1'])
    expect(isolator('Q2').endedTags).toEqual(['M2'])
  })

  it('name their bank, and what of an engine hangs on them', () => {
    expect(isolator('Q1')).toMatchObject({ batteryTags: ['G1'], alternatorTags: ['G3'], starterTags: [], linkTags: ['F9'] })
    expect(isolator('Q2')).toMatchObject({ batteryTags: ['G2'], alternatorTags: [], starterTags: ['M2'], linkTags: [] })
  })

  it('end or thin out services', () => {
    expect(isolator('Q1').services).toEqual([
      { service: 'distress radio', ended: true, lostTags: ['T2'], leftTags: [] },
      { service: 'navigation lights', ended: true, lostTags: ['E1'], leftTags: [] },
    ])
    expect(isolator('Q2').services).toEqual([])
  })

  it('without an engine’s current come before those with it, even where they end less', () => {
    const quiet = [aCircuit({ tag: 'F20', fedFromTag: 'G1', loadTags: ['E9'], protection: aProtection('blade fuse', 5) })]
    const vessel = twoBanks()
    const added = { ...vessel, equipment: [...vessel.equipment, anEquipment({ tag: 'Q8', kind: 'battery isolator' }), anEquipment({ tag: 'E9', kind: 'light', currentMaxA: 1 })], circuits: [...vessel.circuits, ...quiet], cables: [...vessel.cables, ...cables('W51: G1 > F20', 'W52: F20 > Q8', 'W53: Q8 > E9')] }
    expect(emergencyOf(added).isolators.map(({ tag }) => tag)).toEqual(['Q8', 'Q1', 'Q2', 'Q3'])
  })

  it('are selectors of batteries too, and not selectors of the mains', async () => {
    expect(emergencyOf(await vesselAt('tests/vessels/sedan-12v-120v/vessel')).isolators.map(({ tag }) => tag)).toEqual(['Q1'])
    expect(emergencyOf(await vesselAt('sample-vessel')).isolators.map(({ tag }) => tag)).toEqual(['Q1', 'Q4', 'Q2', 'Q3'])
  })
})

describe('what stays live with every isolator open', () => {
  it('is what a battery feeds past them, by its feeder, panels and all', () => {
    expect(rows(twoBanks())).toEqual(['F2: G11', 'F7: P19', 'F3: M1'])
  })

  it('is not what an isolator parts from its panel', () => {
    const vessel = twoBanks()
    const recabled = [...vessel.cables.filter(({ tag }) => tag !== 'W14'), ...cables('W14: F7 > Q4', 'W14b: Q4 > A2')]
    expect(rows({ ...vessel, equipment: [...vessel.equipment, anEquipment({ tag: 'Q4', kind: 'battery isolator' })], cables: recabled })).toEqual(['F2: G11', 'F3: M1'])
  })

  it('is what a second feeder keeps alive, though the first is parted', () => {
    const vessel = twoBanks()
    const second = aCircuit({ tag: 'F8', fedFromTag: 'G2', loadTags: ['A1'], protection: aProtection('blade fuse', 30) })
    expect(rows({ ...vessel, circuits: [...vessel.circuits, second], cables: [...vessel.cables, ...cables('W60: G2 > F8', 'W61: F8 > A1')] }))
      .toEqual(['F2: G11', 'F7: P19', 'F3: M1', 'F8: T2 E1 E31 E33 G11 M17'])
  })

  it('is told of an inverter that is fed past them, and what it feeds', () => {
    const vessel = twoBanks()
    const circuits = [...vessel.circuits.filter(({ tag }) => tag !== 'F6'), aCircuit({ tag: 'F6', fedFromTag: 'G1', loadTags: ['T1'], protection: aProtection('blade fuse', 125) }),
      aCircuit({ tag: 'F52', fedFromTag: 'T1', fedFromTerminal: 'out', loadTags: ['X92'], protection: aProtection('miniature circuit breaker', 10) })]
    const recabled = [...vessel.cables.filter(({ tag }) => tag !== 'W8'), ...cables('W8: G1 > F6', 'W70: T1:out > F52', 'W71: F52 > X92')]
    const fed = { ...vessel, equipment: [...vessel.equipment, anEquipment({ tag: 'X92', kind: 'socket', currentMaxA: 2 })], circuits, cables: recabled }
    expect(rows(fed)).toEqual(['F2: G11', 'F7: P19', 'F3: M1', 'F6: T1', 'F52: X92'])
  })

  it('counts as live, and says so, where no cable shows what stands in the way', () => {
    const vessel = twoBanks()
    expect(rows({ ...vessel, cables: vessel.cables.filter(({ tag }) => !['W18', 'W19'].includes(tag)) })).toEqual(['F2: G11', 'F7: P19', 'F3: M1, assumed'])
  })
})

it('current is put in beyond the isolators by what charges there', () => {
  expect(results.feedBacks).toEqual([{ sourceTag: 'G3', circuitTag: 'F5', ontoTag: 'X1' }])
  const solar = anEquipment({ tag: 'T21', kind: 'solar charge controller', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 20 })] })
  const vessel = twoBanks()
  const sunny = { ...vessel, equipment: [...vessel.equipment, solar], circuits: [...vessel.circuits, aCircuit({ tag: 'F21', fedFromTag: 'X1', loadTags: ['T21'], protection: aProtection('blade fuse', 30) })], cables: [...vessel.cables, ...cables('W80: X1 > F21', 'W81: F21 > T21')] }
  expect(emergencyOf(sunny).feedBacks.map(({ sourceTag, ontoTag }) => `${sourceTag} ${ontoTag}`)).toEqual(['G3 X1', 'T21 X1'])
})
