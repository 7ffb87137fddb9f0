/** What matters where it stands: lights, transducers, structures, people. */
import { z } from 'zod'
import { aboveZero, oneOf, position, quantity, tag, text } from './fields.js'

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
