/** Every finding of every case reads well: for whoever must mend it, the sentence is all there is. */
import { describe, expect, it } from 'vitest'
import type { LocatedFinding } from '../../src/findings/finding.js'
import { caseNames, examineCase, listOf } from './cases.js'

/** What a remedy begins with. */
const imperatives = [
  'Add', 'Begin', 'Change', 'Check', 'Close', 'Correct', 'Enter', 'Fit', 'Give', 'Indent', 'Keep', 'List', 'Look', 'Mark', 'Measure', 'Mend', 'Move',
  'Name', 'Pull', 'Put', 'Read', 'Record', 'Remove', 'Replace', 'Set', 'Take', 'Use', 'Write',
]

/** Each rule by its name; true where the finding keeps it. */
const rules: Readonly<Record<string, (finding: LocatedFinding) => boolean>> = {
  // There is one vessel, and which file is meant the place says.
  'names what it is about': ({ message, subject }) => subject.kind === 'vessel' || subject.kind === 'file' || hasWord(message, subject.id),
  'is one sentence': ({ message }) => !/[\r\n]|[.!?] [A-Z]|[.!]$/.test(message),
  'has words for everything': ({ message, remedy }) => !/\b(undefined|NaN|null|Infinity)\b|\[object/.test(`${message} ${remedy}`),
  'prints different values differently': finding => differ(quantitiesIn(finding.message)) || isEqualToLimit(finding),
  'keeps the grammar': ({ message, remedy }) => !/\ba [aeio]|(?<![\w.])1 [a-z]+s\b|  |,,|: :/.test(`${message} ${remedy}`),
  'has a remedy that is an imperative': ({ remedy }) => imperatives.includes(remedy.split(/[ ,]/, 1)[0]!),
  'has a remedy that ends with one period': ({ remedy }) => /[^.]\.$/.test(remedy),
}

const hasWord = (text: string, word: string): boolean => text.split(/[\s,;:]+/).includes(word) || text.includes(`${word}:`)

interface Printed { readonly number: string; readonly unit: string }
/** Numbers with a unit after them, in the order printed. */
const quantitiesIn = (message: string): readonly Printed[] =>
  [...message.matchAll(/(\d+(?:\.\d+)?)\u00A0(%|A|V|mm|m|ft)(?![\w²])/g)].map(([, number, unit]) => ({ number: number!, unit: unit! }))

/** Of the first two of one unit, one is the value and one what it is held against. */
const differ = ([first, second]: readonly Printed[]): boolean =>
  first === undefined || second === undefined || first.unit !== second.unit || first.number !== second.number

/** Nothing is wrong with printing equal what is equal. */
const isEqualToLimit = ({ evidence, limit }: LocatedFinding): boolean => limit !== null && Object.values(evidence)[0] === limit.value

describe.each(caseNames)('%s', name => {
  it.each(Object.keys(rules))('%s', async rule => {
    const { findings } = await examineCase(name)
    const broken = findings.filter(finding => !rules[rule]!(finding)).map(finding => ({
      finding: listOf([finding])[0], message: finding.message, remedy: finding.remedy,
    }))
    expect(broken).toEqual([])
  })
})

it('has quantities to look at, and among them some that only further digits tell apart', async () => {
  const { findings } = await examineCase('conductors-iso')
  const printed = findings.map(({ message }) => quantitiesIn(message)).filter(({ length }) => length > 1)
  expect(printed.length).toBeGreaterThan(5)
  expect(printed.some(([first]) => /\.\d{2,}/.test(first!.number))).toBe(true)
})
