/** Data networks as built: CAN buses, serial links, Ethernet, wireless networks and links to the outside. */
import type { CableEnd, Tag } from '../vessel.js'

export type BackboneElement =
  | { readonly kind: 'terminator'; readonly tag: Tag; readonly zoneTag: Tag | null; readonly resistanceOhm: number | null }
  | { readonly kind: 'segment'; readonly cableTag: Tag }
  | {
      readonly kind: 'tee'; readonly tag: Tag; readonly zoneTag: Tag | null; readonly deviceTag: Tag | null; readonly dropCableTag: Tag | null
      /** Connector of the device, where it has several on buses and no cable says which. */
      readonly deviceTerminal: string | null
    }
  | {
      readonly kind: 'power'; readonly tag: Tag; readonly zoneTag: Tag | null; readonly circuitTag: Tag | null; readonly dropCableTag: Tag | null
      /** Of a regulated or isolated supply of the bus; null: what comes of the circuit. */
      readonly supplyVoltageV: number | null
    }
  /** The supply pair ends here on both sides, the data pair goes on. */
  | { readonly kind: 'isolator'; readonly tag: Tag; readonly zoneTag: Tag | null }

export interface CanBus {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  /** From one terminator to the other, in physical order. */
  readonly backbone: readonly BackboneElement[]
  readonly protocol: 'nmea 2000' | 'j1939'
  /** Whether the backbone supplies its devices, or each is supplied elsewhere. */
  readonly suppliesDevices: boolean
  /** Largest length of the backbone, where the rule for this cable differs from the usual one. */
  readonly backboneMaxM: number | null
}

/** Of the cable of a CAN bus: what limits it. */
export type BusCable = 'light' | 'mid' | 'heavy'

/** What a device sends on a CAN bus; what is null is as usual for that parameter group. */
export interface BusMessage {
  /** Parameter group number. */
  readonly pgnNumber: number
  readonly intervalMs: number | null
  readonly payloadByteCount: number | null
  /** The connector by which it is sent; null: every bus that the device is on. */
  readonly terminal: string | null
  /** How many of them each interval, for example one an engine. */
  readonly timesCount: number
  /** Instance in the data; null: that of the device. */
  readonly instanceNumber: number | null
}

/** What comes in at one connector and goes out at another: bridges, gateways, multiplexers. */
export interface Forwarding {
  readonly fromTerminal: string
  readonly toTerminal: string
  /** Parameter groups or sentences that pass; null: all. */
  readonly only: readonly string[] | null
}

export interface SerialLink {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  readonly standard: 'iec 61162-1' | 'iec 61162-2' | 'other'
  readonly baudRateBaud: number | null
  readonly talker: CableEnd
  readonly listeners: readonly CableEnd[]
  readonly sentences: readonly Sentence[]
  readonly wires: readonly SerialWire[]
}
export interface Sentence {
  /** Formatter (RMC), or talker and formatter (GPRMC). */
  readonly formatter: string
  readonly ratePerS: number | null
  /** With start and line end; null: as usual for that sentence. */
  readonly lengthCharacterCount: number | null
}
export interface SerialWire {
  readonly signal: string
  readonly from: CableEnd
  readonly to: CableEnd
  readonly cableTag: Tag | null
  readonly core: string | null
}

/** Links are the cables of use `ethernet` between its members; nothing is written twice. */
export interface EthernetNetwork {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  readonly subnet: string | null
  readonly switchTags: readonly Tag[]
  /** Where what is meant for elsewhere is sent. */
  readonly gatewayAddress: string | null
  /** First and last of the addresses that are given out. */
  readonly dynamicRange: readonly [string, string] | null
}
export type Addressing = 'static' | 'dynamic' | 'reserved'

/** Pictures, charts, echoes: what an item sends over Ethernet without a break. */
export interface Stream {
  readonly name: string
  readonly rateMbitPerS: number
  /** Who takes it; null: whoever needs data of the sender. */
  readonly toTags: readonly Tag[] | null
  /** Once on each link, whoever takes it; else once for each that does. */
  readonly multicast: boolean
}

export interface WirelessNetwork {
  readonly tag: Tag
  /** As devices show it. */
  readonly name: string
  readonly purpose: string | null
  readonly accessPointTag: Tag | null
  /** The Ethernet network that it leads to. */
  readonly networkTag: Tag | null
  readonly band: string | null
  readonly channel: string | null
  readonly security: string | null
  readonly forGuests: boolean | null
}

export type OutsideLinkKind = 'mobile data' | 'satellite' | 'wireless network of a harbour' | 'other'
export interface OutsideLink {
  readonly tag: Tag
  readonly name: string
  readonly purpose: string | null
  readonly kind: OutsideLinkKind
  readonly equipmentTag: Tag | null
  readonly antennaTags: readonly Tag[]
  readonly downMbitPerS: number | null
  readonly upMbitPerS: number | null
  readonly provider: string | null
  /** 1 is tried first. */
  readonly priorityNumber: number | null
  /** Where it can be used, in words. */
  readonly coverage: string | null
}
