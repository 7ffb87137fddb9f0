/**
 * General text with this boat's facts woven in. A line of its own `{{ where: battery isolator, switch }}` is replaced by
 * blocks, `{{ name }}` inside a line by words; what stands between `{{ if: shore inlet }}`, `{{ else }}` and `{{ end }}`,
 * lines of their own, holds only for a boat that has one of those kinds on board. Numbers of steps count on over both.
 */
import { isThere } from '../../model/lookup.js'
import { isEquipmentKind } from '../../references/equipment-kinds.js'
import type { ViewContext } from '../context.js'
import { plainInMarkdown } from '../text.js'
import type { Block } from '../view-model.js'
import { directives } from './directives.js'
import { numberedOn } from './numbering.js'
import { wovenWords } from './words.js'

/** Errors: a directive or a word that there is none of, an `if` without its `end`; the text is part of the program. */
export function weave(context: ViewContext, markdown: string): readonly Block[] {
  const blocks: Block[] = []
  let text: string[] = []
  const flush = (): void => {
    const source = text.join('\n').trim()
    if (source !== '') blocks.push({ is: 'markdown', source: withWords(context, source) })
    text = []
  }
  for (const line of numberedOn(linesThatHold(context, markdown))) {
    const { name, words } = directiveIn(line) ?? {}
    const directive = name === undefined ? undefined : directives[name]
    if (name === undefined || (words === undefined && directive === undefined)) text.push(line)
    else if (directive === undefined) throw new Error(`no directive "${name}" for general text`)
    else {
      flush()
      blocks.push(...directive(context, words ?? []))
    }
  }
  flush()
  return blocks
}

interface DirectiveLine { readonly name: string; readonly words?: readonly string[] }

function directiveIn(line: string): DirectiveLine | null {
  const [, name, , words] = /^\s*\{\{ *([a-z-]+)( *: *([^{}]+?))? *\}\}\s*$/.exec(line) ?? []
  return name === undefined ? null : words === undefined ? { name } : { name, words: words.split(',').map(word => word.trim()) }
}

function linesThatHold(context: ViewContext, markdown: string): readonly string[] {
  const holding: string[] = []
  const open: boolean[] = []
  for (const line of markdown.split('\n')) {
    const directive = directiveIn(line)
    if (directive?.name === 'if') open.push(hasOneOf(context, directive.words ?? []))
    else if (directive?.name === 'else') open.push(!popped(open))
    else if (directive?.name === 'end') popped(open)
    else if (open.every(Boolean)) holding.push(line)
  }
  if (open.length > 0) throw new Error('general text: an "if" without its "end"')
  return holding
}

function popped(open: boolean[]): boolean {
  const holds = open.pop()
  if (holds === undefined) throw new Error('general text: an "else" or "end" without its "if"')
  return holds
}

function hasOneOf({ vessel }: ViewContext, kinds: readonly string[]): boolean {
  const strange = kinds.filter(kind => !isEquipmentKind(kind) && kind !== 'battery')
  if (strange.length > 0) throw new Error(`general text: no kind of equipment "${strange[0]}"`)
  return vessel.equipment.some(item => isThere(item) && kinds.includes(item.kind)) || (kinds.includes('battery') && vessel.batteries.some(isThere))
}

const withWords = (context: ViewContext, source: string): string => source.replace(/\{\{ *([a-z-]+) *\}\}/g, (_, name: string) => {
  const word = wovenWords[name]
  if (word === undefined) throw new Error(`general text: no fact "${name}" to weave in`)
  return plainInMarkdown(word(context))
})
