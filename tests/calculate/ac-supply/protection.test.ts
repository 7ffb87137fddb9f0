/** Limits of ABYC E-11 (quoted in published guides) and ISO 13297 (from memory) at, below and above their values. */
import { describe, expect, it } from 'vitest'
import type { Circuit, Equipment, Vessel } from '../../../src/model/vessel.js'
import { aCircuit, anEquipment, aZone } from '../../support/vessel-builder.js'
import { acOf, acOutput, acSource, breaker, cable, idsOf, shoreBoat, sourceIn } from './support.js'

const ft = 0.3048
const mainOf = (vessel: Vessel) => sourceIn(vessel).shore!.mains[0]!
const residual = (residualCurrentA: number | null, tripTimeMs: number | null = 40): Partial<Circuit> => ({ protection: breaker(16, { residualCurrentA, tripTimeMs }) })

describe('the main shore breaker', () => {
  // Within 10 ft (3 m) of conductor; rated at most as the inlet; both live conductors opened.
  it.each([['abyc', 10 * ft, 10.01 * ft], ['iso', 3, 3.01]] as const)('by %s may be so far and no further', (basis, withinM, beyondM) => {
    const at = (distanceM: number) => shoreBoat({ basis, main: { protection: breaker(16, { residualCurrentA: 0.03, tripTimeMs: 40, distanceM }) } })
    expect(idsOf(at(withinM))).not.toContain('ACS107 F1')
    expect(idsOf(at(beyondM))).toContain('ACS107 F1')
  })

  it('is as far as the cables before it are long', () => {
    const far = shoreBoat({ inlet: { zoneTag: null } })
    expect(mainOf(far).distance).toMatchObject({ state: 'met', comparison: { value: 1 } })
    const unknown = { ...far, cables: far.cables.map(each => (each.tag === 'W1' ? { ...each, lengthM: null } : each)) }
    expect(mainOf(unknown).distance.state).toBe('not assessed')
    expect(mainOf({ ...far, cables: far.cables.filter(({ tag }) => tag !== 'W1') }).distance.state).toBe('not assessed')
  })

  it('is rated at most as the inlet', () => {
    expect(idsOf(shoreBoat({ main: { protection: breaker(20, { residualCurrentA: 0.03, tripTimeMs: 40 }) } }))).toContain('ACS108 F1')
    expect(mainOf(shoreBoat()).rating.state).toBe('met')
    expect(mainOf(shoreBoat({ inlet: { outputs: [acOutput({ ratedCurrentA: null })] } })).rating.state).toBe('not assessed')
  })

  it.each([[1, 'missed'], [2, 'met'], [null, 'not assessed']] as const)('with %s poles: %s', (poles, state) => {
    expect(mainOf(shoreBoat({ main: { protection: breaker(16, { poles, residualCurrentA: 0.03 }) } })).poles.state).toBe(state)
  })

  it('of three phases opens three', () => {
    expect(mainOf(shoreBoat({ inlet: { outputs: [acOutput({ nominalVoltageV: 400 })] } })).poles.state).toBe('missed')
  })

  it('is missed where none is recorded', () => {
    const { rating, distance, poles } = mainOf(shoreBoat({ main: { protection: null } }))
    expect([rating, distance, poles].map(({ state }) => state)).toEqual(['missed', 'missed', 'missed'])
  })
})

describe('residual-current protection of the shore supply', () => {
  // At most 30 mA, 100 ms: ABYC E-11.11.1.1.
  it.each([
    [0.03, 100, 'met', []], [0.031, 100, 'missed', ['ACS103 F1']], [0.03, 101, 'missed', ['ACS104 F1']], [0.03, null, 'not assessed', []],
  ] as const)('of %s A in %s ms: %s', (residualCurrentA, tripTimeMs, state, ids) => {
    for (const basis of ['iso', 'abyc'] as const) {
      const vessel = shoreBoat({ basis, equipment: [], main: residual(residualCurrentA, tripTimeMs) })
      expect(mainOf(vessel).residualCurrent.state).toBe(state)
      expect(idsOf(vessel).filter(id => /ACS10[234]/.test(id))).toEqual(ids)
    }
  })

  it('is an error when missing', () => expect(idsOf(shoreBoat({ main: residual(null) }))).toContain('ACS102 F1'))

  const inWay = (given: Partial<Equipment>) => {
    const vessel = shoreBoat({ main: residual(null), equipment: [anEquipment({ tag: 'Q1', kind: 'residual-current device', ...given })] })
    return { ...vessel, cables: [...vessel.cables.filter(({ tag }) => tag !== 'W2'), cable('W2', 'F1', 'Q1'), cable('W8', 'Q1', 'A1')] }
  }
  it('may be a device in the circuit’s way', () => {
    expect(mainOf(inWay({ residualCurrentA: 0.03, tripTimeMs: 30 })).residualCurrent.state).toBe('met')
    expect(mainOf(inWay({ tripTimeMs: 30 })).residualCurrent.state).toBe('not assessed')
    expect(idsOf(inWay({ residualCurrentA: 0.1, tripTimeMs: 30 }))).toContain('ACS103 Q1')
    expect(idsOf(inWay({ residualCurrentA: 0.03, tripTimeMs: 30, status: 'removed' }))).toContain('ACS102 F1')
  })

  it('may by ISO be further down for the whole craft, by ABYC not', () => {
    const below = (basis: 'iso' | 'abyc', all: boolean) => {
      const vessel = shoreBoat({ basis, main: residual(null) })
      return { ...vessel, circuits: vessel.circuits.map(circuit => (circuit.tag === 'A1.1' || (all && circuit.tag === 'A1.2') ? { ...circuit, ...residual(0.03) } : circuit)) }
    }
    expect(idsOf(below('iso', true))).not.toContain('ACS102 F1')
    expect(idsOf(below('iso', false))).toContain('ACS102 F1')
    expect(idsOf(below('abyc', true))).toContain('ACS102 F1')
  })

  // Exception of E-11.11.1: isolation transformer within 10 ft of the inlet, of which W1 takes 1 m.
  const transformer = (basis: 'iso' | 'abyc', lengthM: number | null) => {
    const vessel = shoreBoat({
      basis, main: { ...residual(null), loadTags: ['T1'] }, equipment: [acSource('T1', 'isolation transformer')],
      circuits: [aCircuit({ tag: 'F2', fedFromTag: 'T1', loadTags: ['A1'], protection: breaker(16, { residualCurrentA: 0.005, tripTimeMs: 25 }) })],
    })
    return { ...vessel, cables: [...vessel.cables.filter(({ tag }) => tag !== 'W2'), { ...cable('W2', 'F1', 'T1'), lengthM }, cable('W8', 'T1', 'F2'), cable('W9', 'F2', 'A1')] }
  }
  it('is not asked for behind an isolation transformer close to the inlet, by ABYC', () => {
    expect(mainOf(transformer('abyc', 10 * ft - 1)).residualCurrent.state).toBe('not required')
    expect(mainOf(transformer('abyc', 10 * ft - 0.99)).residualCurrent.state).toBe('missed')
    expect(mainOf(transformer('abyc', null)).residualCurrent.state).toBe('not assessed')
    expect(mainOf(transformer('iso', 1)).residualCurrent.state).toBe('missed')
  })
})

describe('sockets', () => {
  const check = (vessel: Vessel) => acOf(vessel).sockets.find(({ tag }) => tag === 'E2')!.check
  it('in a galley have class A by ABYC, 30 mA by ISO', () => {
    expect(check(shoreBoat()).state).toBe('met')
    expect(idsOf(shoreBoat({ basis: 'abyc' }))).toContain('ACS106 E2')
    expect(idsOf(shoreBoat({ main: residual(null) }))).toContain('ACS105 E2')
  })
  it('may have the device inside', () => {
    const vessel = shoreBoat({ basis: 'abyc' })
    const withClassA = { ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'E2' ? { ...item, residualCurrentA: 0.005 } : item)) }
    expect(check(withClassA).state).toBe('met')
  })
  it.each([
    [{ name: 'Forward heads' }, 'missed'], [{ name: 'Deckhouse' }, 'not required'], [{ name: 'Lazarette', space: 'deck' }, 'missed'],
    [{ name: 'Aft', space: 'machinery' }, 'missed'], [{ name: 'Overhead lockers' }, 'not required'],
  ] as const)('in %o: %s', (zone, state) => {
    const vessel = shoreBoat({ main: residual(null), zones: [aZone({ tag: 'saloon' }), aZone({ tag: 'galley', ...zone })] })
    expect(check(vessel).state).toBe(state)
  })
  it('in a dry place need none of their own, and are told whether one is on the way all the same', () => {
    const zones = [aZone({ tag: 'saloon' }), aZone({ tag: 'galley', name: 'Deckhouse' })]
    expect(check(shoreBoat({ zones }))).toMatchObject({ state: 'not required', words: expect.stringMatching(/; protected all the same by \S+ at 30\u00A0mA$/) })
    expect(check(shoreBoat({ zones, main: residual(null) }))).toMatchObject({ words: expect.stringMatching(/; no residual-current device is on its way$/) })
  })
  it('without a zone are not assessed', () => {
    const vessel = shoreBoat()
    expect(check({ ...vessel, equipment: vessel.equipment.map(item => (item.tag === 'E2' ? { ...item, zoneTag: null } : item)) }).state).toBe('not assessed')
  })
  it('are judged from the source at which they are worst protected', () => {
    const generator = shoreBoat({
      equipment: [acSource('G2', 'generator')],
      circuits: [aCircuit({ tag: 'F2', fedFromTag: 'G2', loadTags: ['A1'], protection: breaker(16), normalState: 'open' })],
      cables: [cable('W5', 'G2', 'F2'), cable('W6', 'F2', 'A1')],
    })
    expect(check(generator)).toMatchObject({ state: 'missed', words: 'there is no residual-current device between it and G2' })
  })
})

describe('polarity', () => {
  const at120 = (poles: readonly (number | null)[], inlet: Partial<Equipment> = {}) => {
    const vessel = shoreBoat({ inlet: { outputs: [acOutput({ nominalVoltageV: 120, frequencyHz: 60, ratedCurrentA: 30 })], ...inlet } })
    const branches = ['A1.1', 'A1.2']
    return { ...vessel, circuits: vessel.circuits.map(circuit => (branches.includes(circuit.tag) ? { ...circuit, protection: breaker(15, { poles: poles[branches.indexOf(circuit.tag)]! }) } : circuit)) }
  }
  const polarity = (vessel: Vessel) => sourceIn(vessel).shore!.polarity.state
  it('is shown, or does not matter', () => {
    expect(polarity(at120([1, 1]))).toBe('missed')
    expect(polarity(at120([2, 2]))).toBe('met')
    expect(polarity(at120([1, 1], { polarityIndicatorTag: 'P1' }))).toBe('met')
    expect(polarity(at120([2, null]))).toBe('not assessed')
    expect(polarity(shoreBoat())).toBe('not required')
  })
})

describe('earth', () => {
  const neutral = (kind: string, neutralBonded: boolean | null) =>
    sourceIn(shoreBoat({ equipment: [acSource('S2', kind, { outputs: [acOutput({ neutralBonded })] })] }), 'S2').neutral.state
  it.each(['generator', 'inverter', 'isolation transformer'])('is joined to neutral at the %s', kind => {
    expect([true, false, null].map(bonded => neutral(kind, bonded))).toEqual(['met', 'missed', 'not assessed'])
  })
  it('is never joined to neutral on board on shore power', () => {
    expect([true, false, null].map(bonded => neutral('shore inlet', bonded))).toEqual(['missed', 'met', 'not assessed'])
  })
  it.each([['R1', 'met'], ['E1', 'doubtful'], [null, 'doubtful']] as const)('has galvanic isolation: %s, %s', (galvanicIsolationTag, state) => {
    expect(sourceIn(shoreBoat({ inlet: { galvanicIsolationTag } })).shore!.galvanicIsolation.state).toBe(state)
  })
})
