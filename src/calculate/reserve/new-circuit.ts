/**
 * A vessel with one more circuit: the same passes are run on it as on the vessel itself, so that a place is judged by
 * what the pack would say once the circuit is entered.
 */
import type { Finding, Limit } from '../../findings/finding.js'
import { blankCable, blankCableType, blankEquipment } from '../../model/blank.js'
import { lookup } from '../../model/lookup.js'
import type { CableCapacity, CableRun, LoadDrop, Results, SizeAdvice, SizeChoice } from '../../model/results.js'
import type { FeederChange } from '../../model/results/reserve.js'
import type { Cable, CableType, Circuit, Equipment, SupplyForm, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { cfrTable5 } from '../../references/tables/cfr-33-183-table-5.js'
import { isoAnnexA } from '../../references/tables/iso-13297-annex-a.js'
import type { ConductorSize } from '../../units/conductor-size.js'
import { conductorSizePass } from '../conductors/conductor-size.pass.js'
import { currentCarryingCapacityPass } from '../conductors/current-carrying-capacity.pass.js'
import { protectionPass } from '../conductors/protection.pass.js'
import { dropLimit, voltageDropPass } from '../conductors/voltage-drop.pass.js'
import { feedingPass } from '../feeding/index.js'
import { routingPass } from '../wireways/index.js'
import type { Place } from '../wireways/places.js'
import type { NewProtection } from './new-protection.js'
import { newlyFound } from './newly-found.js'
import type { PlaceRequest } from './places-for.js'

/** Tags that no vessel has: a tag holds no blank. */
export const newTags = { circuit: 'the new circuit', load: 'the new load', cable: 'the new cable', cableType: 'the type of the new cable' } as const

export interface NewCircuit {
  readonly run: CableRun
  readonly advice: SizeAdvice
  /** In the vessel's units; null where no standard size does, or nothing can be said. */
  readonly size: ConductorSize | null
  readonly choice: SizeChoice | null
  /** With that size. */
  readonly capacity: CableCapacity | null
  readonly drop: LoadDrop | null
  /** Lost in the feeders above with the new load on; null where it is not known. */
  readonly feederDropV: number | null
  /** For the whole way from the source, in percent of the nominal voltage. */
  readonly dropLimit: Limit
  /** What the rest of the vessel would be found to miss besides, and is not found to miss now. */
  readonly besides: readonly Finding[]
}

export interface Proposal {
  readonly pointTag: Tag
  readonly form: SupplyForm
  readonly at: Place
  readonly request: PlaceRequest
  readonly protection: NewProtection
  readonly insulationC: number
  readonly feeders: readonly FeederChange[]
}

export function withNewCircuit(vessel: Vessel, basis: Basis, results: Pick<Results, 'findings'>, proposal: Proposal): NewCircuit {
  const unsized = vesselWith(vessel, proposal, null)
  const routing = routingPass(unsized)
  const feeding = feedingPass(unsized)
  const drawn = (withCable: Vessel) => {
    const capacity = currentCarryingCapacityPass(withCable, basis, routing, feeding)
    return { capacity, voltageDrop: voltageDropPass(withCable, basis, routing, feeding, capacity) }
  }
  const before = drawn(unsized)
  const advice = conductorSizePass(unsized, basis, routing, feeding, before.voltageDrop).byCircuit.get(newTags.circuit)!
  const choice = advice.status === 'not computed' ? null : vessel.units === 'us' ? advice.awg : advice.mm2
  const size = choice === null ? null : sizeOf(vessel, choice)
  const run = routing.byCable.get(newTags.cable)!
  const common = {
    run, advice, size, choice,
    feederDropV: feederDrop(before.voltageDrop.byCircuit, proposal),
    dropLimit: dropLimit(unsized, basis, lookup(unsized).circuits.get(newTags.circuit)!, proposal.form, newTags.load),
  }
  if (size === null) return { ...common, capacity: null, drop: null, besides: [] }

  const sized = vesselWith(vessel, proposal, size)
  const { capacity, voltageDrop } = drawn(sized)
  const protection = protectionPass(sized, basis, feeding, capacity)
  return {
    ...common,
    capacity: capacity.byCable.get(newTags.cable) ?? null,
    drop: voltageDrop.byCircuit.get(newTags.circuit)?.worst ?? null,
    besides: newlyFound(results, [routing, capacity, voltageDrop, protection], Object.values(newTags)),
  }
}

const sizeOf = ({ units }: Vessel, { designation }: SizeChoice): ConductorSize =>
  (units === 'us' ? cfrTable5 : isoAnnexA).rows.find(({ size }) => size.designation === designation)!.size

function feederDrop(drops: ReadonlyMap<Tag, { readonly toLoads: readonly LoadDrop[] }>, { feeders, pointTag }: Proposal): number | null {
  const [nearest] = feeders
  return nearest === undefined ? 0 : drops.get(nearest.circuitTag)?.toLoads.find(({ loadTag }) => loadTag === pointTag)?.voltageDropV ?? null
}

function vesselWith(vessel: Vessel, { pointTag, form, at, request, protection, insulationC, feeders }: Proposal, size: ConductorSize | null): Vessel {
  const after = new Map(feeders.map(({ circuitTag, afterCurrentA }) => [circuitTag, afterCurrentA]))
  const cableType: CableType = { ...blankCableType(newTags.cableType, form === 'ac' ? 'ac power' : 'power'), cores: form === 'ac' ? 3 : 2, size, insulationC }
  const cable: Cable = {
    ...blankCable(newTags.cable, { tag: newTags.circuit, terminal: null }, { tag: newTags.load, terminal: null }),
    typeTag: newTags.cableType, carries: 'both', status: 'planned',
  }
  const circuit: Circuit = {
    tag: newTags.circuit, name: '', purpose: null, fedFromTag: pointTag, fedFromTerminal: null, way: null,
    protection: {
      device: protection.device, ratedCurrentA: protection.ratedCurrentA, interruptingCapacityA: null, voltageRatingV: null, poles: null,
      residualCurrentA: null, tripTimeMs: null, distanceM: null, enclosed: null,
    },
    unprotectedReason: null, loadClass: request.loadClass, loadTags: [newTags.load], designCurrentA: null, demandFactor: request.demandFactor,
    normalState: 'closed', zoneTag: null, location: null, manualBypass: null, returnCableTags: [], interlockTag: null, networkLoss: null,
  }
  // A feeder whose design current the author gives grows by the new load; the others are added up anew.
  const grown = vessel.circuits.map(each => (each.designCurrentA === null ? each : { ...each, designCurrentA: after.get(each.tag) ?? each.designCurrentA }))
  return {
    ...vessel,
    cableTypes: [...vessel.cableTypes, cableType],
    cables: [...vessel.cables, cable],
    circuits: [...grown, circuit],
    equipment: [...vessel.equipment, newLoad(request.currentA, at)],
  }
}

const newLoad = (currentMaxA: number, { pointTag, zoneTag }: Place): Equipment =>
  ({ ...blankEquipment(newTags.load, ''), zoneTag, pointTag, status: 'planned', currentMaxA })

/** The coolest insulation among the vessel's own cable types for that supply: what lies on board is what will be taken. */
export function insulationOnBoard(vessel: Vessel, form: SupplyForm): number | null {
  const { cableTypes } = lookup(vessel)
  const used = new Set(vessel.cables.map(({ typeTag }) => typeTag))
  const rated = [...cableTypes.values()].filter(({ tag, use, insulationC }) => used.has(tag) && insulationC !== null && use === (form === 'ac' ? 'ac power' : 'power'))
  return rated.length === 0 ? null : Math.min(...rated.map(({ insulationC }) => insulationC!))
}
