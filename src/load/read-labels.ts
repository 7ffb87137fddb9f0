/** Label stock and the words of danger labels, from the manual's general text: a broken file is a fault of ours, so it throws. */
import { readFile } from 'node:fs/promises'
import { parse } from 'yaml'
import { z } from 'zod'
import { labelFaults } from '../model/label-sheet.js'
import type { DangerText } from '../model/content.js'
import type { LabelSize } from '../model/vessel.js'
import { signalWords } from '../references/caution-words.js'
import { parseQuantity } from '../units/parse-quantity.js'

const millimetres = z.string().transform((written, context) => {
  const parsed = parseQuantity(written, 'length')
  if (parsed.ok) return Number((parsed.value * 1000).toFixed(6))
  context.addIssue({ code: 'custom', message: parsed.expected })
  return z.NEVER
})

const sizeSchema = z.strictObject({
  size: z.string().min(1), title: z.string().min(1), form: z.enum(['sheet', 'wrap']),
  'page-width': millimetres, 'page-height': millimetres, 'label-width': millimetres, 'label-height': millimetres, 'clear-tail': millimetres.default(0),
  columns: z.int().positive(), rows: z.int().positive(), left: millimetres, top: millimetres, 'step-across': millimetres, 'step-down': millimetres,
  for: z.array(z.enum(['cables', 'ways', 'equipment', 'danger'])).default([]),
}).transform((entry): LabelSize => ({
  key: entry.size, title: entry.title, form: entry.form, pageWidthMm: entry['page-width'], pageHeightMm: entry['page-height'],
  labelWidthMm: entry['label-width'], labelHeightMm: entry['label-height'], clearTailMm: entry['clear-tail'], columnsCount: entry.columns, rowsCount: entry.rows,
  leftMm: entry.left, topMm: entry.top, stepAcrossMm: entry['step-across'], stepDownMm: entry['step-down'], uses: entry.for,
})).refine(size => labelFaults(size).length === 0, { error: 'the labels do not fit their sheet' })

const dangerKinds = [
  'mains', 'shore inlet', 'lead-acid battery', 'lithium battery', 'moving machine', 'radiation', 'several supplies', 'live in light', 'unprotected conductor',
] as const satisfies readonly DangerText['kind'][]
const words = z.string().min(1)
const dangerSchema = z.strictObject({ kind: z.enum(dangerKinds), signal: z.enum(signalWords), title: words, text: words, where: words })

export const readLabelSizes = (file: string): Promise<readonly LabelSize[]> => readList(file, sizeSchema, ({ key }) => key)
export const readDangerTexts = (file: string): Promise<readonly DangerText[]> => readList(file, dangerSchema, ({ kind }) => kind)

async function readList<T>(file: string, schema: z.ZodType<T>, keyOf: (entry: T) => string): Promise<readonly T[]> {
  const read = z.array(schema).safeParse(parse(await readFile(file, 'utf8')))
  if (!read.success) throw new Error(`${file}: it cannot be used: ${z.prettifyError(read.error)}`)
  const keys = read.data.map(keyOf)
  const twice = keys.find((key, i) => keys.indexOf(key) !== i)
  if (twice !== undefined) throw new Error(`${file}: ${twice} is there twice`)
  return read.data
}
