/** Wireways, cable types, cables, circuits → records of the vessel. */
import type { Cable, CableType, Carries, Circuit, Protection, Tag, Wireway } from '../../model/vessel.js'
import { criticalKinds } from '../../references/equipment-kinds.js'
import type { Entry } from '../schema/kinds.js'
import { coaxOf } from './radio.js'

export function wirewayOf(wireway: Entry<'wireways'>, zoneOfPoint: ReadonlyMap<Tag, Tag>): Wireway {
  const ends = [wireway.from, wireway.to].flatMap(point => zoneOfPoint.get(point) ?? [])
  return {
    tag: wireway.tag,
    name: wireway.name ?? null,
    fromTag: wireway.from,
    toTag: wireway.to,
    lengthM: wireway.length,
    kind: wireway.kind,
    boreMm: wireway.bore ?? null,
    zoneTags: wireway.zones ?? [...new Set(ends)],
  }
}

export const cableTypeOf = (type: Entry<'cable-types'>): CableType => ({
  tag: type.tag,
  name: type.name,
  use: type.use,
  cores: type.cores ?? null,
  size: type.size ?? null,
  insulationC: type.insulation ?? null,
  tinned: type.tinned ?? null,
  outerDiameterMm: type['outer-diameter'] ?? null,
  shielded: type.shielded ?? null,
  busCable: type['bus-cable'] ?? null,
  conductorResistanceOhmPerKm: type['conductor-resistance'] ?? null,
  coax: coaxOf(type),
})

export const cableOf = (cable: Entry<'cables'>, types: ReadonlyMap<Tag, Entry<'cable-types'>>, circuitTags: ReadonlySet<Tag>): Cable => ({
  tag: cable.tag,
  name: cable.name ?? null,
  from: cable.from,
  to: cable.to,
  typeTag: cable.type ?? null,
  carries: cable.carries ?? usualCarries(types.get(cable.type ?? ''), circuitTags.has(cable.from.tag) || circuitTags.has(cable.to.tag)),
  routeTags: cable.route ?? null,
  lengthM: cable.length ?? null,
  serviceLoopM: cable['service-loop'] ?? 0,
  parallelCount: cable.parallel ?? 1,
  labelFrom: cable['label-from'] ?? null,
  labelTo: cable['label-to'] ?? null,
  status: cable.status ?? null,
  notes: cable.notes ?? null,
  connectorCount: cable.connectors ?? null,
})

/**
 * A power cable whose cores are not counted is taken as out and back, which loads its wireway more; so is a cable of unknown
 * type that starts at a circuit.
 */
function usualCarries(type: Entry<'cable-types'> | undefined, atCircuit: boolean): Carries {
  if (type === undefined) return atCircuit ? 'both' : 'none'
  if (type.use !== 'power' && type.use !== 'ac power') return 'none'
  return type.cores === 1 ? 'positive' : 'both'
}

export const circuitOf = (circuit: Entry<'circuits'>, kindOf: ReadonlyMap<Tag, string>): Circuit => ({
  tag: circuit.tag,
  name: circuit.name,
  purpose: circuit.purpose ?? null,
  fedFromTag: circuit['fed-from'].tag,
  fedFromTerminal: circuit['fed-from'].terminal,
  way: circuit.way ?? null,
  protection: circuit.protection === undefined ? null : protectionOf(circuit.protection),
  unprotectedReason: circuit.unprotected ?? null,
  loadClass: circuit['load-class'] ?? ((circuit.loads ?? []).some(tag => criticalKinds.has(kindOf.get(tag) ?? '')) ? 'critical' : 'general'),
  loadTags: [...new Set(circuit.loads)],
  designCurrentA: circuit['design-current'] ?? null,
  demandFactor: circuit['demand-factor'] ?? 1,
  normalState: circuit['normal-state'] ?? 'closed',
  zoneTag: circuit.zone ?? null,
  location: circuit.location ?? null,
  manualBypass: circuit['manual-bypass'] ?? null,
  returnCableTags: circuit['return-cables'] ?? [],
  interlockTag: circuit.interlock ?? null,
  networkLoss: circuit['network-loss'] ?? null,
})

const protectionOf = (protection: NonNullable<Entry<'circuits'>['protection']>): Protection => ({
  device: protection.type,
  ratedCurrentA: protection.rating,
  interruptingCapacityA: protection['interrupting-capacity'] ?? null,
  voltageRatingV: protection['voltage-rating'] ?? null,
  poles: protection.poles ?? null,
  residualCurrentA: protection['residual-current'] ?? null,
  tripTimeMs: protection['trip-time'] ?? null,
  distanceM: protection.distance ?? null,
  enclosed: protection.enclosed ?? null,
})
