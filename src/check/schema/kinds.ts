/** The kinds of entry a vessel folder holds, each with its schema. */
import type { z } from 'zod'
import { type KindKey, kindNames } from '../../load/entry-kinds.js'
import { batterySchema, busbarSchema, equipmentSchema, modelSchema, panelSchema } from './items.schema.js'
import { arrangementDrawingSchema, photographSchema } from './location.schema.js'
import { maintenanceRecordSchema, maintenanceTaskSchema, runningHoursSchema } from './maintenance.schema.js'
import { absenceSchema, acceptedDeviationSchema, labelSizeSchema, manualContentSchema, procedureSchema } from './manual.schema.js'
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
  'photographs': kind('photographs', photographSchema, 'Photographs of what is where, with numbered call-outs. They go into every edition of the pack.'),
  'arrangement-drawings': kind('arrangement-drawings', arrangementDrawingSchema, 'The yard’s own plan or profile of the boat, to draw the zones over.'),
  'procedures': kind('procedures', procedureSchema, 'How this boat is worked, in the yard’s own words; best as a Markdown file of the folder `procedures`, with these keys between two lines of `---` at its head.'),
  'absences': kind('absences', absenceSchema, 'What the manual asks for and this boat does not have, with the reason.'),
  'maintenance-tasks': kind('maintenance-tasks', maintenanceTaskSchema, 'Maintenance of this boat: tasks of her own, and what differs from the general ones.'),
  'maintenance-records': kind('maintenance-records', maintenanceRecordSchema, 'Maintenance that was done.'),
  'running-hours': kind('running-hours', runningHoursSchema, 'Readings of the counters of running hours.'),
  'manual-contents': kind('manual-contents', manualContentSchema, 'Contents that standards ask of an owner’s manual and that this pack does not hold: where they are, or why there are none.'),
  'accepted-deviations': kind('accepted-deviations', acceptedDeviationSchema, 'Findings that the yard accepts. They stay in the pack, marked.'),
  'label-sizes': kind('label-sizes', labelSizeSchema, 'Sizes of label sheets and wrap-around labels, besides those that the program knows.'),
} as const satisfies Record<KindKey, EntryKind>

/** An entry that passed its schema: quantities are numbers, keys still as in the file. */
export type Entry<K extends KindKey> = z.output<(typeof entryKinds)[K]['schema']>
