/** Every kind of finding there is, whether or not this vessel has one: what it means and what to do. */
import type { AnyFindingKind } from '../../../findings/finding.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf } from '../../tables.js'
import { linkTo, muted } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { severityText } from './findings.view.js'

/** What the three letters of an id stand for. */
const domainTitles: Readonly<Record<string, string>> = {
  SRC: 'Files of the vessel folder',
  SCH: 'Entries',
  REF: 'Tags and references',
  WWY: 'Wireways and routes',
  FED: 'Feeding',
  DCD: 'Conductors and ratings',
  SUP: 'Sources',
  PDV: 'Protective devices and short circuit',
  ACS: 'Mains and shore power',
  ENG: 'Energy',
  DEP: 'Dependency',
  RSV: 'Reserve and switching modules',
  SER: 'Serial links',
  CFG: 'Configuration record',
  EMG: 'Emergency pages',
  LOC: 'Location',
  MNT: 'Maintenance',
  LBL: 'Labels',
  COM: 'Commissioning',
  IDN: 'Identifiers',
  PLC: 'Placement',
  CAN: 'CAN buses',
  ETH: 'Ethernet and outside links',
  RAD: 'Radio and antennas',
  CMP: 'Completeness',
  ACC: 'Accepted deviations',
}

export function findingKindPages({ registries, findings }: ViewContext): readonly Page[] {
  const kinds = registries.findingKinds.toSorted((a, b) => compareTags(a.id, b.id))
  const found = new Set(findings.map(({ id }) => id))
  const tables = (of: readonly AnyFindingKind[]): readonly Block[] => [...new Set(of.map(domainOf))].map(domain => domainTable(domain, of.filter(kind => domainOf(kind) === domain)))
  return [{
    key: fixedPages.findingKinds,
    title: 'Kinds of finding',
    kicker: null,
    lead: [
      'What each finding means and what to do about it. The letters of its number name the part of the check. ',
      'Of the three digits the first says: 1, a limit is not met; 2, data are missing; 3, something is doubtful. ',
      'Those of this vessel are under ', linkTo(fixedPages.findings, 'Findings'), '.',
    ],
    // On paper those that this vessel has.
    printed: [
      ...tables(kinds.filter(({ id }) => found.has(id))),
      { is: 'paragraph', text: [`Printed are the kinds of which this vessel has a finding. There are ${kinds.length}; all are on the site.`] },
    ],
    trail: [{ text: 'Findings', to: fixedPages.findings }],
    blocks: tables(kinds),
  }]
}

const domainOf = ({ id }: AnyFindingKind): string => id.slice(0, 3)

function domainTable(domain: string, kinds: readonly AnyFindingKind[]): Table {
  return tableOf(kinds, {
    id: `kinds-${domain.toLowerCase()}`,
    caption: `${domainTitles[domain] ?? 'Other'} (${domain})`,
    empty: '',
    columns: [
      { title: 'Number', width: 'tag', cell: kind => [kind.id] },
      { title: 'Name', width: 'short', cell: nameText },
      { title: 'Severity', width: 'short', cell: kind => severityText(kind.severity) },
      { title: 'Meaning', width: 'text', cell: kind => [kind.meaning] },
      { title: 'Remedy', width: 'text', cell: remedyText },
    ],
  })
}

const nameText = ({ name, retired }: AnyFindingKind): Text =>
  retired === null ? [name] : [name, ' ', muted(`no longer used since ${retired}`)]

/** The remedy without a particular finding: where it would name one of its facts there is an ellipsis. */
function remedyText(kind: AnyFindingKind): Text {
  const noNumbers = new Proxy({}, { get: () => Number.NaN })
  const general = kind.remedy({ subject: { kind: '…', id: '…' }, field: null, evidence: noNumbers, limit: null }).replace(/undefined|NaN/g, '…').replaceAll('….', '…')
  return [general === '' ? muted('said with each finding, from its figures') : general]
}
