/** Whatever a secret looks like and however it is written, the copy of the data is without it and reads as before. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { parse as parseTable } from 'csv-parse/sync'
import { gatherEntries } from '../../src/load/gather-entries.js'
import { cutOut, textForExcerpts, textsWithoutSecrets } from '../../src/load/secrets.js'
import { sourceFile } from '../../src/load/source-folder.js'

const sourceOf = (name: string, text: string) => gatherEntries([{ name, file: sourceFile(name, 'vessel', text), finding: null }], new Set([name]), [])
const copyOf = (name: string, text: string) => textsWithoutSecrets(sourceOf(name, text), () => true).get(name)!

/** Words such as no key or cut-out text holds; any sign around them, line ends among them. */
const secret = fc.tuple(fc.string({ unit: 'grapheme', maxLength: 8 }), fc.constantFrom('', ' ', '\n', '"', "'", ': ', ' #', '{', '\\')).map(([noise, sign]) => `Zq${noise}${sign}7Xw`)
const hides = (text: string): boolean => !text.includes('7Xw') && !text.includes('Zq')

it('in YAML, block or flow, plain, quoted or over several lines', () => {
  fc.assert(fc.property(secret, fc.boolean(), fc.constantFrom('PLAIN', 'QUOTE_DOUBLE', 'QUOTE_SINGLE', 'BLOCK_LITERAL', 'BLOCK_FOLDED'), (word, inFlow, form) => {
    const data = { credentials: [{ item: 'K1', user: word, secret: word, name: 'after' }, { item: 'K2', name: 'nothing' }], settings: [{ item: 'K1', name: 'x', value: 'y' }] }
    const text = inFlow ? JSON.stringify(data) : stringify(data, { defaultStringType: form as 'PLAIN', defaultKeyType: 'PLAIN' })
    const copy = copyOf('credentials.yaml', text)
    expect(hides(copy)).toBe(true)
    expect(parse(copy)).toEqual({ ...data, credentials: [{ ...data.credentials[0], user: cutOut, secret: cutOut }, data.credentials[1]] })
  }))
})

it('in a table, whatever parts its cells', () => {
  fc.assert(fc.property(secret.filter(word => !/[\r\u0085\u2028\u2029]/.test(word)), fc.constantFrom(',', ';', '\t'), (word, delimiter) => {
    const rows = [['item', 'secret', 'name'], ['K1', word, 'after'], ['K2', '', 'nothing']]
    const text = rows.map(row => row.map(cell => `"${cell.replaceAll('"', '""')}"`).join(delimiter)).join('\n')
    const copy = copyOf('credentials.csv', text)
    expect(hides(copy)).toBe(true)
    expect(parseTable(copy, { delimiter })).toEqual(rows.map((row, i) => (i === 1 ? [row[0], cutOut, row[2]] : row)))
  }))
})

it('in an excerpt every place stays where it is', () => {
  fc.assert(fc.property(secret, word => {
    const text = stringify({ credentials: [{ item: 'K1', secret: word, name: 'after' }] })
    const shown = textForExcerpts(sourceOf('credentials.yaml', text), 'credentials.yaml')!
    expect(hides(shown)).toBe(true)
    expect(shown.split('\n').map(({ length }) => length)).toEqual(text.split('\n').map(({ length }) => length))
  }))
})
