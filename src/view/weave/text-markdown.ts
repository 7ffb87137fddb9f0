/** Inline text as Markdown, for words that are woven into a line. */
import type { Inline, Text } from '../view-model.js'

/** What Markdown would take for a mark stands as it is written. */
const plain = (text: string): string => text.replace(/[\\`*_~[\]<>|&!#]/g, '\\$&')

export const markdownOf = (text: Text | string): string => (typeof text === 'string' ? plain(text) : text.map(inlineMarkdown).join(''))

function inlineMarkdown(part: Inline): string {
  if (typeof part === 'string') return plain(part)
  if (part.is === 'break' || part.is === 'page number') return ' '
  if (part.is === 'link') return `[${plain(part.text)}](asfitted:${part.to})`
  return part.is === 'strong' || part.is === 'tag' ? `**${plain(part.text)}**` : plain(part.text)
}
