/** Readings against calculation: one table a kind, what deviations usually mean, and the sums to redo by hand. */
import { type CheckKind, isAssessed, type Measured, type ReadingCheck } from '../../../model/results/commissioning.js'
import type { Comparison, Computed } from '../../../model/results.js'
import { sayResidualCurrent } from '../../../references/basis/ac-rules.js'
import { type Citation, cite } from '../../../references/bibliography.js'
import { say, sayAgainst, sayForWorking } from '../../../units/format.js'
import { type Quantities, unitOf } from '../../../units/quantity.js'
import type { ViewContext } from '../../context.js'
import { wordsOf } from '../../parts/nomenclature.js'
import { fixedPages } from '../../site-map.js'
import { type ColumnOf, tableOf } from '../../tables.js'
import { dash, joined, lineBreak, linkTo, muted, verdict } from '../../text.js'
import type { Block, Level, Table, Text, Working, WorkingLine } from '../../view-model.js'
import { methodOf } from '../../parts/working.js'
import { limitText } from '../ac-supply/ac-supply-state.js'

/** In the order of the page. */
const captions: Readonly<Record<CheckKind, string>> = {
  'voltage drop': 'Voltage drop, source to load and back',
  'voltage': 'Voltage',
  'current': 'Current',
  'insulation resistance': 'Insulation resistance',
  'polarity': 'Polarity',
  'trip current': 'Residual current at which a device trips',
  'trip time': 'Time in which a residual-current device trips',
  'internal resistance': 'Internal resistance of batteries',
  'resistance between data wires': 'Resistance between the data wires of a bus',
  'voltage on a bus': 'Voltage along a bus',
  'load of a bus': 'Load of a bus',
  'standing wave ratio': 'Standing wave ratio (VSWR)',
}

/** Where the sum is that is not on this page. */
const onBusPage: Text = ['The sum is on the page of the bus. ']
const sumsElsewhere: Readonly<Partial<Record<CheckKind, Text>>> = {
  'resistance between data wires': onBusPage, 'voltage on a bus': onBusPage, 'load of a bus': onBusPage,
  'standing wave ratio': ['What an antenna on its limit gives behind the loss of its cable; the sum is under ', linkTo(fixedPages.radio, 'Radio and antennas'), '. '],
}

export const standing = (checks: readonly ReadingCheck[]): readonly ReadingCheck[] => checks.filter(({ supersededBy }) => supersededBy === null)

/** On paper the reading's nearest limit only, and of the sums those that come nearest to theirs. */
export function measuredBlocks(context: ViewContext, { onPaper = false } = {}): readonly Block[] {
  const { checks } = context.results.commissioning
  if (checks.length === 0) return []
  return [
    { is: 'heading', text: 'Measured against calculated', anchor: 'measured' },
    ...(Object.keys(captions) as CheckKind[]).flatMap(kind => {
      const ofKind = checks.filter(check => check.kind === kind)
      return ofKind.length === 0 ? [] : [kindTable(context, kind, ofKind, onPaper)]
    }),
    ...meaningBlocks(context, standing(checks)),
    ...gapBlocks(context, standing(checks)),
    ...workingBlocks(context, checks, onPaper),
  ]
}

// --- tables ----------------------------------------------------------------------------------------------------------
function kindTable(context: ViewContext, kind: CheckKind, checks: readonly ReadingCheck[], onPaper: boolean): Table {
  // What is recorded of the item itself is a limit of its own for each.
  const said = (citation: Citation): string => cite(citation.source === 'vessel-data' ? { ...citation, place: 'what is recorded of the item' } : citation)
  const sources = [...new Set(checks.flatMap(({ limits, tolerances }) => [...limits, ...tolerances].map(({ limit }) => said(limit.citation))))]
  const hasFigure = checks.some(({ calculated }) => calculated !== null)
  return tableOf(checks, {
    id: `measured-${kind.replaceAll(' ', '-')}`,
    caption: captions[kind],
    empty: '',
    columns: readingColumns(context, onPaper).filter(({ title }) => hasFigure || title !== 'Calculated'),
    level: check => (check.supersededBy === null ? rowLevel(verdictOf(check).level) : null),
    ...(sources.length === 0 ? {} : { note: [...sumsElsewhere[kind] ?? [], `Accepted by: ${sources.join('; ')}.`] }),
  })
}
const rowLevel = (level: Level): Level | null => (level === 'error' || level === 'warning' ? level : null)

const readingColumns = (context: ViewContext, onPaper = false): readonly ColumnOf<ReadingCheck>[] => [
  { title: 'Reading', width: 'tag', cell: ({ number, date }) => [number, ...(date === null ? [] : [lineBreak, muted(date)])] },
  { title: 'Of', width: 'text', cell: check => subjectText(context, check) },
  { title: 'Measured', width: 'number', cell: ({ measured }) => [measuredText(context, measured), ...differenceText(context, measured)] },
  { title: 'Calculated', width: 'number', cell: ({ calculated }) => (calculated === null ? dash : [rangeText(context, calculated)]) },
  {
    title: onPaper ? 'Nearest limit, and what is left' : 'Accepted, and what is left', width: 'text',
    cell: ({ limits, tolerances }) => { const all = [...tolerances, ...limits]; return acceptedText(context, onPaper ? nearest(all) : all) },
  },
  { title: 'Verdict', width: 'short', cell: check => { const { level, text } = verdictOf(check); return [verdict(level, text)] } },
]

/** All readings in one table, for machines. */
export function measurementTable(context: ViewContext): Table {
  const [reading, ...others] = readingColumns(context)
  return tableOf(context.results.commissioning.checks, {
    id: 'measurements', caption: 'Measurements', empty: 'No reading is recorded.',
    columns: [
      { ...reading!, cell: ({ number }) => [number] },
      { title: 'Date', width: 'short', cell: ({ date }) => [date ?? ''] },
      { title: 'Kind', width: 'short', cell: ({ kind }) => [kind] },
      ...others,
      { title: 'Usually means', width: 'text', cell: ({ meaning }) => [meaning?.usually.join('; ') ?? ''] },
      { title: 'Not assessed because', width: 'text', cell: ({ gaps }) => [gaps.join('; ')] },
    ],
  })
}

function subjectText(context: ViewContext, { subjectTag, loadTag }: ReadingCheck): Text {
  const at = loadTag === null || loadTag === subjectTag ? [] : [lineBreak, 'at ', ...context.named(loadTag)]
  return [...context.named(subjectTag), ...at]
}

/** Residual currents are read in milliampere; ohms of a bus are whole ones and tenths. */
function quantityText({ vessel }: ViewContext, quantity: string, value: number): string {
  if (quantity === 'residualCurrentA') return sayResidualCurrent(value)
  return quantity === 'resistanceOhm' ? sayForWorking(quantity, value) : say(quantity, value, vessel)
}
export const measuredText = (context: ViewContext, measured: Measured): string =>
  ('words' in measured ? measured.words : quantityText(context, measured.quantity, measured.value))

const differenceText = (context: ViewContext, measured: Measured): Text => {
  if ('words' in measured || measured.difference === undefined) return []
  const [higher, lower] = measured.difference
  return [lineBreak, muted(`${say('voltageV', higher, context.vessel)} − ${say('voltageV', lower, context.vessel)}`)]
}

function rangeText(context: ViewContext, { quantity, least, most }: NonNullable<ReadingCheck['calculated']>): string {
  const from = quantityText(context, quantity, least)
  const to = quantityText(context, quantity, most)
  return from === to ? from : `${from} to ${to}`
}

/** What is left, as a share of the limit; least where it is missed by most. */
const shareLeft = ({ margin, limit }: Comparison): number => margin / Math.max(Math.abs(limit.value), Number.MIN_VALUE)
const nearest = (comparisons: readonly Comparison[]): readonly Comparison[] => comparisons.toSorted((a, b) => shareLeft(a) - shareLeft(b)).slice(0, 1)

function acceptedText(context: ViewContext, comparisons: readonly Comparison[]): Text {
  if (comparisons.length === 0) return dash
  return joined(comparisons.map(comparison => [limitOfReading(context, comparison), ' ', muted(`(${marginText(context, comparison)})`)]), lineBreak)
}

function limitOfReading(context: ViewContext, comparison: Comparison): string {
  const { quantity, value, limit } = comparison
  // What is compared is not what was read, so it is said too.
  const compared = quantity === 'measuredDropPercent' ? `${sayAgainst(quantity, value, limit.value, context.vessel).actual} of nominal, ` : ''
  return `${compared}${quantity === 'resistanceOhm' ? `${limit.relation} ${quantityText(context, quantity, limit.value)}` : limitText(context, comparison)}`
}
const marginText = (context: ViewContext, { quantity, margin, within }: Comparison): string =>
  `${quantityText(context, quantity, Math.abs(margin))} ${within ? 'left' : 'missed'}`

/** What is not assessed is no pass, even where the rest is within. */
export function verdictOf(check: ReadingCheck): { readonly level: Level; readonly text: string } {
  const { supersededBy, measured, limits, tolerances, gaps } = check
  if (supersededBy !== null) return { level: 'note', text: `replaced by ${supersededBy}` }
  if ('words' in measured) return measured.words === 'right' ? { level: 'good', text: 'right' } : { level: 'error', text: 'reversed' }
  if (limits.some(({ within }) => !within)) return { level: 'error', text: 'outside limit' }
  if (tolerances.some(({ within }) => !within)) return { level: 'warning', text: 'outside tolerance' }
  if (!isAssessed(check)) return { level: 'not assessed', text: 'not assessed' }
  return gaps.length > 0 ? { level: 'not assessed', text: 'assessed in part' } : { level: 'good', text: 'within' }
}

// --- meanings --------------------------------------------------------------------------------------------------------
function meaningBlocks(context: ViewContext, checks: readonly ReadingCheck[]): readonly Block[] {
  const off = checks.filter(({ meaning }) => meaning !== null)
  if (off.length === 0) return []
  return [tableOf(off, {
    id: 'meanings',
    caption: 'What the deviations usually mean',
    empty: '',
    note: ['Common practice, no source: an order in which to look, the likeliest first. Make dead before anything is opened.'],
    columns: [
      { title: 'Reading', width: 'tag', cell: ({ number }) => [number] },
      { title: 'What', width: 'text', cell: check => [`${check.kind} `, ...(check.deviation === null ? [] : [check.deviation === 'above' ? 'too high, ' : check.deviation === 'below' ? 'too low, ' : `${check.deviation}, `]), context.tag(check.subjectTag)] },
      { title: 'Usually', width: 'text', cell: ({ meaning }) => joined(meaning!.usually.map(each => [each]), lineBreak) },
      { title: 'Look here first', width: 'text', cell: ({ meaning }) => [meaning!.lookFirst] },
    ],
  })]
}

function gapBlocks(context: ViewContext, checks: readonly ReadingCheck[]): readonly Block[] {
  const gaps = checks.flatMap(check => check.gaps.map(reason => ({ check, reason })))
  if (gaps.length === 0) return []
  return [tableOf(gaps, {
    id: 'measured-not-assessed',
    caption: 'Read, and not assessed',
    empty: '',
    columns: [
      { title: 'Reading', width: 'tag', cell: ({ check }) => [check.number] },
      { title: 'Of', width: 'text', cell: ({ check }) => subjectText(context, check) },
      { title: 'What', width: 'short', cell: ({ check }) => [check.kind] },
      { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
    ],
  })]
}

// --- workings --------------------------------------------------------------------------------------------------------
/** The columns that fit beside the reading's number. */
const mostColumns = 6

/** For each calculation its formula, and in a table what went into it and what came out, reading by reading. */
function workingBlocks(context: ViewContext, all: readonly ReadingCheck[], onPaper: boolean): readonly Block[] {
  const checks = onPaper ? mostTelling(all) : all
  const sums = checks.flatMap(({ number, workings }) => workings.flatMap(outcome => (outcome.status === 'computed' ? [{ number, outcome }] : [])))
  const methods = [...new Set(sums.map(({ outcome }) => outcome.method))]
  if (methods.length === 0) return []
  return [
    { is: 'heading', text: 'Working', anchor: 'working' },
    ...(onPaper ? [{ is: 'paragraph', text: ['Of each kind, the readings that are outside and the one that came nearest. The sums of all others are on the site.'] } as const] : []),
    ...methods.flatMap(method => sumsOf(context, method, sums.filter(({ outcome }) => outcome.method === method))),
  ]
}

/** Of each kind what is outside, and what came nearest to a limit. */
function mostTelling(checks: readonly ReadingCheck[]): readonly ReadingCheck[] {
  const margin = ({ limits, tolerances }: ReadingCheck): number => Math.min(...[...limits, ...tolerances].map(shareLeft))
  return (Object.keys(captions) as CheckKind[]).flatMap(kind => {
    const ofKind = standing(checks).filter(check => check.kind === kind && check.workings.length > 0).toSorted((a, b) => margin(a) - margin(b))
    return ofKind.filter((check, i) => i === 0 || margin(check) < 0)
  })
}

interface Sum { readonly number: string; readonly outcome: Computed<Quantities, Quantities> }

function sumsOf(context: ViewContext, id: string, sums: readonly Sum[]): readonly Block[] {
  const method = methodOf(context, id)
  const { input, output } = sums[0]!.outcome
  const line = (name: string): WorkingLine => ({ symbol: (method.symbols as Record<string, string>)[name] ?? null, label: wordsOf(name), value: unitOf(name)?.symbol ?? '', remark: null })
  const formula: Working = {
    is: 'working', title: method.title, formula: method.formula, inputs: Object.keys(input).map(line), results: Object.keys(output).map(line), limit: null, verdict: null,
    sources: [`Source: ${method.citations.map(cite).join('; ')}.`], assumes: method.assumes,
  }
  const column = (role: 'input' | 'result') => (name: string): ColumnOf<Sum> => ({
    title: capital(wordsOf(name)), width: 'number',
    cell: ({ outcome }) => [sayForWorking(name, (role === 'input' ? outcome.input : outcome.output)[name]!, role)],
  })
  const number: ColumnOf<Sum> = { title: 'Reading', width: 'tag', cell: sum => [sum.number] }
  const table = (part: string, columns: readonly ColumnOf<Sum>[], caption: string): Table =>
    tableOf(sums, { id: `working-${id}${part}`, caption, empty: '', columns: [number, ...columns] })
  const inputs = Object.keys(input).map(column('input'))
  const results = Object.keys(output).map(column('result'))
  return inputs.length + results.length <= mostColumns
    ? [formula, table('', [...inputs, ...results], `${method.title}, reading by reading`)]
    : [formula, table('-inputs', inputs, `${method.title}: what went in`), table('-results', results, `${method.title}: what came out`)]
}
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
