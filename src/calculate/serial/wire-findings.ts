/** What is wrong with the wires of serial links. */
import { find, type Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { endText } from '../../model/cable-label.js'
import { grouped } from '../../model/lookup.js'
import type { SerialLink, SerialWire, Vessel } from '../../model/vessel.js'
import { coreNotRecorded, coreUsedTwice, signalWireMissing, wireElsewhere, wiresNotRecorded } from './findings.js'
import type { Assessed } from './link-findings.js'
import { isOnTheWay } from './ports.js'

export function wireFindings(vessel: Vessel, assessed: readonly Assessed[]): readonly Finding[] {
  const without = assessed.filter(({ link }) => link.wires.length === 0).map(({ link }) => link.tag)
  const coreless = assessed.filter(({ link }) => link.wires.some(({ cableTag, core }) => cableTag === null || core === null)).map(({ link }) => link.tag)
  const together = { subject: { kind: 'vessel', id: vessel.identity.name }, field: null, evidence: {}, limit: null }
  return [
    ...assessed.flatMap(({ link, line }) => [
      ...link.wires.flatMap((wire, index) => elsewhere(vessel, link, wire, index)),
      ...line.wiring.filter(({ missingSignals }) => missingSignals.length > 0).map(({ listener, missingSignals }) => find(signalWireMissing, {
        ...about(link, 'wires'), context: { signals: inWords(missingSignals), listener: endText(listener) },
      })),
    ]),
    ...usedTwice(assessed.map(({ link }) => link)),
    ...(coreless.length === 0 ? [] : [find(coreNotRecorded, { ...together, context: { links: inWords(coreless) } })]),
    ...(without.length === 0 ? [] : [find(wiresNotRecorded, { ...together, context: { links: inWords(without) } })]),
  ]
}

const about = ({ tag }: SerialLink, field: string) => ({ subject: { kind: 'serial link', id: tag }, field, evidence: {}, limit: null })

function elsewhere(vessel: Vessel, link: SerialLink, wire: SerialWire, index: number): readonly Finding[] {
  const parts = new Set([link.talker, ...link.listeners].map(({ tag }) => tag))
  return (['from', 'to'] as const).filter(side => !parts.has(wire[side].tag) && !isOnTheWay(vessel, wire[side])).map(side =>
    find(wireElsewhere, { ...about(link, `wires.${index}.${side}`), context: { signal: wire.signal, end: endText(wire[side]) } }))
}

/** A core that goes on behind a terminal block is another core; the same wire of two links on one connector is one wire. */
function usedTwice(links: readonly SerialLink[]): readonly Finding[] {
  const wires = links.flatMap(link => link.wires.map((wire, index) => ({ link, wire, index }))).filter(({ wire }) => wire.cableTag !== null && wire.core !== null)
  const byCore = grouped(wires, ({ wire }) => [JSON.stringify([wire.cableTag, wire.core!.toLowerCase()])])
  return [...byCore.values()].flatMap(([first, ...rest]) => rest.filter(({ wire }) => !isSame(first!.wire, wire)).map(({ link, wire, index }) => find(coreUsedTwice, {
    ...about(link, `wires.${index}.core`),
    context: { core: wire.core!, cable: wire.cableTag!, signal: wire.signal, other: `${first!.wire.signal} of ${first!.link === link ? 'the same link' : first!.link.tag}` },
  })))
}

const isSame = (a: SerialWire, b: SerialWire): boolean => a.signal === b.signal && endText(a.from) === endText(b.from) && endText(a.to) === endText(b.to)
