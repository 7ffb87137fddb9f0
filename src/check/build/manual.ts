/** What the yard adds to the manual → records of the vessel. */
import type { AcceptedDeviation, LabelSizeEntry, ManualContent, Procedure } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'

export const procedureOf = ({ title, place, about, text }: Entry<'procedures'>): Procedure => ({ title, place: place ?? null, aboutTags: about ?? [], text })

export const manualContentOf = ({ content, state, where, reason }: Entry<'manual-contents'>): ManualContent =>
  ({ contentKey: content, state, where: where ?? null, reason: reason ?? null })

export const acceptedDeviationOf = ({ finding, subject, reason, by, date, message }: Entry<'accepted-deviations'>): AcceptedDeviation =>
  ({ findingId: finding, subject, reason, by, date, message: message ?? null })

const mm = (lengthM: number): number => Number((lengthM * 1000).toFixed(6))

/** The schema lets a size pass with all of its measures or with none. */
export function labelSizeOf({ size, for: uses = [], form, ...given }: Entry<'label-sizes'>): LabelSizeEntry {
  if (form === undefined) return { key: size, form: null, uses }
  const lengthMm = (key: Exclude<keyof typeof given, 'title' | 'columns' | 'rows'>): number => mm(given[key] ?? 0)
  return {
    key: size, title: given.title!, form,
    pageWidthMm: lengthMm('page-width'), pageHeightMm: lengthMm('page-height'), labelWidthMm: lengthMm('label-width'), labelHeightMm: lengthMm('label-height'),
    clearTailMm: lengthMm('clear-tail'), columnsCount: given.columns!, rowsCount: given.rows!, leftMm: lengthMm('left'), topMm: lengthMm('top'),
    stepAcrossMm: lengthMm('step-across'), stepDownMm: lengthMm('step-down'), uses,
  }
}
