/** A folder of its own for a test, removed when the test has ended. */
import { mkdtempSync, realpathSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

export function temporaryFolder(): string {
  // Without symbolic links, so that paths can be compared with what programs report.
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'asfitted-test-')))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}
