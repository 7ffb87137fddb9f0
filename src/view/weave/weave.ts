/**
 * General text with this boat's facts woven in. A line of its own `{{ where: battery isolator, switch }}` is replaced by
 * blocks, `{{ name }}` or `{{ at: seacock }}` inside a line by words; what stands between `{{ if: shore inlet }}`, `{{ else }}`
 * and `{{ end }}`, lines of their own, holds only for a boat that has one of those kinds on board. The lines that do not hold are
 * woven too and thrown away: a fault in general text shows on any boat. Numbers of steps count on over conditions and directives.
 */
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'
import { holds } from './conditions.js'
import { directives } from './directives.js'
import { numberedOn } from './numbering.js'
import { markdownOf } from './text-markdown.js'
import { wovenWords } from './words.js'

/** Errors: a directive, word, kind or fact that there is none of; an `if` without its `end`; braces that are no directive. */
export function weave(context: ViewContext, markdown: string): readonly Block[] {
  const blocks: Block[] = []
  let text: string[] = []
  const flush = (): void => {
    const source = text.join('\n').trim()
    if (source !== '') blocks.push({ is: 'markdown', source })
    text = []
  }
  for (const { line, kept } of numbered(heldLines(context, markdown))) {
    const { name, words } = directiveIn(line) ?? {}
    const directive = name === undefined || !Object.hasOwn(directives, name) ? undefined : directives[name]
    if (directive !== undefined) {
      const made = directive(context, words ?? [])
      if (!kept) continue
      flush()
      for (const block of made) addTo(blocks, block)
    } else {
      const woven = withWords(context, line)
      if (kept) text.push(woven)
    }
  }
  flush()
  return blocks
}

/** Steps that hold count on over those that do not. */
function numbered(lines: readonly Line[]): readonly Line[] {
  const counted = numberedOn(lines.filter(({ kept }) => kept).map(({ line }) => line))
  let next = 0
  return lines.map(line => (line.kept ? { ...line, line: counted[next++]! } : line))
}

/** Lists to reach for that follow one another under one caption are one list. */
function addTo(blocks: Block[], block: Block): void {
  const last = blocks.at(-1)
  if (block.is !== 'reach' || last?.is !== 'reach' || last.caption !== block.caption) blocks.push(block)
  else blocks[blocks.length - 1] = { ...last, entries: [...last.entries, ...block.entries] }
}

interface DirectiveLine { readonly name: string; readonly words?: readonly string[] }

const wordsIn = (written: string): readonly string[] => written.split(',').map(word => word.trim())

function directiveIn(line: string): DirectiveLine | null {
  const [, name, , words] = /^\s*\{\{ *([a-z-]+)( *: *([^{}]+?))? *\}\}\s*$/.exec(line) ?? []
  return name === undefined ? null : words === undefined ? { name } : { name, words: wordsIn(words) }
}

interface Line { readonly line: string; readonly kept: boolean }
interface Open { readonly holds: boolean; readonly inElse: boolean }

/** Every line but the conditions, and whether all that it stands under holds. */
function heldLines(context: ViewContext, markdown: string): readonly Line[] {
  const lines: Line[] = []
  const open: Open[] = []
  const close = (word: string): Open => {
    const closed = open.pop()
    if (closed === undefined) throw new Error(`general text: an "${word}" without its "if"`)
    return closed
  }
  for (const line of markdown.split('\n')) {
    const { name, words } = directiveIn(line) ?? {}
    if (name === 'if') open.push({ holds: holds(context, words ?? []), inElse: false })
    else if (name === 'else') {
      const before = close('else')
      if (before.inElse) throw new Error('general text: a second "else" to one "if"')
      open.push({ holds: !before.holds, inElse: true })
    } else if (name === 'end') close('end')
    else lines.push({ line, kept: open.every(each => each.holds) })
  }
  if (open.length > 0) throw new Error('general text: an "if" without its "end"')
  return lines
}

const wordPattern = /( ?)\{\{ *([a-z-]+)(?: *: *([^{}]+?))? *\}\}/g

/** Words that come to nothing take the blank before them along. */
function withWords(context: ViewContext, line: string): string {
  // Looked for before facts are woven in: a name may have braces of its own.
  if (/\{\{|\}\}/.test(line.replace(wordPattern, ''))) throw new Error(`general text: braces that are no directive: ${line.trim()}`)
  return line.replace(wordPattern, (_, blank: string, name: string, words?: string) => {
    const word = Object.hasOwn(wovenWords, name) ? wovenWords[name]! : null
    if (word === null) throw new Error(`general text: no directive and no fact "${name}"`)
    const made = markdownOf(word(context, words === undefined ? [] : wordsIn(words)))
    return made === '' ? '' : `${blank}${made}`
  })
}
