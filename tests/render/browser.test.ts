import { chmod, mkdtemp, rm, stat, truncate, writeFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import puppeteer from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BrowserChoice, findBrowser, type Host, openBrowser, openPage } from '../../src/render/browser.js'
import { unpackBundledBrowser } from '../../src/render/bundled-browser.js'

const onLinuxX64 = process.platform === 'linux' && process.arch === 'x64'
const loader = '/lib64/ld-linux-x86-64.so.2'

/** A machine with these files on it and nothing else. */
const aHost = (given: Partial<Host> & { readonly files?: readonly string[] } = {}): Host => ({
  platform: 'linux',
  architecture: 'x64',
  homeFolder: '/home/kari',
  isRoot: false,
  isFile: file => (given.files ?? []).includes(file),
  unpackBundled: async () => ({ executable: '/cache/chromium', variables: { LD_LIBRARY_PATH: '/cache/lib' } }),
  puppeteerExecutable: () => { throw new Error('nothing downloaded') },
  ...given,
})

describe('the browser that is chosen', () => {
  it('is the one of the setting, before all others', async () => {
    const host = aHost({ files: ['/opt/my/chrome', loader, '/usr/bin/chromium'] })
    expect(await findBrowser({ ASFITTED_BROWSER: '/opt/my/chrome', PATH: '/usr/bin' }, host))
      .toEqual({ status: 'found', executable: '/opt/my/chrome', origin: 'setting', variables: {}, sandboxed: true })
  })

  it('is the bundled one on Linux x64, with its own libraries', async () => {
    const host = aHost({ files: [loader, '/usr/bin/chromium'] })
    expect(await findBrowser({ PATH: '/usr/bin' }, host)).toEqual({
      status: 'found', executable: '/cache/chromium', origin: 'bundled', variables: { LD_LIBRARY_PATH: '/cache/lib' }, sandboxed: false,
    })
  })

  // Where the makers' installers put them: common practice, no source.
  it.each<[string, Partial<Host>, Record<string, string>, string]>([
    ['Linux on ARM', { architecture: 'arm64' }, { PATH: '/usr/local/bin:/usr/bin' }, '/usr/bin/chromium'],
    ['macOS', { platform: 'darwin' }, {}, '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['macOS, for one user', { platform: 'darwin' }, {}, '/home/kari/Applications/Chromium.app/Contents/MacOS/Chromium'],
    ['Windows', { platform: 'win32' }, { 'ProgramFiles(x86)': 'C:\\Program Files (x86)' },
      'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe'],
  ])('is an installed one on %s', async (_, machine, variables, executable) => {
    expect(await findBrowser(variables, aHost({ ...machine, files: [executable, loader] }))).toMatchObject({ executable, origin: 'installed', sandboxed: true })
  })

  it('is an installed one on a Linux without the GNU C library', async () => {
    expect(await findBrowser({ PATH: '/usr/bin' }, aHost({ files: ['/usr/bin/chromium'] }))).toMatchObject({ executable: '/usr/bin/chromium', origin: 'installed' })
  })

  it('is the one in Puppeteer\'s cache when nothing is installed', async () => {
    const host = aHost({ platform: 'darwin', files: ['/cache/chrome'], puppeteerExecutable: () => '/cache/chrome' })
    expect(await findBrowser({}, host)).toMatchObject({ executable: '/cache/chrome', origin: 'puppeteer cache' })
  })

  it('runs without its sandbox as root only, where no browser can have one', async () => {
    const host = aHost({ platform: 'darwin', isRoot: true, files: ['/b'] })
    expect(await findBrowser({ ASFITTED_BROWSER: '/b' }, host)).toMatchObject({ sandboxed: false })
  })
})

describe('with no browser', () => {
  it('the remedy says what to install', async () => {
    const missing = await findBrowser({ PATH: '/usr/bin' }, aHost({ architecture: 'arm64' }))
    expect(missing).toMatchObject({ status: 'missing', reason: 'No browser was found on this machine.' })
    expect(missing).toHaveProperty('remedy', expect.stringMatching(/Chrome, Chromium or Edge.*131.*ASFITTED_BROWSER/))
  })

  it('the reason says why the bundled one does not do', async () => {
    const host = aHost({ files: [loader], unpackBundled: async () => { throw new Error('no space left on device\nwrite') } })
    expect(await findBrowser({}, host)).toMatchObject({ status: 'missing', reason: expect.stringContaining('no space left on device.') })
  })

  it('a setting that names no file is reported, not passed over', async () => {
    const missing = await findBrowser({ ASFITTED_BROWSER: '/opt/gone' }, aHost({ files: [loader] }))
    expect(missing).toMatchObject({ status: 'missing', reason: expect.stringContaining('/opt/gone') })
  })

  it('one that does not start is named, with the remedy', async () => {
    const choice: BrowserChoice = { status: 'found', executable: process.execPath, origin: 'setting', variables: {}, sandboxed: false }
    await expect(openBrowser(choice)).rejects.toThrow(new RegExp(`${path.basename(process.execPath)} did not start.*Install Chrome`, 's'))
  })
})

describe('a page', () => {
  let folder: string
  beforeAll(async () => { folder = await mkdtemp(path.join(tmpdir(), 'asfitted-test-')) })
  afterAll(() => rm(folder, { recursive: true }))

  it('reads files and asks nothing of any network, nor does the browser', async () => {
    const asked: string[] = []
    const server = createServer((request, response) => {
      asked.push(request.url ?? '')
      response.end()
    }).listen(0, '127.0.0.1')
    await new Promise(resolve => server.once('listening', resolve))
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
    const ask = (address: string) => fetch(address, { mode: 'no-cors' }).catch(() => null)

    const choice = await findBrowser(process.env)
    if (choice.status === 'missing') throw new Error(`${choice.reason} ${choice.remedy}`)
    const browser = await openBrowser(choice)
    const browserWithNetwork = await puppeteer.launch({
      executablePath: choice.executable, args: choice.sandboxed ? [] : ['--no-sandbox'], env: { ...process.env, ...choice.variables },
    })
    try {
      await writeFile(path.join(folder, 'beside.css'), 'p { color: rgb(1, 2, 3) }')
      await writeFile(path.join(folder, 'page.html'), `<link rel="stylesheet" href="beside.css"><img src="${address}/pixel.png"><p>text</p>`)
      const page = await openPage(browser)
      await page.goto(pathToFileURL(path.join(folder, 'page.html')).href)
      expect(await page.$eval('p', p => getComputedStyle(p).color)).toBe('rgb(1, 2, 3)')

      await (await browser.newPage()).evaluate(ask, `${address}/by-the-browser`)
      await (await openPage(browserWithNetwork)).evaluate(ask, `${address}/by-the-page`)
      await (await browserWithNetwork.newPage()).evaluate(ask, `${address}/by-neither`)
      expect(asked).toEqual(['/by-neither'])
    } finally {
      await Promise.all([browser.close(), browserWithNetwork.close()])
      server.close()
    }
  })
})

describe.runIf(onLinuxX64)('the bundled browser', () => {
  let folder: string
  beforeAll(async () => { folder = await mkdtemp(path.join(tmpdir(), 'asfitted-test-')) })
  afterAll(() => rm(folder, { recursive: true }))

  it('is unpacked once by two that ask at the same time, and mended when a file has gone', async () => {
    const [one, other] = await Promise.all([unpackBundledBrowser(folder), unpackBundledBrowser(folder)])
    expect(one).toEqual(other)
    const { size, mtimeMs } = await stat(one.executable)

    await unpackBundledBrowser(folder)
    expect((await stat(one.executable)).mtimeMs).toBe(mtimeMs)

    await truncate(one.executable, 1000)
    await unpackBundledBrowser(folder)
    expect((await stat(one.executable)).size).toBe(size)
  }, 60_000)

  it('is not run from a folder that others can write to', async () => {
    const { executable } = await unpackBundledBrowser(folder)
    await chmod(path.dirname(executable), 0o777)
    await expect(unpackBundledBrowser(folder)).rejects.toThrow('only this user can write to')
  }, 60_000)
})
