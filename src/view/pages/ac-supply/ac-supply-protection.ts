/** What protects the mains supply: main breaker, residual-current devices, sockets, polarity, galvanic isolation, earth; with the limits. */
import type { AcSource, Requirement, ShoreMain } from '../../../model/results/ac-supply.js'
import { type AcRules, acRules, sayResidualCurrent } from '../../../references/basis/ac-rules.js'
import { cite, type Citation } from '../../../references/bibliography.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { byTag, tableOf } from '../../tables.js'
import { notRecorded } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { methodOf } from '../../parts/working.js'
import { stateText } from './ac-supply-state.js'
import { protectionText } from '../../parts/circuit-parts.js'

export function protectionBlocks(context: ViewContext): readonly Block[] {
  const sources = context.results.acSupply.sources.toSorted(byTag)
  const inlets = sources.flatMap(source => (source.shore === null ? [] : [{ source, shore: source.shore }]))
  return [
    { is: 'heading', text: 'Protection', anchor: 'protection' },
    ...(inlets.length === 0 ? [] : [mainTable(context, inlets.flatMap(({ source, shore }) => shore.mains.map(main => ({ source, main }))))]),
    deviceTable(context),
    tripTimeTable(context),
    socketTable(context),
    { is: 'heading', text: 'Polarity, galvanic isolation, earth', anchor: 'earth' },
    earthTable(context, sources),
    limitsTable(acRules[context.basis.id]),
  ]
}

const mainTable = (context: ViewContext, rows: readonly { readonly source: AcSource; readonly main: ShoreMain }[]): Table => {
  const column = (title: string, of: (main: ShoreMain) => Requirement) =>
    ({ title, width: 'text' as const, cell: ({ main }: (typeof rows)[number]) => stateText(context, of(main)) })
  return tableOf(rows, {
    id: 'shore-main-breakers',
    caption: 'Main shore breakers',
    empty: 'No circuit is fed from the shore inlet, so its main breaker is not assessed.',
    level: ({ main }) => ([main.rating, main.distance, main.poles, main.residualCurrent].some(({ state }) => state === 'missed') ? 'error' : null),
    columns: [
      { title: 'Inlet', width: 'tag', cell: ({ source }) => [context.tag(source.tag)] },
      { title: 'Breaker', width: 'short', cell: ({ main }) => [context.tag(main.circuitTag), ` ${protectionText(context.lookup.circuits.get(main.circuitTag)!)}`] },
      column('Rating', main => main.rating),
      column('Distance from the inlet', main => main.distance),
      column('Poles', main => main.poles),
      column('Residual current', main => main.residualCurrent),
    ],
  })
}

const deviceTable = (context: ViewContext): Table => tableOf(context.results.acSupply.residualDevices.toSorted(byTag), {
  id: 'residual-current-devices',
  caption: 'Residual-current devices',
  empty: 'No residual-current device is recorded on a mains circuit.',
  columns: [
    { title: 'Device', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'In circuit', width: 'tag', cell: ({ circuitTag }) => [context.tag(circuitTag)] },
    { title: 'Trips at', width: 'number', cell: ({ residualCurrentA }) => (residualCurrentA === null ? [notRecorded] : [sayResidualCurrent(residualCurrentA)]) },
    { title: 'Within', width: 'number', cell: ({ tripTimeMs }) => (tripTimeMs === null ? [notRecorded] : sayOrDash('tripTimeMs', tripTimeMs, context.vessel)) },
  ],
  note: ['Press the test button of each every month: it must trip (common practice). One that does not trip is to be replaced before mains voltage is used.'],
})

/** What the product standards ask of the devices, at some leakage currents. */
function tripTimeTable(context: ViewContext): Table {
  const classA = methodOf(context, 'trip-time-ul-943')
  const general = methodOf(context, 'trip-time-iec-61008')
  const time = (method: typeof classA, input: Readonly<Record<string, number>>): Text =>
    (method.notApplicable(input) === null ? [say('longestTripTimeMs', method.compute(input).longestTripTimeMs)] : ['need not trip'])
  return tableOf([0.006, 0.03, 0.06, 0.15, 0.264].map(leakageCurrentA => ({ leakageCurrentA })), {
    id: 'trip-times',
    caption: 'How fast devices have to trip by their product standards',
    empty: '',
    columns: [
      { title: 'Current that leaks', width: 'number', cell: ({ leakageCurrentA }) => [sayResidualCurrent(leakageCurrentA)] },
      { title: 'Class A, 5 mA', width: 'number', cell: ({ leakageCurrentA }) => time(classA, { leakageCurrentA }) },
      { title: 'General type, 30 mA', width: 'number', cell: ({ leakageCurrentA }) => time(general, { leakageCurrentA, residualCurrentA: 0.03 }) },
    ],
    note: [`At most. Class A: ${classA.citations.map(cite).join('; ')}. General type: ${general.citations.map(cite).join('; ')}.`],
  })
}

const socketTable = (context: ViewContext): Table => tableOf(context.results.acSupply.sockets.toSorted(byTag), {
  id: 'ac-sockets',
  caption: 'Mains sockets',
  empty: 'No mains socket is recorded.',
  level: ({ check }) => (check.state === 'missed' ? 'error' : null),
  columns: [
    { title: 'Socket', width: 'text', cell: ({ tag }) => context.named(tag) },
    { title: 'Circuit', width: 'tag', cell: ({ circuitTag }) => [context.tag(circuitTag)] },
    { title: 'Residual-current protection', width: 'text', cell: ({ check }) => stateText(context, check) },
  ],
  note: ['From the source at which it is worst protected. Galley, toilet, machinery space and open deck are told by the kind of space and by the name of the zone.'],
})

function earthTable(context: ViewContext, sources: readonly AcSource[]): Table {
  const rows = sources.flatMap(({ tag, neutral, shore }): readonly { readonly tag: string; readonly what: string; readonly requirement: Requirement }[] => [
    { tag, what: 'Neutral and protective conductor', requirement: neutral },
    ...(shore === null ? [] : [
      { tag, what: 'Reversed polarity', requirement: shore.polarity },
      { tag, what: 'Galvanic isolation', requirement: shore.galvanicIsolation },
    ]),
  ])
  return tableOf(rows, {
    id: 'ac-earth',
    caption: 'How each source stands',
    empty: '',
    level: ({ requirement }) => (requirement.state === 'missed' ? 'error' : null),
    columns: [
      { title: 'Source', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
      { title: 'What', width: 'text', cell: ({ what }) => [what] },
      { title: 'How it stands', width: 'text', cell: ({ requirement }) => stateText(context, requirement) },
    ],
    note: ['Neutral and protective conductor are joined at the source only: ashore, at the generator, at the inverter while it inverts, at the secondary of an isolation transformer. Never on board while on shore power.'],
  })
}

function limitsTable(rules: AcRules): Table {
  const rows: readonly { readonly what: string; readonly limit: string; readonly citation: Citation }[] = [
    { what: 'Residual current, whole shore supply', limit: `at most ${sayResidualCurrent(rules.residualCurrentA.value)}`, citation: rules.residualCurrentA.citation },
    { what: 'Trip time, whole shore supply', limit: `at most ${say('tripTimeMs', rules.residualTripTimeMs.value)}`, citation: rules.residualTripTimeMs.citation },
    ...(rules.transformerDistanceM === null ? [] : [{ what: 'Isolation transformer in its place', limit: `within ${say('distanceM', rules.transformerDistanceM.value)} of the inlet`, citation: rules.transformerDistanceM.citation }]),
    { what: 'Residual current, sockets in wet places', limit: `at most ${sayResidualCurrent(rules.socketResidualCurrentA.value)}`, citation: rules.socketResidualCurrentA.citation },
    { what: 'Main shore breaker, distance', limit: `at most ${say('distanceM', rules.inletDistanceM.value)}`, citation: rules.inletDistanceM.citation },
    { what: 'Main shore breaker, rating', limit: 'at most that of the inlet', citation: rules.inletRatingCitation },
    { what: 'Main shore breaker, poles', limit: 'all live conductors', citation: rules.polesCitation },
    { what: 'Two sources on one panel', limit: 'never together', citation: rules.switchingCitation },
    { what: 'Reversed polarity', limit: 'shown, or all branches open both conductors', citation: rules.polarityCitation },
    { what: 'Galvanic isolation', limit: 'in the shore earth conductor', citation: rules.galvanicIsolationCitation },
    { what: 'Neutral and protective conductor', limit: 'joined at the source only', citation: rules.neutralCitation },
  ]
  return tableOf(rows, {
    id: 'ac-limits',
    caption: 'What it is held against',
    empty: '',
    columns: [
      { title: 'What', width: 'text', cell: ({ what }) => [what] },
      { title: 'Limit', width: 'short', cell: ({ limit }) => [limit] },
      { title: 'Source', width: 'text', cell: ({ citation }) => [cite(citation)] },
    ],
  })
}
