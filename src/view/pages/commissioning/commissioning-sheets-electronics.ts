/** Sheets for what is measured on CAN buses and at radios. */
import type { BusLoad, BusResult, SupplySection } from '../../../model/results/can-bus.js'
import type { MeasuredThing, MeasuredTransmitter } from '../../../model/results/commissioning.js'
import { highestDeviceV, lowestDeviceV, terminationTolerance } from '../../../references/tables/can-rules.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { dash, joined, lineBreak, linkTo, muted } from '../../text.js'
import type { Inline, Table, Text } from '../../view-model.js'
import { methodOf } from '../../parts/working.js'
import { alreadyRead, box, forPen, signed } from './commissioning-sheet-parts.js'

// --- buses -----------------------------------------------------------------------------------------------------------
export function busSheet(context: ViewContext, buses: readonly MeasuredThing[]): Table {
  const { byBus } = context.results.canBus
  return forPen(buses, {
    id: 'sheet-buses',
    caption: 'Test sheet: CAN buses',
    note: [`Resistance between the two data wires, within ${say('sharePercent', terminationTolerance.sharePercent)} (common practice, no source). Voltage with every device at its most and the source at its nominal voltage; in use it is higher. A device needs ${say('voltageV', lowestDeviceV.value)} to ${say('voltageV', highestDeviceV.value)}.`],
    columns: [
      { title: 'Bus', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Expected', width: 'text', cell: ({ tag }) => expectedOfBus(context, byBus.get(tag)!) },
      { title: 'Resistance, dead', unit: 'Ω', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'resistance between data wires') },
      { title: 'Voltage', unit: 'V', width: 'short', cell: ({ tag }) => voltageText(byBus.get(tag)!) },
      { title: 'Load', unit: '%', width: 'short', cell: ({ tag }) => alreadyRead(context, [tag], 'load of a bus') },
      { title: 'Date, initials', width: 'short', cell: () => signed },
    ],
  })
}

function expectedOfBus(context: ViewContext, { termination: { expected }, supply, load }: BusResult): Text {
  return joined([
    expected.status === 'computed' ? [sayForWorking('resistanceOhm', expected.output.resistanceOhm)] : [muted(`resistance not known: ${expected.reason}`)],
    ...(supply.suppliesDevices ? supply.sections.map(section => expectedOfSection(context, section)) : [[muted('devices supplied elsewhere: no voltage to read')]]),
    [loadText(load)],
  ], lineBreak)
}

/** While not all that is sent is known, no more than the least. */
function loadText({ total, missing }: BusLoad): Inline {
  if (total.status === 'not computed') return muted(`load not known: ${total.reason}`)
  const least = say('busLoadPercent', total.output.nominalLoadPercent)
  return missing.length > 0 ? `load at least ${least}` : `load ${least} to ${say('busLoadPercent', total.output.worstLoadPercent)}`
}

function expectedOfSection({ vessel }: ViewContext, { solved, missing }: SupplySection): Text {
  if (solved === null) return [muted(`voltage not known: ${missing.join('; ')}`)]
  const { insertion, worst } = solved
  const at = (tag: string, voltageV: number | null | undefined): string => `${voltageV == null ? 'voltage not known' : say('voltageV', voltageV, vessel)} at ${tag}`
  return [at(insertion.tag, insertion.voltageV), ...(worst === null ? [] : [`, ${at(worst.tag, worst.voltageV)}`])]
}

/** What is read, wherever that was; else boxes for where it comes in and where least is left. */
function voltageText({ supply, readings }: BusResult): Text {
  if (!supply.suppliesDevices) return dash
  const read = readings.filter(({ quantity, atTag, agrees, supersededBy }) => quantity === 'voltageV' && atTag !== null && agrees !== null && supersededBy === null)
  if (read.length > 0) return joined(read.map(({ measured, atTag, number }) => [muted(`${say('voltageV', measured)} at ${atTag} (reading ${number})`)]), lineBreak)
  const places = supply.sections.flatMap(({ insertionTags, solved }) => [...insertionTags, ...(solved?.worst == null ? [] : [solved.worst.tag])])
  return box(...[...new Set(places)].map(tag => `at ${tag}`))
}

// --- transmitters ----------------------------------------------------------------------------------------------------
export function transmitterSheet(context: ViewContext, transmitters: readonly MeasuredTransmitter[]): Table {
  return forPen(transmitters, {
    id: 'sheet-transmitters',
    caption: 'Test sheet: radio transmitters',
    note: ['With the meter between the radio and its cable. At the connector an antenna on its limit reads less than on the antenna itself, since the cable weakens what comes back: the formula is under ', linkTo(fixedPages.methods, 'Methods'), ', “', methodOf(context, transmitters[0]!.mayRead.method).title, '”.'],
    columns: [
      { title: 'Transmitter', width: 'text', cell: ({ tag, chain }) => [...context.named(tag), lineBreak, muted([chain.service, ...(chain.terminal === null ? [] : [`at ${chain.terminal}`])].join(', '))] },
      { title: 'Expected', width: 'text', cell: transmitter => expectedOfTransmitter(transmitter) },
      { title: 'VSWR', width: 'short', cell: () => [] },
      { title: 'Forward power', unit: 'W', width: 'short', cell: () => [] },
      { title: 'Date, initials', width: 'short', cell: () => signed },
    ],
  })
}

function expectedOfTransmitter({ chain: { powerW, frequencyMHz, lossDb, antennaTag }, limit, mayRead }: MeasuredTransmitter): Text {
  return joined([
    mayRead.status === 'computed' && lossDb !== null
      ? [`VSWR at most ${say('vswrFactor', mayRead.output.readVswrFactor)}`, lineBreak, muted(`${antennaTag} at most ${say('vswrFactor', limit.value)}, ${say('lossDb', lossDb)} before it`)]
      : [muted(`VSWR not known: ${mayRead.status === 'computed' ? '' : mayRead.reason}`)],
    [`${say('powerW', powerW)} at ${say('frequencyMHz', frequencyMHz)}`],
  ], lineBreak)
}
