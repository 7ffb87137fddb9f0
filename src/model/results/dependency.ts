/** What needs what: the chain of each item to its source, what goes dead with each device, single points behind safety services. */
import type { Finding } from '../../findings/finding.js'
import type { SafetyService, Tag } from '../vessel.js'
import type { Gap } from './gap.js'

export interface DependencyResults {
  /** For each item, where to look when it is dead. */
  readonly traces: ReadonlyMap<Tag, Trace>
  /** For each circuit, item, cable, bus and part of a backbone, what is lost with it; none where nothing is. */
  readonly losses: ReadonlyMap<Tag, readonly Effect[]>
  /** Every service, the most pressing first, those that nothing on board gives included. */
  readonly services: readonly ServiceDependency[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

export interface Trace {
  /** Each way by which it is supplied in normal use, then those that must be closed first. */
  readonly supplies: readonly SupplyLine[]
  readonly data: readonly DataLine[]
}
export interface SupplyLine {
  /** The circuit; null where it lives on a network. */
  readonly circuitTag: Tag | null
  /** Nothing comes this way until it is closed. */
  readonly open: boolean
  /** Nearest to the item first, the source last. */
  readonly steps: readonly TraceStep[]
}
export interface TraceStep {
  readonly tag: Tag
  readonly what: 'device' | 'switch' | 'joint' | 'panel' | 'busbar' | 'battery' | 'source' | 'bus' | 'network switch'
  /** Cables from here towards the item, up to the step before. */
  readonly cableTags: readonly Tag[]
  /** Of a panel or busbar: further circuits that feed it, or can be closed to. */
  readonly otherFeedTags: readonly Tag[]
}
/** `giver`: an item whose data it needs. `network`: what it is a member of. `partner`: what it works with by its own cable. */
export interface DataLine {
  readonly is: 'giver' | 'network' | 'partner'
  readonly tag: Tag
  /** Cables and network parts between, nearest to the item first; null when no way is recorded. */
  readonly wayTags: readonly Tag[] | null
}

/**
 * `dead`: no supply. `no data`: supplied, and what it needs to know no longer comes. `cut off`: it has no supply of its
 * own, and nothing that it works with is left. `degraded`: it works, with something less.
 */
export type LossKind = 'dead' | 'no data' | 'cut off' | 'degraded'
export interface Effect {
  readonly tag: Tag
  readonly how: LossKind
  readonly causes: readonly Cause[]
  /** Circuits by which it can be brought back by hand: normally open ones to close, channels to bypass. */
  readonly restoreBy: readonly Tag[]
}
/** What it is that is lost: a circuit's supply, a giver's data, a network, a partner, a way for what it charges. */
export interface Cause { readonly of: 'supply' | 'giver' | 'network' | 'partner' | 'charging'; readonly tag: Tag | null }

export interface ServiceDependency {
  readonly service: SafetyService
  readonly itemTags: readonly Tag[]
  /** Items that give it, of which no supply is recorded that could be followed: they do not count. */
  readonly notAssessedTags: readonly Tag[]
  /** Each thing that takes the whole service with it, least loss first. */
  readonly takesAll: readonly SinglePoint[]
  /** Each thing that takes part of it. */
  readonly takesSome: readonly SinglePoint[]
}
export interface SinglePoint {
  readonly tag: Tag
  readonly lostTags: readonly Tag[]
  /** Circuits by which all that is lost can be brought back by hand; empty where some of it cannot. */
  readonly restoreBy: readonly Tag[]
}
