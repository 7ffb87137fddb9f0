/** The photographs, each with its call-outs, and a list of them. */
import { grouped } from '../../../model/lookup.js'
import type { Photograph } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, linkTo, orDash } from '../../text.js'
import type { Block, Page } from '../../view-model.js'
import { ownPicture } from './photograph-blocks.js'

export function photographPages(context: ViewContext): readonly Page[] {
  const { photographs } = context.vessel
  if (photographs.length === 0) return []
  return [indexPage(context, photographs), ...[...grouped(photographs, ({ file }) => [file])].map(([file, ofFile]) => photographPage(context, file, ofFile))]
}

const indexPage = (context: ViewContext, photographs: readonly Photograph[]): Page => ({
  key: fixedPages.photographs,
  title: 'Photographs',
  kicker: null,
  lead: [`${counted(photographs.length, 'photograph')}, with numbers at what is to be seen.`],
  printed: null,
  trail: [],
  blocks: [tableOf(photographs, {
    id: 'photograph-list',
    caption: 'Photographs',
    empty: '',
    columns: [
      { title: 'Photograph', width: 'text', cell: ({ file, caption }) => [linkTo(context.photographPage(file), caption)] },
      { title: 'Zone', width: 'short', cell: ({ zoneTag }) => (zoneTag === null ? dash : context.named(zoneTag)) },
      { title: 'Date', width: 'short', cell: ({ date }) => orDash(date) },
      { title: 'Shows', width: 'text', cell: ({ callOuts }) => joined(callOuts.map(({ itemTag }) => [context.tag(itemTag)]), ' ') },
    ],
  })],
})

/** A file that is entered twice has one page. */
const photographPage = (context: ViewContext, file: string, ofFile: readonly Photograph[]): Page => ({
  key: context.photographPage(file),
  title: ofFile[0]!.caption,
  kicker: 'Photograph',
  lead: null,
  printed: null,
  trail: [{ text: 'Photographs', to: fixedPages.photographs }],
  blocks: ofFile.flatMap((photograph, i): readonly Block[] => [...(i === 0 ? [] : [{ is: 'heading', text: photograph.caption, anchor: null } as const]), ownPicture(context, photograph)]),
})
