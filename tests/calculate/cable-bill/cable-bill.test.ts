/** Sums of the bill beside their tests; that of the sample vessel is made a second time from its files. */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parse as parseCsv } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { parse as parseYaml } from 'yaml'
import { examine } from '../../../src/build.js'
import { calculate } from '../../../src/calculate/calculate.js'
import type { CableTypeBill } from '../../../src/model/results/cable-bill.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { iso } from '../../../src/references/basis/iso.js'
import { aBus, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aWireway, aZone, mm2 } from '../../support/vessel-builder.js'

const billOf = (vessel: Vessel) => calculate(vessel, iso).cableBill
const orderM = ({ all: { order } }: CableTypeBill) => (order.status === 'computed' ? order.output.orderLengthM : null)

const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'helm' }), aZone({ tag: 'locker' })],
  wireways: [aWireway({ tag: 'WW1', fromTag: 'helm', toTag: 'locker', lengthM: 4 })],
  conditions: { ...aVessel().conditions, cableTailM: 0.4, cableSparePercent: 10 },
  equipment: [anEquipment({ tag: 'P1', zoneTag: 'helm' }), anEquipment({ tag: 'P2', zoneTag: 'locker' }), anEquipment({ tag: 'P3' })],
  cableTypes: [aCableType({ tag: '2x2.5', cores: 2, size: mm2(2.5) }), aCableType({ tag: '1x50', cores: 1, size: mm2(50) }), aCableType({ tag: 'unused' })],
  ...given,
})

describe('bill of cable', () => {
  it('adds tails and service loop of a route, takes a measured length as it is, and rounds up with the spare', () => {
    const { types } = billOf(boat({ cables: [
      // 4 + 2 · 0.4 + 0.5 = 5.3 m
      aCable({ tag: 'W1', from: 'P1:power', to: 'P2:power', typeTag: '2x2.5', serviceLoopM: 0.5 }),
      aCable({ tag: 'W2', from: 'P1:a', to: 'P2:b', typeTag: '2x2.5', lengthM: 3.8, serviceLoopM: 0.5 }),
    ] }))
    // 5.3 + 3.8 = 9.1; · 1.1 = 10.01, so 11 m
    expect(types.map(({ typeTag, cableCount }) => [typeTag, cableCount])).toEqual([['2x2.5', 2]])
    expect(types[0]!.all.laidLengthM).toBeCloseTo(9.1, 9)
    expect(orderM(types[0]!)).toBe(11)
    expect(types[0]!.longest).toEqual({ cableTag: 'W1', pieceLengthM: expect.closeTo(5.3, 9) })
  })

  it('lays conductors in parallel side by side, and tells positive from negative of single-core cable', () => {
    const [bill] = billOf(boat({ cables: [
      aCable({ tag: 'W1', from: 'P1', to: 'P2', typeTag: '1x50', carries: 'positive', lengthM: 2, parallelCount: 3 }),
      aCable({ tag: 'W2', from: 'P1', to: 'P2', typeTag: '1x50', carries: 'negative', lengthM: 2.5, status: 'planned' }),
    ] })).types
    expect(bill).toMatchObject({ cableCount: 2, pieceCount: 4, all: { laidLengthM: 8.5 }, byConductor: { positiveLengthM: 6, negativeLengthM: 2.5, otherLengthM: 0 } })
    // The longest piece is one conductor, not three. 8.5 · 1.1 = 9.35; 2.5 · 1.1 = 2.75
    expect(bill!.longest).toEqual({ cableTag: 'W2', pieceLengthM: 2.5 })
    expect([orderM(bill!), bill!.planned]).toMatchObject([10, { cableCount: 1, laidLengthM: 2.5, order: { output: { orderLengthM: 3 } } }])
  })

  it('is sold by the foot where the boat is in feet: 3.048 m are 10 ft, and 11 ft with the spare', () => {
    const [bill] = billOf(boat({ units: 'us', cables: [aCable({ tag: 'W1', from: 'P1', to: 'P2', typeTag: '2x2.5', lengthM: 3.048 })] })).types
    expect(orderM(bill!)).toBeCloseTo(11 * 0.3048, 9)
  })

  it('names what it cannot count, and never drops it', () => {
    const { types, outside, notAssessed } = billOf(boat({ cables: [
      aCable({ tag: 'W1', from: 'P1', to: 'P2', typeTag: '2x2.5', lengthM: 1 }),
      aCable({ tag: 'W2', from: 'P1', to: 'P3', typeTag: '2x2.5' }),
      aCable({ tag: 'W3', from: 'P1', to: 'P2', lengthM: 1.5 }),
      aCable({ tag: 'W4', from: 'P1', to: 'P2', typeTag: '2x2.5', lengthM: 9, status: 'removed' }),
    ] }))
    expect(types[0]).toMatchObject({ cableCount: 2, unknownLengthTags: ['W2'], all: { cableCount: 1, laidLengthM: 1 } })
    expect(outside).toEqual([
      { cableTag: 'W2', typeTag: '2x2.5', lengthM: null, reason: 'its length is not known: no zone is recorded for P3' },
      { cableTag: 'W3', typeTag: null, lengthM: 1.5, reason: 'its type is not recorded' },
    ])
    expect(notAssessed.map(({ subjectTag }) => subjectTag)).toEqual(['W2', 'W3'])
  })

  it('comes to the same as the sample’s own files, added up apart', async () => {
    const folder = fileURLToPath(new URL('../../../sample-vessel/', import.meta.url))
    const read = (file: string) => readFileSync(folder + file, 'utf8')
    const metres = (text: string): number => Number(text.replace(/ m$/, ''))
    const lengthOfWay = new Map((parseYaml(read('wireways.yaml')) as { wireways: { tag: string; length: string }[] }).wireways.map(({ tag, length }) => [tag, metres(length)]))
    const tailM = metres((parseYaml(read('vessel.yaml')) as { vessel: { conditions: { 'cable-tail': string } } }).vessel.conditions['cable-tail'])
    const rows = parseCsv(read('cables.csv'), { columns: true, comment: '#', comment_no_infix: true }) as Record<'tag' | 'type' | 'route' | 'length' | 'service-loop', string>[]
    const sums = new Map<string, number>()
    for (const { type, route, length, 'service-loop': loop } of rows) {
      const ways = route.split(' ').filter(tag => tag !== '')
      const lengthM = length !== '' ? metres(length) : ways.reduce((sum, tag) => sum + lengthOfWay.get(tag)!, 0) + 2 * tailM + (loop === '' ? 0 : metres(loop))
      sums.set(type, (sums.get(type) ?? 0) + lengthM)
    }
    const sample = await examine(folder)
    if (sample.status !== 'examined') throw new Error('the sample is no vessel')
    const { types, outside } = sample.results.cableBill
    expect(types.length).toBeGreaterThan(25)
    for (const { typeTag, all } of types) expect([typeTag, all.laidLengthM]).toEqual([typeTag, expect.closeTo(sums.get(typeTag)!, 6)])
    expect(types.reduce((sum, { cableCount }) => sum + cableCount, 0) + outside.filter(({ typeTag }) => typeTag === null).length).toBe(rows.length)
  })
})

describe('parts', () => {
  it('counts two ends for each core of each conductor, and connectors where conductors end together', () => {
    const { conductorEnds, plugs, notAssessed } = billOf(boat({
      cableTypes: [
        aCableType({ tag: '2x2.5', cores: 2, size: mm2(2.5) }), aCableType({ tag: '1x50', cores: 1, size: mm2(50) }), aCableType({ tag: 'odd', cores: null, size: mm2(4) }),
        aCableType({ tag: 'CX', use: 'coax', cores: 1 }), aCableType({ tag: 'ETH', use: 'ethernet', cores: 8, size: mm2(0.2) }),
      ],
      cables: [
        aCable({ tag: 'W1', from: 'P1', to: 'P2', typeTag: '2x2.5', lengthM: 1 }), aCable({ tag: 'W2', from: 'P1', to: 'P2', typeTag: '2x2.5', lengthM: 1 }),
        aCable({ tag: 'W3', from: 'P1', to: 'P2', typeTag: '1x50', lengthM: 1, parallelCount: 2 }), aCable({ tag: 'W4', from: 'P1', to: 'P2', typeTag: 'odd', lengthM: 1 }),
        aCable({ tag: 'W5', from: 'P1', to: 'P2', typeTag: 'CX', carries: 'none', lengthM: 1, connectorCount: 4 }), aCable({ tag: 'W6', from: 'P1', to: 'P2', typeTag: 'CX', carries: 'none', lengthM: 1 }),
        aCable({ tag: 'W7', from: 'P1', to: 'P2', typeTag: 'ETH', carries: 'none', lengthM: 1 }),
      ],
    }))
    // Two cables of two cores, two ends each: 8. One of one core, twice in parallel: 4.
    expect(conductorEnds.map(({ size, endCount }) => [size.designation, endCount])).toEqual([['2.5', 8], ['50', 4]])
    expect(plugs).toEqual([{ typeTag: 'CX', use: 'coax', connectorCount: 6, assumedCount: 2 }, { typeTag: 'ETH', use: 'ethernet', connectorCount: 2, assumedCount: 2 }])
    expect(notAssessed).toEqual([{ subjectTag: 'W4', reason: 'the ends of its conductors are not counted: cores of type odd not recorded' }])
  })

  it('counts devices by kind, rating and poles, in panels and with a holder; channels of modules are none', () => {
    const { devices } = billOf(boat({
      panels: [aPanel({ tag: 'A1' })],
      circuits: [
        aCircuit({ tag: 'A1.1', fedFromTag: 'A1', protection: aProtection('blade fuse', 10) }), aCircuit({ tag: 'A1.2', fedFromTag: 'A1', protection: aProtection('blade fuse', 10) }),
        aCircuit({ tag: 'F1', fedFromTag: 'P1', protection: aProtection('blade fuse', 10) }), aCircuit({ tag: 'F2', fedFromTag: 'P1', protection: aProtection('blade fuse', 5) }),
        aCircuit({ tag: 'A1.3', fedFromTag: 'A1', protection: aProtection('electronic channel', 5) }), aCircuit({ tag: 'A1.4', fedFromTag: 'A1' }),
      ],
    }))
    expect(devices).toEqual([
      { device: 'blade fuse', ratedCurrentA: 5, polesCount: null, inPanelCount: 0, aloneCount: 1 },
      { device: 'blade fuse', ratedCurrentA: 10, polesCount: null, inPanelCount: 2, aloneCount: 1 },
    ])
  })

  it('tells how many fuses to carry: of blades two, or one for four; of bolted ones one; of breakers none', () => {
    const blades = Array.from({ length: 9 }, (_, i) => aCircuit({ tag: `F${i + 1}`, fedFromTag: 'P1', protection: aProtection('blade fuse', 5) }))
    const { spareFuses } = billOf(boat({ circuits: [
      ...blades, aCircuit({ tag: 'F10', fedFromTag: 'P1', protection: aProtection('class T fuse', 100) }), aCircuit({ tag: 'F11', fedFromTag: 'P1', protection: aProtection('blade fuse', 10) }),
      aCircuit({ tag: 'F12', fedFromTag: 'P1', protection: aProtection('circuit breaker', 10) }),
    ] }))
    // 9 / 4 = 2.25, so three.
    expect(spareFuses.map(({ device, ratedCurrentA, circuitTags, spareCount }) => [device, ratedCurrentA, circuitTags.length, spareCount]))
      .toEqual([['blade fuse', 5, 9, 3], ['blade fuse', 10, 1, 2], ['class T fuse', 100, 1, 1]])
  })

  it('counts the parts of each bus', () => {
    const { busParts } = billOf(boat({
      canBuses: [aBus({ tag: 'N1', backbone: [
        { kind: 'terminator', tag: 'R1', zoneTag: null, resistanceOhm: null }, { kind: 'tee', tag: 'X1', zoneTag: null, deviceTag: 'P1', dropCableTag: 'W1', deviceTerminal: null },
        { kind: 'tee', tag: 'X2', zoneTag: null, deviceTag: 'P2', dropCableTag: null, deviceTerminal: null }, { kind: 'power', tag: 'X3', zoneTag: null, circuitTag: null, dropCableTag: null, supplyVoltageV: null },
        { kind: 'terminator', tag: 'R2', zoneTag: null, resistanceOhm: null },
      ] })],
      cables: [aCable({ tag: 'W1', from: 'X1', to: 'P1', carries: 'none', lengthM: 1 })],
    }))
    expect(busParts).toEqual([{ busTag: 'N1', teeCount: 2, powerTeeCount: 1, terminatorCount: 2, isolatorCount: 0, dropCount: 1 }])
  })
})
