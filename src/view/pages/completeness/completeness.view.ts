/** What the pack holds of what is asked of an owner's manual: one table for each source that asks. */
import { grouped } from '../../../model/lookup.js'
import type { ContentState } from '../../../model/results/completeness.js'
import { bibliography, type Citation, type Source, type SourceKey, standingOf } from '../../../references/bibliography.js'
import { outsideManual, requiredContents } from '../../../references/tables/required-contents.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf, type ColumnOf } from '../../tables.js'
import { counted, dash, joined, lineBreak, linkTo, muted, pageNumber, verdict } from '../../text.js'
import type { Block, Inline, Level, Page, PageKey, Text } from '../../view-model.js'
import { volumes } from '../../volumes.js'
import { openContents, type ShownContent, shownContents } from './contents.js'
import { readinessPage } from './readiness.view.js'
import { signOffPage } from './sign-off.view.js'

/** `pages`: those that this pack has besides. */
export function completenessPages(context: ViewContext, pages: readonly Page[]): readonly Page[] {
  const own = [fixedPages.completeness, fixedPages.readiness, fixedPages.signOff]
  const contents = shownContents(context, new Set([...pages.map(({ key }) => key), ...own]))
  return [completenessPage(context, pages, contents), readinessPage(context, contents), signOffPage(context, contents)]
}

interface Group { readonly id: string; readonly title: string; readonly sources: readonly SourceKey[] | null; readonly by: string | null }

/** In the order in which they bind. No `sources`: every other one; no `by`: the contents are in the order of the list, without their place. */
const groups: readonly Group[] = [
  { id: 'directive', title: 'Directive 2013/53/EU, annex I, part A', sources: ['2013-53-eu'], by: 'Point' },
  { id: 'owners-manual', title: 'ISO 10240, owner’s manual', sources: ['iso-10240'], by: 'Clause' },
  { id: 'electrical', title: 'The electrical chapter, ISO 10133 and ISO 13297', sources: ['iso-10133', 'iso-13297'], by: null },
  { id: 'others', title: 'Other standards that ask for text', sources: null, by: 'Standard' },
]
const grouping = new Set(groups.flatMap(({ sources }) => sources ?? []))
const isOf = ({ sources }: Group, { source }: Citation): boolean => (sources === null ? !grouping.has(source) : sources.includes(source))

interface Row { readonly content: ShownContent; readonly places: readonly string[] }

function rowsOf(group: Group, contents: readonly ShownContent[]): readonly Row[] {
  const rows = contents.flatMap(content => {
    const cited = requiredContents[content.key].askedBy.filter(citation => isOf(group, citation))
    return cited.length === 0 ? [] : [{ content, places: cited.map(citation => placeIn(group, citation)).toSorted(compareTags) }]
  })
  return group.by === null ? rows : rows.toSorted((a, b) => compareTags(a.places[0]!, b.places[0]!))
}

function placeIn(group: Group, { source, place }: Citation): string {
  if (group.by === null || group.by === 'Standard') return bibliography[source].designation
  return place.replace(/^annex I A, /, '').replace('general requirements', 'general')
}

function completenessPage(context: ViewContext, pages: readonly Page[], contents: readonly ShownContent[]): Page {
  const printedKeys = new Set(volumes(context, pages).flatMap(({ chapters }) => chapters.flatMap(({ pageKeys }) => pageKeys)))
  const titles = new Map(pages.map(({ key, title }) => [key, title]))
  const tables = (onPaper: boolean): readonly Block[] => groups.flatMap(group => groupBlocks(context, group, contents, { titles, printedKeys: onPaper ? printedKeys : null }))
  return {
    key: fixedPages.completeness,
    title: 'Completeness',
    kicker: null,
    lead: lead(context, contents),
    printed: [counts(context, contents), howTo, ...tables(true)],
    trail: [],
    blocks: [counts(context, contents), howTo, ...tables(false)],
  }
}

function lead({ vessel }: ViewContext, contents: readonly ShownContent[]): Text {
  const open = openContents(contents)
  const [missing, inPart] = [open.filter(({ state }) => state === 'missing').length, open.filter(({ state }) => state === 'in part').length]
  const asked = 'What law and standards ask of the owner’s manual of a boat, and where it is. '
  if (vessel.basis !== 'iso') return [`${asked}The sources are those of Europe; under the rules of this boat they are advice.`]
  if (open.length === 0) return [`${asked}Of what is required nothing is missing, as far as the data say. That a page is there is checked; whether its words meet the standard is for whoever declares conformity.`]
  return [`${asked}Of what is required ${counted(missing, 'content')} ${missing === 1 ? 'is' : 'are'} ${vessel.identity.deliveredOn === null ? 'not there yet' : 'missing'}, and ${inPart} ${inPart === 1 ? 'is' : 'are'} there in part.`]
}

const howTo: Block = {
  is: 'paragraph',
  text: ['What another document holds, or what does not apply, is entered under ', { is: 'tag', text: 'manual-contents' }, ' in the vessel’s data, by the key that stands with each content.'],
}

const states = ['in the pack', 'in part', 'elsewhere', 'not applicable', 'missing'] as const satisfies readonly ContentState[]

function counts({ vessel }: ViewContext, contents: readonly ShownContent[]): Block {
  const isDelivered = vessel.identity.deliveredOn !== null
  const labels: Readonly<Record<ContentState, string>> = {
    'in the pack': 'In this pack', 'in part': 'In this pack in part', 'elsewhere': 'In another document', 'not applicable': 'Does not apply', 'missing': isDelivered ? 'Missing' : 'Not there yet',
  }
  const of = (state: ContentState): Text => {
    const [all, required] = [contents.filter(content => content.state === state), contents.filter(content => content.state === state && content.isRequired)]
    return [`${all.length}${all.length === required.length ? '' : `, ${required.length} of them required`}`]
  }
  return { is: 'facts', caption: `${contents.length} contents`, entries: states.map(state => ({ label: labels[state], value: of(state) })) }
}

interface Shown { readonly titles: ReadonlyMap<PageKey, string>; readonly printedKeys: ReadonlySet<PageKey> | null }

function groupBlocks(context: ViewContext, group: Group, contents: readonly ShownContent[], { titles, printedKeys }: Shown): readonly Block[] {
  const rows = rowsOf(group, contents)
  const inState = grouped(rows, ({ content }) => [content.state])
  const sheet: ColumnOf<Row> = { title: 'Sheet', width: 'number', cell: ({ content }) => sheets(content, printedKeys ?? new Set()) }
  return [tableOf(rows, {
    id: `asked-${group.id}`,
    caption: `${group.title}: ${states.filter(state => inState.has(state)).map(state => `${inState.get(state)!.length} ${wordFor(context, state)}`).join(', ')}`,
    empty: 'Nothing is asked.',
    columns: [
      { title: group.by === null ? 'Content' : `${group.by} and content`, width: 'text', cell: ({ content: { key, isRequired }, places }) => [...(group.by === null ? [] : [muted(places.join(', ')), '\u2002']), requiredContents[key].title, ...(isRequired ? [] : [muted(' (recommended)')]), lineBreak, { is: 'tag', text: key }] },
      { title: 'State', width: 'short', cell: ({ content }) => [stateVerdict(context, content)] },
      { title: 'Where, and what is missing', width: 'text', cell: ({ content }) => where(content, titles) },
      ...(printedKeys === null ? [] : [sheet]),
    ],
    note: [provenance(group, rows)],
  })]
}

const wordFor = ({ vessel }: ViewContext, state: ContentState): string => (state === 'missing' && vessel.identity.deliveredOn === null ? 'not yet' : state)

function stateVerdict(context: ViewContext, { state, isRequired }: ShownContent): Inline {
  const open: Level = !isRequired || context.vessel.identity.deliveredOn === null ? 'not assessed' : state === 'missing' ? 'error' : 'warning'
  const levels: Readonly<Record<ContentState, Level>> = { 'in the pack': 'good', 'elsewhere': 'note', 'not applicable': 'note', 'in part': open, 'missing': open }
  return verdict(levels[state], wordFor(context, state))
}

function where({ notApplicable, pageKeys, lacks, entry, state }: ShownContent, titles: ReadonlyMap<PageKey, string>): Text {
  const links = joined(pageKeys.map(key => [linkTo(key, titles.get(key) ?? 'This page')]))
  const rest = state === 'in part' ? [`Missing: ${lacks.join('; ')}.`]
    : state === 'missing' ? [lacks.length === 0 ? 'The pack does not hold it: name the document that does.' : `Missing: ${lacks.join('; ')}.`]
    : notApplicable !== null ? [sentence(notApplicable)]
    : entry?.state === 'elsewhere' ? [`${lacks.length === 0 ? '' : `For ${lacks.join('; ')}: `}${sentence(entry.where ?? '')}`]
    : entry?.state === 'not applicable' ? [sentence(entry.reason ?? '')]
    : []
  return joined([...(links.length === 0 ? [] : [links]), ...(rest.length === 0 ? [] : [rest])], lineBreak)
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`

function sheets({ pageKeys }: ShownContent, printedKeys: ReadonlySet<PageKey>): Text {
  const printed = pageKeys.filter(key => printedKeys.has(key))
  return printed.length === 0 ? dash : joined(printed.map(key => [pageNumber(key)]))
}

/** How the headings of the sources were confirmed, and what asks for no text. */
function provenance(group: Group, rows: readonly Row[]): string {
  const citations = rows.flatMap(({ content }) => requiredContents[content.key].askedBy.filter(citation => isOf(group, citation)))
  const sources = [...new Set(citations.map(({ source }) => source))]
  const remark = (key: SourceKey): string => { const { designation, remark: words }: Source = bibliography[key]; return words === null ? '' : `${designation}: ${words}` }
  const remembered = citations.some(citation => standingOf(citation) === 'from memory')
  return [
    ...(group.sources === null ? [] : sources.map(remark)),
    remembered ? 'What is from memory is to be confirmed against the source.' : '',
    group.id === 'directive' ? `These points ask something of the build and no text: ${outsideManual.map(({ citation, title }) => `${placeIn(group, citation)} ${title.toLowerCase()}`).join(', ')}.` : '',
  ].filter(words => words !== '').join(' ')
}
