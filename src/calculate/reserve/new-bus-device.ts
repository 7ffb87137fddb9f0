/** A vessel with one more device on a CAN bus: the pass on buses is run on it as on the vessel itself. */
import type { Finding } from '../../findings/finding.js'
import { blankCable, blankCableType, blankEquipment } from '../../model/blank.js'
import { type CableRun, designCurrentA, type Results } from '../../model/results.js'
import type { BusResult, SupplySection } from '../../model/results/can-bus.js'
import type { BackboneElement, BusMessage, Circuit, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { currentPerLenA, lenCitation, newDrop } from '../../references/tables/can-rules.js'
import { exceeds } from '../compare.js'
import { canBusPass } from '../can-bus/index.js'
import { currentCarryingCapacityPass } from '../conductors/current-carrying-capacity.pass.js'
import { protectionPass } from '../conductors/protection.pass.js'
import { voltageDropPass } from '../conductors/voltage-drop.pass.js'
import { feedingPass } from '../feeding/index.js'
import type { Upstream } from '../upstream.js'
import { routingPass } from '../wireways/index.js'
import type { Place } from '../wireways/places.js'
import { newlyFound } from './newly-found.js'

/** Tags that no vessel has: a tag holds no blank. */
const newTags = { device: 'the new device', drop: 'the new drop', dropType: 'the type of the new drop', tee: 'the new tee' } as const

export interface BusProposal {
  readonly busTag: Tag
  /** A free tee, or the one beside which the new tee goes. */
  readonly atTeeTag: Tag
  readonly teeIsFree: boolean
  readonly at: Place
  readonly loadEquivalencyNumber: number
  readonly sends: readonly BusMessage[]
  /** That of the tee, as it is now; null where there is none. */
  readonly section: SupplySection | null
}

export interface WithBusDevice {
  readonly result: BusResult
  readonly teeTag: Tag
  readonly run: CableRun
  /** What its circuit is planned for, where that is less than the devices would take; then it is reckoned with what they take. */
  readonly plannedCurrentA: number | null
  readonly besides: readonly Finding[]
}

export function withBusDevice(vessel: Vessel, basis: Basis, results: Results, proposal: BusProposal): WithBusDevice {
  const { busTag, atTeeTag, teeIsFree } = proposal
  const circuit = outgrown(vessel, results, proposal)
  const added = vesselWith(vessel, proposal, circuit)
  const routing = routingPass(added)
  const upstream = { ...results, routing, ...(circuit === null ? {} : feedOf(added, basis, routing)) }
  return {
    result: canBusPass(added, basis, upstream).byBus.get(busTag)!,
    teeTag: teeIsFree ? atTeeTag : newTags.tee,
    run: routing.byCable.get(newTags.drop)!,
    plannedCurrentA: circuit === null ? null : designCurrentA(results.feeding.byCircuit.get(circuit.tag)),
    besides: newlyFound(results, [routing, ...(circuit === null ? [] : [upstream.currentCarryingCapacity, upstream.voltageDrop, upstream.protection])], Object.values(newTags)),
  }
}

/** The circuit of the bus with the current of all its devices, where that is more than it is planned for. */
function outgrown({ circuits }: Vessel, { feeding }: Results, { section, loadEquivalencyNumber }: BusProposal): Circuit | null {
  const circuit = circuits.find(({ tag }) => tag === section?.solved?.insertion.circuitTag)
  if (circuit === undefined || section === null) return null
  const takenCurrentA = currentPerLenA * (section.loadEquivalencyNumber + loadEquivalencyNumber)
  const planned = designCurrentA(feeding.byCircuit.get(circuit.tag))
  return planned !== null && exceeds(takenCurrentA, { relation: 'at most', value: planned, citation: lenCitation }) ? { ...circuit, designCurrentA: takenCurrentA } : null
}

function feedOf(vessel: Vessel, basis: Basis, routing: Upstream['routing']): Pick<Upstream, 'feeding' | 'currentCarryingCapacity' | 'voltageDrop' | 'protection'> {
  const feeding = feedingPass(vessel)
  const currentCarryingCapacity = currentCarryingCapacityPass(vessel, basis, routing, feeding)
  return {
    feeding, currentCarryingCapacity,
    voltageDrop: voltageDropPass(vessel, basis, routing, feeding, currentCarryingCapacity),
    protection: protectionPass(vessel, basis, feeding, currentCarryingCapacity),
  }
}

function vesselWith(vessel: Vessel, { busTag, atTeeTag, teeIsFree, at, loadEquivalencyNumber, sends }: BusProposal, circuit: Circuit | null): Vessel {
  const connected = { deviceTag: newTags.device, dropCableTag: newTags.drop, deviceTerminal: null }
  const teeWith = (part: BackboneElement): readonly BackboneElement[] => {
    if (part.kind !== 'tee' || part.tag !== atTeeTag) return [part]
    return teeIsFree ? [{ ...part, ...connected }] : [part, { ...part, ...connected, tag: newTags.tee }]
  }
  return {
    ...vessel,
    cableTypes: [...vessel.cableTypes, { ...blankCableType(newTags.dropType, 'can bus'), busCable: newDrop.cable }],
    // A new tee is where its neighbour is.
    cables: [...vessel.cables, { ...blankCable(newTags.drop, { tag: atTeeTag, terminal: null }, { tag: newTags.device, terminal: null }), typeTag: newTags.dropType, status: 'planned' }],
    equipment: [...vessel.equipment, { ...blankEquipment(newTags.device, ''), zoneTag: at.zoneTag, pointTag: at.pointTag, status: 'planned', loadEquivalencyNumber, sends }],
    canBuses: vessel.canBuses.map(bus => (bus.tag === busTag ? { ...bus, backbone: bus.backbone.flatMap(teeWith) } : bus)),
    circuits: vessel.circuits.map(each => (each.tag === circuit?.tag ? circuit : each)),
  }
}
