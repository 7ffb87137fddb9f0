import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it, vi } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

const fault = { now: false, closed: 0 }
vi.mock('../../src/renderer.js', () => ({
  pictureFilesOf: () => [],
  openRenderer: async () => ({
    lacking: 'No browser.',
    draw: async () => ({ drawings: new Map(), failures: [] }),
    pictures: async () => new Map(),
    writeSite: async (_view: unknown, _drawn: unknown, folder: string) => {
      mkdirSync(join(folder, 'site'))
      writeFileSync(join(folder, 'site/index.html'), 'page')
      if (fault.now) throw new Error('out of ink')
    },
    close: async () => { fault.closed += 1 },
  }),
}))

it('leaves the pack before it byte for byte when rendering fails, and says that the fault is the program’s', async () => {
  const workingFolder = temporaryFolder()
  const args = ['build', folderOf(lampBoat()), '--out', 'pack']
  expect((await runCommand(args, { workingFolder })).code).toBe(0)
  const pack = () => readdirSync(join(workingFolder, 'pack'), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile()).map(entry => [entry.name, readFileSync(join(entry.parentPath, entry.name), 'latin1')])
  const before = pack()

  fault.now = true
  const { code, stderr } = await runCommand(args, { workingFolder })
  expect(code).toBe(3)
  expect(stderr).toMatch(/a fault of this program, not of your data:\nError: out of ink\n +at /)
  expect(pack()).toEqual(before)
  expect(readdirSync(workingFolder)).toEqual(['pack'])
  expect(fault.closed).toBe(2)
})
