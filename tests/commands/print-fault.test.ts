/** Several documents are printed at once: the failure of one ends the build, and only when no other writes any more. */
import { existsSync, readdirSync } from 'node:fs'
import { setTimeout as wait } from 'node:timers/promises'
import { afterEach, expect, it, vi } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

const said: string[] = []
const failing = { file: '' }
vi.mock('../../src/renderer.js', () => ({
  pictureFilesOf: () => [],
  openRenderer: async () => ({
    lacking: null,
    draw: async () => ({ drawings: new Map(), failures: [] }),
    pictures: async () => new Map(),
    writeVolume: async (_view: unknown, { file }: { file: string }) => { said.push(`write ${file}`); await wait(10); said.push(`written ${file}`) },
    print: async ({ outFile }: { outFile: string }) => {
      const file = outFile.split('/').at(-1)!
      said.push(`print ${file}`)
      await wait(5)
      if (file === failing.file) throw new Error('out of ink')
      await wait(60)
      said.push(`printed ${file}${existsSync(outFile.replace(/[^/]+$/, '')) ? '' : ', into no folder'}`)
      return { pages: 3, bytes: 1 }
    },
    writeLabels: async () => { said.push('write labels') },
    printLabels: async () => { said.push('printed labels'); return [] },
    writeSite: async () => { said.push('write site') },
    close: async () => { said.push('closed') },
  }),
}))
afterEach(() => { said.length = 0 })

const files = ['manual.pdf', 'calculations.pdf', 'emergency.pdf', 'workshop.pdf']
const buildOne = (workingFolder: string) => runCommand(['build', folderOf(lampBoat()), '--out', 'pack'], { workingFolder })

it('a document is printed while the next are written, those one after the other', async () => {
  failing.file = ''
  await buildOne(temporaryFolder())
  const writing = said.filter(line => line.startsWith('writ'))
  expect(writing.slice(0, 2 * files.length)).toEqual(files.flatMap(file => [`write ${file}`, `written ${file}`]))
  expect(said.indexOf('print manual.pdf')).toBeLessThan(said.indexOf('written calculations.pdf'))
  expect(said.indexOf('print calculations.pdf')).toBeLessThan(said.indexOf('printed manual.pdf'))
  expect(said.at(-1)).toBe('closed')
})

it.each(files)('the failure of %s fails the build, after the others have come to their end', async file => {
  failing.file = file
  const workingFolder = temporaryFolder()
  const { code, stderr } = await buildOne(workingFolder)
  expect({ code, stderr }).toEqual({ code: 3, stderr: expect.stringContaining('out of ink') })
  expect(readdirSync(workingFolder)).toEqual([])
  const printed = said.filter(line => line.startsWith('printed ') && line !== 'printed labels')
  expect(printed.toSorted()).toEqual(files.filter(other => other !== file).map(other => `printed ${other}`).toSorted())
  expect(said.at(-1)).toBe('closed')
})
