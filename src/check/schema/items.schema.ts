/** Things with a tag and a place: equipment and the catalogue behind it, batteries, busbars, panels. */
import { z } from 'zod'
import { equipmentKindKeys } from '../../references/equipment-kinds.js'
import { aboveZero, date, filePath, listOf, numberBetween, oneOf, percentOf, position, quantity, tag, text, wholeNumber, yesNo } from './fields.js'
import { maintenanceFactsSchema } from './maintenance.schema.js'
import { forwardingSchema, messageSchema, mmsi, streamSchema } from './networks.schema.js'
import { depthOffsetSchema, navigationLightSchema, transducerSchema } from './placement.schema.js'
import { antennaSchema, portLossSchema, radarSchema, transmitterSchema } from './radio.schema.js'

export const networkLosses = ['hold', 'off', 'on'] as const
export const itemStatuses = ['planned', 'fitted', 'commissioned', 'removed'] as const

const documentRef = z.strictObject({ file: filePath('File in the vessel folder.'), title: text('What it is.') })

const itemFields = {
  tag: tag('Tag, unique in the vessel.'),
  name: text('What people on board call it.'),
  zone: tag('Zone it is in.').optional(),
  system: tag('System it belongs to.').optional(),
  point: tag('Wireway point its cables leave from; the zone’s own point when left out.').optional(),
  location: text('Where exactly, in words.').optional(),
  maker: text('Maker.').optional(),
  'model-name': text('Model, where there is no catalogue entry.').optional(),
  serial: text('Serial number.').optional(),
  status: oneOf(itemStatuses, 'How far the work is.').optional(),
  notes: text('Anything worth knowing.').optional(),
  'fitted-on': date('When it was fitted; maintenance is counted from it until it is first done.').optional(),
  'made-on': date('When it was made, where its life is counted from that.').optional(),
  'expires-on': date('The date marked on it: of flares, of a battery in a beacon, of a release.').optional(),
  documents: z.array(documentRef).describe('Files that go into the pack with it.').optional(),
}

const portSchema = z.strictObject({
  name: text('Name on the device.'),
  kind: oneOf(['power', 'ethernet', 'can bus', 'serial', 'coax', 'signal', 'video', 'audio', 'usb'], 'What is connected there.'),
  speed: quantity('data rate', 'Data rate.').optional(),
  'power-class': wholeNumber('IEEE 802.3 class it supplies or asks for.', { min: 0, max: 8 }).optional(),
  baud: listOf(z.coerce.number(), 'Rates that a serial connector can be set to.').optional(),
  direction: oneOf(['talks', 'listens', 'both'], 'Which way data flow at a serial connector.').optional(),
  'signal-current': quantity('current', 'What a serial talker can drive, or a listener takes.').optional(),
})

export const outputSchema = z.strictObject({
  terminal: text('Its terminal, as cables name it; may be left out where there is but one output.').optional(),
  form: oneOf(['dc', 'ac'], 'Direct or alternating current; when left out, ac for shore inlets, generators, inverters and isolation transformers, else dc.').optional(),
  voltage: aboveZero('voltage', 'Nominal voltage.'),
  frequency: quantity('frequency', 'Frequency of an a.c. output.').optional(),
  current: quantity('current', 'Current that it can give without a break.').optional(),
  'short-circuit-current': quantity('current', 'Current into a short circuit, as its maker states it.').optional(),
  'neutral-bonded': yesNo('Whether neutral is joined to the protective conductor at this source.').optional(),
  curve: z.array(z.strictObject({
    speed: quantity('speed', 'Speed of the engine.'),
    current: quantity('current', 'What it gives at that speed, hot.'),
  })).describe('What an alternator gives by the speed of its engine, slowest first.').optional(),
})

const loadEquivalency = wholeNumber('Load equivalency number on a CAN bus.', { min: 0, max: 250 })
const deviceInstance = wholeNumber('Device instance on its CAN bus; 0 when left out.', { min: 0, max: 253 })
const sends = z.array(messageSchema).describe('What it sends on its CAN bus.')
/** Of a module or a battery with electronics of its own, which is a device on a bus too. */
const busFields = { 'load-equivalency': loadEquivalency.optional(), 'device-instance': deviceInstance.optional(), sends: sends.optional() }

/** What is true of every unit of a model; an item may give its own value for each. */
const modelFacts = {
  maker: text('Maker.').optional(),
  kind: oneOf(equipmentKindKeys, 'Kind of equipment.').optional(),
  description: text('What it does, in a sentence.').optional(),
  'supply-min': quantity('voltage', 'Lowest supply voltage.').optional(),
  'supply-max': quantity('voltage', 'Highest supply voltage.').optional(),
  'current-typical': quantity('current', 'Current in normal use, at nominal voltage.').optional(),
  'current-max': quantity('current', 'Highest current, at nominal voltage.').optional(),
  power: quantity('power', 'Power, where the current is not given.').optional(),
  'load-equivalency': loadEquivalency.optional(),
  mass: quantity('mass', 'Mass.').optional(),
  ports: z.array(portSchema).describe('Connectors.').optional(),
  rating: quantity('current', 'Current that a switch, isolator, selector or connector may carry without a break.').optional(),
  'starting-current': quantity('current', 'Highest current while it starts.').optional(),
  'makers-fuse': quantity('current', 'Rating of the protective device that the maker asks for.').optional(),
  outputs: z.array(outputSchema).describe('What it gives, as a source, charger, converter or inverter.').optional(),
  efficiency: percentOf('Of what it takes, the share that it gives.').refine(value => value > 0, { error: 'a percentage above 0 %' }).optional(),
  'peak-power': quantity('power', 'Of a solar panel, under standard test conditions.').optional(),
  'load-column': oneOf(['a', 'b'], 'Column of the load calculation: a must be able to run together, b now and then; by its kind when left out.').optional(),
  'residual-current': quantity('current', 'Rated residual current of a residual-current device.').optional(),
  'trip-time': quantity('short time', 'Longest time in which a residual-current device trips.').optional(),
  sends: sends.optional(),
  forwards: z.array(forwardingSchema).describe('What it passes from one connector to another: bridges, gateways, multiplexers.').optional(),
  streams: z.array(streamSchema).describe('What it sends over Ethernet without a break.').optional(),
  'network-power': quantity('power', 'Power that it takes over its network cable.').optional(),
  'power-budget': quantity('power', 'Power that a switch can give over all its ports together.').optional(),
  'power-voltage': aboveZero('voltage', 'Voltage at which a switch gives it.').optional(),
  'passes-ethernet': yesNo('Whether it passes traffic from one of its Ethernet ports to another; when left out, true for network switches, routers and access points.').optional(),
  'loop-protection': yesNo('Whether a ring of network cables through it does no harm.').optional(),
  transmitters: z.array(transmitterSchema).describe('What it transmits; of a radar see there.').optional(),
  radar: radarSchema.describe('Of a radar scanner.').optional(),
  antenna: antennaSchema.describe('Of an antenna, or of equipment with one built in.').optional(),
  'port-losses': z.array(portLossSchema).describe('What a splitter, filter or connector takes away between two of its connectors.').optional(),
  'compass-class': oneOf(['standard', 'steering', 'flux-gate', 'none'], 'Of a compass or heading sensor; when left out, steering for a compass and flux-gate for a heading sensor; none where it finds north without magnetism.').optional(),
  'compass-safe-standard': quantity('length', 'Compass safe distance to a standard compass (IEC 60945).').optional(),
  'compass-safe-steering': quantity('length', 'Compass safe distance to a steering compass (IEC 60945).').optional(),
  'navigation-light': navigationLightSchema.describe('Of a navigation light.').optional(),
  transducer: transducerSchema.describe('Of a sonar or depth transducer.').optional(),
  maintenance: z.array(maintenanceFactsSchema).describe('What its maker asks for, over and above the general tasks of its kind or in place of them.').optional(),
}

export const safetyServices = ['navigation lights', 'bilge pumping', 'distress radio', 'position', 'steering', 'engine control', 'alarms'] as const

export const modelSchema = z.strictObject({
  model: tag('Key by which items name the model.'),
  title: text('Model as printed.'),
  ...modelFacts,
})

export const equipmentSchema = z.strictObject({
  ...itemFields,
  model: tag('Key of the model in the catalogue.').optional(),
  ...modelFacts,
  software: text('Software version.').optional(),
  position: position('Forward of the transom, to port of the centreline, above the waterline.').optional(),
  address: text('Network address.').optional(),
  'safety-service': oneOf(safetyServices, 'Service for the safety of the boat that it gives; by its kind when left out.').optional(),
  'data-from': listOf(tag('Item.'), 'Items whose data it needs to do its work.').optional(),
  'galvanic-isolation': tag('Of a shore inlet: the galvanic isolator or isolation transformer.').optional(),
  'polarity-indicator': tag('Of a shore inlet: what shows reversed polarity.').optional(),
  'software-date': date('When the software version was read.').optional(),
  'device-instance': deviceInstance.optional(),
  addressing: oneOf(['static', 'dynamic', 'reserved'], 'How it comes by its network address: set on it, given out, or always given out alike; static when an address is recorded.').optional(),
  mac: text('Hardware address.').optional(),
  'depth-offset': depthOffsetSchema.describe('Of a depth transducer, as configured.').optional(),
  mmsi: mmsi.optional(),
  'beacon-identity': text('Hexadecimal identity of a 406 MHz beacon, 15 or 23 digits.').optional(),
})

export const batterySchema = z.strictObject({
  ...itemFields,
  chemistry: oneOf(['flooded', 'agm', 'gel', 'lfp'], 'Chemistry.').optional(),
  'nominal-voltage': aboveZero('voltage', 'Nominal voltage of the bank.'),
  capacity: aboveZero('charge', 'Capacity of the bank.').optional(),
  'cranking-current': quantity('current', 'Cold cranking current of the bank.').optional(),
  'rated-time': aboveZero('duration', 'Hours in which the capacity is drawn; 20 h when left out.').optional(),
  peukert: numberBetween('Peukert’s exponent of a lead-acid battery.', { min: 1, max: 2 }).optional(),
  'internal-resistance': quantity('internal resistance', 'Internal resistance of the bank.').optional(),
  'short-circuit-current': quantity('current', 'Short-circuit current of the bank, as the maker states it.').optional(),
  'depth-of-discharge': percentOf('How deep it may be discharged day by day; by its chemistry when left out.').optional(),
  'charge-current-max': quantity('current', 'Highest charging current of the bank.').optional(),
  'discharge-current-max': quantity('current', 'Highest current that the bank may give.').optional(),
  mass: quantity('mass', 'Mass of the whole bank.').optional(),
  position: position('Of its middle: forward of the transom, to port of the centreline, above the waterline.').optional(),
  blocks: z.strictObject({
    series: wholeNumber('Blocks in series in each string.', { min: 1, max: 100 }),
    parallel: wholeNumber('Strings in parallel.', { min: 1, max: 100 }),
    voltage: aboveZero('voltage', 'Nominal voltage of one block.').optional(),
    capacity: aboveZero('charge', 'Capacity of one block.').optional(),
    'cranking-current': quantity('current', 'Cold cranking current of one block.').optional(),
    'internal-resistance': quantity('internal resistance', 'Internal resistance of one block.').optional(),
    'short-circuit-current': quantity('current', 'Short-circuit current of one block.').optional(),
  }).describe('What the bank is made of; what is not given for the bank is worked out from it.').optional(),
  ...busFields,
})

export const busbarSchema = z.strictObject({
  ...itemFields,
  rating: quantity('current', 'Rated current.').optional(),
  polarity: oneOf(['positive', 'negative'], 'Polarity; positive when left out.').optional(),
})

export const panelSchema = z.strictObject({
  ...itemFields,
  kind: oneOf(['breaker panel', 'fuse panel', 'fuse block', 'switching module'], 'Kind of panel.'),
  ways: wholeNumber('Number of ways or channels, spare ones included.', { min: 1, max: 200 }).optional(),
  rating: quantity('current', 'Rated current of its feed.').optional(),
  'network-loss': oneOf(networkLosses, 'What the channels of a switching module do when it no longer hears its network.').optional(),
  ...busFields,
})

