/** Depth offsets: positive up to the waterline, negative down to the keel (from memory); the rest is subtraction. */
import { describe, expect, it } from 'vitest'
import type { DepthOffset, Equipment, Position, Transducer } from '../../../src/model/vessel.js'
import { anEquipment } from '../../support/vessel-builder.js'
import { aBoat, idsOf, placementOf, reasonsBesideLights } from './support.js'

const transducer = (tag: string, depthOffset: DepthOffset | null, given: Partial<Transducer> = {}, positionM: Position | null = [6, 0, -0.6]): Equipment =>
  anEquipment({ tag, kind: 'transducer', positionM, transducer: { frequencyKHz: 200, powerW: 600, beamDeg: 20, beamAcrossDeg: null, blindM: 0.5, depthOffset, ...given } })
const reads = (what: DepthOffset['reads'], offsetM: number) => aBoat({ equipment: [transducer('B3', { reads: what, offsetM })] })

describe('a transducer 0.6 m below the waterline, keel 1.9 m', () => {
  it.each([
    ['below waterline', 0.6], ['below keel', -1.3], ['below transducer', 0], ['below keel', -1.2], ['below keel', -1.4],
  ] as const)('is right %s with %d m, to within 0.1 m', (what, offsetM) => expect(idsOf(reads(what, offsetM))).toEqual([]))

  it.each([
    ['below keel', 0.6, 'PLC102 B3', 1.9], ['below waterline', -0.6, 'PLC102 B3', -1.2],
    ['below keel', -1, 'PLC103 B3', 0.3], ['below keel', 0, 'PLC103 B3', 1.3], ['below waterline', 0.8, 'PLC103 B3', 0.2], ['below transducer', 0.6, 'PLC103 B3', 0.6],
    ['below keel', -1.6, 'PLC301 B3', -0.3], ['below waterline', 0, 'PLC301 B3', -0.6],
  ] as const)('is wrong %s with %d m: %s', (what, offsetM, id, errorM) => {
    const vessel = reads(what, offsetM)
    expect(idsOf(vessel)).toEqual([id])
    expect(placementOf(vessel).transducers[0]!.configured!.error).toMatchObject({ output: { depthErrorM: expect.closeTo(errorM, 9) } })
  })

  it('says by how much and on which side, whether it is the sign or the size', () => {
    expect(placementOf(reads('below keel', 0.6)).findings[0]!.message).toContain('it shows 1.90\u00A0m (6.2\u00A0ft) too deep')
    expect(placementOf(reads('below keel', -1)).findings[0]!).toMatchObject({ severity: 'error', message: expect.stringContaining('0.30\u00A0m (1.0\u00A0ft) too deep') })
    expect(placementOf(reads('below keel', -1.6)).findings[0]!).toMatchObject({ severity: 'note', message: expect.stringContaining('0.30\u00A0m (1.0\u00A0ft) too shallow') })
  })
  // 5.0 m measured: 3.7 m below the keel.
  it('shows for example', () => {
    const { example } = placementOf(reads('below keel', 0.6)).transducers[0]!.configured!
    expect([example.shown, example.right]).toMatchObject([{ output: { shownDepthM: 5.6 } }, { output: { shownDepthM: 3.7 } }])
  })
})

describe('what is missing', () => {
  it('is not right by default; a wrong sign is seen all the same', () => {
    const nowhere = aBoat({ equipment: [transducer('B3', { reads: 'below keel', offsetM: 0.6 }, {}, null)] })
    expect(idsOf(nowhere)).toEqual(['PLC102 B3'])
    expect(reasonsBesideLights(nowhere)).toEqual(['B3: depth offset: the position of the transducer is not recorded'])
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', { reads: 'below keel', offsetM: -1.3 })] }, { draughtM: null }))).toEqual(['B3: depth offset: the draught of the vessel is not recorded'])
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', { reads: 'below keel', offsetM: -1.3 }, {}, [6, 0, 0.2])] }))).toEqual(['B3: depth offset: the transducer is recorded above the waterline'])
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', { reads: 'below keel', offsetM: -1.3 }, {}, [6, 0, -2])] }))).toEqual(['B3: depth offset: the transducer is recorded deeper than the keel'])
  })
  it('is asked for of each transducer without an offset, and of frequencies where there are two', () => {
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', null)] }))).toEqual(['B3: depth offset: the one that is set is not recorded'])
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', null), transducer('B4', { reads: 'below keel', offsetM: -1.3 }, { frequencyKHz: 50 })] }))).toEqual(['B3: depth offset: the one that is set is not recorded'])
    const set = { reads: 'below keel', offsetM: -1.3 } as const
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', set, { frequencyKHz: null })] }))).toEqual([])
    expect(reasonsBesideLights(aBoat({ equipment: [transducer('B3', set, { frequencyKHz: null }), transducer('B4', set, { frequencyKHz: 50 })] }))).toEqual(['B3: whether another transducer disturbs it: its frequency is not recorded'])
    expect(reasonsBesideLights(aBoat({ equipment: [anEquipment({ tag: 'B5', kind: 'transducer' })] }))).toEqual(['B5: footprint and depth offset: nothing is recorded of its beam'])
  })
})

describe('the footprint', () => {
  // 2 · 50 · tan 4.5° and 2 · 50 · tan 30°
  it('is worked out fore and aft and across', () => {
    const { footprints } = placementOf(aBoat({ equipment: [transducer('B3', null, { beamDeg: 9, beamAcrossDeg: 60 })] })).transducers[0]!
    expect(footprints.at(-1)).toMatchObject({ depthM: 50, along: { output: { diameterM: expect.closeTo(7.870, 3) } }, across: { output: { diameterM: expect.closeTo(57.735, 3) } } })
  })
})

describe('frequencies', () => {
  it.each([[181, true], [180, false], [220, true], [223, false], [50, false]] as const)('of 200 and %d kHz are close: %s', (frequencyKHz, close) => {
    const offset: DepthOffset = { reads: 'below keel', offsetM: -1.3 }
    expect(idsOf(aBoat({ equipment: [transducer('B3', offset), transducer('B4', null, { frequencyKHz })] }))).toEqual(close ? ['PLC302 B4'] : [])
  })
})
