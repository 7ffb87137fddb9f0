/** The arithmetic of budgets from the reference's worked examples; classes are those of IEEE 802.3 (tests/reference/poe-classes.csv). */
import { describe, expect, it } from 'vitest'
import { converterInput } from '../../../src/calculate/sources/converter-input.calc.js'
import type { Equipment, Vessel } from '../../../src/model/vessel.js'
import { aBattery, aCircuit, aProtection } from '../../support/vessel-builder.js'
import { aDevice, aSwitch, ethernetOf, foundIn, link, networkVessel } from './support.js'

/** A switch with a device of each class asked, all on ports of class 8. */
const onSwitch = (asked: readonly number[], given: Partial<Equipment> = {}, device: Partial<Equipment> = {}, more: Partial<Vessel> = {}): Vessel => networkVessel({
  equipment: [
    aSwitch('N1', asked.length + 2, given, Object.fromEntries(asked.map((_, i) => [String(i + 1), { powerClass: 8 }]))),
    ...asked.map((powerClass, i) => aDevice(`B${i + 1}`, { kind: 'camera', ...device }, { powerClass })),
  ],
  cables: asked.map((_, i) => link(`W${i + 1}`, `N1:${i + 1}`, `B${i + 1}:lan`)),
  ...more,
})
const powerOf = (vessel: Vessel) => ethernetOf(vessel).power.get('N1')!

describe('the power that a switch keeps', () => {
  // 4 · 15.4 + 30 + 60 W
  it('is that of the classes: 151.6 W are above 120 W', () => {
    const results = ethernetOf(onSwitch([3, 3, 3, 3, 4, 6], { powerBudgetW: 120 }, { networkPowerW: 2 }))
    expect(results.power.get('N1')?.reservedPowerW).toBeCloseTo(151.6, 9)
    expect(foundIn(results)).toEqual(['ETH103 N1'])
    expect(results.findings[0]).toMatchObject({ evidence: { reservedPowerW: expect.closeTo(151.6, 9) }, limit: { relation: 'at most', value: 120 } })
  })
  // 4 · 7 + 30 W
  it('is within 65 W at 58 W, with 7 W left', () => {
    const vessel = onSwitch([2, 2, 2, 2, 4], { powerBudgetW: 65 })
    expect(powerOf(vessel).reservedMargin).toMatchObject({ output: { marginPowerW: 7 } })
    expect(foundIn(ethernetOf(vessel))).toEqual([])
  })
  it('may be all of the budget', () => expect(foundIn(ethernetOf(onSwitch([3, 3], { powerBudgetW: 30.8 }, { networkPowerW: 1 })))).toEqual([]))
  it('of class 0 is that of class 3, whatever the device takes', () => expect(powerOf(onSwitch([0], {}, { networkPowerW: 2 })).reservedPowerW).toBe(15.4))
  it('is not known while a class is not', () => {
    const results = ethernetOf(networkVessel({
      equipment: [aSwitch('N1', 2, { powerBudgetW: 60 }, { 1: { powerClass: 3 } }), aDevice('B1', { networkPowerW: 5 })], cables: [link('W1', 'N1:1', 'B1:lan')],
    }))
    expect(results.power.get('N1')).toMatchObject({ reservedPowerW: null, reservedMargin: { status: 'not computed' }, drawnMargin: { status: 'computed' } })
    expect(results.notAssessed).toContainEqual({ subjectTag: 'N1', reason: 'power left at its ports: the class that B1 asks for is not recorded' })
  })
  it('is not known while it is not known whether a device lives on its port', () => {
    const given = (circuits: Vessel['circuits']) => ethernetOf(networkVessel({
      equipment: [aSwitch('N1', 2, { powerBudgetW: 60 }, { 1: { powerClass: 3 } }), aDevice('B1', {})], cables: [link('W1', 'N1:1', 'B1:lan')], circuits,
    }))
    expect(given([]).power.get('N1')).toMatchObject({ reservedMargin: { status: 'not computed' }, drawnMargin: { status: 'not computed' } })
    expect(given([]).notAssessed).toContainEqual({ subjectTag: 'B1', reason: 'power over its network cable: it has no circuit, and neither its power class nor what it takes is recorded' })
    // With a circuit of its own it takes nothing from the port.
    expect(given([aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['B1'] })]).power.get('N1')).toMatchObject({ reservedMargin: { output: { marginPowerW: 60 } } })
  })
  it('is held against nothing without a budget, and that is said', () => {
    const results = ethernetOf(onSwitch([3]))
    expect(results.power.get('N1')?.reservedMargin).toMatchObject({ status: 'not computed', reason: 'the power budget of N1 is not recorded' })
    expect(results.notAssessed).toContainEqual({ subjectTag: 'N1', reason: 'power left at its ports: its power budget is not recorded' })
  })
})

describe('the power that is drawn', () => {
  // 30 m of channel at 50 V: 25.5 W at the device, 0.5312 A, 1.058 W lost, 26.56 W at the port.
  it('has the loss of the cable in it', () => {
    const vessel = networkVessel({
      equipment: [aSwitch('N1', 1, { powerBudgetW: 60 }, { 1: { powerClass: 4 } }), aDevice('B1', { kind: 'camera' }, { powerClass: 4 })], cables: [link('W1', 'B1:lan', 'N1:1', { lengthM: 30 })],
    })
    const [feed] = powerOf(vessel).feeds
    expect(feed).toMatchObject({ deviceTag: 'B1', portName: '1', offeredClass: 4, askedClass: 4, reservedPowerW: 30, byClass: true })
    expect(feed!.power).toMatchObject({ input: { portVoltageV: 50, channelLengthM: 30 }, output: { supplyCurrentA: expect.closeTo(0.5312, 4), lossPowerW: expect.closeTo(1.058, 3), portPowerW: expect.closeTo(26.56, 2) } })
    expect(powerOf(vessel).drawnPowerW).toBeCloseTo(26.56, 2)
  })
  it('is that recorded of the device, else the most of its class', () => {
    expect(powerOf(onSwitch([2], {}, { networkPowerW: 4 })).feeds[0]).toMatchObject({ byClass: false, power: { input: { devicePowerW: 4 } } })
    expect(powerOf(onSwitch([2])).feeds[0]).toMatchObject({ byClass: true, power: { input: { devicePowerW: 6.49 } } })
  })
  it('comes at the recorded voltage, else at 50 V or at the least of its type', () => {
    const voltage = (asked: number, powerVoltageV: number | null) => { const { power } = powerOf(onSwitch([asked], { powerVoltageV })).feeds[0]!; return power.status === 'computed' ? power.input.portVoltageV : null }
    expect([voltage(4, null), voltage(8, null), voltage(4, 55)]).toEqual([50, 52, 55])
  })
  it('flows through the resistance of its type: 20 Ω for 100 m and one pair set, 12.5 Ω, two of 12.5 Ω', () => {
    const input = (asked: number) => powerOf(onSwitch([asked])).feeds[0]!.power
    expect([3, 4, 6].map(input)).toMatchObject([
      { input: { loopResistanceOhmPerM: 0.2, pairSetCount: 1 } }, { input: { loopResistanceOhmPerM: 0.125, pairSetCount: 1 } }, { input: { loopResistanceOhmPerM: 0.125, pairSetCount: 2 } },
    ])
  })
  it('above the budget is an error, and then what is kept is not found once more', () =>
    expect(foundIn(ethernetOf(onSwitch([3, 3], { powerBudgetW: 20 }, { networkPowerW: 12 })))).toEqual(['ETH104 N1']))
  it('is not known while the length of a cable is not', () => {
    const vessel = onSwitch([3], { powerBudgetW: 60 })
    const results = ethernetOf({ ...vessel, cables: [link('W1', 'N1:1', 'B1:lan', { lengthM: null })] })
    expect(results.power.get('N1')).toMatchObject({ reservedPowerW: 15.4, drawnPowerW: null })
    expect(results.notAssessed).toContainEqual({ subjectTag: 'B1', reason: 'power over its network cable: the length of W1 is not known' })
  })
})

describe('what a port gives against what the device asks', () => {
  const found = (offered: number | null, asked: number, given: Partial<Vessel> = {}) => ethernetOf(networkVessel({
    equipment: [aSwitch('N1', 1, { powerBudgetW: 200 }, { 1: { powerClass: offered } }), aDevice('B1', { kind: 'camera' }, { powerClass: asked })], cables: [link('W1', 'N1:1', 'B1:lan')], ...given,
  })).findings
  it('is too little', () => expect(found(3, 4)).toMatchObject([{ id: 'ETH102', evidence: { offeredPowerW: 12.95, askedPowerW: 25.5 }, limit: { relation: 'at least', value: 25.5 } }]))
  it('is nothing at all', () => expect(found(null, 2)).toMatchObject([{ id: 'ETH102', evidence: { offeredPowerW: 0 }, message: expect.stringContaining('gives no power') }]))
  it('is enough with class 0 for class 3, which is as much', () => expect([found(0, 3), found(4, 2)]).toEqual([[], []]))
  it('does not matter to what has a circuit of its own', () =>
    expect(found(null, 2, { batteries: [aBattery({ tag: 'G1' })], circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['B1'], protection: aProtection('blade fuse', 3) })] })).toEqual([]))
  it('is nothing at a thing that supplies nobody', () => {
    const results = ethernetOf(networkVessel({ equipment: [aDevice('K3', { kind: 'mobile-data router', passesEthernet: true }), aDevice('B1', {}, { powerClass: 2 })], cables: [link('W1', 'K3:lan', 'B1:lan')] }))
    expect(foundIn(results)).toEqual(['ETH102 B1'])
  })
  it('is not asked between two switches', () => {
    const two = ethernetOf(networkVessel({ equipment: [aSwitch('N1', 1, { powerBudgetW: 60 }, { 1: { powerClass: 3 } }), aSwitch('N2', 1, {}, { 1: { powerClass: 4 } })], cables: [link('W1', 'N1:1', 'N2:1')] }))
    expect([two.power.get('N1')?.feeds, foundIn(two)]).toEqual([[], []])
  })
  it('finds a device that takes more than its class', () => expect(foundIn(ethernetOf(onSwitch([2], { powerBudgetW: 60 }, { networkPowerW: 6.5 })))).toEqual(['ETH306 B1']))
  it.each([[4, 49.9, ['ETH308 N1']], [4, 50, []], [8, 50, ['ETH308 N1']], [3, 44, []]])('needs a voltage: class %s at %s V', (offered, powerVoltageV, expected) =>
    expect(foundIn(ethernetOf(networkVessel({ equipment: [aSwitch('N1', 1, { powerBudgetW: 60, powerVoltageV }, { 1: { powerClass: offered } })] })))).toEqual(expected))
})

describe('what still fits on a free port', () => {
  const fits = (powerBudgetW: number | null, offered: number | null) => {
    const vessel = onSwitch([3], { powerBudgetW })
    const [n1, ...others] = vessel.equipment
    const ports = n1!.ports.map(each => (each.name === '2' ? { ...each, powerClass: offered } : each))
    return powerOf({ ...vessel, equipment: [{ ...n1!, ports }, ...others] }).freePorts[0]
  }
  // Of 60 W class 3 keeps 15.4 W: 44.6 W are left, which is less than class 5.
  it('is the class of the port, or what the budget has left', () => {
    expect(fits(60, 3)).toMatchObject({ name: '2', fittingClass: 3, known: true })
    expect(fits(60, 6)).toMatchObject({ fittingClass: 4 })
    expect(fits(60.4, 6)).toMatchObject({ fittingClass: 5 })
    expect(fits(22.4, 4)).toMatchObject({ fittingClass: 2 })
    expect(fits(19, 4)).toMatchObject({ fittingClass: null, known: true })
    expect(fits(10, 4)).toMatchObject({ fittingClass: null, known: true })
  })
  it('is not known without a budget, and nothing at a port that supplies nobody', () => {
    expect(fits(null, 4)).toMatchObject({ fittingClass: null, known: false })
    expect(fits(60, null)).toMatchObject({ offeredClass: null, fittingClass: null, known: true })
  })
})

describe('what the switch takes for it', () => {
  // 65 W at 0.88 from 12 V: 73.9 W, 6.16 A. Ten hours of 58 W at 12.8 V: 51.5 Ah.
  it('is the budget over voltage and efficiency', () => {
    const vessel = onSwitch([2], { powerBudgetW: 65, efficiencyPercent: 88 }, {}, { batteries: [aBattery({ tag: 'G1' })], circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['N1'], protection: aProtection('blade fuse', 10) })] })
    expect(powerOf(vessel).supply).toMatchObject({ output: { inputCurrentA: expect.closeTo(6.16, 2) } })
    expect(10 * converterInput({ outputPowerW: 58, inputVoltageV: 12.8, efficiencyPercent: 88 }).inputCurrentA).toBeCloseTo(51.5, 1)
  })
  it('is not known without a circuit', () => expect(powerOf(onSwitch([2], { powerBudgetW: 65 })).supply.status).toBe('not computed'))
})
