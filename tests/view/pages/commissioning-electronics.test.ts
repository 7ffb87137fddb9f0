/** What commissioning and its sheets say of networks, radio and lights. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { commissioningPages } from '../../../src/view/pages/commissioning/commissioning.view.js'
import { testSheetPages } from '../../../src/view/pages/workshop/test-sheets.view.js'
import type { Page } from '../../../src/view/view-model.js'
import { type Along, aMessage, busBoat, power, terminator } from '../../calculate/can-bus/support.js'
import { type GivenReading, readingsOf } from '../../calculate/commissioning/support.js'
import { aDevice, aSwitch, link, networkVessel } from '../../calculate/ethernet/support.js'
import { aBoat, aLight } from '../../calculate/placement/support.js'
import { coax, radio, radioBoat, stated } from '../../calculate/radio/support.js'
import { anEquipment, aSerialLink, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, tablesOf, wordsOn } from './support.js'

/** Readings and sheets as one. */
function pageOf(vessel: Vessel, ...readings: readonly GivenReading[]): Page {
  const context = contextOf({ ...vessel, measurements: readingsOf(readings) })
  const [measured, sheets] = [commissioningPages(context)[0]!, testSheetPages(context)[0]]
  return { ...measured, blocks: [...measured.blocks, ...sheets?.blocks ?? []] }
}
const sheetIds = (page: Page) => tablesOf(page).filter(({ forPen }) => forPen === true).map(({ id }) => id)
const ends = (...parts: Along[]): Along[] => [terminator('R1'), ...parts, terminator('R2')]
const bus = busBoat({
  along: ends(power('X0', { supplyVoltageV: 13 }), 10, 'P1', 'P2'),
  devices: { P1: { len: 4, drop: 1, sends: [aMessage(129025)] }, P2: { len: 4, drop: 1, sends: [aMessage(126993)] } },
})

describe('a bus', () => {
  it('has a sheet with what to expect, and one of its devices to tick', () => {
    const page = pageOf(bus)
    // 13 − 2 · 0.057 · 10 · 0.4 = 12.544 V at the last tees; the load as in the tests of the bus
    expect(cellsOf(tableIn(page, 'sheet-buses'))).toEqual([['N1 Bus N1', '60 Ω 13.00 V at X0, 12.54 V at X1 load 0.5 % to 0.6 %', '', 'at X0 at X1', '', 'date initials, no.']])
    expect(cellsOf(tableIn(page, 'trial-networks'))).toEqual([['N1 Bus N1', '2 devices: ☐ P1 Equipment P1 ☐ P2 Equipment P2', 'devices seen', 'date initials, no.']])
    expect(wordsOn(page)).toContain('CAN buses 0 of 1 completely measured 1 not yet')
    expect(wordsOn(page)).toMatch(/\*\*CAN bus\*\*/)
    expect(wordsOn(page)).not.toMatch(/\*\*Transmitter\*\*/)
  })
  it('says what is not known', () => {
    const page = pageOf(busBoat({ along: ['P1', 'P2'], devices: { P1: { drop: 1 } } }))
    expect(cellsOf(tableIn(page, 'sheet-buses'))[0]![1]).toBe('resistance not known: no terminator is recorded voltage not known: no power insertion is recorded for the part with P1 load at least 0.0 %')
  })
  it('has what is read in the sheet until all is read', () => {
    const some = pageOf(bus, { subjectTag: 'N1', resistanceOhm: 60.4 }, { subjectTag: 'N1', atTag: 'X1', voltageV: 12.5 })
    expect(cellsOf(tableIn(some, 'sheet-buses'))[0]!.slice(2)).toEqual(['60.4 Ω (reading 1)', '12.50 V at X1 (reading 2)', '', 'date initials, no.'])
    const all = pageOf(bus, { subjectTag: 'N1', resistanceOhm: 60.4, busLoadPercent: 1 }, { subjectTag: 'N1', atTag: 'X1', voltageV: 12.5 })
    expect(sheetIds(all)).not.toContain('sheet-buses')
    expect(wordsOn(all)).toContain('CAN buses 1 of 1 completely measured')
  })
  it('has its readings beside the others, explained', () => {
    const page = pageOf(bus, { subjectTag: 'N1', date: '2026-05-01', resistanceOhm: 120 }, { subjectTag: 'N1', voltageV: 12.5 })
    expect(cellsOf(tableIn(page, 'measured-resistance-between-data-wires'))).toEqual([['1 2026-05-01', 'N1 Bus N1', '120 Ω', '60 Ω', 'at least 54 Ω (66 Ω left) at most 66 Ω (54 Ω missed)', 'outside tolerance']])
    expect(cellsOf(tableIn(page, 'meanings'))[0]).toEqual(['1', 'resistance between data wires too high, N1', expect.stringMatching(/^one terminator is missing/), expect.stringMatching(/^Find the terminator/)])
    expect(cellsOf(tableIn(page, 'measured-not-assessed'))).toEqual([['2', 'N1 Bus N1', 'voltage on a bus', 'the reading does not say at which tee or device it was taken']])
    expect(wordsOn(page)).toContain('Values read 2: 0 within, 0 outside a limit, 1 outside tolerance, 1 not or not wholly assessed')
  })
})

describe('a radio', () => {
  const boat = radioBoat({}, { vswrFactor: 1.5 })
  it('has a sheet with what may be read at its connector', () => {
    // 1.5 dB: Γ 0.2 · 10^(−0.15) = 0.14159; 1.14159/0.85841 = 1.330
    expect(cellsOf(tableIn(pageOf(boat), 'sheet-transmitters'))).toEqual([['T1 Equipment T1 VHF voice, at antenna', 'VSWR at most 1.330 T11 at most 1.500, 1.50 dB before it 25.0 W at 156.800 MHz', '', '', 'date initials, no.']])
    expect(wordsOn(pageOf(boat))).toContain('Radio transmitters 0 of 1 completely measured')
    expect(cellsOf(tableIn(pageOf({ ...boat, cableTypes: [{ ...stated, coax: null }] }), 'sheet-transmitters'))[0]![1]).toContain('VSWR not known: the loss of the cable is not known')
  })
  it('once read has a verdict and no sheet', () => {
    const page = pageOf({ ...boat, cables: [coax('W1', 'T1:antenna', 'T11:coax', { lengthM: 25 })] }, { subjectTag: 'T1', vswrFactor: 1.4 })
    expect(cellsOf(tableIn(page, 'measured-standing-wave-ratio'))).toEqual([['1', 'T1 Equipment T1', '1.400', 'at most 1.223 (0.177 missed)', 'outside limit']])
    expect(sheetIds(page)).not.toContain('sheet-transmitters')
    expect(wordsOn(page)).toContain('Everything has been measured.')
  })
  it('is tried by a call that is no distress call, and the page warns before', () => {
    const page = pageOf({ ...boat, identity: { ...boat.identity, mmsi: '211000001' } })
    expect(cellsOf(tableIn(page, 'trial-items'))[0]![1]).toMatch(/test or routine call.*from MMSI 211000001\. Never a distress alert\.$/)
    const before = page.blocks.findIndex(block => block.is === 'callout' && /Never send a distress alert as a test/.test(block.markdown))
    expect(before).toBeGreaterThan(-1)
    expect(before).toBeLessThan(page.blocks.findIndex(block => block.is === 'table' && block.id === 'trial-items'))
  })
})

describe('trials', () => {
  const itemsOf = (vessel: Vessel) => cellsOf(tableIn(pageOf(vessel), 'trial-items')).map(([what, expected]) => [what!.split(' ')[0], expected])
  it('of links name speed and power, network by network', () => {
    const page = pageOf(networkVessel({
      equipment: [
        aSwitch('N1', 3, { powerBudgetW: 60, powerVoltageV: 54 }, { 1: { powerClass: 3 } }), aDevice('P1', { networkPowerW: 6 }, { powerClass: 2, speedMbitPerS: 100 }), aDevice('P2', {}, { speedMbitPerS: null }),
        aDevice('P8'), aDevice('P9'),
      ],
      cables: [link('W1', 'N1:1', 'P1:lan', { lengthM: 90 }), link('W2', 'N1:2', 'P2:lan'), link('W9', 'P8:lan', 'P9:lan')],
    }))
    const [lan, others] = cellsOf(tableIn(page, 'trial-networks'))
    expect(lan?.[0]).toBe('LAN Network LAN')
    // 90 m of 0.2 Ω/m: (54 − √(54² − 4 · 18 · 6))/(2 · 18) = 0.1156 A; 6 + 18 · 0.1156² = 6.24 W
    expect(lan?.[1]).toBe('☐ W1, N1 1 to P1 lan: 100 Mbit/s, gives at most 6.2 W ☐ W2, N1 2 to P2 lan: speed not known')
    expect(others).toEqual(['Other network cables', '☐ W9, P8 lan to P9 lan: 1000 Mbit/s', 'those that differ', 'date initials, no.'])
    expect(page.blocks.some(({ is }) => is === 'callout')).toBe(false)
  })
  it('of serial links name sentences and rate', () => {
    const linked = aVessel({
      equipment: [anEquipment({ tag: 'T1' }), anEquipment({ tag: 'P1' })],
      serialLinks: [aSerialLink({ tag: 'S1', talker: 'T1', listeners: ['P1'], sentences: [{ formatter: 'RMC', ratePerS: 1, lengthCharacterCount: null }] }), aSerialLink({ tag: 'S2', talker: 'T1', listeners: [] })],
    })
    expect(cellsOf(tableIn(pageOf(linked), 'trial-networks')).map(cells => cells.slice(0, 3))).toEqual([
      ['S1 Link S1 from T1 to P1', '☐ RMC at 4800 Bd', 'at P1'], ['S2 Link S2 from T1 to no recorded listener', 'sentences not recorded at 4800 Bd', 'seen'],
    ])
  })
  it('of lights give the sector of each, and no range', () => {
    // COLREG rule 21: sidelights 112.5° from right ahead, each on its side
    expect(itemsOf(aBoat({ equipment: [aLight('E1', 'port side', null), aLight('E5', 'all-round white', null), anEquipment({ tag: 'E9', kind: 'navigation light' })] }))).toEqual([
      ['E1', 'Port sidelight, red: seen from 247.5 ° to 0.0 °, and not beyond.'], ['E5', 'All-round white light: seen all round.'], ['E9', 'which light it is is not recorded'],
    ])
  })
  it('of depth compare with the lead line from where it is shown', () => {
    const transducer = { frequencyKHz: 200, powerW: null, beamDeg: 12, beamAcrossDeg: null, blindM: null }
    const sounder = (tag: string, depthOffset: { reads: 'below keel' | 'below waterline'; offsetM: number } | null) => anEquipment({ tag, kind: 'transducer', positionM: [5, 0, -0.6], transducer: { ...transducer, depthOffset } })
    // Draught 1.9 m
    expect(itemsOf(aBoat({ equipment: [sounder('B1', { reads: 'below keel', offsetM: -1.3 }), sounder('B2', null), sounder('B3', { reads: 'below waterline', offsetM: 0.6 })] }))).toEqual([
      ['B1', 'Lead line in still water. Shown below keel: 1.90 m less than the lead line, within 0.10 m.'], ['B3', 'Lead line in still water. Shown below waterline: as the lead line, within 0.10 m.'],
    ])
    expect(itemsOf(aBoat({ equipment: [sounder('B2', null)] }))[0]![1]).toMatch(/not recorded/)
  })
  it('of position, compass, AIS and beacons say what is recorded and what is not', () => {
    const boat = aBoat({ equipment: [
      anEquipment({ tag: 'B1', kind: 'gnss receiver' }), anEquipment({ tag: 'B2', kind: 'compass', compassClass: 'steering', positionM: [5, 0, 2] }), anEquipment({ tag: 'B3', kind: 'heading sensor', compassClass: 'flux-gate', positionM: [5, 0, 1] }),
      anEquipment({ tag: 'T3', kind: 'ais transceiver' }), anEquipment({ tag: 'Y1', kind: 'safety beacon', beaconIdentity: 'ADCD0228C500401' }), anEquipment({ tag: 'Y2', kind: 'safety beacon', status: 'removed' }),
    ] })
    expect(itemsOf(boat)).toEqual([
      ['B1', expect.stringMatching(/^A fix; .* the berth where she lies\.$/)], ['B2', expect.stringMatching(/deviation card is dated/)], ['B3', expect.stringMatching(/^Calibrated/)],
      ['T3', 'As another boat receives it: MMSI (not recorded), Sandpiper, call sign (not recorded), 15.00 m by 4.40 m.'],
      ['Y1', 'Self-test by its maker’s manual and nothing else. On its label: ADCD0228C500401.'],
    ])
  })
  it('of nothing make no sheet', () => {
    expect(pageOf(aVessel({})).blocks.filter(({ is }) => is === 'table' || is === 'heading')).toEqual([])
    expect(sheetIds(pageOf(aVessel({ equipment: [radio('T1', { kind: 'display', transmitters: [] })] })))).toEqual([])
  })
})
