import { describe, expect, it } from 'vitest'
import { acSupplyPages } from '../../../src/view/pages/ac-supply/ac-supply.view.js'
import { acOutput, acSource, breaker, cable, shoreBoat } from '../../calculate/ac-supply/support.js'
import { aCable, aCableType, aCircuit, aDuty, aMode, aVessel } from '../../support/vessel-builder.js'
import { contextOf, tablesOf, wordsOn } from './support.js'

const pageOf = (vessel: Parameters<typeof contextOf>[0]) => acSupplyPages(contextOf(vessel))[0]!
const rowsOf = (vessel: Parameters<typeof contextOf>[0], id: string) => tablesOf(pageOf(vessel)).find(table => table.id === id)!.rows

const vessel = shoreBoat({
  operatingModes: [aMode({ tag: 'harbour', name: 'In harbour' })],
  duties: [aDuty({ modeTag: 'harbour', itemTag: 'E1', periods: [{ fromH: 7, toH: 7.5 }] }), aDuty({ modeTag: 'harbour', itemTag: 'A1.2', periods: [{ fromH: 7, toH: 9 }] })],
  equipment: [acSource('G2', 'generator', { name: 'Generator' })],
  circuits: [aCircuit({ tag: 'F2', fedFromTag: 'G2', loadTags: ['A1'], protection: breaker(16), normalState: 'open', interlockTag: 'R1' })],
  cables: [cable('W5', 'G2', 'F2'), cable('W6', 'F2', 'A1')],
})

describe('a vessel without mains voltage', () => {
  it('is told so in one line', () => {
    const page = pageOf(aVessel())
    expect([page.lead, page.blocks]).toEqual([['No mains voltage (a.c.) is recorded on this vessel.'], []])
  })
  it('but with a.c. cables is warned all the same', () => {
    const page = pageOf(aVessel({ cableTypes: [aCableType({ tag: 'AC', use: 'ac power' })], cables: [aCable({ tag: 'W1', from: 'X1', to: 'K1', typeTag: 'AC' })] }))
    expect(wordsOn(page)).toContain('nothing about them is assessed')
    expect(page.blocks.some(block => block.is === 'callout' && block.signal === 'DANGER')).toBe(true)
  })
})

describe('the page', () => {
  it('begins with the cautions, the worst first, and defers to licensed persons', () => {
    const [first] = pageOf(vessel).blocks
    expect(first).toMatchObject({ is: 'callout', signal: 'DANGER' })
    const words = wordsOn(pageOf(vessel))
    for (const hazard of ['batter', 'shore plug', 'generator', 'start by itself', 'Capacitors', 'swims', 'licensed']) expect(words).toContain(hazard)
  })

  // 230 V · 16 A = 3680 VA, of which 80 % are 2944 VA.
  it('says what each source gives', () => {
    const words = wordsOn(pageOf(vessel))
    expect(words).toMatch(/X1.*Shore inlet \| 230 V \| 50 Hz \| 16 A \| 3680 VA/)
    expect(words).toContain('2944 VA')
  })

  it('says in words how the sources are switched, and what keeps them apart', () => {
    const words = wordsOn(pageOf(vessel))
    expect(words).toMatch(/A1 Panel A1 is normally fed from X1 .*; it can be switched to G2 Generator\./)
    expect(words).toContain('nothing keeps F1 and F2 from being closed together')
  })

  it('orders the steps of connecting: on board first, then ashore; and the other way round', () => {
    const words = wordsOn(pageOf(vessel))
    const at = ['To connect', 'Main shore breaker on board off', 'Plug in on board first, then ashore', 'Main shore breaker on.', 'To disconnect', 'unplug there first'].map(step => words.indexOf(step))
    expect(at.every(position => position >= 0)).toBe(true)
    expect(at).toEqual(at.toSorted((a, b) => a - b))
  })

  // 2000 VA + 5 A · 230 V = 3150 VA; / 230 V = 13.70 A; margin 16 − 13.70 A.
  it('gives the sum of each mode with its parts, so that it can be redone', () => {
    expect(rowsOf(vessel, 'ac-loads-x1')).toHaveLength(2)
    const words = wordsOn(pageOf(vessel))
    expect(words).toMatch(/In harbour \| 07:00–07:30 \| 13\.7 A limit at most 16\.0 A within \| 2\.3 A/)
    expect(words).toContain('Sum 3150 VA; divided by 230 V: 13.7 A')
    expect(words).toMatch(/E1 Kettle \| 8\.69565 A \| 100 % \| 0\.5 h \| 0\.1812 A/)
  })

  it('says of all loads at once what they draw, and does not judge it', () => {
    const small = shoreBoat({ inlet: { outputs: [acOutput({ ratedCurrentA: 10 })] } })
    expect(wordsOn(pageOf(small))).toContain('All connected | – | 13.7 A, more than it gives | –')
    expect(rowsOf(small, 'ac-loads-x1').map(({ level }) => level)).toEqual([null])
  })

  it('marks what is missed in the row of the breaker', () => {
    const far = shoreBoat({ main: { protection: breaker(20, { distanceM: 5 }) } })
    const [row] = rowsOf(far, 'shore-main-breakers')
    expect(row!.level).toBe('error')
    const words = wordsOn(pageOf(far))
    expect(words).toContain('missed 5.00 m of conductor, limit at most 3.00 m')
    expect(words).toContain('missed rated 20 A, limit at most 16.0 A')
  })

  // UL 943: 6 mA 5.59 s, 30 mA 0.56 s, 264 mA 25 ms; IEC 61008: 300, 150, 40 ms. Both from memory.
  it('prints the trip times of the product standards', () => {
    const cells = rowsOf(vessel, 'trip-times').map(({ cells: row }) => row.map(([text]) => text))
    expect(cells).toEqual([
      ['6\u00A0mA', '5594\u00A0ms', 'need not trip'], ['30\u00A0mA', '560\u00A0ms', '300\u00A0ms'], ['60\u00A0mA', '208\u00A0ms', '150\u00A0ms'],
      ['150\u00A0mA', '56\u00A0ms', '40\u00A0ms'], ['264\u00A0mA', '25\u00A0ms', '40\u00A0ms'],
    ])
  })

  it('lists what is not assessed, and never as met', () => {
    const silent = shoreBoat({ inlet: { outputs: [acOutput({ neutralBonded: null, ratedCurrentA: null })] } })
    const words = wordsOn(pageOf(silent))
    expect(words).toContain('joint of neutral and protective conductor: whether neutral and protective conductor are joined there is not recorded')
    expect(words).toContain('not assessed the rated current of X1 is not recorded')
  })

  it('keeps its tables narrow and names each once', () => {
    const tables = tablesOf(pageOf(vessel))
    expect(tables.filter(({ columns }) => columns.length > 7).map(({ id }) => id)).toEqual([])
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length)
  })
})
