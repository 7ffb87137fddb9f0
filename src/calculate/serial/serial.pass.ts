/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { SerialLine, SerialResults } from '../../model/results/serial.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { lineOf } from './line.js'
import { connectorFindings, lineFindings, linkFindings } from './link-findings.js'
import { linksInUse } from './ports.js'
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
    notAssessed: assessed.flatMap(({ link, line }) => line.missing.map(reason => ({ subjectTag: link.tag, reason: `how full the line is: ${reason}` }))),
    findings: [
      ...connectorFindings(vessel, assessed),
      ...assessed.flatMap(({ link, line, carried }) => [...linkFindings(vessel, link, line), ...lineFindings(link, line, carried)]),
      ...wireFindings(vessel, assessed),
    ],
  }
}
