/** What matters where it stands: lights, transducers, structures, people; and what was set on the devices. */
import { z } from 'zod'
import { editions } from '../../model/edition.js'
import { aboveZero, date, listOf, oneOf, position, quantity, tag, text } from './fields.js'

export const navigationLightSchema = z.strictObject({
  kind: oneOf([
    'masthead', 'port side', 'starboard side', 'both sides', 'stern', 'tricolour',
    'all-round white', 'all-round red', 'all-round green', 'all-round yellow', 'towing',
  ], 'Which light it is.'),
  range: quantity('distance at sea', 'Range of visibility, as marked on it.').optional(),
  arc: quantity('angle', 'Arc over which it shows.').optional(),
  intensity: quantity('intensity', 'Luminous intensity, as its maker states it.').optional(),
})

export const transducerSchema = z.strictObject({
  frequency: quantity('sound frequency', 'Frequency.').optional(),
  power: quantity('power', 'Power.').optional(),
  beam: aboveZero('angle', 'Full angle of the beam, fore and aft.').optional(),
  'beam-across': aboveZero('angle', 'Full angle across the boat, where it differs.').optional(),
  blind: quantity('length', 'Distance within which nothing is seen.').optional(),
})

export const depthOffsetSchema = z.strictObject({
  reads: oneOf(['below waterline', 'below keel', 'below transducer'], 'Which depth is shown with it.'),
  offset: quantity('coordinate', 'As configured: positive up to the waterline, negative down to the keel.'),
})

export const structureSchema = z.strictObject({
  tag: tag('Tag of the structure.'),
  name: text('What it is: mast, arch, funnel, deckhouse.'),
  from: position('One corner of the box that it fills.'),
  to: position('The opposite corner.'),
  notes: text('Anything worth knowing.').optional(),
})

export const standingPlaceSchema = z.strictObject({
  tag: tag('Tag of the place.'),
  name: text('Who stands, sits or sleeps there.'),
  zone: tag('Zone it is in.').optional(),
  position: position('Of the deck, seat or berth.'),
  'head-height': quantity('length', 'Height of the head above it; 1.8 m when left out.').optional(),
})

export const settingSchema = z.strictObject({
  item: tag('Device that it was set on.'),
  name: text('Name of the setting, as the device shows it.'),
  value: text('What it was set to.'),
  menu: text('Where in its menus.').optional(),
  date: date('When it was read.').optional(),
  by: text('Who.').optional(),
  notes: text('Why, or how it was found.').optional(),
})

export const credentialSchema = z.strictObject({
  item: tag('What it opens: a device, a wireless network, an outside link.'),
  name: text('What it is: administrator of the router, key of the wireless network.'),
  user: text('User name.').optional(),
  secret: text('Password, key or PIN.').optional(),
  'kept-at': text('Where it is written down, when it is not in the data.').optional(),
  editions: listOf(oneOf(editions, 'Edition.'), 'Editions of the pack that may carry it; owner alone when left out.').optional(),
}).refine(credential => credential.secret !== undefined || credential['kept-at'] !== undefined, { path: ['secret'], error: 'the secret, or where it is kept' })
