/** Room: what is said to fit is put in, and the whole bus reckoned again. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BusResult } from '../../../src/model/results/can-bus.js'
import { type Along, busBoat, busIn, type GivenBus, type GivenDevice, power, terminator } from './support.js'

const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]

/** Whether every limit of the supply is kept, those included that were not kept before. */
const supplyWithin = ({ supply }: BusResult): boolean => supply.sections.every(({ solved }) => solved !== null
  && solved.tees.every(({ drop, device }) => drop.within && (device?.lowest.within ?? true))
  && solved.legs.every(({ stretches }) => stretches.every(({ current }) => current === null || current.within))
  && (solved.againstProtection?.within ?? true))

/** The bus with one more device by 6 m of light cable at the tee with this position among the tees. */
function withOneMore({ along, devices = {}, ...given }: GivenBus, teeAt: number, len: number): BusResult {
  const at = along.flatMap((part, i) => (typeof part === 'string' ? [i] : []))[teeAt]!
  return busIn(busBoat({ ...given, along: along.toSpliced(at, 0, 'NEW'), devices: { ...devices, NEW: { len, drop: 6 } } }))
}

const randomBus = fc.integer({ min: 1, max: 6 }).chain(count => fc.record({
  lens: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: count, maxLength: count }),
  lengthsM: fc.array(fc.integer({ min: 0, max: 150 }).map(tenths => tenths / 10), { minLength: count, maxLength: count }),
  at: fc.integer({ min: 0, max: count }), cable: fc.constantFrom('light' as const, 'mid' as const), ratingA: fc.constantFrom(2, 3, 4),
}))

describe('room at a tee', () => {
  it('is exactly what fits: so much passes, one more does not', () => {
    fc.assert(fc.property(randomBus, ({ lens, lengthsM, at, cable, ratingA }) => {
      const devices = Object.fromEntries(lens.map((len, i): [string, GivenDevice] => [`P${i}`, { len, drop: 1 }]))
      const nodes: Along[] = Object.keys(devices)
      const parts: Along[] = [...nodes.slice(0, at), power('X0'), ...nodes.slice(at)]
      const given: GivenBus = { along: ends(...parts.flatMap((part, i) => (i === 0 ? [part] : [lengthsM[i - 1] ?? 1, part]))), devices, cable, ratingA }
      const before = busIn(busBoat(given))
      before.room.tees.forEach(({ lenLeftNumber, governed }, i) => {
        if (!supplyWithin(before)) {
          // Nothing is promised where a limit that it would load further is passed already.
          return
        }
        expect(supplyWithin(withOneMore(given, i, lenLeftNumber))).toBe(true)
        if (governed !== null && governed.by.output.lenLeftNumber < 20) expect(supplyWithin(withOneMore(given, i, lenLeftNumber + 1))).toBe(false)
      })
    }), { numRuns: 30 })
  })
  it('is none where a limit is passed already', () => {
    const { room } = busIn(busBoat({ along: ends(power('X0'), 30, 'P1', 'P2'), devices: { P1: { len: 10, drop: 1 }, P2: { len: 10, drop: 1 } } }))
    expect(room.tees.map(({ lenLeftNumber }) => lenLeftNumber)).toEqual([0, 0])
    expect(room.tees[0]!.governed!.words).toBe('voltage drop to X1')
  })
  it('by hand: 1.5 V at 10 m of light cable with 4 LEN there', () => {
    // 1.5 − 2 · 0.057 · 10 · 0.2 = 1.272 V; 1.272 / (0.05 · 1.14) = 22.3. At the insertion the 3 A fuse less 0.2 A: 56.
    const { room } = busIn(busBoat({ along: ends('', power('X0'), 10, 'P1'), devices: { P1: { len: 4, drop: 1 } } }))
    expect(room.tees.map(({ governed }) => [governed!.words, governed!.by.output.lenLeftNumber])).toEqual([['protective device F1', 56], ['voltage drop to X2', 22]])
    expect(room.tees.map(({ lenLeftNumber }) => lenLeftNumber)).toEqual([20, 20])
    expect(room).toMatchObject({ freeTeeTags: ['X1'], devicesLeft: 49, dropsLeftM: 77 })
  })
  it('by hand: what two tees share is the way to the nearer one, whichever of them is the new device’s', () => {
    // Drop to X2: 2 · 0.057 · 20 · 0.5 = 1.14 V, 0.36 V left. At X1 over 1.14 Ω: 0.36 / 0.057 = 6.3; at X2 over 2.28 Ω: 3.2.
    const far = busIn(busBoat({ along: ends(power('X0'), 10, '', 10, 'P2'), devices: { P2: { len: 10, drop: 1 } } }))
    expect(far.room.tees.map(({ governed }) => [governed!.words, governed!.by.output.lenLeftNumber])).toEqual([['voltage drop to X2', 6], ['voltage drop to X2', 3]])
    // At P1: 10 − 2 · 0.057 · 10 · 0.5 − 2 · 0.057 · 6 · 0.5 = 9.088 V, 0.088 V left over the 1.14 Ω up to X1, also for a device at X2.
    const near = busIn(busBoat({ along: ends(power('X0', { supplyVoltageV: 10, circuitTag: null }), 10, 'P1', 10, ''), devices: { P1: { len: 10, drop: 6 } } }))
    expect(near.room.tees.map(({ governed }) => [governed!.words, governed!.by.output.lenLeftNumber])).toEqual([['voltage at P1', 1], ['voltage at P1', 1]])
  })
  it('by hand: what the circuit before the insertion loses more counts where a voltage arrives', () => {
    // F1 runs 3 A through 150 m of cable; what it loses is asked of the result, the rest is Ohm’s law.
    const given: GivenBus = { along: ends('P1', power('X0'), ''), devices: { P1: { len: 4, drop: 1 } }, ratingA: 10 }
    const boat = busBoat(given)
    const { supply, room } = busIn({ ...boat, cables: boat.cables.map(cable => (cable.tag === 'W-F1' ? { ...cable, lengthM: 150 } : cable)) })
    const { insertion } = supply.sections[0]!.solved!
    const feedOhm = insertion.feedDropV! / 3
    expect(feedOhm).toBeGreaterThan(0.04)
    expect(insertion.feedResistanceOhm).toBeCloseTo(feedOhm, 9)
    // A new device at X2: 12 V less the feed less 9 V, over the feed and its own drop of 2 · 0.057 · 6 = 0.684 Ω.
    const fits = Math.floor((12 - insertion.feedDropV! - 9) / (0.05 * (feedOhm + 0.684)))
    expect(room.tees[1]!.governed).toMatchObject({ words: 'voltage at the new device', by: { output: { lenLeftNumber: fits } } })
    expect(fits).toBeLessThan(Math.floor((12 - insertion.feedDropV! - 9) / (0.05 * 0.684)))
  })
  it('by hand: and takes it from a device on the other side as well', () => {
    // P1 by 12 m of light cable loses 2 · 0.057 · 12 · 1 = 1.368 V of its own; only the circuit is shared with X2.
    const boat = busBoat({ along: ends('P1', power('X0'), ''), devices: { P1: { len: 20, drop: 12 } }, ratingA: 10 })
    const { supply, room } = busIn({ ...boat, cables: boat.cables.map(cable => (cable.tag === 'W-F1' ? { ...cable, lengthM: 700 } : cable)) })
    const { feedDropV } = supply.sections[0]!.solved!.insertion
    const fits = Math.floor((12 - feedDropV! - 1.368 - 9) / (0.05 * (feedDropV! / 3)))
    expect(room.tees[1]!.governed).toMatchObject({ words: 'voltage at P1', by: { output: { lenLeftNumber: fits } } })
  })
  it('by hand: current in light cable behind heavy cable, with 55 LEN beyond both', () => {
    // 3 A − 2.75 A in W2: LEN 5. Before it 8 A − 2.75 A, 105, in W1 and in the fuse; a new device there has
    // (12 − 9 − 2 · 0.0132 · 0.1 · 2.75) / (0.05 · (0.00264 + 2 · 0.057 · 6)) = 87.2.
    const devices = { P1: { len: 20, drop: 0.1 }, P2: { len: 20, drop: 0.1 }, P3: { len: 15, drop: 0.1 } }
    const boat = busBoat({ along: ends(power('X0'), 0.1, '', 0.1, 'P1', 'P2', 'P3'), devices, ratingA: 8 })
    const heavy = boat.cableTypes.map(type => (type.tag === 'bus' ? { ...type, tag: 'heavy', busCable: 'heavy' as const } : type))
    const { room } = busIn({ ...boat, cableTypes: [...boat.cableTypes, ...heavy.filter(({ tag }) => tag === 'heavy')], cables: boat.cables.map(cable => (cable.tag === 'W1' ? { ...cable, typeTag: 'heavy' } : cable)) })
    expect(room.tees.map(({ governed }) => [governed!.words, governed!.by.output.lenLeftNumber])).toEqual([
      ['voltage at the new device', 87], ['current in W2', 5], ['current in W2', 5], ['current in W2', 5],
    ])
  })
  it('by hand: 1 V above the least at a new device by 6 m of light cable', () => {
    // 2 · 0.057 · (1 + 6) = 0.798 Ω; 1 / (0.05 · 0.798) = 25.06.
    const { room } = busIn(busBoat({ along: ends(power('X0', { supplyVoltageV: 10, circuitTag: null }), 1, '') }))
    expect(room.tees.map(({ governed }) => [governed!.words, governed!.by.output.lenLeftNumber])).toEqual([['voltage at the new device', 25]])
  })
  it('is not assessed where the supply is not', () => {
    expect(busIn(busBoat({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { len: null, drop: 1 } } })).room).toMatchObject({ tees: [], missing: ['no load equivalency number is recorded for P1'] })
  })
})
