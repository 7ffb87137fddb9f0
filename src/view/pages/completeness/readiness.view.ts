/** How far the boat is from being handed over: a verdict, what stands against it, and the lists behind. */
import type { TestDue } from '../../../model/results/completeness.js'
import type { Coverage } from '../../../model/results/commissioning.js'
import type { ItemStatus, Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf } from '../../tables.js'
import { counted, dash, joined, linkTo, muted, verdict } from '../../text.js'
import type { Block, Inline, Page, Table, Text } from '../../view-model.js'
import type { ShownContent } from './contents.js'
import { type Point, standsAgainst, worthKnowing } from './readiness.js'

export function readinessPage(context: ViewContext, contents: readonly ShownContent[]): Page {
  const against = standsAgainst(context, contents)
  return {
    key: fixedPages.readiness,
    title: 'Readiness for delivery',
    kicker: null,
    lead: ['What is still to be done before the boat, with this pack, is in her owner’s hands. Worked out from the data; what nobody has entered, nobody can count.'],
    printed: null,
    trail: [],
    blocks: [
      { is: 'paragraph', text: readinessVerdict(context, against) },
      pointTable(against, 'against-delivery', context.vessel.identity.deliveredOn === null ? 'What stands against delivery' : 'What stands open', 'Nothing that is recorded.'),
      pointTable(worthKnowing(context), 'worth-knowing', 'Worth knowing, and no bar', 'Nothing.'),
      zoneTable(context),
      cableTable(context),
      testTable(context),
      listTable(context),
    ],
  }
}

/** A verdict never stands alone: what it does not say follows at once. */
function readinessVerdict({ vessel: { identity } }: ViewContext, against: readonly Point[]): Text {
  if (against.length > 0) {
    const points = `${counted(against.length, 'point')} ${against.length === 1 ? 'stands' : 'stand'} open`
    return identity.deliveredOn === null
      ? [verdict('warning', 'Not ready to deliver'), `. ${points}.`]
      : [verdict('warning', 'Open points'), `. Delivered on ${identity.deliveredOn}; in this issue ${points}.`]
  }
  return [
    verdict('good', identity.deliveredOn === null ? 'Ready to deliver' : 'Nothing open'),
    ', as far as the data say: every result was calculated, every test that is due has its readings, nothing is left to commission. It certifies nothing; that is for those who sign.',
  ]
}

const pointTable = (points: readonly Point[], id: string, caption: string, empty: string): Table => tableOf(points, {
  id, caption, empty,
  columns: [
    { title: 'What', width: 'text', cell: ({ title, to }) => [to === null ? title : linkTo(to, title)] },
    { title: 'How many', width: 'text', cell: ({ count, to }) => [count, ...(to === null ? [muted(', below')] : [])] },
  ],
})

interface Open { readonly tag: Tag; readonly status: ItemStatus | null }

/** "fitted: P1, P2; no status: X1" */
function byStatus(context: ViewContext, things: readonly Open[]): Text {
  if (things.length === 0) return dash
  const words = [...new Set(things.map(({ status }) => status))].toSorted((a, b) => compareTags(a ?? '~', b ?? '~'))
  return joined(words.map(status => [
    muted(`${status ?? 'no status'}: `), ...tags(context, things.filter(thing => thing.status === status).map(({ tag }) => tag)),
  ]), { is: 'break' })
}
const tags = (context: ViewContext, of: readonly Tag[]): Text => joined(of.toSorted(compareTags).map((tag): readonly Inline[] => [context.tag(tag)]))

function zoneTable(context: ViewContext): Table {
  const { progress: { byZone } } = context.results.completeness
  const count = (n: number): Text => (n === 0 ? dash : [String(n)])
  return tableOf(byZone, {
    id: 'progress-by-zone',
    caption: 'Equipment by zone',
    empty: 'No equipment is recorded.',
    level: ({ open }) => (open.length > 0 ? 'warning' : null),
    columns: [
      { title: 'Zone', width: 'text', cell: ({ zoneTag }) => (zoneTag === null ? ['no zone'] : context.named(zoneTag)) },
      { title: 'Planned', width: 'number', cell: ({ counts }) => count(counts.planned) },
      { title: 'Fitted', width: 'number', cell: ({ counts }) => count(counts.fitted) },
      { title: 'Commissioned', width: 'number', cell: ({ counts }) => count(counts.commissioned) },
      { title: 'No status', width: 'number', cell: ({ counts }) => count(counts.none) },
      { title: 'Not commissioned', width: 'text', cell: ({ open }) => byStatus(context, open) },
    ],
  })
}

function cableTable(context: ViewContext): Table {
  const { openCables, cablesWithoutType } = context.results.completeness.progress
  const rows = [
    ...(openCables.length === 0 ? [] : [{ what: 'Not commissioned', which: byStatus(context, openCables) }]),
    ...(cablesWithoutType.length === 0 ? [] : [{ what: 'Type not known', which: tags(context, cablesWithoutType) }]),
  ]
  return tableOf(rows, {
    id: 'progress-of-cables', caption: 'Cables', empty: 'Every cable is commissioned, and of a known type.',
    columns: [
      { title: 'What', width: 'short', cell: ({ what }) => [what] },
      { title: 'Which', width: 'text', cell: ({ which }) => which },
    ],
  })
}

const testedAs: readonly { readonly what: TestDue['what']; readonly title: string; readonly of: keyof Coverage }[] = [
  { what: 'circuit', title: 'Circuits', of: 'circuits' },
  { what: 'battery', title: 'Batteries', of: 'batteries' },
  { what: 'residual-current device', title: 'Residual-current devices', of: 'residualDevices' },
  { what: 'CAN bus', title: 'CAN buses', of: 'buses' },
  { what: 'transmitter', title: 'Radio transmitters', of: 'transmitters' },
]

function testTable(context: ViewContext): Table {
  const { completeness: { progress }, commissioning: { coverage } } = context.results
  const rows = testedAs.map(row => ({ ...row, all: coverage[row.of].length, due: progress.testsDue.filter(({ what }) => what === row.what) })).filter(({ all }) => all > 0)
  return tableOf(rows, {
    id: 'tests-due', caption: 'Tests', empty: 'Nothing is recorded that would be tested.',
    note: ['What is to be read on each, with sheets to fill in, stands under ', linkTo(fixedPages.commissioning, 'Commissioning'), '.'],
    level: ({ due }) => (due.length > 0 ? 'warning' : null),
    columns: [
      { title: 'What', width: 'short', cell: ({ title }) => [title] },
      { title: 'All', width: 'number', cell: ({ all }) => [String(all)] },
      { title: 'Completely read', width: 'number', cell: ({ all, due }) => [String(all - due.length)] },
      { title: 'In part', width: 'text', cell: ({ due }) => orDashTags(context, due.filter(({ begun }) => begun)) },
      { title: 'Not yet', width: 'text', cell: ({ due }) => orDashTags(context, due.filter(({ begun }) => !begun)) },
    ],
  })
}
const orDashTags = (context: ViewContext, things: readonly { readonly tag: Tag }[]): Text => (things.length === 0 ? dash : tags(context, things.map(({ tag }) => tag)))

function listTable(context: ViewContext): Block {
  const { softwareUnread, withoutDocument, zonesWithoutPhotograph } = context.results.completeness.progress
  const rows = [
    { what: 'Software version not read', which: tags(context, softwareUnread) },
    { what: 'No maker’s manual in the pack', which: tags(context, withoutDocument) },
    { what: 'No photograph of the zone', which: joined(zonesWithoutPhotograph.map(tag => context.named(tag))) },
  ].filter(({ which }) => which.length > 0)
  return tableOf(rows, {
    id: 'progress-of-the-record', caption: 'Record', empty: 'Every software version is read, every device has its manual, every zone its photograph.',
    columns: [
      { title: 'What', width: 'short', cell: ({ what }) => [what] },
      { title: 'Which', width: 'text', cell: ({ which }) => which },
    ],
  })
}
