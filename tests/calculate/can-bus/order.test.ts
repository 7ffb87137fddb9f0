/** Cables that do not end where the backbone has them. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { aCable } from '../../support/vessel-builder.js'
import { busBoat, foundIn, isolator, power, resultsOf, terminator } from './support.js'

const boat = busBoat({
  along: [terminator('R1'), 'P1', 'P2', 2, power('X0'), 3, 4, 'P3', isolator('X9'), terminator('R2')],
  devices: { P1: { drop: 1 }, P2: { drop: 1 }, P3: { drop: 1 } },
})
const words = (vessel: Vessel): string | undefined => resultsOf(vessel).findings.find(({ id }) => id === 'CAN307')?.context?.['words']
const moved = (tag: string, ends: { readonly from?: string; readonly to?: string }): Vessel => ({
  ...boat, cables: boat.cables.map(cable => (cable.tag === tag ? { ...cable, ...(ends.from === undefined ? {} : { from: { ...cable.from, tag: ends.from } }), ...(ends.to === undefined ? {} : { to: { ...cable.to, tag: ends.to } }) } : cable)),
})

describe('order of a backbone', () => {
  it('stands where each cable reaches the parts beside it, with whatever joins two of them', () => {
    expect(words(boat)).toBeUndefined()
    // P1 and P2 are plugged together: either tee will do. What is no part of a bus may lie between.
    expect(words(moved('W1', { from: 'X1' }))).toBeUndefined()
    expect(words(moved('W2', { to: 'coupler' }))).toBeUndefined()
  })
  it('is doubtful where a cable ends further on', () => {
    expect(words(moved('W1', { from: 'X3' }))).toBe('W1 ends at X3, which is not beside it in the backbone')
    expect(words(moved('W1', { from: 'P2' }))).toBe('W1 ends at P2, which is not beside it in the backbone')
  })
  it('is doubtful where a cable joins what is plugged together', () => {
    expect(words(moved('W1', { from: 'X1', to: 'X2' }))).toBe('W1 joins X1 and X2, between which the backbone has no cable')
  })
  it('is doubtful where a drop leads to another tee or device, or to one that is not entered', () => {
    expect(words(moved('D-P1', { from: 'X3' }))).toBe('drop D-P1 ends at X3, not at X1 with P1')
    expect(words(moved('D-P1', { to: 'P2' }))).toBe('drop D-P1 ends at P2, not at X1 with P1')
    const hung = { ...boat, canBuses: boat.canBuses.map(bus => ({ ...bus, backbone: bus.backbone.map(part => (part.kind === 'tee' && part.deviceTag === 'P1' ? { ...part, deviceTag: null } : part)) })) }
    const port = { name: 'can', kind: 'can bus', speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null } as const
    expect(words({ ...hung, equipment: hung.equipment.map(item => ({ ...item, ports: [port] })) })).toBe('drop D-P1 leads to P1, and X1 has no device')
  })
  it('is doubtful where a bus cable is left out', () => {
    const further = (given: { from: string; to: string; typeTag: string }) => ({ ...boat, cables: [...boat.cables, aCable({ tag: 'W9', carries: 'none', lengthM: 5, ...given })] })
    expect(words(further({ from: 'X1', to: 'X2', typeTag: 'thick' }))).toBe('W9 from X1 to X2 is entered in no backbone')
    expect(words(further({ from: 'X1', to: 'P9', typeTag: 'drop' }))).toBe('W9 from X1 to P9 is entered in no backbone')
    expect(words(further({ from: 'F1', to: 'X0', typeTag: 'thick' }))).toBeUndefined()
  })
  it('names three and counts the rest', () => {
    const cables = [1, 2, 3, 4, 5].map(n => aCable({ tag: `Y${n}`, from: 'X1', to: 'X2', typeTag: 'bus', carries: 'none', lengthM: 1 }))
    expect(words({ ...boat, cables: [...boat.cables, ...cables] })).toMatch(/^Y1 .*; Y2 .*; Y3 .*; and 2 more$/)
  })
})

describe('a load equivalency number of 0', () => {
  it('is none where nothing else feeds the device', () => {
    const unfed = { ...boat, equipment: boat.equipment.map(item => (item.tag === 'P3' ? { ...item, loadEquivalencyNumber: 0 } : item)) }
    expect(foundIn(unfed)).toContain('CAN201 N1')
    expect(foundIn({ ...unfed, equipment: unfed.equipment.map(item => ({ ...item, networkPowerW: 2 })) })).not.toContain('CAN201 N1')
  })
})
