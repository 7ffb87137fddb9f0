/** The kinds of entry a vessel folder holds, each with its schema. */
import type { z } from 'zod'
import { type KindKey, kindNames } from '../../load/entry-kinds.js'
import { batterySchema, busbarSchema, equipmentSchema, modelSchema, panelSchema } from './items.schema.js'
import { canBusSchema, ethernetNetworkSchema, outsideLinkSchema, serialLinkSchema, wirelessNetworkSchema } from './networks.schema.js'
import { pointSchema, systemSchema, wirewaySchema, zoneSchema } from './place.schema.js'
import { standingPlaceSchema, structureSchema } from './placement.schema.js'
import { credentialSchema, settingSchema } from './record.schema.js'
import { dutySchema, measurementSchema, operatingModeSchema } from './use.schema.js'
import { changeSchema, vesselSchema } from './vessel.schema.js'
import { cableSchema, cableTypeSchema, circuitSchema } from './wiring.schema.js'

export { type KindKey, kindKeys } from '../../load/entry-kinds.js'

interface EntryKind { readonly shape: 'single' | 'list'; readonly entry: string; readonly nameField: string; readonly schema: z.ZodType; readonly about: string }

const kind = <K extends KindKey, S extends z.ZodType>(key: K, schema: S, about: string) => ({ ...kindNames[key], schema, about })

export const entryKinds = {
  'vessel': kind('vessel', vesselSchema, 'The vessel: identity, document control, basis, conditions.'),
  'changes': kind('changes', changeSchema, 'What each issue of the pack changed.'),
  'systems': kind('systems', systemSchema, 'The systems that equipment belongs to.'),
  'zones': kind('zones', zoneSchema, 'The spaces of the boat.'),
  'wireway-points': kind('wireway-points', pointSchema, 'Places where wireways meet, besides the zones themselves.'),
  'wireways': kind('wireways', wirewaySchema, 'The stretches that cables run through.'),
  'models': kind('models', modelSchema, 'The catalogue: what is true of every unit of a model.'),
  'cable-types': kind('cable-types', cableTypeSchema, 'Types of cable.'),
  'equipment': kind('equipment', equipmentSchema, 'Everything fitted that is not listed below.'),
  'batteries': kind('batteries', batterySchema, 'Battery banks.'),
  'busbars': kind('busbars', busbarSchema, 'Busbars for power.'),
  'panels': kind('panels', panelSchema, 'Panels, fuse blocks and electronic switching modules.'),
  'circuits': kind('circuits', circuitSchema, 'Everything downstream of one protective device, up to the next.'),
  'cables': kind('cables', cableSchema, 'Every labelled cable, with both ends.'),
  'can-buses': kind('can-buses', canBusSchema, 'CAN buses, as built.'),
  'serial-links': kind('serial-links', serialLinkSchema, 'Serial links, one talker each.'),
  'ethernet-networks': kind('ethernet-networks', ethernetNetworkSchema, 'Ethernet networks.'),
  'wireless-networks': kind('wireless-networks', wirelessNetworkSchema, 'Wireless networks on board.'),
  'outside-links': kind('outside-links', outsideLinkSchema, 'Links to the outside: mobile data, satellite, the network of a harbour.'),
  'structures': kind('structures', structureSchema, 'What stands in the way of radar beams, lights and the sky.'),
  'standing-places': kind('standing-places', standingPlaceSchema, 'Where people stand, sit or sleep.'),
  'settings': kind('settings', settingSchema, 'Settings of devices worth keeping.'),
  'credentials': kind('credentials', credentialSchema, 'How to log in; kept out of the editions that must not carry it. Documents go into every edition as they are.'),
  'operating-modes': kind('operating-modes', operatingModeSchema, 'The ways in which the boat is used: at anchor, under way, in harbour.'),
  'duties': kind('duties', dutySchema, 'What runs in each operating mode, and when: loads and sources.'),
  'measurements': kind('measurements', measurementSchema, 'What was measured, to be held against what was calculated.'),
} as const satisfies Record<KindKey, EntryKind>

/** An entry that passed its schema: quantities are numbers, keys still as in the file. */
export type Entry<K extends KindKey> = z.output<(typeof entryKinds)[K]['schema']>
