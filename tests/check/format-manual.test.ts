import { expect, test } from 'vitest'
import { formatManual } from '../../src/check/format-manual.js'

// Written anew by `npx vitest run tests/check/format-manual.test.ts -u`.
test('docs/vessel-folder.md is what the schemas say', async () => {
  await expect(formatManual()).toMatchFileSnapshot('../../docs/vessel-folder.md')
})

test('every key has a line that says what it takes and what it is', () => {
  const rows = formatManual().split('\n').filter(line => line.startsWith('| `'))
  expect(rows.length).toBeGreaterThan(150)
  for (const row of rows) {
    const [, , required, takes, about] = row.split(/(?<!\\)\|/).map(cell => cell.trim())
    expect([row, ['yes', ''].includes(required!)]).toEqual([row, true])
    expect([row, takes !== '' && about !== '']).toEqual([row, true])
  }
})
