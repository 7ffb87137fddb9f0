/** Markdown to HTML, for the manual's own text and the yard's. HTML in the source is shown as text, never passed on. */
import MarkdownIt from 'markdown-it'
import { type Place, relink } from './links.js'

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false })
const standardLinks = markdown.validateLink.bind(markdown)
markdown.validateLink = url => url.startsWith('asfitted:') || standardLinks(url)

export const markdownToHtml = (source: string, place: Place): string => relink(markdown.render(source), place)
