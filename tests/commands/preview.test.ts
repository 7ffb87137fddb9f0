import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished, vi } from 'vitest'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

/** A preview that runs until the test has ended. */
async function startPreview(boat: string) {
  const stopping = new AbortController()
  let said = ''
  const ended = runCommand(['preview', boat], { workingFolder: boat, stop: stopping.signal, stdout: { write: text => { said += text } } })
  const stop = async () => {
    stopping.abort()
    return (await ended).code
  }
  onTestFinished(async () => void await stop())
  const address = await vi.waitUntil(() => /http:\S+/.exec(said)?.[0], 10_000)
  const page = async (pathname: string) => {
    const response = await fetch(address + pathname)
    return { status: response.status, text: await response.text() }
  }
  return { address, page, stop, said: () => said }
}

/** The changes that the server tells of, as a page in a browser hears them. */
async function listen(address: string) {
  const events = await fetch(`${address}-/changes`)
  const reader = events.body!.pipeThrough(new TextDecoderStream()).getReader()
  onTestFinished(() => reader.cancel().catch(() => {}))
  return async () => (await reader.read()).value
}

describe('asfitted preview', () => {
  it('shows the site, follows the author’s changes, and clears up when it is stopped', { timeout: 30_000 }, async () => {
    const boat = folderOf(lampBoat())
    const temporary = temporaryFolder()
    vi.stubEnv('TMPDIR', temporary)
    onTestFinished(() => void vi.unstubAllEnvs())
    const { address, page, stop, said } = await startPreview(boat)
    const change = await listen(address)

    await change()
    const home = await page('')
    expect(home.status).toBe(200)
    expect(home.text).toContain('Lamp boat')
    expect(home.text).toContain('new EventSource')
    for (const file of readdirSync(temporary, { recursive: true, encoding: 'utf8' }).filter(name => name.endsWith('index.html'))) {
      expect(readFileSync(join(temporary, file), 'utf8')).not.toContain('EventSource')
    }

    writeFileSync(join(boat, 'vessel.yaml'), 'vessel: {name: Renamed boat, basis: iso}\n')
    expect(await change()).toBe('data: changed\n\n')
    expect((await page('')).text).toContain('Renamed boat')

    writeFileSync(join(boat, 'vessel.yaml'), 'vessel: {name: <b>Renamed</b>, basis: none}\n')
    await change()
    const report = await page('circuits/f1/')
    expect(report.status).toBe(503)
    expect(report.text).toMatch(/vessel\.yaml:1:\d+ {2}error/)
    expect(report.text).toContain('&lt;b>Renamed')
    expect(said()).toContain('1 error, 0 warnings, 0 notes: the report is shown in place of the pages')

    writeFileSync(join(boat, 'vessel.yaml'), lampBoat()['vessel.yaml']!)
    await change()
    expect((await page('circuits/f1/')).status).toBe(200)

    expect(await stop()).toBe(0)
    await expect(fetch(address)).rejects.toThrow()
    expect(readdirSync(temporary)).toEqual([])
  })

  it('says so when the port is taken', async () => {
    const boat = folderOf(lampBoat())
    const { address } = await startPreview(boat)
    const { code, stderr } = await runCommand(['preview', boat, '--port', new URL(address).port], { workingFolder: boat })
    expect(code).toBe(2)
    expect(stderr).toMatch(/Port \d+ cannot be used: another program has it\. Name another with --port/)
  })
})
