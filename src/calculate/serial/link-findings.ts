/** What is wrong with the ends of serial links and with what is sent on them. */
import { find, type Finding, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { endText } from '../../model/cable-label.js'
import { grouped } from '../../model/lookup.js'
import type { SerialLine } from '../../model/results/serial.js'
import type { CableEnd, SerialLink, Vessel } from '../../model/vessel.js'
import { longestSentence } from '../../references/tables/serial-sentences.js'
import { exceeds } from '../compare.js'
import {
  directionWrong, lineAbovePlan, lineOverloaded, listenersAboveDrive, oneTalkerTwoRates, rateNotOfStandard, ratesDoNotMeet, sentencesGoRound, sentenceTooLong,
  talksToItself, twoTalkersAtOneInput,
} from './findings.js'
import { plannedUse, wholeLine } from './line.js'
import { connectorOf, isInUse, isNamed, portOf } from './ports.js'
import type { Carried } from './sentences.js'

export interface Assessed { readonly link: SerialLink; readonly line: SerialLine }

const about = ({ tag }: SerialLink, field: string | null) => ({ subject: { kind: 'serial link', id: tag }, field, limit: null })

/** What several links do to one connector; each fault is told of the later of them. */
export function connectorFindings(vessel: Vessel, assessed: readonly Assessed[]): readonly Finding[] {
  const inputs = assessed.flatMap(({ link }) => link.listeners
    .map((end, index) => ({ link, end, index })).filter(({ end }) => isInUse(vessel, end) && isNamed(vessel, end)))
  const shared = [...grouped(inputs, ({ end }) => [connectorOf(vessel, end)])].flatMap(([connector, at]) => {
    const byTalker = [...new Map(at.toReversed().map(one => [connectorOf(vessel, one.link.talker), one])).values()].toReversed()
    return byTalker.slice(1).map(({ link, index }) => find(twoTalkersAtOneInput, {
      ...about(link, `listeners.${index}`), evidence: {},
      context: { input: connector, others: inWords(byTalker.filter(other => other.link !== link).map(other => other.link.tag)) },
    }))
  })
  const named = assessed.filter(({ link }) => isNamed(vessel, link.talker))
  const outputs = [...grouped(named, ({ link }) => [connectorOf(vessel, link.talker)]).values()].flatMap(([first, ...rest]) => [
    ...aboveDrive(first!),
    ...rest.flatMap(({ link }) => {
      const [here, there] = [link.baudRateBaud, first!.link.baudRateBaud]
      return here === null || there === null || here === there ? [] : [find(oneTalkerTwoRates, {
        ...about(link, 'talker'), evidence: { baudRateBaud: here, otherRateBaud: there }, context: { talker: endText(link.talker), other: first!.link.tag },
      })]
    }),
  ])
  const unnamed = assessed.filter(({ link }) => !isNamed(vessel, link.talker)).flatMap(aboveDrive)
  return [...shared, ...outputs, ...unnamed]
}

function aboveDrive({ link, line: { drive } }: Assessed): readonly Finding[] {
  if (drive === null || drive.comparison.within) return []
  const evidence = { drawnCurrentMilliA: drive.comparison.value, listenersCount: drive.listeners.length }
  return [find(listenersAboveDrive, { ...about(link, 'listeners'), limit: drive.comparison.limit, evidence, context: { talker: endText(link.talker) } })]
}

const usualRate: Readonly<Record<SerialLink['standard'], Limit | null>> = {
  'iec 61162-1': { relation: 'at most', value: 4800, citation: { source: 'iec-61162-1', place: 'signalling rate' } },
  'iec 61162-2': { relation: 'at least', value: 38_400, citation: { source: 'iec-61162-2', place: 'signalling rate' } },
  'other': null,
}

/** What is wrong with one link's ends. */
export function linkFindings(vessel: Vessel, link: SerialLink, { listeners }: SerialLine): readonly Finding[] {
  const { baudRateBaud, talker, standard } = link
  const usual = usualRate[standard]
  const ends = [talker, ...listeners]
  const deaf = baudRateBaud === null ? [] : ends.filter(end => {
    const rates = portOf(vessel, end)?.baudRates ?? []
    return rates.length > 0 && !rates.includes(baudRateBaud)
  })
  return [
    ...(listeners.some(({ tag }) => tag === talker.tag) ? [find(talksToItself, { ...about(link, 'listeners'), evidence: {}, context: { item: talker.tag } })] : []),
    ...(portOf(vessel, talker)?.direction === 'listens' ? [wrongWay(link, talker, 'listens', 'talker')] : []),
    ...listeners.filter(end => portOf(vessel, end)?.direction === 'talks').map(end => wrongWay(link, end, 'talks', 'listener')),
    ...(deaf.length === 0 || baudRateBaud === null ? [] : [find(ratesDoNotMeet, { ...about(link, 'baudRateBaud'), evidence: { baudRateBaud }, context: { ends: inWords(deaf.map(endText)) } })]),
    ...(usual === null || baudRateBaud === null || baudRateBaud === usual.value ? []
      : [find(rateNotOfStandard, { ...about(link, 'baudRateBaud'), evidence: { baudRateBaud }, limit: usual, context: { standard: standard.toUpperCase() } })]),
  ]
}

function wrongWay(link: SerialLink, end: CableEnd, does: string, part: 'talker' | 'listener'): Finding {
  const field = part === 'talker' ? 'talker' : `listeners.${link.listeners.indexOf(end)}`
  return find(directionWrong, { ...about(link, field), evidence: {}, context: { end: endText(end), does, part } })
}

/** What is wrong with what is sent. */
export function lineFindings(link: SerialLink, { use, planned }: SerialLine, { rings }: Carried): readonly Finding[] {
  const tooLong = link.sentences.flatMap(({ formatter, lengthCharacterCount }, index) => {
    const limit: Limit = { relation: 'at most', value: longestSentence.lengthCharacterCount, citation: longestSentence.citation }
    return lengthCharacterCount === null || link.standard === 'other' || !exceeds(lengthCharacterCount, limit) ? []
      : [find(sentenceTooLong, { ...about(link, `sentences.${index}.lengthCharacterCount`), limit, evidence: { lengthCharacterCount }, context: { sentence: formatter } })]
  })
  const field = link.sentences.length > 0 ? 'sentences' : null
  const full = use.status !== 'computed' || planned === null || planned.within ? []
    : exceeds(use.output.lineUsePercent, wholeLine) ? [find(lineOverloaded, { ...about(link, field), limit: wholeLine, evidence: use.output })]
    : [find(lineAbovePlan, { ...about(link, field), limit: plannedUse, evidence: use.output })]
  // A ring is told of once, at the link whose tag comes first.
  const ring = rings.find(others => others.every(other => link.tag < other))
  const round = ring === undefined ? [] : [find(sentencesGoRound, { ...about(link, 'talker'), evidence: {}, context: { way: ring.length === 0 ? endText(link.talker) : inWords(ring.toReversed()) } })]
  return [...tooLong, ...full, ...round]
}
