/** The backbone of a CAN bus as drawn, in words, and part by part. */
import type { BusResult, BusSegment, Station } from '../../../model/results/can-bus.js'
import type { Tag } from '../../../model/vessel.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { backboneDrawings } from '../../drawings/backbone-drawing.js'
import type { DrawnCable, DrawnStation, Label } from '../../drawings/backbone-parts.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { dash, joined, muted, notRecorded, orDash } from '../../text.js'
import type { Drawing, Table, Text } from '../../view-model.js'

export const partNames: Readonly<Record<Station['part']['kind'], string>> = { terminator: 'terminator', tee: 'tee', power: 'power insertion', isolator: 'power isolator' }

// --- drawing ---------------------------------------------------------------------------------------------------------
export function backboneDrawingsOf(context: ViewContext, result: BusResult): readonly Drawing[] {
  const { bus, backbone: { stations, spans } } = result
  const title = `${bus.tag} ${bus.name}, in physical order`
  const svgs = backboneDrawings({ title, stations: stations.map((station, i) => drawnStation(context, result, station, i)), spans: spans.map(span => span.map(segment => drawnCable(context, segment))) })
  return svgs.map((svg, i): Drawing => ({
    is: 'drawing', id: `backbone-${i + 1}`, narrow: true, svg,
    caption: svgs.length === 1 ? title : `${title}, sheet ${i + 1} of ${svgs.length}`,
    description: i === 0 ? inWords(context, result) : ['Sheet 1 says it all in words.'],
  }))
}

function drawnStation(context: ViewContext, result: BusResult, station: Station, position: number): DrawnStation {
  const { part } = station
  const zone = part.zoneTag === null ? null : { key: part.zoneTag, name: context.nameOf(part.zoneTag) ?? part.zoneTag }
  const bare = { kind: part.kind, tag: part.tag, zone, beneath: null, hung: null, words: null }
  switch (part.kind) {
    case 'terminator': return { ...bare, words: `terminator, ${sayForWorking('resistanceOhm', part.resistanceOhm ?? 120)}` }
    case 'isolator': return { ...bare, words: 'power isolator: supply ends, data go on' }
    case 'power': return {
      ...bare, beneath: voltageText(insertionV(result, part.tag)), words: part.circuitTag === null ? 'power insertion, no circuit recorded' : null,
      hung: part.circuitTag === null ? null : { ...onDrop(context, part.dropCableTag), item: label(context, part.circuitTag), beside: 'feeds', name: context.nameOf(part.circuitTag) ?? '' },
    }
    case 'tee': return { ...bare, ...teeParts(context, result, station, position) }
  }
}

function teeParts(context: ViewContext, result: BusResult, { device, drop }: Station, position: number): Pick<DrawnStation, 'beneath' | 'hung' | 'words'> {
  const beneath = voltageText(teeAt(result, position)?.voltageV ?? null)
  if (device === null) return { beneath, hung: null, words: 'free' }
  const len = result.bus.suppliesDevices ? device.loadEquivalencyNumber : null
  return { beneath, words: null, hung: { ...onDrop(context, drop?.cableTag ?? null), item: label(context, device.tag), beside: len === null ? null : `LEN ${len}`, name: context.nameOf(device.tag) ?? '' } }
}

const label = (context: ViewContext, tag: Tag): Label => ({ text: tag, to: context.addressOf(tag) })
const voltageText = (voltageV: number | null): string | null => (voltageV === null ? null : say('voltageV', voltageV))
const onDrop = (context: ViewContext, cableTag: Tag | null) => ({ cable: cableTag === null ? null : label(context, cableTag), length: cableTag === null ? null : lengthText(context, cableTag) })

function lengthText(context: ViewContext, cableTag: Tag): string | null {
  const run = context.results.routing.byCable.get(cableTag)?.length
  if (run === undefined || run.status === 'not computed') return null
  return say('cableLengthM', run.status === 'declared' ? run.cableLengthM : run.output.cableLengthM, context.vessel)
}

const drawnCable = (context: ViewContext, { cableTag, busCable }: BusSegment): DrawnCable =>
  ({ cable: label(context, cableTag), facts: [lengthText(context, cableTag), busCable === null ? null : `${busCable} cable`].filter(fact => fact !== null).join(', ') })

export const teeAt = ({ supply }: BusResult, position: number) => supply.sections.flatMap(({ solved }) => solved?.tees ?? []).find(tee => tee.position === position) ?? null
const insertionV = ({ supply }: BusResult, tag: Tag): number | null => supply.sections.find(({ solved }) => solved?.insertion.tag === tag)?.solved?.insertion.voltageV ?? null

// --- words -----------------------------------------------------------------------------------------------------------
function inWords(context: ViewContext, { backbone: { stations, spans } }: BusResult): Text {
  const cables = (segments: readonly BusSegment[]): Text => joined(segments.map(({ cableTag }) => [context.tag(cableTag), ` ${lengthText(context, cableTag) ?? ''}`.trimEnd()]))
  const hung = ({ part, device }: Station): Text => {
    const tag = part.kind === 'power' ? part.circuitTag : device?.tag ?? null
    const drop = 'dropCableTag' in part ? part.dropCableTag : null
    return tag === null ? [] : [' with ', context.tag(tag), ...(drop === null ? [] : [' by ', context.tag(drop)])]
  }
  const words = (station: Station, i: number): Text => [
    ...(spans[i]!.length === 0 ? [] : ['cable ', ...cables(spans[i]!), ', ']),
    `${partNames[station.part.kind]} `, { is: 'tag', text: station.part.tag }, ...hung(station),
  ]
  const onward = spans.at(-1)!
  return ['In physical order: ', ...joined(stations.map(words), '; '), ...(onward.length === 0 ? [] : ['; then cable ', ...cables(onward), ' to an open end']), '.']
}

// --- part by part ----------------------------------------------------------------------------------------------------
interface PartRow { readonly station: Station | null; readonly segment: BusSegment | null }

/** Zone and place of each part with what hangs on it: what the drawing shows, to be searched and copied. */
export function backboneTable(context: ViewContext, { bus: { suppliesDevices }, backbone: { stations, spans } }: BusResult): Table {
  const rows = spans.flatMap((span, i): readonly PartRow[] => [...span.map(segment => ({ station: null, segment })), ...(stations[i] === undefined ? [] : [{ station: stations[i], segment: null }])])
  return tableOf(rows, {
    id: 'backbone',
    caption: 'Along the backbone, from one end to the other',
    empty: 'No backbone is recorded.',
    columns: [
      { title: 'Part', width: 'short', cell: ({ station, segment }) => (station === null ? [context.tag(segment!.cableTag), muted(' backbone')] : [{ is: 'tag', text: station.part.tag }, muted(` ${partNames[station.part.kind]}`)]) },
      { title: 'Zone', width: 'short', cell: ({ station }) => (station === null ? dash : station.part.zoneTag === null ? [notRecorded] : context.named(station.part.zoneTag)) },
      { title: 'Device or circuit', width: 'text', cell: ({ station }) => hungCell(context, station) },
      { title: 'Drop', width: 'tag', cell: ({ station }) => (station !== null && 'dropCableTag' in station.part && station.part.dropCableTag !== null ? [context.tag(station.part.dropCableTag)] : dash) },
      { title: 'Length', width: 'number', cell: ({ station, segment }) => (segment !== null ? sayOrDash('lengthM', segment.lengthM, context.vessel) : sayOrDash('lengthM', station?.drop?.lengthM, context.vessel)) },
      ...(suppliesDevices ? [{ title: 'LEN', width: 'number', cell: ({ station }: PartRow) => orDash(station?.device?.loadEquivalencyNumber?.toString() ?? null) } as const] : []),
    ],
  })
}

function hungCell(context: ViewContext, station: Station | null): Text {
  if (station === null) return dash
  const { part, device } = station
  if (part.kind === 'power') return part.circuitTag === null ? [notRecorded] : context.named(part.circuitTag)
  if (part.kind !== 'tee') return dash
  return device === null ? [muted('free')] : context.named(device.tag)
}
