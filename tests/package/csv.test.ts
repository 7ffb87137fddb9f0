import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { csvOf } from '../../src/package/csv.js'

describe('csvOf', () => {
  // RFC 4180 section 2: rules 1 (CRLF after every line), 3 (header), 5 to 7 (quotes where needed, quotes doubled).
  it('writes the forms that RFC 4180 shows', () => {
    expect(csvOf({ columns: ['field_name'], rows: [['aaa'], ['b CRLF\r\nbb'], ['b"bb'], ['ccc, ddd']] }))
      .toBe('field_name\r\naaa\r\n"b CRLF\r\nbb"\r\n"b""bb"\r\n"ccc, ddd"\r\n')
  })

  it('puts an apostrophe before what a spreadsheet would run, but not before a number', () => {
    const cells = ['=1+1', '+49 40 555', '-5.0 V', '@cmd', '\tx', '-5.25', '+3', '-.5', '-1e3', '–', 'a=b', '']
    const [, ...rows] = csvOf({ columns: ['cell'], rows: cells.map(cell => [cell]) }).split('\r\n')
    expect(rows).toEqual(["'=1+1", "'+49 40 555", "'-5.0 V", "'@cmd", "'\tx", '-5.25', '+3', '-.5', '-1e3', '–', 'a=b', '', ''])
  })

  it('comes back through a general-purpose reader as it was, but for the guarded cells', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', 'Ω', '"', ',', ';', '\r', '\n', ' ', '=', '-', '7', '.', '\t', '²') })
    const table = fc.integer({ min: 2, max: 4 }).chain(width => {
      const row = fc.array(cell, { minLength: width, maxLength: width })
      return fc.record({ columns: row, rows: fc.array(row, { maxLength: 5 }) })
    })
    fc.assert(fc.property(table, ({ columns, rows }) => {
      const read = parse(csvOf({ columns, rows }), { record_delimiter: '\r\n' }) as string[][]
      const isNumber = (text: string) => text.trim() === text && text !== '' && Number.isFinite(Number(text))
      const expected = [columns, ...rows].map(row => row.map(text => (/^[=+\-@\t\r]/.test(text) && !isNumber(text) ? `'${text}` : text)))
      expect(read).toEqual(expected)
    }))
  })

  it('refuses a row that does not fit its header', () => {
    expect(() => csvOf({ columns: ['a', 'b'], rows: [['1', '2'], ['3']] })).toThrow('row 2 has 1 cells, the header has 2')
  })
})
