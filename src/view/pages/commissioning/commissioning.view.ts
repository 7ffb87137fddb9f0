/** Commissioning: what was measured against what was calculated. The sheets to measure by are among the workshop documents. */
import type { MeasuredThing } from '../../../model/results/commissioning.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { lineBreak, linkTo } from '../../text.js'
import type { Facts, Page, Paragraph, Text } from '../../view-model.js'
import { measuredBlocks, standing, verdictOf } from './commissioning-measured.js'
import { testSheetPages, testSheetsKey } from '../workshop/test-sheets.view.js'

export function commissioningPages(context: ViewContext): readonly Page[] {
  const { checks } = context.results.commissioning
  return [{
    key: fixedPages.commissioning,
    title: 'Commissioning',
    kicker: null,
    lead: [checks.length === 0
      ? 'No reading is recorded yet. What is entered as measurements is held against the calculation here.'
      : 'What was read on board, held against what was calculated.'],
    printed: [coverageFacts(context), ...toTheSheets(context), ...measuredBlocks(context, { onPaper: true })],
    trail: [],
    blocks: [coverageFacts(context), ...toTheSheets(context), ...measuredBlocks(context)],
  }]
}

const toTheSheets = (context: ViewContext): readonly Paragraph[] => (testSheetPages(context).length === 0 ? []
  : [{ is: 'paragraph', text: ['Sheets to measure by, for what has not been read yet, are among the workshop documents: ', linkTo(testSheetsKey, 'Test sheets'), '.'] }])

function coverageFacts({ results }: ViewContext): Facts {
  const { checks, coverage: { circuits, batteries, residualDevices, buses, transmitters } } = results.commissioning
  const of = (label: string, things: readonly MeasuredThing[]): Facts['entries'] => (things.length === 0 ? [] : [{ label, value: measuredText(things) }])
  const counting = standing(checks)
  const levels = counting.map(check => verdictOf(check).level)
  const levelCount = (level: string): number => levels.filter(each => each === level).length
  return {
    is: 'facts', caption: 'How far the boat has been measured', entries: [
      ...of('Circuits', circuits),
      ...of('Batteries', batteries),
      ...of('Residual-current devices', residualDevices),
      ...of('CAN buses', buses),
      ...of('Radio transmitters', transmitters),
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
