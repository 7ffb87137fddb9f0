/** The sheet that is signed at delivery: the facts, what is known to be open, and lines for the pen. One A4 sheet. */
import { isAccepted } from '../../../findings/finding.js'
import { summaryText } from '../../../findings/report.js'
import { editionTitles } from '../../../model/edition.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { firstRows } from '../../tables.js'
import { counted, linkTo, orNotRecorded } from '../../text.js'
import type { Block, Page, Text } from '../../view-model.js'
import { acceptedTable } from '../findings/findings.view.js'
import { countNotAssessed } from '../not-assessed.view.js'
import { openContents, type ShownContent } from './contents.js'
import { standsAgainst } from './readiness.js'

/** More would not leave room for the signatures on one sheet. */
const acceptedOnSheet = 4

export function signOffPage(context: ViewContext, contents: readonly ShownContent[]): Page {
  const accepted = context.findings.filter(isAccepted)
  return {
    key: fixedPages.signOff,
    title: 'Sign-off',
    kicker: null,
    lead: ['To be signed on paper, on the day on which the boat changes hands. Each signs for what stands on the line, and for nothing else.'],
    printed: null,
    trail: [],
    blocks: [
      ...facts(context, contents),
      ...(accepted.length === 0 ? [] : [firstRows(acceptedTable(accepted), acceptedOnSheet)]),
      { is: 'paragraph', text: ['This pack documents the installation as fitted and checks it by calculation. It does not certify it: no signature below declares conformity with a law or a standard. Local codes, class and flag rules and licensed practice come first.'] },
      lines,
    ],
  }
}

function facts(context: ViewContext, contents: readonly ShownContent[]): readonly Block[] {
  const { vessel, edition, basis, results, findings } = context
  const { identity, document } = vessel
  const [against, open] = [standsAgainst(context, contents), openContents(contents)]
  const hull = [identity.hullNumber === null ? null : `hull ${identity.hullNumber}`, identity.hullIdentification].filter(word => word !== null).join(', ')
  const notAssessed = countNotAssessed(vessel, results)
  return [
    {
      is: 'facts', caption: 'What is signed for', dense: true, entries: [
        { label: 'Vessel', value: [[identity.name, hull].filter(word => word !== '').join(', ')] },
        { label: 'Document', value: orNotRecorded(document.number) },
        { label: 'Issue', value: orNotRecorded(document.issue === null ? null : `${document.issue}${document.issuedOn === null ? '' : ` of ${document.issuedOn}`}`) },
        { label: 'Edition', value: [editionTitles[edition]] },
        { label: 'Installer', value: orNotRecorded(document.installer) },
        { label: 'Held against', value: [basis.title] },
        { label: 'Findings', value: [`${summaryText(findings)}. `, linkTo(fixedPages.findings, 'Findings')] },
        { label: 'Not assessed', value: [notAssessed === 0 ? 'every result was calculated' : `${counted(notAssessed, 'result')}, none of them a pass`] },
        { label: 'Contents of the manual', value: [open.length === 0 ? 'nothing that is required is missing' : `${counted(open.length, 'required content')} missing or in part`] },
        { label: 'Points open', value: [against.length === 0 ? 'none recorded' : `${against.length}: `, ...openText(against.map(({ short }) => short))] },
      ],
    },
    { is: 'paragraph', text: ['The files of the pack are listed with their checksums in SHA256SUMS. Whether a file was changed after this issue shows with ', { is: 'tag', text: 'sha256sum -c SHA256SUMS' }, '.'] },
  ]
}
const openText = (points: readonly string[]): Text => (points.length === 0 ? [] : [`${points.join('; ')}. `, linkTo(fixedPages.readiness, 'Readiness for delivery')])

/** Who signs, and for what. A surveyor only where one is engaged. */
const signing = [
  ['Installer', 'The installation is as this pack says; what was measured is recorded in it.'],
  ['Yard', 'The findings, the accepted deviations and the open points are known to us and named above.'],
  ['Surveyor, where engaged', 'I have seen the boat and the pack; my report stands by itself.'],
  ['Owner', 'I have received the boat, the pack and the makers’ manuals, and the open points were explained to me.'],
] as const

const lines: Block = {
  is: 'table', id: 'signatures', caption: 'Signatures', forPen: true, layout: 'signatures', empty: '', note: null,
  columns: [
    { title: 'Who, and for what', unit: null, align: 'left', width: 'text' },
    { title: 'Name, function', unit: null, align: 'left', width: 'text' },
    { title: 'Signature', unit: null, align: 'left', width: 'text' },
    { title: 'Place, date', unit: null, align: 'left', width: 'short' },
  ],
  rows: signing.map(([who, what]) => ({ cells: [[{ is: 'strong', text: `${who}. ` }, what], [], [], []], level: null, anchor: null })),
}
