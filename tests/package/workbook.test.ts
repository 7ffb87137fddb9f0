/** What is in the file is read back by its format (ECMA-376, parts 1 and 2): a zip of XML, cells by reference into shared strings. */
import { strFromU8, unzipSync } from 'fflate'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { workbookBytes } from '../../src/package/workbook.js'
import type { Sheet, SheetCell, Workbook } from '../../src/view/view-model.js'

const sheet = (name: string, rows: readonly (readonly SheetCell[])[], columns = [{ title: 'Text', numbers: false }, { title: 'Length (m)', numbers: true }]): Sheet => ({ name, columns, rows })
const book = (...sheets: readonly Sheet[]): Workbook => ({ file: 'workshop.xlsx', about: '', sheets })

const unescaped = (text: string): string => text.replace(/&(lt|gt|quot|apos|amp);/g, (_, name: string) => ({ lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' })[name]!)

interface ReadCell { readonly at: string; readonly type: string; readonly value: string | number; readonly style: string | undefined }
interface ReadSheet { readonly name: string; readonly xml: string; readonly cells: readonly ReadCell[] }
async function readBack(workbook: Workbook): Promise<{ readonly sheets: readonly ReadSheet[]; readonly styles: string }> {
  const parts = Object.fromEntries(Object.entries(unzipSync(await workbookBytes(workbook))).map(([name, bytes]) => [name, strFromU8(bytes)]))
  const strings = [...parts['xl/sharedStrings.xml']!.matchAll(/<si>(.*?)<\/si>/gs)].map(([, item]) => [...item!.matchAll(/<t[^>]*>(.*?)<\/t>/gs)].map(([, text]) => unescaped(text!)).join(''))
  const targets = new Map([...parts['xl/_rels/workbook.xml.rels']!.matchAll(/<Relationship [^>]*>/g)].map(([element]) => [/Id="([^"]+)"/.exec(element)![1]!, /Target="([^"]+)"/.exec(element)![1]!]))
  const sheets = [...parts['xl/workbook.xml']!.matchAll(/<sheet [^>]*>/g)].map(([element]): ReadSheet => {
    const target = targets.get(/r:id="([^"]+)"/.exec(element)![1]!)!
    const xml = parts[`xl/${target.replace(/^\/?(xl\/)?/, '')}`]!
    const cells = [...xml.matchAll(/<c ([^>]*?)(?:\/>|>(.*?)<\/c>)/gs)].map(([, attributes, content]): ReadCell => {
      const type = / ?t="(\w+)"/.exec(attributes!)?.[1] ?? 'n'
      const value = /<v>(.*?)<\/v>/s.exec(content ?? '')?.[1] ?? ''
      return { at: /r="(\w+)"/.exec(attributes!)![1]!, type, value: type === 's' ? strings[Number(value)]! : Number(value), style: / ?s="(\d+)"/.exec(attributes!)?.[1] }
    })
    return { name: unescaped(/name="([^"]+)"/.exec(element)![1]!), xml, cells }
  })
  return { sheets, styles: parts['xl/styles.xml']! }
}

afterEach(() => { vi.useRealTimers(); vi.unstubAllEnvs() })

describe('a workbook', () => {
  it('has each sheet by its name, the header first and frozen, rows below', async () => {
    const { sheets: [first, second] } = await readBack(book(sheet('Wire list', [['W1', 4.5], ['W2', null]]), sheet('Bill', [])))
    expect([first!.name, second!.name]).toEqual(['Wire list', 'Bill'])
    expect(first!.cells.map(({ at, value }) => [at, value])).toEqual([['A1', 'Text'], ['B1', 'Length (m)'], ['A2', 'W1'], ['B2', 4.5], ['A3', 'W2']])
    expect(first!.xml).toMatch(/<pane [^>]*ySplit="1"[^>]*state="frozen"/)
    expect(first!.xml).toMatch(/<pageSetup [^>]*orientation="landscape"/)
  })

  it('sets the header in bold and no other cell', async () => {
    const { sheets: [only], styles } = await readBack(book(sheet('S', [['W1', 1]])))
    const formats = [.../<cellXfs.*?<\/cellXfs>/s.exec(styles)![0].matchAll(/<xf ([^>]*)>/g)].map(([, attributes]) => Number(/fontId="(\d+)"/.exec(attributes!)?.[1] ?? 0))
    const bold = [.../<fonts.*?<\/fonts>/s.exec(styles)![0].matchAll(/<font>.*?<\/font>|<font\/>/gs)].map(([font]) => font.includes('<b/>'))
    expect(only!.cells.map(({ at, style }) => [at, bold[formats[Number(style ?? 0)]!]])).toEqual([['A1', true], ['B1', true], ['A2', false], ['B2', false]])
  })

  it('keeps text as text, also where it begins like a formula or looks like a number or a date, and numbers as numbers', async () => {
    const texts = ['=1+1', '+49 40 555', '-5.0 V', '@cmd', '1.50', '2026-05-04', '0012', ' blanks ', 'a < b & "c"', 'm² Ω', 'two\nlines']
    const { sheets: [only] } = await readBack(book(sheet('S', [...texts.map(text => [text, null]), ['', 0], ['', -1.25]])))
    expect(only!.cells.slice(2).map(({ type, value }) => [type, value])).toEqual([...texts.map(text => ['s', text]), ['n', 0], ['n', -1.25]])
    expect(only!.xml).not.toContain('<f>')
  })

  it('leaves out what no XML file can hold', async () => {
    const { sheets: [only] } = await readBack(book(sheet('S', [['a\u0001b\u0000\uD800c\u{1F6A2}', null]])))
    expect(only!.cells[2]!.value).toBe('abc\u{1F6A2}')
  })

  it('has columns as wide as what is in them, within reason', async () => {
    const { sheets: [only] } = await readBack(book(sheet('S', [['twelve chars', 1], ['x'.repeat(300), 2]], [{ title: 'Long title in many words', numbers: false }, { title: 'B', numbers: true }])))
    expect([...only!.xml.matchAll(/<col [^>]*width="(\d+)"/g)].map(([, width]) => Number(width))).toEqual([48, 8])
  })

  it('comes out the same, byte for byte, at another time and in another time zone', async () => {
    const workbook = book(sheet('Wire list', [['W1', 4.5]]))
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-01-02T03:04:05Z') })
    const once = await workbookBytes(workbook)
    vi.stubEnv('TZ', 'Pacific/Auckland')
    vi.setSystemTime(new Date('2031-08-09T10:11:12Z'))
    expect(Buffer.from(await workbookBytes(workbook)).equals(Buffer.from(once))).toBe(true)
  })
})
