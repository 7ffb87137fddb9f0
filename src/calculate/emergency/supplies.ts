/** How to get by when a bank is gone: links between banks, what to switch off first, how each bilge pump can run. */
import { isSwitch, isDistributionPoint, isThere, lookup } from '../../model/lookup.js'
import { designCurrentA, type FeedingResults } from '../../model/results.js'
import type { BankLink, PumpSupply, Shed } from '../../model/results/emergency.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { type EquipmentKindKey, equipmentKind } from '../../references/equipment-kinds.js'
import { safetyServiceOf } from '../../references/safety-services.js'
import { passes } from '../dependency/deliveries.js'
import { segmentsTo } from '../feeding/segments.js'
import { passedBy, type StaysLive } from './isolation.js'

type Feeds = Pick<FeedingResults, 'byCircuit'>

export function bankLinks(vessel: Vessel, { byCircuit }: Feeds): readonly BankLink[] {
  const { batteries, circuitsOfLoad } = lookup(vessel)
  return vessel.circuits.filter(({ normalState }) => normalState === 'open').flatMap((circuit): readonly BankLink[] => {
    const feed = byCircuit.get(circuit.tag)
    const ontoTag = circuit.loadTags.find(tag => isSupplyPoint(vessel, tag))
    if (ontoTag === undefined || feed === undefined || feed.sourceTag === null || !batteries.has(feed.sourceTag)) return []
    const others = (circuitsOfLoad.get(ontoTag) ?? []).filter(({ normalState }) => normalState === 'closed').flatMap(({ tag }) => byCircuit.get(tag)?.sourceTag ?? [])
    return [{
      circuitTag: circuit.tag,
      switchTags: [...new Set(passedBy(feed))].filter(tag => isSwitch(vessel, tag)),
      fromBatteryTag: feed.sourceTag, ontoTag,
      ontoBatteryTags: [...new Set(batteries.has(ontoTag) ? [ontoTag] : others)].filter(tag => batteries.has(tag) && tag !== feed.sourceTag),
    }]
  })
}

/** A battery, busbar or panel: what is closed to it feeds more than one thing. */
export const isSupplyPoint = (vessel: Vessel, tag: Tag): boolean => lookup(vessel).batteries.has(tag) || isDistributionPoint(vessel, tag)

/** Kept alive too, beside what gives a service for safety. Common practice, no source. */
const keptKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['autopilot computer', 'autopilot drive', 'starter motor', 'bilge blower', 'horn'])

/** Draws nothing unless somebody works it. */
const workedKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['thruster', 'windlass', 'winch', 'toilet'])

/**
 * Final circuits from a battery that serve no safety and run by themselves, the heaviest first; what only charges is none.
 *
 * Formula   I_mean = demand factor · I_B: what the circuit counts for in the feeder above
 * Units     I [A]
 */
export function shedding(vessel: Vessel, { byCircuit }: Feeds): readonly Shed[] {
  const { batteries, equipment } = lookup(vessel)
  const isNotMeant = (tag: Tag): boolean => { const item = equipment.get(tag); return item !== undefined && (keptKinds.has(item.kind) || workedKinds.has(item.kind) || equipmentKind(item.kind).draw === 'source' || safetyServiceOf(item) !== null) }
  return vessel.circuits.flatMap((circuit): readonly Shed[] => {
    const feed = byCircuit.get(circuit.tag)
    const currentA = designCurrentA(feed)
    const isFinal = circuit.loadTags.length > 0 && !circuit.loadTags.some(tag => isDistributionPoint(vessel, tag))
    const counts = feed !== undefined && batteries.has(feed.sourceTag ?? '') && isFinal && circuit.loadClass === 'general' && circuit.normalState === 'closed'
      && feed.infeed?.only !== true && !circuit.loadTags.some(isNotMeant)
    return counts && currentA !== null && currentA > 0 ? [{ circuitTag: circuit.tag, meanCurrentA: currentA * circuit.demandFactor }] : []
  }).toSorted((a, b) => b.meanCurrentA - a.meanCurrentA)
}

export function pumpSupplies(vessel: Vessel, { byCircuit }: Feeds, { reaches }: StaysLive): readonly PumpSupply[] {
  const { circuitsOfLoad, equipment } = lookup(vessel)
  const isByFloat = (circuit: Circuit, pumpTag: Tag): boolean =>
    segmentsTo(byCircuit.get(circuit.tag)?.segments ?? [], pumpTag).some(({ farTag }) => equipment.get(farTag)?.kind === ('float switch' satisfies EquipmentKindKey))
  return vessel.equipment.filter(item => isThere(item) && !passes(vessel, item.tag) && safetyServiceOf(item) === 'bilge pumping').map(({ tag: pumpTag }) => {
    const circuits = circuitsOfLoad.get(pumpTag) ?? []
    const told = (circuit: Circuit) => ({ circuitTag: circuit.tag, alwaysLive: reaches(circuit, pumpTag) })
    return { pumpTag, byFloat: circuits.filter(circuit => isByFloat(circuit, pumpTag)).map(told), byHand: circuits.filter(circuit => !isByFloat(circuit, pumpTag)).map(told) }
  })
}
