/** Entries that passed every check → the vessel as the later stages see it: catalogue merged in, defaults filled in. */
import type { BasisId, Conditions, Equipment, Identity, SpaceKind, Vessel } from '../../model/vessel.js'
import { isSystemKind } from '../../references/system-kinds.js'
import { bases } from '../../references/basis/bases.js'
import type { PassedEntries } from '../check-schema.js'
import type { Entry } from '../schema/kinds.js'
import { spaceKinds } from '../../references/space-kinds.js'
import { batteryOf, equipmentOf, itemOf } from './items.js'
import { arrangementDrawingOf, boxOf, photographOf } from './location.js'
import { maintenanceRecordOf, runningHoursOf, vesselTaskOf } from './maintenance.js'
import { acceptedDeviationOf, labelSizeOf, manualContentOf, procedureOf } from './manual.js'
import { busFactsOf, canBusOf, ethernetNetworkOf, outsideLinkOf, serialLinkOf, wirelessNetworkOf } from './networks.js'
import { stabilityOf, standingPlaceOf, structureOf } from './placement.js'
import { credentialOf, settingOf } from './record.js'
import { measurementOf } from './use.js'
import { cableOf, cableTypeOf, circuitOf, wirewayOf } from './wiring.js'

/** Length from the wireway to the terminal, at each end. Common practice, no source. */
const usualCableTailM = 0.5
/** For waste and mistakes. Common practice, no source. */
const usualCableSparePercent = 10

/** Every model of the catalogue as an item that has nothing but its model's facts. */
export function modelsOf(entries: PassedEntries): ReadonlyMap<string, Equipment> {
  const models = new Map(entries.models.map(model => [model.model, model]))
  return new Map(entries.models.map(({ model, title }) => [model, equipmentOf({ tag: model, name: title, model }, models)]))
}

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
      manualAddress: vessel['manual-address']?.replace(/\/*$/, '/') ?? null,
    },
    basis: vessel.basis,
    units: vessel.units ?? 'metric',
    conditions,
    changes: entries.changes.map(({ issue, date, by = null, what, why = null }) => ({ issue, date, by, what, why })),
    systems: entries.systems.map(({ tag, name, purpose = null, kind }) => ({ tag, name, purpose, kind: kind ?? (isSystemKind(tag) ? tag : null) })),
    zones: entries.zones.map(zone => ({
      tag: zone.tag,
      name: zone.name,
      space: zone.space,
      ambientC: zone.ambient ?? conditions.ambientCBySpace[zone.space],
      ignitionProtection: zone['ignition-protection'] ?? null,
      access: zone.access ?? null,
      box: boxOf(zone.from, zone.to),
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
    photographs: entries.photographs.map(photographOf),
    arrangementDrawings: entries['arrangement-drawings'].map(arrangementDrawingOf),
    procedures: entries.procedures.map(procedureOf),
    absences: entries.absences.map(({ what, reason }) => ({ kind: what, reason })),
    maintenanceTasks: entries['maintenance-tasks'].map(vesselTaskOf),
    maintenanceRecords: entries['maintenance-records'].map(maintenanceRecordOf),
    runningHours: entries['running-hours'].map(runningHoursOf),
    manualContents: entries['manual-contents'].map(manualContentOf),
    acceptedDeviations: entries['accepted-deviations'].map(acceptedDeviationOf),
    labelSizes: entries['label-sizes'].map(labelSizeOf),
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
  deliveredOn: vessel['delivered-on'] ?? null,
  season: vessel.season === undefined ? null : { launchMonthNumber: vessel.season.launch, layUpMonthNumber: vessel.season['lay-up'] },
})

function conditionsOf({ basis, conditions }: Entry<'vessel'>): Conditions {
  const ambientOf = (space: SpaceKind): number => conditions?.ambient?.[space] ?? usualAmbientC(space, basis)
  return {
    ambientCBySpace: Object.fromEntries(spaceKinds.map(space => [space, ambientOf(space)])) as Record<SpaceKind, number>,
    cableSparePercent: conditions?.['cable-spare'] ?? usualCableSparePercent,
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
