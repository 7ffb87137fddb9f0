import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Vessel } from '../../model/vessel.js'
import { distributionPointNotFed, feedingRing, outputNotNamed, severalFeeders } from './findings.js'
import { feederOf, ringInWords, type Supplies } from './supply.js'

/** About panels and busbars that no source, or more than one feeder, supplies; and about circuits that go round in a ring. */
export function supplyFindings(vessel: Vessel, { rings }: Supplies): Finding[] {
  const { batteries, busbars, equipment, circuitsFedFrom } = lookup(vessel)
  const points = [...circuitsFedFrom].flatMap(([tag, circuits]) => {
    const feeder = feederOf(vessel, tag)
    const about = { subject: { kind: busbars.has(tag) ? 'busbar' : batteries.has(tag) ? 'battery' : equipment.has(tag) ? 'equipment' : 'panel', id: tag }, field: null, limit: null }
    if (feeder.is === 'several') {
      return [find(severalFeeders, { ...about, evidence: {}, context: { circuits: inWords(feeder.circuits.map(circuit => circuit.tag)) } })]
    }
    return feeder.is === 'none' ? [find(distributionPointNotFed, { ...about, evidence: { circuitCount: circuits.length } })] : []
  })
  const outputs = vessel.circuits.flatMap(circuit => {
    const feeder = feederOf(vessel, circuit.fedFromTag, circuit.fedFromTerminal)
    return feeder.is !== 'unclear output' ? [] : [find(outputNotNamed, {
      subject: { kind: 'circuit', id: circuit.tag }, field: 'fedFromTag', evidence: {}, limit: null,
      context: { source: circuit.fedFromTag, terminals: inWords(feeder.terminals) },
    })]
  })
  return [...points, ...outputs, ...rings.map(ring => find(feedingRing, {
    subject: { kind: 'circuit', id: ring[0]! }, field: 'fedFromTag', evidence: {}, limit: null, context: { ring: ringInWords(ring) },
  }))]
}
