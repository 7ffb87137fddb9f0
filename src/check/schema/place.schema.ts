/** Where things are and how cables get there: systems, zones, wireways. */
import { z } from 'zod'
import { spaceKinds } from '../../references/space-kinds.js'
import { systemKinds } from '../../references/system-kinds.js'
import { listOf, oneOf, position, quantity, tag, text, yesNo } from './fields.js'

export const systemSchema = z.strictObject({
  tag: tag('Tag of the system.'),
  name: text('Name of the system.'),
  purpose: text('What it is for, in plain words.').optional(),
  kind: oneOf(systemKinds, 'Which of the usual systems it is: decides what the manual says of it in general; by its tag when left out.').optional(),
})

/** On the plan, seen from above. */
const spans = ([alongM, acrossM]: readonly number[], [otherAlongM, otherAcrossM]: readonly number[]): boolean => alongM !== otherAlongM && acrossM !== otherAcrossM

export const zoneSchema = z.strictObject({
  tag: tag('Tag of the zone; also its own wireway point.'),
  name: text('Name of the zone.'),
  space: oneOf(spaceKinds, 'Kind of space.'),
  ambient: quantity('temperature', 'Highest ambient temperature, where it differs from the kind of space.').optional(),
  'ignition-protection': yesNo('Whether equipment here must be ignition protected.').optional(),
  access: text('How to get at it.').optional(),
  from: position('One corner of the box that it fills.').optional(),
  to: position('The opposite corner.').optional(),
}).refine(zone => (zone.from === undefined) === (zone.to === undefined), { path: ['to'], error: 'both corners of the box, or neither' })
  .refine(({ from, to }) => from === undefined || to === undefined || spans(from, to), { path: ['to'], error: 'a corner that lies forward or aft of the first, and to port or starboard of it: a box without length or width is on no plan' })

export const pointSchema = z.strictObject({
  tag: tag('Tag of the wireway point.'),
  name: text('Where it is.'),
  zone: tag('Zone it is in.'),
})

export const wirewaySchema = z.strictObject({
  tag: tag('Tag of the stretch.'),
  name: text('What it is called on board.').optional(),
  from: tag('Zone or wireway point at one end.'),
  to: tag('Zone or wireway point at the other end.'),
  length: quantity('length', 'Length.'),
  kind: oneOf(['conduit', 'tray', 'trunking', 'clipped', 'open'], 'How the cables are held.'),
  bore: quantity('diameter', 'Inside diameter of a conduit.').optional(),
  zones: listOf(tag('Zone.'), 'Zones it runs through, where these are not just those of its two ends.').optional(),
})
