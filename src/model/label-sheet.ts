/** Where the labels of a sheet lie; millimetres from its upper left corner. */
import type { LabelSize } from './vessel.js'

/** What is stuck on: of a wrap-around label the printed part and the clear tail below it. */
export const wholeHeightMm = ({ labelHeightMm, clearTailMm }: LabelSize): number => labelHeightMm + clearTailMm
export const labelsOnSheet = ({ columnsCount, rowsCount }: LabelSize): number => columnsCount * rowsCount

/** Row by row from the upper left. */
export function labelPlace({ columnsCount, leftMm, topMm, stepAcrossMm, stepDownMm }: LabelSize, i: number): { readonly xMm: number; readonly yMm: number } {
  return { xMm: leftMm + (i % columnsCount) * stepAcrossMm, yMm: topMm + Math.floor(i / columnsCount) * stepDownMm }
}

/** A hundredth of a millimetre: sizes that were converted from inches do not end on a round one. */
const toleranceMm = 0.01

export type LabelFault =
  | { readonly is: 'off the sheet'; readonly field: 'columnsCount' | 'rowsCount'; readonly reachMm: number; readonly pageMm: number }
  | { readonly is: 'overlap'; readonly field: 'stepAcrossMm' | 'stepDownMm'; readonly stepMm: number; readonly labelMm: number }
  | { readonly is: 'no tail'; readonly field: 'clearTailMm' }

/** Why labels of a size cannot be printed: they run off the sheet, lie over one another, or cannot go around a cable. */
export function labelFaults(size: LabelSize): readonly LabelFault[] {
  const height = wholeHeightMm(size)
  const last = labelPlace(size, labelsOnSheet(size) - 1)
  const off = (field: 'columnsCount' | 'rowsCount', reachMm: number, pageMm: number): readonly LabelFault[] =>
    (reachMm > pageMm + toleranceMm ? [{ is: 'off the sheet', field, reachMm, pageMm }] : [])
  const over = (field: 'stepAcrossMm' | 'stepDownMm', count: number, stepMm: number, labelMm: number): readonly LabelFault[] =>
    (count > 1 && stepMm < labelMm - toleranceMm ? [{ is: 'overlap', field, stepMm, labelMm }] : [])
  return [
    ...off('columnsCount', last.xMm + size.labelWidthMm, size.pageWidthMm),
    ...off('rowsCount', last.yMm + height, size.pageHeightMm),
    ...over('stepAcrossMm', size.columnsCount, size.stepAcrossMm, size.labelWidthMm),
    ...over('stepDownMm', size.rowsCount, size.stepDownMm, height),
    ...(size.form === 'wrap' && size.clearTailMm <= 0 ? [{ is: 'no tail', field: 'clearTailMm' } as const] : []),
  ]
}
