/** A computed outcome as a sum that can be redone by hand: formula, inputs, result, limit, source, assumptions. */
import type { AnyMethod } from '../../calculate/method.js'
import type { Outcome } from '../../model/results.js'
import { cite } from '../../references/bibliography.js'
import { sayForWorking } from '../../units/format.js'
import { wordsOf } from './nomenclature.js'
import type { ViewContext } from '../context.js'
import type { Block, Paragraph, Text, Working, WorkingLine } from '../view-model.js'

export interface WorkingOptions {
  readonly remarks?: readonly { readonly label: string; readonly text: string }[]
  readonly limit?: Text | null
}

/** The working, or for an outcome that is not computed the reason. */
export function workingOf(context: ViewContext, title: string, outcome: Outcome, { remarks = [], limit = null }: WorkingOptions = {}): Working | Paragraph {
  if (outcome.status === 'not computed') return { is: 'paragraph', text: [{ is: 'strong', text: `${title}: not assessed. ` }, `${outcome.reason}.`] }
  const method = methodOf(context, outcome.method)
  const line = (role: 'input' | 'result') => ([name, value]: [string, number]): WorkingLine => ({
    symbol: (method.symbols as Record<string, string>)[name] ?? null,
    label: wordsOf(name),
    value: sayForWorking(name, value, role),
    remark: null,
  })
  return {
    is: 'working',
    title,
    formula: method.formula,
    inputs: [
      ...Object.entries(outcome.input).map(line('input')),
      ...remarks.map(({ label, text }) => ({ symbol: null, label, value: text, remark: null })),
    ],
    results: Object.entries(outcome.output).map(line('result')),
    limit,
    verdict: null,
    sources: [`Source: ${method.citations.map(cite).join('; ')}.`],
    assumes: method.assumes,
  }
}

/** On paper a formula stands once on a page, with its source; where it is used again only what goes in and what comes out. */
export function formulaOnce(blocks: readonly Block[]): readonly Block[] {
  const titleByFormula = new Map<string, string>()
  return blocks.map(block => {
    if (block.is !== 'working' || block.formula === null) return block
    const key = JSON.stringify([block.formula, block.sources, block.assumes])
    const before = titleByFormula.get(key)
    if (before === undefined) titleByFormula.set(key, block.title)
    return before === undefined ? block : { ...block, formula: null, assumes: [], sources: [`Formula and source as under: ${before}.`] }
  })
}

export function methodOf({ registries }: ViewContext, id: string): AnyMethod {
  const method = registries.methods.find(candidate => candidate.id === id)
  if (method === undefined) throw new Error(`results name the calculation ${id}, which is in no list`)
  return method
}
