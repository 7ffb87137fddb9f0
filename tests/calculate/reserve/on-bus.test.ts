/**
 * Where a device can join a CAN bus, held against sums by hand: light cable 57 Ω/km, 50 mA for each unit, drops of 6 m, 1.5 V from
 * the insertion, as the installation guides for bus cable have it (tests/calculate/can-bus/tables.test.ts).
 */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { type BusRequest, onBuses, spotsOf } from '../../../src/calculate/reserve/on-bus.js'
import type { BackboneElement, CanBus, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import {
  aBattery, aBus, aCable, aCableType, aCircuit, anEquipment, aPanel, aPoint, aProtection, aVessel, aWireway, aZone, mm2,
} from '../../support/vessel-builder.js'
import { aMessage, isolator } from '../can-bus/support.js'
import { changed } from './support.js'

const tee = (tag: string, zoneTag: string | null, deviceTag: string | null = null): BackboneElement =>
  ({ kind: 'tee', tag, zoneTag, deviceTag, dropCableTag: deviceTag === null ? null : `D-${deviceTag}`, deviceTerminal: null })
const terminator = (tag: string): BackboneElement => ({ kind: 'terminator', tag, zoneTag: null, resistanceOhm: null })
const insertion: BackboneElement = { kind: 'power', tag: 'X0', zoneTag: 'helm', circuitTag: 'F1', dropCableTag: null, supplyVoltageV: null }

/** R1, insertion and free tee X1 at the helm, 10 m of light cable, X2 with P2 of LEN 10 in the saloon, R2. */
const bus = (given: Partial<CanBus> = {}): CanBus => aBus({
  tag: 'N1', suppliesDevices: true, backbone: [terminator('R1'), insertion, tee('X1', 'helm'), { kind: 'segment', cableTag: 'W1' }, tee('X2', 'saloon', 'P2'), terminator('R2')], ...given,
})

/** saloon -4 m- helm -8 m- mast; tails of 0.5 m. The cable to the insertion loses next to nothing of 12 V. */
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  conditions: { ...aVessel().conditions, cableTailM: 0.5 },
  zones: [aZone({ tag: 'saloon' }), aZone({ tag: 'helm' }), aZone({ tag: 'mast' }), aZone({ tag: 'island' })],
  points: [aPoint({ tag: 'Q1', zoneTag: 'helm' })],
  wireways: [aWireway({ tag: 'C1', fromTag: 'saloon', toTag: 'helm', lengthM: 4 }), aWireway({ tag: 'C2', fromTag: 'helm', toTag: 'mast', lengthM: 8 })],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'helm' })],
  circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', protection: aProtection('blade fuse', 3), loadTags: ['X0'], designCurrentA: 3 })],
  cableTypes: [aCableType({ tag: 'thick', size: mm2(95) }), aCableType({ tag: 'light', use: 'can bus', busCable: 'light' })],
  cables: [
    aCable({ tag: 'W-G1', from: 'G1', to: 'F1', typeTag: 'thick', lengthM: 0.01 }), aCable({ tag: 'W-F1', from: 'F1', to: 'X0', typeTag: 'thick', lengthM: 0.01 }),
    aCable({ tag: 'W1', from: 'X1', to: 'X2', typeTag: 'light', carries: 'none', lengthM: 10 }), aCable({ tag: 'D-P2', from: 'X2', to: 'P2', typeTag: 'light', carries: 'none', lengthM: 1 }),
  ],
  equipment: [anEquipment({ tag: 'P2', zoneTag: 'saloon', loadEquivalencyNumber: 10, sends: [aMessage(126993)] })],
  canBuses: [bus()],
  ...given,
})

const answersOf = (vessel: Vessel, request: Partial<BusRequest> = {}) =>
  onBuses(vessel, bases.iso, calculate(vessel, bases.iso), { atTag: 'saloon', loadEquivalencyNumber: 4, sends: null, ...request })
const spotsFor = (...given: Parameters<typeof answersOf>) => answersOf(...given)[0]!.spots

describe('LEN 4 in the saloon', () => {
  const spots = spotsFor(boat())
  const [saloon, helm] = spots

  it('goes where the drop is shortest: 2 · 0.5 m in the saloon, 4 m + 2 · 0.5 m to the helm', () => {
    expect(spots.map(({ teeTags, how, atTeeTag, verdict, drop }) => ({ teeTags, how, atTeeTag, verdict, dropM: drop?.value, limitM: drop?.limit.value }))).toEqual([
      { teeTags: ['X2'], how: 'new tee', atTeeTag: 'X2', verdict: 'fits', dropM: 1, limitM: 6 },
      { teeTags: ['X1'], how: 'free tee', atTeeTag: 'X1', verdict: 'fits', dropM: 5, limitM: 6 },
    ])
  })

  // (1.5 V − 0.57 V) / (0.05 A · 1.14 Ω) = 16.3
  it('could be LEN 16 there, by the voltage drop to X2', () => {
    expect(saloon?.room).toMatchObject({ lenLeftNumber: 16, governed: { words: 'voltage drop to X2' } })
  })

  // Now 2 · 10 m · 0.057 Ω/m · 0.5 A = 0.57 V; with it 0.2 A over the same 1.14 Ω: 0.228 V more.
  it('takes the worst tee from 0.57 V to 0.798 V', () => {
    expect(saloon?.supply?.worst).toMatchObject({ beforeDropV: expect.closeTo(0.57, 9), sharedResistanceOhm: expect.closeTo(1.14, 9), drop: { value: expect.closeTo(0.798, 9), limit: { value: 1.5 }, within: true } })
    expect(saloon?.supply?.worst?.beforeVoltageV).toBeCloseTo(11.43, 4)
    expect(saloon?.supply?.worst?.afterVoltageV).toBeCloseTo(11.202, 4)
  })

  // The drop: 2 · 0.057 Ω/m · 1 m · 0.2 A = 0.0228 V.
  it('gets 11.202 V − 0.0228 V', () => {
    expect(saloon?.supply?.device).toMatchObject({ dropCable: { output: { voltageDropV: expect.closeTo(0.0228, 9) } }, lowest: { value: expect.closeTo(11.1792, 4) } })
  })

  // 48 of 50 devices, 78 m − 1 m − 1 m; (1.5 − 0.798) / 0.057 = 12.3.
  it('leaves 48 devices, 76 m of drops and LEN 12 beside it', () => {
    expect(saloon?.left).toMatchObject({ devicesLeft: 48, dropsLeftM: 76, lenLeftNumber: 12 })
    expect(saloon?.supply).toMatchObject({ beforeLenNumber: 10, afterLenNumber: 14, againstProtection: { value: expect.closeTo(0.7, 9), limit: { value: 3 } }, plannedCurrentA: null })
  })

  it('takes nothing from X2 where it shares no cable with it', () => {
    expect(helm?.supply?.worst).toMatchObject({ tag: 'X2', isNew: false, sharedResistanceOhm: 0, beforeDropV: expect.closeTo(0.57, 9), drop: { value: expect.closeTo(0.57, 9) } })
  })
})

it('finds LEN 17 too much in the saloon, and not at the helm', () => {
  // 0.57 V + 0.85 A · 1.14 Ω = 1.539 V
  expect(spotsFor(boat(), { loadEquivalencyNumber: 17 }).map(({ verdict, reasons }) => ({ verdict, reasons }))).toEqual([
    { verdict: 'does not fit', reasons: ['tee X2: voltage drop of 1.54\u00A0V, limit 1.50\u00A0V'] }, { verdict: 'fits', reasons: [] },
  ])
  expect(answersOf(boat(), { loadEquivalencyNumber: 17 })[0]?.verdict).toBe('fits')
  expect(spotsFor(boat(), { loadEquivalencyNumber: 16 })[0]?.verdict).toBe('fits')
})

it('blames no fault of the bus on a device that has no part in it', () => {
  // 2 · 10 m · 0.057 Ω/m · 1.5 A = 1.71 V before anything is added: at the helm that is not the fault of the new device.
  const overloaded = boat({ equipment: changed(boat().equipment, 'P2', { loadEquivalencyNumber: 30 }) })
  expect(spotsFor(overloaded).map(({ verdict }) => verdict)).toEqual(['does not fit', 'fits'])
})

it('is too far at the mast, where a longer backbone would do', () => {
  // Drop 8 m + 2 · 0.5 m; the backbone 10 m, and 1 m of the last drop, then twice 9 m more.
  const [nearest] = spotsFor(boat(), { atTag: 'mast' })
  expect(nearest).toMatchObject({
    verdict: 'does not fit', reasons: ['the drop would be 9.00\u00A0m (29.5\u00A0ft) long, limit 6.00\u00A0m (19.7\u00A0ft)'],
    longerBackbone: { nowM: 11, comparison: { value: 29, limit: { value: 100 }, within: true } },
  })
})

describe('what else stands against it', () => {
  const reasonsFor = (vessel: Vessel, request: Partial<BusRequest> = {}) => spotsFor(vessel, request)[0]!.reasons.join('; ').replaceAll('\u00A0', ' ')
  it('more than one device may take', () => expect(reasonsFor(boat(), { loadEquivalencyNumber: 21, atTag: 'helm' })).toContain('one device takes at most LEN 20 from the bus, this one 21'))
  it('the fuse', () => {
    const fused = boat({ circuits: changed(boat().circuits, 'F1', { protection: aProtection('blade fuse', 0.6) }) })
    expect(reasonsFor(fused)).toBe('current of all devices through F1: 0.7 A, limit 0.6 A')
  })
  it('the fuse, said once, where its circuit is planned for less', () => {
    const fused = boat({ circuits: changed(boat().circuits, 'F1', { protection: aProtection('blade fuse', 0.6), designCurrentA: 0.5 }) })
    expect(reasonsFor(fused)).toBe('current of all devices through F1: 0.7 A, limit 0.6 A')
  })
  it('a feeder above', () => {
    // G1 -F0 0.6 A- A9 -F1 3 A- X0: planned for 0.5 A, and 0.7 A with the device.
    const fed = boat({
      panels: [aPanel({ tag: 'A9', zoneTag: 'helm' })],
      circuits: [
        aCircuit({ tag: 'F0', fedFromTag: 'G1', protection: aProtection('blade fuse', 0.6), loadTags: ['A9'] }),
        { ...boat().circuits[0]!, fedFromTag: 'A9', designCurrentA: 0.5 },
      ],
    })
    expect(reasonsFor(fed)).toContain('elsewhere a limit would be passed: Circuit F0: design current 0.7 A, blade fuse rated 0.6 A')
  })
  it('more voltage than a device is made for', () => {
    const high = boat({ batteries: [aBattery({ tag: 'G1', zoneTag: 'helm', nominalVoltageV: 24 })] })
    expect(reasonsFor(high)).toBe('at X0, where it is fed: 24.00 V, limit 16.00 V')
  })
  it('a device on the other side, where the circuit loses more', () => {
    /**
     * 0.5 mm², class 5 tinned: 40.1 Ω/km at 20 °C (tests/reference/conductors-iec60228-class5.csv), at 105 °C · (1 + 0.00393 · 85) = 53.49 Ω/km.
     * 30 m out and back are 3.2096 Ω: 12 V − 0.5 A · 3.2096 Ω − 0.57 V − 0.057 V (drop of P2) = 9.77 V now; with 20 · 0.05 A more 6.56 V.
     */
    const thin = boat({
      cableTypes: [...boat().cableTypes, aCableType({ tag: 'thin', size: mm2(0.5) })],
      cables: changed(boat().cables, 'W-F1', { typeTag: 'thin', lengthM: 30 }),
      circuits: changed(boat().circuits, 'F1', { designCurrentA: 0.5 }),
    })
    expect(reasonsFor(thin, { atTag: 'helm', loadEquivalencyNumber: 20 })).toContain('at P2 arrive 6.56 V, limit 9.00 V')
  })
  it('the cable on the way, of the side that it hangs on', () => {
    const loaded = boat({ cables: changed(boat().cables, 'W1', { lengthM: 0.1 }), equipment: changed(boat().equipment, 'P2', { loadEquivalencyNumber: 58 }), circuits: changed(boat().circuits, 'F1', { protection: aProtection('blade fuse', 10), designCurrentA: 10 }) })
    expect(reasonsFor(loaded)).toBe('current in W1: 3.1 A, limit 3.0 A')
  })
  it('a bus with as many devices as it may have, and drops as long', () => {
    const tags = Array.from({ length: 50 }, (_, i) => `E${i + 1}`)
    const crowded = boat({
      canBuses: [bus({ backbone: [terminator('R1'), insertion, ...tags.map((tag, i) => tee(`Y${i}`, 'helm', tag)), terminator('R2')] })],
      equipment: tags.map(tag => anEquipment({ tag, zoneTag: 'helm', loadEquivalencyNumber: 1, sends: [aMessage(126993)] })),
      cables: [...boat().cables, ...tags.map(tag => aCable({ tag: `D-${tag}`, from: 'X0', to: tag, typeTag: 'light', carries: 'none', lengthM: 1.55 }))],
    })
    // 50 · 1.55 m + 2 · 0.5 m = 78.5 m
    expect(reasonsFor(crowded, { atTag: 'helm', loadEquivalencyNumber: 1 })).toBe('it would have 51 devices, limit 50; the drops together would be 78.50 m (257.5 ft) long, limit 78.00 m (255.9 ft)')
  })
  it('what it sends', () => {
    // 900 frames a second of 8 bytes are far more than half of 250 kbit/s.
    expect(reasonsFor(boat(), { sends: [aMessage(65290, { intervalMs: 10, payloadByteCount: 8, timesCount: 9 })] })).toContain('its load would be ')
  })
  it('a bus that feeds nobody', () => {
    expect(answersOf(boat({ canBuses: [bus({ suppliesDevices: false })] }))).toMatchObject([{ verdict: 'does not fit', spots: [], reasons: [expect.stringContaining('does not feed its devices')] }])
  })
})

describe('the circuit of the bus', () => {
  it('is reckoned with all that the devices take, where less is planned', () => {
    // 14 · 0.05 A = 0.7 A
    const planned = boat({ circuits: changed(boat().circuits, 'F1', { designCurrentA: 0.6 }) })
    expect(spotsFor(planned)[0]?.supply?.plannedCurrentA).toBe(0.6)
    expect(spotsFor(boat({ circuits: changed(boat().circuits, 'F1', { designCurrentA: 0.7 }) }))[0]?.supply?.plannedCurrentA).toBeNull()
  })
  it('passes no limit elsewhere unseen', () => {
    // 5 m of 0.5 mm² out and back carry 0.6 A with a drop below 3 % of a critical circuit, 1.5 A with more: 0.0164 · 1.5 · 10 / 0.5 = 0.492 V.
    const thin = boat({
      cableTypes: [...boat().cableTypes, aCableType({ tag: 'thin', size: mm2(0.5) })],
      cables: changed(boat().cables, 'W-F1', { typeTag: 'thin', lengthM: 5 }),
      circuits: changed(boat().circuits, 'F1', { designCurrentA: 0.6, loadClass: 'critical' }),
    })
    expect(spotsFor(thin, { atTag: 'helm', loadEquivalencyNumber: 20 })[0]).toMatchObject({ verdict: 'does not fit', reasons: [expect.stringContaining('elsewhere a limit would be passed')] })
    expect(spotsFor(thin, { atTag: 'helm', loadEquivalencyNumber: 1 })[0]?.verdict).toBe('fits')
  })
})

describe('does not take what is not known for a fit', () => {
  const first = (vessel: Vessel, request: Partial<BusRequest> = {}) => { const { verdict, reasons } = spotsFor(vessel, request)[0]!; return { verdict, reasons } }
  it('a load equivalency number', () => {
    const unknown = boat({ equipment: changed(boat().equipment, 'P2', { loadEquivalencyNumber: null }) })
    expect(first(unknown)).toEqual({ verdict: 'not assessed', reasons: ['no load equivalency number is recorded for P2'] })
  })
  it('the way to the tee', () => {
    expect(first(boat(), { atTag: 'island' })).toMatchObject({ verdict: 'not assessed', reasons: [expect.stringContaining('no wireways lead from')] })
    expect(first(boat({ canBuses: [bus({ backbone: bus().backbone.map(part => (part.kind === 'tee' ? { ...part, zoneTag: null } : part)) })] }))).toMatchObject({
      verdict: 'not assessed', reasons: [expect.stringContaining('no zone is recorded for X1')],
    })
  })
  it('a drop cable of what hangs there', () => {
    const bare = boat({ canBuses: [bus({ backbone: bus().backbone.map(part => (part.kind === 'tee' && part.deviceTag === 'P2' ? { ...part, dropCableTag: null } : part)) })] })
    expect(first(bare)).toEqual({ verdict: 'not assessed', reasons: ['no drop cable is recorded for P2'] })
  })
  it('a part that nothing feeds', () => {
    const cut = boat({ canBuses: [bus({ backbone: [terminator('R1'), insertion, isolator('I1'), tee('X1', 'helm'), terminator('R2')] })] })
    expect(first(cut)).toMatchObject({ verdict: 'not assessed', reasons: [expect.stringContaining('no power insertion')] })
  })
  it('a bus of which no tee is recorded, and a vessel without any', () => {
    expect(answersOf(boat({ canBuses: [bus({ backbone: [] })] }))).toMatchObject([{ verdict: 'not assessed', reasons: ['none of its tees is recorded'] }])
    expect(answersOf(boat({ canBuses: [] }))).toEqual([])
  })
})

describe('tees side by side', () => {
  const spots = (backbone: readonly BackboneElement[]) => {
    const vessel = boat({ canBuses: [bus({ backbone })] })
    return spotsOf(vessel, calculate(vessel, bases.iso).canBus.byBus.get('N1')!).map(({ teeTags, freeTeeTags, zoneTag }) => [teeTags.join(' '), freeTeeTags.join(' '), zoneTag])
  }
  it('are one place unless a cable, something else or a zone lies between', () => {
    expect(spots([tee('X1', 'helm'), tee('X2', 'helm', 'P2'), insertion, tee('X3', 'helm'), { kind: 'segment', cableTag: 'W1' }, tee('X4', 'helm'), tee('X5', 'saloon')])).toEqual([
      ['X1 X2', 'X1', 'helm'], ['X3', 'X3', 'helm'], ['X4', 'X4', 'helm'], ['X5', 'X5', 'saloon'],
    ])
  })
})
