/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import { inWords } from '../../findings/words.js'
import { endText } from '../../model/cable-label.js'
import type { SerialLine, SerialResults } from '../../model/results/serial.js'
import type { CableEnd, SerialLink, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { lineOf } from './line.js'
import { connectorFindings, lineFindings, linkFindings } from './link-findings.js'
import { isInUse, linksInUse, portOf } from './ports.js'
import { carriedBy } from './sentences.js'
import { wireFindings } from './wire-findings.js'

export function serialPass(vessel: Vessel, _basis: Basis, _before: Upstream): SerialResults {
  const links = linksInUse(vessel)
  const assessed = links.map(link => {
    const carried = carriedBy(vessel, link)
    return { link, carried, line: lineOf(vessel, link, carried) }
  })
  return {
    byLink: new Map(assessed.map(({ link, line }): [Tag, SerialLine] => [link.tag, line])),
    notAssessed: [
      ...vessel.serialLinks.filter(({ talker }) => !isInUse(vessel, talker)).map(({ tag, talker }) => ({ subjectTag: tag, reason: `everything on it: its talker ${talker.tag} is recorded as removed` })),
      ...assessed.flatMap(({ link, line }) => [...line.missing.map(reason => `how full the line is: ${reason}`), ...endGaps(vessel, link, line)].map(reason => ({ subjectTag: link.tag, reason }))),
    ],
    findings: [
      ...connectorFindings(vessel, assessed),
      ...assessed.flatMap(({ link, line, carried }) => [...linkFindings(vessel, link, line), ...lineFindings(link, line, carried)]),
      ...wireFindings(vessel, assessed),
    ],
  }
}

/** What is needed of the connectors so that nothing passes unseen. */
function endGaps(vessel: Vessel, link: SerialLink, { listeners }: SerialLine): readonly string[] {
  const ends = [link.talker, ...listeners]
  const lacking = (field: 'rates' | 'direction'): readonly CableEnd[] => ends.filter(end => {
    const port = portOf(vessel, end)
    return port === null || (field === 'rates' ? port.baudRates.length === 0 : port.direction === null)
  })
  const named = (among: readonly CableEnd[]): string => inWords(among.map(endText))
  const [rateless, undirected] = [lacking('rates'), lacking('direction')]
  return [
    ...(listeners.length === 0 ? ['who listens: no listener on board is recorded'] : []),
    ...(rateless.length === 0 || link.baudRateBaud === null ? [] : [`whether its ends can have its rate: the rates of ${named(rateless)} are not recorded`]),
    ...(undirected.length === 0 ? [] : [`whether its ends talk and listen as entered: the direction of ${named(undirected)} is not recorded`]),
  ]
}
