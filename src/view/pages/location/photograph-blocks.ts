/** A photograph with its call-outs as a block. */
import type { CallOut, Photograph, Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { plainText } from '../../tables.js'
import { joined, linkTo, muted } from '../../text.js'
import type { Picture, Text } from '../../view-model.js'

/** `meant`: the items that the page is about, the only ones listed and set off on the picture; null: all alike, on the photograph's own page. */
export function pictureBlock(context: ViewContext, photograph: Photograph, meant: ReadonlySet<Tag> | null): Picture {
  const { file, caption, callOuts } = photograph
  const numbered = callOuts.map((callOut, i) => ({ ...callOut, number: String(i + 1), name: plainText(context.named(callOut.itemTag)) }))
  return {
    is: 'picture',
    file,
    caption: meant === null ? aboutPhotograph(context, photograph) : [linkTo(context.photographPage(file), caption)],
    alternative: numbered.length === 0 ? caption : `${caption}. Numbered points: ${numbered.map(({ number, name }) => `${number} ${name}`).join(', ')}.`,
    marks: numbered.map(({ number, name, itemTag, fromLeftPercent, fromTopPercent }) => ({
      number, name, to: context.addressOf(itemTag), fromLeft: `${fromLeftPercent}%`, fromTop: `${fromTopPercent}%`, meant: meant?.has(itemTag) ?? false,
    })),
    list: numbered.filter(({ itemTag }) => meant === null || meant.has(itemTag)).map(callOut => ({ number: callOut.number, text: calledOut(context, callOut) })),
  }
}

/** The zone, and when and by whom it was taken. */
function aboutPhotograph(context: ViewContext, { caption, zoneTag, date, by }: Photograph): Text {
  const taken = [date, by].filter(word => word !== null).join(', ')
  return joined([[caption], ...(zoneTag === null ? [] : [context.named(zoneTag)]), ...(taken === '' ? [] : [[muted(taken)]])], '. ')
}

const calledOut = (context: ViewContext, { itemTag, words }: CallOut): Text => [...context.named(itemTag), ...(words === null ? [] : [`: ${words}`])]
