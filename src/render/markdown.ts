/** Markdown to HTML, for the manual's own text and the yard's. HTML in the source is shown as text, never passed on. */
import MarkdownIt from 'markdown-it'
import { isWebAddress } from '../model/tags-in-text.js'
import { type Place, relink } from './links.js'

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false })
const standardLinks = markdown.validateLink.bind(markdown)
markdown.validateLink = url => url.startsWith('asfitted:') || standardLinks(url)

// A page is read without internet, and lies where no file of the vessel folder is: of a picture its words are left, and so of a link to a file.
markdown.renderer.rules.image = (tokens, at) => markdown.utils.escapeHtml(tokens[at]!.content)
markdown.core.ruler.push('dead links', ({ tokens }) => {
  for (const { children } of tokens) {
    let isDead = false
    for (const token of children ?? []) {
      if (token.type === 'link_open') isDead = !leads(String(token.attrGet('href') ?? ''))
      if (isDead && (token.type === 'link_open' || token.type === 'link_close')) token.hidden = true
      if (token.type === 'link_close') isDead = false
    }
  }
})
const leads = (target: string): boolean => target.startsWith('asfitted:') || isWebAddress(target)

// The title of the page stands above every heading of the text.
markdown.core.ruler.push('headings below the page', ({ tokens }) => {
  for (const token of tokens) if (token.tag === 'h1') token.tag = 'h2'
})

export const markdownToHtml = (source: string, place: Place): string => relink(markdown.render(source), place)
