import { expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aCircuit, anEquipment, anOutput } from '../../support/vessel-builder.js'
import { boat, cables } from '../feeding/support.js'

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
