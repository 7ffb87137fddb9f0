/** Findings as the reader gets them. */
import { acceptanceText, type LocatedFinding } from '../../findings/finding.js'
import { cite } from '../../references/bibliography.js'
import { sayAgainst } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { FindingCard } from '../view-model.js'

export const findingCards = (context: ViewContext, findings: readonly LocatedFinding[]): readonly FindingCard[] =>
  findings.map(finding => ({
    id: finding.id,
    name: finding.name,
    severity: finding.severity,
    subject: context.named(finding.subject.id),
    message: finding.message,
    limit: limitText(finding, context),
    remedy: finding.remedy,
    at: finding.at,
    accepted: finding.accepted == null ? null : acceptanceText(finding.accepted),
    kind: { text: finding.id, to: fixedPages.findingKinds },
  }))

function limitText({ limit, evidence }: LocatedFinding, { vessel }: ViewContext): string | null {
  if (limit === null) return null
  const named = Object.entries(evidence)[0]
  const value = named === undefined ? String(limit.value) : sayAgainst(named[0], named[1], limit.value, vessel).limit
  return `Limit ${limit.relation} ${value}. ${cite(limit.citation)}.`
}
