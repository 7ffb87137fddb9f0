/** Data networks: CAN buses as built, Ethernet networks. */
import { z } from 'zod'
import { listOf, tag, text } from './fields.js'

const elementKinds = ['terminator', 'segment', 'tee', 'power'] as const

const backboneElementSchema = z.strictObject({
  terminator: tag('A terminator at this end of the backbone.').optional(),
  segment: tag('Cable of the backbone.').optional(),
  tee: tag('A tee.').optional(),
  power: tag('The power insertion point.').optional(),
  zone: tag('Where it is.').optional(),
  device: tag('Device on the drop of a tee.').optional(),
  circuit: tag('Circuit that supplies the bus at a power insertion point.').optional(),
  drop: tag('Cable of the drop.').optional(),
}).refine(element => elementKinds.filter(kind => element[kind] !== undefined).length === 1, {
  error: `exactly one of: ${elementKinds.join(', ')}`,
})

export const canBusSchema = z.strictObject({
  tag: tag('Tag of the bus.'),
  name: text('Name of the bus.'),
  purpose: text('What it is for.').optional(),
  backbone: z.array(backboneElementSchema).describe('Everything along the backbone, in order, from one terminator to the other.'),
})

export const ethernetNetworkSchema = z.strictObject({
  tag: tag('Tag of the network.'),
  name: text('Name of the network.'),
  purpose: text('What it is for.').optional(),
  subnet: text('Address range, for example 192.168.50.0/24.').optional(),
  switches: listOf(tag('Item.'), 'Its network switches.'),
})
