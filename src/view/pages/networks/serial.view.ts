/** A serial link: who talks, who listens, how full the line is and what still fits, and the wires terminal by terminal. */
import { slug } from '../../../model/address.js'
import type { FigureFrom, SentenceUse, SerialLine } from '../../../model/results/serial.js'
import type { CableEnd, Port, SerialLink, SerialWire } from '../../../model/vessel.js'
import { usualSentence } from '../../../references/tables/serial-sentences.js'
import { say, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../parts/finding-cards.js'
import { byTag, tableOf } from '../../tables.js'
import { dash, joined, muted, notRecorded, orDash, strong, verdict } from '../../text.js'
import type { Block, Facts, Page, Schedule, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { deadBlocks, lossBlocks } from '../fault-tracing/fault-blocks.js'
import { proceduresAbout } from '../owner/procedures.js'
import { networkTrail } from './network-parts.js'

export function serialPage(context: ViewContext, link: SerialLink): Page {
  const line = context.results.serial.byLink.get(link.tag)
  const findings = context.findingsBySubject.get(link.tag) ?? []
  return {
    key: context.addressOf(link.tag)!,
    title: `${link.tag} ${link.name}`,
    kicker: 'Serial link',
    lead: link.purpose === null ? null : [link.purpose],
    trail: networkTrail,
    blocks: [
      ...(line === undefined ? [removedBlock(context, link)] : [summary(context, link, line), facts(context, link, line), endTable(context, link, line)]),
      ...deadBlocks(context, link.tag),
      ...lossBlocks(context, link.tag),
    ...proceduresAbout(context, link.tag),
      ...(line === undefined ? [] : [sentenceTable(context, line), ...wireTables(context, link, line), ...workings(context, line)]),
      ...(findings.length === 0 ? [] : [{ is: 'findings', empty: '', findings: findingCards(context, findings) } as const]),
    ],
    printed: null,
  }
}

/** Every wire of every link, for machines. */
export const serialWireSchedule = ({ vessel }: ViewContext): Schedule => ({
  file: 'serial-wires.csv',
  columns: ['Link', 'Signal', 'From', 'Terminal there', 'Cable', 'Core', 'To', 'Terminal of that'],
  rows: vessel.serialLinks.toSorted(byTag).flatMap(link => link.wires.map(({ signal, from, to, cableTag, core }) =>
    [link.tag, signal, from.tag, from.terminal ?? '', cableTag ?? '', core ?? '', to.tag, to.terminal ?? ''])),
})

/** For whoever adds a device: what each line still has room for. */
export function serialRoomTable(context: ViewContext): Table {
  const rows = context.vessel.serialLinks.flatMap(link => { const { tag } = link; const line = context.results.serial.byLink.get(tag); return line === undefined ? [] : [{ tag, link, line }] })
  return tableOf(rows.toSorted(byTag), {
    id: 'serial-room',
    caption: 'Room on the serial links',
    empty: 'No serial link is recorded.',
    note: ['One more sentence: of the greatest length, 82 characters, with the line 80 % full. A second talker needs a link of its own, or a multiplexer.'],
    columns: [
      { title: 'Link', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'What can be heard there', width: 'text', cell: ({ link, line }) => heardText(context, link, line) },
      { title: 'In use', width: 'text', cell: ({ line: { planned } }) => (planned === null ? [verdict('not assessed', 'not assessed')] : comparisonText(planned, context)) },
      { title: 'One more sentence', width: 'text', cell: ({ line: { room } }) => [room?.status !== 'computed' ? muted('not assessed') : room.output.morePerS > 0 ? timesASecond(room.output.morePerS) : 'none'] },
      { title: 'Further listeners', width: 'number', cell: ({ line: { drive } }) => [drive === null ? muted('not assessed') : String(Math.max(0, drive.reserve.output.moreListenersCount))] },
    ],
  })
}

/** Where to join on, at which rate, and what a listener gets. */
const heardText = (context: ViewContext, { talker, baudRateBaud }: SerialLink, { sentences }: SerialLine): Text => [
  ...context.named(talker.tag), talker.terminal === null ? '' : ` ${talker.terminal}`, ': ', baudRateBaud === null ? notRecorded : say('baudRateBaud', baudRateBaud), ', ',
  sentences.length === 0 ? muted('sentences not recorded') : [...new Set(sentences.map(({ formatter }) => formatter))].join(', '),
]

const removedBlock = (context: ViewContext, { talker }: SerialLink): Block =>
  ({ is: 'paragraph', text: ['The talker ', ...context.named(talker.tag), ' is removed: nothing is sent on this link.'] })

function summary(context: ViewContext, link: SerialLink, line: SerialLine): Block {
  const { listeners, use, missing, room } = line
  const hearing = [...new Set(listeners.map(({ tag }) => tag))]
  const who: Text = [...context.named(link.talker.tag), ' talks; ', ...(hearing.length === 0 ? ['nobody listens'] : [...joined(hearing.map(context.named)), hearing.length === 1 ? ' listens' : ' listen']), '. ']
  const full: Text = use.status !== 'computed' ? ['How full the line is, is not known: ', missing.join('; ') || use.reason, '.']
    : [`What it sends takes ${missing.length > 0 ? 'at least ' : ''}${say('lineUsePercent', use.output.lineUsePercent)} of the line. `, ...(missing.length === 0 ? [] : [`More may be on it: ${missing.join('; ')}.`])]
  const fits: Text = room?.status !== 'computed' ? []
    : room.output.morePerS > 0 ? [`What still fits, with the line ${room.input.planPercent}\u00A0% full: one more sentence of ${room.input.lengthCharacterCount} characters, the longest there is, ${timesASecond(room.output.morePerS)}.`]
    : ['Nothing more should be put on it.']
  return { is: 'paragraph', text: [...who, ...full, ...fits] }
}

/** Cut off, not rounded, at a tenth: it must still fit. */
function timesASecond(perS: number): string {
  const tenths = Math.floor(perS * 10 + 1e-9)
  return tenths === 0 ? 'less than once in 10 s' : `${tenths / 10} times a second`
}

function facts(context: ViewContext, link: SerialLink, { planned, missing, drive }: SerialLine): Facts {
  return {
    is: 'facts', caption: null, entries: [
      { label: 'Standard', value: [link.standard.toUpperCase().replace('OTHER', 'other')] },
      { label: 'Rate', value: link.baudRateBaud === null ? [notRecorded] : [say('baudRateBaud', link.baudRateBaud)] },
      { label: 'Line in use', value: planned === null ? [verdict('not assessed', 'not assessed'), ` ${missing.join('; ')}`] : comparisonText(planned, context) },
      {
        label: 'Talker drives', value: drive === null ? [verdict('not assessed', 'not assessed'), ' no current is recorded'] : [
          'its listeners take ', ...comparisonText(drive.comparison, context),
          drive.comparison.within ? `; it can drive ${moreListeners(drive.reserve.output.moreListenersCount)}` : '',
        ],
      },
    ],
  }
}

const moreListeners = (count: number): string => (count === 0 ? 'no further listener' : count === 1 ? 'one more listener' : `${count} more listeners`)

interface End { readonly part: 'talks' | 'listens'; readonly end: CableEnd; readonly port: Port | null; readonly currentText: string }

function endTable(context: ViewContext, link: SerialLink, { listeners, drive }: SerialLine): Table {
  const ports = ({ tag }: CableEnd) => context.lookup.equipment.get(tag)?.ports ?? []
  const portAt = (end: CableEnd): Port | null => ports(end).find(({ name }) => name === end.terminal) ?? null
  const taken = (end: CableEnd): string => {
    const of = drive?.listeners.find(listener => listener.end.tag === end.tag && listener.end.terminal === end.terminal)
    return of === undefined ? '–' : `${say('currentMilliA', of.currentMilliA)}${of.from === 'standard' ? ', by the standard' : ''}`
  }
  const drives = drive === null ? '–' : `${say('currentMilliA', drive.reserve.input.driveCurrentMilliA)}${drive.driveFrom === 'standard' ? ', by the standard' : ''}`
  const ends: readonly End[] = [
    { part: 'talks', end: link.talker, port: portAt(link.talker), currentText: drives },
    ...listeners.map((end): End => ({ part: 'listens', end, port: portAt(end), currentText: taken(end) })),
  ]
  return tableOf(ends, {
    id: 'ends',
    caption: 'Who talks, who listens',
    empty: '',
    note: ['Current: what the talker can drive, and what each listener takes of it. Where none is recorded, 15 mA and 2 mA, from memory of IEC 61162-1.'],
    columns: [
      { title: 'Part', width: 'tag', cell: ({ part }) => [part] },
      { title: 'Item', width: 'text', cell: ({ end }) => context.named(end.tag) },
      { title: 'Connector', width: 'tag', cell: ({ end }) => orDash(end.terminal) },
      { title: 'Rates it can have', width: 'short', cell: ({ port }) => (port === null || port.baudRates.length === 0 ? [notRecorded] : [port.baudRates.join(', ')]) },
      { title: 'Current', width: 'number', cell: ({ currentText }) => [currentText] },
    ],
  })
}

type SentenceRow = { readonly is: 'sentence'; readonly use: SentenceUse } | { readonly is: 'sum' }

function sentenceTable(context: ViewContext, { sentences, sentencesFrom, use, missing }: SerialLine): Table {
  const rows: readonly SentenceRow[] = [...sentences.map((sentence): SentenceRow => ({ is: 'sentence', use: sentence })), ...(sentences.length === 0 ? [] : [{ is: 'sum' } as const])]
  const computed = (row: SentenceRow) => (row.is === 'sentence' && row.use.time.status === 'computed' ? row.use.time : null)
  const share = (row: SentenceRow): string => {
    if (row.is === 'sum') return use.status === 'computed' ? `${missing.length > 0 ? 'at least ' : ''}${say('lineUsePercent', use.output.lineUsePercent)}` : '–'
    const time = computed(row)
    return time === null ? 'not assessed' : say('lineUsePercent', (time.output.lineTimeMs * time.input.ratePerS) / 10)
  }
  const forwarded = sentencesFrom === 'forwarded'
  return tableOf(rows, {
    id: 'sentences',
    caption: forwarded ? 'What is sent: passed on by the talker' : 'What is sent',
    empty: 'No sentence is known.',
    note: ['Characters with start and line end. * as usual for that sentence: counted on published examples; how often is common practice.'],
    level: row => (row.is === 'sentence' && computed(row) === null ? 'not assessed' : null),
    columns: [
      { title: 'Sentence', width: 'text', cell: row => (row.is === 'sum' ? [strong('Sum')] : [strong(row.use.formatter), muted(` ${usualSentence(row.use.formatter)?.what ?? ''}`)]) },
      ...(forwarded ? [{ title: 'From', width: 'tag' as const, cell: (row: SentenceRow): Text => (row.is === 'sum' || row.use.fromLinkTag === null ? dash : [context.tag(row.use.fromLinkTag)]) }] : []),
      { title: 'Characters', width: 'number', cell: row => (row.is === 'sum' ? dash : figure(row.use.lengthCharacterCount, row.use.lengthFrom)) },
      { title: 'Times a second', width: 'number', cell: row => (row.is === 'sum' ? dash : figure(row.use.ratePerS, row.use.rateFrom)) },
      { title: 'Characters a second', width: 'number', cell: row => (row.is === 'sum' ? [use.status === 'computed' ? plain(use.input.charactersPerS) : '–'] : [computed(row) === null ? '–' : plain(computed(row)!.output.charactersPerS)]) },
      { title: 'Of the line', width: 'number', cell: row => [share(row)] },
    ],
  })
}

const plain = (perS: number): string => sayForWorking('ratePerS', perS).replace(/\u00A0.*$/, '')
const figure = (value: number | null, from: FigureFrom): Text => (value === null ? [notRecorded] : [`${plain(value)}${from === 'usual' ? '*' : ''}`])

function wireTables(context: ViewContext, { wires }: SerialLink, { wiring, otherWires }: SerialLine): readonly Block[] {
  if (wires.length === 0) return [{ is: 'paragraph', text: [strong('Wires. '), notRecorded, '.'] }]
  return [
    ...wiring.map(({ listener, wires: ofListener, missingSignals }) => wireTable(context, ofListener, {
      id: slug(`wires-${listener.tag}-${listener.terminal ?? ''}`),
      caption: `Wires at ${listener.tag} ${context.nameOf(listener.tag) ?? ''}, terminal by terminal`,
      note: missingSignals.length === 0 ? null : [verdict('warning', 'doubtful'), ` no wire ${missingSignals.join(' and ')} leads here from the talker.`],
    })),
    ...(otherWires.length === 0 ? [] : [wireTable(context, otherWires, { id: 'wires-other', caption: 'Wires on the way', note: null })]),
    { is: 'paragraph', text: [muted('A is signal +, B signal −, C the isolated common of the listener. A screen is joined at the talker’s end only (IEC 61162-1).')] },
  ]
}

function wireTable(context: ViewContext, wires: readonly SerialWire[], { note, ...of }: { readonly id: string; readonly caption: string; readonly note: Text | null }): Table {
  return tableOf(wires, {
    ...of, empty: 'No wire is recorded.', ...(note === null ? {} : { note }),
    columns: [
      { title: 'Signal', width: 'short', cell: wire => [wire.signal] },
      { title: 'From', width: 'text', cell: wire => endShort(context, wire.from) },
      { title: 'Cable, core', width: 'short', cell: wire => [...(wire.cableTag === null ? [notRecorded] : [context.tag(wire.cableTag)]), wire.core === null ? '' : ` ${wire.core}`] },
      { title: 'To', width: 'text', cell: wire => endShort(context, wire.to) },
    ],
  })
}

const endShort = (context: ViewContext, { tag, terminal }: CableEnd): Text => [context.tag(tag), terminal === null ? '' : ` ${terminal}`]

function workings(context: ViewContext, { use, room, drive, sentences, planned }: SerialLine): readonly Block[] {
  const longest = sentences.filter(({ time }) => time.status === 'computed').toSorted((a, b) => share(b) - share(a))[0]
  return [
    ...(use.status !== 'computed' ? [] : [workingOf(context, 'How full the line is', use, { limit: planned === null ? null : comparisonText(planned, context) })]),
    ...(longest === undefined ? [] : [workingOf(context, `The sentence that takes most of it, ${longest.formatter}`, longest.time)]),
    ...(room === null ? [] : [workingOf(context, 'Room for one more sentence', room)]),
    ...(drive === null ? [] : [workingOf(context, 'Listeners that the talker can still drive', drive.reserve, { limit: comparisonText(drive.comparison, context) })]),
  ]
}

const share = ({ time }: SentenceUse): number => (time.status === 'computed' ? time.output.charactersPerS : 0)
