/** What the yard adds to the manual: procedures, absences, contents kept elsewhere, accepted deviations, label sizes. */
import { z } from 'zod'
import { equipmentKindKeys } from '../../references/equipment-kinds.js'
import { procedurePlaces } from '../../references/procedure-places.js'
import { aboveZero, date, listOf, oneOf, quantity, tag, text, wholeNumber } from './fields.js'

export const procedureSchema = z.strictObject({
  title: text('What it is called.'),
  place: oneOf(procedurePlaces, 'The page of the manual on which it takes the place of the general text.').optional(),
  about: listOf(tag('Item, circuit, cable, zone, system or network.'), 'Whose pages show it.').optional(),
  text: text('The procedure, in Markdown. `[[P1]]` becomes a link to what has that tag.'),
})

export const absenceSchema = z.strictObject({
  what: oneOf(equipmentKindKeys, 'Kind of equipment that this boat does not have.'),
  reason: text('Why not, or what stands in for it.'),
})

export const manualContentSchema = z.strictObject({
  content: tag('Key of the content, as the page on completeness names it.'),
  state: oneOf(['elsewhere', 'not applicable'], 'Whether another document holds it, or nothing has to.'),
  where: text('Which document, and where in it.').optional(),
  reason: text('Why it does not apply.').optional(),
}).refine(entry => (entry.state === 'elsewhere' ? entry.where : entry.reason) !== undefined, { path: ['state'], error: 'with "elsewhere" the document under "where", with "not applicable" the "reason"' })

export const acceptedDeviationSchema = z.strictObject({
  finding: tag('Id of the finding as asfitted check prints it, for example DCD101.'),
  subject: text('What the finding is about, by tag or name alone: W7 of a message that begins with "Cable W7:". The key subject.id of asfitted check --json holds it.'),
  reason: text('Why it is accepted.'),
  by: text('Who accepts it.'),
  date: date('When.'),
  message: text('The finding’s message as it was accepted. Once the finding says something else, it is no longer accepted.').optional(),
})

const labelMeasures = ['title', 'form', 'page-width', 'page-height', 'label-width', 'label-height', 'columns', 'rows', 'left', 'top', 'step-across', 'step-down'] as const

export const labelSizeSchema = z.strictObject({
  size: tag('Key by which the labels name it. With the key of a size that the program knows and nothing but "for", that size is used.'),
  title: text('What it is.').optional(),
  form: oneOf(['sheet', 'wrap'], 'Flat labels on a sheet, or labels that wrap around a cable with a clear tail.').optional(),
  'page-width': aboveZero('length', 'Width of the sheet.').optional(),
  'page-height': aboveZero('length', 'Height of the sheet.').optional(),
  'label-width': aboveZero('length', 'Width of one label.').optional(),
  'label-height': aboveZero('length', 'Height of one label; of a wrap-around label the printed part.').optional(),
  'clear-tail': quantity('length', 'Of a wrap-around label: the clear part that goes around over the print.').optional(),
  columns: wholeNumber('Labels side by side.', { min: 1, max: 40 }).optional(),
  rows: wholeNumber('Labels one below the other.', { min: 1, max: 100 }).optional(),
  left: quantity('length', 'From the left edge of the sheet to the first label.').optional(),
  top: quantity('length', 'From the upper edge of the sheet to the first label.').optional(),
  'step-across': aboveZero('length', 'From the left edge of a label to that of the next.').optional(),
  'step-down': aboveZero('length', 'From the upper edge of a label to that of the next.').optional(),
  for: listOf(oneOf(['cables', 'ways', 'equipment', 'danger'], 'What is labelled.'), 'What it is used for, in place of the usual size.').optional(),
}).superRefine((entry, context) => {
  const missing = labelMeasures.filter(key => entry[key] === undefined)
  if (missing.length === labelMeasures.length && entry['clear-tail'] === undefined) return
  for (const key of missing) context.addIssue({ code: 'custom', path: [key], message: 'the measure: a size is given whole, or not at all' })
})
