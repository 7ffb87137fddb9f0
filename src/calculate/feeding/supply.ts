/** What feeds what: from each circuit back to the source it comes from. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Circuit, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'

/** Where a system starts: a battery, or an output of equipment, with losses and protection upstream of its own. */
export interface Source extends Pick<Output, 'nominalVoltageV' | 'form' | 'frequencyHz' | 'ratedCurrentA' | 'shortCircuitCurrentA'> {
  readonly tag: Tag
  /** It gives the current that it can, whatever is joined to it: a solar panel, an alternator. */
  readonly drives: boolean
}
const driving: ReadonlySet<string> = new Set<EquipmentKindKey>(['solar panel', 'alternator'])

/** How a battery, busbar, panel or output gets its supply. */
export type Feeder =
  | { readonly is: 'source'; readonly source: Source }
  | { readonly is: 'circuit'; readonly circuit: Circuit }
  | { readonly is: 'several'; readonly circuits: readonly Circuit[] }
  /** Equipment with outputs, and the one that is meant is not named, or is none of them. */
  | { readonly is: 'unclear output'; readonly terminal: string | null; readonly terminals: readonly string[] }
  | { readonly is: 'none' }

/** A normally open circuit counts only where no normally closed one feeds the same thing. */
export function feederOf(vessel: Vessel, pointTag: Tag, terminal: string | null = null): Feeder {
  const { batteries, equipment, circuitsOfLoad } = lookup(vessel)
  const battery = batteries.get(pointTag)
  if (battery !== undefined) {
    if (battery.status === 'removed') return { is: 'none' }
    const { nominalVoltageV } = battery
    return { is: 'source', source: { tag: pointTag, nominalVoltageV, form: 'dc', frequencyHz: null, ratedCurrentA: null, shortCircuitCurrentA: null, drives: false } }
  }
  const item = equipment.get(pointTag)
  if (item !== undefined) return outputOf(item, terminal)
  const listing = circuitsOfLoad.get(pointTag) ?? []
  const closed = listing.filter(circuit => circuit.normalState === 'closed')
  const circuits = closed.length > 0 ? closed : listing
  const [circuit] = circuits
  if (circuit === undefined) return { is: 'none' }
  return circuits.length === 1 ? { is: 'circuit', circuit } : { is: 'several', circuits }
}

function outputOf({ tag, kind, outputs, status }: Equipment, terminal: string | null): Feeder {
  if (outputs.length === 0 || status === 'removed') return { is: 'none' }
  const output = terminal === null && outputs.length === 1 ? outputs[0] : outputs.find(each => each.terminal === terminal && terminal !== null)
  return output === undefined
    ? { is: 'unclear output', terminal, terminals: outputs.flatMap(each => each.terminal ?? []) }
    : { is: 'source', source: { tag, drives: driving.has(kind), ...output } }
}

export type Supply =
  /** `chain`: circuits from the source down to and including this one. */
  | { readonly fed: true; readonly chain: readonly Tag[]; readonly source: Source }
  | { readonly fed: false; readonly reason: string }

export interface Supplies {
  readonly byCircuit: ReadonlyMap<Tag, Supply>
  /** Circuits that feed one another round and round, each ring once. */
  readonly rings: readonly (readonly Tag[])[]
}

export function suppliesOf(vessel: Vessel): Supplies {
  const byCircuit = new Map<Tag, Supply>()
  const rings: (readonly Tag[])[] = []
  for (const circuit of vessel.circuits) {
    const upwards: Tag[] = []
    const onTheWay = new Set<Tag>()
    let next: Circuit = circuit
    let above = byCircuit.get(next.tag)
    while (above === undefined) {
      upwards.push(next.tag)
      onTheWay.add(next.tag)
      const feeder = feederOf(vessel, next.fedFromTag, next.fedFromTerminal)
      if (feeder.is !== 'circuit') above = endOf(next.fedFromTag, feeder)
      else if (onTheWay.has(feeder.circuit.tag)) {
        const ring = upwards.slice(upwards.indexOf(feeder.circuit.tag)).reverse()
        rings.push(ring)
        above = { fed: false, reason: ringInWords(ring) }
      } else {
        next = feeder.circuit
        above = byCircuit.get(next.tag)
      }
    }
    for (const tag of upwards.reverse()) {
      above = above.fed ? { ...above, chain: [...above.chain, tag] } : above
      byCircuit.set(tag, above)
    }
  }
  return { byCircuit, rings }
}

export const ringInWords = (ring: readonly Tag[]): string =>
  ring.length === 1 ? `${ring[0]} feeds itself` : `${inWords(ring)} feed one another in a ring`

function endOf(pointTag: Tag, feeder: Exclude<Feeder, { is: 'circuit' }>): Supply {
  switch (feeder.is) {
    case 'source': return { fed: true, chain: [], source: feeder.source }
    case 'none': return { fed: false, reason: `nothing feeds ${pointTag}` }
    case 'unclear output': return { fed: false, reason: `which output of ${pointTag} is meant is not known` }
    case 'several': return { fed: false, reason: `${pointTag} is fed by ${inWords(feeder.circuits.map(({ tag }) => tag))}` }
  }
}
