/** What transmits, by which cable and antenna. */

export interface Transmitter {
  /** What it is used for: "VHF voice", "AIS". */
  readonly service: string
  /** Its connector; null where the antenna is built in. */
  readonly terminal: string | null
  readonly powerW: number
  readonly frequencyMHz: number
  /** Share of the time in which it transmits; null: as usual for the service, else all the time. */
  readonly dutyPercent: number | null
}

export interface Radar {
  readonly frequencyMHz: number | null
  readonly peakPowerW: number | null
  readonly pulseUs: number | null
  readonly repetitionHz: number | null
  readonly gainDbi: number | null
  readonly horizontalBeamDeg: number | null
  readonly verticalBeamDeg: number | null
  /** Of continuous-wave and pulse-compression radars, whose mean power is stated. */
  readonly meanPowerW: number | null
  /** From which people must keep away, as its maker states it. */
  readonly safeDistanceM: number | null
}

export interface Antenna {
  readonly gainDbi: number | null
  readonly fromMHz: number | null
  readonly toMHz: number | null
  /** Its mount is at the item's position, its radiating part above that. */
  readonly lengthM: number | null
  /** Highest voltage standing wave ratio that its maker states. */
  readonly vswrFactor: number | null
  /** Distance to other antennas that its maker asks for. */
  readonly clearanceM: number | null
}

/** What a splitter, filter or amplifier takes away between two connectors. */
export interface PortLoss { readonly fromTerminal: string; readonly toTerminal: string; readonly lossDb: number }

/** Key of `references/tables/coax-attenuation.ts`. */
export type CoaxKind = string
export interface AttenuationPoint { readonly frequencyMHz: number; readonly lossDbPer100M: number }

/** Of a cable type. */
export interface Coax {
  readonly kind: CoaxKind | null
  /** As its maker states it, lowest frequency first. */
  readonly attenuation: readonly AttenuationPoint[]
}

