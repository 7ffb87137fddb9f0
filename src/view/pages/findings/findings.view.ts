/** Everything the checks and calculations found, from errors to notes. */
import { acceptedPart, isAccepted, type LocatedFinding, type Severity } from '../../../findings/finding.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../parts/finding-cards.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf } from '../../tables.js'
import { counted, linkTo, verdict } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'

const severities = [
  { severity: 'error', heading: 'Errors', none: 'No errors.', meaning: 'A limit that bears on safety is not met, or the data contradict themselves. Clear these before the boat is used.' },
  { severity: 'warning', heading: 'Warnings', none: 'No warnings.', meaning: 'A limit is not met, or something is doubtful. Have these looked at by someone competent.' },
  { severity: 'note', heading: 'Notes', none: 'No notes.', meaning: 'Worth knowing; often a fact that has not been recorded.' },
] as const satisfies readonly { readonly severity: Severity; readonly heading: string; readonly none: string; readonly meaning: string }[]

export function findingsPages(context: ViewContext): readonly Page[] {
  const groups = severities.map(group => ({
    ...group,
    findings: context.findings.filter(({ severity }) => severity === group.severity)
      .toSorted((a, b) => compareTags(a.id, b.id) || compareTags(a.subject.id, b.subject.id)),
  }))
  const lead = groups.map(({ severity, findings }) => `${counted(findings.length, severity)}${acceptedPart(findings.length, findings.filter(isAccepted).length)}`).join(', ')
  const accepted = groups.flatMap(({ findings }) => findings.filter(isAccepted))
  return [{
    key: fixedPages.findings,
    title: 'Findings',
    kicker: null,
    lead: [`${lead}. What could not be calculated is no finding: it is listed under `, linkTo(fixedPages.notAssessed, 'Not assessed'), '.'],
    printed: null,
    trail: [],
    blocks: [
      kindCounts(groups.flatMap(({ findings }) => findings)),
      ...groups.flatMap(({ heading, meaning, none, findings }): readonly Block[] => [
        { is: 'heading', text: `${heading} (${findings.length})`, anchor: heading.toLowerCase() },
        ...(findings.length === 0 ? [] : [{ is: 'paragraph' as const, text: [meaning] }]),
        { is: 'findings', empty: none, findings: findingCards(context, findings) },
      ]),
      ...(accepted.length === 0 ? [] : acceptedBlocks(accepted)),
    ],
  }]
}

interface Kind extends Pick<LocatedFinding, 'id' | 'name' | 'severity'> { readonly all: readonly LocatedFinding[] }

/** How often each kind was found; the findings come sorted by severity. */
function kindCounts(findings: readonly LocatedFinding[]): Block {
  const kinds: readonly Kind[] = [...new Map(findings.map(finding => [finding.id, finding])).values()]
    .map(({ id, name, severity }) => ({ id, name, severity, all: findings.filter(finding => finding.id === id) }))
  return tableOf(kinds, {
    id: 'findings-by-kind',
    caption: 'Findings by kind',
    empty: 'Nothing was found. What could not be calculated is not among the findings.',
    columns: [
      { title: 'Kind', width: 'tag', cell: ({ id }) => [linkTo(fixedPages.findingKinds, id)] },
      { title: 'Name', width: 'text', cell: ({ name }) => [name] },
      { title: 'Severity', width: 'short', cell: ({ severity }) => severityText(severity) },
      { title: 'Count', width: 'number', cell: ({ all }) => [String(all.length)] },
      ...(findings.some(isAccepted) ? [{ title: 'Of them accepted', width: 'number' as const, cell: ({ all }: Kind): Text => [String(all.filter(isAccepted).length)] }] : []),
    ],
  })
}

/** The same findings once more, as the list that is signed. */
function acceptedBlocks(accepted: readonly LocatedFinding[]): readonly Block[] {
  return [
    { is: 'heading', text: `Accepted deviations (${accepted.length})`, anchor: 'accepted' },
    { is: 'paragraph', text: ['Each stands above in its place, and keeps its severity: what is accepted is known, not mended. It is for whoever signs for the boat to know them.'] },
    acceptedTable(accepted),
  ]
}

export const acceptedTable = (accepted: readonly LocatedFinding[]): Table => tableOf(accepted, {
  id: 'accepted-deviations',
  caption: 'Accepted deviations',
  empty: 'No finding is accepted.',
  columns: [
    { title: 'Kind', width: 'tag', cell: ({ id }) => [linkTo(fixedPages.findingKinds, id)] },
    { title: 'Severity', width: 'short', cell: ({ severity }) => severityText(severity) },
    { title: 'What was found', width: 'text', cell: ({ message }) => [message] },
    { title: 'Reason', width: 'text', cell: finding => [finding.accepted!.reason] },
    { title: 'Accepted by', width: 'short', cell: finding => [finding.accepted!.by] },
    { title: 'On', width: 'tag', cell: finding => [finding.accepted!.date] },
  ],
})

export const severityText = (severity: Severity): Text => [verdict(severity, severity)]
