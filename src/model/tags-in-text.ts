/** Tags that a text in Markdown names as `[[P1]]`, outside of code. */

/** `start` and `end`: offsets in the text, the brackets included. */
export interface TagInText { readonly tag: string; readonly start: number; readonly end: number }

/**
 * What may not be read further: a fenced block of code, a code span (which ends with its paragraph at the latest), a character
 * after a backslash. `[[1]](address)` is a link of Markdown.
 */
const outsideCode = (sought: string): RegExp => new RegExp([
  String.raw`(?<=^|\n) {0,3}(?<fence>\`{3,}|~{3,})[^\n]*(?:\n[\s\S]*?(?:\n {0,3}\k<fence>[\`~]*[ \t]*(?=\r?\n|$)|$)|$)`,
  String.raw`(?<!\`)(?<ticks>\`+)(?!\`)(?:(?!\n[ \t\r]*\n)[\s\S])*?(?<!\`)\k<ticks>(?!\`)`,
  String.raw`\\[\s\S]`,
  sought,
].join('|'), 'g')

const tags = outsideCode(String.raw`\[\[(?<tag>[^[\]\r\n]+)\]\](?!\()`)
const targets = outsideCode(String.raw`(?<picture>!?)\[[^[\]\r\n]*\]\([ \t]*<?(?<target>[^\s()<>]+)`)

/** In their order. What stands between the brackets is taken as it is, without blanks around it. */
export const tagsInText = (markdown: string): readonly TagInText[] =>
  [...markdown.matchAll(tags)].flatMap(({ 0: whole, index, groups }) => {
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

/** A picture or a link as Markdown writes them: `![what](target)`, `[words](target)`. `start`: of the target. */
export interface TargetInText { readonly isPicture: boolean; readonly target: string; readonly start: number }

export const targetsInText = (markdown: string): readonly TargetInText[] =>
  [...markdown.matchAll(targets)].flatMap(({ 0: whole, index, groups }) => {
    const target = groups?.['target']
    return target === undefined ? [] : [{ isPicture: groups?.['picture'] === '!', target, start: index + whole.length - target.length }]
  })

/** What a page can lead to from a text of the yard: nothing of the folder, which the pack does not hold as it is. */
export const isWebAddress = (target: string): boolean => /^(https?:\/\/|mailto:|tel:)/i.test(target)
