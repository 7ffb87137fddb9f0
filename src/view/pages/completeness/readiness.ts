/** What stands against delivery, and what is only worth knowing: each point with its count and where it is listed. */
import { acceptedPart, isAccepted, type Severity } from '../../../findings/finding.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { counted } from '../../text.js'
import type { PageKey } from '../../view-model.js'
import { countNotAssessed } from '../not-assessed.view.js'
import { openContents, type ShownContent } from './contents.js'

export interface Point {
  readonly title: string
  /** `3 of 41 circuits` */
  readonly count: string
  /** The page that lists them; null: this one, below. */
  readonly to: PageKey | null
  readonly linkText: string
}

interface Candidate extends Point { readonly open: number }

/** An accepted error stands against delivery like any other; an accepted warning or note does not. */
export function standsAgainst(context: ViewContext, contents: readonly ShownContent[]): readonly Point[] {
  const { vessel, results: { completeness: { progress } } } = context
  const open = openContents(contents)
  const openItems = progress.byZone.flatMap(zone => zone.open)
  const control = missingControl(context)
  const notAssessed = countNotAssessed(vessel, context.results)
  const [errors, warnings] = [ofSeverity(context, 'error'), ofSeverity(context, 'warning').filter(finding => !isAccepted(finding))]
  const below = { to: null, linkText: 'below' }
  const candidates: readonly Candidate[] = [
    { title: 'Errors', open: errors.length, count: `${counted(errors.length, 'error')}${acceptedPart(errors.length, errors.filter(isAccepted).length)}`, to: fixedPages.findings, linkText: 'Findings' },
    { title: 'Warnings that nobody has accepted', open: warnings.length, count: counted(warnings.length, 'warning'), to: fixedPages.findings, linkText: 'Findings' },
    { title: 'Results not assessed; none of them is a pass', open: notAssessed, count: counted(notAssessed, 'result'), to: fixedPages.notAssessed, linkText: 'Not assessed' },
    { title: 'Equipment that is not commissioned', open: openItems.length, count: counted(openItems.length, 'item'), ...below },
    { title: 'Cables that are not commissioned', open: progress.openCables.length, count: counted(progress.openCables.length, 'cable'), ...below },
    { title: 'Cables of unknown type', open: progress.cablesWithoutType.length, count: counted(progress.cablesWithoutType.length, 'cable'), ...below },
    { title: 'Tests without all their readings', open: progress.testsDue.length, count: counted(progress.testsDue.length, 'thing'), to: fixedPages.commissioning, linkText: 'Commissioning' },
    { title: 'Software versions not read', open: progress.softwareUnread.length, count: counted(progress.softwareUnread.length, 'device'), to: fixedPages.configuration, linkText: 'Configuration record' },
    { title: 'Required contents of the manual missing or in part', open: open.length, count: counted(open.length, 'content'), to: fixedPages.completeness, linkText: 'Completeness' },
    { title: 'Document control', open: control.length, count: `not recorded: ${control.join(', ')}`, to: fixedPages.vessel, linkText: 'The vessel and this document' },
  ]
  return candidates.filter(candidate => candidate.open > 0)
}

export function worthKnowing(context: ViewContext): readonly Point[] {
  const { results: { completeness: { progress } }, findings } = context
  const accepted = findings.filter(isAccepted)
  const notes = ofSeverity(context, 'note').filter(finding => !isAccepted(finding))
  const candidates: readonly Candidate[] = [
    { title: 'Accepted deviations', open: accepted.length, count: counted(accepted.length, 'finding'), to: fixedPages.findings, linkText: 'Findings' },
    { title: 'Notes', open: notes.length, count: counted(notes.length, 'note'), to: fixedPages.findings, linkText: 'Findings' },
    { title: 'Electronics without a maker’s manual in the pack', open: progress.withoutDocument.length, count: counted(progress.withoutDocument.length, 'device'), to: null, linkText: 'below' },
    { title: 'Zones without a photograph', open: progress.zonesWithoutPhotograph.length, count: counted(progress.zonesWithoutPhotograph.length, 'zone'), to: null, linkText: 'below' },
  ]
  return candidates.filter(({ open }) => open > 0)
}

const ofSeverity = ({ findings }: ViewContext, severity: Severity) => findings.filter(finding => finding.severity === severity)

function missingControl({ vessel: { document } }: ViewContext): readonly string[] {
  const facts = { number: document.number, issue: document.issue, 'date of issue': document.issuedOn, 'prepared by': document.preparedBy, 'checked by': document.checkedBy, 'approved by': document.approvedBy }
  return Object.entries(facts).filter(([, value]) => value === null).map(([name]) => name)
}
