/** Compass safe distance: what it means, and what to keep where nothing is declared. */
import type { CompassClass } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'
import type { EquipmentKindKey } from '../equipment-kinds.js'

/** What an item may turn a compass by, at a horizontal flux density of 1 µT. */
export const deviationAt1MicroTDeg = { standard: 5.4, steering: 18 } as const
/** A flux-gate sensor is held to what a standard compass is, for which its makers ask as a rule. Common practice, no source. */
export const heldTo: Readonly<Record<Exclude<CompassClass, 'none'>, 'standard' | 'steering'>> = { 'standard': 'standard', 'steering': 'steering', 'flux-gate': 'standard' }

export const declaredCitation: Citation = { source: 'makers-data', place: 'compass safe distance by IEC 60945' }

/** From a standard or steering compass to what declares no distance. */
export const undeclared = { distanceM: 5, citation: { source: 'iso-25862', place: 'E.5.3: at least 5 m where the distance is not known' } } as const

/** What holds iron, magnets, motors or strong currents. Common practice, no source. */
export const magneticKinds: ReadonlySet<string> = new Set<EquipmentKindKey>([
  'loudspeaker', 'audio unit', 'microphone', 'vhf handset', 'vhf transceiver', 'horn', 'display', 'instrument', 'alarm panel', 'computer', 'radar scanner', 'radar power unit',
  'engine', 'starter motor', 'alternator', 'generator', 'thruster', 'gyro stabiliser', 'autopilot computer', 'autopilot drive', 'steering pump', 'trim tab',
  'windlass', 'winch', 'wiper', 'fan', 'searchlight', 'inverter', 'inverter charger', 'charger', 'isolation transformer', 'satellite antenna',
])
