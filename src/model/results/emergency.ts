/** What the emergency pages need to know of this boat. */
import type { Finding } from '../../findings/finding.js'
import type { EmergencyTask } from '../../references/procedure-places.js'
import type { SafetyService, Tag } from '../vessel.js'
import type { BatteryDay } from './energy.js'
import type { Gap } from './gap.js'

export interface EmergencyResults {
  /** Every need that this boat has. */
  readonly needs: readonly NeedAnswer[]
  /** In the order in which they are opened. */
  readonly isolators: readonly Isolator[]
  /** What stays live when every isolator is open, a row for each circuit that leaves a source. */
  readonly alwaysLive: readonly AlwaysLive[]
  /** How long each bank carries that while nobody charges it. */
  readonly unattended: readonly Unattended[]
  /** What puts current in beyond the isolators. */
  readonly feedBacks: readonly FeedBack[]
  readonly banks: readonly Loss[]
  /** Normally open circuits from a battery. */
  readonly links: readonly BankLink[]
  /** Loads that can be spared, the heaviest first. */
  readonly shedding: readonly Shed[]
  readonly pumps: readonly PumpSupply[]
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}

/** `absent`: the boat has none, for the reasons given. */
export interface NeedAnswer {
  readonly key: string
  readonly tasks: readonly EmergencyTask[]
  readonly kinds: readonly string[]
  readonly state: 'recorded' | 'absent' | 'not recorded'
  readonly itemTags: readonly Tag[]
  readonly reasons: readonly string[]
  /** What on board makes the need. */
  readonly becauseTags: readonly Tag[]
}

/** What ends when one thing is gone. */
export interface Loss {
  readonly tag: Tag
  /** Without supply, without data they need, or with nothing left to work with. */
  readonly endedTags: readonly Tag[]
  /** Each service that loses something. */
  readonly services: readonly ServiceLoss[]
  /** Links by which some of it comes back. */
  readonly linkTags: readonly Tag[]
}
/** `ended`: what is left does not give it, engines without levers or levers without engines. */
export interface ServiceLoss { readonly service: SafetyService; readonly ended: boolean; readonly lostTags: readonly Tag[]; readonly leftTags: readonly Tag[] }

export interface Isolator extends Loss {
  /** Banks that it parts from what is behind it. */
  readonly batteryTags: readonly Tag[]
  /** Alternators that charge through it: their engines stop first. */
  readonly alternatorTags: readonly Tag[]
  readonly starterTags: readonly Tag[]
  /** In a link that is open in normal use: it is to stay open. */
  readonly inLink: boolean
}

export interface AlwaysLive {
  /** The circuit that leaves the battery or converter; its device cuts off all of the row. */
  readonly circuitTag: Tag
  readonly sourceTag: Tag
  /** Items that stay alive by it. */
  readonly itemTags: readonly Tag[]
  /** Nothing is recorded of its way, so that an isolator may stand in it all the same. */
  readonly assumed: boolean
}

export interface Unattended {
  readonly batteryTag: Tag
  /** Counted: not the bilge pumps, which run for seconds, and not engines, which stand. */
  readonly itemTags: readonly Tag[]
  /** Live, and of no known current. */
  readonly unknownTags: readonly Tag[]
  readonly loadCurrentA: number
  readonly endurance: BatteryDay['endurance']
}

export interface FeedBack {
  readonly sourceTag: Tag
  readonly circuitTag: Tag
  /** Busbar, panel or battery. */
  readonly ontoTag: Tag
}

export interface BankLink {
  readonly circuitTag: Tag
  /** Switches in its way. */
  readonly switchTags: readonly Tag[]
  readonly fromBatteryTag: Tag
  readonly ontoTag: Tag
  readonly ontoBatteryTags: readonly Tag[]
}

export interface Shed { readonly circuitTag: Tag; readonly meanCurrentA: number }

export interface PumpSupply {
  readonly pumpTag: Tag
  readonly byFloat: readonly PumpCircuit[]
  readonly byHand: readonly PumpCircuit[]
}
export interface PumpCircuit { readonly circuitTag: Tag; readonly alwaysLive: boolean }
