/** What the yard adds to the manual → records of the vessel. */
import type { AcceptedDeviation, LabelSize, ManualContent, Procedure } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

export const procedureOf = ({ title, place, about, text }: Entry<'procedures'>): Procedure => ({ title, place: place ?? null, aboutTags: about ?? [], text })

export const manualContentOf = ({ content, state, where, reason }: Entry<'manual-contents'>): ManualContent =>
  ({ contentKey: content, state, where: where ?? null, reason: reason ?? null })

export const acceptedDeviationOf = ({ finding, subject, reason, by, date, message }: Entry<'accepted-deviations'>): AcceptedDeviation =>
  ({ findingId: finding, subject, reason, by, date, message: message ?? null })

const mm = (lengthM: number): number => Number((lengthM * 1000).toFixed(6))

export const labelSizeOf = (size: Entry<'label-sizes'>): LabelSize => ({
  key: size.size, title: size.title, form: size.form,
  pageWidthMm: mm(size['page-width']), pageHeightMm: mm(size['page-height']), labelWidthMm: mm(size['label-width']), labelHeightMm: mm(size['label-height']),
  clearTailMm: mm(size['clear-tail'] ?? 0), columnsCount: size.columns, rowsCount: size.rows, leftMm: mm(size.left), topMm: mm(size.top),
  stepAcrossMm: mm(size['step-across']), stepDownMm: mm(size['step-down']), uses: size.for ?? [],
})
