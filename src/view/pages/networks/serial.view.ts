/** A serial link: who talks, who listens, wire by wire. */
import type { SerialLink } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { orNotRecorded } from '../../text.js'
import type { Page } from '../../view-model.js'
import { networkTrail } from './network-parts.js'

export function serialPage(context: ViewContext, link: SerialLink): Page {
  return {
    key: context.addressOf(link.tag)!,
    title: `${link.tag} ${link.name}`,
    kicker: 'Serial link',
    lead: link.purpose === null ? null : [link.purpose],
    trail: networkTrail,
    blocks: [{ is: 'facts', caption: null, entries: [{ label: 'Standard', value: orNotRecorded(link.standard.toUpperCase()) }] }],
    printed: null,
  }
}
