/** Things with a tag and a place: equipment, batteries, busbars, panels. */
import type { ItemStatus, Tag } from '../vessel.js'
import type { TaskFacts } from './maintenance.js'
import type { Addressing, BusMessage, Forwarding, Stream } from './networks.js'
import type { CompassClass, NavigationLight, Position, Transducer } from './placement.js'
import type { Antenna, PortLoss, Radar, Transmitter } from './radio.js'

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
  readonly fittedOn: string | null
  readonly madeOn: string | null
  /** The date marked on it. */
  readonly expiresOn: string | null
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
  /** What its model's maker asks for. */
  readonly maintenance: readonly TaskFacts[]
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
