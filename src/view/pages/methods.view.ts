/** Every calculation with its formula and the outside values it was held against, so that each sum can be followed on paper. */
import type { AnyMethod, CheckRow } from '../../calculate/method.js'
import { sayForWorking } from '../../units/format.js'
import { type Quantities, unitOf } from '../../units/quantity.js'
import type { ViewContext } from '../context.js'
import { wordsOf } from '../nomenclature.js'
import { fixedPages } from '../site-map.js'
import { tableOf } from '../tables.js'
import { counted, joined, lineBreak } from '../text.js'
import type { Block, Page, Table, Text, Working, WorkingLine } from '../view-model.js'
import { cite } from '../../references/bibliography.js'

export function methodPages({ registries: { methods } }: ViewContext): readonly Page[] {
  const checks = methods.reduce((sum, method) => sum + method.checks.length, 0)
  return [{
    key: fixedPages.methods,
    title: 'Calculations',
    kicker: null,
    lead: [
      `${counted(methods.length, 'calculation')}, each with its formula and with values from outside that it was held against, ${checks} in all. `,
      'Quantities enter a formula in the unit printed beside their symbol. Nothing is rounded on the way.',
    ],
    printed: null,
    trail: [{ text: 'Basis of calculation', to: fixedPages.basis }],
    blocks: methods.flatMap((method): readonly Block[] => [
      { is: 'heading', text: method.title, anchor: method.id },
      formulaBlock(method),
      checksTable(method),
    ]),
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
