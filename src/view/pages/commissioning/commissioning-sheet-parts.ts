/** What every sheet for the pen is made of. */
import { type CheckKind, isAssessed, type ReadingCheck } from '../../../model/results/commissioning.js'
import type { Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { byTag, type TableOf, tableOf } from '../../tables.js'
import { joined, lineBreak, muted } from '../../text.js'
import type { Table, Text } from '../../view-model.js'
import { measuredText, standing } from './commissioning-measured.js'

export const isWanting = ({ missing }: { readonly missing: readonly CheckKind[] }): boolean => missing.length > 0
export function sheetOf<T extends { readonly tag: Tag; readonly missing: readonly CheckKind[] }>(context: ViewContext, things: readonly T[], make: (context: ViewContext, things: readonly T[]) => Table): readonly Table[] {
  const wanting = things.filter(isWanting).toSorted(byTag)
  return wanting.length === 0 ? [] : [make(context, wanting)]
}
export const forPen = <T>(things: readonly T[], table: Omit<TableOf<T>, 'empty'>): Table => tableOf(things, { ...table, empty: '', forPen: true })

/** A box with a small word in it that says what goes there. */
export const box = (...words: readonly string[]): Text => joined(words.map(word => [muted(word)]), lineBreak)
/** `no.`: that of the instrument. */
export const signed = box('date', 'initials, no.')

/** What is read already, with the number of its reading; else nothing, to be written in. */
export function alreadyRead(context: ViewContext, tags: readonly (Tag | null)[], kind: CheckKind): Text {
  const found = standing(context.results.commissioning.checks).find(check => check.kind === kind && isAssessed(check) && tags.includes(check.subjectTag) && onSheet(check, tags))
  if (found === undefined) return []
  return [muted(`${measuredText(context, found.measured)} (reading ${found.number})`)]
}
const onSheet = ({ loadTag }: ReadingCheck, tags: readonly (Tag | null)[]): boolean => loadTag === null || tags.includes(loadTag)
