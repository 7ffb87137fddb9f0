/** Port by port, link by link: what ends where, how long and how fast it is, what runs over it. */
import type { EthernetLink, LinkEnd, LinkLoad, PortUse, StreamWay } from '../../../model/results/ethernet.js'
import { slug } from '../../../model/address.js'
import type { Equipment } from '../../../model/vessel.js'
import { say, sayAgainst, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, muted, orDash, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'

export const isFree = ({ cables }: PortUse): boolean => cables.length === 0

export function portTable(context: ViewContext, item: Equipment): Table {
  const ports = context.results.ethernet.ports.get(item.tag) ?? []
  // A row for each cable: two on one port is a mistake that must show.
  const rows = ports.flatMap((port): readonly { readonly port: PortUse; readonly cable: PortUse['cables'][number] | null }[] => (isFree(port) ? [{ port, cable: null }] : port.cables.map(cable => ({ port, cable }))))
  return tableOf(rows, {
    id: `ports-${slug(item.tag)}`,
    caption: `${item.tag} ${item.name}, port by port`,
    empty: 'No ports are recorded.',
    note: [`${counted(ports.filter(isFree).length, 'free port')} of ${ports.length}.`],
    level: ({ port }) => (port.cables.length > 1 ? 'error' : null),
    columns: [
      { title: 'Port', width: 'tag', cell: ({ port }) => [port.name] },
      { title: 'Speed', width: 'number', cell: ({ port }) => sayOrDash('speedMbitPerS', port.speedMbitPerS, context.vessel) },
      { title: 'Gives class', width: 'number', cell: ({ port }) => orDash(port.powerClass === null ? null : String(port.powerClass)) },
      { title: 'Cable', width: 'tag', cell: ({ cable }) => (cable === null ? dash : [context.tag(cable.cableTag)]) },
      { title: 'To', width: 'text', cell: ({ cable }) => (cable === null ? [verdict('good', 'free')] : endText(context, { tag: cable.farTag, portName: cable.farPortName })) },
    ],
  })
}

const endText = (context: ViewContext, { tag, portName }: Pick<LinkEnd, 'tag' | 'portName'>): Text =>
  [...context.named(tag), ...(portName === null ? [] : [muted(` ${portName}`)])]

const cablesText = (context: ViewContext, { cableTags }: EthernetLink): Text => joined(cableTags.map(tag => [context.tag(tag)]), ' + ')

export const lengthM = ({ length }: EthernetLink): number | null => (length.status === 'computed' ? length.output.channelLengthM : null)

export function linkTable(context: ViewContext, links: readonly EthernetLink[]): Table {
  const longest = links.find(({ lengthComparison }) => lengthComparison !== null)?.lengthComparison
  return tableOf(links, {
    id: 'links',
    caption: 'Links: length and speed',
    empty: 'No network cable is recorded.',
    note: [
      ...(longest == null ? [] : [`At most ${say('channelLengthM', longest.limit.value, context.vessel)} from port to port, cords included. `]),
      'The slower of the two ports sets the speed.',
    ],
    level: ({ lengthComparison }) => (lengthComparison?.within === false ? 'error' : null),
    columns: [
      { title: 'Cable', width: 'tag', cell: link => cablesText(context, link) },
      { title: 'From', width: 'text', cell: ({ ends }) => endText(context, ends[0]) },
      { title: 'To', width: 'text', cell: ({ ends }) => endText(context, ends[1]) },
      { title: 'Length', width: 'number', cell: link => lengthText(context, link) },
      { title: 'Speed', width: 'text', cell: link => speedText(context, link) },
    ],
  })
}

function lengthText({ vessel }: ViewContext, { length, lengthComparison }: EthernetLink): Text {
  if (length.status === 'not computed') return [muted('not known')]
  if (lengthComparison?.within !== false) return [say('channelLengthM', length.output.channelLengthM, vessel)]
  return [sayAgainst('channelLengthM', lengthComparison.value, lengthComparison.limit.value, vessel).actual, ' ', verdict('error', 'too long')]
}

const speedText = ({ vessel }: ViewContext, { speedMbitPerS, speedReason }: EthernetLink): Text =>
  (speedMbitPerS === null ? [muted('not known')] : [say('speedMbitPerS', speedMbitPerS, vessel), ...(speedReason.startsWith('set by') ? [' ', muted(speedReason)] : [])])

// --- load ------------------------------------------------------------------------------------------------------------
/** A link in one direction. */
interface Direction { readonly link: EthernetLink; readonly from: LinkEnd; readonly to: LinkEnd; readonly load: LinkLoad }

const directionsOf = (link: EthernetLink): readonly Direction[] => {
  const [a, b] = link.ends
  return [{ link, from: a, to: b, load: link.loads[0] }, { link, from: b, to: a, load: link.loads[1] }]
}

export const percentOf = ({ load: { load } }: Direction): number | null => (load.status === 'computed' ? load.output.loadPercent : null)

/** The direction of a link that is fullest; null where nothing runs. */
export const fullest = (links: readonly EthernetLink[]): Direction | null =>
  links.flatMap(directionsOf).filter(each => each.load.parts.length > 0 && percentOf(each) !== null)
    .reduce<Direction | null>((most, each) => (most === null || percentOf(each)! > percentOf(most)! ? each : most), null)

export function loadTable(context: ViewContext, links: readonly EthernetLink[]): Table {
  const loaded = links.flatMap(directionsOf).filter(({ load }) => load.parts.length > 0)
  return tableOf(loaded, {
    id: 'link-load',
    caption: 'What the streams put on the links',
    empty: 'No stream runs over these links, as far as is recorded.',
    note: ['Share: sum of the streams in that direction over the speed of the link. Plan with at most 70 % (common practice): charts, updates and what people do need the rest.'],
    level: ({ load }) => (load.againstSpeed === null ? 'not assessed' : !load.againstSpeed.within ? 'error' : load.againstPlan?.within === false ? 'warning' : null),
    columns: [
      { title: 'Cable', width: 'tag', cell: ({ link }) => cablesText(context, link) },
      { title: 'Way', width: 'short', cell: ({ from, to }) => [context.tag(from.tag), '\u00A0to\u00A0', context.tag(to.tag)] },
      { title: 'What', width: 'text', cell: ({ load }) => joined(load.parts.map(({ senderTag, name, rateMbitPerS, timesCount }): Text =>
        [`${name} of `, context.tag(senderTag), ` ${timesCount > 1 ? `${timesCount} × ` : ''}${sayForWorking('rateMbitPerS', rateMbitPerS)}`]), '; ') },
      { title: 'Sum', width: 'number', cell: ({ load }) => [sayForWorking('streamsMbitPerS', load.streamsMbitPerS)] },
      { title: 'Share', width: 'number', cell: each => { const percent = percentOf(each); return percent === null ? [muted('not assessed')] : [say('loadPercent', percent)] } },
    ],
  })
}

export function streamTable(context: ViewContext, streams: readonly StreamWay[]): readonly Block[] {
  return streams.length === 0 ? [] : [tableOf(streams, {
    id: 'streams',
    caption: 'Streams and who takes them',
    empty: '',
    columns: [
      { title: 'Sender', width: 'text', cell: ({ senderTag }) => context.named(senderTag) },
      { title: 'Stream', width: 'text', cell: ({ name, multicast }) => [name, ' ', muted(multicast ? 'once for all' : 'once for each')] },
      { title: 'Rate', width: 'number', cell: ({ rateMbitPerS }) => [sayForWorking('rateMbitPerS', rateMbitPerS)] },
      { title: 'Taken by', width: 'text', cell: ({ receivers }) => (receivers.length === 0 ? [muted('nobody on record')]
        : joined(receivers.map(({ tag, linkTags }): Text => [context.tag(tag), ...(linkTags === null ? [muted(' (no way recorded)')] : [])]))) },
    ],
  })]
}

