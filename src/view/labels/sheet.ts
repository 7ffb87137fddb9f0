/** A sheet as wide and high as the stock, labels at their places. */
import { labelPlace, wholeHeightMm } from '../../model/label-sheet.js'
import type { LabelSize } from '../../model/vessel.js'
import { element } from '../drawings/svg.js'
import type { LabelDocument } from '../view-model.js'
import { mm } from './label-drawing.js'

export const pageOf = ({ pageWidthMm, pageHeightMm }: LabelSize): Pick<LabelDocument, 'pageWidth' | 'pageHeight'> => ({ pageWidth: `${mm(pageWidthMm)}mm`, pageHeight: `${mm(pageHeightMm)}mm` })

export const sheetOf = ({ pageWidthMm, pageHeightMm }: LabelSize, parts: readonly string[]): string => element('svg', {
  xmlns: 'http://www.w3.org/2000/svg', width: `${mm(pageWidthMm)}mm`, height: `${mm(pageHeightMm)}mm`, viewBox: `0 0 ${mm(pageWidthMm)} ${mm(pageHeightMm)}`,
}, parts.join(''))

/** Cut off at the label's edge, so that one with too much on it spoils no other. */
export function placed(size: LabelSize, i: number, drawing: string): string {
  const { xMm, yMm } = labelPlace(size, i)
  return element('svg', { x: mm(xMm), y: mm(yMm), width: mm(size.labelWidthMm), height: mm(wholeHeightMm(size)) }, drawing)
}
