import { describe, expect, it } from 'vitest'
import { bases } from '../../src/references/basis/bases.js'

describe('limits of the bases', () => {
  // ABYC E-11 and ISO 10133/13297 as quoted in published guides: 3 % where it matters and for main feeders, 10 % elsewhere
  it.each(['iso', 'abyc'] as const)('%s allows a drop of 3 % and 10 %', id => {
    const { critical, general, feeder } = bases[id].voltageDropPercent
    expect([critical.value, general.value, feeder.value]).toEqual([3, 10, 3])
  })
  // 33 CFR 183.435(b): conductors at 50 V or more; ISO: from memory
  it('requires bundle factors from 50 V in American law, always by ISO', () => {
    expect([bases.abyc.bundle.requiredFromV, bases.iso.bundle.requiredFromV]).toEqual([50, 0])
  })
  // 33 CFR 183.455(c); ISO: from memory
  it('permits ratings up to 150 % of the capacity in American law only', () => {
    expect(bases.abyc.protection.permitted).toMatchObject({ shareOfCapacity: 1.5, anyRatingBelowV: 50 })
    expect(bases.iso.protection.permitted).toBeNull()
  })
  // 33 CFR 183.425(d), (e): 18 AWG in a sheath, 16 AWG separate; ISO 10133 7.7: 0.75 and 1 mm²
  it('names the smallest conductors', () => {
    expect([bases.abyc.minimumSize.inSheath.designation, bases.abyc.minimumSize.separate.designation]).toEqual(['18', '16'])
    expect([bases.iso.minimumSize.inSheath.designation, bases.iso.minimumSize.separate.designation]).toEqual(['0.75', '1'])
  })
})
