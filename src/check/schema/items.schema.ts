/** Things with a tag and a place: equipment and the catalogue behind it, batteries, busbars, panels. */
import { z } from 'zod'
import { equipmentKindKeys } from '../../references/equipment-kinds.js'
import { filePath, oneOf, position, quantity, tag, text, wholeNumber } from './fields.js'

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
  documents: z.array(documentRef).describe('Files that go into the pack with it.').optional(),
}

const portSchema = z.strictObject({
  name: text('Name on the device.'),
  kind: oneOf(['power', 'ethernet', 'can bus', 'serial', 'coax', 'signal', 'video', 'audio', 'usb'], 'What is connected there.'),
  speed: quantity('data rate', 'Data rate.').optional(),
  'power-class': wholeNumber('IEEE 802.3 class it supplies or asks for.', { min: 0, max: 8 }).optional(),
})

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
  'load-equivalency': wholeNumber('Load equivalency number on a CAN bus.', { min: 0, max: 250 }).optional(),
  mass: quantity('mass', 'Mass.').optional(),
  ports: z.array(portSchema).describe('Connectors.').optional(),
}

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
})

export const batterySchema = z.strictObject({
  ...itemFields,
  chemistry: oneOf(['flooded', 'agm', 'gel', 'lfp'], 'Chemistry.').optional(),
  'nominal-voltage': quantity('voltage', 'Nominal voltage of the bank.'),
  capacity: quantity('charge', 'Capacity of the bank.').optional(),
  'cranking-current': quantity('current', 'Cold cranking current.').optional(),
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
})

