/** Sheets to print and fill in: what has not been measured yet, panel by panel, then batteries, residual-current devices, buses and radios. */
import { slug } from '../../../model/address.js'
import { grouped } from '../../../model/lookup.js'
import type { CheckKind, MeasuredBattery, MeasuredCircuit, MeasuredResidualDevice } from '../../../model/results/commissioning.js'
import { designCurrentA } from '../../../model/results.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { sayResidualCurrent } from '../../../references/basis/ac-rules.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { compareTags } from '../../tables.js'
import { joined, lineBreak, muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { alreadyRead, box, forPen, isWanting, sheetOf, signed } from './commissioning-sheet-parts.js'
import { busSheet, transmitterSheet } from './commissioning-sheets-electronics.js'

export function testSheets(context: ViewContext): readonly Block[] {
  const { circuits, batteries, residualDevices, buses, transmitters } = context.results.commissioning.coverage
  const wanting = circuits.filter(isWanting).map(measured => ({ measured, circuit: context.lookup.circuits.get(measured.tag)! }))
  const bySource = grouped(wanting, ({ circuit }) => [circuit.fedFromTag])
  return [
    ...[...bySource].toSorted(([a], [b]) => compareTags(a, b)).map(([sourceTag, rows]) => circuitSheet(context, sourceTag, rows)),
    ...sheetOf(context, batteries, batterySheet),
    ...sheetOf(context, residualDevices, residualSheet),
    ...sheetOf(context, buses, busSheet),
    ...sheetOf(context, transmitters, transmitterSheet),
  ]
}

// --- circuits --------------------------------------------------------------------------------------------------------
interface Row { readonly circuit: Circuit; readonly measured: MeasuredCircuit; readonly loadTag: Tag | null }

function circuitSheet(context: ViewContext, sourceTag: Tag, circuits: readonly Omit<Row, 'loadTag'>[]): Table {
  const inOrder = circuits.toSorted((a, b) => (a.circuit.way ?? Infinity) - (b.circuit.way ?? Infinity) || compareTags(a.circuit.tag, b.circuit.tag))
  const rows = inOrder.flatMap((each): readonly Row[] => (each.circuit.loadTags.length === 0 ? [{ ...each, loadTag: null }] : each.circuit.loadTags.map(loadTag => ({ ...each, loadTag }))))
  const name = context.nameOf(sourceTag)
  const read = ({ circuit, loadTag }: Row, kind: CheckKind): Text => alreadyRead(context, [circuit.tag, loadTag], kind)
  const orBox = (text: Text, ...words: readonly string[]): Text => (text.length === 0 ? box(...words) : text)
  return forPen(rows, {
    id: `sheet-${slug(sourceTag)}`,
    caption: `Test sheet: circuits of ${sourceTag}${name === null ? '' : ` ${name}`}`,
    note: ['Expected: voltage lost on the way at the design current, from this circuit alone to everything on; least voltage at the load when the source has its nominal voltage; least insulation resistance and the voltage it is tested with.'],
    columns: [
      {
        title: 'Way, circuit, load', width: 'text', cell: ({ circuit, loadTag }) => [
          ...(circuit.way === null ? [] : [`${circuit.way} `]), ...context.named(circuit.tag), lineBreak,
          ...(loadTag === null ? [muted('no load recorded')] : context.named(loadTag)),
        ],
      },
      { title: 'Expected', width: 'text', cell: row => expectedText(context, row) },
      { title: 'Insulation', unit: 'MΩ', width: 'short', cell: row => read(row, 'insulation resistance') },
      { title: 'Voltage', unit: 'V', width: 'short', cell: row => orBox(read(row, 'voltage drop'), ...(putsIn(context, row.circuit) ? ['charging source', 'battery side'] : ['source', 'load'])) },
      { title: 'Current', unit: 'A', width: 'short', cell: row => read(row, 'current') },
      { title: 'Polarity, date, initials', width: 'short', cell: row => [...orBox(read(row, 'polarity'), 'polarity'), lineBreak, ...signed] },
    ],
  })
}

/** What the meter should show at the design current, and the least insulation. */
function expectedText(context: ViewContext, { circuit, measured: { insulation, drops }, loadTag }: Row): Text {
  const drop = drops.find(each => each.loadTag === loadTag)
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  const currentA = designCurrentA(feed)
  return joined([
    drop === undefined || currentA === null ? [muted('voltage drop not assessed')]
      : [`lost ${lostText(drop)} at ${say('currentA', currentA)}`],
    ...(drop === undefined || feed?.nominalVoltageV == null || putsIn(context, circuit) ? []
      : [[`load ${say('voltageV', feed.nominalVoltageV - drop.mostDropV)} of ${say('nominalVoltageV', feed.nominalVoltageV)}`]]),
    insulation === null ? [muted('voltage not known: no insulation test')]
      : [`${say('insulationMOhm', insulation.minimumInsulationMOhm)} at ${say('nominalVoltageV', insulation.testVoltageV)}`],
  ], lineBreak)
}

/** Alone, and with all on that its feeders carry. */
function lostText({ leastDropV, mostDropV }: MeasuredCircuit['drops'][number]): string {
  const least = say('voltageDropV', leastDropV)
  const most = say('voltageDropV', mostDropV)
  return least === most ? least : `${least} to ${most}`
}

const putsIn = ({ results }: ViewContext, { tag }: Circuit): boolean => results.feeding.byCircuit.get(tag)?.infeed?.only === true

// --- batteries and residual-current devices --------------------------------------------------------------------------
function batterySheet(context: ViewContext, batteries: readonly MeasuredBattery[]): Table {
  return forPen(batteries, {
    id: 'sheet-batteries',
    caption: 'Test sheet: batteries',
    note: ['Internal resistance, in mΩ: 1000 times the fall of the voltage, divided by the rise of the current.'],
    columns: [
      { title: 'Battery', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Expected', width: 'text', cell: battery => expectedOfBattery(context, battery) },
      { title: 'At rest', unit: 'V', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'voltage') },
      { title: 'Lighter load', width: 'short', cell: () => box('V', 'A') },
      { title: 'Heavier load', width: 'short', cell: () => box('V', 'A') },
      { title: 'Internal resistance', unit: 'mΩ', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'internal resistance') },
      { title: 'Date, initials', width: 'short', cell: () => signed },
    ],
  })
}

function expectedOfBattery(context: ViewContext, { tag, internalResistanceMilliOhm }: MeasuredBattery): Text {
  const atRest = context.results.protectiveDevices.byBattery.get(tag)?.openCircuitVoltage
  return [
    atRest?.status === 'computed' ? `full and at rest about ${say('atRestV', atRest.output.openCircuitVoltageV)}` : muted('voltage at rest: chemistry not recorded'), lineBreak,
    internalResistanceMilliOhm === null ? muted('internal resistance not recorded') : `${say('internalResistanceMilliOhm', internalResistanceMilliOhm)} recorded`,
  ]
}

function residualSheet(context: ViewContext, devices: readonly MeasuredResidualDevice[]): Table {
  return forPen(devices, {
    id: 'sheet-residual-devices',
    caption: 'Test sheet: residual-current devices',
    note: ['For licensed persons. A device that does not trip by its button is out of order; the shore supply stays off until it is replaced.'],
    columns: [
      { title: 'Device', width: 'text', cell: ({ tag }) => context.named(tag) },
      {
        title: 'Must trip', width: 'text', cell: ({ tripCurrent, tripTimeMs }) => joined([
          tripCurrent === null ? [muted('rated residual current not known, or built to another rule')] : [`between ${sayResidualCurrent(tripCurrent.leastTripCurrentA)} and ${sayResidualCurrent(tripCurrent.mostTripCurrentA)}`],
          ...(tripTimeMs === null ? [] : [[`within ${say('tripTimeMs', tripTimeMs)}`]]),
        ], lineBreak),
      },
      { title: 'Button', width: 'short', cell: () => [] },
      { title: 'Trip current', unit: 'mA', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'trip current') },
      { title: 'Trip time', unit: 'ms', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'trip time') },
      { title: 'Date, initials', width: 'short', cell: () => signed },
    ],
  })
}
