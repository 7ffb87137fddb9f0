/** Connectors of serial links: which port an end means, and what is recorded of it. */
import { lookup } from '../../model/lookup.js'
import type { CableEnd, Port, SerialLink, Vessel } from '../../model/vessel.js'
import { equipmentKinds, isEquipmentKind } from '../../references/equipment-kinds.js'

/** An end that names no connector means the only serial one of its item. */
export function portOf(vessel: Vessel, { tag, terminal }: CableEnd): Port | null {
  const ports = lookup(vessel).equipment.get(tag)?.ports ?? []
  if (terminal !== null) return ports.find(({ name }) => name === terminal) ?? null
  const serial = ports.filter(({ kind }) => kind === 'serial')
  return serial.length === 1 ? serial[0]! : null
}

/** The same for two ends at one connector. */
export const connectorOf = (vessel: Vessel, end: CableEnd): string => `${end.tag}:${portOf(vessel, end)?.name ?? end.terminal ?? ''}`

/** Whether it is known which connector is meant: two ends that only name an item may be at two connectors. */
export const isNamed = (vessel: Vessel, end: CableEnd): boolean => end.terminal !== null || portOf(vessel, end) !== null

export const isInUse = (vessel: Vessel, { tag }: CableEnd): boolean => lookup(vessel).equipment.get(tag)?.status !== 'removed'

/** Terminal blocks, junction boxes, connectors: a wire may end there on its way. */
export function isOnTheWay(vessel: Vessel, { tag }: CableEnd): boolean {
  const kind = lookup(vessel).equipment.get(tag)?.kind
  return kind !== undefined && isEquipmentKind(kind) && equipmentKinds[kind].joins !== 'nothing'
}

/** Links of which the talker is there. */
export const linksInUse = (vessel: Vessel): readonly SerialLink[] => vessel.serialLinks.filter(({ talker }) => isInUse(vessel, talker))
export const listenersInUse = (vessel: Vessel, { listeners }: SerialLink): readonly CableEnd[] => listeners.filter(end => isInUse(vessel, end))
