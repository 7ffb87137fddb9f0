/** Every label as a row, for label printers that take a table. */
import type { Label } from '../../model/results/labels.js'
import type { LabelUse, Tag } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import type { Schedule } from '../view-model.js'
import { codeContent } from './code.js'
import { labelUses } from './label-runs.js'

export const labelListFile = (use: LabelUse): string => `labels/${use}.csv`

/** As many columns of lines as the longest label of the use has. */
export function labelLists(context: ViewContext): readonly Schedule[] {
  const all = context.results.labels.labels
  return labelUses.flatMap(use => {
    const labels = all.filter(label => label.use === use)
    return labels.length === 0 ? [] : [listOf(context, use, labels)]
  })
}

function listOf(context: ViewContext, use: LabelUse, labels: readonly Label[]): Schedule {
  const linesOf = ({ layout }: Label): readonly string[] => layout.bands.flatMap(({ lines }) => lines)
  const lineCount = Math.max(...labels.map(label => linesOf(label).length))
  const nameOf = (tag: Tag | null): string => (tag === null ? '' : context.nameOf(tag) ?? tag)
  return {
    file: labelListFile(use),
    columns: ['Tag', 'End', 'Text', ...Array.from({ length: lineCount }, (_, i) => `Line ${i + 1}`), 'Code', 'Copies', 'Size', 'Zone', 'At', 'Place'],
    rows: labels.map(label => {
      const { aboutTag, end, headline, texts, layout, copiesCount, sizeKey, place } = label
      const lines = linesOf(label)
      return [
        aboutTag, end === null ? '' : end === 'from' ? 'first' : 'other', [headline, ...texts].filter(part => part !== null).join(' '),
        ...Array.from({ length: lineCount }, (_, i) => lines[i] ?? ''),
        layout.code === null ? '' : codeContent(context, aboutTag), String(copiesCount), sizeKey, nameOf(place.zoneTag), place.atTag, place.words ?? '',
      ]
    }),
  }
}
