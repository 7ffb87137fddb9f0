/** The vessel as a whole: identity, document control, basis, conditions, change record. */
import { z } from 'zod'
import { aboveZero, date, oneOf, percentOf, position, quantity, text, wholeNumber, yesNo } from './fields.js'
import { mmsi } from './networks.schema.js'

export const documentSchema = z.strictObject({
  number: text('Document number of the handover pack.').optional(),
  issue: text('Issue letter or number of this pack.').optional(),
  'issued-on': date('Date of this issue.').optional(),
  'prepared-by': text('Who wrote the data.').optional(),
  'checked-by': text('Who checked it against the boat.').optional(),
  'approved-by': text('Who released it.').optional(),
  installer: text('The company that made the installation.').optional(),
  contact: text('How to reach the installer.').optional(),
})

const ambient = (space: string) => quantity('temperature', `Highest ambient temperature to reckon with in ${space} spaces.`).optional()
export const conditionsSchema = z.strictObject({
  ambient: z.strictObject({
    interior: ambient('interior'), machinery: ambient('machinery'), bilge: ambient('bilge'), battery: ambient('battery'),
    deck: ambient('deck'), mast: ambient('mast'), cockpit: ambient('cockpit'), locker: ambient('locker'),
  }).describe('Ambient temperature by kind of space; a zone may give its own.').optional(),
  latitude: quantity('latitude', 'Where the boat is used; decides what the sun gives.').refine(value => Math.abs(value) <= 90, { error: 'a latitude up to 90°' }).optional(),
  'horizontal-field': aboveZero('flux density', 'Horizontal part of the Earth’s magnetic field where the boat is used.').optional(),
  'device-distance': quantity('length', 'Largest distance from the source to a protective device, where the rules that hold for this vessel give another than the basis.').optional(),
  'cable-tail': quantity('length', 'Length added at each end of a routed cable, from the wireway to the terminal.').optional(),
  'cable-spare': percentOf('Cable to be bought over and above the lengths that are laid; 10 % when left out.').optional(),
})

export const vesselSchema = z.strictObject({
  name: text('The vessel’s name.'),
  model: text('Type or model of boat.').optional(),
  builder: text('The builder.').optional(),
  'hull-number': text('The yard’s own number.').optional(),
  'hull-identification': text('Craft identification number (ISO 10087) or hull identification number.').optional(),
  'design-category': oneOf(['A', 'B', 'C', 'D'], 'Design category of the Recreational Craft Directive.').optional(),
  'year-built': wholeNumber('Year of build.', { min: 1850, max: 2200 }).optional(),
  flag: text('Flag state.').optional(),
  'home-port': text('Home port.').optional(),
  'call-sign': text('Radio call sign.').optional(),
  mmsi: mmsi.optional(),
  length: quantity('length', 'Length of the hull.').optional(),
  beam: quantity('length', 'Beam of the hull.').optional(),
  draught: quantity('length', 'Greatest draught.').optional(),
  displacement: quantity('mass', 'Displacement, light craft.').optional(),
  propulsion: oneOf(['power-driven', 'sailing'], 'What she is under the collision regulations.').optional(),
  'gunwale-height': quantity('length', 'Height of the gunwale amidships above the waterline.').optional(),
  'centre-of-gravity': position('Centre of gravity at the displacement given.').optional(),
  'metacentric-height': aboveZero('length', 'Metacentric height (GM) at the displacement given.').optional(),
  'displacement-includes-equipment': yesNo('Whether the displacement given counts the equipment of this folder; false when left out.').optional(),
  'maximum-persons': wholeNumber('Largest number of persons on board.', { min: 1, max: 1000 }).optional(),
  description: text('What kind of boat this is and what it is used for.').optional(),
  'delivered-on': date('When she was handed over; maintenance is counted from it where an item has no date of its own.').optional(),
  season: z.strictObject({
    launch: wholeNumber('Month in which she goes into use.', { min: 1, max: 12 }),
    'lay-up': wholeNumber('Month in which she is laid up.', { min: 1, max: 12 }),
  }).describe('Of a boat that is laid up for a part of the year.').optional(),
  'manual-address': z.url({ protocol: /^https?$/, error: 'an address that begins with https://' }).meta({ description: 'Where the site of this pack is published, if anywhere: the codes on labels lead there.', takes: 'an address that begins with https://' }).optional(),
  basis: oneOf(['iso', 'abyc'], 'Rule set the installation is held against.'),
  units: oneOf(['metric', 'us'], 'Units that come first in print; metric when left out.').optional(),
  document: documentSchema.describe('Document control.').optional(),
  conditions: conditionsSchema.describe('What holds for the whole boat unless a zone or cable says otherwise.').optional(),
})

export const changeSchema = z.strictObject({
  issue: text('Issue of the pack that brought the change.'),
  date: date('When.'),
  by: text('Who.').optional(),
  what: text('What changed.'),
  why: text('Why.').optional(),
})
