/** The smallest standard size that would do for each circuit, whatever size is fitted or planned. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import {
  cableLengthM, cableTagsOf, designCurrentA, type FeedingResults, type LoadDrop, type RoutingResults, type SizeAdvice, type SizeChoice, type SizeResults, type VoltageDropResults,
} from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { enterAmpacityTable } from '../../references/tables/ampacity-table.js'
import { cfrTable5 } from '../../references/tables/cfr-33-183-table-5.js'
import { isoAnnexA } from '../../references/tables/iso-13297-annex-a.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import { runMethod } from '../run-method.js'
import { type CableUses, cableUses, exemptionOf, pathWithin } from './circuit-cables.js'
import { conductorOf, resistanceAt20COhmPerKm } from './conductor.js'
import { conductorTemperatureMethod } from './conductor-temperature.calc.js'
import { currentCarryingCapacity } from './current-carrying-capacity.calc.js'
import { dropRule } from './drop-by-basis.js'
import { ambientFactor, bundleFactorOf, type Reason, surroundings } from './surroundings.js'
import { voltageDropByResistance } from './voltage-drop-by-resistance.calc.js'
import { dropLimit } from './voltage-drop.pass.js'

export function conductorSizePass(
  vessel: Vessel, basis: Basis, routing: RoutingResults, feeding: FeedingResults, voltageDrop: VoltageDropResults,
): SizeResults {
  const shared: Shared = { vessel, basis, routing, feeding, voltageDrop, uses: cableUses(vessel, feeding) }
  return { byCircuit: new Map(vessel.circuits.map(circuit => [circuit.tag, adviceFor(shared, circuit)])) }
}

interface Shared {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly routing: RoutingResults
  readonly feeding: FeedingResults
  readonly voltageDrop: VoltageDropResults
  readonly uses: CableUses
}
type Computed = Extract<SizeAdvice, { readonly status: 'computed' }>
type Needs = Computed['input']

function adviceFor(shared: Shared, circuit: Circuit): SizeAdvice {
  const needs = needsOf(shared, circuit)
  if ('reason' in needs) return { status: 'not computed', reason: needs.reason }
  const { basis, vessel } = shared
  const { cables } = lookup(vessel)
  const segments = shared.feeding.byCircuit.get(circuit.tag)?.segments ?? []
  const inSheath = segments.every(({ cableTag }) => cables.get(cableTag)?.carries === 'both')
  const minimum = basis.minimumSize[inSheath ? 'inSheath' : 'separate']
  const warm = { allowedDropV: needs.allowedPhysicalDropV, ambientC: needs.ambientC }
  return {
    status: 'computed',
    mm2: smallest(basis, isoAnnexA.rows.map(({ size }) => size), needs, minimum, warm),
    awg: smallest(basis, cfrTable5.rows.map(({ size }) => size), needs, minimum, warm),
    asFitted: asFitted(shared, circuit, needs),
    input: needs,
  }
}

function needsOf(shared: Shared, circuit: Circuit): Needs | Reason {
  const { vessel, basis, feeding } = shared
  const feed = feeding.byCircuit.get(circuit.tag)
  const designA = designCurrentA(feed)
  if (feed === undefined || designA === null) return { reason: 'the design current is not known' }
  if (feed.sourceTag === null || feed.nominalVoltageV === null) return { reason: 'no source, and so no nominal voltage, is found for the circuit' }
  const longest = longestPath(shared, circuit)
  if ('reason' in longest) return longest
  const feeder = dropAbove(shared, circuit, feed.chain)
  if ('reason' in feeder) return feeder
  const inShared = sharedDrop(shared, circuit, longest)
  if ('reason' in inShared) return inShared
  const limitV = (dropLimit(vessel, basis, circuit, feed.supplyForm, longest.loadTag).value / 100) * feed.nominalVoltageV
  const allowedDropV = limitV - feeder.voltageDropV - inShared.voltageDropV
  if (!(allowedDropV > 0)) return { reason: 'the feeders and shared cables above lose all the voltage that the limit allows' }
  const conditions = conditionsOf(shared, cableTagsOf(circuit, feed), feed.nominalVoltageV)
  if ('reason' in conditions) return conditions
  return {
    designCurrentA: designA,
    // Conductors for engine starting are not held against their capacity.
    requiredCapacityA: exemptionOf(basis.protection, circuit) === null ? Math.max(designA, circuit.protection?.ratedCurrentA ?? 0) : 0,
    conductorLengthM: longest.conductorLengthM,
    allowedDropV,
    allowedPhysicalDropV: feeder.physicalDropV === null || inShared.physicalDropV === null ? null : limitV - feeder.physicalDropV - inShared.physicalDropV,
    ...conditions,
  }
}

interface Longest {
  readonly loadTag: Tag
  /** Of the cables that this circuit has to itself. */
  readonly conductorLengthM: number
  /** Cables on the way that carry other circuits as well: what size they need is not this circuit's to say. */
  readonly sharedTags: ReadonlySet<Tag>
}

/** The load at the end of the longest conductor; all of the design current is taken to flow so far, which errs on the safe side. */
function longestPath({ vessel, basis, routing, feeding, uses }: Shared, circuit: Circuit): Longest | Reason {
  let longest: Longest | null = null
  for (const loadTag of circuit.loadTags) {
    const path = pathWithin(vessel, basis.protection, circuit, feeding.byCircuit.get(circuit.tag)!, loadTag, uses)
    if ('reason' in path) return path
    let conductorLengthM = 0
    const sharedTags = new Set(path.map(({ cableTag }) => cableTag).filter(tag => uses.get(tag)?.some(use => use.circuit !== circuit) === true))
    for (const { cableTag, timesLength } of path) {
      if (sharedTags.has(cableTag)) continue
      const lengthM = cableLengthM(routing.byCable.get(cableTag))
      if (lengthM === null) return { reason: `the length of cable ${cableTag} is not known` }
      conductorLengthM += timesLength * lengthM
    }
    if (longest === null || conductorLengthM > longest.conductorLengthM) longest = { loadTag, conductorLengthM, sharedTags }
  }
  return longest ?? { reason: 'no load is recorded for the circuit' }
}

/** What is lost in the shared cables at the current of all that use them. */
function sharedDrop({ voltageDrop }: Shared, circuit: Circuit, { loadTag, sharedTags }: Longest): Pick<LoadDrop, 'voltageDropV' | 'physicalDropV'> | Reason {
  if (sharedTags.size === 0) return { voltageDropV: 0, physicalDropV: 0 }
  const steps = voltageDrop.byCircuit.get(circuit.tag)?.toLoads.find(load => load.loadTag === loadTag)?.steps
  if (steps === undefined) return { reason: `the voltage drop in ${inWords([...sharedTags])}, which other circuits use as well, is not assessed` }
  const shared = steps.filter(step => step.circuitTag === circuit.tag && sharedTags.has(step.cableTag))
  return {
    voltageDropV: shared.reduce((sum, { byBasis }) => sum + byBasis.output.voltageDropV, 0),
    physicalDropV: shared.reduce<number | null>((sum, { physical }) => (sum === null || physical.status === 'not computed' ? null : sum + physical.output.voltageDropV), 0),
  }
}

/** Voltage lost up to the distribution point that feeds the circuit; nothing at the battery itself. */
function dropAbove({ voltageDrop }: Shared, circuit: Circuit, chain: readonly Tag[]): Pick<LoadDrop, 'voltageDropV' | 'physicalDropV'> | Reason {
  const feederTag = chain.at(-2)
  if (feederTag === undefined) return { voltageDropV: 0, physicalDropV: 0 }
  const feeder = voltageDrop.byCircuit.get(feederTag)?.toLoads.find(({ loadTag }) => loadTag === circuit.fedFromTag)
  return feeder ?? { reason: `the voltage drop of feeder ${feederTag} is not assessed` }
}

/** The coolest insulation, the hottest way and the fullest bundle among the circuit's cables. */
function conditionsOf(
  { vessel, basis, routing }: Shared, cableTags: readonly Tag[], nominalVoltageV: number,
): { readonly insulationC: number; readonly ambientC: number; readonly ambientFactor: number; readonly bundleFactor: number } | Reason {
  const insulations = cableTags.map(tag => conductorOf(vessel, tag).insulationC).filter(rating => rating !== null)
  if (insulations.length === 0) return { reason: 'no insulation temperature is recorded for any cable of the circuit' }
  const insulationC = Math.min(...insulations)
  const column = basis.ampacity.columns.findLast(({ fromC }) => insulationC >= fromC)
  if (column === undefined) return { reason: `the insulation is rated below the lowest column of ${basis.ampacity.title}` }
  let factors = { ambientC: -Infinity, ambientFactor: 1, bundleFactor: 1 }
  for (const tag of cableTags) {
    const around = surroundings(vessel, routing, tag)
    if ('reason' in around) return around
    const ambient = ambientFactor(basis.ampacity, column, around)
    if ('reason' in ambient) return ambient
    const bundle = bundleFactorOf(basis.bundle, around, nominalVoltageV)
    if ('reason' in bundle) return bundle
    factors = { ambientC: Math.max(factors.ambientC, around.hottest.ambientC), ambientFactor: Math.min(factors.ambientFactor, ambient.factor), bundleFactor: Math.min(factors.bundleFactor, bundle.factor) }
  }
  return { insulationC, ...factors }
}

/** The other way round: what a circuit's only cable allows. */
function asFitted({ vessel, basis, feeding }: Shared, circuit: Circuit, needs: Needs): Computed['asFitted'] {
  const [cableTag, ...others] = cableTagsOf(circuit, feeding.byCircuit.get(circuit.tag))
  if (cableTag === undefined || others.length > 0) return null
  const { size } = conductorOf(vessel, cableTag)
  if (size === null || lookup(vessel).cables.get(cableTag)?.parallelCount !== 1 || !(needs.designCurrentA > 0)) return null
  const rule = dropRule(basis)
  return {
    cableTag,
    longestRunM: rule.longestRunM(needs.allowedDropV, needs.designCurrentA, size),
    largestCurrentA: rule.largestLoadA(needs.allowedDropV, needs.conductorLengthM, size, capacityA(basis, size, needs)),
  }
}

/** 0 where the table does not hold the size. */
function capacityA(basis: Basis, size: ConductorSize, { insulationC, ambientFactor, bundleFactor }: Demands): number {
  const entry = enterAmpacityTable(basis.ampacity, size, insulationC)
  return 'reason' in entry ? 0 : currentCarryingCapacity({ tableCurrentA: entry.currentA, parallelCount: 1, ambientFactor, bundleFactor }).currentCarryingCapacityA
}

/** Conditions for the drop by resistance; `allowedDropV` null: that of the feeders above is not known. */
interface Warm { readonly allowedDropV: number | null; readonly ambientC: number }
type Demands = Omit<Needs, 'allowedPhysicalDropV' | 'ambientC'>

/** Drop of the warm conductor, tinned; null where the size has no resistance in the tables or cannot carry the current. */
function warmDropV(basis: Basis, size: ConductorSize, needs: Demands, { ambientC }: Warm): number | null {
  const resistance = resistanceAt20COhmPerKm(size, true)
  const { designCurrentA: currentA, conductorLengthM, insulationC } = needs
  const temperature = runMethod(conductorTemperatureMethod, { ambientC, insulationC, currentA, currentCarryingCapacityA: capacityA(basis, size, needs) })
  if (resistance === null || temperature.status === 'not computed') return null
  const { conductorTemperatureC } = temperature.output
  return voltageDropByResistance({ currentA, conductorLengthM, resistanceAt20COhmPerKm: resistance, conductorTemperatureC }).voltageDropV
}

/**
 * The first of the sizes, thin to thick, that is thick enough in every respect; null when none is. With `warm`, the drop
 * by resistance has to be within the limit as well: the constant of a basis may understate it.
 */
export function smallest(basis: Basis, sizes: readonly ConductorSize[], needs: Demands, minimum: ConductorSize, warm: Warm | null = null): SizeChoice | null {
  const byDropMm2 = dropRule(basis).minimumMm2(needs.designCurrentA, needs.conductorLengthM, needs.allowedDropV)
  const first = {
    'minimum size': sizes.findIndex(({ crossSectionMm2 }) => crossSectionMm2 >= minimum.crossSectionMm2),
    'voltage drop': sizes.findIndex(({ crossSectionMm2 }) => crossSectionMm2 >= byDropMm2),
    'current-carrying capacity': sizes.findIndex(size => capacityA(basis, size, needs) >= needs.requiredCapacityA),
    'voltage drop by resistance': warm === null || warm.allowedDropV === null ? 0
      : sizes.findIndex(size => { const dropV = warmDropV(basis, size, needs, warm); return dropV !== null && dropV <= warm.allowedDropV! }),
  }
  if (Object.values(first).includes(-1)) return null
  const chosen = Math.max(...Object.values(first))
  const governedBy = (Object.keys(first) as (keyof typeof first)[]).find(what => first[what] === chosen)!
  const size = sizes[chosen]!
  return { designation: size.designation, byDropMm2, capacityA: capacityA(basis, size, needs), governedBy }
}
