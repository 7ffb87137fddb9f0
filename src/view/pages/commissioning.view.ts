/** Commissioning: what was measured against what was calculated, and sheets for what has not been measured yet. */
import type { MeasuredThing } from '../../model/results/commissioning.js'
import { calloutOf } from './safety.view.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { lineBreak } from '../text.js'
import type { Block, Facts, Page, Text } from '../view-model.js'
import { measuredBlocks, standing, verdictOf } from './commissioning-measured.js'
import { testSheets } from './commissioning-sheets.js'

export function commissioningPages(context: ViewContext): readonly Page[] {
  const { checks } = context.results.commissioning
  return [{
    key: fixedPages.commissioning,
    title: 'Commissioning',
    kicker: null,
    lead: [checks.length === 0
      ? 'No reading is recorded yet. Below are sheets to measure by; what is then entered as measurements is held against the calculation here.'
      : 'What was read on board, held against what was calculated; and sheets for what has not been read yet.'],
    printed: null,
    trail: [],
    blocks: [coverageFacts(context), ...measuredBlocks(context), ...sheetBlocks(context)],
  }]
}

function coverageFacts({ results }: ViewContext): Facts {
  const { checks, coverage: { circuits, batteries, residualDevices } } = results.commissioning
  const of = (label: string, things: readonly MeasuredThing[]): Facts['entries'] => (things.length === 0 ? [] : [{ label, value: measuredText(things) }])
  const counting = standing(checks)
  const levels = counting.map(check => verdictOf(check).level)
  const levelCount = (level: string): number => levels.filter(each => each === level).length
  return {
    is: 'facts', caption: 'How far the boat has been measured', entries: [
      ...of('Circuits', circuits),
      ...of('Batteries', batteries),
      ...of('Residual-current devices', residualDevices),
      ...(checks.length === 0 ? [] : [{
        label: 'Values read',
        value: [`${counting.length}: ${levelCount('good')} within, ${levelCount('error')} outside a limit, ${levelCount('warning')} outside tolerance, ${levelCount('not assessed')} not or not wholly assessed`] as Text,
      }]),
    ],
  }
}

function measuredText(things: readonly MeasuredThing[]): Text {
  const complete = things.filter(({ missing }) => missing.length === 0).length
  const begun = things.filter(({ numbers }) => numbers.length > 0).length
  return [`${complete} of ${things.length} completely measured`, ...(begun > complete ? [`, ${begun - complete} in part`] : []), ...(things.length > begun ? [lineBreak, `${things.length - begun} not yet`] : [])]
}

/** Cautions that whoever measures must have read, by their files in `content/cautions/`. */
const cautionKeys = ['shore-power-and-mains', 'live-working', 'welding-and-insulation-tests']

function sheetBlocks(context: ViewContext): readonly Block[] {
  const sheets = testSheets(context)
  const { circuits, batteries, residualDevices } = context.results.commissioning.coverage
  if (circuits.length + batteries.length + residualDevices.length === 0) return []
  if (sheets.length === 0) return [{ is: 'heading', text: 'Test sheets', anchor: 'test-sheets' }, { is: 'paragraph', text: ['Everything has been measured. No sheet is left to fill in.'] }, signOff]
  return [
    { is: 'heading', text: 'Test sheets', anchor: 'test-sheets' },
    { is: 'callout', signal: 'WARNING', title: 'Before anything is measured', markdown: beforeMeasuring },
    ...context.content.cautions.filter(({ key }) => cautionKeys.includes(key)).map(calloutOf),
    { is: 'markdown', source: howToMeasure },
    ...sheets,
    signOff,
  ]
}

const beforeMeasuring = `
- Mains voltage and residual-current tests are for licensed persons only. Local codes and their forms come first; these sheets do not replace them.
- The insulation test is for a competent person, on a circuit that is dead, with all electronics disconnected at both ends. Never on a live circuit, never on data, antenna or sensor cables. Discharge the circuit afterwards.
- A battery gives enough current to melt a tool. Take off rings and watches, cover the other terminal, and keep flame and spark away.
- Secure fans, pumps, windlass and thrusters, and keep people clear, before a load is switched on.
- If a reading is not what the sheet expects, stop and find out why before the next one.
`

const howToMeasure = `
How to fill in a sheet:

1. **Insulation** first, dead, equipment disconnected: both conductors joined, against earth or hull. The sheet gives the test voltage and the least value.
2. **Polarity**, before the load is connected: at the load's connector, with the meter the right way round. Write *right* or *reversed*.
3. **Voltage and current**, load on and at work, everything else as in normal use: the voltage at the source (the battery or whatever the circuit starts from), the voltage at the load's own terminals and the current of the circuit, all at the same time. At least half of the current on the sheet must flow.
4. **Battery**: voltage after some hours of rest; then voltage and current at two different loads on the same day, the lighter load first.
5. **Residual-current device**: by its test button; then current and time with a tester.
6. Give each reading a number, and enter it with date, name and instrument under *measurements* in the vessel's data. Three numbers make a voltage drop; without the current it cannot be held against anything.

*Source: common practice.*
`

const signOff: Block = {
  is: 'table', id: 'sign-off', caption: 'Sign-off', forPen: true, empty: '',
  columns: [
    { title: 'I have', unit: null, align: 'left', width: 'text' },
    { title: 'Name, licence', unit: null, align: 'left', width: 'text' },
    { title: 'Signature', unit: null, align: 'left', width: 'text' },
    { title: 'Date', unit: null, align: 'left', width: 'short' },
  ],
  rows: ['measured what is recorded here', 'checked the readings and the open points', 'received the boat with the open points named'].map(words => ({ cells: [[words], [], [], []], level: null, anchor: null })),
  note: ['A signature confirms the readings. It does not certify conformity with any rule.'],
}
