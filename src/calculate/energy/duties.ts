/** Which items run in an operating mode, and when: rows for circuits spread over all that they feed. */
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Circuit, Duty, Period, Tag, Vessel } from '../../model/vessel.js'

export const hoursOfDay = Array.from({ length: 24 }, (_, hour) => hour)

/** Share of an hour of the day that lies in the periods; without periods all of it. */
export function shareOfHour(periods: readonly Period[], hour: number): number {
  if (periods.length === 0) return 1
  const share = periods.flatMap(({ fromH, toH }) => [0, 24].map(shift => Math.min(toH, hour + shift + 1) - Math.max(fromH, hour + shift)))
    .reduce((sum, overlap) => sum + Math.max(0, overlap), 0)
  return Math.min(1, share)
}

/** A row of duty for one item; `circuitTag` where the row names the circuit and gives its whole current. */
export interface ItemDuty { readonly itemTag: Tag; readonly duty: Duty; readonly wholeCircuit: boolean }

export interface ModeDuties {
  readonly items: readonly ItemDuty[]
  /** Circuits and sources whose row gives the current of all that they feed. */
  readonly coveringTags: ReadonlySet<Tag>
}

/** The row nearest to an item holds: its own, else that of its circuit, else that of a feeder above. */
export function dutiesOf(vessel: Vessel, modeTag: Tag): ModeDuties {
  const { circuits, circuitsOfLoad, circuitsFedFrom, equipment } = lookup(vessel)
  const rows = vessel.duties.filter(duty => duty.modeTag === modeTag)
  const nearest = new Map<Tag, { distance: number; duties: Duty[] }>()
  const put = (itemTag: Tag, duty: Duty, distance: number) => {
    const known = nearest.get(itemTag)
    if (known === undefined || distance < known.distance) nearest.set(itemTag, { distance, duties: [duty] })
    else if (distance === known.distance && !known.duties.includes(duty)) known.duties.push(duty)
  }
  const spread = (circuit: Circuit, duty: Duty, distance: number, seen: ReadonlySet<Tag>) => {
    if (seen.has(circuit.tag)) return
    for (const tag of circuit.loadTags) {
      if (!isDistributionPoint(vessel, tag)) {
        // What has been removed is said of a row that names it, not of one that names its circuit.
        if (equipment.get(tag)?.status !== 'removed') put(tag, duty, distance)
      } else {
        const below = (circuitsFedFrom.get(tag) ?? []).filter(({ normalState }) => normalState === 'closed')
        for (const fed of below) spread(fed, duty, distance + 1, new Set([...seen, circuit.tag]))
      }
    }
  }
  const wholeCircuits: ItemDuty[] = []
  for (const duty of rows) {
    const circuit = circuits.get(duty.itemTag)
    if (circuit === undefined) put(duty.itemTag, duty, 0)
    else if (duty.currentA !== null) wholeCircuits.push({ itemTag: circuit.tag, duty, wholeCircuit: true })
    else spread(circuit, duty, 1, new Set())
  }
  const items = [...nearest].flatMap(([itemTag, { duties }]) => duties.map(duty => ({ itemTag, duty, wholeCircuit: false })))
  const feeding = items.filter(({ itemTag, duty }) => duty.currentA !== null && circuitsFedFrom.has(itemTag) && (circuitsOfLoad.get(itemTag) ?? []).length > 0)
  return {
    items: [...wholeCircuits, ...items],
    coveringTags: new Set([...wholeCircuits, ...feeding].map(({ itemTag }) => itemTag)),
  }
}
