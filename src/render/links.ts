/** Where a link leads: from a page of the site to another, or inside the single printed document. */
import { anchorOf, fixedPages } from '../view/site-map.js'
import type { PageKey } from '../view/view-model.js'

/** `printed`: the one document that becomes the PDF. `root`: the way from the page up to the site's top. */
export interface Place {
  readonly printed: boolean
  readonly root: string
  /** Makes the ids of a page's parts unique in the printed document. */
  readonly prefix: string
  /** Element of a heading inside a page. */
  readonly heading: 'h2' | 'h3'
}

export const pathOf = (key: PageKey): string => (key === fixedPages.home ? 'index.html' : `${key}/index.html`)

export const sitePlace = (key: PageKey): Place => ({
  printed: false,
  root: '../'.repeat(pathOf(key).split('/').length - 1),
  prefix: '',
  heading: 'h2',
})

export const printedPlace = (key: PageKey): Place => ({ printed: true, root: '', prefix: `${anchorOf(key)}--`, heading: 'h3' })

/** `equipment/p1#does-not-work` leads to a part of that page. */
export function hrefOf(to: PageKey, place: Place): string {
  const [key = '', part] = to.split('#')
  if (place.printed) return `#${part === undefined ? anchorOf(key) : printedPlace(key).prefix + part}`
  return place.root + pathOf(key) + (part === undefined ? '' : `#${part}`)
}

/** From a page of the site to a file of the record, which lies beside the site in the pack. */
export const recordHref = (file: string, place: Place): string => `${place.root}../record/source/${file.split('/').map(encodeURIComponent).join('/')}`

/** From a page of the site to a file at the top of the pack. */
export const packHref = (file: string, place: Place): string => `${place.root}../${file.split('/').map(encodeURIComponent).join('/')}`

/** Replaces the `asfitted:` links of drawings and Markdown by real ones. */
export const relink = (html: string, place: Place): string =>
  html.replace(/href="asfitted:([^"]+)"/g, (_, key: string) => `href="${hrefOf(key, place)}"`)

/**
 * A printed document holds a part of the pages: what would lead to another page is left as words, and in place of its sheet stands the
 * document that has it. A page that no document has keeps the place for its number, which the print then refuses.
 *
 * @param volumeByAnchor  names of the other documents
 */
export function withoutDeadLinks(html: string, volumeByAnchor: ReadonlyMap<string, string> = new Map()): string {
  const anchors = new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id))
  return html.replace(/(<a\b[^>]*?) href="#([^"]+)"/g, (link, before: string, anchor: string) => (anchors.has(anchor) ? link : before))
    .replace(/<span class="page-of" data-page-of="([^"]+)">000<\/span>/g, (number, anchor: string) => (anchors.has(anchor) ? number : volumeByAnchor.get(anchor) ?? number))
}

/** To a picture of the pack: beside the pages of the site, beside the printed document. */
export const pictureHref = (name: string, { root }: Place): string => `${root}pictures/${name}`

/**
 * Puts the pack's pictures into a drawing, which names them `asfitted-picture:FILE`. One that cannot be shown is taken out; the template
 * says so below.
 */
export const withPictures = (svg: string, pictures: Readonly<Record<string, { readonly name?: string }>>, place: Place): string =>
  svg.replace(/<image href="asfitted-picture:([^"]+)"([^>]*)\/>/g, (_, file: string, rest: string) => {
    const name = pictures[unescaped(file)]?.name
    return name === undefined ? '' : `<image href="${pictureHref(name, place)}"${rest}/>`
  })
const unescaped = (text: string): string => text.replace(/&(quot|lt|gt|amp);/g, (_, name: string) => ({ quot: '"', lt: '<', gt: '>', amp: '&' })[name]!)
