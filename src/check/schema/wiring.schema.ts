/** Conductors and what protects them: cable types, cables, circuits. */
import { z } from 'zod'
import { protectiveDeviceKeys } from '../../references/tables/protective-devices.js'
import { cableEnd, listOf, oneOf, quantity, share, tag, text, wholeNumber, yesNo } from './fields.js'
import { itemStatuses } from './items.schema.js'

export const cableTypeSchema = z.strictObject({
  tag: tag('Key by which cables name the type.'),
  name: text('Description of the type.'),
  use: oneOf(['power', 'ac power', 'can bus', 'ethernet', 'coax', 'serial', 'signal', 'bonding'], 'What it is used for.'),
  cores: wholeNumber('Number of cores.', { min: 1, max: 200 }).optional(),
  size: quantity('conductor size', 'Cross-section of each core.').optional(),
  insulation: quantity('temperature', 'Temperature rating of the insulation.').optional(),
  tinned: yesNo('Whether the strands are tinned.').optional(),
  'outer-diameter': quantity('diameter', 'Outside diameter.').optional(),
  shielded: yesNo('Whether it has a shield.').optional(),
})

export const cableSchema = z.strictObject({
  tag: tag('Cable number, as on its labels.'),
  name: text('What it is for.').optional(),
  from: cableEnd('The end nearer the supply, or the first end.'),
  to: cableEnd('The other end.'),
  type: tag('Cable type.').optional(),
  carries: oneOf(['both', 'positive', 'negative', 'none'], 'Conductors of the circuit it holds; when left out, of a power cable both for two cores and positive for one; of a cable without a type both where it starts at a circuit.').optional(),
  route: listOf(tag('Wireway.'), 'Wireways in order; the shortest way when left out.').optional(),
  length: quantity('length', 'Length as measured; worked out from the route when left out.').optional(),
  'service-loop': quantity('length', 'Spare length left in a loop.').optional(),
  'label-from': text('Text of the label at the first end, when not made from the tag and ends.').optional(),
  'label-to': text('Text of the label at the other end.').optional(),
  status: oneOf(itemStatuses, 'How far the work is.').optional(),
  notes: text('Anything worth knowing.').optional(),
})

export const circuitSchema = z.strictObject({
  tag: tag('Tag of the circuit and of its protective device.'),
  name: text('What it feeds, as on the legend.'),
  purpose: text('What it is for.').optional(),
  'fed-from': tag('Battery, busbar or panel that supplies it.'),
  way: wholeNumber('Way of the panel, or channel of the module.', { min: 1, max: 200 }).optional(),
  protection: z.strictObject({
    type: oneOf(protectiveDeviceKeys, 'Type of protective device.'),
    rating: quantity('current', 'Rated current.').refine(ratedCurrentA => ratedCurrentA > 0, { error: 'a rating above zero' }),
  }).describe('Overcurrent protective device.').optional(),
  unprotected: text('Why there is no overcurrent protection.').optional(),
  'load-class': oneOf(['critical', 'general'], 'Voltage-drop class; when left out, critical for navigation lights, bilge pumps and VHF radios, else general.').optional(),
  loads: listOf(tag('Item.'), 'What it feeds: equipment, panels or busbars.').optional(),
  'design-current': quantity('current', 'Design current, where it is not the sum of the loads.').optional(),
  'demand-factor': share('Share of its design current that counts in the feeder above; 1 when left out.').optional(),
  'normal-state': oneOf(['closed', 'open'], 'Whether it is normally closed; closed when left out.').optional(),
  zone: tag('Where its protective device is, when not at the distribution point.').optional(),
  location: text('Where exactly, in words.').optional(),
  'manual-bypass': text('How it is worked when the electronic channel is lost.').optional(),
  'return-cables': listOf(tag('Cable.'), 'Cables of the way back, when they differ from the way out.').optional(),
}).refine(circuit => circuit.protection === undefined || circuit.unprotected === undefined, {
  path: ['unprotected'], error: 'either protection, or the reason why there is none',
})
