/** Inline text as Markdown, for words that are woven into a line. */
import { plainInMarkdown } from '../text.js'
import type { Inline, Text } from '../view-model.js'

export const markdownOf = (text: Text | string): string => (typeof text === 'string' ? plainInMarkdown(text) : text.map(inlineMarkdown).join(''))

function inlineMarkdown(part: Inline): string {
  if (typeof part === 'string') return plainInMarkdown(part)
  if (part.is === 'break' || part.is === 'page number') return ' '
  if (part.is === 'link') return `[${plainInMarkdown(part.text)}](asfitted:${part.to})`
  return part.is === 'strong' || part.is === 'tag' ? `**${plainInMarkdown(part.text)}**` : plainInMarkdown(part.text)
}
