/** Upkeep: tasks, what was done, running hours. */
import { z } from 'zod'
import { doers, seasons } from '../../references/maintenance-words.js'
import { aboveZero, date, listOf, oneOf, quantity, tag, text, wholeNumber, yesNo } from './fields.js'

const partSchema = z.strictObject({
  name: text('What it is.'),
  number: text('The maker’s number.').optional(),
  quantity: text('How many, or how much, is needed each time: 1, 2, 4 L.').optional(),
  'kept-at': text('Where a spare is on board.').optional(),
})

const taskFields = {
  task: tag('Key of the task; that of a general task where this one stands in its place: what is left out here is as there, and an interval given here stands for all of its intervals.'),
  title: text('What is done, in a few words.').optional(),
  days: wholeNumber('Every so many days.', { min: 1, max: 366 }).optional(),
  months: wholeNumber('Every so many months.', { min: 1, max: 600 }).optional(),
  'months-from-made': wholeNumber('Every so many months, counted from the day on which the item was made.', { min: 1, max: 600 }).optional(),
  'life-months': wholeNumber('Its life in months, from the day on which it was made, else fitted; the date marked on the item takes its place.', { min: 1, max: 600 }).optional(),
  'marked-date': yesNo('Whether it is due on the date that is marked on the item.').optional(),
  hours: aboveZero('duration', 'Every so many running hours.').optional(),
  seasons: listOf(oneOf(seasons, 'Season.'), 'When it is done by season.').optional(),
  by: oneOf(doers, 'Who may do it.').optional(),
  how: text('How it is done.').optional(),
  'in-order': text('What tells that it is in order.').optional(),
  parts: z.array(partSchema).describe('Parts and consumables.').optional(),
  source: text('Who asks for it: the maker’s manual, a rule.').optional(),
  'not-done': yesNo('Whether the general task of this key does not hold here.').optional(),
  reason: text('Why it differs from the general task.').optional(),
}

export const maintenanceFactsSchema = z.strictObject(taskFields)

export const maintenanceTaskSchema = z.strictObject({
  ...taskFields,
  items: listOf(tag('Item.'), 'What it is done to; when left out, everything that the general task of this key is for.').optional(),
  'hours-of': tag('Item whose running hours count, where it is not the item itself.').optional(),
})

export const maintenanceRecordSchema = z.strictObject({
  task: tag('Key of the task.'),
  item: tag('What it was done to; when left out, everything that the task is for.').optional(),
  date: date('When.'),
  hours: quantity('duration', 'Running hours at the time.').optional(),
  by: text('Who.').optional(),
  notes: text('What was found.').optional(),
})

export const runningHoursSchema = z.strictObject({
  item: tag('Item with the counter: an engine, a generator.'),
  date: date('When it was read.'),
  hours: quantity('duration', 'What it showed.'),
  'per-year': quantity('duration', 'Hours in a year to reckon with; from the readings when left out.').optional(),
  by: text('Who.').optional(),
})
