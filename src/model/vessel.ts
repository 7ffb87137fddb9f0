/**
 * The vessel as the later stages see it: plain readonly records, quantities as numbers in the unit that ends their
 * name, references as tags. `null` means "not recorded"; nothing is guessed here.
 */
import type { ConductorSize } from '../units/conductor-size.js'

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
  readonly ethernetNetworks: readonly EthernetNetwork[]
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
  readonly labelFrom: string | null
  readonly labelTo: string | null
  readonly status: ItemStatus | null
  readonly notes: string | null
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

export interface Equipment extends ItemBase {
  /** Key of `references/equipment-kinds.ts`. */
  readonly kind: string
  readonly description: string | null
  readonly software: string | null
  readonly positionM: readonly [number, number, number] | null
  readonly massKg: number | null
  readonly supplyMinV: number | null
  readonly supplyMaxV: number | null
  readonly currentTypicalA: number | null
  readonly currentMaxA: number | null
  readonly powerW: number | null
  readonly loadEquivalencyNumber: number | null
  readonly ports: readonly Port[]
  readonly address: string | null
}

export type PortKind = 'power' | 'ethernet' | 'can bus' | 'serial' | 'coax' | 'signal' | 'video' | 'audio' | 'usb'
export interface Port {
  readonly name: string
  readonly kind: PortKind
  readonly speedMbitPerS: number | null
  /** IEEE 802.3 class that a switch port can supply, or that a device asks for. */
  readonly powerClass: number | null
}

export type BatteryChemistry = 'flooded' | 'agm' | 'gel' | 'lfp'
export interface Battery extends ItemBase {
  readonly chemistry: BatteryChemistry | null
  readonly nominalVoltageV: number
  readonly capacityAh: number | null
  readonly crankingCurrentA: number | null
}

export interface Busbar extends ItemBase { readonly ratedCurrentA: number | null; readonly polarity: 'positive' | 'negative' }

export type PanelKind = 'breaker panel' | 'fuse panel' | 'fuse block' | 'switching module'
export interface Panel extends ItemBase {
  readonly kind: PanelKind
  readonly ways: number | null
  readonly ratedCurrentA: number | null
}

export type LoadClass = 'critical' | 'general'
export interface Protection {
  /** Key of `references/tables/protective-devices.ts`. */
  readonly device: string
  readonly ratedCurrentA: number
}
/**
 * Everything downstream of one protective device up to the next distribution point or the loads:
 * a distribution circuit (feeder) when it feeds a panel or busbar, else a final circuit.
 */
export interface Circuit {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** Battery, busbar or panel. */
  readonly fedFromTag: Tag
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
}

export type BackboneElement =
  | { readonly kind: 'terminator'; readonly tag: Tag; readonly zoneTag: Tag | null }
  | { readonly kind: 'segment'; readonly cableTag: Tag }
  | { readonly kind: 'tee'; readonly tag: Tag; readonly zoneTag: Tag | null; readonly deviceTag: Tag | null; readonly dropCableTag: Tag | null }
  | { readonly kind: 'power'; readonly tag: Tag; readonly zoneTag: Tag | null; readonly circuitTag: Tag | null; readonly dropCableTag: Tag | null }
export interface CanBus {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** From one terminator to the other, in physical order. */
  readonly backbone: readonly BackboneElement[]
}

/** Links are the cables of use `ethernet` between its members; nothing is written twice. */
export interface EthernetNetwork {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  readonly subnet: string | null
  readonly switchTags: readonly Tag[]
}
