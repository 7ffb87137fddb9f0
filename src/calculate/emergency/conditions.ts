/** What of a boat makes a need, as the data show it. */
import { isThere } from '../../model/lookup.js'
import type { Equipment, SpaceKind, Tag, Vessel } from '../../model/vessel.js'
import type { NeedCondition } from '../../references/emergency-needs.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'

/** Tags of what makes the need, none where every boat has it; null: this boat does not have it. */
export type Because = readonly Tag[] | null

const tagsOf = (things: readonly { readonly tag: Tag }[]): Because => (things.length === 0 ? null : things.map(({ tag }) => tag))

const equipmentOf = ({ equipment }: Vessel, ...kinds: readonly EquipmentKindKey[]): readonly Equipment[] =>
  equipment.filter(item => isThere(item) && kinds.some(kind => kind === item.kind))
const zonesOf = ({ zones }: Vessel, space: SpaceKind) => zones.filter(zone => zone.space === space)

/** An engine in a machinery space is an inboard one, and takes sea water through the hull. */
const inboardEngines = (vessel: Vessel): readonly Equipment[] => {
  const machinery = new Set(zonesOf(vessel, 'machinery').map(({ tag }) => tag))
  return equipmentOf(vessel, 'engine', 'generator').filter(({ zoneTag }) => zoneTag !== null && machinery.has(zoneTag))
}

/** Nothing but the rudder's own gear tells that there is a rudder. */
const rudderGear = (vessel: Vessel): readonly Equipment[] => equipmentOf(vessel, 'steering pump', 'autopilot drive', 'rudder sensor')
const hasOneWayToDrive = (vessel: Vessel): boolean => vessel.identity.propulsion === 'sailing' || equipmentOf(vessel, 'engine').length < 2

export const becauseOf: Readonly<Record<NeedCondition, (vessel: Vessel) => Because>> = {
  'any boat': () => [],
  'engine': vessel => tagsOf(equipmentOf(vessel, 'engine')),
  // Not gas detectors: alarms for fuel vapour and carbon monoxide are entered as such too.
  'gas': vessel => tagsOf(equipmentOf(vessel, 'gas appliance', 'gas cylinder')),
  'closed spaces': vessel => tagsOf(zonesOf(vessel, 'interior')),
  'bilge': vessel => tagsOf([...equipmentOf(vessel, 'bilge pump'), ...zonesOf(vessel, 'bilge')]),
  'sea water': vessel => tagsOf([...inboardEngines(vessel), ...equipmentOf(vessel, 'toilet', 'air conditioner')]),
  'battery': vessel => tagsOf(vessel.batteries.filter(isThere)),
  'shore power': vessel => tagsOf(equipmentOf(vessel, 'shore inlet', 'galvanic isolator', 'polarity indicator')),
  'machinery space': vessel => tagsOf(zonesOf(vessel, 'machinery')),
  'open water': ({ identity: { designCategory } }) => (designCategory === 'A' || designCategory === 'B' ? [] : null),
  'rudder and one way to drive': vessel => (hasOneWayToDrive(vessel) ? tagsOf(rudderGear(vessel)) : null),
  'rudder and more ways to drive': vessel => (hasOneWayToDrive(vessel) ? null : tagsOf(rudderGear(vessel))),
}
