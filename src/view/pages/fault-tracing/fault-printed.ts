/** On paper: the steps of what serves safety in few rows, and the way on from each panel once. */
import type { ExpectedOutcome, FaultPoint } from '../../../model/results/fault-tracing.js'
import type { Tag } from '../../../model/vessel.js'
import { safetyServiceOf, safetyServices, serviceDefinitions } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { byTag, compareTags, tableOf } from '../../tables.js'
import { dash, muted, strong } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { labelInline } from './fault-steps.js'
import { leastVoltage, thingPlace } from './fault-words.js'

interface PrintedRow { readonly point: FaultPoint; readonly first: boolean; readonly onTag: Tag | null }

export function printedSteps(context: ViewContext): readonly Block[] {
  const { byTag: lines } = context.results.faultTracing
  const items = context.vessel.equipment.filter(item => safetyServiceOf(item) !== null && lines.has(item.tag)).toSorted(byTag)
  if (items.length === 0) return []
  const points = new Set<Tag>()
  const tables = safetyServices.flatMap((service): Table[] => {
    const rows = items.filter(item => safetyServiceOf(item) === service).flatMap(item => rowsOf(context, item.tag, points))
    return rows.length === 0 ? [] : [stepTable(context, rows, `steps-${service.replaceAll(' ', '-')}`, `${serviceDefinitions[service].title}: from the item to its panel`)]
  })
  const trunks = trunkRows(context, new Set([...points].toSorted(compareTags)))
  return [
    { is: 'heading', text: 'Step by step: what serves safety', anchor: 'steps' },
    { is: 'paragraph', text: ['Measure with the item switched on, between + and − at the label named. There: the fault lies between here and the row above. Not there: go on with the row below, and from the panel on with its rows in the last table. At a device measure behind it and in front of it. The figures hold with the nominal voltage at the battery and all else on. The steps of everything else are on the site.'] },
    ...tables,
    ...(trunks.length === 0 ? [] : [stepTable(context, trunks, 'steps-trunks', 'On from each panel and busbar to the batteries')]),
  ]
}

/** Down to its own device; what feeds that is noted, to be printed once. Where mains stands in the way, looking is all. */
function rowsOf(context: ViewContext, tag: Tag, points: Set<Tag>): readonly PrintedRow[] {
  return (context.results.faultTracing.byTag.get(tag) ?? []).filter(({ open }) => !open).flatMap((line): readonly PrintedRow[] => {
    const last = line.points.findIndex(({ what }) => what === 'device')
    // What stands between the device and its source is printed with the device, the source by itself.
    const source = line.points.findIndex(({ what }, i) => i > last && (what === 'device' || what === 'battery' || what === 'source'))
    const own = last === -1 ? line.points : line.points.slice(0, source === -1 ? undefined : source)
    const atTag = line.points[last]?.atTag ?? null
    if (atTag !== null) points.add(atTag)
    return own.map((point, i) => ({ point, first: i === 0, onTag: i === own.length - 1 ? atTag : null }))
  })
}

/** From each point that was noted on to the next, until the batteries; each once. */
function trunkRows(context: ViewContext, points: Set<Tag>): readonly PrintedRow[] {
  const rows: PrintedRow[] = []
  for (const tag of points) rows.push(...(context.lookup.batteries.has(tag) ? batteryRow(context, tag) : rowsOf(context, tag, points)))
  return rows
}

/** A battery as it is read at the end of any way to it. */
function batteryRow(context: ViewContext, tag: Tag): readonly PrintedRow[] {
  const point = [...context.results.faultTracing.byTag.values()].flat().flatMap(({ points }) => points).find(each => each.what === 'battery' && each.tag === tag)
  return point === undefined ? [] : [{ point, first: true, onTag: null }]
}

function stepTable(context: ViewContext, rows: readonly PrintedRow[], id: string, caption: string): Table {
  return tableOf(rows, {
    id, caption, empty: '',
    columns: [
      { title: 'Look at', width: 'text', cell: row => titleText(context, row) },
      { title: 'Where', width: 'text', cell: ({ point }) => [...(point.portName === null ? [] : [`${point.portName}, `]), ...thingPlace(context, point.tag, { withAccess: false })] },
      { title: 'Measure at', width: 'text', cell: ({ point }) => labelText(context, point) },
      { title: 'At least', width: 'number', align: 'left', cell: ({ point }) => (point.reading.is === 'mains' ? [muted('mains: look only')] : point.reading.is === 'data cable' ? ['lamps lit'] : leastText(context, point, point.reading.expected)) },
    ],
  })
}

const leastText = (context: ViewContext, point: FaultPoint, expected: ExpectedOutcome): Text =>
  (expected.status === 'computed' ? [strong(leastVoltage(context, point, expected.output.leastVoltageV))] : [muted('not assessed')])

function titleText(context: ViewContext, { point, first, onTag }: PrintedRow): Text {
  const circuit = context.lookup.circuits.get(point.tag)
  const name: Text = first ? [strong(point.tag), ` ${context.nameOf(point.tag) ?? ''}`] : [point.what === 'bus' ? 'then tee ' : 'then ', ...context.named(point.tag)]
  return [...name, ...(circuit === undefined ? [] : [`, ${protectionText(circuit)}`]), ...(onTag === null ? [] : [muted('; then on from '), context.tag(onTag)])]
}

function labelText(context: ViewContext, { reading }: FaultPoint): Text {
  if (reading.is !== 'voltage' || reading.plus === null) return dash
  const { plus, minus } = reading
  const same = minus === null || (plus.tag === minus.tag && plus.end === minus.end)
  return [...labelInline(context, plus), ...(same ? [] : [' and ', ...labelInline(context, minus)])]
}
