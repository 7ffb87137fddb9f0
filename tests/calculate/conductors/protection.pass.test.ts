import { describe, expect, it } from 'vitest'
import { protectionPass } from '../../../src/calculate/conductors/protection.pass.js'
import type { CapacityResults, CableCapacity } from '../../../src/model/results.js'
import type { BasisId, Circuit } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aFeeding, type GivenFeed } from '../../support/results-builder.js'
import { aCircuit, anEquipment, anOutput, aProtection, aVessel } from '../../support/vessel-builder.js'

interface Given {
  readonly basis?: BasisId
  readonly device?: string
  readonly ratedCurrentA?: number
  readonly designCurrentA?: number | null
  /** Capacity of W1, W2, …; null: not assessed. */
  readonly capacities?: readonly (number | null)[]
  readonly circuit?: Partial<Circuit>
  readonly voltageV?: number | null
}
function assessed({ basis = 'iso', device = 'blade fuse', ratedCurrentA = 10, designCurrentA = 8, capacities = [25], circuit, voltageV = 12 }: Given = {}) {
  const vessel = aVessel({ circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['P1'], protection: aProtection(device, ratedCurrentA), ...circuit })] })
  const feed: GivenFeed = { chain: ['F1'], designCurrentA, voltageV, out: capacities.map((_, i) => `W${i + 1} F1 P1 8`) }
  const capacity: CapacityResults = { byCable: new Map(capacities.map((amps, i) => [`W${i + 1}`, aCapacity(amps)])), findings: [] }
  const results = protectionPass(vessel, bases[basis], aFeeding({ F1: feed }), capacity)
  return { circuit: results.byCircuit.get('F1')!, findings: results.findings, ids: results.findings.map(({ id }) => id) }
}
const aCapacity = (amps: number | null): CableCapacity => ({
  circuitTag: 'F1', lookup: [], bundledAdviceA: null, comparison: null,
  outcome: amps === null ? { status: 'not computed', method: 'current-carrying-capacity', reason: 'no cable type is recorded' }
    : { status: 'computed', method: 'current-carrying-capacity', input: { tableCurrentA: amps, parallelCount: 1, ambientFactor: 1, bundleFactor: 1 }, output: { currentCarryingCapacityA: amps } },
})
const plain = (text: string | undefined) => text?.replaceAll('\u00A0', ' ')

it('is silent when design current, rating and capacity are in rising order', () => {
  expect(assessed().findings).toEqual([])
  expect(assessed().circuit).toMatchObject({ weakestCableTag: 'W1', againstLoad: { within: true, margin: 2 }, againstCapacity: { within: true, margin: 15 }, notAssessed: [] })
})

describe('rating against the load', () => {
  it('may equal the design current', () => {
    expect(assessed({ designCurrentA: 10 }).ids).toEqual([])
  })
  it('is a warning below it, with the next standard rating', () => {
    const { findings } = assessed({ designCurrentA: 10.4 })
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({ id: 'DCD103', severity: 'warning' })
    expect(plain(findings[0]?.message)).toBe('Circuit F1: design current 10.4 A, blade fuse rated 10.0 A')
    expect(plain(findings[0]?.remedy)).toBe('Fit a blade fuse of 15 A if the conductor allows it, or confirm the design current.')
  })
  it('names the current itself where any rating can be set', () => {
    expect(plain(assessed({ device: 'electronic channel', designCurrentA: 12.3 }).findings[0]?.remedy)).toBe('Set the channel to 12.3 A or more if the conductor allows it, or confirm the design current.')
  })
  it('is not assessed without a design current', () => {
    expect(assessed({ designCurrentA: null }).circuit).toMatchObject({ againstLoad: null, notAssessed: ['the design current is not known'] })
  })
})

describe('rating against the conductor, by ISO (from memory: at most the current of the table)', () => {
  it('may equal the capacity, not exceed it', () => {
    expect(assessed({ ratedCurrentA: 25 }).ids).toEqual([])
    const { findings } = assessed({ ratedCurrentA: 30 })
    expect(findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD104', 'error']])
    expect(plain(findings[0]?.message)).toBe('Circuit F1: blade fuse rated 30.0 A, limit for cable W1 25.0 A (its current-carrying capacity)')
    expect(plain(findings[0]?.remedy)).toBe('Fit a blade fuse of 25 A or less, or a larger conductor in place of W1.')
  })
  it('asks for a larger conductor where no smaller rating would carry the load', () => {
    expect(assessed({ ratedCurrentA: 30, designCurrentA: 26 }).findings[0]?.remedy).toBe('Fit a larger conductor in place of W1.')
    expect(assessed({ device: 'maxi blade fuse', ratedCurrentA: 30, capacities: [15] }).findings[0]?.remedy).toBe('Fit a larger conductor in place of W1.')
  })
  it('goes by the weakest of the cables', () => {
    expect(assessed({ ratedCurrentA: 30, capacities: [60, 25, 40] }).circuit).toMatchObject({ weakestCableTag: 'W2', weakestCapacityA: 25, againstCapacity: { within: false } })
  })
  it('includes the cables of the way back', () => {
    const circuit = { returnCableTags: ['W2'] }
    expect(assessed({ ratedCurrentA: 20, capacities: [25, 15], circuit }).circuit.weakestCableTag).toBe('W2')
  })
  it('is settled by one weak cable, and by nothing less than all when none is weak', () => {
    expect(assessed({ ratedCurrentA: 30, capacities: [25, null] }).ids).toEqual(['DCD104'])
    expect(assessed({ ratedCurrentA: 20, capacities: [25, null] }).circuit)
      .toMatchObject({ weakestCapacityA: 25, againstCapacity: null, notAssessed: ['the current-carrying capacity of cable W2 is not assessed'] })
    expect(assessed({ capacities: [] }).circuit).toMatchObject({ againstCapacity: null, notAssessed: ['no cable of the circuit is recorded'] })
  })
})

describe('rating against the conductor, by 33 CFR 183.455(c)', () => {
  // Below 50 V: 14 AWG of 105 °C outside, 35 A, permits 52.5 A
  it('is pointed out above 100 % and fails above 150 %', () => {
    const at = (ratedCurrentA: number) => assessed({ basis: 'abyc', device: 'maxi blade fuse', ratedCurrentA, capacities: [35] })
    expect(at(35).ids).toEqual([])
    expect(at(40).ids).toEqual(['DCD302'])
    expect(plain(at(40).findings[0]?.message)).toBe(
      'Circuit F1: maxi blade fuse rated 40.0 A, current-carrying capacity of cable W1 35.0 A; permitted by 33 CFR 183, 183.455(c)',
    )
    expect(at(50).ids).toEqual(['DCD302'])
    expect(at(60).ids).toEqual(['DCD104'])
    expect(at(60).circuit.againstCapacity).toMatchObject({ limit: { value: 52.5 }, margin: -7.5 })
    expect(plain(at(60).findings[0]?.message)).toBe('Circuit F1: maxi blade fuse rated 60.0 A, limit for cable W1 52.5 A (current-carrying capacity 35.0 A)')
  })
  // From 50 V: 20.825 A permits the next standard breaker, 25 A, which is below the 31.2 A of 150 %
  it('permits only the next standard rating from 50 V on', () => {
    const at = (ratedCurrentA: number) => assessed({ basis: 'abyc', device: 'circuit breaker', ratedCurrentA, capacities: [20.825], voltageV: 120 })
    expect(at(20).ids).toEqual([])
    expect(at(25).ids).toEqual(['DCD302'])
    expect(at(30).ids).toEqual(['DCD104'])
  })
  it('permits nothing above the capacity where the next standard rating is above 150 %', () => {
    // By hand: 14 A · 1.5 = 21 A; the smallest class T fuse is 60 A
    expect(assessed({ basis: 'abyc', device: 'class T fuse', ratedCurrentA: 60, capacities: [14], voltageV: 120 }).circuit.againstCapacity?.limit.value).toBe(14)
  })
  it('is not assessed where the voltage decides and is not known', () => {
    expect(assessed({ basis: 'abyc', voltageV: null }).circuit).toMatchObject({ againstCapacity: null, notAssessed: ['the nominal voltage is not known, and the permitted rating depends on it'] })
  })
})

describe('a rating that no device of its type has', () => {
  it('is a note with the standard ones beside it', () => {
    const { findings } = assessed({ ratedCurrentA: 12 })
    expect(findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD303', 'note']])
    expect(plain(findings[0]?.remedy)).toBe('Read the rating off the device; standard ones near it are 10 A and 15 A.')
  })
  it('does not arise where any rating can be set', () => {
    expect(assessed(aProtection('electronic channel', 12)).ids).toEqual([])
  })
})

describe('no protective device', () => {
  const without = (unprotectedReason: string | null) => assessed({ circuit: { protection: null, unprotectedReason } })
  it('is an error without a reason', () => {
    expect(without(null).findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD105', 'error']])
    expect(without(null).circuit).toMatchObject({ ratedCurrentA: null, againstLoad: null, againstCapacity: null, notAssessed: ['no overcurrent protective device is recorded'] })
  })
  it('is listed as exempt for engine starting', () => {
    expect(without('Engine starting').findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD305', 'note']])
  })
  it('is a warning for another reason, which it repeats', () => {
    const { findings } = without('short cable')
    expect(findings.map(({ id, severity }) => [id, severity])).toEqual([['DCD304', 'warning']])
    expect(findings[0]?.message).toContain('short cable')
    expect(without('short cable').circuit.notAssessed).toEqual(['no overcurrent protective device, reason given: short cable'])
  })
})

describe('a source that gives no more than its conductors carry', () => {
  const ofPanel = (capacityA: number | null, kind = 'solar panel', unprotectedReason: string | null = 'current-limited source') => {
    const vessel = aVessel({
      equipment: [anEquipment({ tag: 'G1', kind, outputs: [anOutput({ nominalVoltageV: 20, ratedCurrentA: 9 })] })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['P1'], unprotectedReason })],
    })
    const capacity: CapacityResults = { byCable: new Map([['W1', aCapacity(capacityA)]]), findings: [] }
    return protectionPass(vessel, bases.iso, aFeeding({ F1: { chain: ['F1'], designCurrentA: 9, out: ['W1 F1 P1 9'] } }), capacity).findings
  }

  it('needs no protection against it: a note', () => {
    // By hand: 1.25 · 9 A = 11.25 A.
    expect(ofPanel(11.25).map(({ id, message }) => `${id} ${plain(message)}`)).toEqual(['DCD306 Circuit F1: no overcurrent protection; its source gives 9.0 A at most, its conductors carry 11.3 A'])
  })
  it.each([
    ['one ampere less', 10.25, 'solar panel', 'current-limited source', 'DCD304'], ['a capacity that is not known', null, 'solar panel', 'current-limited source', 'DCD304'],
    ['a source that gives what is drawn', 50, 'dc-dc converter', 'current-limited source', 'DCD304'], ['no reason given', 50, 'solar panel', null, 'DCD105'],
  ] as const)('but with %s it does', (_, capacityA, kind, reason, id) => {
    expect(ofPanel(capacityA, kind, reason).map(finding => finding.id)).toEqual([id])
  })
})
