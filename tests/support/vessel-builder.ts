/**
 * Vessels for tests, built in code. Each helper fills every field with its empty value, so that a test names only
 * what it is about.
 */
import { blankBusFacts, blankCable, blankCableType, blankEquipment, blankItem } from '../../src/model/blank.js'
import { awgSize } from '../../src/references/tables/astm-b258-awg.js'
import type { ConductorSize } from '../../src/units/conductor-size.js'
import type {
  Battery, Busbar, Cable, CableEnd, CanBus, CableType, Circuit, Duty, Equipment, EthernetNetwork, MaintenanceRecord, Measurement, OperatingMode, OutsideLink, Output, Panel, Protection, SerialLink, SpaceKind, Vessel,
  VesselTask, Wireway, WirewayPoint, Zone,
} from '../../src/model/vessel.js'

/** Everything may be left out but what makes no sense without a value. */
type Given<T, K extends keyof T> = Partial<T> & Pick<T, K>

/** "2.5 mm2" sizes by number, gauges by designation: `mm2(2.5)`, `awg('14')`. */
export const mm2 = (crossSectionMm2: number): ConductorSize =>
  ({ system: 'mm2', designation: String(crossSectionMm2), crossSectionMm2 })
export function awg(designation: string): ConductorSize {
  const size = awgSize(designation)
  if (size === null) throw new Error(`${designation} is no gauge`)
  return size
}

/** `P1:power` → item P1, terminal "power". */
export function anEnd(written: string): CableEnd {
  const [tag = '', terminal = null] = written.split(':')
  return { tag, terminal }
}

const ambientCBySpace: Record<SpaceKind, number> = {
  interior: 30, machinery: 60, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30,
}

export const aVessel = (given: Partial<Vessel> = {}): Vessel => ({
  identity: {
    name: 'Test vessel', model: null, builder: null, hullNumber: null, hullIdentification: null, designCategory: null,
    yearBuilt: null, flag: null, homePort: null, callSign: null, mmsi: null, lengthM: null, beamM: null, draughtM: null,
    displacementKg: null, maximumPersons: null, description: null, propulsion: null,
    stability: { centreOfGravityM: null, metacentricHeightM: null, includesEquipment: null, gunwaleHeightM: null },
    deliveredOn: null, season: null,
  },
  document: {
    number: null, issue: null, issuedOn: null, preparedBy: null, checkedBy: null, approvedBy: null, installer: null, contact: null, manualAddress: null,
  },
  basis: 'iso',
  units: 'metric',
  conditions: { ambientCBySpace, cableTailM: 0, cableSparePercent: 10, latitudeDeg: null, deviceDistanceMm: null, horizontalFieldMicroT: null },
  changes: [], systems: [], zones: [], points: [], wireways: [], cableTypes: [], cables: [], equipment: [], batteries: [],
  busbars: [], panels: [], circuits: [], canBuses: [], serialLinks: [], ethernetNetworks: [], wirelessNetworks: [], outsideLinks: [],
  structures: [], standingPlaces: [], settings: [], credentials: [], operatingModes: [], duties: [], measurements: [],
  photographs: [], arrangementDrawings: [], procedures: [], absences: [], maintenanceTasks: [], maintenanceRecords: [], runningHours: [],
  manualContents: [], acceptedDeviations: [], labelSizes: [],
  ...given,
})

export const aZone = (given: Given<Zone, 'tag'>): Zone => {
  const space = given.space ?? 'interior'
  return { name: `Zone ${given.tag}`, space, ambientC: ambientCBySpace[space], ignitionProtection: false, access: null, box: null, ...given }
}

export const aPoint = (given: Given<WirewayPoint, 'tag' | 'zoneTag'>): WirewayPoint => ({ name: `Point ${given.tag}`, ...given })

export const aWireway = (given: Given<Wireway, 'tag' | 'fromTag' | 'toTag'>): Wireway => ({
  name: null, lengthM: 1, kind: 'clipped', boreMm: null, zoneTags: [given.fromTag, given.toTag], ...given,
})

export const aCableType = (given: Given<CableType, 'tag'>): CableType => ({
  ...blankCableType(given.tag, 'power'), name: `Type ${given.tag}`, cores: 2, insulationC: 105, tinned: true,
  ...given,
})

/** Ends may be written `P1:power`. */
export const aCable = (given: { readonly tag: string; readonly from: string; readonly to: string } & Partial<Omit<Cable, 'tag' | 'from' | 'to'>>): Cable => ({
  ...blankCable(given.tag, anEnd(given.from), anEnd(given.to)), carries: 'both', ...given, from: anEnd(given.from), to: anEnd(given.to),
})

export const anEquipment = (given: Given<Equipment, 'tag'>): Equipment => ({ ...blankEquipment(given.tag, `Equipment ${given.tag}`), ...given })

export const aBattery = (given: Given<Battery, 'tag'>): Battery => ({
  ...blankItem(given.tag, `Battery ${given.tag}`), chemistry: null, nominalVoltageV: 12, capacityAh: null, crankingCurrentA: null, ratedTimeH: null,
  peukertNumber: null, internalResistanceMilliOhm: null, shortCircuitCurrentA: null, depthOfDischargePercent: null, chargeCurrentMaxA: null,
  dischargeCurrentMaxA: null, massKg: null, positionM: null, blocks: null, ...blankBusFacts, ...given,
})

export const aBusbar = (given: Given<Busbar, 'tag'>): Busbar => ({
  ...blankItem(given.tag, `Busbar ${given.tag}`), ratedCurrentA: null, polarity: 'positive', ...given,
})

export const aPanel = (given: Given<Panel, 'tag'>): Panel => ({
  ...blankItem(given.tag, `Panel ${given.tag}`), kind: 'breaker panel', ways: null, ratedCurrentA: null, networkLoss: null, ...blankBusFacts, ...given,
})

export const aCircuit = (given: Given<Circuit, 'tag' | 'fedFromTag'>): Circuit => ({
  name: `Circuit ${given.tag}`, purpose: null, way: null, protection: null, unprotectedReason: null, loadClass: 'general', loadTags: [],
  designCurrentA: null, demandFactor: 1, normalState: 'closed', zoneTag: null, location: null, manualBypass: null, returnCableTags: [], fedFromTerminal: null,
  interlockTag: null, networkLoss: null, ...given,
})

/** A protective device of type and rating, all else left to its type. */
export const aProtection = (device: string, ratedCurrentA: number, given: Partial<Protection> = {}): Protection => ({
  device, ratedCurrentA, interruptingCapacityA: null, voltageRatingV: null, poles: null, residualCurrentA: null, tripTimeMs: null,
  distanceM: null, enclosed: null, ...given,
})

export const anOutput = (given: Given<Output, 'nominalVoltageV'>): Output => ({
  terminal: null, form: 'dc', frequencyHz: null, ratedCurrentA: null, shortCircuitCurrentA: null, neutralBonded: null, curve: [], ...given,
})

export const aMode = (given: Given<OperatingMode, 'tag'>): OperatingMode => ({
  name: `Mode ${given.tag}`, purpose: null, daysCount: 1, monthNumber: null, sunshinePercent: null, startChargePercent: 100, ...given,
})

export const aDuty = (given: Given<Duty, 'modeTag' | 'itemTag'>): Duty => ({ periods: [], dutyPercent: 100, currentA: null, speedRpm: null, ...given })

export const aMeasurement = (given: Given<Measurement, 'number' | 'subjectTag'>): Measurement => ({
  atTag: null, date: null, by: null, instrument: null, voltageV: null, sourceVoltageV: null, voltageDropV: null, currentA: null,
  insulationMOhm: null, polarity: null, residualCurrentA: null, tripTimeMs: null, internalResistanceMilliOhm: null, resistanceOhm: null, busLoadPercent: null, vswrFactor: null, notes: null, ...given,
})

export const aBus = (given: Given<CanBus, 'tag' | 'backbone'>): CanBus => ({
  name: `Bus ${given.tag}`, purpose: null, protocol: 'nmea 2000', suppliesDevices: given.backbone.some(({ kind }) => kind === 'power'), backboneMaxM: null, ...given,
})

export const aNetwork = (given: Given<EthernetNetwork, 'tag'>): EthernetNetwork =>
  ({ name: `Network ${given.tag}`, purpose: null, subnet: null, switchTags: [], gatewayAddress: null, dynamicRange: null, ...given })

/** Ends may be written `P1:in`. */
export const aSerialLink = (
  given: { readonly tag: string; readonly talker: string; readonly listeners: readonly string[] } & Partial<Omit<SerialLink, 'tag' | 'talker' | 'listeners'>>,
): SerialLink => ({
  name: `Link ${given.tag}`, purpose: null, standard: 'iec 61162-1', baudRateBaud: 4800, sentences: [], wires: [], ...given,
  talker: anEnd(given.talker), listeners: given.listeners.map(anEnd),
})

export const anOutsideLink = (given: Given<OutsideLink, 'tag'>): OutsideLink => ({
  name: `Link ${given.tag}`, purpose: null, kind: 'mobile data', equipmentTag: null, antennaTags: [], downMbitPerS: null, upMbitPerS: null, provider: null,
  priorityNumber: null, coverage: null, ...given,
})

/** A task of the vessel's own data. */
export const aTask = (given: Given<VesselTask, 'key'>): VesselTask => ({
  title: null, everyDaysCount: null, everyMonthsCount: null, everyRunningH: null, everyMadeMonthsCount: null, lifeMonthsCount: null, onMarkedDate: false,
  seasons: [], by: null, how: [], inOrder: null, parts: [], source: null, notDone: false, reason: null, itemTags: [], hoursOfTag: null, ...given,
})

export const aRecord = (taskKey: string, date: string, given: Partial<MaintenanceRecord> = {}): MaintenanceRecord =>
  ({ taskKey, date, itemTag: null, runningH: null, by: null, notes: null, ...given })
