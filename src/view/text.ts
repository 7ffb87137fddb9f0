/** Small makers of inline text. */
import type { Inline, Level, PageKey, Text } from './view-model.js'

export const muted = (text: string): Inline => ({ is: 'muted', text })
export const strong = (text: string): Inline => ({ is: 'strong', text })
export const verdict = (level: Level, text: string): Inline => ({ is: 'verdict', level, text })
export const pageNumber = (to: PageKey): Inline => ({ is: 'page number', to })
export const linkTo = (to: PageKey, text: string): Inline => ({ is: 'link', tag: false, to, text })
export const lineBreak: Inline = { is: 'break' }

/** What a cell shows for a fact that is not recorded. */
export const notRecorded: Inline = muted('not recorded')
export const dash: Text = [muted('–')]

export const orNotRecorded = (text: string | null): Text => (text === null ? [notRecorded] : [text])
export const orDash = (text: string | null): Text => (text === null ? dash : [text])

/** Parts with a separator between them. */
export function joined(parts: readonly Text[], separator: Inline = ', '): Text {
  return parts.flatMap((part, i) => (i === 0 ? part : [separator, ...part]))
}

/** `2 cables`, `1 cable`. */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`

/** Text as Markdown that shows it letter for letter. */
export const plainInMarkdown = (text: string): string => text.replace(/[\\`*_~[\]<>|&!#]/g, '\\$&')
