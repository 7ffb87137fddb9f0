/** Everything the checks and calculations found, from errors to notes. */
import type { LocatedFinding, Severity } from '../../findings/finding.js'
import type { ViewContext } from '../context.js'
import { findingCards } from '../finding-cards.js'
import { fixedPages } from '../site-map.js'
import { compareTags, tableOf } from '../tables.js'
import { counted, linkTo, verdict } from '../text.js'
import type { Block, Page, Text } from '../view-model.js'

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
  const lead = groups.map(({ severity, findings }) => counted(findings.length, severity)).join(', ')
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
    ],
  }]
}

/** How often each kind was found; the findings come sorted by severity. */
function kindCounts(findings: readonly LocatedFinding[]): Block {
  const kinds = [...new Map(findings.map(finding => [finding.id, finding])).values()]
    .map(({ id, name, severity }) => ({ id, name, severity, count: findings.filter(finding => finding.id === id).length }))
  return tableOf(kinds, {
    id: 'findings-by-kind',
    caption: 'Findings by kind',
    empty: 'Nothing was found. What could not be calculated is not among the findings.',
    columns: [
      { title: 'Kind', width: 'tag', cell: ({ id }) => [linkTo(fixedPages.findingKinds, id)] },
      { title: 'Name', width: 'text', cell: ({ name }) => [name] },
      { title: 'Severity', width: 'short', cell: ({ severity }) => severityText(severity) },
      { title: 'Count', width: 'number', cell: ({ count }) => [String(count)] },
    ],
  })
}

export const severityText = (severity: Severity): Text => [verdict(severity, severity)]
