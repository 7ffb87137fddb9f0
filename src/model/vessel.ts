/**
 * The vessel as the later stages see it: plain readonly records, quantities as numbers in the unit that ends their
 * name, references as tags. `null` means "not recorded"; nothing is guessed here.
 */
import type { SpaceKind } from '../references/space-kinds.js'
import type { SystemKind } from '../references/system-kinds.js'
import type { ConductorSize } from '../units/conductor-size.js'
import type { Battery, Busbar, Equipment, NetworkLoss, Panel } from './vessel/items.js'
import type { ArrangementDrawing, Box, Photograph } from './vessel/location.js'
import type { MaintenanceRecord, RunningHours, VesselTask } from './vessel/maintenance.js'
import type { Absence, AcceptedDeviation, LabelSizeEntry, ManualContent, Procedure } from './vessel/manual.js'
import type { BusCable, CanBus, EthernetNetwork, OutsideLink, SerialLink, WirelessNetwork } from './vessel/networks.js'
import type { Stability, StandingPlace, Structure } from './vessel/placement.js'
import type { Duty, Measurement, OperatingMode } from './vessel/use.js'
import type { Coax } from './vessel/radio.js'
import type { Credential, Setting } from './vessel/record.js'

export type * from './vessel/items.js'
export type * from './vessel/location.js'
export type * from './vessel/maintenance.js'
export type * from './vessel/manual.js'
export type * from './vessel/networks.js'
export type * from './vessel/placement.js'
export type * from './vessel/radio.js'
export type * from './vessel/record.js'
export type * from './vessel/use.js'

export type { SpaceKind }
export type Tag = string
export type BasisId = 'iso' | 'abyc'
export type UnitSystem = 'metric' | 'us'
export type ItemStatus = 'planned' | 'fitted' | 'commissioned' | 'removed'

export interface Vessel {
  readonly identity: Identity
  readonly document: DocumentControl
  readonly basis: BasisId
  readonly units: UnitSystem
  readonly conditions: Conditions
  readonly changes: readonly Change[]
  readonly systems: readonly System[]
  readonly zones: readonly Zone[]
  readonly points: readonly WirewayPoint[]
  readonly wireways: readonly Wireway[]
  readonly cableTypes: readonly CableType[]
  readonly cables: readonly Cable[]
  readonly equipment: readonly Equipment[]
  readonly batteries: readonly Battery[]
  readonly busbars: readonly Busbar[]
  readonly panels: readonly Panel[]
  readonly circuits: readonly Circuit[]
  readonly canBuses: readonly CanBus[]
  readonly serialLinks: readonly SerialLink[]
  readonly ethernetNetworks: readonly EthernetNetwork[]
  readonly wirelessNetworks: readonly WirelessNetwork[]
  readonly outsideLinks: readonly OutsideLink[]
  readonly structures: readonly Structure[]
  readonly standingPlaces: readonly StandingPlace[]
  readonly settings: readonly Setting[]
  readonly credentials: readonly Credential[]
  readonly operatingModes: readonly OperatingMode[]
  readonly duties: readonly Duty[]
  readonly measurements: readonly Measurement[]
  readonly photographs: readonly Photograph[]
  readonly arrangementDrawings: readonly ArrangementDrawing[]
  readonly procedures: readonly Procedure[]
  readonly absences: readonly Absence[]
  readonly maintenanceTasks: readonly VesselTask[]
  readonly maintenanceRecords: readonly MaintenanceRecord[]
  readonly runningHours: readonly RunningHours[]
  readonly manualContents: readonly ManualContent[]
  readonly acceptedDeviations: readonly AcceptedDeviation[]
  readonly labelSizes: readonly LabelSizeEntry[]
}

export interface Identity {
  readonly name: string
  readonly model: string | null
  readonly builder: string | null
  readonly hullNumber: string | null
  readonly hullIdentification: string | null
  readonly designCategory: 'A' | 'B' | 'C' | 'D' | null
  readonly yearBuilt: number | null
  readonly flag: string | null
  readonly homePort: string | null
  readonly callSign: string | null
  readonly mmsi: string | null
  readonly lengthM: number | null
  readonly beamM: number | null
  readonly draughtM: number | null
  readonly displacementKg: number | null
  readonly maximumPersons: number | null
  readonly description: string | null
  /** What she is under the collision regulations. */
  readonly propulsion: 'power-driven' | 'sailing' | null
  readonly stability: Stability
  readonly deliveredOn: string | null
  /** Of a boat that is laid up for a part of the year. */
  readonly season: { readonly launchMonthNumber: number; readonly layUpMonthNumber: number } | null
}

export interface DocumentControl {
  readonly number: string | null
  readonly issue: string | null
  readonly issuedOn: string | null
  readonly preparedBy: string | null
  readonly checkedBy: string | null
  readonly approvedBy: string | null
  readonly installer: string | null
  readonly contact: string | null
  /** Where the site of this pack is published, ending in a slash; null: nowhere. */
  readonly manualAddress: string | null
}

/** What holds for the whole boat unless a zone or a cable says otherwise. */
export interface Conditions {
  readonly ambientCBySpace: Readonly<Record<SpaceKind, number>>
  /** Length added at each end of a routed cable for the way from the wireway to the terminal. */
  readonly cableTailM: number
  /** Cable to be bought over and above the lengths that are laid. */
  readonly cableSparePercent: number
  /** Where the boat is used, north positive: decides what the sun gives. */
  readonly latitudeDeg: number | null
  /** Largest distance from the source to the protective device, where the vessel's rules give another than the basis has. */
  readonly deviceDistanceMm: number | null
  /** Horizontal part of the Earth's magnetic field where the boat is used. */
  readonly horizontalFieldMicroT: number | null
}

export interface Change { readonly issue: string; readonly date: string; readonly by: string | null; readonly what: string; readonly why: string | null }

export interface System {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** Which of the usual systems it is; null: none of them. */
  readonly kind: SystemKind | null
}

export interface Zone {
  readonly tag: Tag
  readonly name: string
  readonly space: SpaceKind
  readonly ambientC: number
  readonly ignitionProtection: boolean | null
  readonly access: string | null
  readonly box: Box | null
}

/** A place where wireways meet that is not itself a zone's own point. */
export interface WirewayPoint { readonly tag: Tag; readonly name: string; readonly zoneTag: Tag }

export type WirewayKind = 'conduit' | 'tray' | 'trunking' | 'clipped' | 'open'
export interface Wireway {
  readonly tag: Tag
  readonly name: string | null
  /** A zone's tag or a wireway point's tag. */
  readonly fromTag: Tag
  readonly toTag: Tag
  readonly lengthM: number
  readonly kind: WirewayKind
  readonly boreMm: number | null
  /** The zones it runs through; the zones of its two ends where the author gives none. */
  readonly zoneTags: readonly Tag[]
}

export type CableUse = 'power' | 'ac power' | 'can bus' | 'ethernet' | 'coax' | 'serial' | 'signal' | 'bonding'
export interface CableType {
  readonly tag: Tag
  readonly name: string
  readonly use: CableUse
  readonly cores: number | null
  readonly size: ConductorSize | null
  readonly insulationC: number | null
  readonly tinned: boolean | null
  readonly outerDiameterMm: number | null
  readonly shielded: boolean | null
  /** Of the cable of a CAN bus. */
  readonly busCable: BusCable | null
  /** Of one conductor of the supply pair of a CAN bus cable; null: as usual for its kind. */
  readonly conductorResistanceOhmPerKm: number | null
  readonly coax: Coax | null
}

/** `P1:power` is item P1, terminal "power"; `A1.7` is a circuit's way with no terminal named. */
export interface CableEnd { readonly tag: Tag; readonly terminal: string | null }
/** Which conductors of a circuit the cable holds. `both`: out and back in one sheath. */
export type Carries = 'both' | 'positive' | 'negative' | 'none'
export interface Cable {
  readonly tag: Tag
  readonly name: string | null
  readonly from: CableEnd
  readonly to: CableEnd
  readonly typeTag: Tag | null
  readonly carries: Carries
  /** Wireways as the author wrote them; null: the shortest way is worked out. Empty: it leaves no zone. */
  readonly routeTags: readonly Tag[] | null
  /** Measured or declared length; null: worked out from the route. */
  readonly lengthM: number | null
  readonly serviceLoopM: number
  /** Alike conductors joined at both ends under this number; 1: a single cable. */
  readonly parallelCount: number
  readonly labelFrom: string | null
  readonly labelTo: string | null
  readonly status: ItemStatus | null
  readonly notes: string | null
  /** Of a coaxial cable, its ends included. */
  readonly connectorCount: number | null
}

export type LoadClass = 'critical' | 'general'
export interface Protection {
  /** Key of `references/tables/protective-devices.ts`. */
  readonly device: string
  readonly ratedCurrentA: number
  /** The largest current that it can break. */
  readonly interruptingCapacityA: number | null
  readonly voltageRatingV: number | null
  readonly poles: number | null
  /** Where it trips on residual current too. */
  readonly residualCurrentA: number | null
  readonly tripTimeMs: number | null
  /** Along the conductor from the source to the device as measured; null: the length of the cables between them. */
  readonly distanceM: number | null
  /** Whether that whole conductor lies in a sheath or enclosure. */
  readonly enclosed: boolean | null
}
/**
 * Everything downstream of one protective device up to the next distribution point or the loads:
 * a distribution circuit (feeder) when it feeds a panel or busbar, else a final circuit.
 */
export interface Circuit {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** Battery, busbar or panel, or equipment that gives an output. */
  readonly fedFromTag: Tag
  /** Which output, where the equipment has several. */
  readonly fedFromTerminal: string | null
  readonly way: number | null
  readonly protection: Protection | null
  /** Why there is no overcurrent protection, e.g. the engine-starting circuit. */
  readonly unprotectedReason: string | null
  readonly loadClass: LoadClass
  readonly loadTags: readonly Tag[]
  /** Given by the author; null: the sum of the loads' currents. */
  readonly designCurrentA: number | null
  /** Share of its design current that counts in the feeder above, 0…1. */
  readonly demandFactor: number
  readonly normalState: 'closed' | 'open'
  /** Where the protective device is, when not at the distribution point. */
  readonly zoneTag: Tag | null
  readonly location: string | null
  /** How the circuit is worked when an electronic channel or its network is lost. */
  readonly manualBypass: string | null
  /** The cables of the way back, when they differ from the way out. */
  readonly returnCableTags: readonly Tag[]
  /** The switch or device that lets only one of several circuits be closed; those circuits name the same one. */
  readonly interlockTag: Tag | null
  /** Of an electronic channel, where it differs from its module's. */
  readonly networkLoss: NetworkLoss | null
}
