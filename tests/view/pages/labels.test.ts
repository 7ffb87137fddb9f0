/** The page on labels, and the tables for label printers. */
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { labelListCsv } from '../../../src/package/csv.js'
import { codeContent, codeModules } from '../../../src/view/labels/code.js'
import { labelPrints } from '../../../src/view/labels/label-prints.js'
import { labelPages } from '../../../src/view/pages/labels/labels.view.js'
import { labelledVessel, resultsWithLabels } from '../../support/labelled-vessel.js'
import { aBattery, aCable, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

const addressed = (vessel: Vessel): Vessel => ({ ...vessel, document: { ...vessel.document, manualAddress: 'https://boat.example/manual/' } })
const context = (vessel: Vessel) => contextOf(vessel, { results: resultsWithLabels(vessel) })
const pageOf = (vessel: Vessel) => labelPages(context(vessel))[0]!

describe('the page', () => {
  it('lists what is printed on which stock, and on how many sheets', () => {
    // 20 labels of 49, 7 of 65, 25 of 21.
    expect(cellsOf(tableIn(pageOf(labelledVessel()), 'label-sheets')).map(([use, , labels, sheets]) => [use, labels, sheets])).toEqual([
      ['Cables, both ends', '20', '1'], ['Circuits at their panels', '7', '1'], ['Equipment', '25', '2'],
    ])
  })

  it('is not there where nothing is labelled', () => {
    expect(labelPages(context(aVessel()))).toEqual([])
  })

  it('says where the codes lead, or that they lead nowhere', () => {
    expect(wordsOn(pageOf(addressed(labelledVessel())))).toContain('below https://boat.example/manual/')
    expect(wordsOn(pageOf(labelledVessel()))).toContain('No address of this manual')
  })

  it('lists danger labels with where they go, and what has none', () => {
    const page = pageOf(labelledVessel({ batteries: [aBattery({ tag: 'G1', name: 'House', chemistry: 'agm', zoneTag: 'saloon' }), aBattery({ tag: 'G2', name: 'Bow' })] }))
    expect(cellsOf(tableIn(page, 'danger-labels'))).toEqual([['Saloon', 'G1 House', 'WARNING Battery gives off explosive gas', 'On the lid or beside the terminals.']])
    expect(wordsOn(page)).toContain('Without a label, for want of their chemistry: G2 Bow')
  })

  it('says which cables go with which label', () => {
    // 12.7 / π = 4.04; 25.4 / π = 8.09.
    expect(cellsOf(tableIn(pageOf(labelledVessel()), 'wrap-sizes'))).toEqual([['A4, 49 wrap-around labels 25.4 × 38.1 mm, 12.7 mm printed', '4.0 mm to 8.1 mm', '10']])
  })
})

describe('the tables', () => {
  const vessel = addressed(labelledVessel({ cables: [
    aCable({ tag: 'W1', from: 'X1', to: 'X2', typeTag: '6mm', labelTo: '-W1 "helm", Överby' }), aCable({ tag: 'W2', from: 'X1', to: 'X2', typeTag: '6mm', parallelCount: 2 }),
  ] }))
  const lists = new Map(labelPrints(context(vessel)).lists.map(list => [list.file, labelListCsv(list)]))
  const rowsOf = (file: string) => parse(lists.get(file)!, { bom: true, columns: true }) as readonly Record<string, string>[]

  it('come back through a general-purpose reader as they are printed: no sign is put before a tag', () => {
    expect(lists.get('labels/cables.csv')!.startsWith('\uFEFFTag,End,Text,')).toBe(true)
    expect(rowsOf('labels/cables.csv').map(({ Tag, End, Text, Copies, Size, Zone, At }) => [Tag, End, Text, Copies, Size, Zone, At])).toEqual([
      ['W1', 'first', 'W1 X1 / X2', '1', 'a4-wrap-25x38', 'Saloon', 'X1'], ['W1', 'other', '-W1 "helm", Överby', '1', 'a4-wrap-25x38', 'Saloon', 'X2'],
      ['W2', 'first', 'W2 X1 / X2', '2', 'a4-wrap-25x38', 'Saloon', 'X1'], ['W2', 'other', 'W2 X2 / X1', '2', 'a4-wrap-25x38', 'Saloon', 'X2'],
    ])
  })

  it('have the lines as they are broken on the label, and the code', () => {
    const [first] = rowsOf('labels/equipment.csv').filter(({ Tag }) => Tag === 'X12')
    expect(first).toMatchObject({ 'Line 1': 'X12', 'Line 2': 'Junction box 12', 'Code': 'https://boat.example/manual/equipment/x12/' })
  })
})

describe('a code', () => {
  it('holds tag, name and vessel where there is no address', () => {
    expect(codeContent(context(labelledVessel()), 'X1')).toBe('X1 Junction box 1, Test vessel')
  })

  // ISO/IEC 18004, from memory: version 1 takes 14 bytes at level M and has 21 modules, version 2 takes 26 and has 25; 4 of quiet zone each side.
  it.each([[14, 29], [15, 33], [26, 33], [27, 37]])('of %i bytes has %i modules with its quiet zone', (byteCount, moduleCount) => {
    const modules = codeModules('a'.repeat(byteCount), 100)!
    expect(modules).toHaveLength(moduleCount)
    for (const edge of [modules[0]!, modules[3]!, modules.at(-1)!, modules.map(row => row[3]!)]) expect(edge).not.toContain(true)
    expect(modules[4]!.slice(4, 11)).toEqual(Array.from({ length: 7 }, () => true))
  })

  it('is left out where four dots of a label printer are more than a module', () => {
    // 29 modules of 4 · 25.4 / 300 = 0.33867 mm are 9.821 mm.
    expect(codeModules('a', 9.83)).not.toBeNull()
    expect(codeModules('a', 9.81)).toBeNull()
  })
})
