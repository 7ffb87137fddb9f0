/**
 * The vessel as the later stages see it: plain readonly records, quantities as numbers in the unit that ends their
 * name, references as tags. `null` means "not recorded"; nothing is guessed here.
 */
import type { ConductorSize } from '../units/conductor-size.js'
import type { Addressing, BusCable, BusMessage, CanBus, EthernetNetwork, Forwarding, OutsideLink, SerialLink, Stream, WirelessNetwork } from './vessel/networks.js'
import type { CompassClass, NavigationLight, Position, Stability, StandingPlace, Structure, Transducer } from './vessel/placement.js'
import type { Duty, Measurement, OperatingMode } from './vessel/use.js'
import type { Antenna, Coax, PortLoss, Radar, Transmitter } from './vessel/radio.js'
import type { Credential, Setting } from './vessel/record.js'

export type * from './vessel/networks.js'
export type * from './vessel/placement.js'
export type * from './vessel/radio.js'
export type * from './vessel/record.js'
export type * from './vessel/use.js'

export type Tag = string
export type BasisId = 'iso' | 'abyc'
export type UnitSystem = 'metric' | 'us'
export type SpaceKind = 'interior' | 'machinery' | 'bilge' | 'battery' | 'deck' | 'mast' | 'cockpit' | 'locker'
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
}

/** What holds for the whole boat unless a zone or a cable says otherwise. */
export interface Conditions {
  readonly ambientCBySpace: Readonly<Record<SpaceKind, number>>
  /** Length added at each end of a routed cable for the way from the wireway to the terminal. */
  readonly cableTailM: number
  /** Where the boat is used, north positive: decides what the sun gives. */
  readonly latitudeDeg: number | null
  /** Largest distance from the source to the protective device, where the vessel's rules give another than the basis has. */
  readonly deviceDistanceMm: number | null
  /** Horizontal part of the Earth's magnetic field where the boat is used. */
  readonly horizontalFieldMicroT: number | null
}

export interface Change { readonly issue: string; readonly date: string; readonly by: string | null; readonly what: string; readonly why: string | null }

export interface System { readonly tag: Tag; readonly name: string; readonly purpose: string | null }

export interface Zone {
  readonly tag: Tag
  readonly name: string
  readonly space: SpaceKind
  readonly ambientC: number
  readonly ignitionProtection: boolean | null
  readonly access: string | null
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

/** What every physical thing with a tag and a place has in common. */
export interface ItemBase {
  readonly tag: Tag
  readonly name: string
  readonly zoneTag: Tag | null
  readonly systemTag: Tag | null
  /** The wireway point its cables leave from; null: its zone's own point. */
  readonly pointTag: Tag | null
  readonly location: string | null
  readonly maker: string | null
  readonly model: string | null
  readonly serial: string | null
  readonly status: ItemStatus | null
  readonly notes: string | null
  readonly documents: readonly DocumentRef[]
}

/** A file of the vessel folder that goes into the pack. */
export interface DocumentRef { readonly file: string; readonly title: string }

/** What a device is and does on its CAN bus. */
export interface BusFacts {
  readonly loadEquivalencyNumber: number | null
  readonly deviceInstanceNumber: number | null
  readonly sends: readonly BusMessage[]
}

export interface Equipment extends ItemBase, BusFacts {
  /** Key of `references/equipment-kinds.ts`. */
  readonly kind: string
  readonly description: string | null
  readonly software: string | null
  readonly positionM: Position | null
  readonly massKg: number | null
  readonly supplyMinV: number | null
  readonly supplyMaxV: number | null
  readonly currentTypicalA: number | null
  readonly currentMaxA: number | null
  readonly powerW: number | null
  readonly ports: readonly Port[]
  readonly address: string | null
  /** What a switch, isolator, selector or connector may carry without a break. */
  readonly ratedCurrentA: number | null
  /** Highest current while it starts. */
  readonly startingCurrentA: number | null
  /** The rating of the protective device that its maker asks for. */
  readonly makersFuseA: number | null
  /** What it gives, as a source, charger, converter or inverter; the terminals not named here take current. */
  readonly outputs: readonly Output[]
  /** Of what it takes, the share that it gives. */
  readonly efficiencyPercent: number | null
  /** Of a solar panel, under standard test conditions. */
  readonly peakPowerW: number | null
  readonly loadColumn: LoadColumn | null
  readonly safetyService: SafetyService | null
  /** Items whose data it needs to do its work. */
  readonly dataFromTags: readonly Tag[]
  /** Of a residual-current device. */
  readonly residualCurrentA: number | null
  readonly tripTimeMs: number | null
  /** Of a shore inlet. */
  readonly galvanicIsolationTag: Tag | null
  readonly polarityIndicatorTag: Tag | null
  readonly softwareDate: string | null
  readonly forwards: readonly Forwarding[]
  readonly addressing: Addressing | null
  readonly macAddress: string | null
  readonly streams: readonly Stream[]
  /** What it takes over its network cable. */
  readonly networkPowerW: number | null
  /** What a switch can give over all its ports together, and at which voltage. */
  readonly powerBudgetW: number | null
  readonly powerVoltageV: number | null
  /** Whether it passes traffic from one of its Ethernet ports to another. */
  readonly passesEthernet: boolean | null
  /** Whether a ring of cables through it does no harm. */
  readonly loopProtection: boolean | null
  readonly transmitters: readonly Transmitter[]
  readonly radar: Radar | null
  readonly antenna: Antenna | null
  readonly portLosses: readonly PortLoss[]
  readonly compassClass: CompassClass | null
  /** Distances by IEC 60945. */
  readonly compassSafeStandardM: number | null
  readonly compassSafeSteeringM: number | null
  readonly navigationLight: NavigationLight | null
  readonly transducer: Transducer | null
  readonly mmsi: string | null
  /** Hexadecimal identity of a 406 MHz beacon. */
  readonly beaconIdentity: string | null
}

export type SupplyForm = 'dc' | 'ac'
/** One output of a source. Circuits fed from it start a system of their own at its voltage. */
export interface Output {
  /** Its terminal; null where there is but one. */
  readonly terminal: string | null
  readonly form: SupplyForm
  readonly nominalVoltageV: number
  readonly frequencyHz: number | null
  /** What it can give without a break. */
  readonly ratedCurrentA: number | null
  readonly shortCircuitCurrentA: number | null
  /** Whether neutral is joined to the protective conductor at this source. */
  readonly neutralBonded: boolean | null
  /** Of an alternator: what it gives at a speed of its engine, hot. */
  readonly curve: readonly { readonly speedRpm: number; readonly currentA: number }[]
}

/** Column of the load calculation: `a` must be able to run together, `b` now and then. */
export type LoadColumn = 'a' | 'b'
export type SafetyService = 'navigation lights' | 'bilge pumping' | 'distress radio' | 'position' | 'steering' | 'engine control' | 'alarms'

export type PortKind = 'power' | 'ethernet' | 'can bus' | 'serial' | 'coax' | 'signal' | 'video' | 'audio' | 'usb'
export interface Port {
  readonly name: string
  readonly kind: PortKind
  readonly speedMbitPerS: number | null
  /** IEEE 802.3 class that a switch port can supply, or that a device asks for. */
  readonly powerClass: number | null
  /** Of a serial connector: rates that it can be set to, and which way data flow. */
  readonly baudRates: readonly number[]
  readonly direction: 'talks' | 'listens' | 'both' | null
  /** What a talker can drive, or a listener takes. */
  readonly signalCurrentA: number | null
}

export type BatteryChemistry = 'flooded' | 'agm' | 'gel' | 'lfp'
export interface Battery extends ItemBase, BusFacts {
  readonly chemistry: BatteryChemistry | null
  readonly nominalVoltageV: number
  readonly capacityAh: number | null
  readonly crankingCurrentA: number | null
  /** Hours in which the capacity is drawn, for example 20. */
  readonly ratedTimeH: number | null
  /** Peukert's exponent. */
  readonly peukertNumber: number | null
  readonly internalResistanceMilliOhm: number | null
  /** As its maker states it. */
  readonly shortCircuitCurrentA: number | null
  /** How deep it may be discharged day by day. */
  readonly depthOfDischargePercent: number | null
  readonly chargeCurrentMaxA: number | null
  readonly dischargeCurrentMaxA: number | null
  readonly massKg: number | null
  readonly positionM: Position | null
  readonly blocks: BatteryBlocks | null
}
/** What a bank is made of, and the facts of one block. */
export interface BatteryBlocks {
  readonly seriesCount: number
  readonly parallelCount: number
  readonly nominalVoltageV: number | null
  readonly capacityAh: number | null
  readonly crankingCurrentA: number | null
  readonly internalResistanceMilliOhm: number | null
  readonly shortCircuitCurrentA: number | null
}

export interface Busbar extends ItemBase { readonly ratedCurrentA: number | null; readonly polarity: 'positive' | 'negative' }

export type PanelKind = 'breaker panel' | 'fuse panel' | 'fuse block' | 'switching module'
export interface Panel extends ItemBase, BusFacts {
  readonly kind: PanelKind
  readonly ways: number | null
  readonly ratedCurrentA: number | null
  /** What the channels of a switching module do when it no longer hears its network. */
  readonly networkLoss: NetworkLoss | null
}
export type NetworkLoss = 'hold' | 'off' | 'on'

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
