/** What was set on the devices, and how to log in. */
import { z } from 'zod'
import { editions } from '../../model/edition.js'
import { date, listOf, oneOf, tag, text } from './fields.js'

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
