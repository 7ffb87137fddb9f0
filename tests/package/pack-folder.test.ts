import { lstatSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesBelow, readChecksums, sha256 } from '../../src/package/checksums.js'
import { assemblePack, PackRefused } from '../../src/package/pack-folder.js'
import { temporaryFolder } from '../support/temporary-folder.js'

/** Fills a folder with the least that makes a pack, each file saying whose it is. */
const fillWith = (mark: string) => async (folder: string) => {
  for (const file of ['site/index.html', 'site/assets/style.css', 'record/vessel.json', 'findings.json', 'manual.pdf']) {
    mkdirSync(join(folder, file, '..'), { recursive: true })
    writeFileSync(join(folder, file), mark)
  }
  return mark
}

/** Every file below a folder with its content. */
const contentOf = (folder: string): Record<string, string> =>
  Object.fromEntries(readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name))
    .map(file => [file.slice(folder.length + 1), readFileSync(file, 'latin1')]))

async function expectWholePackOf(marks: readonly string[], pack: string): Promise<void> {
  const checksums = await readChecksums(pack)
  expect(await filesBelow(pack)).toEqual([...checksums!.keys()])
  for (const [file, sum] of checksums!) expect(await sha256(join(pack, file))).toBe(sum)
  const { SHA256SUMS: _, ...files } = contentOf(pack)
  expect(new Set(Object.values(files)).size).toBe(1)
  expect(marks).toContain(Object.values(files)[0])
}

describe('assemblePack', () => {
  it('makes the folders above its place, and leaves nothing beside it', async () => {
    const parent = temporaryFolder()
    expect(await assemblePack(join(parent, 'handover/boat'), fillWith('first'))).toBe('first')
    await expectWholePackOf(['first'], join(parent, 'handover/boat'))
    expect(readdirSync(join(parent, 'handover'))).toEqual(['boat'])
  })

  it('replaces a pack whole', async () => {
    const parent = temporaryFolder()
    await assemblePack(join(parent, 'boat'), async folder => {
      await fillWith('first')(folder)
      writeFileSync(join(folder, 'site/only-in-the-first.html'), 'first')
    })
    await assemblePack(join(parent, 'boat'), fillWith('second'))
    await expectWholePackOf(['second'], join(parent, 'boat'))
    expect(readdirSync(parent)).toEqual(['boat'])
  })

  it('leaves the pack before it byte for byte when filling fails, and removes what it had begun', async () => {
    const parent = temporaryFolder()
    await assemblePack(join(parent, 'boat'), fillWith('first'))
    const before = contentOf(parent)
    await expect(assemblePack(join(parent, 'boat'), async folder => {
      await fillWith('second')(folder)
      throw new Error('the printer is on fire')
    })).rejects.toThrow('the printer is on fire')
    expect(contentOf(parent)).toEqual(before)
    expect(readdirSync(parent)).toEqual(['boat'])
  })

  it('takes an empty folder', async () => {
    const parent = temporaryFolder()
    mkdirSync(join(parent, 'boat'))
    writeFileSync(join(parent, 'boat/.DS_Store'), '')
    await assemblePack(join(parent, 'boat'), fillWith('first'))
    await expectWholePackOf(['first'], join(parent, 'boat'))
  })

  it.skipIf(process.platform === 'win32')('replaces the folder behind a symbolic link, not the link', async () => {
    const parent = temporaryFolder()
    await assemblePack(join(parent, 'elsewhere/boat'), fillWith('first'))
    symlinkSync('elsewhere/boat', join(parent, 'latest'))
    await assemblePack(join(parent, 'latest'), fillWith('second'))
    expect(lstatSync(join(parent, 'latest')).isSymbolicLink()).toBe(true)
    await expectWholePackOf(['second'], join(parent, 'elsewhere/boat'))
  })

  describe('refuses, before any work, and leaves as it was,', () => {
    async function expectRefusal(parent: string, place: string, message: string | RegExp): Promise<void> {
      const before = contentOf(parent)
      let worked = false
      const attempt = assemblePack(place, async () => { worked = true })
      await expect(attempt).rejects.toThrow(PackRefused)
      await expect(attempt).rejects.toThrow(message)
      expect(worked).toBe(false)
      expect(contentOf(parent)).toEqual(before)
    }

    it('a folder with something else in it', async () => {
      const parent = temporaryFolder()
      writeFileSync(join(parent, 'letter.txt'), 'Dear owner')
      await expectRefusal(parent, parent, 'is not empty and holds no handover pack')
    })

    it('a folder whose list of checksums is of something else', async () => {
      const parent = temporaryFolder()
      writeFileSync(join(parent, 'disk.img'), 'image')
      writeFileSync(join(parent, 'SHA256SUMS'), `${await sha256(join(parent, 'disk.img'))}  disk.img\n`)
      await expectRefusal(parent, parent, 'holds no handover pack')
    })

    it('a file', async () => {
      const parent = temporaryFolder()
      writeFileSync(join(parent, 'boat'), 'a file')
      await expectRefusal(parent, join(parent, 'boat'), 'is a file')
    })

    it('a pack to which somebody added a file', async () => {
      const parent = temporaryFolder()
      await assemblePack(join(parent, 'boat'), fillWith('first'))
      writeFileSync(join(parent, 'boat/signed.pdf'), 'signature')
      await expectRefusal(parent, join(parent, 'boat'), /not as it was written: signed\.pdf was added\..*another folder/s)
    })

    it('a pack in which somebody changed a file', async () => {
      const parent = temporaryFolder()
      await assemblePack(join(parent, 'boat'), fillWith('first'))
      writeFileSync(join(parent, 'boat/manual.pdf'), 'with notes in the margin')
      await expectRefusal(parent, join(parent, 'boat'), 'manual.pdf was changed')
    })
  })

  it('keeps what was added to the pack while the new one was made', async () => {
    const parent = temporaryFolder()
    await assemblePack(join(parent, 'boat'), fillWith('first'))
    await expect(assemblePack(join(parent, 'boat'), async folder => {
      await fillWith('second')(folder)
      writeFileSync(join(parent, 'boat/note.txt'), 'mind the step')
    })).rejects.toThrow('note.txt was added')
    expect(readFileSync(join(parent, 'boat/note.txt'), 'utf8')).toBe('mind the step')
    expect(readdirSync(parent)).toEqual(['boat'])
  })

  it('lets builds run at once: the place holds one whole pack, and nothing is left over', async () => {
    const parent = temporaryFolder()
    const marks = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']
    await assemblePack(join(parent, 'boat'), fillWith('first'))
    await Promise.all(marks.map(mark => assemblePack(join(parent, 'boat'), fillWith(mark))))
    await expectWholePackOf(marks, join(parent, 'boat'))
    expect(readdirSync(parent)).toEqual(['boat'])
  })
})
