/** Serial lines by hand: 4800 Bd carry 480 characters a second, 38 400 Bd 3840 (tests/reference/serial-sentences.csv for the lengths). */
import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import { sentenceTime } from '../../../src/calculate/serial/sentence-time.calc.js'
import type { SerialLine } from '../../../src/model/results/serial.js'
import { blankPort } from '../../../src/model/blank.js'
import type { Port, Sentence, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { formatterOf, usualSentence } from '../../../src/references/tables/serial-sentences.js'
import { referenceTable } from '../../support/reference-table.js'
import { anEquipment, anEnd, aSerialLink, aVessel } from '../../support/vessel-builder.js'

const port = (name: string, given: Partial<Port> = {}): Port => ({ ...blankPort(name, 'serial'), ...given })
const sentence = (formatter: string, lengthCharacterCount: number | null = null, ratePerS: number | null = null): Sentence => ({ formatter, lengthCharacterCount, ratePerS })
const resultsOf = (given: Partial<Vessel>) => calculate(aVessel(given), bases.iso).serial
const lineOf = (given: Partial<Vessel>, tag = 'S1'): SerialLine => resultsOf(given).byLink.get(tag)!
const usePercent = ({ use }: SerialLine) => (use.status === 'computed' ? use.output.lineUsePercent : use.reason)
const idsOf = (given: Partial<Vessel>) => resultsOf(given).findings.map(({ id }) => id).filter(id => id !== 'SER202')

const talker = anEquipment({ tag: 'B1', kind: 'gnss receiver', ports: [port('out', { direction: 'talks', baudRates: [4800, 38_400] })] })
const listener = anEquipment({ tag: 'P1', kind: 'display', ports: [port('in', { direction: 'listens', baudRates: [4800, 38_400] })] })
const oneLink = (sentences: readonly Sentence[], given: Parameters<typeof aSerialLink>[0] | object = {}): Partial<Vessel> =>
  ({ equipment: [talker, listener], serialLinks: [aSerialLink({ tag: 'S1', talker: 'B1:out', listeners: ['P1:in'], sentences, ...given })] })

describe('published example sentences', () => {
  const rows = referenceTable('serial-sentences')

  it.each(rows.map(row => [row['sentence']!, row] as const))('%s: its length is counted, its time on the line is 10 bits a character', (_, row) => {
    const length = row['example']!.length + 2
    expect(length).toBe(Number(row['chars_incl_crlf']))
    expect(sentenceTime({ lengthCharacterCount: length, ratePerS: 1, baudRateBaud: 4800 }).lineTimeMs).toBeCloseTo(Number(row['ms_at_4800']), 1)
    expect(sentenceTime({ lengthCharacterCount: length, ratePerS: 1, baudRateBaud: 38_400 }).lineTimeMs).toBeCloseTo(Number(row['ms_at_38400']), 2)
  })

  it.each(rows.map(row => [row['example']!.slice(0, 6), row] as const))('%s is in the table, as long as the longest example and as often as usual', (address, row) => {
    const lengths = rows.filter(({ example }) => example!.startsWith(address)).map(({ chars_incl_crlf }) => Number(chars_incl_crlf))
    expect(usualSentence(address)).toMatchObject({ lengthCharacterCount: Math.max(...lengths), ratePerS: row['typical_rate_hz'] === '' ? null : Number(row['typical_rate_hz']) })
  })

  it.each(rows.filter(row => row['load_pct_4800_at_typical_rate'] !== '').map(row => [row['sentence']!, row] as const))('%s takes of 4800 Bd what the table says', (_, row) => {
    const line = lineOf(oneLink([sentence(row['example']!.slice(1, 6), Number(row['chars_incl_crlf']))]))
    // The table rounds 9.375 to 9.38.
    expect(Math.abs(Number(usePercent(line)) - Number(row['load_pct_4800_at_typical_rate']))).toBeLessThan(0.0051)
  })
})

it('knows a sentence with and without its talker; what one maker calls his own is kept whole', () => {
  expect(['RMC', 'GPRMC', '$GPRMC', 'gnrmc', '!AIVDM', 'PGRMC', 'PABC'].map(formatterOf)).toEqual(['RMC', 'RMC', 'RMC', 'RMC', 'VDM', 'PGRMC', 'PABC'])
  expect(usualSentence('PGRMC')).toBeNull()
  expect(usualSentence('constructor')).toBeNull()
})

describe('how full a line is', () => {
  const position = [sentence('GPRMC', 70), sentence('GPGGA'), sentence('GPVTG'), sentence('GPZDA')]

  // 70 + 67 + 45 + 38 = 220 of 480 characters a second; 384 − 220 = 164, twice 82.
  it('sums characters a second, and tells what still fits', () => {
    const line = lineOf(oneLink(position))
    expect(usePercent(line)).toBeCloseTo(45.833, 3)
    expect(line.room).toMatchObject({ output: { morePerS: expect.closeTo(2, 9) } })
    expect(line.planned).toMatchObject({ within: true, limit: { value: 80 } })
  })

  // and 10 · 20 more: 420 of 480.
  it('is above the plan with a heading ten times a second', () => {
    expect(usePercent(lineOf(oneLink([...position, sentence('HEHDT')])))).toBeCloseTo(87.5, 9)
    expect(idsOf(oneLink([...position, sentence('HEHDT')]))).toEqual(['SER102'])
  })

  it('is within at 80 % and full at 100 %, both to the character', () => {
    expect(idsOf(oneLink([sentence('XXX', 64, 6)]))).toEqual([])
    expect(idsOf(oneLink([sentence('XXX', 64, 6.01)]))).toEqual(['SER102'])
    expect(idsOf(oneLink([sentence('XXX', 80, 6)]))).toEqual(['SER102'])
    expect(idsOf(oneLink([sentence('XXX', 80, 6.01)]))).toEqual(['SER101'])
  })

  it('60 AIS reports a second are 76.6 % of 38 400 Bd', () => {
    const line = lineOf(oneLink([sentence('AIVDM', null, 60)], { standard: 'iec 61162-2', baudRateBaud: 38_400 }))
    expect(usePercent(line)).toBeCloseTo(76.5625, 9)
  })

  it('is not assessed while a sentence is not known, and lost all the same when the others are too many', () => {
    const unknown = lineOf(oneLink([sentence('GPRMC', 70), sentence('PXYZ1')]))
    expect(unknown).toMatchObject({ planned: null, room: null, missing: ['no length and rate of PXYZ1 is recorded, and none is usual'] })
    expect(resultsOf(oneLink([sentence('AIVDM')])).notAssessed.map(({ reason }) => reason)).toEqual(['how full the line is: no rate of AIVDM is recorded, and none is usual'])
    expect(idsOf(oneLink([sentence('HCHDG', null, 20), sentence('PXYZ1')]))).toEqual(['SER101'])
  })

  it('is said of ends that are missing or of which too little is recorded', () => {
    const reasons = (given: Partial<Vessel>) => resultsOf({ ...oneLink([sentence('RMC')]), ...given }).notAssessed.map(({ reason }) => reason)
    expect(reasons({})).toEqual([])
    expect(reasons({ equipment: [anEquipment({ ...talker, ports: [port('out', { direction: 'talks' })] }), listener] })).toEqual(['whether its ends can have its rate: the rates of B1:out are not recorded'])
    expect(reasons({ equipment: [talker, anEquipment({ ...listener, ports: [port('in', { baudRates: [4800] })] })] })).toEqual(['whether its ends talk and listen as entered: the direction of P1:in is not recorded'])
    expect(reasons({ equipment: [talker, anEquipment({ ...listener, status: 'removed' })] })).toEqual(['who listens: no listener on board is recorded'])
    expect(reasons({ equipment: [anEquipment({ ...talker, status: 'removed' }), listener] })).toEqual(['everything on it: its talker B1 is recorded as removed'])
  })

  it('is not assessed without a rate or a sentence', () => {
    expect(lineOf(oneLink([sentence('RMC')], { standard: 'other', baudRateBaud: null })).missing).toEqual(['the rate of the line is not recorded'])
    expect(lineOf(oneLink([])).missing).toEqual(['no sentence is recorded'])
  })
})

it('survives figures that make no sum', () => {
  expect(lineOf(oneLink([sentence('RMC', 0, 1)])).missing).toEqual(['RMC: the rate of the line or the length of the sentence is not above zero'])
  expect(usePercent(lineOf(oneLink([sentence('RMC', 70, 0)])))).toBe(0)
  expect(lineOf(oneLink([sentence('RMC')], { baudRateBaud: 0 })).planned).toBeNull()
  expect(lineOf({ serialLinks: [aSerialLink({ tag: 'S1', talker: 'X9', listeners: [] })] }).listeners).toEqual([])
})

describe('a multiplexer', () => {
  const mux = anEquipment({
    tag: 'K1', kind: 'serial multiplexer', ports: [port('a'), port('b'), port('out')],
    forwards: [{ fromTerminal: 'a', toTerminal: 'out', only: null }, { fromTerminal: 'b', toTerminal: 'out', only: ['HDT'] }],
  })
  const boat = (given: Partial<Vessel> = {}): Partial<Vessel> => ({
    equipment: [talker, listener, mux, anEquipment({ tag: 'B2', ports: [port('out', { direction: 'talks', baudRates: [4800, 38_400] })] })],
    serialLinks: [
      aSerialLink({ tag: 'S1', talker: 'B1:out', listeners: ['K1:a'], sentences: [sentence('RMC', 70), sentence('GGA')] }),
      aSerialLink({ tag: 'S2', talker: 'B2:out', listeners: ['K1:b'], sentences: [sentence('HEHDT'), sentence('HCHDG', null, 1)] }),
      aSerialLink({ tag: 'S3', talker: 'K1:out', listeners: ['P1:in'] }),
    ],
    ...given,
  })

  // 70 + 67 from the first, 10 · 20 from the second, whose HDG does not pass: 337 of 480.
  it('sends on what it gets, filters applied', () => {
    const line = lineOf(boat(), 'S3')
    expect(line.sentences.map(({ formatter, fromLinkTag }) => [formatter, fromLinkTag])).toEqual([['RMC', 'S1'], ['GGA', 'S1'], ['HEHDT', 'S2']])
    expect(usePercent(line)).toBeCloseTo((100 * 337) / 480, 9)
    expect(line.sentencesFrom).toBe('forwarded')
  })

  it('has a line of its own where its sentences are recorded', () => {
    const [first, second, third] = boat().serialLinks!
    expect(usePercent(lineOf(boat({ serialLinks: [first!, second!, { ...third!, sentences: [sentence('HDT', 48, 1)] }] }), 'S3'))).toBeCloseTo(10, 9)
  })

  it('is not assessed where what it gets is not known: an input without a link, a bus', () => {
    const [first, , third] = boat().serialLinks!
    expect(lineOf(boat({ serialLinks: [first!, third!] }), 'S3').missing).toEqual(['what K1 gets at its connector b is not known'])
  })

  it('gets nothing from a talker that is removed', () => {
    const removed = boat({ equipment: boat().equipment!.map(item => (item.tag === 'B2' ? { ...item, status: 'removed' as const } : item)) })
    expect(resultsOf(removed).byLink.has('S2')).toBe(false)
    expect(lineOf(removed, 'S3').missing).toEqual(['what K1 gets at its connector b is not known'])
  })

  it('in a ring with another ends, and is told of once', () => {
    const passing = (tag: string) => anEquipment({ tag, ports: [port('in'), port('wind'), port('out')], forwards: ['in', 'wind'].map(fromTerminal => ({ fromTerminal, toTerminal: 'out', only: null })) })
    const ring: Partial<Vessel> = {
      equipment: [passing('K1'), passing('K2'), passing('K3'), talker],
      serialLinks: [
        aSerialLink({ tag: 'S1', talker: 'B1:out', listeners: ['K1:wind'], sentences: [sentence('MWV')] }),
        aSerialLink({ tag: 'S2', talker: 'K1:out', listeners: ['K2:in'] }), aSerialLink({ tag: 'S3', talker: 'K2:out', listeners: ['K3:in'] }),
        aSerialLink({ tag: 'S4', talker: 'K3:out', listeners: ['K1:in'] }),
      ],
    }
    expect(resultsOf(ring).findings.filter(({ id }) => id === 'SER110').map(({ subject, message }) => [subject.id, message]))
      .toEqual([['S2', 'Link S2: what is sent on it comes back to it by S3 and S4']])
    expect(lineOf(ring, 'S4').sentences.map(({ formatter }) => formatter)).toEqual(['MWV'])
  })
})

describe('what a talker drives', () => {
  const listeners = (count: number, currentA: number | null = null): Partial<Vessel> => ({
    equipment: [talker, anEquipment({ tag: 'P1', ports: Array.from({ length: count }, (_, i) => port(`${i}`, { signalCurrentA: currentA })) })],
    serialLinks: [aSerialLink({ tag: 'S1', talker: 'B1:out', listeners: Array.from({ length: count }, (_, i) => `P1:${i}`), sentences: [sentence('DPT')] })],
  })

  // 15 mA for 2 mA each, both from memory of IEC 61162-1: seven.
  it('seven listeners by the standard, not eight', () => {
    expect(idsOf(listeners(7))).toEqual([])
    expect(lineOf(listeners(5)).drive).toMatchObject({ reserve: { output: { moreListenersCount: 2 } } })
    expect(idsOf(listeners(8))).toEqual(['SER104'])
  })

  it('by what the makers state, where that is recorded', () => {
    expect(idsOf(listeners(8, 0.0015))).toEqual([])
    const weak = { ...listeners(4), equipment: [anEquipment({ tag: 'B1', ports: [port('out', { signalCurrentA: 0.006 })] }), listeners(4).equipment![1]!] }
    expect(idsOf(weak)).toEqual(['SER104'])
  })

  it('over all links that start at its connector', () => {
    const { equipment, serialLinks } = listeners(8)
    const [link] = serialLinks!
    const halves = [{ ...link!, listeners: link!.listeners.slice(0, 4) }, { ...link!, tag: 'S2', listeners: link!.listeners.slice(4) }]
    expect(resultsOf({ equipment: equipment!, serialLinks: halves }).findings.filter(({ id }) => id === 'SER104').map(({ subject }) => subject.id)).toEqual(['S1'])
  })

  it('is left open for another standard without a recorded current', () => {
    expect(lineOf(oneLink([sentence('DPT')], { standard: 'other' })).drive).toBeNull()
  })
})

describe('wires', () => {
  const wire = (signal: string, from: string, to: string, core: string | null = null) => ({ signal, from: anEnd(from), to: anEnd(to), cableTag: core === null ? null : 'W1', core })
  const block = anEquipment({ tag: 'X1', kind: 'terminal block' })
  const wired = (wires: readonly ReturnType<typeof wire>[]): Partial<Vessel> => ({ ...oneLink([sentence('DPT')], { wires }), equipment: [talker, listener, block] })
  const missing = (wires: readonly ReturnType<typeof wire>[]) => lineOf(wired(wires)).wiring[0]!.missingSignals

  it('lead by way of a terminal block', () => {
    expect(missing([wire('A (signal +)', 'B1:1', 'X1:1'), wire('a', 'X1:1', 'P1:1'), wire('B', 'B1:2', 'P1:2')])).toEqual([])
    expect(missing([wire('A', 'B1:1', 'X1:1'), wire('B', 'B1:2', 'P1:2')])).toEqual(['A'])
    expect(missing([wire('AUX', 'B1:1', 'P1:1'), wire('B', 'B1:2', 'P1:2')])).toEqual(['A'])
  })

  it('use a core once', () => {
    expect(idsOf(wired([wire('A', 'B1:1', 'P1:1', 'red'), wire('B', 'B1:2', 'P1:2', 'red')]))).toEqual(['SER304'])
    expect(idsOf(wired([wire('A', 'B1:1', 'P1:1', 'red'), wire('B', 'B1:2', 'P1:2', 'blue')]))).toEqual([])
  })
})

it('an end that names no connector means the only serial one', () => {
  const mux = anEquipment({ tag: 'P1', kind: 'display', ports: [port('in', { baudRates: [9600] }), blankPort('power', 'power')] })
  expect(idsOf({ ...oneLink([sentence('DPT')], { listeners: [{ tag: 'P1', terminal: null }].map(({ tag }) => tag) }), equipment: [talker, mux] })).toContain('SER107')
})
