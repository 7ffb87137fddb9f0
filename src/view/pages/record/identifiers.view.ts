/** Identifiers, and the card for a distress call. */
import type { IdentityCheck } from '../../../model/results/identifiers.js'
import { cite } from '../../../references/bibliography.js'
import { mmsiCitation, mmsiForms } from '../../../references/tables/mmsi-forms.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { joined, lineBreak, muted, strong, verdict } from '../../text.js'
import type { Block, Level, Page, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { distressCard, hasDistressCard } from './distress-card.view.js'

export function identifierPages(context: ViewContext): readonly Page[] {
  return [
    ...(hasDistressCard(context) ? [distressCard(context)] : []),
    ...(context.results.identifiers.identities.length > 0 ? [identifiersPage(context)] : []),
  ]
}

function identifiersPage(context: ViewContext): Page {
  const { identities } = context.results.identifiers
  return {
    key: fixedPages.identifiers,
    title: 'Identifiers',
    kicker: null,
    lead: ['The numbers by which the vessel, her radios and her beacons are known. Each is read by its form and held against the others. Whether it was given out, and to whom, only the registers know.'],
    printed: null,
    trail: [],
    blocks: [
      identitiesTable(context, identities), partsTable(context, identities), ...countryCodes(context, identities),
      ...(identities.some(({ what }) => what.startsWith('MMSI')) ? [formsTable] : []),
    ],
  }
}

const levels: Readonly<Record<IdentityCheck['verdict'], Level>> = { 'in order': 'good', 'not in order': 'error', 'doubtful': 'warning', 'not assessed': 'not assessed' }

const holder = (context: ViewContext, { holderTag }: IdentityCheck): Text => (holderTag === null ? [context.vessel.identity.name] : context.named(holderTag))

function identitiesTable(context: ViewContext, identities: readonly IdentityCheck[]): Table {
  return tableOf(identities, {
    id: 'identities',
    caption: 'Every identity, and how it stands',
    empty: '',
    columns: [
      { title: 'Number', width: 'text', cell: identity => [strong(identity.value), lineBreak, `${identity.what}, `, ...holder(context, identity)] },
      { title: 'Verdict', width: 'text', cell: identity => [verdict(levels[identity.verdict], identity.verdict), ...(identity.reasons.length === 0 ? [] : [': ', identity.reasons.join('; ')])] },
      { title: 'Form, and its source', width: 'text', cell: ({ form, citations }) => joined([[form ?? muted('no known form')], ...citations.map((citation): Text => [muted(cite(citation))])], lineBreak) },
    ],
    level: ({ verdict: stands }) => (stands === 'in order' ? null : levels[stands]),
  })
}

/** Some characters of a number in a line, so that it can be read by hand. */
function partsTable(context: ViewContext, identities: readonly IdentityCheck[]): Table {
  const rows = identities.flatMap(identity => identity.parts.map((part, i) => ({ ...part, identity, isFirst: i === 0 })))
  return tableOf(rows, {
    id: 'identity-parts',
    caption: 'Part by part',
    empty: 'None of them has a known form.',
    columns: [
      { title: 'Number', width: 'text', cell: ({ identity, isFirst }) => (isFirst ? [identity.value, lineBreak, ...holder(context, identity)] : []) },
      { title: 'Part', width: 'short', cell: ({ part }) => [strong(part)] },
      { title: 'Says', width: 'text', cell: ({ meaning }) => [meaning] },
    ],
  })
}

function countryCodes(context: ViewContext, identities: readonly IdentityCheck[]): readonly Block[] {
  const beacons = identities.filter(({ countryCode }) => countryCode !== null)
  if (beacons.length === 0) return []
  return [
    { is: 'heading', text: 'Country codes of the beacons', anchor: 'country-codes' },
    ...beacons.map(({ value, holderTag, countryCode }) => workingOf(context, `${holderTag}: ${value}`, countryCode!, { remarks: [{ label: 'first three digits, hexadecimal', text: value.slice(0, 3) }] })),
  ]
}

const formsTable: Table = tableOf(Object.values(mmsiForms), {
  id: 'mmsi-forms',
  caption: 'How an MMSI is made up',
  empty: '',
  note: [`MID: maritime identification digits, 201 to 775, which tell the country. X and Y: any digit. Source: ${cite(mmsiCitation)}.`],
  columns: [
    { title: 'Form', width: 'short', cell: ({ pattern }) => [pattern] },
    { title: 'Belongs to', width: 'text', cell: ({ use }) => [use] },
  ],
})
