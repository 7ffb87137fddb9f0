/** A photograph with its call-outs as a block. */
import type { CallOut, Photograph, Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { plainText } from '../../tables.js'
import { joined, linkTo, muted } from '../../text.js'
import type { Picture, Text } from '../../view-model.js'

/** For a page about something else. `meant`: the items that it is about, the only ones listed and set off on the picture; null: all alike. */
export const pictureBlock = (context: ViewContext, photograph: Photograph, meant: ReadonlySet<Tag> | null): Picture =>
  picture(context, photograph, meant, [linkTo(context.photographPage(photograph.file), photograph.caption)])

/** For its own page, of which its caption is the title. */
export const ownPicture = (context: ViewContext, photograph: Photograph): Picture => picture(context, photograph, null, aboutPhotograph(context, photograph))

function picture(context: ViewContext, photograph: Photograph, meant: ReadonlySet<Tag> | null, captionText: Text): Picture {
  const { file, caption, callOuts } = photograph
  const numbered = callOuts.map((callOut, i) => ({ ...callOut, number: String(i + 1), name: plainText(context.named(callOut.itemTag)) }))
  return {
    is: 'picture',
    file,
    caption: captionText,
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
  return zoneTag === null && taken === '' ? [caption] : joined([...(zoneTag === null ? [] : [context.named(zoneTag)]), ...(taken === '' ? [] : [[muted(taken)]])])
}

const calledOut = (context: ViewContext, { itemTag, words }: CallOut): Text => [...context.named(itemTag), ...(words === null ? [] : [`: ${words}`])]
