/**
 * What the calculation stage hands on. Every subject gets an outcome: computed, with the inputs used, or not computed
 * ("not assessed" in print), with the reason. Nothing here is rounded.
 */
import type { Finding, Limit } from '../findings/finding.js'
import type { Quantities } from '../units/quantity.js'
import type { AcSupplyResults } from './results/ac-supply.js'
import type { CommissioningResults } from './results/commissioning.js'
import type { DependencyResults } from './results/dependency.js'
import type { FaultTracingResults } from './results/fault-tracing.js'
import type { EnergyResults } from './results/energy.js'
import type { ProtectiveDevicesResults } from './results/protective-devices.js'
import type { ReserveResults } from './results/reserve.js'
import type { SourcesResults } from './results/sources.js'
import type { CanBusResults } from './results/can-bus.js'
import type { SerialResults } from './results/serial.js'
import type { EthernetResults } from './results/ethernet.js'
import type { RadioResults } from './results/radio.js'
import type { PlacementResults } from './results/placement.js'
import type { IdentifiersResults } from './results/identifiers.js'
import type { ConfigurationResults } from './results/configuration.js'
import type { LocationResults } from './results/location.js'
import type { EmergencyResults } from './results/emergency.js'
import type { MaintenanceResults } from './results/maintenance.js'
import type { CableBillResults } from './results/cable-bill.js'
import type { LabelsResults } from './results/labels.js'
import type { CompletenessResults } from './results/completeness.js'
import type { Circuit, SupplyForm, Tag } from './vessel.js'

export type Computed<In extends Quantities, Out extends Quantities> = {
  readonly status: 'computed'
  /** Id of the calculation, whose formula, symbols and source are in the methods list. */
  readonly method: string
  readonly input: In
  readonly output: Out
}
export type NotComputed = { readonly status: 'not computed'; readonly method: string; readonly reason: string }
export type Outcome<In extends Quantities = Quantities, Out extends Quantities = Quantities> = Computed<In, Out> | NotComputed

/** A computed quantity held against a limit. `margin` is positive while within the limit, in the limit's unit. */
export interface Comparison {
  readonly quantity: string
  readonly value: number
  readonly limit: Limit
  readonly margin: number
  readonly within: boolean
}

export interface Results {
  readonly routing: RoutingResults
  readonly sources: SourcesResults
  readonly feeding: FeedingResults
  readonly currentCarryingCapacity: CapacityResults
  readonly voltageDrop: VoltageDropResults
  readonly protection: ProtectionResults
  readonly conductorSize: SizeResults
  readonly protectiveDevices: ProtectiveDevicesResults
  readonly acSupply: AcSupplyResults
  readonly energy: EnergyResults
  readonly dependency: DependencyResults
  readonly faultTracing: FaultTracingResults
  readonly reserve: ReserveResults
  readonly commissioning: CommissioningResults
  readonly canBus: CanBusResults
  readonly serial: SerialResults
  readonly ethernet: EthernetResults
  readonly radio: RadioResults
  readonly placement: PlacementResults
  readonly identifiers: IdentifiersResults
  readonly configuration: ConfigurationResults
  readonly location: LocationResults
  readonly emergency: EmergencyResults
  readonly maintenance: MaintenanceResults
  readonly cableBill: CableBillResults
  readonly labels: LabelsResults
  readonly completeness: CompletenessResults
  readonly findings: readonly Finding[]
}

// --- routing ---------------------------------------------------------------------------------------------------------
export interface RoutingResults {
  readonly byCable: ReadonlyMap<Tag, CableRun>
  readonly byWireway: ReadonlyMap<Tag, WirewayLoad>
  readonly findings: readonly Finding[]
}
export interface CableRun {
  /**
   * Where the way comes from, whatever the length comes from. `given`: the author named the wireways. `shortest`: worked
   * out. `none`: both ends in one place. `declared`: there is a length in the data and no way that could be found.
   * `unknown`: neither.
   */
  readonly routeSource: 'declared' | 'given' | 'shortest' | 'none' | 'unknown'
  readonly wirewayTags: readonly Tag[]
  /** Every zone the cable passes, its ends included. */
  readonly zoneTags: readonly Tag[]
  /** Why zones may be missing from `zoneTags` (the hottest may be one of them); null when all are known. */
  readonly zonesUnknown: string | null
  readonly length: Outcome<
    { wirewayLengthM: number; tailLengthM: number; serviceLoopM: number },
    { cableLengthM: number }
  > | { readonly status: 'declared'; readonly cableLengthM: number }
}
export interface WirewayLoad {
  readonly cableTags: readonly Tag[]
  /** Current-carrying conductors of the power cables in it. */
  readonly loadedConductorCount: number
  readonly fill: Outcome<{ boreMm: number; cableAreaMm2: number; cableCount: number }, { fillPercent: number }>
  readonly fillComparison: Comparison | null
}

/** Length of a cable in metres, or null when it could not be worked out. */
export function cableLengthM(run: CableRun | undefined): number | null {
  if (run === undefined || run.length.status === 'not computed') return null
  return run.length.status === 'declared' ? run.length.cableLengthM : run.length.output.cableLengthM
}

// --- feeding ---------------------------------------------------------------------------------------------------------
export interface FeedingResults {
  readonly byCircuit: ReadonlyMap<Tag, CircuitFeed>
  readonly findings: readonly Finding[]
}
export interface CircuitFeed {
  /** Circuits from the source down to and including this one; empty when no source is reached. */
  readonly chain: readonly Tag[]
  /** A battery, or equipment from whose output the chain starts: a shore inlet, generator, inverter, converter. */
  readonly sourceTag: Tag | null
  readonly nominalVoltageV: number | null
  readonly supplyForm: SupplyForm | null
  readonly frequencyHz: number | null
  readonly designCurrent: Outcome<{ connectedCurrentA: number; demandFactor: number; largestCurrentA: number }, { designCurrentA: number }>
    | { readonly status: 'declared'; readonly designCurrentA: number }
  /** What the design current is the sum of; when it is declared, what is known of its loads. */
  readonly currentParts: readonly CurrentPart[]
  /**
   * What sources put in through this circuit towards its own source: of a charging circuit its source's current, of a
   * feeder the sum of the charging circuits below it. Null where nothing is put in.
   */
  readonly infeed: Infeed | null
  /** Cables between the distribution point and the circuit's protective device. */
  readonly supplySegments: readonly Segment[]
  /** Cables downstream of the protective device, as a tree walked outwards. */
  readonly segments: readonly Segment[]
  /** Loads of the circuit that its cables reach. */
  readonly reachedTags: readonly Tag[]
  readonly unreachedTags: readonly Tag[]
}
export interface Infeed {
  /** Null when the current of one of them is not recorded. */
  readonly currentA: number | null
  readonly parts: readonly CurrentPart[]
  /** A charging circuit: all that it lists puts current in. Its design current is what is put in. */
  readonly only: boolean
}
/** A load of a circuit, or a circuit fed from what it feeds. */
export interface CurrentPart {
  readonly tag: Tag
  readonly currentA: number
  readonly demandFactor: number
  /** How the current was worked out, where it is not recorded. */
  readonly by?: Computed<Quantities, Quantities>
  readonly from: 'maximum current' | 'typical current' | 'power' | 'circuit' | 'output' | 'input'
}
/** Design current of a circuit in amperes, or null when it could not be worked out. */
export function designCurrentA(feed: Pick<CircuitFeed, 'designCurrent'> | undefined): number | null {
  if (feed === undefined || feed.designCurrent.status === 'not computed') return null
  return feed.designCurrent.status === 'declared' ? feed.designCurrent.designCurrentA : feed.designCurrent.output.designCurrentA
}
/** Every cable of a circuit once: those walked, supply side first, and those named for the way back. */
export const cableTagsOf = (circuit: Circuit, feed: CircuitFeed | undefined): readonly Tag[] =>
  [...new Set([...feed?.supplySegments ?? [], ...feed?.segments ?? []].map(({ cableTag }) => cableTag).concat(circuit.returnCableTags))]

/** One cable of a circuit, seen from the source. */
export interface Segment {
  readonly cableTag: Tag
  readonly nearTag: Tag
  readonly farTag: Tag
  /** Position in `segments` of the segment before it, or null at the start. */
  readonly parent: number | null
  /**
   * Current of this circuit in the cable: the sum of the design currents beyond it, or null when one of them is not
   * known. A cable that supplies several circuits stands in each of them with that circuit's own current.
   */
  readonly currentA: number | null
  /** Of that, or against it, what charging sources beyond put in towards the source; 0 where there is none, null when not known. */
  readonly putInA: number | null
}

// --- conductors ------------------------------------------------------------------------------------------------------
export interface CapacityResults {
  readonly byCable: ReadonlyMap<Tag, CableCapacity>
  readonly findings: readonly Finding[]
}
export interface CableCapacity {
  /** The circuit it belongs to; null when none reaches it. */
  readonly circuitTag: Tag | null
  readonly outcome: Outcome<
    { tableCurrentA: number; parallelCount: number; ambientFactor: number; bundleFactor: number },
    { currentCarryingCapacityA: number }
  >
  /** The row, column and conditions by which the table was entered, in words. */
  readonly lookup: readonly { readonly label: string; readonly text: string }[]
  /** The same with the bundle factor where the basis does not require it; advice only. */
  readonly bundledAdviceA: number | null
  readonly comparison: Comparison | null
}

export interface VoltageDropResults {
  readonly byCircuit: ReadonlyMap<Tag, CircuitDrop>
  readonly findings: readonly Finding[]
}
export interface CircuitDrop {
  /** For a final circuit the drop to each load; for a feeder to each distribution point it feeds. */
  readonly toLoads: readonly LoadDrop[]
  /** The load with the largest drop; null when none could be computed. */
  readonly worst: LoadDrop | null
  /** Reasons why a load, or the whole circuit, is not assessed. */
  readonly notAssessed: readonly { readonly loadTag: Tag | null; readonly reason: string }[]
}
export interface LoadDrop {
  readonly loadTag: Tag
  /** From the source to the load, feeder segments first. */
  readonly steps: readonly DropStep[]
  readonly nominalVoltageV: number
  readonly voltageDropV: number
  readonly voltageDropPercent: number
  /** By the conductor's real resistance at its temperature, whatever constant the basis prescribes; null when a step has none. */
  readonly physicalDropV: number | null
  readonly physicalDropPercent: number | null
  readonly comparison: Comparison
  /** The physical drop against the same limit; null when there is none. */
  readonly physicalComparison: Comparison | null
}
export interface DropStep {
  readonly circuitTag: Tag
  readonly cableTag: Tag
  /** True when the way back is taken to be like the way out, for want of named return cables. */
  readonly returnAssumedAlike: boolean
  /** Alike conductors that share the current; the working is that of one of them. */
  readonly parallelCount: number
  readonly byBasis: Computed<Quantities, { voltageDropV: number }>
  readonly physical: Outcome<Quantities, { voltageDropV: number }>
}

// --- protection and size ---------------------------------------------------------------------------------------------
export interface ProtectionResults {
  readonly byCircuit: ReadonlyMap<Tag, CircuitProtection>
  readonly findings: readonly Finding[]
}
export interface CircuitProtection {
  readonly ratedCurrentA: number | null
  readonly designCurrentA: number | null
  /** The cable with the least capacity between the device and the next one. */
  readonly weakestCableTag: Tag | null
  readonly weakestCapacityA: number | null
  readonly againstLoad: Comparison | null
  readonly againstCapacity: Comparison | null
  readonly notAssessed: readonly string[]
}

export interface SizeResults { readonly byCircuit: ReadonlyMap<Tag, SizeAdvice> }
/** The smallest standard size that meets both drop and capacity for the whole circuit in one size. */
export type SizeAdvice =
  | {
      readonly status: 'computed'
      readonly mm2: SizeChoice | null
      readonly awg: SizeChoice | null
      /** What the fitted cable would allow, drop and capacity; null where the circuit has more than one cable. */
      readonly asFitted: { readonly cableTag: Tag; readonly longestRunM: number; readonly largestCurrentA: number } | null
      readonly input: Readonly<{
        designCurrentA: number
        /** The larger of the design current and the rating of the protective device: what the conductor must carry. */
        requiredCapacityA: number
        /** Out and back, along the longest way to a load. */
        conductorLengthM: number
        /** The limit less what the feeders above lose. */
        allowedDropV: number
        /** The same by resistance; null when the drop of a feeder by resistance is not known. */
        allowedPhysicalDropV: number | null
        /** Of the hottest zone passed. */
        ambientC: number
        insulationC: number
        ambientFactor: number
        bundleFactor: number
      }>
    }
  | { readonly status: 'not computed'; readonly reason: string }
export interface SizeChoice {
  readonly designation: string
  readonly byDropMm2: number
  readonly capacityA: number
  /** What decides. */
  readonly governedBy: 'voltage drop' | 'voltage drop by resistance' | 'current-carrying capacity' | 'minimum size'
}
