/** Entries that passed every check → the vessel as the later stages see it: catalogue merged in, defaults filled in. */
import type {
  BackboneElement, BasisId, Cable, CableType, Carries, Circuit, Conditions, Equipment, Identity, ItemBase, Port, SpaceKind, Tag, Vessel, Wireway,
} from '../model/vessel.js'
import { criticalKinds } from '../references/equipment-kinds.js'
import { bases } from '../references/basis/bases.js'
import type { PassedEntries } from './check-schema.js'
import type { Entry } from './schema/kinds.js'
import { spaceKinds } from './schema/place.schema.js'

/** Length from the wireway to the terminal, at each end. Common practice, no source. */
const usualCableTailM = 0.5

/** `entries` must be free of errors: every reference resolves, and there is one vessel. */
export function buildVessel(entries: PassedEntries): Vessel {
  const [vessel] = entries.vessel
  if (vessel === undefined) throw new Error('there is no vessel entry')
  const conditions = conditionsOf(vessel)
  const models = new Map(entries.models.map(model => [model.model, model]))
  const types = new Map(entries['cable-types'].map(type => [type.tag, type]))
  const circuitTags = new Set(entries.circuits.map(({ tag }) => tag))
  const kindOf = new Map(entries.equipment.map(item => [item.tag, item.kind ?? models.get(item.model ?? '')?.kind ?? 'other']))
  // A zone is its own wireway point.
  const zoneOfPoint = new Map([
    ...entries.zones.map(({ tag }) => [tag, tag] as const),
    ...entries['wireway-points'].map(({ tag, zone }) => [tag, zone] as const),
  ])
  return {
    identity: identityOf(vessel),
    document: {
      number: vessel.document?.number ?? null,
      issue: vessel.document?.issue ?? null,
      issuedOn: vessel.document?.['issued-on'] ?? null,
      preparedBy: vessel.document?.['prepared-by'] ?? null,
      checkedBy: vessel.document?.['checked-by'] ?? null,
      approvedBy: vessel.document?.['approved-by'] ?? null,
      installer: vessel.document?.installer ?? null,
      contact: vessel.document?.contact ?? null,
    },
    basis: vessel.basis,
    units: vessel.units ?? 'metric',
    conditions,
    changes: entries.changes.map(({ issue, date, by = null, what, why = null }) => ({ issue, date, by, what, why })),
    systems: entries.systems.map(({ tag, name, purpose = null }) => ({ tag, name, purpose })),
    zones: entries.zones.map(zone => ({
      tag: zone.tag,
      name: zone.name,
      space: zone.space,
      ambientC: zone.ambient ?? conditions.ambientCBySpace[zone.space],
      ignitionProtection: zone['ignition-protection'] ?? null,
      access: zone.access ?? null,
    })),
    points: entries['wireway-points'].map(({ tag, name, zone }) => ({ tag, name, zoneTag: zone })),
    wireways: entries.wireways.map(wireway => wirewayOf(wireway, zoneOfPoint)),
    cableTypes: entries['cable-types'].map(cableTypeOf),
    cables: entries.cables.map(cable => cableOf(cable, types, circuitTags)),
    equipment: entries.equipment.map(item => equipmentOf(item, models)),
    batteries: entries.batteries.map(battery => ({
      ...itemOf(battery),
      chemistry: battery.chemistry ?? null,
      nominalVoltageV: battery['nominal-voltage'],
      capacityAh: battery.capacity ?? null,
      crankingCurrentA: battery['cranking-current'] ?? null,
    })),
    busbars: entries.busbars.map(busbar => ({ ...itemOf(busbar), ratedCurrentA: busbar.rating ?? null, polarity: busbar.polarity ?? 'positive' })),
    panels: entries.panels.map(panel => ({ ...itemOf(panel), kind: panel.kind, ways: panel.ways ?? null, ratedCurrentA: panel.rating ?? null })),
    circuits: entries.circuits.map(circuit => circuitOf(circuit, kindOf)),
    canBuses: entries['can-buses'].map(({ tag, name, purpose = null, backbone }) => ({ tag, name, purpose, backbone: backbone.map(elementOf) })),
    ethernetNetworks: entries['ethernet-networks'].map(({ tag, name, purpose = null, subnet = null, switches }) =>
      ({ tag, name, purpose, subnet, switchTags: switches })),
  }
}

const identityOf = (vessel: Entry<'vessel'>): Identity => ({
  name: vessel.name,
  model: vessel.model ?? null,
  builder: vessel.builder ?? null,
  hullNumber: vessel['hull-number'] ?? null,
  hullIdentification: vessel['hull-identification'] ?? null,
  designCategory: vessel['design-category'] ?? null,
  yearBuilt: vessel['year-built'] ?? null,
  flag: vessel.flag ?? null,
  homePort: vessel['home-port'] ?? null,
  callSign: vessel['call-sign'] ?? null,
  mmsi: vessel.mmsi ?? null,
  lengthM: vessel.length ?? null,
  beamM: vessel.beam ?? null,
  draughtM: vessel.draught ?? null,
  displacementKg: vessel.displacement ?? null,
  maximumPersons: vessel['maximum-persons'] ?? null,
  description: vessel.description ?? null,
})

function conditionsOf({ basis, conditions }: Entry<'vessel'>): Conditions {
  const ambientOf = (space: SpaceKind): number => conditions?.ambient?.[space] ?? usualAmbientC(space, basis)
  return {
    ambientCBySpace: Object.fromEntries(spaceKinds.map(space => [space, ambientOf(space)])) as Record<SpaceKind, number>,
    cableTailM: conditions?.['cable-tail'] ?? usualCableTailM,
  }
}

/** The temperatures for which the basis tabulates currents: in engine spaces, and everywhere else. */
function usualAmbientC(space: SpaceKind, basis: BasisId): number {
  const { ambientC, engineSpaceAmbientC } = bases[basis].ampacity
  return space === 'machinery' ? engineSpaceAmbientC : ambientC
}

function wirewayOf(wireway: Entry<'wireways'>, zoneOfPoint: ReadonlyMap<Tag, Tag>): Wireway {
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

const cableTypeOf = (type: Entry<'cable-types'>): CableType => ({
  tag: type.tag,
  name: type.name,
  use: type.use,
  cores: type.cores ?? null,
  size: type.size ?? null,
  insulationC: type.insulation ?? null,
  tinned: type.tinned ?? null,
  outerDiameterMm: type['outer-diameter'] ?? null,
  shielded: type.shielded ?? null,
})

const cableOf = (cable: Entry<'cables'>, types: ReadonlyMap<Tag, Entry<'cable-types'>>, circuitTags: ReadonlySet<Tag>): Cable => ({
  tag: cable.tag,
  name: cable.name ?? null,
  from: cable.from,
  to: cable.to,
  typeTag: cable.type ?? null,
  carries: cable.carries ?? usualCarries(types.get(cable.type ?? ''), circuitTags.has(cable.from.tag) || circuitTags.has(cable.to.tag)),
  routeTags: cable.route ?? null,
  lengthM: cable.length ?? null,
  serviceLoopM: cable['service-loop'] ?? 0,
  labelFrom: cable['label-from'] ?? null,
  labelTo: cable['label-to'] ?? null,
  status: cable.status ?? null,
  notes: cable.notes ?? null,
})

/**
 * A power cable whose cores are not counted is taken as out and back, which loads its wireway more; so is a cable of unknown
 * type that starts at a circuit.
 */
function usualCarries(type: Entry<'cable-types'> | undefined, atCircuit: boolean): Carries {
  if (type === undefined) return atCircuit ? 'both' : 'none'
  if (type.use !== 'power') return 'none'
  return type.cores === 1 ? 'positive' : 'both'
}

const itemOf = (item: Entry<'equipment' | 'batteries' | 'busbars' | 'panels'>): ItemBase => ({
  tag: item.tag,
  name: item.name,
  zoneTag: item.zone ?? null,
  systemTag: item.system ?? null,
  pointTag: item.point ?? null,
  location: item.location ?? null,
  maker: item.maker ?? null,
  model: item['model-name'] ?? null,
  serial: item.serial ?? null,
  status: item.status ?? null,
  notes: item.notes ?? null,
  documents: item.documents ?? [],
})

function equipmentOf(item: Entry<'equipment'>, models: ReadonlyMap<string, Entry<'models'>>): Equipment {
  const model = models.get(item.model ?? '')
  const facts = { ...model, ...withoutEmpty(item) }
  const [forward, toPort, up] = item.position ?? []
  return {
    ...itemOf(item),
    maker: facts.maker ?? null,
    model: item['model-name'] ?? model?.title ?? null,
    kind: facts.kind ?? 'other',
    description: facts.description ?? null,
    software: item.software ?? null,
    positionM: forward === undefined || toPort === undefined || up === undefined ? null : [forward, toPort, up],
    massKg: facts.mass ?? null,
    supplyMinV: facts['supply-min'] ?? null,
    supplyMaxV: facts['supply-max'] ?? null,
    currentTypicalA: facts['current-typical'] ?? null,
    currentMaxA: facts['current-max'] ?? null,
    powerW: facts.power ?? null,
    loadEquivalencyNumber: facts['load-equivalency'] ?? null,
    ports: (facts.ports ?? []).map((port): Port =>
      ({ name: port.name, kind: port.kind, speedMbitPerS: port.speed ?? null, powerClass: port['power-class'] ?? null })),
    address: item.address ?? null,
  }
}

/** A key without a value must not hide the model's value. */
const withoutEmpty = <T extends object>(entry: T): T =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as T

const circuitOf = (circuit: Entry<'circuits'>, kindOf: ReadonlyMap<Tag, string>): Circuit => ({
  tag: circuit.tag,
  name: circuit.name,
  purpose: circuit.purpose ?? null,
  fedFromTag: circuit['fed-from'],
  way: circuit.way ?? null,
  protection: circuit.protection === undefined ? null : { device: circuit.protection.type, ratedCurrentA: circuit.protection.rating },
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
})

/** The schema lets one of the four keys through. */
function elementOf(element: Entry<'can-buses'>['backbone'][number]): BackboneElement {
  const zoneTag = element.zone ?? null
  const dropCableTag = element.drop ?? null
  if (element.segment !== undefined) return { kind: 'segment', cableTag: element.segment }
  if (element.terminator !== undefined) return { kind: 'terminator', tag: element.terminator, zoneTag }
  if (element.tee !== undefined) return { kind: 'tee', tag: element.tee, zoneTag, deviceTag: element.device ?? null, dropCableTag }
  if (element.power !== undefined) return { kind: 'power', tag: element.power, zoneTag, circuitTag: element.circuit ?? null, dropCableTag }
  throw new Error('a backbone element without terminator, segment, tee or power')
}
