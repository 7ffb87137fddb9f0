/** Entries that passed every check → the vessel as the later stages see it: catalogue merged in, defaults filled in. */
import type {
  BasisId, Battery, Cable, CableType, Carries, Circuit, Conditions, Equipment, Identity, ItemBase, Measurement, Output, Protection, SpaceKind, Tag, Vessel, Wireway,
} from '../model/vessel.js'
import { criticalKinds, type EquipmentKindKey } from '../references/equipment-kinds.js'
import { bases } from '../references/basis/bases.js'
import {
  busFactsOf, canBusOf, coaxOf, compassClassOf, credentialOf, ethernetNetworkOf, outsideLinkOf, pointOf, portOf, radarOf, serialLinkOf, settingOf, stabilityOf,
  standingPlaceOf, streamOf, structureOf, transducerOf, transmitterOf, wirelessNetworkOf,
} from './build-networks.js'
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
    batteries: entries.batteries.map(batteryOf),
    busbars: entries.busbars.map(busbar => ({ ...itemOf(busbar), ratedCurrentA: busbar.rating ?? null, polarity: busbar.polarity ?? 'positive' })),
    panels: entries.panels.map(panel => ({ ...itemOf(panel), kind: panel.kind, ways: panel.ways ?? null, ratedCurrentA: panel.rating ?? null, networkLoss: panel['network-loss'] ?? null, ...busFactsOf(panel) })),
    circuits: entries.circuits.map(circuit => circuitOf(circuit, kindOf)),
    canBuses: entries['can-buses'].map(canBusOf),
    serialLinks: entries['serial-links'].map(serialLinkOf),
    ethernetNetworks: entries['ethernet-networks'].map(ethernetNetworkOf),
    wirelessNetworks: entries['wireless-networks'].map(wirelessNetworkOf),
    outsideLinks: entries['outside-links'].map(outsideLinkOf),
    structures: entries.structures.map(structureOf),
    standingPlaces: entries['standing-places'].map(standingPlaceOf),
    settings: entries.settings.map(settingOf),
    credentials: entries.credentials.map(credentialOf),
    operatingModes: entries['operating-modes'].map(mode => ({
      tag: mode.tag,
      name: mode.name,
      purpose: mode.purpose ?? null,
      daysCount: mode.days ?? 1,
      monthNumber: mode.month ?? null,
      sunshinePercent: mode.sunshine ?? null,
      startChargePercent: mode['start-charge'] ?? 100,
    })),
    duties: entries.duties.map(duty => ({
      modeTag: duty.mode,
      itemTag: duty.item,
      periods: duty.hours ?? [],
      dutyPercent: duty.duty ?? 100,
      currentA: duty.current ?? null,
      speedRpm: duty.speed ?? null,
    })),
    measurements: entries.measurements.map(measurementOf),
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
  propulsion: vessel.propulsion ?? null,
  stability: stabilityOf(vessel),
})

function conditionsOf({ basis, conditions }: Entry<'vessel'>): Conditions {
  const ambientOf = (space: SpaceKind): number => conditions?.ambient?.[space] ?? usualAmbientC(space, basis)
  return {
    ambientCBySpace: Object.fromEntries(spaceKinds.map(space => [space, ambientOf(space)])) as Record<SpaceKind, number>,
    cableTailM: conditions?.['cable-tail'] ?? usualCableTailM,
    latitudeDeg: conditions?.latitude ?? null,
    deviceDistanceMm: conditions?.['device-distance'] === undefined ? null : conditions['device-distance'] * 1000,
    horizontalFieldMicroT: conditions?.['horizontal-field'] ?? null,
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
  busCable: type['bus-cable'] ?? null,
  conductorResistanceOhmPerKm: type['conductor-resistance'] ?? null,
  coax: coaxOf(type),
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
  return {
    ...itemOf(item),
    maker: facts.maker ?? null,
    model: item['model-name'] ?? model?.title ?? null,
    kind: facts.kind ?? 'other',
    description: facts.description ?? null,
    software: item.software ?? null,
    positionM: item.position === undefined ? null : pointOf(item.position),
    massKg: facts.mass ?? null,
    supplyMinV: facts['supply-min'] ?? null,
    supplyMaxV: facts['supply-max'] ?? null,
    currentTypicalA: facts['current-typical'] ?? null,
    currentMaxA: facts['current-max'] ?? null,
    powerW: facts.power ?? null,
    ports: (facts.ports ?? []).map(portOf),
    address: item.address ?? null,
    ratedCurrentA: facts.rating ?? null,
    startingCurrentA: facts['starting-current'] ?? null,
    makersFuseA: facts['makers-fuse'] ?? null,
    outputs: (facts.outputs ?? []).map(output => outputOf(output, facts.kind ?? 'other')),
    efficiencyPercent: facts.efficiency ?? null,
    peakPowerW: facts['peak-power'] ?? null,
    loadColumn: facts['load-column'] ?? null,
    safetyService: item['safety-service'] ?? null,
    dataFromTags: item['data-from'] ?? [],
    residualCurrentA: facts['residual-current'] ?? null,
    tripTimeMs: facts['trip-time'] ?? null,
    galvanicIsolationTag: item['galvanic-isolation'] ?? null,
    polarityIndicatorTag: item['polarity-indicator'] ?? null,
    softwareDate: item['software-date'] ?? null,
    ...networkFacts(item, facts),
    ...placementFacts(item, facts),
    transmitters: (facts.transmitters ?? []).map(transmitterOf),
    radar: facts.radar === undefined ? null : radarOf(facts.radar),
    antenna: facts.antenna === undefined ? null : {
      gainDbi: facts.antenna.gain ?? null, fromMHz: facts.antenna.from ?? null, toMHz: facts.antenna.to ?? null, lengthM: facts.antenna.length ?? null,
      vswrFactor: facts.antenna.vswr ?? null, clearanceM: facts.antenna.clearance ?? null,
    },
    portLosses: (facts['port-losses'] ?? []).map(({ from, to, loss }) => ({ fromTerminal: from, toTerminal: to, lossDb: loss })),
  }
}

/** Of an item and its model together. */
type ModelFacts = Omit<Entry<'equipment'>, 'model'>

const networkFacts = (item: Entry<'equipment'>, facts: ModelFacts) => ({
  ...busFactsOf({ ...facts, 'device-instance': item['device-instance'] }),
  forwards: (facts.forwards ?? []).map(({ from, to, only }) => ({ fromTerminal: from, toTerminal: to, only: only ?? null })),
  addressing: item.addressing ?? (item.address === undefined ? null : 'static' as const),
  macAddress: item.mac ?? null,
  streams: (facts.streams ?? []).map(streamOf),
  networkPowerW: facts['network-power'] ?? null,
  powerBudgetW: facts['power-budget'] ?? null,
  powerVoltageV: facts['power-voltage'] ?? null,
  passesEthernet: facts['passes-ethernet'] ?? (passingKinds.has(facts.kind ?? 'other') ? true : null),
  loopProtection: facts['loop-protection'] ?? null,
})
/** Kinds whose purpose it is to pass traffic from one Ethernet port to another. */
const passingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['network switch', 'mobile-data router', 'wireless access point'])

const placementFacts = (item: Entry<'equipment'>, facts: ModelFacts) => ({
  compassClass: compassClassOf(facts['compass-class'], facts.kind ?? 'other'),
  compassSafeStandardM: facts['compass-safe-standard'] ?? null,
  compassSafeSteeringM: facts['compass-safe-steering'] ?? null,
  navigationLight: facts['navigation-light'] === undefined ? null : {
    kind: facts['navigation-light'].kind, rangeNmi: facts['navigation-light'].range ?? null, arcDeg: facts['navigation-light'].arc ?? null,
    intensityCd: facts['navigation-light'].intensity ?? null,
  },
  transducer: facts.transducer === undefined && item['depth-offset'] === undefined ? null : transducerOf(facts.transducer ?? {}, item['depth-offset']),
  mmsi: item.mmsi ?? null,
  beaconIdentity: item['beacon-identity'] ?? null,
})

/** Kinds whose outputs are a.c. unless the author says otherwise. */
const acKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['shore inlet', 'generator', 'inverter', 'isolation transformer'])

const outputOf = (output: NonNullable<Entry<'equipment'>['outputs']>[number], kind: string): Output => ({
  terminal: output.terminal ?? null,
  form: output.form ?? (acKinds.has(kind) ? 'ac' : 'dc'),
  nominalVoltageV: output.voltage,
  frequencyHz: output.frequency ?? null,
  ratedCurrentA: output.current ?? null,
  shortCircuitCurrentA: output['short-circuit-current'] ?? null,
  neutralBonded: output['neutral-bonded'] ?? null,
  curve: (output.curve ?? []).map(({ speed, current }) => ({ speedRpm: speed, currentA: current })),
})

const batteryOf = (battery: Entry<'batteries'>): Battery => ({
  ...itemOf(battery),
  ...busFactsOf(battery),
  chemistry: battery.chemistry ?? null,
  nominalVoltageV: battery['nominal-voltage'],
  capacityAh: battery.capacity ?? null,
  crankingCurrentA: battery['cranking-current'] ?? null,
  ratedTimeH: battery['rated-time'] ?? null,
  peukertNumber: battery.peukert ?? null,
  internalResistanceMilliOhm: battery['internal-resistance'] ?? null,
  shortCircuitCurrentA: battery['short-circuit-current'] ?? null,
  depthOfDischargePercent: battery['depth-of-discharge'] ?? null,
  chargeCurrentMaxA: battery['charge-current-max'] ?? null,
  dischargeCurrentMaxA: battery['discharge-current-max'] ?? null,
  massKg: battery.mass ?? null,
  positionM: battery.position === undefined ? null : pointOf(battery.position),
  blocks: battery.blocks === undefined ? null : {
    seriesCount: battery.blocks.series,
    parallelCount: battery.blocks.parallel,
    nominalVoltageV: battery.blocks.voltage ?? null,
    capacityAh: battery.blocks.capacity ?? null,
    crankingCurrentA: battery.blocks['cranking-current'] ?? null,
    internalResistanceMilliOhm: battery.blocks['internal-resistance'] ?? null,
    shortCircuitCurrentA: battery.blocks['short-circuit-current'] ?? null,
  },
})

const measurementOf = (reading: Entry<'measurements'>): Measurement => ({
  number: reading.number,
  subjectTag: reading.subject,
  atTag: reading.at ?? null,
  date: reading.date ?? null,
  by: reading.by ?? null,
  instrument: reading.instrument ?? null,
  voltageV: reading.voltage ?? null,
  sourceVoltageV: reading['source-voltage'] ?? null,
  voltageDropV: reading['voltage-drop'] ?? null,
  currentA: reading.current ?? null,
  insulationMOhm: reading.insulation ?? null,
  polarity: reading.polarity ?? null,
  residualCurrentA: reading['residual-current'] ?? null,
  tripTimeMs: reading['trip-time'] ?? null,
  internalResistanceMilliOhm: reading['internal-resistance'] ?? null,
  resistanceOhm: reading.resistance ?? null,
  busLoadPercent: reading['bus-load'] ?? null,
  vswrFactor: reading.vswr ?? null,
  notes: reading.notes ?? null,
})

/** A key without a value must not hide the model's value. */
const withoutEmpty = <T extends object>(entry: T): T =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as T

const circuitOf = (circuit: Entry<'circuits'>, kindOf: ReadonlyMap<Tag, string>): Circuit => ({
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
