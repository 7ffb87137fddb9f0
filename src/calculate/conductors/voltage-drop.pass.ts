/** Voltage lost from the source to each load: feeders and branch added, by the constant of the basis and by resistance. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import {
  cableLengthM, type CapacityResults, type CircuitDrop, type CircuitFeed, type DropStep, type FeedingResults, type LoadDrop,
  type RoutingResults, type VoltageDropResults,
} from '../../model/results.js'
import type { Circuit, SupplyForm, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { type CableUses, cableUses, type PathCable, pathWithin } from './circuit-cables.js'
import { conductorOf, gapIn, resistanceAt20COhmPerKm } from './conductor.js'
import { conductorTemperatureMethod } from './conductor-temperature.calc.js'
import { dropRule } from './drop-by-basis.js'
import { physicalDropAboveLimit, voltageDropAboveLimit } from './findings.js'
import { type Reason, surroundings } from './surroundings.js'
import { voltageDropByResistanceMethod } from './voltage-drop-by-resistance.calc.js'
import { voltageDropPercent } from './voltage-drop-percent.calc.js'

export function voltageDropPass(
  vessel: Vessel, basis: Basis, routing: RoutingResults, feeding: FeedingResults, capacity: CapacityResults,
): VoltageDropResults {
  const shared: Shared = { vessel, basis, routing, feeding, capacity, uses: cableUses(vessel, feeding) }
  const byCircuit = new Map<Tag, CircuitDrop>()
  const findings: Finding[] = []
  for (const circuit of vessel.circuits) {
    const drop = dropOfCircuit(shared, circuit)
    byCircuit.set(circuit.tag, drop)
    findings.push(...findingsOf(circuit, drop))
  }
  return { byCircuit, findings }
}

/** The limit for a branch of a circuit: that of a.c., of main feeders to a panel or busbar, else that of the circuit's class. */
export function dropLimit(vessel: Vessel, basis: Basis, circuit: Circuit, form: SupplyForm | null, loadTag: Tag): Limit {
  if (form === 'ac') return basis.voltageDropPercent.ac
  return basis.voltageDropPercent[isDistributionPoint(vessel, loadTag) ? 'feeder' : circuit.loadClass]
}

interface Shared {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly routing: RoutingResults
  readonly feeding: FeedingResults
  readonly capacity: CapacityResults
  readonly uses: CableUses
}

function dropOfCircuit(shared: Shared, circuit: Circuit): CircuitDrop {
  const feed = shared.feeding.byCircuit.get(circuit.tag)
  if (feed === undefined || feed.sourceTag === null) return notAssessed('no source is found for the circuit')
  const { nominalVoltageV } = feed
  if (nominalVoltageV === null || !(nominalVoltageV > 0)) return notAssessed('the nominal voltage of the source is not known')
  if (circuit.loadTags.length === 0) return notAssessed('no load is recorded for the circuit')
  const outcomes = circuit.loadTags.map(loadTag => {
    const drop = dropToLoad(shared, circuit, feed, loadTag, nominalVoltageV)
    return 'reason' in drop ? { loadTag, reason: drop.reason } : drop
  })
  const toLoads = outcomes.filter(outcome => 'steps' in outcome)
  return {
    toLoads,
    worst: toLoads.reduce<LoadDrop | null>((worst, drop) => (drop.comparison.margin < (worst?.comparison.margin ?? Infinity) ? drop : worst), null),
    notAssessed: outcomes.filter(outcome => 'reason' in outcome),
  }
}

const notAssessed = (reason: string): CircuitDrop => ({ toLoads: [], worst: null, notAssessed: [{ loadTag: null, reason }] })

function dropToLoad(shared: Shared, circuit: Circuit, feed: CircuitFeed, loadTag: Tag, nominalVoltageV: number): LoadDrop | Reason {
  const path = pathFromSource(shared, feed, loadTag)
  if ('reason' in path) return path
  const steps: DropStep[] = []
  for (const cable of path) {
    const step = stepOf(shared, cable)
    if ('reason' in step) return step
    steps.push(step)
  }
  const voltageDropV = steps.reduce((sum, { byBasis }) => sum + byBasis.output.voltageDropV, 0)
  const physicalDropV = steps.reduce<number | null>(
    (sum, { physical }) => (sum === null || physical.status === 'not computed' ? null : sum + physical.output.voltageDropV), 0,
  )
  const inPercent = (dropV: number): number => voltageDropPercent({ voltageDropV: dropV, nominalVoltageV }).voltageDropPercent
  const limit = dropLimit(shared.vessel, shared.basis, circuit, feed.supplyForm, loadTag)
  const physicalDropPercent = physicalDropV === null ? null : inPercent(physicalDropV)
  return {
    loadTag,
    steps,
    nominalVoltageV,
    voltageDropV,
    voltageDropPercent: inPercent(voltageDropV),
    physicalDropV,
    physicalDropPercent,
    comparison: compare('voltageDropPercent', inPercent(voltageDropV), limit),
    physicalComparison: physicalDropPercent === null ? null : compare('physicalDropPercent', physicalDropPercent, limit),
  }
}

/** Every cable from the source to the load, through each circuit of the chain to the point that feeds the next. */
function pathFromSource({ vessel, basis, feeding, uses }: Shared, feed: CircuitFeed, loadTag: Tag): readonly PathCable[] | Reason {
  const { circuits } = lookup(vessel)
  // A charging circuit loses voltage from its charging source back to the battery, through the feeders as well.
  const charging = feed.infeed?.only ?? false
  const path: PathCable[] = []
  for (const [i, circuitTag] of feed.chain.entries()) {
    const next = feed.chain[i + 1]
    const circuit = circuits.get(circuitTag)!
    const toTag = next === undefined ? loadTag : circuits.get(next)!.fedFromTag
    const within = pathWithin(vessel, basis.protection, circuit, feeding.byCircuit.get(circuitTag)!, toTag, uses, charging)
    if ('reason' in within) return within
    path.push(...within)
  }
  return path
}

function stepOf(shared: Shared, { circuitTag, cableTag, currentA, timesLength, returnAssumedAlike }: PathCable): DropStep | Reason {
  const { vessel, basis, routing } = shared
  const lengthM = cableLengthM(routing.byCable.get(cableTag))
  if (lengthM === null) return { reason: `the length of cable ${cableTag} is not known` }
  if (currentA === null) return { reason: `the current in cable ${cableTag} is not known` }
  const { size } = conductorOf(vessel, cableTag)
  if (size === null) return { reason: `the conductor size of cable ${cableTag} is not recorded` }
  const conductorLengthM = timesLength * lengthM
  const parallelCount = lookup(vessel).cables.get(cableTag)?.parallelCount ?? 1
  const eachA = currentA / parallelCount
  return {
    circuitTag,
    cableTag,
    returnAssumedAlike,
    parallelCount,
    byBasis: dropRule(basis).drop(eachA, conductorLengthM, size),
    physical: physicalDrop(shared, cableTag, eachA, conductorLengthM),
  }
}

function physicalDrop({ vessel, routing, capacity }: Shared, cableTag: Tag, currentA: number, conductorLengthM: number): DropStep['physical'] {
  const notComputed = (reason: string) => ({ status: 'not computed', method: voltageDropByResistanceMethod.id, reason }) as const
  const { size, insulationC, tinned } = conductorOf(vessel, cableTag)
  if (size === null || insulationC === null) return notComputed(gapIn(vessel, lookup(vessel).cables.get(cableTag)!)!.missing)
  const resistance = resistanceAt20COhmPerKm(size, tinned)
  if (resistance === null) return notComputed(`cable ${cableTag} is thinner than the smallest class 5 size`)
  return runMethod(voltageDropByResistanceMethod, {
    currentA,
    conductorLengthM,
    resistanceAt20COhmPerKm: resistance,
    conductorTemperatureC: temperatureC(surroundings(vessel, routing, cableTag), capacity, cableTag, currentA, insulationC),
  })
}

/** Where the temperature cannot be worked out, the conductor counts as hot as its insulation allows. */
function temperatureC(around: ReturnType<typeof surroundings>, capacity: CapacityResults, cableTag: Tag, currentA: number, insulationC: number): number {
  const outcome = capacity.byCable.get(cableTag)?.outcome
  if ('reason' in around || outcome?.status !== 'computed') return insulationC
  const currentCarryingCapacityA = outcome.output.currentCarryingCapacityA / outcome.input.parallelCount
  const temperature = runMethod(conductorTemperatureMethod, { ambientC: around.hottest.ambientC, insulationC, currentA, currentCarryingCapacityA })
  return temperature.status === 'computed' ? temperature.output.conductorTemperatureC : insulationC
}

/** One finding for the load that is worst off; the others stand in the table of the circuit. */
function findingsOf(circuit: Circuit, { toLoads, worst }: CircuitDrop): readonly Finding[] {
  if (worst === null) return []
  const about = { subject: { kind: 'circuit', id: circuit.tag }, field: null }
  if (!worst.comparison.within) {
    const feederDropV = worst.steps.reduce((sum, step) => sum + (step.circuitTag === circuit.tag ? 0 : step.byBasis.output.voltageDropV), 0)
    const evidence = { voltageDropPercent: worst.voltageDropPercent, voltageDropV: worst.voltageDropV, feederDropV }
    return [find(voltageDropAboveLimit, { ...about, evidence, limit: worst.comparison.limit, context: { load: worst.loadTag } })]
  }
  const doubtful = toLoads.find(({ physicalComparison }) => physicalComparison?.within === false)
  if (doubtful === undefined) return []
  const evidence = { voltageDropPercent: doubtful.voltageDropPercent, physicalDropPercent: doubtful.physicalDropPercent! }
  return [find(physicalDropAboveLimit, { ...about, evidence, limit: doubtful.comparison.limit, context: { load: doubtful.loadTag } })]
}
