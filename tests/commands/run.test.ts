import { describe, expect, it } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'

const run = (...args: string[]) => runCommand(args, { workingFolder: temporaryFolder() })

describe('asfitted', () => {
  it('ends with 2 on misuse, and says how it is used', async () => {
    for (const args of [[], ['chekc', 'boat'], ['check'], ['check', 'boat', 'more'], ['check', 'boat', '--fast'], ['build', 'boat', '--out'], ['preview', 'boat', '--port', 'high'], ['preview', 'boat', '--port', '70000']]) {
      const { code, stdout, stderr } = await run(...args)
      expect([args, code, stdout]).toEqual([args, 2, ''])
      expect(stderr).toMatch(/asfitted/)
    }
    expect((await run('chekc', 'boat')).stderr).toContain('Did you mean check?')
  })

  it('ends with 0 when help is asked for, and names every command and exit code there', async () => {
    const { code, stdout, stderr } = await run('--help')
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
    for (const word of ['check', 'build', 'preview', 'init', 'schema', '0 no errors', '1 errors', '2 the folder', '3 a fault']) expect(stdout).toContain(word)
    expect(await run('build', '--help')).toMatchObject({ code: 0, stdout: expect.stringContaining('--no-pdf') })
  })
})
