/** Compass safe distances: the definitions of IEC 60945 and ISO 25862 (draft). */
import { describe, expect, it } from 'vitest'
import type { Equipment } from '../../../src/model/vessel.js'
import { magneticKinds } from '../../../src/references/tables/compass-safe-distance.js'
import { equipmentKindKeys } from '../../../src/references/equipment-kinds.js'
import { aCable, aCableType, aCircuit, anEquipment, aZone } from '../../support/vessel-builder.js'
import { aBoat, idsOf, placementOf, reasonsBesideLights } from './support.js'

const compass = (given: Partial<Equipment> = {}): Equipment => anEquipment({ tag: 'B1', kind: 'compass', compassClass: 'steering', positionM: [8, 0, 2], ...given })
const speaker = (given: Partial<Equipment> = {}): Equipment => anEquipment({ tag: 'P1', kind: 'loudspeaker', positionM: [8, 0.6, 2], compassSafeStandardM: 1, compassSafeSteeringM: 0.6, ...given })

describe('the distance that holds', () => {
  it.each([
    ['steering', {}, 'steering', 0.6], ['standard', {}, 'standard', 1], ['flux-gate', {}, 'standard', 1],
    ['steering', { compassSafeSteeringM: null }, 'standard', 1], ['flux-gate', { compassSafeStandardM: null }, 'steering', 0.6],
  ] as const)('for a %s compass, item %j: the one to a %s compass', (compassClass, given, declaredFor, valueM) => {
    const [pair] = placementOf(aBoat({ equipment: [compass({ compassClass }), speaker(given)] })).compasses[0]!.pairs
    expect([pair!.declaredFor, pair!.comparison.limit.value]).toEqual([declaredFor, valueM])
  })
  it('for a standard compass is not that to a steering compass', () => {
    const vessel = aBoat({ equipment: [compass({ compassClass: 'standard' }), speaker({ compassSafeStandardM: null })] })
    expect(placementOf(vessel).compasses[0]!.pairs).toEqual([])
    expect(reasonsBesideLights(vessel)).toContain('B1: no distance to a standard compass is declared for P1')
  })
  it('may be met exactly, in one direction or in all three', () => {
    expect(idsOf(aBoat({ equipment: [compass(), speaker()] }))).toEqual([])
    // √(0.2² + 0.3² + 0.6²) = 0.7
    expect(idsOf(aBoat({ equipment: [compass(), speaker({ positionM: [8.2, -0.3, 2.6], compassSafeSteeringM: 0.7 })] }))).toEqual([])
    expect(idsOf(aBoat({ equipment: [compass(), speaker({ positionM: [8, 0.599, 2] })] }))).toEqual(['PLC101 P1'])
  })
})

describe('items and compasses', () => {
  it('names an item once, for the compass it is worst for, and the others', () => {
    const [finding] = placementOf(aBoat({ equipment: [compass(), compass({ tag: 'B2', positionM: [8, 0.3, 2] }), speaker({ positionM: [8, 0.2, 2] })] })).findings
    expect(finding!.message).toBe('Item P1: 0.10\u00A0m (0.3\u00A0ft) from the steering compass B2, declared distance 0.60\u00A0m (2.0\u00A0ft); too close to B1 as well')
    expect(finding!.evidence['distanceM']).toBeCloseTo(0.1, 9)
  })
  it('looks at compasses among themselves, and passes by what is not magnetic or removed', () => {
    expect(idsOf(aBoat({ equipment: [compass(), compass({ tag: 'B2', positionM: [8, 0.3, 2], compassClass: 'flux-gate', compassSafeSteeringM: 0.5 })] }))).toEqual(['PLC101 B2'])
    expect(placementOf(aBoat({ equipment: [compass({ compassClass: 'none' }), compass({ tag: 'B2', status: 'removed' }), speaker()] })).compasses).toEqual([])
    expect(idsOf(aBoat({ equipment: [compass(), speaker({ status: 'removed', positionM: [8, 0.1, 2] })] }))).toEqual([])
  })
  it('says what it could not look at: positions, distances that are not declared within 5 m, the field', () => {
    const silent = { compassSafeStandardM: null, compassSafeSteeringM: null }
    expect(reasonsBesideLights(aBoat({ equipment: [compass({ positionM: null }), speaker({ positionM: null })] }))).toEqual([
      'B1: compass safe distances: the position of the compass is not recorded', 'P1: its compass safe distance: its position is not recorded',
    ])
    expect(reasonsBesideLights(aBoat({ equipment: [compass(), speaker({ ...silent, positionM: [8, 4.99, 2] }), speaker({ ...silent, tag: 'P2', positionM: [8, 5, 2] }), anEquipment({ tag: 'E1', kind: 'light', positionM: [8, 1, 2] })] })))
      .toEqual(['B1: no compass safe distance is declared for P1, within 5 m of it'])
    const lacking = 'B1: no distance to a standard compass is declared for P1'
    const near = (compassClass: 'standard' | 'steering' | 'flux-gate') => reasonsBesideLights(aBoat({ equipment: [compass({ compassClass }), speaker({ compassSafeStandardM: null, compassSafeSteeringM: 0.5, positionM: [8, 4, 2] })] }))
    expect([near('standard'), near('steering'), near('flux-gate')]).toEqual([[lacking], [], [`${lacking}; held against that to a steering compass`]])
    const noField = aBoat({ equipment: [compass()] })
    expect(reasonsBesideLights({ ...noField, conditions: { ...noField.conditions, horizontalFieldMicroT: null } })[0]).toContain('the horizontal part of the Earth’s field')
  })
  it('knows magnetic kinds that there are', () => expect([...magneticKinds].filter(kind => !(equipmentKindKeys as readonly string[]).includes(kind))).toEqual([]))
})

describe('single conductors in the zone of a compass', () => {
  const wired = (given: { readonly cores?: number; readonly use?: 'power' | 'ac power'; readonly cableZone?: string } = {}) => aBoat({
    zones: [aZone({ tag: 'helm' }), aZone({ tag: 'aft' })],
    cableTypes: [aCableType({ tag: 'T', cores: given.cores ?? 1, use: given.use ?? 'power' })],
    equipment: [compass({ zoneTag: 'helm' }), compass({ tag: 'B2', zoneTag: 'helm', positionM: [9, 0, 2] }), anEquipment({ tag: 'E1', zoneTag: given.cableZone ?? 'helm', currentMaxA: 10 }), anEquipment({ tag: 'Q1', kind: 'switch', zoneTag: given.cableZone ?? 'helm' })],
    circuits: [aCircuit({ tag: 'F1', fedFromTag: 'A1', loadTags: ['E1'], zoneTag: given.cableZone ?? 'helm' })],
    cables: [aCable({ tag: 'W1', from: 'F1', to: 'E1', typeTag: 'T', carries: (given.cores ?? 1) === 1 ? 'positive' : 'both' })],
  })
  // 18 · π / 180 = 0.31416 µT; 0.2 · 10 / 0.31416 = 6.366 m, up to the next 5 cm.
  it('are listed with what they would have to keep, and said once for compasses of one zone', () => {
    const { compasses, findings } = placementOf(wired())
    const [conductor] = compasses[0]!.singleConductors
    expect(conductor!.distance).toMatchObject({ status: 'computed', output: { keptDistanceM: expect.closeTo(6.4, 9) } })
    expect(findings.map(({ id, message }) => `${id} ${message}`)).toEqual(['PLC303 Compass B1: single d.c. conductors in its zone: W1; the same beside B2'])
  })
  it('are not those of two cores, of a.c., or of another zone', () => {
    for (const given of [{ cores: 2 }, { use: 'ac power' as const }, { cableZone: 'aft' }]) expect(idsOf(wired(given))).toEqual([])
  })
})
