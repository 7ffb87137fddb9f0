/** Data networks: CAN buses and serial links as built, Ethernet and wireless networks, links to the outside. */
import { z } from 'zod'
import { cableEnd, digits, listOf, oneOf, quantity, tag, text, wholeNumber, yesNo } from './fields.js'

const elementKinds = ['terminator', 'segment', 'tee', 'power', 'isolator'] as const

const backboneElementSchema = z.strictObject({
  terminator: tag('A terminator at this end of the backbone.').optional(),
  segment: tag('Cable of the backbone.').optional(),
  tee: tag('A tee.').optional(),
  power: tag('A power insertion point.').optional(),
  isolator: tag('A power isolator: the supply pair ends here on both sides, the data pair goes on.').optional(),
  zone: tag('Where it is.').optional(),
  device: tag('Device on the drop of a tee.').optional(),
  port: text('Connector of the device, where it has several on buses and no cable says which.').optional(),
  circuit: tag('Circuit that supplies the bus at a power insertion point.').optional(),
  voltage: quantity('voltage', 'Voltage of a regulated supply at a power insertion point; what comes of the circuit when left out.').optional(),
  drop: tag('Cable of the drop.').optional(),
  resistance: quantity('resistance', 'Resistance of a terminator; 120 ohm when left out.').optional(),
}).refine(element => elementKinds.filter(kind => element[kind] !== undefined).length === 1, {
  error: `exactly one of: ${elementKinds.join(', ')}`,
})

export const canBusSchema = z.strictObject({
  tag: tag('Tag of the bus.'),
  name: text('Name of the bus.'),
  purpose: text('What it is for.').optional(),
  protocol: oneOf(['nmea 2000', 'j1939'], 'What is spoken on it; nmea 2000 when left out.').optional(),
  'supplies-devices': yesNo('Whether the backbone supplies its devices; when left out, true but for j1939.').optional(),
  'backbone-max': quantity('length', 'Largest length of the backbone, where another rule than the usual one holds for its cable.').optional(),
  backbone: z.array(backboneElementSchema).describe('Everything along the backbone, in order, from one terminator to the other.'),
})

/** What a device sends, for equipment and its model. */
export const messageSchema = z.strictObject({
  pgn: wholeNumber('Parameter group number.', { min: 0, max: 131071 }),
  interval: quantity('short time', 'How often it is sent; the usual interval of that parameter group when left out.').optional(),
  bytes: wholeNumber('Bytes of data; the usual number when left out.', { min: 0, max: 1785 }).optional(),
  port: text('Connector by which it is sent; every bus that the device is on when left out.').optional(),
  times: wholeNumber('How many of them each interval, for example one an engine; 1 when left out.', { min: 1, max: 64 }).optional(),
  instance: wholeNumber('Instance in the data; that of the device when left out.', { min: 0, max: 253 }).optional(),
})

export const forwardingSchema = z.strictObject({
  from: text('Connector at which it comes in.'),
  to: text('Connector at which it goes out.'),
  only: listOf(z.coerce.string(), 'Parameter groups or sentences that pass; all when left out.').optional(),
})

const sentenceSchema = z.strictObject({
  sentence: text('Formatter, such as RMC, or talker and formatter, such as GPRMC.'),
  rate: quantity('rate', 'How often it is sent; the usual rate when left out.').optional(),
  length: wholeNumber('Characters with start and line end; the usual number when left out.', { min: 1, max: 200 }).optional(),
})

const serialWireSchema = z.strictObject({
  signal: text('What the wire is for: A (signal +), B (signal −), C (common), screen.'),
  from: cableEnd('Item and terminal at the talker’s end, the terminal as it is marked: pin, screw or colour.'),
  to: cableEnd('Item and terminal at the listener’s end; a terminal block on the way may be either end.'),
  cable: tag('Cable that holds it.').optional(),
  core: text('Colour or number of the core.').optional(),
})

export const serialLinkSchema = z.strictObject({
  tag: tag('Tag of the link.'),
  name: text('Name of the link.'),
  purpose: text('What it is for.').optional(),
  standard: oneOf(['iec 61162-1', 'iec 61162-2', 'other'], 'Standard; iec 61162-1 when left out.').optional(),
  baud: wholeNumber('Signalling rate; that of the standard when left out.', { min: 50, max: 4000000 }).optional(),
  talker: cableEnd('The one that talks, with its connector.'),
  listeners: listOf(cableEnd('One that listens, with its connector.'), 'Those that listen, with their connectors.'),
  sentences: z.array(sentenceSchema).describe('What is sent; of a multiplexer, what it forwards when left out.').optional(),
  wires: z.array(serialWireSchema).describe('Wire by wire, from the talker to each listener.').optional(),
})

export const ethernetNetworkSchema = z.strictObject({
  tag: tag('Tag of the network.'),
  name: text('Name of the network.'),
  purpose: text('What it is for.').optional(),
  subnet: text('Address range, for example 192.168.50.0/24.').optional(),
  gateway: text('Address of the router that leads out.').optional(),
  'dynamic-range': text('First and last of the addresses that are given out, for example 192.168.50.100-192.168.50.199.').optional(),
  switches: listOf(tag('Item.'), 'Its network switches.'),
})

/** What an item sends over Ethernet, for equipment and its model. */
export const streamSchema = z.strictObject({
  name: text('What it is.'),
  rate: quantity('data rate', 'Data rate while it runs.'),
  to: listOf(tag('Item.'), 'Who takes it; when left out, whoever needs data of the sender.').optional(),
  multicast: yesNo('Whether it is sent once, whoever takes it; else once for each that does. False when left out.').optional(),
})

export const wirelessNetworkSchema = z.strictObject({
  tag: tag('Tag of the wireless network.'),
  name: text('Its name, as devices show it.'),
  purpose: text('What it is for.').optional(),
  'access-point': tag('What makes it.').optional(),
  network: tag('The Ethernet network that it leads to.').optional(),
  band: text('Band, for example 2.4 GHz.').optional(),
  channel: text('Channel, or how it is chosen.').optional(),
  security: text('How it is secured.').optional(),
  guests: yesNo('Whether it is for guests.').optional(),
})

export const outsideLinkSchema = z.strictObject({
  tag: tag('Tag of the link.'),
  name: text('Name of the link.'),
  purpose: text('What it is for.').optional(),
  kind: oneOf(['mobile data', 'satellite', 'wireless network of a harbour', 'other'], 'By what it goes.'),
  equipment: tag('What makes the link.').optional(),
  antennas: listOf(tag('Item.'), 'Its antennas.').optional(),
  down: quantity('data rate', 'Data rate to the boat.').optional(),
  up: quantity('data rate', 'Data rate from the boat.').optional(),
  provider: text('Who provides it.').optional(),
  priority: wholeNumber('1 is tried first.', { min: 1, max: 9 }).optional(),
  coverage: text('Where it can be used.').optional(),
})

/** Numbers that people are called or found by. */
export const mmsi = digits('Maritime mobile service identity.', /^\d{9}$/, 'nine digits')
