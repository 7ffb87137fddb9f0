import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Cable, Tag } from '../../model/vessel.js'
import type { CircuitWalks } from './circuit-walk.js'
import { cableLoop, cableWithoutProtection, powerCableOnNoCircuit, terminalNotNamed } from './findings.js'
import { type PowerGraph, tagOfNode } from './power-graph.js'

/** About power cables that no circuit can count: joined nowhere, joined twice, or joined to no circuit. */
export function cableFindings({ cables, unnamedEnds }: PowerGraph, { byCircuit, loops, liveFrom }: CircuitWalks): Finding[] {
  const onCircuits = new Set([...byCircuit.values()].flatMap(({ supply, outwards }) => [...supply, ...outwards].map(edge => edge.tag)))
  return [
    ...unnamedEnds.map(({ cable, tag }) =>
      find(terminalNotNamed, { ...about(cable.tag, cable.from.tag === tag ? 'from' : 'to'), context: { block: tag } })),
    ...[...loops.values()].map(({ tag, near, far }) =>
      find(cableLoop, { ...about(tag, null), context: { ends: inWords([...new Set([tagOfNode(near), tagOfNode(far)])]) } })),
    ...cables.filter(({ tag }) => !onCircuits.has(tag) && !loops.has(tag)).map(cable => onNoCircuit(cable, liveFrom.get(cable.tag))),
  ]
}

function onNoCircuit({ tag, from, to }: Cable, point: Tag | undefined): Finding {
  return point === undefined
    ? find(powerCableOnNoCircuit, { ...about(tag, null), context: { from: from.tag, to: to.tag } })
    : find(cableWithoutProtection, { ...about(tag, null), context: { point } })
}

const about = (tag: Tag, field: keyof Cable | null) => ({ subject: { kind: 'cable', id: tag }, field, evidence: {}, limit: null })
