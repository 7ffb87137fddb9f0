/** What may run for hours together: groups worked out by hand. */
import { expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aProtection, aVessel } from '../../support/vessel-builder.js'

/** Inlet of 16 A at 230 V: for hours 0.8 · 16 A = 12.8 A, 2944 VA (common practice). */
function groupsOf(currentsA: Readonly<Record<string, number | null>>, { panelFuseA = 16, inletA = 16 as number | null } = {}) {
  const loads = Object.keys(currentsA)
  const vessel = aVessel({
    cableTypes: [aCableType({ tag: 'CT', use: 'ac power', cores: 3 })],
    equipment: [
      anEquipment({ tag: 'X1', kind: 'shore inlet', outputs: [anOutput({ terminal: 'ac', form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: inletA })] }),
      ...loads.map(tag => anEquipment({ tag, kind: 'heater', currentMaxA: currentsA[tag] ?? null })),
    ],
    panels: [aPanel({ tag: 'A1', ways: 6 })],
    circuits: [
      aCircuit({ tag: 'F1', fedFromTag: 'X1', fedFromTerminal: 'ac', loadTags: ['A1'], protection: aProtection('miniature circuit breaker', panelFuseA) }),
      ...loads.map((tag, i) => aCircuit({ tag: `A1.${i + 1}`, fedFromTag: 'A1', way: i + 1, loadTags: [tag], protection: aProtection('miniature circuit breaker', 16) })),
    ],
    cables: [aCable({ tag: 'W1', from: 'F1', to: 'A1', typeTag: 'CT' }), ...loads.map((tag, i) => aCable({ tag: `W${i + 2}`, from: `A1.${i + 1}`, to: tag, typeTag: 'CT' }))],
  })
  const [source] = calculate(vessel, bases.iso).acSupply.sources
  return source!.together
}

it('gives every largest group within the working current, and none that is part of another', () => {
  // 8 + 4 = 12 A, 8 + 6 = 14 A no, 4 + 6 = 10 A, 8 + 4 + 6 no; limit 12.8 A
  expect(groupsOf({ E1: 8, E2: 4, E3: 6 })).toEqual([['E1', 'E2'], ['E2', 'E3']])
})

it('lets all run where all fit: 4 + 4 + 4.8 A = 12.8 A is within', () => {
  expect(groupsOf({ E1: 4, E2: 4, E3: 4.8 })).toEqual([['E1', 'E2', 'E3']])
})

it('heeds each protective device on the way: a feeder of 10 A takes 4 + 6 A and not 4 + 6.1 A', () => {
  expect(groupsOf({ E1: 4, E2: 6 }, { panelFuseA: 10 })).toEqual([['E1', 'E2']])
  expect(groupsOf({ E1: 4, E2: 6.1 }, { panelFuseA: 10 })).toEqual([['E1'], ['E2']])
})

it('leaves out what alone is too much: 13 A of 12.8 A', () => {
  expect(groupsOf({ E1: 13, E2: 3 })).toEqual([['E2']])
  expect(groupsOf({ E1: 13 })).toEqual([])
})

it('says nothing where a current or the rating is not recorded, or there is too much to go through', () => {
  expect(groupsOf({ E1: 4, E2: null })).toBeNull()
  expect(groupsOf({ E1: 4 }, { inletA: null })).toBeNull()
  expect(groupsOf(Object.fromEntries(Array.from({ length: 13 }, (_, i) => [`E${i + 1}`, 1])))).toBeNull()
})
