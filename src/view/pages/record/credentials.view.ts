/** How to log in: on a sheet of its own, so that it can be taken out. What the edition must not carry is not here to be shown. */
import { editionTitles } from '../../../model/edition.js'
import type { Credential } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags, tableOf } from '../../tables.js'
import { dash, joined, lineBreak, muted, orDash } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'

export function credentialPages(context: ViewContext): readonly Page[] {
  const { credentials } = context.vessel
  if (credentials.length === 0) return []
  return [{
    key: fixedPages.credentials,
    title: 'Logging in',
    kicker: null,
    lead: ['What on board asks for a password, key or PIN.'],
    printed: null,
    trail: [{ text: 'Configuration record', to: fixedPages.configuration }],
    blocks: [caution(context), credentialTable(context)],
  }]
}

function caution({ vessel, edition }: ViewContext): Block {
  if (vessel.credentials.every(({ secret }) => secret === null)) {
    return { is: 'paragraph', text: [`This is the ${editionTitles[edition]}. No password, key or PIN is in it; where each is kept is said below as far as it is recorded.`] }
  }
  return {
    is: 'callout', signal: 'NOTICE', title: 'Passwords and keys are on this sheet', markdown: [
      '- Take this sheet out before the manual is lent or copied, and leave it out of what goes to a yard or a shop: they get an edition of their own.',
      '- The same words are in the site and in the record of this pack. Do not put this pack where others can read it.',
      '- When crew or owner change, change the passwords, and have the pack built again.',
    ].join('\n'),
  }
}

function credentialTable(context: ViewContext): Table {
  return tableOf(context.vessel.credentials.toSorted((a, b) => compareTags(a.itemTag, b.itemTag)), {
    id: 'logging-in',
    caption: 'Passwords, keys and PINs',
    empty: '',
    columns: [
      { title: 'It opens', width: 'text', cell: ({ itemTag, name }) => [...context.named(itemTag), lineBreak, muted(name)] },
      { title: 'User', width: 'short', cell: ({ user, withheld }) => (withheld ? dash : orDash(user)) },
      { title: 'Password, key or PIN', width: 'text', cell: secretText },
    ],
  })
}

function secretText({ secret, keptAt, withheld }: Credential): Text {
  return joined([
    ...(withheld ? [[muted('not in this edition')]] : secret === null ? [] : [[{ is: 'tag', text: secret }] as Text]),
    ...(keptAt === null ? [] : [[`kept: ${keptAt}`]]),
  ], lineBreak)
}
