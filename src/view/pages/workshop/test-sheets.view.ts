/** Test and trial sheets for what has not been read yet, with what must be read first. */
import type { EquipmentKindKey } from '../../../references/equipment-kinds.js'
import { cautionBlocks } from '../../cautions/cautions.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import type { Block, Page, PageKey, Table } from '../../view-model.js'
import { forPen } from '../commissioning/commissioning-sheet-parts.js'
import { testSheets } from '../commissioning/commissioning-sheets.js'
import { trialSheets } from '../commissioning/commissioning-trials.js'

export const testSheetsKey: PageKey = `${fixedPages.workshop}/test-sheets`

/** None where there is nothing to measure and nothing to try. */
export function testSheetPages(context: ViewContext): readonly Page[] {
  const trials = trialBlocks(context)
  const hasAny = Object.values(context.results.commissioning.coverage).some(things => things.length > 0)
  return !hasAny && trials.length === 0 ? [] : [{
    key: testSheetsKey,
    title: 'Test sheets',
    kicker: 'Workshop',
    lead: ['What has not been read yet, to be filled in on board. What is then entered as measurements is held against the calculation under Commissioning.'],
    printed: null,
    trail: [{ text: 'Workshop documents', to: fixedPages.workshop }],
    blocks: [...(hasAny ? measuringBlocks(context) : []), ...trials, signOff],
  }]
}

/** The sheets alone, without what stands around them. */
export const penTables = (context: ViewContext): readonly Table[] =>
  [...testSheets(context), ...trialSheets(context)].filter(block => block.is === 'table')

function measuringBlocks(context: ViewContext): readonly Block[] {
  const sheets = testSheets(context)
  const heading: Block = { is: 'heading', text: 'Test sheets', anchor: 'measuring' }
  if (sheets.length === 0) return [heading, { is: 'paragraph', text: ['Everything has been measured. No sheet is left to fill in.'] }]
  return [
    heading,
    { is: 'callout', signal: 'WARNING', title: 'Before anything is measured', markdown: beforeMeasuring },
    ...cautionBlocks(context, { pages: ['commissioning'] }, { inFull: Infinity }),
    { is: 'markdown', source: howToMeasure(context) },
    instruments,
    ...sheets,
  ]
}

function trialBlocks(context: ViewContext): readonly Block[] {
  const sheets = trialSheets(context)
  if (sheets.length === 0) return []
  const sends = context.vessel.equipment.some(({ status, kind, transmitters }) => status !== 'removed' && (transmitters.length > 0 || sending.has(kind)))
  return [
    { is: 'heading', text: 'Trial sheets', anchor: 'trial-sheets' },
    { is: 'paragraph', text: ['What is seen at work rather than measured: tried at commissioning, and again at the start of each season. None of it is entered as a reading.'] },
    ...(sends ? [{ is: 'callout', signal: 'WARNING', title: 'Before anything is sent', markdown: beforeSending } as const, ...cautionBlocks(context, { pages: ['sending'] })] : []),
    ...sheets,
  ]
}
const sending: ReadonlySet<string> = new Set(['vhf transceiver', 'ais transceiver', 'safety beacon'] satisfies readonly EquipmentKindKey[])

const beforeMeasuring = `
- Mains voltage and residual-current tests are for licensed persons only. Local codes and their forms come first; these sheets do not replace them.
- The insulation test is for a competent person, on a circuit that is dead, with all electronics disconnected at both ends. Never on a live circuit, never on data, antenna or sensor cables. Discharge the circuit afterwards.
- A battery gives enough current to melt a tool. Take off rings and watches, cover the other terminal, and keep flame and spark away.
- Secure fans, pumps, windlass and thrusters, and keep people clear, before a load is switched on.
- If a reading is not what the sheet expects, stop and find out why before the next one.
`

const beforeSending = `
- Never send a distress alert as a test, by no radio and no beacon. A test call is agreed with whoever answers it.
- Sending is for holders of the certificate that the flag state asks for; local rules on test calls come first. Listen before you send, keep it short, and give the vessel's name.
- Never send into an open connector: an antenna or a dummy load is on it first, and nobody is near the antenna. Radar stays off while anybody is near the scanner.
- Under way one person keeps the lookout, and another tries the instruments.
`

const howToMeasure = ({ results }: ViewContext): string => {
  const { buses, transmitters } = results.commissioning.coverage
  return [howToFillIn, ...(buses.length > 0 ? [howToMeasureBus] : []), ...(transmitters.length > 0 ? [howToMeasureTransmitter] : []), howToEnter].join('')
}

const howToFillIn = `
How to fill in a sheet (*no.* is the number of the instrument in the list below):

1. **Insulation** first, dead, equipment disconnected: both conductors joined, against earth or hull. The sheet gives the test voltage and the least value.
2. **Polarity**, before the load is connected: at the load's connector, with the meter the right way round. Write *right* or *reversed*.
3. **Voltage and current**, load on and at work, everything else as in normal use: the voltage at the source (the battery or whatever the circuit starts from), the voltage at the load's own terminals and the current of the circuit, all at the same time. At least half of the current on the sheet must flow.
4. **Battery**: voltage after some hours of rest; then voltage and current at two different loads on the same day, the lighter load first.
5. **Residual-current device**: by its test button; then current and time with a tester.
`
const howToMeasureBus = `1. **CAN bus**: the resistance between the two data wires at a free tee, with the bus and all that feeds it switched off. Then everything on: the voltage at the tees named, and the load as a display or an analyser of the bus shows it.
`
const howToMeasureTransmitter = `1. **Transmitter**: the meter between the radio and its cable, on a channel that is free and allowed for it; standing wave ratio and forward power, in seconds.
`
const howToEnter = `1. Give each reading a number, and enter it with date, name and instrument under *measurements* in the vessel's data. Three numbers make a voltage drop; without the current it cannot be held against anything.

*Source: common practice.*
`

/** By its number each instrument is named beside the date of a reading. */
const instruments: Table = forPen([1, 2, 3, 4], {
  id: 'instruments',
  caption: 'Instruments and who used them',
  columns: [
    { title: 'No.', width: 'tag', cell: number => [String(number)] },
    { title: 'Instrument, maker and model', width: 'text', cell: () => [] },
    { title: 'Serial number', width: 'text', cell: () => [] },
    { title: 'Calibrated until', width: 'short', cell: () => [] },
    { title: 'Used by', width: 'text', cell: () => [] },
    { title: 'Date', width: 'short', cell: () => [] },
  ],
})

const signOff: Block = {
  is: 'table', id: 'sign-off', caption: 'Sign-off', forPen: true, layout: null, empty: '',
  columns: [
    { title: 'I have', unit: null, align: 'left', width: 'text' },
    { title: 'Name, licence', unit: null, align: 'left', width: 'text' },
    { title: 'Signature', unit: null, align: 'left', width: 'text' },
    { title: 'Date', unit: null, align: 'left', width: 'short' },
  ],
  rows: ['measured what is recorded here', 'checked the readings'].map(words => ({ cells: [[words], [], [], []], level: null, anchor: null })),
  note: ['A signature confirms the readings. It does not certify conformity with any rule.'],
}
