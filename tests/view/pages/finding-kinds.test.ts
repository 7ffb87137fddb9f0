import { expect, it } from 'vitest'
import { aVessel } from '../../support/vessel-builder.js'
import type { LocatedFinding } from '../../../src/findings/finding.js'
import { findingKindPages } from '../../../src/view/pages/findings/finding-kinds.view.js'
import { cellsOf, contextOf, registries, tablesOf, wordsOn } from './support.js'

const page = findingKindPages(contextOf(aVessel()))[0]!
const rows = tablesOf(page).flatMap(cellsOf)

it('lists every kind once, with its name, severity and meaning', () => {
  expect(registries.findingKinds.length).toBeGreaterThan(20)
  const listed = new Map(rows.map(row => [row[0], row]))
  expect(listed.size).toBe(rows.length)
  for (const { id, name, severity, meaning } of registries.findingKinds) expect(listed.get(id)?.slice(0, 4), id).toEqual([id, name, severity, meaning])
  expect(rows).toHaveLength(registries.findingKinds.length)
})

it('says for each what to do, without a fact that only a finding has', () => {
  for (const [id, , , , remedy] of rows) expect(remedy, id).toMatch(/^(\p{Lu}[^]*[.…]|said with each finding, from its figures)$/u)
  expect(wordsOn(page)).not.toMatch(/undefined|NaN/)
})

it('knows a title for the three letters of each', () => {
  expect(tablesOf(page).map(({ caption }) => caption).filter(caption => caption.startsWith('Other'))).toEqual([])
})

it('prints the kinds that the vessel has, and says how many there are', () => {
  const [kind] = registries.findingKinds
  const finding = { id: kind!.id, subject: { kind: 'vessel', id: 'Any' } } as LocatedFinding
  const printed = findingKindPages(contextOf(aVessel(), { findings: [finding] }))[0]!.printed!
  expect(printed.flatMap(block => (block.is === 'table' ? block.rows.map(({ cells: [id] }) => id) : []))).toEqual([[kind!.id]])
  expect(JSON.stringify(printed.at(-1))).toContain(`There are ${registries.findingKinds.length};`)
})

it('marks a kind that is no longer used', () => {
  const context = contextOf(aVessel())
  const [first] = context.registries.findingKinds
  const retired = { ...context, registries: { ...context.registries, findingKinds: [{ ...first!, retired: '0.4.0' }] } }
  expect(cellsOf(tablesOf(findingKindPages(retired)[0]!)[0]!)[0]?.[1]).toBe(`${first!.name} no longer used since 0.4.0`)
})
