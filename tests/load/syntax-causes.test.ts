/** One slip of the pen is one finding: what the parser trips over after it is no fault of the author's. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readFolder } from '../../src/load/read-folder.js'

async function syntaxLines(text: string): Promise<readonly (number | undefined)[]> {
  const folder = mkdtempSync(join(tmpdir(), 'asfitted-syntax-'))
  try {
    writeFileSync(join(folder, 'zones.yaml'), text)
    const { findings } = await readFolder(folder)
    return findings.filter(({ id }) => id === 'SRC111').map(({ at }) => at?.line)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const zone = (n: number, indent = '    ') => `  - tag: z${n}\n${indent}name: Zone ${n}\n    space: interior\n`

it('a tab as indentation, whatever follows from it', async () => {
  expect(await syntaxLines(`zones:\n${zone(1)}${zone(2, '\t')}${zone(3)}${zone(4)}`)).toEqual([6])
})
it('every tab of the file', async () => {
  expect(await syntaxLines(`zones:\n${zone(1, '\t')}${zone(2)}${zone(3, '\t')}`)).toEqual([3, 9])
})
it('never two in one line', async () => {
  const lines = await syntaxLines(`zones:\n${zone(1)}${zone(2, '      ')}${zone(3)}`)
  expect(new Set(lines).size).toBe(lines.length)
  expect(lines.length).toBeGreaterThan(0)
})
