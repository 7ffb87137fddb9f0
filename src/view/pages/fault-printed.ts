/** On paper: the steps of what serves safety in few rows, and the way on from each panel once. */
import type { FaultLine, FaultPoint } from '../../model/results/fault-tracing.js'
import { isDistributionPoint } from '../../model/lookup.js'
import type { Equipment, Tag } from '../../model/vessel.js'
import { safetyServiceOf, safetyServices, serviceDefinitions } from '../../references/safety-services.js'
import type { ViewContext } from '../context.js'
import { byTag, compareTags, tableOf } from '../tables.js'
import { dash, muted, strong } from '../text.js'
import type { Block, Table, Text } from '../view-model.js'
import { protectionText } from './circuit-parts.js'
import { expectText, labelInline } from './fault-steps.js'
import { thingPlace } from './fault-words.js'

interface PrintedRow { readonly point: FaultPoint; readonly ofTag: Tag; readonly first: boolean; readonly onTag: Tag | null }

export function printedSteps(context: ViewContext): readonly Block[] {
  const { byTag: lines } = context.results.faultTracing
  const items = context.vessel.equipment.filter(item => safetyServiceOf(item) !== null && lines.has(item.tag)).toSorted(byTag)
  if (items.length === 0) return []
  const points = new Set<Tag>()
  const tables = safetyServices.flatMap((service): Table[] => {
    const rows = items.filter(item => safetyServiceOf(item) === service).flatMap(item => rowsOf(context, item, points))
    return rows.length === 0 ? [] : [stepTable(context, rows, `steps-${service.replaceAll(' ', '-')}`, `${serviceDefinitions[service].title}: from the item to its panel`)]
  })
  const trunks = [...points].toSorted(compareTags).flatMap(tag => rowsFrom(context, tag))
  return [
    { is: 'heading', text: 'Step by step: what serves safety', anchor: 'steps' },
    { is: 'paragraph', text: ['Measure with the item switched on, between + and − at the label named. There: the fault lies between here and the row above. Not there: go on with the row below, and from the panel on with its rows in the last table. At a device measure behind it and in front of it. The steps of everything else are on the site.'] },
    ...tables,
    ...(trunks.length === 0 ? [] : [stepTable(context, trunks, 'steps-trunks', 'On from each panel and busbar to the battery')]),
  ]
}

/** Down to its own device; what feeds that is noted, to be printed once. Where mains stands in the way, looking is all. */
function rowsOf(context: ViewContext, item: Equipment, points: Set<Tag>): readonly PrintedRow[] {
  return (context.results.faultTracing.byTag.get(item.tag) ?? []).filter(({ open }) => !open).flatMap((line): readonly PrintedRow[] => {
    const last = line.points.findIndex(({ what }) => what === 'device')
    const own = last === -1 ? line.points : line.points.slice(0, last + 1)
    const atTag = line.points[last]?.atTag ?? null
    if (atTag !== null && isDistributionPoint(context.vessel, atTag)) points.add(atTag)
    return own.map((point, i) => ({ point, ofTag: item.tag, first: i === 0, onTag: i === own.length - 1 ? atTag : null }))
  })
}

const rowsFrom = (context: ViewContext, tag: Tag): readonly PrintedRow[] => {
  const line: FaultLine | undefined = context.results.faultTracing.byTag.get(tag)?.[0]
  return (line?.points ?? []).map((point, i) => ({ point, ofTag: tag, first: i === 0, onTag: null }))
}

function stepTable(context: ViewContext, rows: readonly PrintedRow[], id: string, caption: string): Table {
  return tableOf(rows, {
    id, caption, empty: '',
    columns: [
      { title: 'Look at', width: 'text', cell: row => titleText(context, row) },
      { title: 'Where', width: 'text', cell: ({ point }) => [...(point.portName === null ? [] : [`${point.portName}, `]), ...thingPlace(context, point.tag, { withAccess: false })] },
      { title: 'Measure at', width: 'text', cell: ({ point }) => labelText(context, point) },
      { title: 'Expect', width: 'short', cell: ({ point, ofTag }) => (point.reading.is === 'mains' ? [muted('mains: look only')] : point.reading.is === 'data cable' ? ['lamps lit'] : expectText(context, ofTag, { ...point, what: 'device' })) },
    ],
  })
}

function titleText(context: ViewContext, { point, first, onTag }: PrintedRow): Text {
  const circuit = context.lookup.circuits.get(point.tag)
  const name: Text = first ? [strong(point.tag), ` ${context.nameOf(point.tag) ?? ''}`] : ['then ', ...context.named(point.tag)]
  return [...name, ...(circuit === undefined ? [] : [`, ${protectionText(circuit)}`]), ...(onTag === null ? [] : [muted('; then on from '), context.tag(onTag)])]
}

function labelText(context: ViewContext, { reading }: FaultPoint): Text {
  if (reading.is !== 'voltage' || reading.plus === null) return dash
  const { plus, minus } = reading
  const same = minus === null || (plus.tag === minus.tag && plus.end === minus.end)
  return [...labelInline(context, plus), ...(same ? [] : [' and ', ...labelInline(context, minus)])]
}
