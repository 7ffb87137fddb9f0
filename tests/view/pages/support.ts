/** What the tests of the page makers share: a context around a vessel, and the words of a page. */
import { calculate, methods } from '../../../src/calculate/calculate.js'
import type { LocatedFinding } from '../../../src/findings/finding.js'
import { findingKinds } from '../../../src/findings/registry.js'
import { readContent } from '../../../src/load/read-content.js'
import type { Results } from '../../../src/model/results.js'
import type { Edition, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { type Registries, type ViewContext, viewContext } from '../../../src/view/context.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Page, Table, Working } from '../../../src/view/view-model.js'

const content = await readContent()

export const registries: Registries = { methods, findingKinds }

export function contextOf(vessel: Vessel, { findings = [], results, edition = 'owner' }: { findings?: readonly LocatedFinding[]; results?: Results; edition?: Edition } = {}): ViewContext {
  const basis = bases[vessel.basis]
  return viewContext(vessel, results ?? calculate(vessel, basis), basis, findings, content, registries, edition)
}

export const tablesOf = (page: Page): readonly Table[] => page.blocks.filter((block): block is Table => block.is === 'table')
export const workingsOf = (page: Page): readonly Working[] => page.blocks.filter((block): block is Working => block.is === 'working')

export function tableIn(page: Page, id: string): Table {
  const table = tablesOf(page).find(candidate => candidate.id === id)
  if (table === undefined) throw new Error(`no table ${id} on page ${page.key}`)
  return table
}

/** A number and its unit are kept together by a no-break space; the tests are written with a plain one. */
const withPlainSpaces = (text: string): string => text.replaceAll('\u00A0', ' ')

/** The cells of a table as plain text, row by row. */
export const cellsOf = (table: Table): readonly (readonly string[])[] => table.rows.map(row => row.cells.map(cell => withPlainSpaces(plainText(cell))))

/** Every word of a page, one block a line. */
export const wordsOn = (page: Page): string =>
  withPlainSpaces([page.title, plainText(page.lead ?? []), ...page.blocks.map(wordsIn)].join('\n'))

function wordsIn(block: Block): string {
  switch (block.is) {
    case 'heading': return block.text
    case 'paragraph': return plainText(block.text)
    case 'markdown': return block.source
    case 'callout': return `${block.signal} ${block.title} ${block.markdown}`
    case 'table': return [block.caption, ...cellsOf(block).map(row => row.join(' | ')), plainText(block.note ?? []), block.rows.length === 0 ? block.empty : ''].join('\n')
    case 'facts': return block.entries.map(({ label, value }) => `${label} ${plainText(value)}`).join('\n')
    case 'working': return [block.title, ...[...block.inputs, ...block.results].map(({ label, value }) => `${label} ${value}`), ...block.sources, ...block.assumes].join('\n')
    case 'spoken': return [block.caption, ...block.lines.map(({ say, blank }) => `${plainText(say)} ${blank ?? ''}`)].join('\n')
    case 'reach': return [block.caption, ...block.entries.map(({ act, what, where, remark }) => [act, plainText(what), plainText(where ?? []), plainText(remark ?? [])].filter(part => part !== null && part !== '').join(' | '))].join('\n')
    case 'cards': return block.cards.map(({ title, text }) => `${title}: ${plainText(text)}`).join('\n')
    case 'picture': return [plainText(block.caption), ...block.list.map(({ number, text }) => `${number} ${plainText(text)}`)].join('\n')
    case 'cards': return block.cards.map(({ title, text }) => `${title} ${plainText(text)}`).join('\n')
    case 'steps': return [block.caption, plainText(block.note ?? []), ...block.steps.map(({ number, title, where, lines }) => [`${number} ${plainText(title)}`, plainText(where ?? []), ...lines.map(({ label, text }) => `${label}: ${plainText(text)}`)].join(' | '))].join('\n')
    case 'drawing': return `${block.caption}\n${plainText(block.description)}`
    case 'findings': return [block.findings.length === 0 ? block.empty : '', ...block.findings.map(({ id, message, limit, remedy }) => `${id} ${message} ${limit} ${remedy}`)].join('\n')
    default: throw new Error(`no reference page has a ${block.is}`)
  }
}
