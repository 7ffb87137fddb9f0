/** Supply of a backbone: from each power insertion outwards, how much flows in each stretch and what arrives at each tee. */
import { inWords } from '../../findings/words.js'
import type { Backbone, BusDevice, BusSupply, Insertion, Leg, SolvedSection, Station, SupplySection } from '../../model/results/can-bus.js'
import type { CanBus, Vessel } from '../../model/vessel.js'
import { lightestOf, supplyProtectionLimit } from '../../references/tables/can-rules.js'
import { lookup } from '../../model/lookup.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { insertionOf } from './insertion.js'
import { legOf, type Reach, teesOf } from './legs.js'
import { lenCurrentMethod } from './supply-drop.calc.js'

export function supplyOf(vessel: Vessel, before: Upstream, bus: CanBus, backbone: Backbone): BusSupply {
  const { suppliesDevices } = bus
  return { suppliesDevices, sections: suppliesDevices ? rangesOf(backbone).map(range => sectionOf(vessel, before, backbone, range)) : [] }
}

/** Positions of the first and last station between the ends and the isolators; empty ones left out. */
function rangesOf({ stations }: Backbone): readonly { readonly from: number; readonly to: number }[] {
  const breaks = [-1, ...stations.flatMap(({ part }, i) => (part.kind === 'isolator' ? [i] : [])), stations.length]
  return breaks.slice(1).map((end, i) => ({ from: breaks[i]! + 1, to: end - 1 })).filter(({ from, to }) => to >= from)
}

const lenOf = (devices: readonly BusDevice[]): number => devices.reduce((sum, { loadEquivalencyNumber }) => sum + (loadEquivalencyNumber ?? 0), 0)

function sectionOf(vessel: Vessel, before: Upstream, backbone: Backbone, { from, to }: { from: number; to: number }): SupplySection {
  const stations = backbone.stations.slice(from, to + 1)
  const devices = stations.flatMap(({ device }) => device ?? [])
  const powers = stations.flatMap(({ part }, i) => (part.kind === 'power' ? [{ part, position: from + i }] : []))
  const known = { from, to, insertionTags: powers.map(({ part }) => part.tag), deviceCount: devices.length, loadEquivalencyNumber: lenOf(devices) }
  const [power, second] = powers
  if (power === undefined) return { ...known, missing: devices.length === 0 ? [] : [`no power insertion is recorded for the part with ${inWords(devices.map(({ tag }) => tag))}`], solved: null }
  if (second !== undefined) return { ...known, missing: [`${inWords(known.insertionTags)} feed one stretch, so how the current divides is not known`], solved: null }
  const unknown = [...new Set(devices.filter(({ loadEquivalencyNumber }) => loadEquivalencyNumber === null).map(({ tag }) => tag))]
  const reach = { backbone, from, to, position: power.position }
  const missing = [
    ...(unknown.length === 0 ? [] : [`no load equivalency number is recorded for ${inWords(unknown)}`]),
    ...cableGaps(backbone, from, to, power.position),
  ]
  if (missing.length > 0) return { ...known, missing, solved: null }
  const insertion = insertionOf(vessel, before, power.part, power.position)
  const solved = solve(vessel, reach, insertion, known.loadEquivalencyNumber)
  return { ...known, missing: [...(insertion.missing === null ? [] : [insertion.missing]), ...dropGaps(stations), ...protectionGaps(vessel, insertion)], solved }
}

/** Between the insertion and the outermost tees every length and resistance is needed. */
function cableGaps({ stations, spans }: Backbone, from: number, to: number, position: number): readonly string[] {
  const tees = stations.flatMap(({ part }, i) => (part.kind === 'tee' && i >= from && i <= to ? [i] : []))
  const needed = spans.slice(Math.min(position, ...tees) + 1, Math.max(position, ...tees) + 1).flat()
  const tagsWhere = (field: 'lengthM' | 'resistanceOhmPerM') => [...new Set(needed.filter(segment => segment[field] === null).map(({ cableTag }) => cableTag))]
  const [unmeasured, kindless] = [tagsWhere('lengthM'), tagsWhere('resistanceOhmPerM')]
  return [
    ...(unmeasured.length === 0 ? [] : [`the length of ${inWords(unmeasured)} is not known`]),
    ...(kindless.length === 0 ? [] : [`the kind of bus cable is not recorded for ${inWords(kindless)}`]),
  ]
}

function dropGaps(stations: readonly Station[]): readonly string[] {
  const unknown = stations.filter(({ device, drop }) => device !== null && drop !== null && drop.resistanceOhmPerM === null).map(({ drop }) => drop!.cableTag)
  return unknown.length === 0 ? [] : [`the kind of bus cable is not recorded for drop ${inWords(unknown)}`]
}

function protectionGaps(vessel: Vessel, { tag, circuitTag }: Insertion): readonly string[] {
  if (circuitTag === null) return [`no circuit is recorded for power insertion ${tag}`]
  return lookup(vessel).circuits.get(circuitTag)?.protection === null ? [`no protective device is recorded for circuit ${circuitTag}`] : []
}

function solve(vessel: Vessel, reach: Reach, insertion: Insertion, loadEquivalencyNumber: number): SolvedSection | null {
  const current = runMethod(lenCurrentMethod, { loadEquivalencyNumber })
  if (current.status === 'not computed') return null
  const legs: readonly Leg[] = [legOf(reach, 'towards the first end'), legOf(reach, 'towards the last end')]
  const tees = teesOf(reach, insertion, legs)
  const { backbone: { spans }, from, to } = reach
  const cable = lightestOf(spans.slice(from + 1, to + 1).flat().flatMap(({ busCable }) => busCable ?? []))
  const rating = lookup(vessel).circuits.get(insertion.circuitTag ?? '')?.protection?.ratedCurrentA ?? null
  return {
    insertion, current, legs, tees,
    worst: tees.filter(({ position }) => reach.backbone.stations[position]!.device !== null).reduce<SolvedSection['worst']>((worst, tee) => (worst === null || tee.dropV > worst.dropV ? tee : worst), null),
    againstProtection: rating === null ? null
      : compare('currentA', current.output.currentA, { relation: 'at most', value: rating, citation: { source: 'iec-60364-4-43', place: 'design current at most the rated current' } }),
    protection: rating === null || cable === null ? null : compare('ratedCurrentA', rating, supplyProtectionLimit(cable)),
  }
}
