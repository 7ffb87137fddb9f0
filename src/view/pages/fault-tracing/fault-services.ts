/** Single points behind the safety services. */
import { slug } from '../../../model/address.js'
import type { ServiceDependency, SinglePoint } from '../../../model/results/dependency.js'
import type { Tag } from '../../../model/vessel.js'
import { serviceDefinitions } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { restoreText, thingPlace } from './fault-words.js'

const titleOf = ({ service }: ServiceDependency): string => serviceDefinitions[service].title

/** One row a service: what gives it, and what ends it. */
export function servicesTable(context: ViewContext): Table {
  return tableOf(context.results.dependency.services, {
    id: 'single-points',
    caption: 'Single points behind safety services',
    empty: '',
    columns: [
      { title: 'Service', width: 'text', cell: service => [titleOf(service)] },
      { title: 'Given by', width: 'text', cell: service => givenBy(context, service) },
      { title: 'Ended by any one of', width: 'text', cell: service => endedBy(context, service) },
    ],
  })
}

function givenBy(context: ViewContext, { itemTags, notAssessedTags }: ServiceDependency): Text {
  if (itemTags.length + notAssessedTags.length === 0) return [muted('nothing recorded')]
  return joined([
    ...itemTags.map(context.named),
    ...notAssessedTags.map((tag): Text => [...context.named(tag), ' ', verdict('not assessed', 'not assessed')]),
  ], lineBreak)
}

function endedBy(context: ViewContext, { itemTags, takesAll }: ServiceDependency): Text {
  if (itemTags.length === 0) return dash
  const { things, wires } = parted(context, takesAll)
  if (takesAll.length === 0) return ['no single thing that is recorded']
  return [
    ...joined(things.map(({ tag }) => [context.tag(tag)])),
    ...(wires.length === 0 ? [] : [`${things.length === 0 ? '' : ', and '}${counted(wires.length, 'cable or part of a bus', 'cables or parts of a bus')}`]),
  ]
}

/** Things one can look at and switch, apart from cables and the small parts of a bus. */
function parted({ lookup }: ViewContext, points: readonly SinglePoint[]): { readonly things: readonly SinglePoint[]; readonly wires: readonly SinglePoint[] } {
  const isThing = ({ tag }: SinglePoint) => lookup.circuits.has(tag) || lookup.items.has(tag) || lookup.canBuses.has(tag)
  return { things: points.filter(isThing), wires: points.filter(point => !isThing(point)) }
}

/** A table a service: each single point, what it takes and what brings it back. */
export function serviceTables(context: ViewContext): readonly Block[] {
  return context.results.dependency.services.filter(({ itemTags }) => itemTags.length > 0).map(service => serviceTable(context, service))
}

interface PointRow { readonly tags: readonly Tag[]; readonly points: readonly SinglePoint[]; readonly all: boolean }

function serviceTable(context: ViewContext, service: ServiceDependency): Table {
  const rowsOf = (points: readonly SinglePoint[], all: boolean): readonly PointRow[] => {
    const { things, wires } = parted(context, points)
    return [...things.map(point => ({ tags: [point.tag], points: [point], all })), ...wiresTogether(wires).map(together => ({ tags: together.map(({ tag }) => tag), points: together, all }))]
  }
  const ownTags = new Set(service.itemTags)
  // That a lamp is lost with itself goes without saying, unless it is the only one.
  const some = service.takesSome.filter(({ tag, lostTags }) => !(ownTags.has(tag) && lostTags.length === 1))
  return tableOf([...rowsOf(service.takesAll, true), ...rowsOf(some, false)], {
    id: `points-${slug(service.service)}`,
    caption: `${titleOf(service)}: what takes all or part of it`,
    empty: 'No single thing that is recorded takes any of it, but for each item itself.',
    columns: [
      { title: 'If this is lost', width: 'text', cell: ({ tags }) => (tags.length === 1 ? context.named(tags[0]!) : joined(tags.map(tag => [context.tag(tag)]))) },
      { title: 'Where', width: 'text', cell: ({ tags }) => (tags.length === 1 ? thingPlace(context, tags[0]!, { withAccess: false }) : dash) },
      { title: 'It takes', width: 'text', cell: ({ points, all }) => takenText(context, points, all) },
    ],
  })
}

/** Cables and parts of a bus that take the same items stand in one row. */
function wiresTogether(wires: readonly SinglePoint[]): readonly (readonly SinglePoint[])[] {
  const together = new Map<string, SinglePoint[]>()
  for (const point of wires) {
    const key = [point.lostTags.toSorted().join(' '), point.restoreBy.join(' ')].join('|')
    const known = together.get(key)
    if (known === undefined) together.set(key, [point])
    else known.push(point)
  }
  return [...together.values()]
}

function takenText(context: ViewContext, points: readonly SinglePoint[], all: boolean): Text {
  const [point] = points as [SinglePoint]
  return [
    ...(all ? [verdict('warning', 'ends it'), ' '] : []),
    ...joined(point.lostTags.map(tag => [context.tag(tag)])),
    ...(point.restoreBy.length === 0 ? [] : [lineBreak, muted('back by hand: '), ...restoreText(context, [point])]),
  ]
}
