/**
 * Figures of the three small boats with everything electrical, against sums done by hand. Above each stand the data it
 * takes and where every other value comes from; `sum` is evaluated by mathjs, `written` is what it comes to.
 *
 * Copper has 1/58 Ω·mm²/m at 20 °C (IEC 60028, from memory). A charged lead cell at rest has 2.1 V, so 12.6 V for 12 V
 * and 25.2 V for 24 V (common practice, no source). Tables of ISO 13297 are from memory.
 */
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { designCurrentA, type Results } from '../../src/model/results.js'
import { prospectiveA } from '../../src/model/results/protective-devices.js'
import { referenceTable } from '../support/reference-table.js'
import { type CaseName, examineCase } from './cases.js'

interface Figure {
  readonly what: string
  readonly sum: string
  readonly written: string
  /** Values that the sum takes from a published table: table, first cells of the row, column, value. */
  readonly cells?: readonly (readonly [table: string, row: string, column: string, value: string])[]
  readonly found: (results: Results) => number | null | undefined
}

// --- where the program has its figures -------------------------------------------------------------------------------
const designCurrent = (tag: string) => ({ feeding }: Results) => designCurrentA(feeding.byCircuit.get(tag))
const chargingCurrent = (tag: string) => ({ feeding }: Results) => feeding.byCircuit.get(tag)?.infeed?.currentA
const dropV = (tag: string, loadTag: string) => ({ voltageDrop }: Results) =>
  voltageDrop.byCircuit.get(tag)?.toLoads.find(load => load.loadTag === loadTag)?.voltageDropV
const capacityA = (cableTag: string) => ({ currentCarryingCapacity }: Results) => outputOf(currentCarryingCapacity.byCable.get(cableTag)?.outcome, 'currentCarryingCapacityA')
const atDevice = (tag: string) => ({ protectiveDevices }: Results) => prospectiveA(protectiveDevices.byCircuit.get(tag)?.prospective)
const feederMargin = (tag: string) => ({ reserve }: Results) => reserve.byFeeder.get(tag)?.least?.margin.output.marginCurrentA
const dayOf = ({ energy }: Results, modeTag: string, batteryTag: string) =>
  energy.modes.find(mode => mode.modeTag === modeTag)?.batteries.find(battery => battery.batteryTag === batteryTag)
const chargeADay = (modeTag: string, batteryTag: string) => (results: Results) => dayOf(results, modeTag, batteryTag)?.loadAh
const enduranceH = (modeTag: string, batteryTag: string) => (results: Results) => outputOf(dayOf(results, modeTag, batteryTag)?.endurance, 'enduranceH')
const chargeAfter = (hours: number, modeTag: string, batteryTag: string) => (results: Results) => dayOf(results, modeTag, batteryTag)?.run?.hours[hours - 1]?.chargePercent
const shoreCurrentA = (modeTag: string) => ({ acSupply }: Results) =>
  outputOf(acSupply.sources.find(({ tag }) => tag === 'X20')?.modes.find(mode => mode.modeTag === modeTag)?.largest.sum, 'connectedCurrentA')
const sourceCurrentA = (modeTag: string, itemTag: string) => ({ energy }: Results) =>
  energy.modes.find(mode => mode.modeTag === modeTag)?.sources.find(source => source.itemTag === itemTag)?.currentA
const columnTotalA = (tag: string) => ({ energy }: Results) => outputOf(energy.columns.find(column => column.tag === tag)?.total, 'columnTotalA')

const outputOf = (outcome: { readonly status: string; readonly output?: Readonly<Record<string, number>> } | undefined, name: string): number | undefined => outcome?.output?.[name]

// --- the sums --------------------------------------------------------------------------------------------------------
const launch: readonly Figure[] = [
  // 6 mΩ recorded; W6, 0.15 m out and back of 2.5 mm²; the alternator's 15 A and the solar controller's 5 A are added.
  { what: 'prospective current at F2', sum: '12.6 / (0.006 + 2 * 0.15 / (58 * 2.5)) + 15 + 5', written: '1581.5', found: atDevice('F2') },
  // W1 0.15 m, W2 0.5 m, W3 and W5 each 2.6 m of wireway and two tails of 0.3 m; 16 mm².
  { what: 'prospective current at A1.3', sum: '12.6 / (0.006 + (0.15 + 0.5 + 2 * (2.6 + 0.6)) / (58 * 16)) + 15 + 5', written: '946.7', found: atDevice('A1.3') },
  // Lights 6 W, 3 W, 12 W; plotter 2.1, radio 5.5, horn 4, blower 2.4, cool box 4.5, gauge 0.5 A; socket 10 A by half.
  { what: 'design current of F1', sum: '(6 + 3 + 12) / 12 + 2.1 + 5.5 + 4 + 2.4 + 4.5 + 0.5 + 0.5 * 10', written: '25.75', found: designCurrent('F1') },
  // E = 0.0164 · I · L / S (ISO 13297, as quoted in published guides), over the 7.05 m above.
  { what: 'drop to the fuse block', sum: '0.0164 * 25.75 * 7.05 / 16', written: '0.1861', found: dropV('F1', 'A1') },
  // The same, then 5.5 A over 2 · 0.7 m of 2.5 mm².
  { what: 'drop to the radio', sum: '0.0164 * 25.75 * 7.05 / 16 + 0.0164 * 5.5 * 2 * 0.7 / 2.5', written: '0.2366', found: dropV('A1.3', 'T1') },
  // WW1 holds W3 and W5, one conductor each, and W22 with two: four.
  {
    what: 'capacity of W3', sum: '130 * 0.7', written: '91.0', found: capacityA('W3'),
    cells: [['ampacity-iso-mm2', '16', 'A_at_105C', '130'], ['ampacity-iso-factors', 'bundle,4-6', 'factor', '0.7']],
  },
  // The least of fuse 60 A, panel 100 A and the 91 A above.
  { what: 'margin of F1', sum: 'min(60, 100, 91) - 25.75', written: '34.25', found: feederMargin('F1') },
  // Column A: navigation lights, plotter, radio, blower, cool box, gauge; B: horn 4, lights 1, socket 10 (ABYC E-11, from memory).
  { what: 'load of F1 by the column method', sum: '(6 + 3) / 12 + 2.1 + 5.5 + 2.4 + 4.5 + 0.5 + max(0.1 * (4 + 1 + 10), 10)', written: '25.75', found: columnTotalA('F1') },
  // Typical current where there is one. Lights, plotter, radio, horn, cockpit lights, blower, socket, cool box, gauge, pump, starter.
  {
    what: 'charge for a day under way',
    sum: '0.75 * 2 + 1.4 * 8 + 0.6 * 8 + 4 * 6 * 0.01 + 1 * 2 + 2.4 * 0.25 + 1.5 * 4 + 3.2 * 6 * 0.5 + 0.3 * 8 + 3 * 24 * 0.01 + 120 / 60',
    written: '41.06', found: chargeADay('under-way', 'G1'),
  },
  // The pump alone, 3 A for 2 % of the time; half of 100 Ah, far below the rated 5 A, so without Peukert.
  { what: 'charge for a day on the mooring', sum: '3 * 24 * 0.02', written: '1.440', found: chargeADay('moored', 'G1') },
  { what: 'endurance on the mooring', sum: '0.5 * 100 / (3 * 0.02)', written: '833.33', found: enduranceH('moored', 'G1') },
  // From full, three hours of the night at 0.06 A.
  { what: 'state of charge on the mooring at 03:00', sum: '100 - 3 * 3 * 0.02', written: '99.820', found: chargeAfter(3, 'moored', 'G1') },
]

const ketch: readonly Figure[] = [
  // Three strings of two blocks of 180 Ah and 4.2 mΩ.
  { what: 'capacity of the house bank', sum: '3 * 180', written: '540', found: ({ sources }) => sources.byBattery.get('G1')?.capacityAh },
  { what: 'internal resistance of the house bank', sum: '2 * 4.2 / 3', written: '2.80', found: ({ sources }) => sources.byBattery.get('G1')?.internalResistanceMilliOhm },
  // Starting bank, two blocks of 5 mΩ in series; the fuse sits on its post; small alternator 25 A and charger 15 A.
  { what: 'prospective current at F8', sum: '25.2 / (2 * 0.005) + 25 + 15', written: '2560.0', found: atDevice('F8') },
  // 30 A at 12 V from 24 V at 90 %.
  { what: 'current into the converter', sum: '12 * 30 / (24 * 0.9)', written: '16.667', found: designCurrent('A1.2') },
  // 13 A at 230 V from 24 V at 92 %.
  { what: 'current into the inverter charger', sum: '230 * 13 / (24 * 0.92)', written: '135.417', found: designCurrent('F3') },
  // Radio 6, plotter 2.4, AIS 1.5, instruments 0.6, autopilot computer 1.5, bus 0.3 A, over 2 · (0.15 + 1.2) m of 6 mm².
  { what: 'drop of the 12 V feeder', sum: '0.0164 * (6 + 2.4 + 1.5 + 0.6 + 1.5 + 0.3) * 2 * (0.15 + 1.2) / 6', written: '0.09077', found: dropV('F12', 'A3') },
  // The same, then 6 A over 2 · 1.0 m of 2.5 mm²: the drop begins at the converter, not at the battery.
  { what: 'drop to the radio at 12 V', sum: '0.0164 * 12.3 * 2.7 / 6 + 0.0164 * 6 * 2 / 2.5', written: '0.16949', found: dropV('A3.1', 'T1') },
  // Alternator 110, inverter charger 70, sun 15 A.
  { what: 'charging current through the main fuse', sum: '110 + 70 + 15', written: '195', found: chargingCurrent('F1') },
  // Lights 24 W, converter, autopilot 10, refrigerator 3.2, pumps 4 and 5; module: pump 4, lights 48 W and 36 W.
  { what: 'design current of the chart table panel', sum: '24 / 24 + 12 * 30 / (24 * 0.9) + 10 + 3.2 + 4 + 5 + 4 + (48 + 36) / 24', written: '47.367', found: designCurrent('F2') },
  // With the inverter charger and half of the windlass's 70 A.
  { what: 'design current of the main fuse', sum: '47.3667 + 135.4167 + 0.5 * 70', written: '217.783', found: designCurrent('F1') },
  // WW2 holds W5, W6, W9 and W10, one each, W31 and the mains cable W56 with two each: eight.
  {
    what: 'margin of F2', sum: 'min(80, 100, 210 * 0.6) - 47.3667', written: '32.633', found: feederMargin('F2'),
    cells: [['ampacity-iso-mm2', '35', 'A_at_105C', '210'], ['ampacity-iso-factors', 'bundle,7-24', 'factor', '0.6']],
  },
  // Its curve has 85 A at 1300 and 110 A at 2100 a minute.
  { what: 'large alternator at 1940 a minute', sum: '85 + (110 - 85) * (1940 - 1300) / (2100 - 1300)', written: '105', found: sourceCurrentA('under-way', 'G3') },
  // Without a curve 75 % of its rating when hot (common practice, no source).
  { what: 'small alternator, hot', sum: '0.75 * 25', written: '18.75', found: sourceCurrentA('under-way', 'G4') },
  // 24 V: anchor light 6 W, refrigerator, saloon lights 48 W, two bilge pumps, water pump. 12 V through the converter: radio,
  // plotter, AIS, instruments, bus. 230 V through the inverter: a socket.
  {
    what: 'charge for a day at anchor',
    sum: '6 / 24 * 12 + 2.5 * 24 * 0.5 + 48 / 24 * 4 * 0.6 + 2 * 4 * 24 * 0.01 + 5 * 12 * 0.05'
      + ' + (0.6 * 14 + 1.8 * 24 * 0.2 + (0.5 + 0.6 + 0.3) * 24) * 12 / (24 * 0.9) + 0.5 * 3 * 230 / (24 * 0.92)',
    written: '86.478', found: chargeADay('at-anchor', 'G1'),
  },
  // Half of 540 Ah at 3.6 A on average, below the rated 27 A.
  { what: 'endurance at anchor', sum: '0.5 * 540 / (86.47833 / 24)', written: '74.93', found: enduranceH('at-anchor', 'G1') },
  // From midnight: anchor light, refrigerator, bilge pumps; plotter, AIS, instruments and bus through the converter.
  {
    what: 'state of charge at anchor at 03:00', sum: '100 - 100 * 3 * (6 / 24 + 2.5 * 0.5 + 2 * 4 * 0.01 + (1.8 * 0.2 + 0.5 + 0.6 + 0.3) / (2 * 0.9)) / 540',
    written: '98.5790', found: chargeAfter(3, 'at-anchor', 'G1'),
  },
  // Socket 6 A; charger 24 V · 15 A at 87 %; the inverter charger's own charging, 24 V · 70 A at 92 %.
  { what: 'shore power in harbour at 07:00', sum: '6 + 24 * 15 / (230 * 0.87) + 24 * 70 / (230 * 0.92)', written: '15.739', found: shoreCurrentA('harbour') },
]

const sedan: readonly Figure[] = [
  // Two blocks of 700 A cold cranking in parallel. Above 1100 A a branch device must break 2500 A (ABYC E-11 table V.A).
  { what: 'cold cranking current of the house bank', sum: '2 * 700', written: '1400', found: ({ sources }) => sources.byBattery.get('G2')?.crankingCurrentA },
  {
    what: 'class of a branch device', sum: '2500', written: '2500', cells: [['protection-aic', '12-24 V DC,1101,2200', 'branch_aic_A', '2500']],
    found: ({ protectiveDevices }) => protectiveDevices.byCircuit.get('A1.5')?.againstClass?.limit.value,
  },
  // From 12.6 V to 7.2 V at the cranking current (SAE J537), and twice that current when warm (common practice, no source).
  {
    what: 'internal resistance of the house bank', sum: '1000 * (12.6 - 7.2) / (2 * 1400)', written: '1.9286',
    found: ({ protectiveDevices }) => {
      const resistance = protectiveDevices.byBattery.get('G2')?.internalResistance
      return resistance?.status === 'computed' ? resistance.output.internalResistanceMilliOhm : null
    },
  },
  // 5, 1 and 2 ft out and 3 ft back of 1/0, then 9 in of 2 AWG one way; alternator 80 A as stated, charger 20 A.
  {
    what: 'prospective current at F1', sum: '12.6 / (0.0019286 + (5 + 1 + 2 + 3) * 0.3048 / (58 * 53.4751) + 0.75 * 0.3048 / (58 * 33.6308)) + 80 + 20', written: '4129.7',
    cells: [['conductors-awg', '1/0', 'area_mm2', '53.4751'], ['conductors-awg', '2', 'area_mm2', '33.6308']], found: atDevice('F1'),
  },
  // Past F1, 9 in, and 5 + 4 ft of wireway with two tails of 1 ft each way.
  {
    what: 'prospective current at A1.5', sum: '12.6 / (0.00192857 + 11 * 0.3048 / (58 * 53.4751) + (0.75 + 2 * 11) * 0.3048 / (58 * 33.6308)) + 80 + 20', written: '2019.4',
    found: atDevice('A1.5'),
  },
  // 120 V · 5 A from 12 V at 87 %.
  { what: 'current into the inverter', sum: '120 * 5 / (12 * 0.87)', written: '57.471', found: designCurrent('F3') },
  // Helm panel 31 A, half of the windlass's 60 A, inverter.
  { what: 'design current of the house bank', sum: '31 + 0.5 * 60 + 57.4713', written: '118.471', found: designCurrent('B2') },
  { what: 'margin of the house bank', sum: 'min(200, 250, 285) - 118.4713', written: '81.529', found: feederMargin('B2'), cells: [['ampacity-33cfr183-table5', '1/0', 'A_at_105C', '285']] },
  { what: 'charging current through the main fuse', sum: '55', written: '55', found: chargingCurrent('B2') },
  // E = 10.75 · I · L / CM (ABYC E-11, as quoted in a published guide); the blower's 4.5 A over 2 · (4 + 6 + 2) ft.
  {
    what: 'drop to the blower', sum: '10.75 * 118.4713 * 11 / 105534.5 + 10.75 * 31 * 22.75 / 66371.3 + 10.75 * 4.5 * 2 * 12 / 16509.7', written: '0.3173',
    cells: [['conductors-awg', '1/0', 'area_cmil', '105534.5'], ['conductors-awg', '2', 'area_cmil', '66371.3'], ['conductors-awg', '8', 'area_cmil', '16509.7']],
    found: dropV('A1.4', 'G12'),
  },
  // Through the engine room; 15 A would be 200 % of it, and 33 CFR 183.455(c) allows 150 %.
  {
    what: 'capacity of W37', sum: '10 * 0.75', written: '7.50', found: capacityA('W37'),
    cells: [['ampacity-33cfr183-table5', '18', 'A_at_75C', '10'], ['ampacity-33cfr183-engine-space-factors', '75', 'factor_50C_ambient', '0.75']],
  },
  // Heater 1440 W, two sockets of 8 A, charger with 10 A and 20 A at 12 V and 85 %.
  { what: 'shore power at the dock at 07:00', sum: '1440 / 120 + 8 + 8 + 12 * (10 + 20) / (120 * 0.85)', written: '31.529', found: shoreCurrentA('dock') },
  // All-round light 6 W, engine-room lights 18 W, refrigerator, water pump, a socket through the inverter.
  { what: 'charge for a night on the hook', sum: '6 / 12 * 10 + 18 / 12 * 0.5 + 5 * 24 * 0.45 + 5 * 14 * 0.04 + 1.5 * 2 * 120 / (12 * 0.87)', written: '97.033', found: chargeADay('hook', 'G2') },
  // Half of 220 Ah (common practice for flooded batteries), at 4.0 A on average, below the rated 11 A.
  { what: 'endurance on the hook', sum: '0.5 * 220 / (97.03276 / 24)', written: '27.21', found: enduranceH('hook', 'G2') },
  // From midnight to six: all-round light and refrigerator.
  { what: 'state of charge on the hook at 06:00', sum: '100 - 100 * 6 * (0.5 + 5 * 0.45) / 220', written: '92.50', found: chargeAfter(6, 'hook', 'G2') },
]

const boats: readonly (readonly [CaseName, readonly Figure[]])[] = [['launch-12v', launch], ['ketch-24v-230v', ketch], ['sedan-12v-120v', sedan]]

const digitsOf = (written: string): number => written.split('.')[1]?.length ?? 0

describe.each(boats)('%s', (boat, figures) => {
  it.each(figures)('$what', async ({ sum, written, found }) => {
    expect(evaluate(sum)).toBeCloseTo(Number(written), digitsOf(written))
    const examination = await examineCase(boat)
    if (examination.status !== 'examined') throw new Error(`${boat} cannot be read as a vessel`)
    expect(found(examination.results)).toBeCloseTo(Number(written), digitsOf(written))
  })

  it.each(figures.flatMap(({ cells }) => cells ?? []))('%s has for %s as %s %s', (table, row, column, value) => {
    const keys = row.split(',')
    const found = referenceTable(table).filter(cells => keys.every((key, i) => Object.values(cells)[i] === key))
    expect(found.map(cells => cells[column])).toEqual([value])
  })
})
