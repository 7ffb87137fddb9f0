/** The worked values of the installation guides, and sums done by hand, on whole buses. */
import { describe, expect, it } from 'vitest'
import { lenOfCurrent, lumpedDrop } from '../../../src/calculate/can-bus/supply-drop.calc.js'
import { aMeasurement } from '../../support/vessel-builder.js'
import { aMessage, busBoat, busIn, foundIn, power, terminator, type Along, type GivenDevice } from './support.js'

const between = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const solved = (...given: Parameters<typeof busBoat>) => busIn(busBoat(...given)).supply.sections[0]!.solved!

describe('voltage drop', () => {
  it.each([
    [8, 20, 0.912, true, true], [20, 20, 2.28, false, true], [20, 30, 3.42, false, false],
  ])('%i LEN at the far end of %i m of light cable: %f V', (len, lengthM, dropV, onBattery, onRegulated) => {
    const leg = (supply: Along) => solved({ along: between(supply, lengthM, 'P1'), devices: { P1: { len, drop: 0 } } })
    const battery = leg(power('X0'))
    // With one device at the end the sum of the guides is exact.
    expect(battery.worst!.dropV).toBeCloseTo(dropV, 9)
    expect(battery.legs[1]!.lumped!.output.voltageDropV).toBeCloseTo(dropV, 9)
    expect(battery.worst!.drop.within).toBe(onBattery)
    expect(leg(power('X0', { supplyVoltageV: 13.8 })).worst!.drop.within).toBe(onRegulated)
  })
  it('reaches 13.16 m and 26.32 m with 20 LEN', () => {
    expect(lumpedDrop({ loadEquivalencyNumber: 20, lengthM: 13.16, resistanceOhmPerM: 0.057 }).voltageDropV).toBeCloseTo(1.5, 2)
    expect(lumpedDrop({ loadEquivalencyNumber: 20, lengthM: 26.32, resistanceOhmPerM: 0.057 }).voltageDropV).toBeCloseTo(3, 2)
  })
  it('is 1.368 V exactly and 2.052 V by the guides with 4 LEN at 10, 20 and 30 m', () => {
    const section = solved({ along: between(power('X0'), 10, 'P1', 10, 'P2', 10, 'P3'), devices: { P1: { len: 4, drop: 0 }, P2: { len: 4, drop: 0 }, P3: { len: 4, drop: 0 } } })
    const [, leg] = section.legs
    expect(leg!.stretches.map(({ drop }) => drop.input.currentA)).toEqual([0.6, 0.4, 0.2].map(currentA => expect.closeTo(currentA, 9)))
    expect(section.worst!.dropV).toBeCloseTo(1.368, 9)
    expect(leg!.lumped!.output.voltageDropV).toBeCloseTo(2.052, 9)
    // 4 · 10 + 4 · 20 + 4 · 30.
    expect(leg!.momentLenM).toBeCloseTo(240, 9)
  })
  it('is 3.168 V with 60 LEN over 40 m of mid cable', () => {
    const devices = Object.fromEntries(['P1', 'P2', 'P3'].map((tag): [string, GivenDevice] => [tag, { len: 20, drop: 0 }]))
    expect(solved({ along: between(power('X0'), 40, 'P1', 'P2', 'P3'), devices, cable: 'mid' }).worst!.dropV).toBeCloseTo(3.168, 9)
  })
  it('is that of 151 mA with LEN 4', () => expect(lenOfCurrent({ currentA: 0.151 })).toEqual({ loadEquivalencyNumber: 4 }))
})

describe('load', () => {
  const loadOf = (sends: GivenDevice['sends'] = []) => {
    const { total } = busIn(busBoat({ along: between(power('X0'), 1, 'P1'), devices: { P1: { drop: 1, sends } } })).load
    return total.status === 'computed' ? total.output : null
  }
  const engines = [aMessage(127488, { timesCount: 2 }), aMessage(127489, { timesCount: 2 })]
  it.each([
    ['position ten times a second', [aMessage(129025)], 0.524, 0.64],
    ['GNSS position of 43 bytes', [aMessage(129029)], 0.3668, 0.448],
    ['two engines', engines, 1.8864, 2.304],
    ['a boat under way', [...engines, ...[129025, 129026, 129029, 127250, 130306, 128259, 128267, 127245].map(pgn => aMessage(pgn))], 4.664, 5.696],
  ] as const)('of %s', (_, sends, nominal, worst) => {
    expect(loadOf(sends)!.nominalLoadPercent).toBeCloseTo(nominal, 3)
    expect(loadOf(sends)!.worstLoadPercent).toBeCloseTo(worst, 9)
  })
})

describe('numbers and lengths', () => {
  const many = (count: number, drop: number) => Object.fromEntries(Array.from({ length: count }, (_, i): [string, GivenDevice] => [`P${i + 1}`, { len: 0, drop }]))
  const busOf = (count: number, drop: number) => busBoat({ along: between(power('X0'), ...Object.keys(many(count, drop))), devices: many(count, drop) })
  it('50 devices pass, 51 and 61 do not', () => {
    expect(foundIn(busOf(50, 0.1))).not.toContain('CAN104 N1')
    for (const count of [51, 61]) expect(foundIn(busOf(count, 0.1))).toContain('CAN104 N1')
  })
  it('13 drops of 6 m are 78 m and pass, 14 are 84 m and do not', () => {
    expect(busIn(busOf(13, 6)).lengths.dropsTogetherM).toBeCloseTo(78, 9)
    expect(foundIn(busOf(13, 6)).filter(id => /CAN10[23]/.test(id))).toEqual([])
    expect(busIn(busOf(14, 6)).lengths.dropsTogetherM).toBeCloseTo(84, 9)
    expect(foundIn(busOf(14, 6)).filter(id => /CAN10[23]/.test(id))).toEqual(['CAN103 N1'])
  })
})

describe('resistance between the data wires', () => {
  const read = (resistanceOhm: number) => busIn(busBoat({ along: between(power('X0')) }, { measurements: [aMeasurement({ number: 'M1', subjectTag: 'N1', resistanceOhm })] })).readings[0]!
  it.each([
    [60, true, null], [57, true, null], [120, false, 'one terminator is missing, or the backbone is open on the way to it'],
    [40, false, '3 terminators are fitted'], [30, false, '4 terminators are fitted'], [0.5, false, 'the data wires touch each other'],
    [5000, false, 'no terminator is reached: the backbone is open close by'],
  ])('%f Ω', (resistanceOhm, agrees, words) => expect(read(resistanceOhm)).toMatchObject({ calculated: 60, agrees, words }))
})
