/** What each power cable can carry where it is fitted, held against what it is to carry. */
import { type Finding, find } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import type { CableCapacity, CapacityResults, FeedingResults, RoutingResults } from '../../model/results.js'
import type { Cable, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { cite } from '../../references/bibliography.js'
import { type AmpacityTable, enterAmpacityTable, type TableEntry } from '../../references/tables/ampacity-table.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import { say, saySize, saySizeBoth } from '../../units/format.js'
import { compare } from '../compare.js'
import { isPowerCable } from '../power-cable.js'
import { runMethod } from '../run-method.js'
import { type CableUse, cableUses, currentInA, exemptionOf } from './circuit-cables.js'
import { conductorOf, gapIn } from './conductor.js'
import { currentCarryingCapacityMethod as method } from './current-carrying-capacity.calc.js'
import { cableDataMissing, currentAboveCapacity } from './findings.js'
import { ambientFactor, bundleFactorOf, surroundings } from './surroundings.js'

export function currentCarryingCapacityPass(
  vessel: Vessel, basis: Basis, routing: RoutingResults, feeding: FeedingResults,
): CapacityResults {
  const uses = cableUses(vessel, feeding)
  const { cableTypes } = lookup(vessel)
  const byCable = new Map<string, CableCapacity>()
  const findings: Finding[] = []
  for (const cable of vessel.cables) {
    const use = uses.get(cable.tag)
    if (use === undefined) {
      if (cable.status !== 'removed' && isPowerCable(cable, cableTypes.get(cable.typeTag ?? '') ?? null)) byCable.set(cable.tag, unused(cable))
      continue
    }
    const capacity = capacityOf(vessel, basis, routing, feeding, cable, use)
    byCable.set(cable.tag, capacity)
    const about = { subject: { kind: 'cable', id: cable.tag }, field: 'typeTag' }
    const circuit = use[0]!.circuit.tag
    const gap = gapIn(vessel, cable)
    if (gap !== null) findings.push(find(cableDataMissing, { ...about, evidence: {}, limit: null, context: { ...gap, circuit } }))
    if (capacity.comparison?.within === false) {
      const { value: currentA, limit } = capacity.comparison
      findings.push(find(currentAboveCapacity, { ...about, evidence: { currentA }, limit, context: { circuit } }))
    }
  }
  return { byCable, findings }
}

const notComputed = (circuitTag: string | null, reason: string): CableCapacity => ({
  circuitTag, outcome: { status: 'not computed', method: method.id, reason }, lookup: [], bundledAdviceA: null, comparison: null,
})

const unused = (cable: Cable): CableCapacity => notComputed(null, cable.carries === 'negative'
  ? 'no circuit names it as its way back, so its current is not known'
  : 'no circuit reaches it, so its current is not known')

function capacityOf(
  vessel: Vessel, basis: Basis, routing: RoutingResults, feeding: FeedingResults, cable: Cable, use: readonly CableUse[],
): CableCapacity {
  const circuitTag = use[0]!.circuit.tag
  const { size, insulationC } = conductorOf(vessel, cable.tag)
  if (size === null || insulationC === null) return notComputed(circuitTag, gapIn(vessel, cable)!.missing)
  const entry = enterAmpacityTable(basis.ampacity, size, insulationC)
  if ('reason' in entry) return notComputed(circuitTag, entry.reason)
  const around = surroundings(vessel, routing, cable.tag)
  if ('reason' in around) return notComputed(circuitTag, around.reason)
  const ambient = ambientFactor(basis.ampacity, entry.column, around)
  if ('reason' in ambient) return notComputed(circuitTag, ambient.reason)
  const bundle = bundleFactorOf(basis.bundle, around, feeding.byCircuit.get(circuitTag)?.nominalVoltageV ?? null)
  if ('reason' in bundle) return notComputed(circuitTag, bundle.reason)

  const outcome = runMethod(method, { tableCurrentA: entry.currentA, parallelCount: cable.parallelCount, ambientFactor: ambient.factor, bundleFactor: bundle.factor })
  const exemption = commonExemption(basis, use)
  const currentA = exemption === null ? currentInA(basis.protection, use) : null
  const capacityA = outcome.status === 'computed' ? outcome.output.currentCarryingCapacityA : null
  const bundledAdviceA = capacityA !== null && bundle.adviceFactor !== null ? capacityA * bundle.adviceFactor : null
  return {
    circuitTag,
    outcome,
    lookup: [
      ...tableLookup(basis.ampacity, entry, size, insulationC),
      { label: 'Ambient', text: ambient.text },
      { label: 'Bundle', text: bundle.text },
      ...(bundledAdviceA === null ? [] : [{ label: 'Advice', text: `${say('capacityA', bundledAdviceA)} with the bundle factor, which is not required below ${say('nominalVoltageV', basis.bundle.requiredFromV)}` }]),
      ...(exemption === null ? [] : [{ label: 'Exempt', text: `conductor for ${exemption.reason}, not held against its capacity by ${cite(exemption.citation)}` }]),
    ],
    bundledAdviceA,
    comparison: capacityA === null || currentA === null ? null
      : compare('currentA', currentA, { relation: 'at most', value: capacityA, citation: basis.ampacity.citation }),
  }
}

/** Conductors for engine starting carry a surge, which the tables are not made for; unless another circuit uses them too. */
function commonExemption(basis: Basis, use: readonly CableUse[]) {
  const exemptions = use.map(({ circuit }) => exemptionOf(basis.protection, circuit))
  return exemptions.includes(null) ? null : exemptions[0]!
}

function tableLookup(table: AmpacityTable, { row, column }: TableEntry, size: ConductorSize, insulationC: number) {
  const sameSize = row.size.system === size.system && row.size.designation === size.designation
  return [
    { label: 'Table', text: cite(table.citation) },
    { label: 'Row', text: sameSize ? saySize(size) : `${saySize(row.size)}, the next thinner size in the table for ${saySizeBoth(size)}` },
    { label: 'Column', text: insulationC === column.fromC ? column.title : `${column.title}, for insulation rated ${say('insulationC', insulationC)}` },
  ]
}
