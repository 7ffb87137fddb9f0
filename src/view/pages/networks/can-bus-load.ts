/** The data on a CAN bus: what each device sends, what bridges bring, and who cannot be told from whom. */
import { inWords } from '../../../findings/words.js'
import type { AlikeSenders, BusResult, DeviceLoad, MessageLoad } from '../../../model/results/can-bus.js'
import type { CanBus } from '../../../model/vessel.js'
import { bitRateBitPerS } from '../../../references/tables/can-rules.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { dash, joined, muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function loadBlocks(context: ViewContext, { load, alike, bus }: BusResult): readonly Block[] {
  if (load.messages.length === 0 && load.silentTags.length === 0) return []
  const heaviest = load.messages.reduce<MessageLoad | null>((most, message) => (worstOf(message) > (most === null ? 0 : worstOf(most)) ? message : most), null)
  return [
    { is: 'heading', text: 'Data', anchor: 'data' },
    deviceTable(context, load.devices),
    workingOf(context, 'Load of the bus', load.total),
    messageTable(context, load.messages, bus.protocol),
    ...(heaviest === null ? [] : [workingOf(context, `PGN ${heaviest.pgnNumber} of ${heaviest.senderTag}`, heaviest.load)]),
    ...(alike.length === 0 ? [] : [alikeTable(context, alike)]),
  ]
}

const worstOf = ({ load }: MessageLoad): number => (load.status === 'computed' ? load.output.worstBitPerS : 0)
/** What sends once a minute takes next to nothing. */
const leastPercent = 0.1
export const loadText = (loadPercent: number): string =>
  (loadPercent > 0 && loadPercent < leastPercent ? `under ${say('loadPercent', leastPercent)}` : say('loadPercent', loadPercent))
const share = (bitPerS: number): string => loadText((100 * bitPerS) / bitRateBitPerS)
const through = (context: ViewContext, throughTags: readonly string[]): Text => (throughTags.length === 0 ? [] : [muted(' through '), ...joined(throughTags.map(tag => [context.tag(tag)]))])

const deviceTable = (context: ViewContext, devices: readonly DeviceLoad[]): Table => tableOf(devices.toSorted((a, b) => b.worstBitPerS - a.worstBitPerS), {
  id: 'device-load',
  caption: 'What each device takes of the bus, the most first',
  empty: 'What the devices send is not recorded.',
  note: [`Share of ${sayForWorking('capacityBitPerS', bitRateBitPerS)}. Nominal: no stuffed bits. At worst: as many as there can be.`],
  columns: [
    { title: 'Device', width: 'text', cell: ({ tag, throughTags }) => [...context.named(tag), ...through(context, throughTags)] },
    { title: 'Frames', width: 'number', cell: ({ framesPerS }) => [say('framesPerS', framesPerS)] },
    { title: 'Bits at worst', width: 'number', cell: ({ worstBitPerS }) => [say('worstBitPerS', worstBitPerS)] },
    { title: 'Nominal', width: 'number', cell: ({ nominalBitPerS }) => [share(nominalBitPerS)] },
    { title: 'At worst', width: 'number', cell: ({ worstBitPerS }) => [share(worstBitPerS)] },
  ],
})

const rateWords: Readonly<Record<MessageLoad['rate'], string>> = { 'as recorded': 'as recorded', 'usual': 'usual', 'on event': 'on event, counts nothing', 'not known': 'not known' }

/** How many frames so many bytes take. */
const framingWords: Readonly<Record<CanBus['protocol'], string>> = {
  'nmea 2000': 'A message of one kind goes in a single frame of up to 8 bytes, one of the other kind as a fast packet: 1 + (bytes − 6) / 7 frames, rounded up, each of 8 bytes.',
  'j1939': 'Up to 8 bytes go in a single frame, more in 1 + bytes / 7 frames, rounded up, each of 8 bytes.',
}

function messageTable(context: ViewContext, messages: readonly MessageLoad[], protocol: CanBus['protocol']): Table {
  const bits = ({ load }: MessageLoad): string => (load.status === 'computed' ? String(load.input.worstBitCount) : '–')
  return tableOf(messages, {
    id: 'messages',
    caption: 'Message by message',
    empty: 'What the devices send is not recorded.',
    note: ['Frames a second = 1000 · number · frames / interval in ms; bits a second = frames · bits of a frame: at worst 80 + 10 · its bytes, without stuffed bits 67 + 8 · its bytes. ' + framingWords[protocol] + ' Usual intervals are those of an open dataset, and so are lengths that are not recorded: a device may send faster or slower.'],
    level: ({ rate, load }) => (rate !== 'on event' && load.status === 'not computed' ? 'not assessed' : null),
    columns: [
      { title: 'Device', width: 'tag', cell: ({ senderTag, throughTags }) => [context.tag(senderTag), ...through(context, throughTags)] },
      { title: 'PGN', width: 'text', cell: ({ pgnNumber, name }) => [String(pgnNumber), ...(name === null ? [] : [muted(` ${name}`)])] },
      { title: 'Interval', width: 'short', cell: ({ intervalMs, rate }) => (intervalMs === null ? [muted(rateWords[rate])] : [sayForWorking('intervalMs', intervalMs), muted(` ${rateWords[rate]}`)]) },
      { title: 'Number × frames', width: 'number', cell: ({ load, timesCount, payloadByteCount }) => (load.status === 'computed' ? [`${timesCount} × ${load.input.frameCount}`, muted(` of ${payloadByteCount} bytes`)] : dash) },
      { title: 'Bits a frame', width: 'number', cell: message => [bits(message)] },
      { title: 'At worst', width: 'number', cell: ({ load }) => (load.status === 'computed' ? [sayForWorking('worstBitPerS', load.output.worstBitPerS, 'result')] : dash) },
    ],
  })
}

const alikeTable = (context: ViewContext, alike: readonly AlikeSenders[]): Table => tableOf(alike, {
  id: 'alike',
  caption: 'Devices that send the same under one instance',
  empty: '',
  note: ['Instance in the data: which engine, tank or battery is meant. Device instance: which of two alike devices.'],
  level: ({ inData }) => (inData ? 'warning' : 'note'),
  columns: [
    { title: 'Devices', width: 'text', cell: ({ tags }) => joined(tags.map(tag => context.named(tag)), ' and ') },
    { title: 'PGN', width: 'text', cell: ({ pgnNumbers }) => [inWords(pgnNumbers.map(String))] },
    { title: 'Instance', width: 'short', cell: ({ instanceNumber, inData }) => [`${instanceNumber} `, muted(inData ? 'in the data' : 'of the device')] },
  ],
})
