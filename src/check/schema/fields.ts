/**
 * The kinds of field a vessel file can hold. Each says in its error what it expects; positions are added later. Marks for
 * those who read the schemas as data: `takes`, what is expected in words; `dimension`, what a quantity measures; `orText`,
 * how a list may be written as a text.
 */
import { z } from 'zod'
import { type Dimension, type DimensionValue, parseQuantity, quantityPattern } from '../../units/parse-quantity.js'

/** Printable, no spaces at the ends, and nothing that has a meaning of its own: `:` parts a terminal from its item. */
export const tagPattern = /^[A-Za-z0-9][A-Za-z0-9._/+-]*$/

export const tag = (what: string) =>
  z.string({ error: 'a tag, in quotes if it looks like a number' }).regex(tagPattern, {
    error: 'a tag: letters, digits and . _ / + - with no spaces, for example W112 or A1.7',
  }).meta({ description: what, takes: 'a tag' })

export const text = (what: string) =>
  z.string({ error: 'text, in quotes if it looks like a number, a date or true/false' }).trim().min(1, { error: 'some text, or leave the key out' })
    .meta({ description: what, takes: 'text' })

/** Digits whose leading zeros count (MMSI, part and serial numbers): always text. */
export const digits = (what: string, pattern: RegExp, expected: string) =>
  z.string({ error: `${expected}, in quotes so that no zero is lost` }).regex(pattern, { error: expected })
    .meta({ description: what, takes: `${expected}, in quotes` })

export const oneOf = <const T extends readonly [string, ...string[]]>(values: T, what: string) =>
  z.enum(values, { error: `one of: ${values.join(', ')}` }).describe(what)

/** `true`/`false`; a spreadsheet cell gives them as words. */
export const yesNo = (what: string) => {
  const expected = 'true or false'
  return z.union([z.boolean(), z.enum(['true', 'false', 'yes', 'no']).transform(word => word === 'true' || word === 'yes')], { error: expected })
    .meta({ description: what, takes: expected })
}

export const wholeNumber = (what: string, range: { min: number; max: number }) => {
  const expected = `a whole number from ${range.min} to ${range.max}`
  return z.union([
    z.int({ error: expected }).min(range.min, { error: expected }).max(range.max, { error: expected }),
    z.string().regex(/^\d+$/).transform(Number).refine(n => n >= range.min && n <= range.max, { error: expected }),
  ], { error: expected }).meta({ description: what, takes: expected })
}

/** A plain number that has no unit. */
export const numberBetween = (what: string, range: { min: number; max: number }) => {
  const expected = `a number from ${range.min} to ${range.max}`
  return z.union([
    z.number({ error: expected }).min(range.min, { error: expected }).max(range.max, { error: expected }),
    z.string().regex(/^\d+(\.\d+)?$/).transform(Number).refine(n => n >= range.min && n <= range.max, { error: expected }),
  ], { error: expected }).meta({ description: what, takes: expected })
}

/** A share from 0 to 1. */
export const share = (what: string) => {
  const expected = 'a number from 0 to 1'
  return z.union([
    z.number({ error: expected }).min(0, { error: expected }).max(1, { error: expected }),
    z.string().regex(/^(0(\.\d+)?|1(\.0+)?)$/).transform(Number),
  ], { error: expected }).meta({ description: what, takes: expected })
}

export const date = (what: string) => {
  const expected = 'a day that there is, written year-month-day, for example 2026-05-04'
  return z.iso.date({ error: expected }).meta({ description: what, takes: expected })
}

/** The same where nought makes no sense: a voltage, a capacity. */
export const aboveZero = <D extends Exclude<Dimension, 'conductor size'>>(dimension: D, what: string) =>
  quantity(dimension, what).refine(value => Number(value) > 0, { error: 'a value above zero' })

/** A share from 0 to 100 %. */
export const percentOf = (what: string) => quantity('percent', what).refine(value => value <= 100, { error: 'a percentage from 0 to 100 %' })

/** A value with its unit, such as `6.4 m`; converted once, here. */
export const quantity = <D extends Dimension>(dimension: D, what: string) =>
  z.string({ error: issue => expectedFor(typeof issue.input === 'number' ? String(issue.input) : '', dimension) })
    .meta({ description: what, pattern: quantityPattern(dimension).source, dimension, takes: expectedFor('', dimension) })
    .transform((written, context): DimensionValue<D> => {
      const parsed = parseQuantity(written, dimension)
      if (parsed.ok) return parsed.value
      context.addIssue({ code: 'custom', message: parsed.expected, input: written })
      return z.NEVER
    })

/** What is expected in place of `written`, which may be a bare number. */
function expectedFor(written: string, dimension: Dimension): string {
  const parsed = parseQuantity(written, dimension)
  return parsed.ok ? 'text' : parsed.expected
}

/** A list; in a spreadsheet cell, or for short, words parted by spaces. */
export const listOf = <T extends z.ZodType>(item: T, what: string) =>
  z.preprocess(value => (typeof value === 'string' ? value.split(/\s+/).filter(word => word !== '') : value),
    z.array(item, { error: 'a list, or words parted by spaces' })).meta({ description: what, orText: 'words parted by spaces' })

/** `P1`, or `P1:power` with the terminal named. */
export const cableEnd = (what: string) => {
  const expected = 'an item, or an item and its terminal, for example P1:power'
  return z.string({ error: expected }).regex(/^[A-Za-z0-9][A-Za-z0-9._/+-]*(:[^\s:]+)?$/, { error: expected })
    .meta({ description: what, takes: expected })
    .transform(written => {
      const [end = '', terminal = null] = written.split(':')
      return { tag: end, terminal }
    })
}

/** Forward, to port, up; in a spreadsheet cell, or for short, parted by commas. */
export const position = (what: string) => {
  const expected = 'three lengths: forward of the transom, to port, above the waterline'
  return z.preprocess(value => (typeof value === 'string' ? value.split(',') : value),
    z.array(quantity('coordinate', 'Distance.'), { error: expected }).length(3, { error: expected }))
    .meta({ description: what, orText: 'three lengths parted by commas' })
}

/** Hours of the day: `18:00-23:00 06:00-08:00`; the end may lie after midnight. */
export const periods = (what: string) => {
  const expected = 'hours of the day such as 18:00-23:00, several parted by spaces'
  const clock = String.raw`(?:[01]?\d|2[0-3]):[0-5]\d|24:00`
  return z.string({ error: expected }).regex(new RegExp(String.raw`^\s*(?:${clock})-(?:${clock})(?:\s+(?:${clock})-(?:${clock}))*\s*$`), { error: expected })
    .meta({ description: what, takes: expected })
    .transform(written => written.trim().split(/\s+/).map(period => {
      const [fromH = 0, toH = 0] = period.split('-').map(hourOf)
      return { fromH, toH: toH > fromH ? toH : toH + 24 }
    }))
}
function hourOf(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number)
  return hours + minutes / 60
}

/** Path of a file in the vessel folder. */
export const filePath = (what: string) => {
  const expected = 'the path of a file in the vessel folder, written from its top; no step up to a folder above'
  return z.string({ error: expected }).min(1, { error: expected })
    .refine(isBelowTop, { error: expected })
    .meta({ description: what, takes: expected })
    .transform(fromTop)
}

export const isBelowTop = (path: string): boolean => !path.split(/[\\/]/).includes('..') && !/^([\\/]|[A-Za-z]:)/.test(path)

/** `.\photos\helm.jpg` → `photos/helm.jpg` */
export const fromTop = (path: string): string => path.split(/[\\/]/).filter(part => part !== '.' && part !== '').join('/')
