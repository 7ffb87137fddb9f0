/** Every calculation with its formula and the outside values it was held against, so that each sum can be followed on paper. */
import type { AnyMethod, CheckRow } from '../../calculate/method.js'
import { sayForWorking } from '../../units/format.js'
import { type Quantities, unitOf } from '../../units/quantity.js'
import type { ViewContext } from '../context.js'
import { wordsOf } from '../parts/nomenclature.js'
import { fixedPages } from '../site-map.js'
import { plainText, tableOf } from '../tables.js'
import { counted, joined, lineBreak } from '../text.js'
import type { Block, Page, Table, Text, Working, WorkingLine } from '../view-model.js'
import { cite } from '../../references/bibliography.js'

export function methodPages({ registries: { methods } }: ViewContext): readonly Page[] {
  const checks = methods.reduce((sum, method) => sum + method.checks.length, 0)
  const blocksFor = (held: (method: AnyMethod) => readonly Block[]): readonly Block[] => methods.flatMap((method): readonly Block[] =>
    [{ is: 'heading', text: method.title, anchor: method.id }, ...held(method)])
  return [{
    key: fixedPages.methods,
    title: 'Calculations',
    kicker: null,
    lead: [
      `${counted(methods.length, 'calculation')}, each with its formula and with values from outside that it was held against, ${checks} in all. `,
      'Quantities enter a formula in the unit printed beside their symbol. Nothing is rounded on the way.',
    ],
    printed: blocksFor(method => [printedFormula(method)]),
    trail: [{ text: 'Basis of calculation', to: fixedPages.basis }],
    blocks: blocksFor(method => [formulaBlock(method), checksTable(method)]),
  }]
}

function formulaBlock(method: AnyMethod): Working {
  const symbols = Object.entries(method.symbols as Readonly<Record<string, string>>)
  const inputs = new Set(Object.keys(method.checks[0]?.input ?? {}))
  const line = ([name, symbol]: [string, string]): WorkingLine =>
    ({ symbol, label: wordsOf(name), value: unitOf(name)?.symbol || 'without unit', remark: null })
  return {
    is: 'working',
    title: 'Formula',
    formula: method.formula,
    inputs: symbols.filter(([name]) => inputs.has(name)).map(line),
    results: symbols.filter(([name]) => !inputs.has(name)).map(line),
    limit: null,
    verdict: null,
    sources: [`Source: ${method.citations.map(cite).join('; ')}.`],
    assumes: method.assumes,
  }
}

type Check = CheckRow<Quantities, Quantities>

const mostPrinted = 2
/** What others have published tells more than a sum of our own. */
const weight: Readonly<Record<Check['origin'], number>> = { 'published': 0, 'other program': 1, 'by hand': 2 }

/** On paper the checks that tell most, in a line each; the rest is on the site. */
function printedFormula(method: AnyMethod): Working {
  const formula = formulaBlock(method)
  const checks = (method.checks as readonly Check[]).toSorted((a, b) => weight[a.origin] - weight[b.origin])
  const more = checks.length - mostPrinted
  return {
    ...formula,
    sources: [
      ...formula.sources,
      ...checks.slice(0, mostPrinted).map(check => checkLine(method, check)),
      ...(more > 0 ? [`${counted(more, 'further check')} on the site.`] : []),
    ],
  }
}

function checkLine(method: AnyMethod, { origin, place, input, expected, tolerance }: Check): string {
  const inLine = (text: Text): string => plainText(text.map(part => (part === lineBreak ? ', ' : part)))
  return `Held against (${origin}): ${place}: ${inLine(quantitiesText(input))}; expected ${inLine(expectedText(expected, tolerance))}, calculated here ${inLine(calculatedText(method, input, expected))}.`
}

function checksTable(method: AnyMethod): Table {
  return tableOf(method.checks as readonly Check[], {
    id: `held-against-${method.id}`,
    caption: `Held against: ${method.title}`,
    empty: 'It was held against nothing.',
    columns: [
      { title: 'Origin', width: 'short', cell: ({ origin }) => [origin] },
      { title: 'Place', width: 'text', cell: ({ place }) => [place] },
      { title: 'Inputs', width: 'text', cell: ({ input }) => quantitiesText(input) },
      { title: 'Expected', width: 'text', cell: ({ expected, tolerance }) => expectedText(expected, tolerance) },
      { title: 'Calculated here', width: 'text', cell: ({ input, expected }) => calculatedText(method, input, expected) },
    ],
  })
}

const quantitiesText = (quantities: Readonly<Partial<Quantities>>): Text =>
  joined(Object.entries(quantities).map(([name, value]) => [`${wordsOf(name)} ${sayForWorking(name, value!)}`]), lineBreak)

/** A tolerance of rounding noise is not worth printing. */
const expectedText = (expected: Readonly<Partial<Quantities>>, tolerance: number): Text =>
  joined(Object.entries(expected).map(([name, value]) => [
    sayForWorking(name, value!), ...(tolerance < 1e-6 ? [] : [` ± ${sayForWorking(name, tolerance)}`]),
  ]), lineBreak)

function calculatedText(method: AnyMethod, input: Quantities, expected: Readonly<Partial<Quantities>>): Text {
  const output = method.compute(input) as Quantities
  return joined(Object.keys(expected).map(name => [sayForWorking(name, output[name]!)]), lineBreak)
}
