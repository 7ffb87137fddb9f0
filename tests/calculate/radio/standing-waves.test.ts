/** Standing wave ratios as measured, where they were read and what they say of the antenna. */
import { describe, expect, it } from 'vitest'
import type { Measurement, Vessel } from '../../../src/model/vessel.js'
import { aMeasurement, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aTransmitter, coax, idsOf, radio, radioBoat, radioOf, stated, whip } from './support.js'

const read = (subjectTag: string, vswrFactor: number, given: Partial<Measurement> = {}): Measurement => aMeasurement({ number: '1', subjectTag, vswrFactor, ...given })
const checked = (vessel: Vessel, ...measurements: readonly Measurement[]) => radioOf({ ...vessel, measurements })
const first = (vessel: Vessel, measurement: Measurement) => checked(vessel, measurement).standingWaves[0]!

/** 25 m of cable: 2.5 dB and two connectors, together 3 dB; 1.4 read there is 2 at the antenna (Γ 1/6 and 1/3, to a hundredth). */
const boat = { ...radioBoat({}, { vswrFactor: 1.5 }), cables: [coax('W1', 'T1:antenna', 'T11:coax', { lengthM: 25 })] }

describe('a reading at the transmitter', () => {
  it('is reckoned back through the cable', () => {
    const check = first(boat, read('T1', 1.4))
    expect(check).toMatchObject({ readAtTag: 'T1', antennaTag: 'T11', lossDb: expect.closeTo(3, 9), verdict: 'hidden by loss' })
    expect(check.atAntenna).toMatchObject({ output: { antennaVswrFactor: expect.closeTo(1.997, 2) } })
    expect(idsOf(checked(boat, read('T1', 1.4)))).toEqual(['RAD108 1'])
  })
  // Antenna of 1.5: Γ 0.2; 3 dB twice 0.2 · 0.5012 = 0.1002; (1.1002)/(0.8998) = 1.2228
  it('may be what an antenna on its limit would give, and no more', () => {
    expect(first(boat, read('T1', 1.2)).expected).toMatchObject({ output: { readVswrFactor: expect.closeTo(1.2228, 3) } })
    expect(first(boat, read('T1', 1.222)).verdict).toBe('within')
    expect(first(boat, read('T1', 1.224)).verdict).toBe('hidden by loss')
  })
  it('above the limit needs no sum', () => {
    expect(idsOf(checked(boat, read('T1', 1.6)))).toEqual(['RAD107 1'])
  })
  // An open end behind 3 dB: return loss 6 dB, VSWR 3.01
  it('worse than an open end of the cable is not explained', () => {
    expect(first(boat, read('T1', 2.9)).verdict).toBe('above limit')
    expect(idsOf(checked(boat, read('T1', 3.1)))).toEqual(['RAD305 1'])
  })
  it('of 1 says that nothing comes back', () => {
    expect(first(boat, read('T1', 1))).toMatchObject({ verdict: 'within', reading: { status: 'not computed' }, atAntenna: { status: 'not computed' } })
  })
  it('is held against 1.5 where the maker states nothing, else against his', () => {
    const other = (vswrFactor: number | null) => ({ ...boat, equipment: [radio('T1'), whip('T11', [4, 0, 4], { vswrFactor })] })
    expect(first(other(null), read('T11', 1.6)).verdict).toBe('above limit')
    expect(first(other(2), read('T11', 1.6)).verdict).toBe('within')
  })
  it('behind an unknown loss is not assessed while it looks good', () => {
    const silent = { ...boat, cableTypes: [{ ...stated, coax: null }] }
    expect(first(silent, read('T1', 1.2))).toMatchObject({ verdict: 'not assessed', gap: 'the loss between there and the antenna is not known' })
    expect(first(silent, read('T1', 1.6)).verdict).toBe('above limit')
    expect(checked(silent, read('T1', 1.2)).notAssessed).toContainEqual({ subjectTag: 'T1', reason: 'standing wave ratio as measured: the loss between there and the antenna is not known' })
  })
})

describe('where it was read', () => {
  const long = aVessel({
    equipment: [radio('T1'), anEquipment({ tag: 'X1', kind: 'connector' }), whip('T11', [4, 0, 4])], cableTypes: [stated],
    cables: [coax('W1', 'T1:antenna', 'X1:a', { lengthM: 5 }), coax('W2', 'X1:b', 'T11:coax', { lengthM: 15 })],
  })
  // W1 0.5 + 0.5 dB, W2 1.5 + 0.5 dB
  it.each([
    ['T1', null, 'T1', 3], ['T11', null, 'T11', 0], ['W2', null, 'X1', 2], ['W1', null, 'T1', 3], ['W2', 'T11', 'T11', 0], ['W2', 'T1', 'T1', 3], ['T11', 'X1', 'X1', 2], ['X1', null, 'X1', 2],
  ] as const)('of %s at %s is %s, %d dB before the antenna', (subject, atTag, readAt, lossDb) => {
    expect(first(long, read(subject, 1.1, { atTag }))).toMatchObject({ readAtTag: readAt, lossDb: expect.closeTo(lossDb, 9) })
  })
  it('of a splitter is its side towards the antenna', () => {
    const splitter = anEquipment({ tag: 'X1', kind: 'antenna splitter', portLosses: [{ fromTerminal: 'antenna', toTerminal: 'vhf', lossDb: 0.7 }] })
    const split = { ...long, equipment: [radio('T1'), splitter, whip('T11', [4, 0, 4])], cables: [coax('W1', 'T1:antenna', 'X1:vhf', { lengthM: 5 }), coax('W2', 'X1:antenna', 'T11:coax', { lengthM: 15 })] }
    expect([first(split, read('X1', 1.1)).lossDb, first(split, read('T1', 1.1)).lossDb].map(loss => Math.round(loss! * 10) / 10)).toEqual([2, 3.7])
  })
  it('must be on a way to an antenna', () => {
    expect(first(long, read('T99', 1.1))).toMatchObject({ verdict: 'not assessed', gap: 'T99 is on no recorded way from a transmitter to an antenna' })
    expect(first(long, read('T1', 1.1, { atTag: 'T99' })).gap).toBe('T99 is not on the way that T1 is on')
  })
  it('of a radio with two antennas must say which', () => {
    const two = aVessel({
      equipment: [radio('T1', { transmitters: [aTransmitter(), aTransmitter({ service: 'AIS', terminal: 'ais' })] }), whip('T11'), whip('T12')], cableTypes: [stated],
      cables: [coax('W1', 'T1:antenna', 'T11'), coax('W2', 'T1:ais', 'T12', { lengthM: 1 })],
    })
    expect(first(two, read('T1', 1.1)).gap).toBe('T1 is on the ways to T11 and T12, and the reading does not say which is meant')
    expect(first(two, read('W2', 1.1))).toMatchObject({ antennaTag: 'T12', readAtTag: 'T1' })
  })
})

it('of two readings of the same the later counts', () => {
  const results = checked(boat, read('T1', 1.6, { number: '1', date: '2026-05-02' }), read('T1', 1.1, { number: '2', date: '2026-05-09' }), read('T1', 3, { number: '3', date: '2026-05-01' }))
  expect(results.standingWaves.map(({ supersededBy }) => supersededBy)).toEqual(['2', null, '2'])
  expect(idsOf(results)).toEqual([])
})
