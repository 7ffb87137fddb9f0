/** Two sources never on one panel: ABYC E-11 and ISO 13297 (from memory). */
import { describe, expect, it } from 'vitest'
import type { Circuit, Equipment, Output } from '../../../src/model/vessel.js'
import { aBattery, aCircuit, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { acOf, acOutput, acSource, breaker, cable, idsOf, shoreBoat } from './support.js'

const withGenerator = ({ shore = {}, generator = {}, output = {}, equipment = [], cables = [cable('W5', 'G2', 'F2'), cable('W6', 'F2', 'A1')] }: {
  shore?: Partial<Circuit>; generator?: Partial<Circuit>; output?: Partial<Output>; equipment?: readonly Equipment[]; cables?: ReturnType<typeof cable>[]
} = {}) => shoreBoat({
  main: shore,
  equipment: [acSource('G2', 'generator', { outputs: [acOutput({ neutralBonded: true, ...output })] }), ...equipment],
  circuits: [aCircuit({ tag: 'F2', fedFromTag: 'G2', loadTags: ['A1'], protection: breaker(16, { residualCurrentA: 0.03, tripTimeMs: 40 }), normalState: 'open', ...generator })],
  cables,
})
const locked = { shore: { interlockTag: 'Q1' }, generator: { interlockTag: 'Q1' } }
const busOf = (vessel: Parameters<typeof acOf>[0]) => acOf(vessel).buses.find(({ tag }) => tag === 'A1')!

describe('two sources of one panel', () => {
  it('are an error without an interlock, whichever is normally open', () => {
    expect(idsOf(withGenerator())).toContain('ACS110 A1')
    expect(idsOf(withGenerator({ shore: { interlockTag: 'Q1' } }))).toContain('ACS110 A1')
    expect(idsOf(withGenerator({ shore: { interlockTag: 'Q1' }, generator: { interlockTag: 'Q2' } }))).toContain('ACS110 A1')
  })
  it('are sound with one', () => {
    expect(idsOf(withGenerator(locked))).toEqual([])
    expect(busOf(withGenerator(locked)).joined.state).toBe('met')
  })
  it('are kept apart by a source selector in their way', () => {
    const vessel = withGenerator({ equipment: [anEquipment({ tag: 'Q1', kind: 'source selector' })], cables: [cable('W5', 'G2', 'F2'), cable('W6', 'F2', 'Q1:2'), cable('W7', 'Q1:out', 'A1')] })
    const rewired = { ...vessel, cables: vessel.cables.map(each => (each.tag === 'W2' ? cable('W2', 'F1', 'Q1:1') : each)) }
    expect(idsOf(rewired)).not.toContain('ACS110 A1')
    expect(busOf(rewired).feeders.map(({ interlockTags }) => interlockTags)).toEqual([['Q1'], ['Q1']])
  })
  it('are doubtful when both are recorded as closed', () => {
    const vessel = withGenerator({ ...locked, generator: { interlockTag: 'Q1', normalState: 'closed' } })
    expect(busOf(vessel).joined.state).toBe('doubtful')
    expect(idsOf(vessel)).toContain('ACS302 F2')
  })
  it('are told by what can feed each feeder, through panels between', () => {
    expect(busOf(withGenerator()).feeders.map(({ sourceTags }) => sourceTags)).toEqual([['X1'], ['G2']])
  })
})

describe('sources of one panel are alike', () => {
  // 220, 230 and 240 V are one system by name; 120 and 230 V are not.
  it.each([[240, false], [220, false], [120, true]])('230 V and %s V: an error %s', (nominalVoltageV, wrong) => {
    expect(idsOf(withGenerator({ ...locked, output: { nominalVoltageV } })).includes('ACS111 A1')).toBe(wrong)
  })
  it.each([[50, 'met'], [60, 'doubtful'], [null, 'not assessed']] as const)('50 Hz and %s Hz: %s', (frequencyHz, state) => {
    expect(busOf(withGenerator({ ...locked, output: { frequencyHz } })).alike.state).toBe(state)
  })
})

it('looks at interlocks of d.c. circuits too', () => {
  const circuits = ['F1', 'F2'].map(tag => aCircuit({ tag, fedFromTag: 'G1', interlockTag: 'Q1' }))
  const vessel = aVessel({ batteries: [aBattery({ tag: 'G1' })], equipment: [anEquipment({ tag: 'Q1', kind: 'switch' })], circuits })
  expect(idsOf(vessel)).toEqual(['ACS302 F2'])
  expect(idsOf({ ...vessel, circuits: [circuits[0]!, { ...circuits[1]!, normalState: 'open' }] })).toEqual([])
})
