import { expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aCable, aCableType, aCircuit, anEquipment, anOutput, aProtection, mm2 } from '../../support/vessel-builder.js'
import { boat, cables, load } from '../feeding/support.js'

it('adds to a fault what charges the bank, also where it draws through the same terminal; not what only takes', () => {
  const vessel = boat({
    equipment: [
      anEquipment({ tag: 'T7', kind: 'inverter charger', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, ratedCurrentA: 8 }), anOutput({ terminal: 'dc', nominalVoltageV: 12, ratedCurrentA: 70 })] }),
      anEquipment({ tag: 'T8', kind: 'dc-dc converter', outputs: [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 30 })] }),
    ],
    circuits: [aCircuit({ tag: 'F3', fedFromTag: 'X1', loadTags: ['T7'] }), aCircuit({ tag: 'F4', fedFromTag: 'X1', loadTags: ['T8'] })],
    cables: cables('W1: X1 > F3', 'W2: F3 > T7:dc', 'W3: X1 > F4', 'W4: F4 > T8:in'),
  }, { batteries: [aBattery({ tag: 'G1', chemistry: 'agm', internalResistanceMilliOhm: 4 })] })
  expect(calculate(vessel, bases.iso).protectiveDevices.byBattery.get('G1')!.otherSources).toEqual([{ tag: 'T7', currentA: 70, from: 'rated current' }])
})

it('counts a single core ahead of a device one way only: a fault there may lie beside the other pole', () => {
  const tail = (carries: 'both' | 'positive') => {
    const vessel = boat({
      equipment: [load('P1', 5)], circuits: [aCircuit({ tag: 'F9', fedFromTag: 'G1', loadTags: ['P1'], protection: aProtection('class T fuse', 60) })],
    }, { batteries: [aBattery({ tag: 'G1', chemistry: 'agm', internalResistanceMilliOhm: 4 })], cableTypes: [aCableType({ tag: 'T', size: mm2(58) })] })
    const cables = [...vessel.cables, aCable({ tag: 'W9', from: 'G1', to: 'F9', typeTag: 'T', lengthM: 1, carries }), aCable({ tag: 'W10', from: 'F9', to: 'P1', typeTag: 'T', lengthM: 1, carries })]
    return calculate({ ...vessel, cables }, bases.iso).protectiveDevices.byCircuit.get('F9')!.prospective.steps.map(({ resistance }) => (resistance.status === 'computed' ? resistance.output.conductorResistanceMilliOhm : null))
  }
  // By hand: 1 m of 58 mm² at 58 MS/m is 1000 / (58 · 58) = 0.297265 mΩ.
  expect(tail('positive')).toEqual([expect.closeTo(0.297265, 6)])
  expect(tail('both')).toEqual([expect.closeTo(0.59453, 5)])
})

it('the first device is a main device, also behind a circuit that has none', () => {
  // E-11 table V.A: 1000 A cold cranking asks 3000 A of a main device, 1500 A of a branch device.
  const breaker = aProtection('circuit breaker', 50, { interruptingCapacityA: 2000, voltageRatingV: 32 })
  const vessel = boat({ equipment: [load('P1', 5)], circuits: [aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['P1'] })] }, { batteries: [aBattery({ tag: 'G1', chemistry: 'flooded', crankingCurrentA: 1000 })] })
  const circuits = vessel.circuits.map(each => (each.tag === 'F2' ? { ...each, protection: breaker } : { ...each, unprotectedReason: 'short link' }))
  expect(calculate({ ...vessel, circuits, basis: 'abyc' }, bases.abyc).protectiveDevices.byCircuit.get('F2')!.againstClass).toMatchObject({ limit: { value: 3000 }, within: false })
})

it.each([[12, 4], [12.8, 4], [13.2, 4], [24, 8], [25.6, 8]])('a lithium bank of %f V has %i cells', (nominalVoltageV, cellCount) => {
  const vessel = boat({}, { batteries: [aBattery({ tag: 'G1', chemistry: 'lfp', nominalVoltageV })] })
  expect(calculate(vessel, bases.iso).protectiveDevices.byBattery.get('G1')!.openCircuitVoltage).toMatchObject({ input: { cellCount } })
})
