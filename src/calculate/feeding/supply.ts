/** What feeds what: from each circuit back to the battery it comes from. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Battery, Circuit, Tag, Vessel } from '../../model/vessel.js'

/** How a battery, busbar or panel gets its supply. */
export type Feeder =
  | { readonly is: 'source'; readonly battery: Battery }
  | { readonly is: 'circuit'; readonly circuit: Circuit }
  | { readonly is: 'several'; readonly circuits: readonly Circuit[] }
  | { readonly is: 'none' }

/** A normally open circuit counts only where no normally closed one feeds the same thing. */
export function feederOf(vessel: Vessel, pointTag: Tag): Feeder {
  const { batteries, circuitsOfLoad } = lookup(vessel)
  const battery = batteries.get(pointTag)
  if (battery !== undefined) return { is: 'source', battery }
  const listing = circuitsOfLoad.get(pointTag) ?? []
  const closed = listing.filter(circuit => circuit.normalState === 'closed')
  const circuits = closed.length > 0 ? closed : listing
  const [circuit] = circuits
  if (circuit === undefined) return { is: 'none' }
  return circuits.length === 1 ? { is: 'circuit', circuit } : { is: 'several', circuits }
}

export type Supply =
  /** `chain`: circuits from the battery down to and including this one. */
  | { readonly fed: true; readonly chain: readonly Tag[]; readonly battery: Battery }
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
      const feeder = feederOf(vessel, next.fedFromTag)
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
    case 'source': return { fed: true, chain: [], battery: feeder.battery }
    case 'none': return { fed: false, reason: `nothing feeds ${pointTag}` }
    case 'several': return { fed: false, reason: `${pointTag} is fed by ${inWords(feeder.circuits.map(({ tag }) => tag))}` }
  }
}
