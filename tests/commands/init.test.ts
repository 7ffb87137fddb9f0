import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'

describe('asfitted init', () => {
  it('starts a vessel folder that check passes without a finding', async () => {
    const workingFolder = temporaryFolder()
    const { code, stdout } = await runCommand(['init', 'fleet/my boat'], { workingFolder })
    expect(code).toBe(0)
    expect(stdout).toContain('asfitted check "fleet/my boat"')
    expect(await runCommand(['check', 'fleet/my boat'], { workingFolder })).toEqual({
      code: 0, stderr: '', stdout: '0 errors, 0 warnings, 0 notes\nEvery result that this version calculates was calculated.\n',
    })
  })

  it('names in every data file a JSON Schema that is there', async () => {
    const workingFolder = temporaryFolder()
    await runCommand(['init', 'boat'], { workingFolder })
    const files = readdirSync(join(workingFolder, 'boat'), { recursive: true, encoding: 'utf8' }).filter(file => file.endsWith('.yaml'))
    expect(files.length).toBeGreaterThan(5)
    for (const file of files) {
      const place = join(workingFolder, 'boat', file)
      const [, schema] = /^# yaml-language-server: \$schema=(\S+)\n/.exec(readFileSync(place, 'utf8')) ?? []
      expect([file, existsSync(join(dirname(place), schema ?? 'none'))]).toEqual([file, true])
    }
  })

  it('takes an empty folder, also one with a repository in it', async () => {
    const workingFolder = temporaryFolder()
    mkdirSync(join(workingFolder, '.git'))
    expect((await runCommand(['init', '.'], { workingFolder })).code).toBe(0)
    expect(existsSync(join(workingFolder, 'vessel.yaml'))).toBe(true)
  })

  it('refuses a folder that holds something, and a file, and leaves them as they are', async () => {
    const workingFolder = temporaryFolder()
    writeFileSync(join(workingFolder, 'vessel.yaml'), 'mine')
    for (const name of ['.', 'vessel.yaml']) {
      const { code, stdout, stderr } = await runCommand(['init', name], { workingFolder })
      expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
      expect(stderr).toMatch(/is not empty \(vessel\.yaml\)|is a file/)
    }
    expect(readdirSync(workingFolder)).toEqual(['vessel.yaml'])
    expect(readFileSync(join(workingFolder, 'vessel.yaml'), 'utf8')).toBe('mine')
  })
})

describe('asfitted schema', () => {
  it('writes schemas that are not read as data, and the line that names them', async () => {
    const workingFolder = temporaryFolder()
    await runCommand(['init', 'boat'], { workingFolder })
    writeFileSync(join(workingFolder, 'boat/.schema/vessel-folder.schema.json'), 'an older one')
    const { code, stdout } = await runCommand(['schema', 'boat'], { workingFolder })
    expect(code).toBe(0)
    const [, name] = /# yaml-language-server: \$schema=\.\/(\S+)/.exec(stdout)!
    const schema = JSON.parse(readFileSync(join(workingFolder, 'boat', name!), 'utf8'))
    expect(Object.keys(schema.properties)).toContain('circuits')
    expect((await runCommand(['check', 'boat'], { workingFolder })).code).toBe(0)
  })

  it('says that there is no such folder', async () => {
    const { code, stderr } = await runCommand(['schema', 'nowhere'], { workingFolder: temporaryFolder() })
    expect(code).toBe(2)
    expect(stderr).toContain('nowhere is no folder')
  })
})
