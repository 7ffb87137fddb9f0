import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it, onTestFinished, vi } from 'vitest'
import { watchFolders } from '../../src/preview/watch-folders.js'
import { temporaryFolder } from '../support/temporary-folder.js'

const everyMs = 10
const aWhile = () => new Promise(resolve => setTimeout(resolve, 15 * everyMs))

it('notices what is changed, added, replaced and removed, once each, and nothing else', async () => {
  const folder = temporaryFolder()
  mkdirSync(join(folder, 'electrical'))
  writeFileSync(join(folder, 'electrical/circuits.yaml'), 'circuits: []')
  const changed = vi.fn()
  onTestFinished(watchFolders([folder], everyMs, changed))
  await aWhile()
  expect(changed).not.toHaveBeenCalled()

  const edits = [
    () => writeFileSync(join(folder, 'electrical/circuits.yaml'), 'circuits: [ ]'),
    () => mkdirSync(join(folder, 'deck')) ?? writeFileSync(join(folder, 'deck/cables.csv'), 'tag,from,to\n'),
    // An editor that writes beside the file and puts the new one in its place.
    () => {
      writeFileSync(join(folder, '.circuits.yaml.swp'), 'circuits: [x]')
      renameSync(join(folder, '.circuits.yaml.swp'), join(folder, 'electrical/circuits.yaml'))
    },
    () => rmSync(join(folder, 'deck'), { recursive: true }),
  ]
  for (const [i, edit] of edits.entries()) {
    edit()
    await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(i + 1))
    await aWhile()
    expect(changed).toHaveBeenCalledTimes(i + 1)
  }

  writeFileSync(join(folder, '.hidden'), 'not data')
  await aWhile()
  expect(changed).toHaveBeenCalledTimes(edits.length)
})

it('goes on when the folder is taken away and put back', async () => {
  const folder = join(temporaryFolder(), 'boat')
  mkdirSync(folder)
  writeFileSync(join(folder, 'vessel.yaml'), 'vessel: {}')
  const changed = vi.fn()
  onTestFinished(watchFolders([folder], everyMs, changed))
  await aWhile()
  renameSync(folder, `${folder}-away`)
  await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(1))
  renameSync(`${folder}-away`, folder)
  await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(2))
})

it('waits until a file that is being written is quiet', async () => {
  const folder = temporaryFolder()
  writeFileSync(join(folder, 'cables.csv'), 'tag,from,to\n')
  const changed = vi.fn()
  onTestFinished(watchFolders([folder], 100, changed))
  await new Promise(resolve => setTimeout(resolve, 50))
  for (let row = 1; row <= 60; row++) {
    writeFileSync(join(folder, 'cables.csv'), `W${row},A1,P1\n`, { flag: 'a' })
    await new Promise(resolve => setTimeout(resolve, 5))
  }
  expect(changed).not.toHaveBeenCalled()
  await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(1))
})
