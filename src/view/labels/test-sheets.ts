/** A sheet for plain paper, to be held against the label stock before any of it is spent. */
import { labelPlace, labelsOnSheet, wholeHeightMm } from '../../model/label-sheet.js'
import type { LabelSize } from '../../model/vessel.js'
import { element, escaped } from '../drawings/svg.js'
import type { LabelDocument } from '../view-model.js'
import { mm } from './label-drawing.js'
import { pageOf, sheetOf } from './sheet.js'

/** Long enough to show a scale that is a hundredth wrong. */
const rulerMm = 100

/** One document for each size of paper, with a sheet for each size of label. */
export function testSheets(sizes: readonly LabelSize[]): readonly LabelDocument[] {
  const once = [...new Map(sizes.map(size => [size.key, size])).values()]
  const papers = [...new Map(once.map(size => [`${mm(size.pageWidthMm)}x${mm(size.pageHeightMm)}`, size]))]
  return papers.map(([paper, { pageWidthMm, pageHeightMm }]): LabelDocument => {
    const onPaper = once.filter(size => size.pageWidthMm === pageWidthMm && size.pageHeightMm === pageHeightMm)
    return { file: `labels/test-sheets-${paper}.pdf`, title: `Test sheets for label stock of ${mm(pageWidthMm)} × ${mm(pageHeightMm)} mm`, ...pageOf(onPaper[0]!), sheets: onPaper.map(size => sheetOf(size, testSheet(size))) }
  })
}

function testSheet(size: LabelSize): readonly string[] {
  const outlines = Array.from({ length: labelsOnSheet(size) }, (_, i) => {
    const { xMm, yMm } = labelPlace(size, i)
    const box = (y: number, height: number, dash: string) => element('rect', { x: mm(xMm), y: mm(y), width: mm(size.labelWidthMm), height: mm(height), style: `fill:none;stroke:#000;stroke-width:0.15;stroke-dasharray:${dash}` })
    return box(yMm, wholeHeightMm(size), 'none') + (size.clearTailMm > 0 ? box(yMm, size.labelHeightMm, '1 1') : '')
  })
  const [x, y] = [(size.pageWidthMm - rulerMm) / 2, size.pageHeightMm / 2]
  return [
    ...outlines,
    element('rect', { x: mm(x - 6), y: mm(y - 18), width: mm(rulerMm + 12), height: '28', style: 'fill:#fff;stroke:#000;stroke-width:0.3' }),
    words(x, y - 12, 4, size.title),
    words(x, y - 7, 3, 'Hold this sheet and the label stock against the light: each label lies on an outline.'),
    words(x, y - 3, 3, `Printed at 100 %, this line is ${rulerMm} mm long:`),
    ruler(x, y + 1),
  ]
}

const words = (x: number, y: number, height: number, text: string): string =>
  element('text', { x: mm(x), y: mm(y), style: `font:600 ${mm(height)}px 'IBM Plex Sans Condensed', sans-serif;fill:#000` }, escaped(text))

/** A stroke every centimetre, longer ones at the ends. */
function ruler(x: number, y: number): string {
  const strokes = Array.from({ length: rulerMm / 10 + 1 }, (_, i) => `M${mm(x + 10 * i)} ${mm(y)}v${i % 10 === 0 ? 6 : 3}`)
  return element('path', { d: `M${mm(x)} ${mm(y)}h${rulerMm}${strokes.join('')}`, style: 'fill:none;stroke:#000;stroke-width:0.25' })
}
