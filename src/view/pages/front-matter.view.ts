/** Pages of the manual's general text: how to read the pack, and its words. */
import type { ContentPage } from '../../model/content.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import type { Page } from '../view-model.js'

/** The general text by its name. Throws when it is missing: it is part of the program. */
export function generalText({ content }: ViewContext, name: string): ContentPage {
  const text = content.pages.get(name)
  if (text === undefined) throw new Error(`content/${name}.md is missing`)
  return text
}

export function frontMatterPages(context: ViewContext): readonly Page[] {
  return [fixedPages.howToRead, fixedPages.glossary].map(key => {
    const { title, markdown } = generalText(context, key)
    return { key, title, kicker: null, lead: null, printed: null, trail: [], blocks: [{ is: 'markdown', source: markdown }] }
  })
}
