/** Sheets of labels at their real size, and the same as tables for label printers. */
import { labelsOnSheet } from '../../model/label-sheet.js'
import type { ViewContext } from '../context.js'
import type { LabelDocument, LabelPrints } from '../view-model.js'
import { labelDrawing } from './label-drawing.js'
import { labelLists } from './label-lists.js'
import { codeOf, type LabelRun, labelRuns, useTitles } from './label-runs.js'
import { pageOf, placed, sheetOf } from './sheet.js'
import { testSheets } from './test-sheets.js'

export function labelPrints(context: ViewContext): LabelPrints {
  const runs = labelRuns(context)
  return { documents: [...runs.map(run => documentOf(context, run)), ...testSheets(runs.map(({ size }) => size))], lists: labelLists(context) }
}

function documentOf(context: ViewContext, { use, size, file, labels, sheetCount }: LabelRun): LabelDocument {
  const each = labelsOnSheet(size)
  return {
    file, title: `${context.vessel.identity.name}: ${useTitles[use]}, ${size.title}`, ...pageOf(size),
    sheets: Array.from({ length: sheetCount }, (_, sheet) => sheetOf(size, labels.slice(sheet * each, (sheet + 1) * each).map((label, i) => placed(size, i, labelDrawing(label, codeOf(context, label)))))),
  }
}
