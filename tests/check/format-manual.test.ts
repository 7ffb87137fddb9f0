import { expect, test } from 'vitest'
import { formatManual } from '../../src/check/format-manual.js'
import { readContent } from '../../src/load/read-content.js'

const content = await readContent()

// Written anew by `npx vitest run tests/check/format-manual.test.ts -u`.
test('docs/vessel-folder.md is what the schemas say', async () => {
  await expect(formatManual(content)).toMatchFileSnapshot('../../docs/vessel-folder.md')
})

test('every key has a line that says what it takes and what it is', () => {
  const [keys] = formatManual(content).split('\n## Pages that a procedure can take the place of')
  const rows = keys!.split('\n').filter(line => line.startsWith('| `'))
  expect(rows.length).toBeGreaterThan(150)
  for (const row of rows) {
    const [, , required, takes, about] = row.split(/(?<!\\)\|/).map(cell => cell.trim())
    expect([row, ['yes', ''].includes(required!)]).toEqual([row, true])
    expect([row, takes !== '' && about !== '']).toEqual([row, true])
  }
})

test('keys of general tasks, contents and label sizes stand in it as the files of the manual have them', () => {
  const manual = formatManual(content)
  expect(manual).toContain('| `bilge-pump-test` |')
  for (const line of ['| `liferaft-stowage` | Where the liferaft is stowed | required |', '| `a4-21` | A4, 21 labels 63.5 × 38.1 mm | equipment |', '| `fire` | Fire or smoke | Emergency |']) expect(manual).toContain(line)
  const anchors = [...manual.matchAll(/\]\(#([^)]+)\)/g)].map(([, anchor]) => anchor)
  const headings = [...manual.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading!.toLowerCase().replace(/[^a-z0-9 -]/g, '').replaceAll(' ', '-'))
  expect(anchors.filter(anchor => !headings.includes(anchor!))).toEqual([])
})
