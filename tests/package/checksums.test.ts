import { execFileSync, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesBelow, readChecksums, sha256, writeChecksums } from '../../src/package/checksums.js'
import { temporaryFolder } from '../support/temporary-folder.js'

const hasSha256sum = spawnSync('sha256sum', ['--version']).status === 0
const odd = process.platform === 'win32' ? [] : ['odd\\na"me', 'two\nlines']

function folderWithFiles(): string {
  const folder = temporaryFolder()
  mkdirSync(join(folder, 'site/assets'), { recursive: true })
  for (const file of ['site/index.html', 'site/assets/a b.css', 'manual.pdf', 'Ω.txt', ...odd]) writeFileSync(join(folder, file), `content of ${file}`)
  return folder
}

describe('checksums', () => {
  // FIPS 180-4, example "abc" of the SHA-256 test vectors published with it.
  it('are those of the published example', async () => {
    const file = join(temporaryFolder(), 'abc')
    writeFileSync(file, 'abc')
    expect(await sha256(file)).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })

  it('list every file but the list, sorted, each with the digest of its bytes', async () => {
    const folder = folderWithFiles()
    await writeChecksums(folder)
    await writeChecksums(folder)
    const checksums = await readChecksums(folder)
    expect([...checksums!.keys()]).toEqual(['manual.pdf', ...odd.slice(0, 1), 'site/assets/a b.css', 'site/index.html', ...odd.slice(1), 'Ω.txt'])
    for (const [file, sum] of checksums!) expect(sum).toBe(createHash('sha256').update(readFileSync(join(folder, file))).digest('hex'))
  })

  it.skipIf(!hasSha256sum)('are accepted by sha256sum -c, which finds a changed file', async () => {
    const folder = folderWithFiles()
    await writeChecksums(folder)
    const verdict = execFileSync('sha256sum', ['-c', '--strict', 'SHA256SUMS'], { cwd: folder, encoding: 'utf8' })
    expect(verdict.trim().split('\n')).toHaveLength((await filesBelow(folder)).length)
    writeFileSync(join(folder, 'manual.pdf'), 'other')
    expect(spawnSync('sha256sum', ['-c', '--strict', 'SHA256SUMS'], { cwd: folder }).status).toBe(1)
  })

  it('are null for a folder that has none, or a file of another form', async () => {
    const folder = temporaryFolder()
    expect(await readChecksums(folder)).toBeNull()
    writeFileSync(join(folder, 'SHA256SUMS'), 'shopping list\n')
    expect(await readChecksums(folder)).toBeNull()
  })
})
