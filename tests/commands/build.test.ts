import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { folderName } from '../../src/commands/build.js'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name).slice(folder.length + 1).replaceAll('\\', '/'))
    .sort()
const contentOf = (folder: string) => Object.fromEntries(filesBelow(folder).map(file => [file, readFileSync(join(folder, file), 'latin1')]))
const build = (workingFolder: string, ...args: string[]) => runCommand(['build', ...args], { workingFolder })

describe('asfitted build, without a browser', () => {
  it('writes everything but drawings and print, and says what to install', async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat({ name: 'Lamp boat No. 2' }))
    const { code, stdout, stderr } = await build(workingFolder, boat)
    expect(code).toBe(0)
    expect(stdout).toContain(`Handover pack of Lamp boat No. 2, owner’s edition, in ${join('handover', 'lamp-boat-no-2')}\n`)
    expect(stdout).toMatch(/ site +\d+\.\d MB +\d+ pages/)
    expect(stdout).toMatch(/\nFindings: 0 errors, 0 warnings, 0 notes\.\nEvery result .* was calculated\.\nBuilt in \d+\.\d s\.\n$/)
    expect(stderr).toMatch(/^Reading, checking, calculating\n/)
    expect(stderr).toMatch(/\nLeft out: drawings and the printed manual\. ASFITTED_BROWSER is set to \/no\/such\/browser.* Set ASFITTED_BROWSER /)

    const pack = join(workingFolder, 'handover/lamp-boat-no-2')
    expect(readdirSync(pack).sort()).toEqual(['SHA256SUMS', 'findings.json', 'labels', 'record', 'site', 'workshop.xlsx'])
    expect(stdout).toMatch(/^  workshop\.xlsx +\d+ kB   wire lists, bill of cable/m)
    expect(existsSync(join(pack, 'site/index.html'))).toBe(true)
    expect(readdirSync(join(pack, 'labels')).sort()).toEqual(['cables.csv', 'danger.csv', 'equipment.csv', 'ways.csv'])
    const labels = readFileSync(join(pack, 'site/labels/index.html'), 'utf8')
    expect(labels).toContain('href="../../labels/cables.csv"')
    expect(labels).not.toMatch(/href="[^"]*\.pdf"/)
    expect(labels).toContain('not made here: build the pack with print')
    expect(readdirSync(join(workingFolder, 'handover'))).toEqual(['lamp-boat-no-2'])
  })

  it('does not put one boat’s pack in the place of another’s', async () => {
    const workingFolder = temporaryFolder()
    const twin = (hullNumber: string) => folderOf({ ...lampBoat(), 'vessel.yaml': `vessel: {name: Tern, basis: iso, hull-number: "${hullNumber}"}\n` })
    expect((await build(workingFolder, twin('07'))).code).toBe(0)
    const before = contentOf(join(workingFolder, 'handover/tern'))
    const { code, stderr } = await build(workingFolder, twin('08'))
    expect(code).toBe(2)
    expect(stderr).toContain(`${join('handover', 'tern')} holds the pack of another vessel, Tern, hull 07. Name another folder with --out.`)
    expect(contentOf(join(workingFolder, 'handover/tern'))).toEqual(before)
    expect((await build(workingFolder, twin('07'))).code).toBe(0)
  })

  it('seals the pack with checksums of every file', async () => {
    const workingFolder = temporaryFolder()
    await build(workingFolder, folderOf(lampBoat()), '--out', 'pack')
    const pack = join(workingFolder, 'pack')
    const lines = readFileSync(join(pack, 'SHA256SUMS'), 'utf8').trimEnd().split('\n')
    expect(lines.map(line => line.slice(66))).toEqual(filesBelow(pack).filter(file => file !== 'SHA256SUMS'))
    for (const line of lines) {
      expect(createHash('sha256').update(readFileSync(join(pack, line.slice(66)))).digest('hex')).toBe(line.slice(0, 64))
    }
    if (spawnSync('sha256sum', ['--version']).status === 0) {
      expect(spawnSync('sha256sum', ['-c', '--strict', '--quiet', 'SHA256SUMS'], { cwd: pack }).status).toBe(0)
    }
  })

  it('keeps the record: schedules, vessel, results with their working, and the data as they were read', async () => {
    const workingFolder = temporaryFolder()
    const files = { ...lampBoat({ lampCable: '40 m' }), 'notes/more.csv': 'unused' }
    const { 'notes/more.csv': _, ...data } = files
    const boat = folderOf(data)
    await build(workingFolder, boat, '--out', 'pack')
    const record = join(workingFolder, 'pack/record')
    const json = (file: string) => JSON.parse(readFileSync(join(workingFolder, 'pack', file), 'utf8'))

    const cables = parse(readFileSync(join(record, 'cables.csv')), { columns: true }) as Record<string, string>[]
    expect(cables.map(row => Object.values(row)[0])).toEqual(['W1', 'W2'])
    expect(json('record/vessel.json')).toMatchObject({ identity: { name: 'Lamp boat' }, cables: [{ tag: 'W1', lengthM: 0.2 }, { tag: 'W2', lengthM: 40 }] })

    // ISO 13297 drop in W2: 0.0164 · 1 A · 80 m / 1.5 mm² = 0.874 667 V
    const { results, methods, sources } = json('record/results.json')
    const { worst } = results.voltageDrop.byCircuit.F1
    expect(worst.steps.at(-1).byBasis).toMatchObject({
      input: { currentA: 1, conductorLengthM: 80, crossSectionMm2: 1.5 }, output: { voltageDropV: expect.closeTo(0.874667, 6) },
    })
    expect(worst.comparison).toMatchObject({ limit: { relation: 'at most', value: 3 }, within: false, margin: expect.closeTo(3 - worst.voltageDropPercent, 9) })
    expect(methods[worst.steps[0].byBasis.method].formula).toContain('\\')
    expect(sources[worst.comparison.limit.citation.source]).toMatchObject({ publisher: 'ISO' })

    expect(json('findings.json')).toMatchObject({ summary: { warning: 1 }, notAssessedCount: 0, findings: [{ at: { file: 'wiring.yaml' } }] })
    expect(contentOf(join(record, 'source'))).toEqual(contentOf(boat))
  })

  it('keeps a catalogue from elsewhere beside the data', async () => {
    const workingFolder = temporaryFolder()
    mkdirSync(join(workingFolder, 'shared'))
    writeFileSync(join(workingFolder, 'shared/models.yaml'), 'models:\n  - {model: lamp, title: Lamp}\n')
    const boat = folderOf(lampBoat())
    expect((await build(workingFolder, boat, '--out', 'pack', '--catalogue', 'shared')).code).toBe(0)
    const kept = filesBelow(join(workingFolder, 'pack/record/catalogue'))
    expect(kept).toEqual([expect.stringMatching(/shared\/models\.yaml$/)])
    expect(filesBelow(join(workingFolder, 'pack/record/source'))).toEqual(filesBelow(boat))
  })

  it('gives the same bytes for the same data, and none that tells of this machine', async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat({ lampCable: '40 m' }))
    for (const out of ['one', 'two']) await build(workingFolder, boat, '--out', out)
    expect(contentOf(join(workingFolder, 'two'))).toEqual(contentOf(join(workingFolder, 'one')))
    const projectFolder = fileURLToPath(new URL('../..', import.meta.url)).slice(0, -1)
    for (const [file, content] of Object.entries(contentOf(join(workingFolder, 'one')))) {
      for (const place of [workingFolder, boat, projectFolder]) expect([file, content.includes(place)]).toEqual([file, false])
    }
  })

  it('builds the pack with its errors printed when a calculation finds some, and ends with 1', async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat({ fuse: '30 A' }))
    const { code, stdout } = await build(workingFolder, boat, '--out', 'pack')
    expect(code).toBe(1)
    expect(stdout).toMatch(/\nFindings: 1 error, .*; asfitted check \S+ shows them\.\n/)
    expect(readFileSync(join(workingFolder, 'pack/site/findings/index.html'), 'utf8')).toContain('DCD104')
  })

  it('builds no pack from data that are wrong, and leaves the pack before it', async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat())
    await build(workingFolder, boat)
    const before = contentOf(workingFolder)

    writeFileSync(join(boat, 'wiring.yaml'), lampBoat({ fuse: '3' })['wiring.yaml']!)
    const invalid = await build(workingFolder, boat)
    expect(invalid).toMatchObject({ code: 1, stdout: expect.stringMatching(/wiring\.yaml:\d+:\d+ {2}error/), stderr: expect.stringContaining('No pack was built') })

    writeFileSync(join(boat, 'wiring.yaml'), 'cables: [')
    expect((await build(workingFolder, boat)).code).toBe(2)
    expect(contentOf(workingFolder)).toEqual(before)
    expect(readdirSync(join(workingFolder, 'handover'))).toEqual(['lamp-boat'])
  })

  it('refuses a place that holds something else, and one that is read as data', async () => {
    const workingFolder = temporaryFolder()
    const boat = folderOf(lampBoat())
    mkdirSync(join(workingFolder, 'letters'))
    writeFileSync(join(workingFolder, 'letters/owner.txt'), 'Dear owner')
    const refused = await build(workingFolder, boat, '--out', 'letters')
    expect(refused).toMatchObject({ code: 2, stdout: '', stderr: expect.stringContaining('holds no handover pack') })
    expect(contentOf(workingFolder)).toEqual({ 'letters/owner.txt': 'Dear owner' })

    const inside = await build(boat, '.')
    expect(inside).toMatchObject({ code: 2, stderr: expect.stringMatching(/would lie in .* for example --out \S*handover\S*lamp-boat/) })
    expect(filesBelow(boat)).toEqual(Object.keys(lampBoat()).sort())
    // A folder whose name only begins alike is elsewhere.
    expect((await build(workingFolder, boat, '--out', `${boat}-pack`)).code).toBe(0)
  })

  it('says when the system refuses the place', async () => {
    const workingFolder = temporaryFolder()
    writeFileSync(join(workingFolder, 'file'), '')
    const { code, stderr } = await build(workingFolder, folderOf(lampBoat()), '--out', 'file/pack')
    expect(code).toBe(2)
    expect(stderr).toMatch(/asfitted: the system refuses: E\w+: .*file.* Check that the place can be written to/)
  })

  it('writes progress over one line on a terminal', async () => {
    let stderr = ''
    const terminal = { isTTY: true, columns: 20, write: (text: string) => { stderr += text } }
    await runCommand(['build', folderOf(lampBoat()), '--out', 'pack'], { workingFolder: temporaryFolder(), stderr: terminal })
    const [progress] = stderr.split('Left out')
    expect(progress).not.toContain('\n')
    for (const line of progress!.split('\r\u001B[K')) expect(line.length).toBeLessThan(20)
  })
})

it('makes a folder name of any vessel’s name', () => {
  expect(['Sea Fœx II', 'Ægir', '..', 'Öresund/1', '海豚', ' - '].map(folderName)).toEqual(['sea-fœx-ii', 'ægir', 'vessel', 'oresund-1', '海豚', 'vessel'])
})
