/** The compiled program as a user runs it, with the browser that is on this machine. */
import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import { findBrowser } from '../../src/render/browser.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

const project = fileURLToPath(new URL('../..', import.meta.url))
const program = join(project, 'dist/cli.js')
const hasBrowser = (await findBrowser(process.env)).status === 'found'

beforeAll(() => {
  const tsc = createRequire(import.meta.url).resolve('typescript/package.json')
  execFileSync(process.execPath, [join(tsc, '../bin/tsc'), '-p', 'tsconfig.build.json'], { cwd: project })
}, 60_000)

function start(workingFolder: string, ...args: string[]) {
  const child = spawn(process.execPath, [program, ...args], { cwd: workingFolder })
  const written = { stdout: '', stderr: '' }
  child.stdout.setEncoding('utf8').on('data', (text: string) => { written.stdout += text })
  child.stderr.setEncoding('utf8').on('data', (text: string) => { written.stderr += text })
  const ended = once(child, 'close').then(([code, signal]) => ({ code: code as number | null, signal: signal as string | null, ...written }))
  return { child, ended }
}

describe('the compiled program', () => {
  it('begins with the line by which a shell runs it', () => {
    expect(readFileSync(program, 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/)
    expect(JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')).bin).toEqual({ asfitted: 'dist/cli.js' })
  })

  it('ends quietly when its reader stops reading', async () => {
    const { child, ended } = start(temporaryFolder(), '--help')
    child.stdout.destroy()
    expect(await ended).toMatchObject({ code: 0, stderr: '' })
  })

  it.skipIf(!hasBrowser)('builds a whole pack, diagrams and printed manual included', { timeout: 60_000 }, async () => {
    const workingFolder = temporaryFolder()
    const { code, stdout, stderr } = await start(workingFolder, 'build', folderOf(lampBoat()), '--out', 'pack').ended
    expect({ code, stderr }).toEqual({ code: 0, stderr: expect.stringContaining('Printing manual.pdf') })
    const pack = join(workingFolder, 'pack')
    expect(readdirSync(pack).sort()).toEqual(['SHA256SUMS', 'calculations.pdf', 'emergency.pdf', 'findings.json', 'labels', 'manual.pdf', 'record', 'site', 'workshop.pdf', 'workshop.xlsx'])
    expect(readdirSync(workingFolder)).toEqual(['pack'])
    expect(readFileSync(join(pack, 'site/electrical/index.html'), 'utf8')).toContain('<svg')

    const pdf = await getDocument({ url: pathToFileURL(join(pack, 'manual.pdf')).href, verbosity: 0 }).promise
    expect(stdout).toContain(` ${pdf.numPages} sheets\n`)
    // Cables, ways, equipment, danger, and the test sheets of these four sizes.
    expect(stdout).toMatch(/ labels +\d+ kB +8 sheets in 5 documents, 4 tables for label printers\n/)
    expect(readdirSync(join(pack, 'labels'))).toHaveLength(9)
    const { info } = await pdf.getMetadata()
    expect(info).toMatchObject({ Title: expect.stringContaining('Lamp boat') })
    await pdf.destroy()
  })

  it.skipIf(process.platform === 'win32')('clears up when it is interrupted, and leaves the pack before it', { timeout: 60_000 }, async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat())
    const args = ['build', boat, '--out', 'pack', '--no-pdf']
    await start(workingFolder, ...args).ended
    const sums = readFileSync(join(workingFolder, 'pack/SHA256SUMS'), 'utf8')
    for (const signal of ['SIGINT', 'SIGTERM'] as const) {
      const { child, ended } = start(workingFolder, ...args)
      child.stderr.on('data', (text: string) => { if (text.includes('Drawing')) child.kill(signal) })
      expect((await ended).code).toBe(signal === 'SIGINT' ? 130 : 143)
      expect(readdirSync(workingFolder)).toEqual(['pack'])
      expect(readFileSync(join(workingFolder, 'pack/SHA256SUMS'), 'utf8')).toBe(sums)
    }
  })

  it('lets two builds of one place run at once', { timeout: 60_000 }, async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat())
    const builds = [1, 2].map(() => start(workingFolder, 'build', boat, '--out', 'pack', '--no-pdf').ended)
    for (const built of builds) expect(await built).toMatchObject({ code: 0 })
    expect(readdirSync(workingFolder)).toEqual(['pack'])
    expect(existsSync(join(workingFolder, 'pack/site/index.html'))).toBe(true)
    expect((await start(workingFolder, 'build', boat, '--out', 'pack', '--no-pdf').ended).code).toBe(0)
  })
})
