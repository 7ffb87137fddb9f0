/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { Finding } from '../../findings/finding.js'
import type { Comparison, Outcome } from '../results.js'
import type { Addressing, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface EthernetResults {
  /** Every link on board, in the order of its first cable. */
  readonly links: readonly EthernetLink[]
  /** Ethernet ports of every item that has some, in its own order. */
  readonly ports: ReadonlyMap<Tag, readonly PortUse[]>
  readonly networks: ReadonlyMap<Tag, NetworkResult>
  /** What each item that supplies others over their network cables gives. */
  readonly power: ReadonlyMap<Tag, NetworkPower>
  readonly rings: readonly Ring[]
  readonly streams: readonly StreamWay[]
  readonly wirelessSecurity: ReadonlyMap<Tag, WirelessSecurity>
  readonly outsideLinks: ReadonlyMap<Tag, OutsideWay>
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

// --- links -----------------------------------------------------------------------------------------------------------
export interface LinkEnd {
  readonly tag: Tag
  /** Null where it is not recorded at which of several ports. */
  readonly portName: string | null
  readonly speedMbitPerS: number | null
  readonly powerClass: number | null
}

/** From port to port: one cable, or several that meet in connectors without electronics. */
export interface EthernetLink {
  /** That of the first of its cables. */
  readonly tag: Tag
  readonly ends: readonly [LinkEnd, LinkEnd]
  /** From the first end to the second. */
  readonly cableTags: readonly Tag[]
  readonly jointTags: readonly Tag[]
  readonly length: Outcome<{ cableLengthM: number; cordLengthM: number }, { channelLengthM: number }>
  readonly lengthComparison: Comparison | null
  readonly speedMbitPerS: number | null
  /** What sets the speed, or why it is not known. */
  readonly speedReason: string
  /** From the first end to the second, and back. */
  readonly loads: readonly [LinkLoad, LinkLoad]
}
export interface LinkLoad {
  readonly streamsMbitPerS: number
  readonly parts: readonly LinkStream[]
  readonly load: Outcome<{ streamsMbitPerS: number; speedMbitPerS: number }, { loadPercent: number }>
  /** Null where the speed is not known. */
  readonly againstSpeed: Comparison | null
  readonly againstPlan: Comparison | null
}
/** A stream on a link; `timesCount` for as many receivers. */
export interface LinkStream { readonly senderTag: Tag; readonly name: string; readonly rateMbitPerS: number; readonly timesCount: number }

export interface PortUse {
  readonly name: string
  readonly speedMbitPerS: number | null
  readonly powerClass: number | null
  /** A cable for each; more than one is a mistake. */
  readonly cables: readonly { readonly cableTag: Tag; readonly farTag: Tag; readonly farPortName: string | null; readonly linkTag: Tag | null }[]
}

// --- networks --------------------------------------------------------------------------------------------------------
export interface NetworkResult {
  /** Switches, and all that is reached from them. */
  readonly memberTags: readonly Tag[]
  readonly linkTags: readonly Tag[]
  readonly addresses: NetworkAddresses
  /** Items that have the address to which all that is meant for elsewhere is sent. */
  readonly gatewayTags: readonly Tag[]
}
export interface NetworkAddresses {
  readonly members: readonly MemberAddress[]
  /** Written out: `192.168.50.0/24`; null where none is recorded or it cannot be read. */
  readonly subnet: string | null
  readonly firstHost: string | null
  readonly lastHost: string | null
  readonly free: Outcome<{ prefixNumber: number; dynamicCount: number; takenCount: number }, { hostCount: number; freeCount: number }>
  /** The lowest free one outside the dynamic range. */
  readonly nextFree: string | null
}
export interface MemberAddress {
  readonly tag: Tag
  readonly address: string | null
  readonly addressing: Addressing | null
  /** False for what has an address of the range and no network cable: it is on the air. */
  readonly cabled: boolean
}

// --- power over the cable --------------------------------------------------------------------------------------------
export interface NetworkPower {
  readonly tag: Tag
  readonly feeds: readonly PowerFeed[]
  readonly voltageRecorded: boolean
  /** Of the classes of what hangs on its ports, and of what those take; null while a part is not known. */
  readonly reservedPowerW: number | null
  readonly drawnPowerW: number | null
  readonly reservedMargin: Outcome<PowerSum, { marginPowerW: number }>
  readonly drawnMargin: Outcome<PowerSum, { marginPowerW: number }>
  readonly freePorts: readonly FreePowerPort[]
  /** What it takes of its own circuit for all that its ports may give. */
  readonly supply: Outcome<{ outputPowerW: number; inputVoltageV: number; efficiencyPercent: number }, { inputCurrentA: number }>
}
export type PowerSum = { powerBudgetW: number; takenPowerW: number }
/** A device that lives on a port. */
export interface PowerFeed {
  readonly portName: string | null
  readonly deviceTag: Tag
  readonly linkTag: Tag
  readonly offeredClass: number
  /** Null: it is not recorded which it asks for. */
  readonly askedClass: number | null
  readonly reservedPowerW: number | null
  /** What the device takes is not recorded, and the most that its class allows is taken. */
  readonly byClass: boolean
  readonly power: Outcome<
    { devicePowerW: number; portVoltageV: number; channelLengthM: number; loopResistanceOhmPerM: number; pairSetCount: number },
    { channelResistanceOhm: number; supplyCurrentA: number; lossPowerW: number; portPowerW: number; deviceVoltageV: number }
  >
}
export interface FreePowerPort {
  readonly name: string
  readonly offeredClass: number | null
  /** The highest class that it offers and the budget has left; null for none, or where that is not known. */
  readonly fittingClass: number | null
  readonly known: boolean
}

// --- rings and streams -----------------------------------------------------------------------------------------------
export interface Ring {
  readonly itemTags: readonly Tag[]
  readonly linkTags: readonly Tag[]
  /** Those that keep a ring from doing harm. */
  readonly protectedTags: readonly Tag[]
  readonly safe: boolean
}

export interface StreamWay {
  readonly senderTag: Tag
  readonly name: string
  readonly rateMbitPerS: number
  readonly multicast: boolean
  readonly receivers: readonly { readonly tag: Tag; readonly linkTags: readonly Tag[] | null }[]
}

// --- wireless and outside --------------------------------------------------------------------------------------------
export type WirelessSecurity = 'open' | 'weak' | 'recorded' | 'not recorded'

export interface OutsideWay {
  readonly equipmentTag: Tag | null
  /** Ethernet networks that it leads out of; `gateway`: it has the address to which they send what is meant for elsewhere. */
  readonly networks: readonly { readonly tag: Tag; readonly gateway: boolean }[]
  readonly antennas: readonly AntennaWay[]
  /** Items that say they need it. */
  readonly neededByTags: readonly Tag[]
}
export interface AntennaWay {
  readonly tag: Tag
  /** It is the equipment itself. */
  readonly builtIn: boolean
  /** From the antenna to the equipment; null where none joins them. */
  readonly cableTags: readonly Tag[] | null
  readonly lengthM: number | null
  /** The antenna, or a cable of it, is still to come. */
  readonly planned: boolean
}
