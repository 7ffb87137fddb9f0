/** A CAN bus: the backbone in its physical order. */
import type { BackboneElement, CanBus, Tag } from '../../../model/vessel.js'
import { cableLengthM } from '../../../model/results.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../say.js'
import { compareTags, tableOf } from '../../tables.js'
import { dash, muted, notRecorded, orDash } from '../../text.js'
import type { Diagram, Page, Table, Text } from '../../view-model.js'
import { lossBlocks } from '../fault-blocks.js'
import { networkTrail, withDrawings } from './network-parts.js'

export function canBusPage(context: ViewContext, bus: CanBus, diagrams: readonly Diagram[]): Page {
  const devices = bus.backbone.flatMap(element => (element.kind === 'tee' && element.deviceTag !== null ? [element.deviceTag] : []))
  const lens = devices.map(tag => context.lookup.equipment.get(tag)?.loadEquivalencyNumber ?? null)
  return {
    key: context.addressOf(bus.tag)!,
    title: `${bus.tag} ${bus.name}`,
    kicker: 'CAN bus',
    lead: bus.purpose === null ? null : [bus.purpose],
    trail: networkTrail,
    ...withDrawings(diagrams, [
      {
        is: 'facts', caption: null, entries: [
          { label: 'Devices', value: [String(devices.length)] },
          { label: 'Sum of load equivalency', value: lens.every(len => len !== null) ? [`LEN ${lens.reduce((sum: number, len) => sum + len, 0)}`] : [muted(`no sum: no load equivalency number is recorded for ${devices.filter((_, i) => lens[i] === null).toSorted(compareTags).join(', ')}`)] },
          { label: 'Backbone', value: backboneLength(context, bus) },
          { label: 'Free tees', value: [String(bus.backbone.filter(element => element.kind === 'tee' && element.deviceTag === null).length)] },
        ],
      },
      ...lossBlocks(context, bus.tag),
      backboneTable(context, bus),
    ]),
  }
}

function backboneLength(context: ViewContext, bus: CanBus): Text {
  const segments = bus.backbone.flatMap(element => (element.kind === 'segment' ? [element.cableTag] : []))
  const lengths = segments.map(tag => cableLengthM(context.results.routing.byCable.get(tag)))
  const missing = segments.filter((_, i) => lengths[i] === null)
  if (missing.length > 0) return [muted(`no sum: no length is known of ${missing.join(', ')}`)]
  return [say('backboneLengthM', lengths.reduce((sum: number, length) => sum + length!, 0), context.vessel)]
}

function backboneTable(context: ViewContext, bus: CanBus): Table {
  const length = (tag: Tag | null): Text => (tag === null ? dash : sayOrDash('lengthM', cableLengthM(context.results.routing.byCable.get(tag)), context.vessel))
  const cableOf = (element: BackboneElement): Tag | null => (element.kind === 'segment' ? element.cableTag : 'dropCableTag' in element ? element.dropCableTag : null)
  const names = { terminator: 'terminator', segment: 'backbone cable', tee: 'tee', power: 'power insertion', isolator: 'power isolator' } as const
  return tableOf(bus.backbone.map((element, i) => ({ element, position: i + 1 })), {
    id: 'backbone',
    caption: 'Along the backbone, from one terminator to the other',
    empty: 'No backbone is recorded.',
    columns: [
      { title: 'No.', width: 'number', cell: ({ position }) => [String(position)] },
      { title: 'What', width: 'short', cell: ({ element }) => [names[element.kind]] },
      { title: 'Tag', width: 'tag', cell: ({ element }) => (element.kind === 'segment' ? [context.tag(element.cableTag)] : [{ is: 'tag', text: element.tag }]) },
      { title: 'Zone', width: 'short', cell: ({ element }) => (element.kind === 'segment' ? dash : element.zoneTag === null ? [notRecorded] : context.named(element.zoneTag)) },
      { title: 'Device or circuit', width: 'text', cell: ({ element }) => (element.kind === 'tee' ? (element.deviceTag === null ? [muted('free')] : context.named(element.deviceTag)) : element.kind === 'power' && element.circuitTag !== null ? context.named(element.circuitTag) : dash) },
      { title: 'Drop cable', width: 'tag', cell: ({ element }) => (element.kind === 'segment' || cableOf(element) === null ? dash : [context.tag(cableOf(element)!)]) },
      { title: 'Length', width: 'number', cell: ({ element }) => length(cableOf(element)) },
      { title: 'LEN', width: 'number', cell: ({ element }) => orDash(element.kind === 'tee' && element.deviceTag !== null ? context.lookup.equipment.get(element.deviceTag)?.loadEquivalencyNumber?.toString() ?? null : null) },
    ],
  })
}
