/** Settings, and how to log in → records of the vessel. */
import type { Credential, Setting } from '../../model/vessel.js'
import { usualEditions } from '../../model/edition.js'
import type { Entry } from '../schema/kinds.js'

export const settingOf = ({ item, name, value, menu, date, by, notes }: Entry<'settings'>): Setting =>
  ({ itemTag: item, name, value, menu: menu ?? null, date: date ?? null, by: by ?? null, notes: notes ?? null })

export const credentialOf = (credential: Entry<'credentials'>): Credential => ({
  itemTag: credential.item, name: credential.name, user: credential.user ?? null, secret: credential.secret ?? null, keptAt: credential['kept-at'] ?? null,
  editions: credential.editions ?? usualEditions, withheld: false,
})
