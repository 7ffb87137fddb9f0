/** What stands against delivery, and what is only worth knowing: each point with its count and where it is listed. */
import { acceptedPart, isAccepted, type Severity } from '../../../findings/finding.js'
import type { TestDue } from '../../../model/results/completeness.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { counted } from '../../text.js'
import type { PageKey } from '../../view-model.js'
import { countNotAssessed } from '../not-assessed.view.js'
import { openContents, type ShownContent } from './contents.js'

export interface Point {
  readonly title: string
  /** "4 items" */
  readonly count: string
  /** What title and count say, in few words: "4 items not commissioned". */
  readonly short: string
  /** The page that lists them; null: this one, below. */
  readonly to: PageKey | null
}

interface Candidate {
  readonly title: string
  readonly open: number
  readonly one: string
  readonly many?: string
  /** What follows the counted word where title is not at hand; nothing where the word says it. */
  readonly state: string
  readonly to: PageKey | null
  readonly remark?: string
}

const pointsOf = (candidates: readonly Candidate[]): readonly Point[] => candidates.filter(({ open }) => open > 0).map(({ title, open, one, many, state, to, remark = '' }) => {
  const count = counted(open, one, many)
  return { title, count: `${count}${remark}`, short: state === '' ? count : `${count} ${state}`, to }
})

/** One for each sort of thing that is tested: their tests differ too much to be counted together. */
const testCandidates = (due: readonly TestDue[]): readonly Candidate[] => tested.map(([what, many]) => ({
  title: `Tests of ${many} without all their readings`, open: due.filter(test => test.what === what).length, one: what, many, state: 'not completely tested', to: fixedPages.commissioning,
}))
const tested: readonly (readonly [TestDue['what'], string])[] = [
  ['circuit', 'circuits'], ['battery', 'batteries'], ['residual-current device', 'residual-current devices'], ['CAN bus', 'CAN buses'], ['transmitter', 'transmitters'],
]

/** An accepted error stands against delivery like any other; an accepted warning or note does not. */
export function standsAgainst(context: ViewContext, contents: readonly ShownContent[]): readonly Point[] {
  const { vessel, results: { completeness: { progress } } } = context
  const open = openContents(contents)
  const openItems = progress.byZone.flatMap(zone => zone.open)
  const control = missingControl(context)
  const notAssessed = countNotAssessed(vessel, context.results)
  const [errors, warnings] = [ofSeverity(context, 'error'), ofSeverity(context, 'warning').filter(finding => !isAccepted(finding))]
  // What is overdue or unlabelled is a finding of its domain, and counts as such.
  return pointsOf([
    { title: 'Errors', open: errors.length, one: 'error', state: '', to: fixedPages.findings, remark: acceptedPart(errors.length, errors.filter(isAccepted).length) },
    { title: 'Warnings that nobody has accepted', open: warnings.length, one: 'warning', state: '', to: fixedPages.findings },
    { title: 'Results not assessed', open: notAssessed, one: 'result', state: 'not assessed', to: fixedPages.notAssessed, remark: ', none of them a pass' },
    { title: 'Equipment that is not commissioned', open: openItems.length, one: 'item', state: 'not commissioned', to: null },
    { title: 'Cables that are not commissioned', open: progress.openCables.length, one: 'cable', state: 'not commissioned', to: null },
    { title: 'Cables of unknown type', open: progress.cablesWithoutType.length, one: 'cable', state: 'of unknown type', to: null },
    ...testCandidates(progress.testsDue),
    { title: 'Software versions not read', open: progress.softwareUnread.length, one: 'device', state: 'with software not read', to: fixedPages.configuration },
    { title: 'Required contents of the manual that are missing, or there in part', open: open.length, one: 'content', state: 'of the manual missing or in part', to: fixedPages.completeness },
    { title: 'Document control not recorded', open: control.length, one: 'entry', many: 'entries', state: 'of document control not recorded', to: fixedPages.vessel, remark: `: ${control.join(', ')}` },
  ])
}

/** Such a thing is a finding of its own, which the other list counts unless somebody has accepted it. */
const toldAsWarning = ', told by a warning'

/** With what other pages list: it helps whoever finishes the boat, and what of it stands in the way is a finding. */
export function worthKnowing(context: ViewContext): readonly Point[] {
  const { results: { completeness: { progress }, maintenance, labels, location }, findings } = context
  const accepted = findings.filter(isAccepted)
  const notes = ofSeverity(context, 'note').filter(finding => !isAccepted(finding))
  const overdue = maintenance.jobs.filter(({ items }) => items.some(({ state }) => state === 'overdue'))
  const unreadable = labels.labels.filter(({ comparison }) => !comparison.within)
  const places = [...location.byItem.values()]
  return pointsOf([
    { title: 'Accepted deviations', open: accepted.length, one: 'finding', state: 'accepted', to: fixedPages.findings },
    { title: 'Notes', open: notes.length, one: 'note', state: '', to: fixedPages.findings },
    { title: 'Maintenance overdue on the day of issue', open: overdue.length, one: 'task', state: 'overdue', to: fixedPages.maintenance, remark: toldAsWarning },
    { title: 'Labels whose letters are too small', open: unreadable.length, one: 'label', state: 'too small to read', to: fixedPages.labels, remark: toldAsWarning },
    { title: 'Items without a zone', open: places.filter(({ zoneTag }) => zoneTag === null).length, one: 'item', state: 'without a zone', to: fixedPages.location },
    { title: 'Items of which only the zone is known', open: places.filter(({ zoneTag, positionM }) => zoneTag !== null && positionM === null).length, one: 'item', state: 'without a position', to: fixedPages.location },
    { title: 'Electronics without a maker’s manual in the pack', open: progress.withoutDocument.length, one: 'device', state: 'without a manual', to: null },
    { title: 'Zones without a photograph', open: progress.zonesWithoutPhotograph.length, one: 'zone', state: 'without a photograph', to: null },
  ])
}

const ofSeverity = ({ findings }: ViewContext, severity: Severity) => findings.filter(finding => finding.severity === severity)

function missingControl({ vessel: { document } }: ViewContext): readonly string[] {
  const facts = { number: document.number, issue: document.issue, 'date of issue': document.issuedOn, 'prepared by': document.preparedBy, 'checked by': document.checkedBy, 'approved by': document.approvedBy }
  return Object.entries(facts).filter(([, value]) => value === null).map(([name]) => name)
}
