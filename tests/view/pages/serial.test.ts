import { describe, expect, it } from 'vitest'
import { blankPort } from '../../../src/model/blank.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { spareCapacityPage } from '../../../src/view/pages/spare-capacity.view.js'
import { serialPage, serialWireSchedule } from '../../../src/view/pages/networks/serial.view.js'
import { anEnd, anEquipment, aSerialLink, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const port = (name: string) => blankPort(name, 'serial')
const boat = (given: Partial<Vessel> = {}): Vessel => aVessel({
  equipment: [
    anEquipment({ tag: 'B1', name: 'Receiver', ports: [port('out')] }), anEquipment({ tag: 'P1', name: 'Display', ports: [port('in')] }),
    anEquipment({ tag: 'K1', name: 'Multiplexer', ports: [port('a'), port('out')], forwards: [{ fromTerminal: 'a', toTerminal: 'out', only: null }] }),
  ],
  serialLinks: [
    aSerialLink({
      tag: 'S1', talker: 'B1:out', listeners: ['K1:a'],
      sentences: [['GPRMC', 70], ['GPGGA', null], ['GPVTG', null], ['GPZDA', null]].map(([formatter, length]) => ({ formatter: formatter as string, lengthCharacterCount: length as number | null, ratePerS: null })),
      wires: [
        { signal: 'A', from: anEnd('B1:1'), to: anEnd('K1:3'), cableTag: 'W1', core: 'white' },
        { signal: 'B', from: anEnd('B1:2'), to: anEnd('K1:4'), cableTag: 'W1', core: null },
      ],
    }),
    aSerialLink({ tag: 'S2', talker: 'K1:out', listeners: ['P1:in'] }),
  ],
  ...given,
})
const pageOf = (tag: string, vessel = boat()) => serialPage(contextOf(vessel), vessel.serialLinks.find(link => link.tag === tag)!)

describe('page of a serial link', () => {
  it('says in plain words who talks, how full the line is and what still fits', () => {
    expect(wordsOn(pageOf('S1'))).toContain(
      'B1 Receiver talks; K1 Multiplexer listens. What it sends takes 45.8 % of the line. What still fits, with the line 80 % full: one more sentence of 82 characters, the longest there is, 2 times a second.')
  })

  it('lists the sentences with their sum, and marks what is as usual', () => {
    expect(cellsOf(tableIn(pageOf('S1'), 'sentences')).map(row => row.slice(1))).toEqual([
      ['70', '1*', '70', '14.6 %'], ['67*', '1*', '67', '14.0 %'], ['45*', '1*', '45', '9.4 %'], ['38*', '1*', '38', '7.9 %'], ['–', '–', '220', '45.8 %'],
    ])
  })

  it('says of what is passed on where it comes from', () => {
    expect(cellsOf(tableIn(pageOf('S2'), 'sentences'))[0]?.slice(0, 3)).toEqual(['GPRMC position, course, speed, time', 'S1', '70'])
  })

  it('lists the wires of each listener, terminal by terminal', () => {
    expect(cellsOf(tableIn(pageOf('S1'), 'wires-k1-a'))).toEqual([['A', 'B1 1', 'W1 white', 'K1 3'], ['B', 'B1 2', 'W1', 'K1 4']])
    expect(wordsOn(pageOf('S2'))).toContain('Wires. not recorded.')
  })

  it('shows how to redo each figure, and keeps its tables narrow', () => {
    expect(workingsOf(pageOf('S1')).map(({ title }) => title)).toEqual([
      'How full the line is', 'The sentence that takes most of it, GPRMC', 'Room for one more sentence', 'Listeners that the talker can still drive',
    ])
    for (const { columns } of tablesOf(pageOf('S2'))) expect(columns.length).toBeLessThanOrEqual(6)
  })

  it('gives no figure where something is missing', () => {
    const { serialLinks } = boat()
    const words = wordsOn(pageOf('S1', boat({ serialLinks: [{ ...serialLinks[0]!, sentences: [{ formatter: 'AIVDM', lengthCharacterCount: null, ratePerS: null }] }] })))
    expect(words).toContain('Line in use not assessed no rate of AIVDM is recorded, and none is usual')
    expect(words).not.toContain('What still fits')
  })

  // 384 − 219 is 2.012 times 82; 384 − 380 a twentieth of it.
  it.each([[219, '2 times a second.'], [142, '2.9 times a second.'], [380, 'less than once in 10 s.'], [384, 'Nothing more should be put on it.']])('%i characters a second leave room for one more sentence %s', (length, words) => {
    const { serialLinks } = boat()
    const full = boat({ serialLinks: [{ ...serialLinks[0]!, standard: 'other', sentences: [{ formatter: 'PXYZ', lengthCharacterCount: length, ratePerS: 1 }] }] })
    expect(wordsOn(pageOf('S1', full))).toContain(words)
  })

  it('is in the record wire by wire, for machines', () => {
    expect(serialWireSchedule(contextOf(boat())).rows).toEqual([['S1', 'A', 'B1', '1', 'W1', 'white', 'K1', '3'], ['S1', 'B', 'B1', '2', 'W1', '', 'K1', '4']])
  })

  it('stands with the spare capacity: what still fits, and how many may still listen', () => {
    // 220 of 384 characters a second are taken: twice 82 left. 15 mA less 2 mA: six more listeners at 2 mA.
    expect(cellsOf(tableIn(spareCapacityPage(contextOf(boat())), 'serial-room'))).toEqual([
      ['S1 Link S1', 'B1 Receiver out: 4800 Bd, GPRMC, GPGGA, GPVTG, GPZDA', '45.8 % limit at most 80.0 % within', '2 times a second', '6'],
      ['S2 Link S2', 'K1 Multiplexer out: 4800 Bd, GPRMC, GPGGA, GPVTG, GPZDA', '45.8 % limit at most 80.0 % within', '2 times a second', '6'],
    ])
  })

  it('of a talker that is removed says so', () => {
    const removed = boat({ equipment: boat().equipment.map(item => (item.tag === 'B1' ? { ...item, status: 'removed' as const } : item)) })
    expect(wordsOn(pageOf('S1', removed))).toContain('The talker B1 Receiver is removed: nothing is sent on this link.')
  })
})
