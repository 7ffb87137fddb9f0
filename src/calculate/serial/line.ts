/** One serial link: how full it is, what its talker drives, and which wires lead to each listener. */
import type { Limit } from '../../findings/finding.js'
import type { ListenerWires, SerialLine, SignalDrive } from '../../model/results/serial.js'
import type { CableEnd, SerialLink, SerialWire, Tag, Vessel } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { longestSentence } from '../../references/tables/serial-sentences.js'
import { compare, exceeds } from '../compare.js'
import { runMethod } from '../run-method.js'
import { lineRoomMethod } from './line-room.calc.js'
import { lineUseMethod } from './line-use.calc.js'
import { listenerReserveMethod } from './listener-reserve.calc.js'
import { connectorOf, isNamed, isOnTheWay, linksInUse, listenersInUse, portOf } from './ports.js'
import type { Carried } from './sentences.js'

export const plannedUse: Limit = { relation: 'at most', value: 80, citation: { source: 'common-practice', place: 'a serial line is planned to be 80 % full at most' } }
export const wholeLine: Limit = { relation: 'at most', value: 100, citation: { source: 'iec-61162-1', place: 'ten bits a character' } }

export function lineOf(vessel: Vessel, link: SerialLink, { sentences, from, missing: unknown }: Carried): SerialLine {
  const charactersPerS = sentences.reduce((sum, { time }) => sum + (time.status === 'computed' ? time.output.charactersPerS : 0), 0)
  const missing = link.baudRateBaud === null ? ['the rate of the line is not recorded', ...unknown] : unknown
  const use: SerialLine['use'] = link.baudRateBaud === null || sentences.length === 0
    ? { status: 'not computed', method: lineUseMethod.id, reason: missing[0] ?? 'nothing is sent on it' }
    : runMethod(lineUseMethod, { charactersPerS, baudRateBaud: link.baudRateBaud })
  const settled = use.status === 'computed' && (missing.length === 0 || exceeds(use.output.lineUsePercent, plannedUse))
  return {
    listeners: listenersInUse(vessel, link), sentences, sentencesFrom: from, use, missing,
    planned: settled ? compare('lineUsePercent', use.output.lineUsePercent, plannedUse) : null,
    room: use.status === 'computed' && missing.length === 0
      ? runMethod(lineRoomMethod, { planPercent: plannedUse.value, ...use.input, lengthCharacterCount: longestSentence.lengthCharacterCount }) : null,
    drive: driveOf(vessel, link),
    ...wiringOf(vessel, link),
  }
}

// --- current ---------------------------------------------------------------------------------------------------------
/** From memory; what is recorded of a connector goes first. */
const driveByStandardMilliA = 15
const loadByStandardMilliA = 2
const byStandard: Citation = { source: 'iec-61162-1', place: 'drive of a talker, at least 15 mA', standing: 'from memory' }
const byRecord: Citation = { source: 'makers-data', place: 'what the talker can drive' }

/** Listeners of every link on the talker's connector hang on one output. */
function driveOf(vessel: Vessel, link: SerialLink): SignalDrive | null {
  const recordedMilliA = milliA(portOf(vessel, link.talker)?.signalCurrentA)
  if (recordedMilliA === null && link.standard === 'other') return null
  const connector = connectorOf(vessel, link.talker)
  const links = isNamed(vessel, link.talker) ? linksInUse(vessel).filter(({ talker }) => connectorOf(vessel, talker) === connector) : [link]
  const ends = links.flatMap(other => listenersInUse(vessel, other))
  const listeners = [...new Map(ends.map(end => [connectorOf(vessel, end), end])).values()].map(end => {
    const taken = milliA(portOf(vessel, end)?.signalCurrentA)
    return { end, currentMilliA: taken ?? loadByStandardMilliA, from: taken === null ? 'standard' as const : 'recorded' as const }
  })
  const driveCurrentMilliA = recordedMilliA ?? driveByStandardMilliA
  const drawnCurrentMilliA = listeners.reduce((sum, { currentMilliA }) => sum + currentMilliA, 0)
  const reserve = runMethod(listenerReserveMethod, { driveCurrentMilliA, drawnCurrentMilliA, listenerCurrentMilliA: loadByStandardMilliA })
  if (reserve.status !== 'computed') return null
  const limit: Limit = { relation: 'at most', value: driveCurrentMilliA, citation: recordedMilliA === null ? byStandard : byRecord }
  return { driveFrom: recordedMilliA === null ? 'standard' : 'recorded', listeners, reserve, comparison: compare('drawnCurrentMilliA', drawnCurrentMilliA, limit) }
}

/** Zero stands for "not known" as much as nothing does. */
const milliA = (currentA: number | null | undefined): number | null => (currentA == null || currentA <= 0 ? null : currentA * 1000)

// --- wires -----------------------------------------------------------------------------------------------------------
const pair = ['A', 'B'] as const

/** `A`, `A (signal +)`, `a`. */
const isSignal = ({ signal }: SerialWire, letter: 'A' | 'B'): boolean => new RegExp(`^${letter}(?![a-z])`, 'i').test(signal.trim())

function wiringOf(vessel: Vessel, link: SerialLink): Pick<SerialLine, 'wiring' | 'otherWires'> {
  const { wires, talker } = link
  const listeners = listenersInUse(vessel, link)
  const endsAt = ({ tag }: CableEnd) => (wire: SerialWire): boolean => wire.from.tag === tag || wire.to.tag === tag
  const wiring = listeners.map((listener): ListenerWires => ({
    listener,
    wires: wires.filter(endsAt(listener)),
    missingSignals: wires.length === 0 ? [] : pair.filter(letter => !reached(vessel, talker.tag, wires.filter(wire => isSignal(wire, letter)), listeners).has(listener.tag)),
  }))
  return { wiring, otherWires: wires.filter(wire => !listeners.some(listener => endsAt(listener)(wire))) }
}

/** Items that wires of one signal lead to from the talker, over listeners and terminal blocks. */
function reached(vessel: Vessel, fromTag: Tag, wires: readonly SerialWire[], listeners: readonly CableEnd[]): ReadonlySet<Tag> {
  const found = new Set([fromTag])
  const goesOn = (tag: Tag): boolean => tag === fromTag || listeners.some(end => end.tag === tag) || isOnTheWay(vessel, { tag, terminal: null })
  for (const tag of found) {
    if (!goesOn(tag)) continue
    for (const { from, to } of wires) {
      if (from.tag === tag) found.add(to.tag)
      if (to.tag === tag) found.add(from.tag)
    }
  }
  return found
}
