/** Tags that a text in Markdown names as `[[P1]]`, outside of code. */

/** `start` and `end`: offsets in the text, the brackets included. */
export interface TagInText { readonly tag: string; readonly start: number; readonly end: number }

/**
 * What may not be read further: a fenced block of code, a code span (which ends with its paragraph at the latest), a character
 * after a backslash. `[[1]](address)` is a link of Markdown.
 */
const pieces = new RegExp([
  String.raw`(?<=^|\n) {0,3}(?<fence>\`{3,}|~{3,})[^\n]*(?:\n[\s\S]*?(?:\n {0,3}\k<fence>[\`~]*[ \t]*(?=\r?\n|$)|$)|$)`,
  String.raw`(?<!\`)(?<ticks>\`+)(?!\`)(?:(?!\n[ \t\r]*\n)[\s\S])*?(?<!\`)\k<ticks>(?!\`)`,
  String.raw`\\[\s\S]`,
  String.raw`\[\[(?<tag>[^[\]\r\n]+)\]\](?!\()`,
].join('|'), 'g')

/** In their order. What stands between the brackets is taken as it is, without blanks around it. */
export const tagsInText = (markdown: string): readonly TagInText[] =>
  [...markdown.matchAll(pieces)].flatMap(({ 0: whole, index, groups }) => {
    const tag = groups?.['tag']?.trim()
    return tag === undefined || tag === '' ? [] : [{ tag, start: index, end: index + whole.length }]
  })

/** The text with each of its tags replaced. */
export function replaceTags(markdown: string, by: (tag: string) => string): string {
  let done = ''
  let from = 0
  for (const { tag, start, end } of tagsInText(markdown)) {
    done += markdown.slice(from, start) + by(tag)
    from = end
  }
  return done + markdown.slice(from)
}
