/** Which kinds of equipment give which service for the safety of the boat, where the author says nothing else. */
import type { SafetyService } from '../model/vessel.js'
import type { EquipmentKindKey } from './equipment-kinds.js'

export interface ServiceDefinition {
  readonly title: string
  readonly kinds: readonly EquipmentKindKey[]
  /** Each kind does what no other does (levers and engines, smoke and water alarms); else any item will do for the others. */
  readonly needsEachKind: boolean
  /** An item that no longer gets the data it needs gives it no more; a radio without a position can still speak. */
  readonly endsWithoutData: boolean
}

/** Common practice, no source: the choice of kinds is ours. A beacon or a smoke alarm with a battery of its own needs nothing on board. */
export const serviceDefinitions: Readonly<Record<SafetyService, ServiceDefinition>> = {
  'engine control': { title: 'Engine control', kinds: ['engine control', 'engine'], needsEachKind: true, endsWithoutData: true },
  'steering': { title: 'Steering', kinds: ['steering pump'], needsEachKind: false, endsWithoutData: true },
  'bilge pumping': { title: 'Bilge pumping', kinds: ['bilge pump'], needsEachKind: false, endsWithoutData: false },
  'distress radio': { title: 'Distress radio', kinds: ['vhf transceiver'], needsEachKind: false, endsWithoutData: false },
  'navigation lights': { title: 'Navigation lights', kinds: ['navigation light'], needsEachKind: false, endsWithoutData: false },
  'position': { title: 'Position', kinds: ['gnss receiver'], needsEachKind: false, endsWithoutData: true },
  'alarms': { title: 'Alarms', kinds: ['alarm panel', 'smoke alarm', 'gas detector', 'bilge alarm sensor'], needsEachKind: true, endsWithoutData: false },
}
/** Every service, the most pressing first. */
export const safetyServices = Object.keys(serviceDefinitions) as readonly SafetyService[]

/** Kinds that do their work without what they are joined to: they sound by themselves. */
export const worksAlone: ReadonlySet<string> = new Set<EquipmentKindKey>(['smoke alarm', 'gas detector'])

/** Kinds that live on a battery of their own, or may do so. */
export const livesAlone: ReadonlySet<string> = new Set<EquipmentKindKey>(['safety beacon', 'smoke alarm', 'gas detector'])

const byKind: ReadonlyMap<string, SafetyService> = new Map(safetyServices.flatMap(service => serviceDefinitions[service].kinds.map(kind => [kind, service] as const)))

/** The service that an item gives: what the author says, else what its kind says; null for none. */
export const safetyServiceOf = ({ kind, safetyService }: { readonly kind: string; readonly safetyService: SafetyService | null }): SafetyService | null =>
  safetyService ?? byKind.get(kind) ?? null
