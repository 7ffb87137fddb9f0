/** What is on a line: the sentences recorded, or what a multiplexer passes on to it. */
import { lookup } from '../../model/lookup.js'
import type { FigureFrom, SentenceUse, SerialLine } from '../../model/results/serial.js'
import type { Sentence, SerialLink, Tag, Vessel } from '../../model/vessel.js'
import { formatterOf, usualSentence } from '../../references/tables/serial-sentences.js'
import { runMethod } from '../run-method.js'
import { connectorOf, linksInUse, listenersInUse } from './ports.js'
import { sentenceTimeMethod } from './sentence-time.calc.js'

export interface Carried {
  readonly sentences: readonly SentenceUse[]
  readonly from: SerialLine['sentencesFrom']
  /** Why more may be on the line than is known. */
  readonly missing: readonly string[]
  /** Rings of links by which what is sent comes back to this one, without the link itself. */
  readonly rings: readonly (readonly Tag[])[]
}

interface Sent { readonly sentence: Sentence; readonly fromLinkTag: Tag | null }
interface Found { readonly sent: readonly Sent[]; readonly missing: readonly string[]; readonly rings: readonly (readonly Tag[])[] }
const nothing: Found = { sent: [], missing: [], rings: [] }

export function carriedBy(vessel: Vessel, link: SerialLink): Carried {
  const found = sentOn(vessel, link, [])
  const sentences = found.sent.map(({ sentence, fromLinkTag }) => sentenceUse(sentence, fromLinkTag, link.baudRateBaud))
  const unknown = sentences.flatMap(({ formatter, lengthCharacterCount, ratePerS, time }) => {
    const lacking = [...(lengthCharacterCount === null ? ['length'] : []), ...(ratePerS === null ? ['rate'] : [])]
    if (lacking.length > 0) return [`no ${lacking.join(' and ')} of ${formatter} is recorded, and none is usual`]
    return time.status === 'computed' || link.baudRateBaud === null ? [] : [`${formatter}: ${time.reason}`]
  })
  return {
    sentences, rings: found.rings,
    from: link.sentences.length > 0 ? 'recorded' : sentences.length > 0 ? 'forwarded' : 'nothing',
    missing: [...new Set([...found.missing, ...unknown])],
  }
}

/** `wayTags`: the links passed on the way back from the line in question, so that a ring ends. */
function sentOn(vessel: Vessel, link: SerialLink, wayTags: readonly Tag[]): Found {
  if (wayTags.includes(link.tag)) return { ...nothing, rings: link.tag === wayTags[0] ? [wayTags.slice(1)] : [] }
  if (link.sentences.length > 0) return { ...nothing, sent: link.sentences.map(sentence => ({ sentence, fromLinkTag: null })) }
  const { forwards = [], tag = link.talker.tag } = lookup(vessel).equipment.get(link.talker.tag) ?? {}
  const here = connectorOf(vessel, link.talker)
  const inputs = forwards.filter(({ toTerminal }) => connectorOf(vessel, { tag, terminal: toTerminal }) === here)
  if (inputs.length === 0) return { ...nothing, missing: ['no sentence is recorded'] }
  const parts = inputs.map(({ fromTerminal, only }): Found => {
    const connector = connectorOf(vessel, { tag, terminal: fromTerminal })
    const feeding = linksInUse(vessel).filter(other => listenersInUse(vessel, other).some(end => connectorOf(vessel, end) === connector))
    if (feeding.length === 0) return { ...nothing, missing: [`what ${tag} gets at its connector ${fromTerminal} is not known`] }
    return together(feeding.map(other => {
      const { sent, missing, rings } = sentOn(vessel, other, [...wayTags, link.tag])
      return { missing, rings, sent: sent.filter(({ sentence }) => passes(sentence, only)).map(({ sentence }) => ({ sentence, fromLinkTag: other.tag })) }
    }))
  })
  return together(parts)
}

const together = (parts: readonly Found[]): Found => ({
  sent: parts.flatMap(({ sent }) => sent), missing: parts.flatMap(({ missing }) => missing), rings: parts.flatMap(({ rings }) => rings),
})

/** A filter names formatters (RMC) or whole addresses (GPRMC). */
function passes({ formatter }: Sentence, only: readonly string[] | null): boolean {
  if (only === null) return true
  const address = formatter.trim().toUpperCase().replace(/^[$!]/, '')
  return only.some(word => word.toUpperCase() === address || word.toUpperCase() === formatterOf(address))
}

function sentenceUse({ formatter, ratePerS, lengthCharacterCount }: Sentence, fromLinkTag: Tag | null, baudRateBaud: number | null): SentenceUse {
  const usual = usualSentence(formatter)
  const length = lengthCharacterCount ?? usual?.lengthCharacterCount ?? null
  const rate = ratePerS ?? usual?.ratePerS ?? null
  return {
    formatter, fromLinkTag,
    lengthCharacterCount: length, lengthFrom: fromOf(lengthCharacterCount, length),
    ratePerS: rate, rateFrom: fromOf(ratePerS, rate),
    time: length === null || rate === null || baudRateBaud === null
      ? { status: 'not computed', method: sentenceTimeMethod.id, reason: baudRateBaud === null ? 'the rate of the line is not recorded' : 'length or rate of the sentence is not recorded' }
      : runMethod(sentenceTimeMethod, { lengthCharacterCount: length, ratePerS: rate, baudRateBaud }),
  }
}

const fromOf = (recorded: number | null, taken: number | null): FigureFrom => (recorded !== null ? 'recorded' : taken !== null ? 'usual' : 'nowhere')
