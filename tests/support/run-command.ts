/** Runs a command of the program in this process, with streams that keep what is written to them. */
import { run } from '../../src/commands/run.js'
import type { Surroundings } from '../../src/commands/surroundings.js'

export interface Ran { readonly code: number; readonly stdout: string; readonly stderr: string }

/** A setting that names no browser: everything but drawings and print is made, quickly. */
export const withoutBrowser = { ASFITTED_BROWSER: '/no/such/browser' }

export async function runCommand(args: readonly string[], given: Partial<Surroundings> & Pick<Surroundings, 'workingFolder'>): Promise<Ran> {
  const written = { stdout: '', stderr: '' }
  const code = await run(args, {
    stdout: { write: text => { written.stdout += text } },
    stderr: { write: text => { written.stderr += text } },
    variables: withoutBrowser,
    now: () => new Date(2026, 4, 4, 12),
    stop: new AbortController().signal,
    ...given,
  })
  return { code, ...written }
}
