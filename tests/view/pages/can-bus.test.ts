import { describe, expect, it } from 'vitest'
import { canBusPage } from '../../../src/view/pages/networks/can-bus.view.js'
import { spareCapacityPage } from '../../../src/view/pages/spare-capacity.view.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { aBus, aMeasurement, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aMessage, type Along, busBoat, isolator, power, resultsOf, terminator } from '../../calculate/can-bus/support.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const located = (vessel: Vessel) => resultsOf(vessel).findings.map(finding => ({ ...finding, at: null }))
const pageOf = (vessel: Vessel) => canBusPage(contextOf(vessel, { findings: located(vessel) }), vessel.canBuses[0]!)
/** Value of a fact by its label. */
const fact = (vessel: Vessel, label: string) => new RegExp(`^${label.replace('?', '\\?')} (.*)$`, 'm').exec(wordsOn(pageOf(vessel)))?.[1]

// 4 LEN at 10 m towards the first end, 4 and 2 LEN at 5 and 15 m towards the last.
const good = busBoat({
  along: ends('P1', 10, power('X0', { supplyVoltageV: 13 }), 5, 'P2', 10, 'P3', ''),
  devices: { P1: { len: 4, drop: 1, sends: [aMessage(129025)] }, P2: { len: 4, drop: 2, sends: [aMessage(129029)] }, P3: { len: 2, drop: 3, sends: [aMessage(129038)] } },
})

describe('the page of a CAN bus', () => {
  const page = pageOf(good)
  const rows = (id: string) => cellsOf(tableIn(page, id))

  it('says in plain words first how it stands, how it is fed and what room is left', () => {
    expect(fact(good, 'Within limits?')).toBe('within every limit below')
    expect(fact(good, 'Supply')).toBe('Middle-fed at X0, 13.00 V there: LEN 4 over 10.00 m towards the first end (LEN times distance 40), LEN 6 over 15.00 m towards the last end (LEN times distance 50). Both sides are about in balance.'.replace('X0, ', 'X0 by F1, '))
    expect(fact(good, 'Room left')).toBe('One more device of up to LEN 20 fits at every tee. Left: 47 devices, 72.00 m of drops, 48.9 % of the load. Free: X4.')
    expect(fact(good, 'Devices')).toBe('3, LEN 10 together (0.5 A)')
    expect(fact(good, 'Terminators')).toBe('R1, R2, one at each end; 60 Ω between the data wires with the bus off')
    expect(fact(good, 'Data')).toBe('0.9 % of its capacity in use, 1.1 % with every frame at its longest')
  })

  it('shows the sum of each stretch, to be redone by hand', () => {
    // 2 · 0.057 · 10 · 0.2 = 0.228; 2 · 0.057 · 5 · 0.3 = 0.171; 2 · 0.057 · 10 · 0.1 = 0.114.
    expect(rows('stretches-1').map(row => [row[0], row[1], row[2], row[4], row[5], row[6], row[7]])).toEqual([
      ['W1', 'X1', '4', '10 m', '0.057 Ω/m', '0.228 V', '0.228 V'], ['W2', 'X2', '6', '5 m', '0.057 Ω/m', '0.171 V', '0.171 V'], ['W3', 'X3', '2', '10 m', '0.057 Ω/m', '0.114 V', '0.285 V'],
    ])
    expect(wordsOn(page)).toContain('To X3, where most is lost: 0.171 V + 0.114 V = 0.285 V.')
    expect(workingsOf(page).map(({ title }) => title)).toEqual([
      'Room at X3: voltage drop to X3', 'Length of the backbone', 'Resistance between the data wires', 'Voltage drop of W3, the last cable before X3',
      'Voltage drop towards the first end by the guides', 'Voltage drop towards the last end by the guides', 'Load of the bus', 'PGN 129025 of P1',
    ])
  })

  it('shows what arrives at each tee and device', () => {
    expect(rows('tees-1').map(row => [row[0], row[1], row[3], row[4]])).toEqual([
      ['X1', '10.00 m', '12.77 V', 'P1 12.75 V limit at least 9.00 V within'], ['X2', '5.00 m', '12.83 V', 'P2 12.78 V limit at least 9.00 V within'],
      ['X3', '15.00 m', '12.72 V', 'P3 12.68 V limit at least 9.00 V within'], ['X4', '15.00 m', '12.72 V', '–'],
    ])
  })

  it('lists messages with what they count, those on an event with nothing', () => {
    expect(rows('messages')).toEqual([
      ['P1', '129025 Position, Rapid Update', '100 ms usual', '1 × 1 of 8 bytes', '160', '1600 bit/s'], ['P2', '129029 GNSS Position Data', '1000 ms usual', '1 × 7 of 43 bytes', '160', '1120 bit/s'],
      ['P3', '129038 AIS Class A Position Report', 'on event, counts nothing', '–', '–', '–'],
    ])
    expect(rows('device-load')).toEqual([['P1 Equipment P1', '10.00 1/s', '1600 bit/s', '0.5 %', '0.6 %'], ['P2 Equipment P2', '7.00 1/s', '1120 bit/s', '0.4 %', '0.4 %'], ['P3 Equipment P3', '0.00 1/s', '0 bit/s', '0.0 %', '0.0 %']])
  })

  it('puts tees that are alike in one row of the room', () => {
    expect(rows('room').map(row => row.slice(0, 3))).toEqual([['not recorded', 'X1', '20'], ['not recorded', 'X2', '20'], ['not recorded', 'X3, X4 free', '20']])
  })

  it('draws the backbone and says the same in words', () => {
    expect(page.blocks.filter(({ is }) => is === 'drawing')).toHaveLength(1)
    expect(wordsOn(page)).toContain('In physical order: terminator R1; tee X1 with P1 by D-P1; cable W1 10.00 m, power insertion X0 with F1; cable W2 5.00 m, tee X2 with P2 by D-P2; cable W3 10.00 m, tee X3 with P3 by D-P3; tee X4; terminator R2.')
  })

  it('leaves to the site what the drawing says too, and prints the drawing before the limits', () => {
    const ids = page.printed!.flatMap(block => (block.is === 'table' || block.is === 'drawing' ? [block.id] : []))
    expect(tablesOf(page).map(({ id }) => id)).toEqual(expect.arrayContaining(['drops', 'tees-1', 'messages', 'limits', 'stretches-1', 'device-load']))
    expect(ids.filter(id => ['drops', 'tees-1', 'messages'].includes(id))).toEqual([])
    expect(ids).toEqual(expect.arrayContaining(['stretches-1', 'device-load']))
    const drawing = page.printed!.findIndex(({ is }) => is === 'drawing')
    expect(drawing).toBeGreaterThan(0)
    expect(page.printed!.findIndex(block => block.is === 'table' && block.id === 'limits')).toBeGreaterThan(drawing)
  })
  it('keeps its tables narrow', () => {
    for (const block of page.blocks) if (block.is === 'table') expect([block.id, block.columns.length <= 8]).toEqual([block.id, true])
  })
})

describe('a CAN bus that is not in order', () => {
  it('says what is outside, first of all, and lists the findings', () => {
    const boat = busBoat({ along: [terminator('R1'), power('X0'), 30, 'P1', 'P2'], devices: { P1: { len: 10, drop: 7 }, P2: { len: 10, drop: 1 } } })
    expect(fact(boat, 'Within limits?')).toBe('outside longest drop, D-P1; terminators, one at each end; largest supply drop, to X1; lowest voltage, at P1')
    expect(fact(boat, 'Room left')).toContain('No further device fits.')
    expect(fact(boat, 'Supply')).toContain('End-fed at X0 by F1')
    expect(fact(boat, 'Terminators')).toContain('outside R1; one belongs at each end; 120 Ω between the data wires with the bus off')
    for (const id of ['CAN102', 'CAN105', 'CAN107', 'CAN108']) expect(wordsOn(pageOf(boat))).toContain(id)
  })
  it('says of a load that lies to one side which way the insertion should go', () => {
    expect(fact(busBoat({ along: ends('P1', 1, power('X0'), 10, 'P2'), devices: { P1: { len: 1, drop: 1 }, P2: { len: 5, drop: 1 } } }), 'Supply')).toContain('The load lies towards the last end: an insertion further that way would balance it.')
  })
  it('never passes what is not assessed', () => {
    const boat = busBoat({ along: ends(power('X0'), 1, 'P1'), devices: { P1: { len: null, drop: 1 } } })
    expect(fact(boat, 'Within limits?')).toBe('not assessed no load equivalency number is recorded for P1; what P1 sends is not recorded, so the load of N1 is the least that it can be')
    expect(fact(boat, 'Room left')).toContain('How much a new device may take is not assessed: no load equivalency number is recorded for P1.')
    expect(fact(boat, 'Data')).toBe('not assessed: what the devices send is not recorded')
    expect(cellsOf(tableIn(pageOf(boat), 'limits')).filter(row => row[1] === 'not assessed').map(([what]) => what)).toEqual(['Supply at X0', 'Load with every frame at its longest'])
  })
  it('in two parts is said to be split, and each part has its own tables', () => {
    const boat = busBoat({ along: ends(power('X0'), 1, 'P1', isolator('X9'), 1, 'P2', 1, power('X8', { supplyVoltageV: 13.8, circuitTag: null })), devices: { P1: { drop: 1 }, P2: { drop: 1 } } })
    expect(fact(boat, 'Supply')).toMatch(/^Split supply: 2 parts, parted by X9\. End-fed at X0 .* End-fed at X8, 13\.80 V there/)
    expect(cellsOf(tableIn(pageOf(boat), 'tees-2')).map(([tag]) => tag)).toEqual(['X2'])
  })
  it('names the zone of a free tee', () => {
    const boat = { ...good, canBuses: good.canBuses.map(bus => ({ ...bus, backbone: bus.backbone.map(part => (part.kind === 'tee' && part.tag === 'X4' ? { ...part, zoneTag: 'Z1' } : part)) })) }
    expect(fact(boat, 'Room left')).toContain('Free: X4 (Zone Z1).')
  })
  it('without supply through the backbone says so and asks for one', () => {
    const boat = busBoat({ along: ends('P1'), devices: { P1: { len: null, drop: 1, sends: [aMessage(61444)] } } })
    const engine = { ...boat, canBuses: boat.canBuses.map(bus => ({ ...bus, suppliesDevices: false, protocol: 'j1939' as const })) }
    expect(fact(engine, 'Supply')).toBe('The backbone carries data only: each device has its supply elsewhere.')
    expect(fact(engine, 'Room left')).toMatch(/^A new device needs a supply of its own\./)
    expect(fact(engine, 'Within limits?')).toBe('within every limit below')
  })
  it('tells by which devices it is joined to others, and what they pass on', () => {
    const tee = (tag: string, deviceTerminal: string) => ({ kind: 'tee' as const, tag, zoneTag: null, deviceTag: 'K1', dropCableTag: null, deviceTerminal })
    const joined = (protocol: 'nmea 2000' | 'j1939') => aVessel({
      equipment: [anEquipment({ tag: 'K1', forwards: [{ fromTerminal: 'b', toTerminal: 'a', only: ['127250', '130306'] }, { fromTerminal: 'a', toTerminal: 'b', only: null }] })],
      canBuses: [aBus({ tag: 'N1', backbone: [tee('X1', 'a')] }), aBus({ tag: 'N2', protocol, backbone: [tee('X2', 'b')] })],
    })
    expect(fact(joined('nmea 2000'), 'Joined by')).toBe('K1 to N2: brings PGN 127250 and 130306 here, passes all on')
    expect(fact(joined('j1939'), 'Joined by')).toBe('K1 to N2: a bus of another kind; what it sends on each is among the messages')
  })
  it('with nothing on it makes a page all the same', () => expect(() => wordsOn(pageOf(busBoat({ along: [] })))).not.toThrow())
  it('is not within limits where its cables are others than the backbone has', () => {
    const moved = { ...good, cables: good.cables.map(cable => (cable.tag === 'W1' ? { ...cable, from: { ...cable.from, tag: 'X3' } } : cable)) }
    expect(fact(moved, 'Within limits?')).toBe('doubtful its cables do not end where the backbone has them: see the findings')
  })
  it('says where the room at a tee is, and parts the row between two zones', () => {
    const boat = { ...good, canBuses: good.canBuses.map(bus => ({ ...bus, backbone: bus.backbone.map(part => (part.kind === 'tee' && part.tag === 'X4' ? { ...part, zoneTag: 'Z1' } : part)) })) }
    expect(cellsOf(tableIn(pageOf(boat), 'room')).map(row => row.slice(0, 2)).slice(2)).toEqual([['not recorded', 'X3'], ['Zone Z1', 'X4 free']])
  })
  it('prints what a voltage was reckoned from', () => {
    const onBattery = busBoat({ along: ends('P1', 10, power('X0'), 5, 'P2', 10, 'P3', ''), devices: { P1: { len: 4, drop: 1 }, P2: { len: 4, drop: 2 }, P3: { len: 2, drop: 3 } } })
    const calculated = (boat: Vessel, sourceVoltageV: number | null) =>
      cellsOf(tableIn(pageOf({ ...boat, measurements: [aMeasurement({ number: 'M1', subjectTag: 'N1', atTag: 'X2', voltageV: 13, sourceVoltageV })] }), 'bus-readings'))[0]![3]
    // 2 · 0.057 · 5 · 0.3 = 0.171 V lost up to X2; of the 12 V of a battery next to nothing before X0.
    expect(calculated(onBattery, 12.8)).toBe('12.63 V = 11.83 V + 12.8 V at the source − 12 V')
    expect(calculated(onBattery, null)).toBe('11.83 V for 12 V at the source: none was read there')
    // A regulated supply stays what it is.
    expect(calculated(good, 12.8)).toBe('12.83 V')
  })
  it('holds readings against the sums', () => {
    const boat = { ...good, measurements: [aMeasurement({ number: 'M1', subjectTag: 'N1', date: '2026-05-01', resistanceOhm: 120 })] }
    expect(cellsOf(tableIn(pageOf(boat), 'bus-readings'))).toEqual([['M1 2026-05-01', 'resistance between the data wires', '120 Ω', '60 Ω', 'differs one terminator is missing, or the backbone is open on the way to it']])
    const again = { ...boat, measurements: [...boat.measurements, aMeasurement({ number: 'M2', subjectTag: 'N1', date: '2026-06-01', resistanceOhm: 60 })] }
    expect(cellsOf(tableIn(pageOf(again), 'bus-readings')).map(cells => cells[4])).toEqual(['replaced by reading M2', 'agrees'])
  })
})

describe('room on the page of spare capacity', () => {
  it('is the sentence of the bus, with the tees that are left out', () => {
    // 1.5 − 2 · 0.057 · 25 · 0.45 = 0.2175 V over 2 · 0.057 · 25 = 2.85 Ω: LEN 1 at the far end; 0.2175 V over 0.57 Ω: LEN 7 at 5 m.
    const boat = busBoat({ along: ends(power('X0'), 5, '', 20, 'P1'), devices: { P1: { len: 9, drop: 1, sends: [aMessage(129025)] } } })
    expect(cellsOf(tableIn(spareCapacityPage(contextOf(boat)), 'bus-room'))).toEqual([
      ['N1 Bus N1', '1', 'One more device of LEN 4 fits at every tee but X2; up to LEN 1 fits there. Left: 49 devices, 77.00 m of drops, 49.4 % of the load. Free: X1.'],
    ])
  })
})
