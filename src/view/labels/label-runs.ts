/** Which labels are printed together: those of one use and size. */
import { slug } from '../../model/address.js'
import { labelsOnSheet } from '../../model/label-sheet.js'
import type { Label } from '../../model/results/labels.js'
import type { LabelSize, LabelUse } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { codeContent, type CodeModules, codeModules } from './code.js'

export const labelUses: readonly LabelUse[] = ['cables', 'ways', 'equipment', 'danger']
export const useTitles: Readonly<Record<LabelUse, string>> = { cables: 'Cables, both ends', ways: 'Circuits at their panels', equipment: 'Equipment', danger: 'Danger labels' }

/** Labels of one use and size, in the order in which they are stuck on; one that is wanted several times stands there so often. */
export interface LabelRun { readonly use: LabelUse; readonly size: LabelSize; readonly file: string; readonly labels: readonly Label[]; readonly sheetCount: number }

export function labelRuns({ results: { labels: { labels, sizes } } }: Pick<ViewContext, 'results'>): readonly LabelRun[] {
  return labelUses.flatMap(use => sizes.map((size): LabelRun => {
    const printed = labels.filter(label => label.use === use && label.sizeKey === size.key).flatMap(label => Array.from({ length: label.copiesCount }, () => label))
    return { use, size, file: `labels/${use}-${slug(size.key)}.pdf`, labels: printed, sheetCount: Math.ceil(printed.length / labelsOnSheet(size)) }
  })).filter(({ labels: printed }) => printed.length > 0)
}

/** The code of a label; null where it has none, or would have modules too small to print. */
export const codeOf = (context: ViewContext, { aboutTag, layout: { code } }: Label): CodeModules | null =>
  (code === null ? null : codeModules(codeContent(context, aboutTag), code.sideMm))
