import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Vessel } from '../../model/vessel.js'
import { isAcCircuit } from './demand.js'
import { distributionPointNotFed, feedingRing, severalFeeders } from './findings.js'
import { feederOf, ringInWords, type Supplies } from './supply.js'

/** About panels and busbars that no source, or more than one feeder, supplies; and about circuits that go round in a ring. */
export function supplyFindings(vessel: Vessel, { rings }: Supplies): Finding[] {
  const { busbars, circuitsFedFrom } = lookup(vessel)
  const points = [...circuitsFedFrom].flatMap(([tag, circuits]) => {
    const feeder = feederOf(vessel, tag)
    const about = { subject: { kind: busbars.has(tag) ? 'busbar' : 'panel', id: tag }, field: null, limit: null }
    if (feeder.is === 'several') {
      return [find(severalFeeders, { ...about, evidence: {}, context: { circuits: inWords(feeder.circuits.map(circuit => circuit.tag)) } })]
    }
    if (feeder.is !== 'none' || circuits.every(circuit => isAcCircuit(vessel, circuit))) return []
    return [find(distributionPointNotFed, { ...about, evidence: { circuitCount: circuits.length } })]
  })
  return [...points, ...rings.map(ring => find(feedingRing, {
    subject: { kind: 'circuit', id: ring[0]! }, field: 'fedFromTag', evidence: {}, limit: null, context: { ring: ringInWords(ring) },
  }))]
}
