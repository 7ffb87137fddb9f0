/**
 * What must be at hand, or known, in each emergency, on which boats. A boat that does without says so among its absences.
 * Where no source is named, the choice is ours.
 */
import { type Citation, commonPractice } from './bibliography.js'
import { type EquipmentKindKey, equipmentKind } from './equipment-kinds.js'
import type { EmergencyTask } from './procedure-places.js'

/** What of a boat makes the need; `calculate/emergency/conditions.ts` reads it in the data. */
export type NeedCondition =
  | 'any boat' | 'engine' | 'gas' | 'closed spaces' | 'bilge' | 'sea water' | 'battery' | 'shore power' | 'machinery space' | 'open water'
  | 'rudder and one way to drive' | 'rudder and more ways to drive'

export interface EmergencyNeed {
  readonly key: string
  /** In a sentence: "no … is recorded". */
  readonly words: string
  /** Pages on which it is looked for. */
  readonly tasks: readonly EmergencyTask[]
  /** Any of them answers the need. */
  readonly kinds: readonly EquipmentKindKey[]
  readonly on: NeedCondition
  readonly weight: 'needed' | 'advised'
  readonly citation: Citation
}

const directive = (place: string): Citation => ({ source: 'eu-2013-53', place: `annex I, part A, ${place}` })

/** In the order of the pages. */
export const emergencyNeeds: readonly EmergencyNeed[] = [
  { key: 'isolator', words: 'battery isolator', tasks: ['isolate', 'fire', 'loss-of-supply'], kinds: ['battery isolator', 'source selector'], on: 'battery', weight: 'needed', citation: { source: 'iso-13297', place: 'battery isolators', standing: 'from memory' } },
  { key: 'shore-inlet', words: 'shore inlet', tasks: ['isolate', 'fire', 'flooding'], kinds: ['shore inlet'], on: 'shore power', weight: 'needed', citation: commonPractice('what stays live with the isolators open') },
  { key: 'engine-stop', words: 'engine stop', tasks: ['isolate', 'fire', 'loss-of-steering', 'person-overboard'], kinds: ['engine stop'], on: 'engine', weight: 'needed', citation: commonPractice('an engine must stop when its lever or its current is gone') },
  { key: 'fuel-shut-off', words: 'fuel shut-off valve', tasks: ['fire', 'loss-of-steering'], kinds: ['fuel shut-off valve'], on: 'engine', weight: 'needed', citation: directive('5.2') },
  { key: 'gas-shut-off', words: 'gas shut-off valve', tasks: ['fire'], kinds: ['gas shut-off valve'], on: 'gas', weight: 'needed', citation: directive('5.5, and ISO 10239') },
  { key: 'extinguisher', words: 'fire extinguisher', tasks: ['fire'], kinds: ['fire extinguisher'], on: 'any boat', weight: 'needed', citation: directive('5.6, and ISO 9094') },
  { key: 'fixed-extinguisher', words: 'fixed fire extinguisher', tasks: ['fire'], kinds: ['fixed fire extinguisher'], on: 'machinery space', weight: 'advised', citation: directive('5.6, and ISO 9094') },
  { key: 'escape-hatch', words: 'escape hatch', tasks: ['fire'], kinds: ['escape hatch'], on: 'closed spaces', weight: 'advised', citation: directive('3.8, and ISO 9094') },
  { key: 'bilge-pump', words: 'bilge pump', tasks: ['flooding'], kinds: ['bilge pump', 'manual bilge pump'], on: 'bilge', weight: 'needed', citation: directive('3.5') },
  { key: 'manual-bilge-pump', words: 'bilge pump worked by hand', tasks: ['flooding'], kinds: ['manual bilge pump'], on: 'bilge', weight: 'needed', citation: commonPractice('one pump that needs no current') },
  { key: 'seacock', words: 'seacock', tasks: ['flooding'], kinds: ['seacock'], on: 'sea water', weight: 'needed', citation: directive('3.4') },
  { key: 'emergency-tiller', words: 'emergency tiller', tasks: ['loss-of-steering'], kinds: ['emergency tiller'], on: 'rudder and one way to drive', weight: 'needed', citation: directive('5.4') },
  { key: 'second-tiller', words: 'emergency tiller', tasks: ['loss-of-steering'], kinds: ['emergency tiller'], on: 'rudder and more ways to drive', weight: 'advised', citation: commonPractice('two engines steer badly, and not at all when one is gone') },
  { key: 'lifebuoy', words: 'lifebuoy', tasks: ['person-overboard'], kinds: ['lifebuoy'], on: 'any boat', weight: 'needed', citation: commonPractice('something to throw at once') },
  { key: 'boarding-ladder', words: 'boarding ladder', tasks: ['person-overboard'], kinds: ['boarding ladder'], on: 'any boat', weight: 'needed', citation: directive('2.3, and ISO 15085') },
  { key: 'call-for-help', words: 'radio, beacon or distress signals', tasks: ['fire', 'flooding', 'person-overboard'], kinds: ['vhf transceiver', 'safety beacon', 'distress signals'], on: 'any boat', weight: 'needed', citation: commonPractice('a way to call for help') },
  { key: 'lifejackets', words: 'lifejackets', tasks: ['fire', 'flooding', 'person-overboard'], kinds: ['lifejackets'], on: 'any boat', weight: 'advised', citation: commonPractice('one for each person') },
  { key: 'liferaft', words: 'liferaft', tasks: ['fire', 'flooding'], kinds: ['liferaft'], on: 'open water', weight: 'advised', citation: directive('3.7') },
  { key: 'torch', words: 'torch', tasks: ['loss-of-supply'], kinds: ['torch'], on: 'battery', weight: 'advised', citation: commonPractice('light when the supply is gone') },
]

const kindsNeeded: readonly string[] = [...new Set(emergencyNeeds.flatMap(({ kinds }) => kinds))]
/** Kinds that some need asks for. */
export const isNeededKind = (kind: string): boolean => kindsNeeded.includes(kind)

/** Of these, kinds that are part of no circuit: whoever enters one has begun to record what an emergency needs. */
export const isEmergencyGear = (kind: string): boolean => isNeededKind(kind) && equipmentKind(kind).draw === 'nothing'
