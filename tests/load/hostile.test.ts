import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { check } from '../../src/check/check.js'
import { isUnreadable, loadFindingKinds } from '../../src/load/findings.js'
import { readFolder } from '../../src/load/read-folder.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { listed } from '../support/vessel-files.js'
import { csvCases, folderCases, type HostileCase, yamlCases } from '../vessels/hostile/cases.js'

async function run({ make, path = folder => folder, catalogue }: HostileCase) {
  const top = temporaryFolder()
  const folder = join(top, 'vessel')
  const outside = join(top, 'outside')
  for (const each of [folder, outside]) mkdirSync(each)
  make(folder, outside)
  const read = path(folder)
  const shared = catalogue?.(folder, outside)
  const source = await readFolder(read, shared === undefined ? {} : { catalogue: shared })
  const { findings, vessel } = check(source)
  const lines = listed(findings, source.texts).map(line => line.replace(shared ?? read, shared === undefined ? 'FOLDER' : 'CATALOGUE'))
  const exit = findings.some(isUnreadable) ? 2 : findings.some(({ severity }) => severity === 'error') ? 1 : 0
  return { findings, lines, exit, vessel }
}

describe.each([['folders', folderCases], ['YAML', yamlCases], ['CSV', csvCases]] as const)('hostile %s', (_, cases) => {
  test.each(cases)('$name', async hostile => {
    const { findings, lines, exit, vessel } = await run(hostile)
    expect(lines).toEqual(hostile.findings)
    expect(exit).toBe(hostile.exit)
    expect(vessel === null).toBe(hostile.exit !== 0)
    if (hostile.says !== undefined) expect(findings.map(({ message }) => message).join('\n')).toContain(hostile.says)
  })
})

test('no key of a file has reached the prototype of anything', () => {
  expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
})

test.each(loadFindingKinds.map(({ id }) => id))('%s is triggered by a case', id => {
  expect([...folderCases, ...yamlCases, ...csvCases].some(({ findings }) => findings.some(finding => finding.split(' ').includes(id)))).toBe(true)
})
