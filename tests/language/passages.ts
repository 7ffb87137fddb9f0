/** Everything that a reader reads: the general text as written, and each page of the sample vessel's pack, passage by passage. */
import { fileURLToPath } from 'node:url'
import { examine, viewOf } from '../../src/build.js'
import { forEdition } from '../../src/edition.js'
import { namedThings } from '../../src/load/named-things.js'
import { readContent } from '../../src/load/read-content.js'
import type { Block, Inline, Page, Text, View } from '../../src/view/view-model.js'

/** One sentence or more that stand together, with the place where to look for it. */
export interface Passage { readonly where: string; readonly text: string }

export async function contentPassages(): Promise<readonly Passage[]> {
  const content = await readContent()
  const of = (folder: string, key: string, { title, markdown, lead }: { title: string; markdown: string; lead?: string }): readonly Passage[] =>
    [title, ...(lead === undefined ? [] : [lead]), ...plainMarkdown(markdown)].map(text => ({ where: `content/${folder}${key}.md`, text }))
  return [
    ...[...content.pages].flatMap(([key, page]) => of('', key, page)),
    ...content.cautions.flatMap(caution => of('cautions/', caution.key, caution)),
    ...[...content.emergency].flatMap(([key, page]) => of('emergency/', key, page)),
    ...[...content.owner].flatMap(([key, page]) => of('owner/', key, page)),
    ...content.operating.flatMap(text => of('operating/', text.key, text)),
    ...[...content.systems].flatMap(([key, page]) => of('systems/', key, page)),
    ...content.faultTrees.flatMap(tree => of('fault-trees/', tree.key, tree)),
    ...content.maintenanceTasks.flatMap(task => [task.title, ...task.how, task.inOrder ?? ''].filter(text => text !== '').map(text => ({ where: 'content/maintenance', text }))),
  ]
}

/** The sample vessel's pack as the owner gets it, on a day on which things are due; and everything that has a tag or a number in her data. */
export async function samplePack(): Promise<{ readonly view: View; readonly tags: ReadonlySet<string> }> {
  const examined = await examine(fileURLToPath(new URL('../../sample-vessel', import.meta.url)), { asOf: '2026-11-29' })
  if (examined.status !== 'examined') throw new Error('the sample vessel is not a vessel')
  return { view: await viewOf(forEdition(examined, 'owner')), tags: new Set([...namedThings(examined.source.entries).map(({ tag }) => tag), ...examined.source.entries.flatMap(({ id }) => id ?? [])]) }
}

export const viewPassages = ({ pages }: View): readonly Passage[] => pages.flatMap(page => pagePassages(page).map(text => ({ where: page.key, text })))

function pagePassages({ title, kicker, lead, blocks, printed, trail }: Page): readonly string[] {
  const all = [...blocks, ...(printed ?? []).filter(block => !blocks.includes(block))]
  return [title, kicker ?? '', plain(lead ?? []), ...trail.map(({ text }) => text), ...all.flatMap(blockPassages)].filter(text => text !== '')
}

function blockPassages(block: Block): readonly string[] {
  switch (block.is) {
    case 'heading': return [block.text]
    case 'paragraph': return [plain(block.text)]
    case 'markdown': return plainMarkdown(block.source)
    case 'callout': return [block.title, ...plainMarkdown(block.markdown)]
    case 'facts': return [block.caption ?? '', ...block.entries.flatMap(({ label, value }) => [label, plain(value)])]
    case 'table': return [block.caption, ...block.columns.map(({ title }) => title), ...block.rows.flatMap(({ cells }) => cells.map(plain)), plain(block.note ?? []), block.rows.length === 0 ? block.empty : '']
    case 'diagram':
    case 'drawing': return [block.caption, plain(block.description)]
    case 'working': return [block.title, ...[...block.inputs, ...block.results].flatMap(({ label, remark }) => [label, plain(remark ?? [])]), ...block.sources, ...block.assumes, plain(block.limit ?? [])]
    case 'findings': return block.findings.flatMap(({ name, subject, message, limit, remedy }) => [name.replaceAll('-', ' '), plain(subject), message, limit ?? '', remedy])
    case 'cards': return block.cards.flatMap(({ title, text }) => [title, plain(text)])
    case 'spoken': return [block.caption, ...block.lines.flatMap(({ say, blank }) => [plain(say), blank ?? ''])]
    // A kind of block of another part: whatever text it holds.
    default: return textsIn(block)
  }
}

/** Every text in a value, without keys and addresses. */
const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(textsIn)
  return value === null || typeof value !== 'object' ? [] : Object.entries(value).filter(([key]) => !['is', 'id', 'to', 'svg', 'mermaid', 'file', 'anchor'].includes(key)).flatMap(([, part]) => textsIn(part))
}

/** Tags and names of files are no words. */
const plain = (text: Text): string => text.map(inlineWords).join('').trim()
const inlineWords = (inline: Inline): string => {
  if (typeof inline === 'string') return inline
  if (inline.is === 'break') return '\n'
  if (inline.is === 'page number' || inline.is === 'tag' || inline.is === 'file' || inline.is === 'pack file') return ' '
  return inline.is === 'link' && inline.tag ? ' ' : inline.text
}

/** Its paragraphs, list items, cells and headings, without marks, addresses, code, directives and the line that names a source. */
const plainMarkdown = (markdown: string): readonly string[] =>
  markdown.replace(/^\s*\{\{.*\}\}\s*$/gm, '\n').replace(/\{\{[^}]*\}\}/g, 'x').replace(/\]\([^)]*\)/g, ']').replace(/```[\s\S]*?```/g, '\n').replace(/`[^`]*`/g, 'x')
    .replace(/\\([\\`*_~[\]<>|&])/g, '$1').replace(/\n\*Source: [^\n]*/g, '').split(/\n\s*(?=\n|[-#|]|\d+\.\s)|\|/)
    .map(piece => piece.replace(/[*#[\]]/g, '').replace(/^\s*(-|\d+\.)\s+/, '').replace(/\s+/g, ' ').trim()).filter(piece => piece !== '' && !/^-+$/.test(piece))
