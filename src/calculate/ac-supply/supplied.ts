/** The a.c. sources of a vessel, and which circuits each can feed. */
import { grouped, isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Circuit, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'

/** One a.c. output of an item. */
export interface AcOutput { readonly item: Equipment; readonly output: Output }

export interface SuppliedCircuit {
  readonly circuit: Circuit
  /** Circuits from the source down to and including this one. */
  readonly way: readonly Circuit[]
  /** Of the system it belongs to. */
  readonly nominalVoltageV: number
}

export const acOutputsOf = (vessel: Vessel): readonly AcOutput[] =>
  vessel.equipment.filter(({ status }) => status !== 'removed').flatMap(itemOutputs)

const itemOutputs = (item: Equipment): readonly AcOutput[] =>
  item.outputs.filter(({ form }) => form === 'ac').map(output => ({ item, output }))

/** What an item of these kinds takes on an a.c. circuit is what is drawn behind it, its own charging added. */
const passesOn: ReadonlySet<string> = new Set<EquipmentKindKey>(['isolation transformer', 'inverter charger'])

/** Whether loads are to be looked for behind an item: what comes in on one side goes out on the other. */
export const isPassedOn = (vessel: Vessel, tag: Tag): boolean => {
  const item = lookup(vessel).equipment.get(tag)
  return item !== undefined && passesOn.has(item.kind) && itemOutputs(item).some(output => circuitsFrom(vessel, output).length > 0)
}

function circuitsFrom(vessel: Vessel, { item, output }: AcOutput): readonly Circuit[] {
  const only = itemOutputs(item).length === 1
  return (lookup(vessel).circuitsFedFrom.get(item.tag) ?? [])
    .filter(({ fedFromTerminal }) => fedFromTerminal === output.terminal || (only && fedFromTerminal === null))
}

/**
 * Circuits that an output can feed, nearest first. A normally open circuit is followed where it comes straight from the
 * source or is interlocked with others, being then the way in which this source is chosen. `beyond`: on through
 * transformers and inverter chargers, each at its own voltage.
 */
export function suppliedBy(vessel: Vessel, start: AcOutput, { beyond }: { readonly beyond: boolean }): readonly SuppliedCircuit[] {
  const { circuitsFedFrom, equipment } = lookup(vessel)
  const from = (output: AcOutput, way: readonly Circuit[]): SuppliedCircuit[] =>
    circuitsFrom(vessel, output).map(circuit => ({ circuit, way: [...way, circuit], nominalVoltageV: output.output.nominalVoltageV }))
  const found = from(start, [])
  const seen = new Set(found.map(({ circuit }) => circuit.tag))
  // The list grows while it is gone through: that is the queue.
  for (const { circuit, way, nominalVoltageV } of found) {
    for (const tag of circuit.loadTags) {
      const item = equipment.get(tag)
      const next = isDistributionPoint(vessel, tag)
        ? (circuitsFedFrom.get(tag) ?? []).filter(below => followed(vessel, below)).map(below => ({ circuit: below, way: [...way, below], nominalVoltageV }))
        : beyond && item !== undefined && isPassedOn(vessel, tag) ? itemOutputs(item).flatMap(output => from(output, way)) : []
      for (const each of next) {
        if (seen.has(each.circuit.tag)) continue
        seen.add(each.circuit.tag)
        found.push(each)
      }
    }
  }
  return found
}

const followed = (vessel: Vessel, circuit: Circuit): boolean =>
  circuit.normalState === 'closed' || circuit.interlockTag !== null || !circuit.loadTags.some(tag => isDistributionPoint(vessel, tag))

/** By circuit the sources that can feed it. */
export const sourcesByCircuit = (supplied: ReadonlyMap<AcOutput, readonly SuppliedCircuit[]>): ReadonlyMap<Tag, readonly AcOutput[]> => {
  const pairs = [...supplied].flatMap(([source, circuits]) => circuits.map(({ circuit }) => ({ source, tag: circuit.tag })))
  return new Map([...grouped(pairs, ({ tag }) => [tag])].map(([tag, found]) => [tag, found.map(({ source }) => source)]))
}
