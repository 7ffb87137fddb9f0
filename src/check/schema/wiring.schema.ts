/** Conductors and what protects them: cable types, cables, circuits. */
import { z } from 'zod'
import { protectiveDeviceKeys } from '../../references/tables/protective-devices.js'
import { cableEnd, listOf, oneOf, quantity, share, tag, text, wholeNumber, yesNo } from './fields.js'
import { itemStatuses, networkLosses } from './items.schema.js'
import { attenuationSchema, coaxKind } from './radio.schema.js'

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
  'bus-cable': oneOf(['light', 'mid', 'heavy'], 'Kind of CAN bus cable.').optional(),
  'conductor-resistance': quantity('resistance per length', 'Of one conductor of the supply pair of a CAN bus cable; as usual for its kind when left out.').optional(),
  coax: coaxKind.optional(),
  attenuation: z.array(attenuationSchema).describe('Of a coaxial cable, as its maker states it.').optional(),
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
  parallel: wholeNumber('Alike conductors in parallel under this number, each joined at both ends.', { min: 1, max: 8 }).optional(),
  'label-from': text('Text of the label at the first end, when not made from the tag and ends.').optional(),
  'label-to': text('Text of the label at the other end.').optional(),
  status: oneOf(itemStatuses, 'How far the work is.').optional(),
  connectors: wholeNumber('Connectors along a coaxial cable, its two ends included; 2 when left out.', { min: 0, max: 20 }).optional(),
  notes: text('Anything worth knowing.').optional(),
})

export const circuitSchema = z.strictObject({
  tag: tag('Tag of the circuit and of its protective device.'),
  name: text('What it feeds, as on the legend.'),
  purpose: text('What it is for.').optional(),
  'fed-from': cableEnd('Battery, busbar or panel that supplies it, or a source, converter or inverter, with its terminal where it has several outputs.'),
  way: wholeNumber('Way of the panel, or channel of the module.', { min: 1, max: 200 }).optional(),
  protection: z.strictObject({
    type: oneOf(protectiveDeviceKeys, 'Type of protective device.'),
    rating: quantity('current', 'Rated current.').refine(ratedCurrentA => ratedCurrentA > 0, { error: 'a rating above zero' }),
    'interrupting-capacity': quantity('current', 'The largest current that it can break; that of its type when left out.').optional(),
    'voltage-rating': quantity('voltage', 'Voltage rating; that of its type when left out.').optional(),
    poles: wholeNumber('Poles that it opens.', { min: 1, max: 4 }).optional(),
    'residual-current': quantity('current', 'Rated residual current, where it trips on that too.').optional(),
    'trip-time': quantity('short time', 'Longest time in which it trips on its rated residual current.').optional(),
    distance: quantity('length', 'Along the conductor from the source to the device, as measured; the length of the cables between them when left out.').optional(),
    enclosed: yesNo('Whether that whole conductor lies in a sheath or enclosure.').optional(),
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
  interlock: tag('The switch or device that lets only one of several circuits be closed; those circuits name the same one.').optional(),
  'network-loss': oneOf(networkLosses, 'Of an electronic channel: what it does when the module no longer hears its network; as the module when left out.').optional(),
  'return-cables': listOf(tag('Cable.'), 'Cables of the way back, when they differ from the way out.').optional(),
}).refine(circuit => circuit.protection === undefined || circuit.unprotected === undefined, {
  path: ['unprotected'], error: 'either protection, or the reason why there is none',
})
