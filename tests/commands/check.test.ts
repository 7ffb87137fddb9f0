import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

const check = (folder: string, ...options: string[]) => runCommand(['check', folder, ...options], { workingFolder: temporaryFolder() })

describe('asfitted check', () => {
  it('ends with 0 when there is nothing to say', async () => {
    const { code, stdout, stderr } = await check(folderOf(lampBoat()))
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    expect(stdout).toBe('0 errors, 0 warnings, 0 notes\nEvery result that this version calculates was calculated.\n')
  })

  it('ends with 0 on warnings, which it prints with their place', async () => {
    // ISO 13297 drop: 0.0164 · 1 A · 2 · (0.2 m + 40 m) / 1.5 mm² = 0.88 V, 7.3 % of 12 V; limit 3 %.
    const { code, stdout } = await check(folderOf(lampBoat({ lampCable: '40 m' })))
    expect(code).toBe(0)
    expect(stdout).toMatch(/wiring\.yaml:\d+:\d+ {2}warning {2}DCD\d+ \S+\n.*7\.3\s%, limit 3\.0\s%/)
    expect(stdout).toMatch(/\n0 errors, [1-9]\d* warnings?, \d+ notes?\n/)
  })

  it('ends with 1 on an error of the calculation', async () => {
    // Capacity of 1.5 mm² at 105 °C insulation is 25 A (ISO 13297 table A.1, from memory): a 30 A fuse does not protect it.
    const { code, stdout } = await check(folderOf(lampBoat({ fuse: '30 A' })))
    expect(code).toBe(1)
    expect(stdout).toMatch(/error {2}DCD\d+ .*\n.*30\.0\sA.*25\.0\sA/)
  })

  it('ends with 1 on a vessel whose entries are wrong, and says that nothing was calculated', async () => {
    const { code, stdout } = await check(folderOf(lampBoat({ fuse: '3' })))
    expect(code).toBe(1)
    expect(stdout).toContain('wiring.yaml')
    expect(stdout).toMatch(/\n1 error, 0 warnings, 0 notes\nNothing was calculated: mend the errors first\.\n$/)
  })

  it('counts what is not assessed', async () => {
    const { 'wiring.yaml': wiring, ...others } = lampBoat()
    const { code, stdout } = await check(folderOf({ ...others, 'wiring.yaml': wiring!.replace('to: E1, type: 2x1.5', 'to: E1') }))
    expect(code).toBe(0)
    expect(stdout).toMatch(/\n[1-9]\d* results are not assessed for want of data/)
  })

  describe('ends with 2 when the folder cannot be read as a vessel:', () => {
    const hostile: Record<string, () => string> = {
      'it is not there': () => join(temporaryFolder(), 'nowhere'),
      'it is a file': () => {
        const file = join(temporaryFolder(), 'vessel.yaml')
        writeFileSync(file, 'vessel: {}')
        return file
      },
      'it is empty': () => temporaryFolder(),
      'a file breaks the rules of YAML': () => folderOf({ ...lampBoat(), 'broken.yaml': 'zones: [unclosed\n' }),
      'a file is no text': () => {
        const folder = folderOf(lampBoat())
        writeFileSync(join(folder, 'equipment.yaml'), Buffer.from([0xff, 0xfe, 0x00, 0xd8]))
        return folder
      },
      'an alias multiplies beyond measure': () => folderOf({
        ...lampBoat(),
        'bomb.yaml': ['a: &a [x, x, x, x, x, x, x, x, x, x]', ...'bcdefgh'.split('').map((key, i) => `${key}: &${key} [${Array(10).fill(`*${'abcdefg'[i]}`).join(', ')}]`)].join('\n'),
      }),
    }
    for (const [what, make] of Object.entries(hostile)) {
      it(what, async () => {
        const { code, stdout, stderr } = await check(make())
        expect({ code, stderr }).toEqual({ code: 2, stderr: '' })
        expect(stdout).toMatch(/error {2}SRC\d{3} /)
        expect(stdout).toContain('remedy')
      })
    }
  })

  it('prints the same as JSON for other programs', async () => {
    const { code, stdout } = await check(folderOf(lampBoat({ fuse: '30 A' })), '--json')
    expect(code).toBe(1)
    const { findings, summary, notAssessedCount } = JSON.parse(stdout)
    expect(summary.error).toBe(findings.filter(({ severity }: { severity: string }) => severity === 'error').length)
    expect(notAssessedCount).toBe(0)
    expect(findings[0]).toMatchObject({ severity: 'error', subject: { kind: 'circuit', id: 'F1' }, at: { file: 'wiring.yaml' } })
    expect(JSON.parse((await check(temporaryFolder(), '--json')).stdout)).toMatchObject({ summary: { error: 1 }, notAssessedCount: null })
  })

  it('lists what is not assessed when asked, with the reason and what to record', async () => {
    const boat = folderOf({ ...lampBoat(), 'radio.yaml': 'equipment: [{tag: T1, name: Radio, kind: vhf transceiver}]\n' })
    expect((await check(boat)).stdout).toMatch(/\n\d+ results are not assessed .* --not-assessed lists them here\.\n$/)
    const { stdout } = await check(boat, '--not-assessed')
    expect(stdout).toContain('\nRadio and antennas, not assessed\n  T1: loss, range and exposure: what it transmits is not recorded\n  remedy  Record transmitters')
    expect(stdout).not.toContain('--not-assessed')
    const { notAssessed, notAssessedCount } = JSON.parse((await check(boat, '--json')).stdout)
    expect(notAssessed).toHaveLength(notAssessedCount)
    expect(notAssessed).toContainEqual(expect.objectContaining({ calculation: 'Radio and antennas', subjectTag: 'T1', partTag: null }))
  })

  it('reads models from a catalogue elsewhere', async () => {
    const { 'wiring.yaml': wiring, ...others } = lampBoat()
    const boat = folderOf({ ...others, 'wiring.yaml': wiring!.replace('kind: light, zone: cabin, current-max: 1 A', 'model: lamp, zone: cabin') })
    const catalogue = join(temporaryFolder(), 'catalogue')
    mkdirSync(catalogue)
    writeFileSync(join(catalogue, 'models.yaml'), 'models:\n  - {model: lamp, title: Lamp, kind: light, current-max: 1 A}\n')
    expect((await check(boat)).code).toBe(1)
    expect(await check(boat, '--catalogue', catalogue)).toMatchObject({ code: 0, stdout: expect.stringContaining('0 errors') })
  })

  it('colours what a terminal shows, unless the user wants none', async () => {
    const folder = folderOf(lampBoat({ fuse: '30 A' }))
    const onTerminal = async (variables: Record<string, string>) => {
      let stdout = ''
      await runCommand(['check', folder], { workingFolder: folder, variables, stdout: { isTTY: true, write: text => { stdout += text } } })
      return stdout
    }
    expect(await onTerminal({})).toContain('\u001B[')
    expect(await onTerminal({ NO_COLOR: '1' })).not.toContain('\u001B[')
  })
})
