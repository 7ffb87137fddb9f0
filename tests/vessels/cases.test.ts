/** Each case against its whole list of findings, and the list of all kinds against the cases. */
import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { exitCodeFor } from '../../src/commands/outcome-text.js'
import type { LocatedFinding } from '../../src/findings/finding.js'
import { findingKinds } from '../../src/findings/registry.js'
import { caseNames, casesFolder, examineCase, exitCodes, expectedFile, linesOf, listOf } from './cases.js'
import { folderCases } from './hostile/cases.js'

/** What cannot be kept as a file of a repository, and so is made by a hostile case. */
const onlyHostile: Readonly<Record<string, string>> = {
  SRC101: 'there is no folder',
  SRC102: 'a link to nowhere, a pipe: the system does not hand the file out',
  SRC103: 'a file larger than any repository wants',
  SRC104: 'a file that is not UTF-8, which the next editor would mend unasked',
  SRC105: 'a link that leads out of the folder',
  SRC201: 'a folder without data, which a repository does not keep',
}

it('knows every case folder', () => {
  const folders = readdirSync(casesFolder, { withFileTypes: true }).filter(entry => entry.isDirectory()).map(entry => entry.name)
  expect(folders.toSorted()).toEqual([...caseNames, 'hostile'].toSorted())
})

describe.each(caseNames)('%s', name => {
  it('has exactly the findings expected', async () => {
    const { findings } = await examineCase(name)
    const expected = expectedFile(name, 'findings.txt').split('\n').filter(line => line !== '')
    expect(listOf(findings)).toEqual(expected)
  })

  it('ends as expected', async () => {
    expect(exitCodeFor(await examineCase(name))).toBe(exitCodes[name])
  })

  it('says at each faulty place why, and nowhere else', async () => {
    const { findings } = await examineCase(name)
    const files = linesOf(name)
    expect(findings.filter(finding => !isExplained(finding, files)).map(finding => listOf([finding])[0])).toEqual([])
    const marks = [...files.values()].flat().flatMap(line => [...line.matchAll(mark)].map(([, id]) => id!))
    expect(marks.toSorted()).toEqual(findings.map(({ id }) => id).toSorted())
  })
})

/** `# FED302: why` */
const mark = /# ([A-Z]{3}\d{3}):/g

/** Whether its mark stands in the line pointed at or in the comment above it; without a place, anywhere in the file it is about. */
function isExplained({ id, at, subject }: LocatedFinding, files: ReturnType<typeof linesOf>): boolean {
  const marked = (lines: readonly string[]): boolean => lines.some(line => line.includes(`# ${id}:`))
  if (at === null) return marked(subject.kind === 'file' ? files.get(subject.id) ?? [] : [...files.values()].flat())
  const upTo = files.get(at.file)!.slice(0, at.line)
  const comment = upTo.slice(upTo.findLastIndex((line, index) => index < at.line - 1 && !line.trim().startsWith('#')) + 1)
  return marked(comment)
}

describe('every kind of finding', () => {
  const ids = findingKinds.filter(({ retired }) => retired === null).map(({ id }) => id)

  it('is triggered by a case, or has a reason why only a hostile one can', async () => {
    const examinations = await Promise.all(caseNames.map(examineCase))
    const triggered = new Set(examinations.flatMap(({ findings }) => findings.map(({ id }) => id)))
    expect(ids.filter(id => !triggered.has(id)).toSorted()).toEqual(Object.keys(onlyHostile))
  })

  it.each(Object.keys(onlyHostile))('%s is triggered by a hostile case', id => {
    expect(ids).toContain(id)
    expect(folderCases.flatMap(({ findings }) => findings).filter(finding => finding.split(' ').includes(id))).not.toEqual([])
  })
})
