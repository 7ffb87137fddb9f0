/** Which keys refer to what: the table that the check of references follows. */
import type { KindKey } from '../load/entry-kinds.js'
import type { NamedThing } from '../load/named-things.js'

export interface Expected {
  readonly kinds: readonly NamedThing['kind'][]
  /** "a battery, busbar or panel" */
  readonly inWords: string
  /** Key that equipment must have to stand there. */
  readonly equipmentNeeds?: string
}
/**
 * `list`: a list of names, or words in a text. `cable end`: a name, perhaps with `:terminal`. `list of cable ends`: both.
 * `wire end`: like a cable end, the terminal being a pin or screw of a connector, which no list of ports holds. `in text`: the tags
 * that a text in Markdown names as `[[P1]]`.
 */
type Form = 'name' | 'list' | 'cable end' | 'list of cable ends' | 'wire end' | 'in text'
export interface ReferenceField {
  /** Keys as in the file; `*` for each item of a list. */
  readonly path: readonly string[]
  readonly expected: Expected
  readonly form: Form
}

const zone: Expected = { kinds: ['zones'], inWords: 'a zone' }
const system: Expected = { kinds: ['systems'], inWords: 'a system' }
const point: Expected = { kinds: ['wireway-points', 'zones'], inWords: 'a wireway point or zone' }
const wireway: Expected = { kinds: ['wireways'], inWords: 'a wireway' }
const model: Expected = { kinds: ['models'], inWords: 'a model' }
const cableType: Expected = { kinds: ['cable-types'], inWords: 'a cable type' }
const cable: Expected = { kinds: ['cables'], inWords: 'a cable' }
const circuit: Expected = { kinds: ['circuits'], inWords: 'a circuit' }
const supply: Expected = { kinds: ['batteries', 'busbars', 'panels', 'equipment'], inWords: 'a battery, busbar or panel, or equipment with outputs', equipmentNeeds: 'outputs' }
const load: Expected = { kinds: ['equipment', 'panels', 'busbars'], inWords: 'equipment, a panel or a busbar' }
/** A switching module and a battery with its own electronics are devices on a bus too. */
const device: Expected = { kinds: ['equipment', 'panels', 'batteries'], inWords: 'equipment, a panel or a battery' }
const equipment: Expected = { kinds: ['equipment'], inWords: 'equipment' }
const runs: Expected = { kinds: ['equipment', 'circuits'], inWords: 'equipment or a circuit' }
const mode: Expected = { kinds: ['operating-modes'], inWords: 'an operating mode' }
const measured: Expected = { kinds: ['circuits', 'cables', 'can-buses', 'batteries', 'equipment', 'busbars', 'panels'], inWords: 'a circuit, a cable, a CAN bus or an item' }
/** Where a circuit or a CAN bus was measured. */
const readAt: Expected = { kinds: [...load.kinds, 'batteries', 'backbone'], inWords: 'a load, a device or a part of a CAN backbone' }
/** What gives data: a device on a network, or a link to the outside. */
const dataSource: Expected = { kinds: [...device.kinds, 'outside-links'], inWords: 'equipment, a panel, a battery or an outside link' }
const ethernetNetwork: Expected = { kinds: ['ethernet-networks'], inWords: 'an Ethernet network' }
const opened: Expected = { kinds: [...device.kinds, 'wireless-networks', 'outside-links'], inWords: 'a device, a wireless network or an outside link' }
const item: Expected = { kinds: ['equipment', 'batteries', 'busbars', 'panels'], inWords: 'an item' }
/** A residual-current breaker is a circuit. */
const maintained: Expected = { kinds: [...item.kinds, 'circuits'], inWords: 'an item or a circuit' }
/** Whatever has a page. */
const anything: Expected = {
  kinds: [...item.kinds, 'circuits', 'cables', 'zones', 'systems', 'wireways', 'wireway-points', 'can-buses', 'serial-links', 'ethernet-networks', 'wireless-networks', 'outside-links', 'backbone'],
  inWords: 'anything with a tag',
}
const cableEnd: Expected = {
  kinds: ['circuits', 'equipment', 'batteries', 'busbars', 'panels', 'backbone'], inWords: 'a circuit or an item',
}

const field = (path: string, expected: Expected, form: Form = 'name'): ReferenceField => ({ path: path.split('.'), expected, form })
const notes = field('notes', anything, 'in text')
const itemPlace = [field('zone', zone), field('system', system), field('point', point), notes]

export const referenceFields: Readonly<Partial<Record<KindKey, readonly ReferenceField[]>>> = {
  'wireway-points': [field('zone', zone)],
  'wireways': [field('from', point), field('to', point), field('zones', zone, 'list')],
  'equipment': [
    ...itemPlace, field('model', model), field('data-from', dataSource, 'list'),
    field('streams.*.to', equipment, 'list'),
    field('galvanic-isolation', equipment), field('polarity-indicator', equipment),
  ],
  'batteries': itemPlace,
  'busbars': itemPlace,
  'panels': itemPlace,
  'circuits': [field('fed-from', supply, 'cable end'), field('loads', load, 'list'), field('zone', zone), field('return-cables', cable, 'list'),
    field('interlock', equipment)],
  'cables': [field('from', cableEnd, 'cable end'), field('to', cableEnd, 'cable end'), field('type', cableType), field('route', wireway, 'list'), notes],
  'can-buses': [
    field('backbone.*.segment', cable), field('backbone.*.drop', cable), field('backbone.*.zone', zone),
    field('backbone.*.device', device), field('backbone.*.circuit', circuit),
  ],
  'serial-links': [
    field('talker', equipment, 'cable end'), field('listeners', equipment, 'list of cable ends'),
    field('wires.*.from', equipment, 'wire end'), field('wires.*.to', equipment, 'wire end'), field('wires.*.cable', cable),
  ],
  'ethernet-networks': [field('switches', equipment, 'list')],
  'wireless-networks': [field('access-point', equipment), field('network', ethernetNetwork)],
  'outside-links': [field('equipment', equipment), field('antennas', equipment, 'list')],
  'standing-places': [field('zone', zone)],
  'settings': [field('item', device)],
  'credentials': [field('item', opened)],
  'duties': [field('item', runs), field('mode', mode)],
  'measurements': [field('subject', measured), field('at', readAt)],
  'photographs': [field('zone', zone), field('call-outs.*.item', anything)],
  'procedures': [field('about', anything, 'list'), field('text', anything, 'in text')],
  'maintenance-tasks': [field('items', maintained, 'list'), field('hours-of', item)],
  'maintenance-records': [field('item', maintained)],
  'running-hours': [field('item', item)],
}
