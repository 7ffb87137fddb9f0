/** What feeds each circuit, what it is designed to carry, and the cables it consists of. */
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, designCurrentA, type FeedingResults } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { TreeEdge } from '../graph.js'
import { type Backbones, backbonesOf } from './backbones.js'
import { cableFindings } from './cable-findings.js'
import { circuitFindings, demandFindings } from './circuit-findings.js'
import { walkCircuits } from './circuit-walk.js'
import { demandsOf } from './demand.js'
import { powerGraphOf, tagOfNode } from './power-graph.js'
import { outwardSegments, supplySegments } from './segments.js'
import { suppliesOf } from './supply.js'
import { supplyFindings } from './supply-findings.js'

export function feedingPass(vessel: Vessel): FeedingResults {
  const supplies = suppliesOf(vessel)
  const power = powerGraphOf(vessel)
  const walks = walkCircuits(vessel, power)
  const demands = demandsOf(vessel, supplies, walks.byCircuit)
  const backbones = backbonesOf(vessel)

  const byCircuit = new Map(vessel.circuits.map((circuit): [Tag, CircuitFeed] => {
    const supply = supplies.byCircuit.get(circuit.tag)
    const demand = demands.ofCircuit(circuit)
    const cables = walks.byCircuit.get(circuit.tag) ?? { supply: [], outwards: [] }
    return [circuit.tag, {
      chain: supply?.fed ? supply.chain : [],
      sourceTag: supply?.fed ? supply.source.tag : null,
      nominalVoltageV: supply?.fed ? supply.source.nominalVoltageV : null,
      supplyForm: supply?.fed ? supply.source.form : null,
      frequencyHz: supply?.fed ? supply.source.frequencyHz : null,
      ...demand,
      supplySegments: supplySegments(cables.supply, { drawnA: designCurrentA(demand), putInA: demand.infeed === null ? 0 : demand.infeed.currentA }),
      segments: outwardSegments(circuit, cables.outwards, power.passes, demands),
      ...reachOf(vessel, circuit, cables.outwards, backbones),
    }]
  }))
  return {
    byCircuit,
    findings: [
      ...supplyFindings(vessel, supplies),
      ...vessel.circuits.flatMap(circuit => circuitFindings(vessel, circuit, byCircuit.get(circuit.tag)!, power, backbones)),
      ...cableFindings(power, walks),
      ...demandFindings(vessel, byCircuit),
    ],
  }
}

/** Which of its loads a circuit's cables reach. What has been removed is neither. */
function reachOf(vessel: Vessel, circuit: Circuit, outwards: readonly TreeEdge[], backbones: Backbones): Pick<CircuitFeed, 'reachedTags' | 'unreachedTags'> {
  const { equipment } = lookup(vessel)
  const farTags = new Set(outwards.map(({ far }) => tagOfNode(far)))
  for (const tag of [...farTags]) {
    const bus = backbones.get(tag)?.busTag
    if (bus !== undefined) farTags.add(bus)
  }
  const inUse = [...new Set(circuit.loadTags)].filter(tag => equipment.get(tag)?.status !== 'removed')
  return { reachedTags: inUse.filter(tag => farTags.has(tag)), unreachedTags: inUse.filter(tag => !farTags.has(tag)) }
}
