/** Kinds of equipment that run software, that are set up when they are fitted, and that are logged in to. Common practice, no source. */
import type { EquipmentKindKey } from './equipment-kinds.js'

const kinds = (...keys: readonly EquipmentKindKey[]): ReadonlySet<string> => new Set<string>(keys)

/** Whose version a service shop asks for first. */
export const runsSoftware = kinds(
  'display', 'instrument', 'computer', 'radar scanner', 'thermal camera', 'sonar module', 'attitude and heading sensor', 'heading sensor', 'gnss receiver',
  'vhf transceiver', 'ais transceiver', 'satellite antenna', 'mobile-data router', 'wireless access point', 'network switch', 'gateway', 'engine gateway',
  'serial multiplexer', 'autopilot computer', 'gyro stabiliser', 'inverter charger', 'solar charge controller', 'battery monitor',
)

/** Which do not work as before until somebody has set them as they were. */
export const isSetUp = kinds('autopilot computer', 'heading sensor', 'attitude and heading sensor', 'ais transceiver', 'vhf transceiver', 'radar scanner', 'sonar module', 'mobile-data router')

export const isLoggedInTo = kinds('mobile-data router', 'wireless access point')

/** Which send the vessel's own identity. */
export const sendsIdentity = kinds('ais transceiver', 'vhf transceiver')
