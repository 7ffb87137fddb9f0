/**
 * The browser that draws the diagrams and prints the manual: found on this machine, started without a network.
 */
import { existsSync, statSync } from 'node:fs'
import { homedir } from 'node:os'
import path from 'node:path'
import puppeteer, { type Browser, type Page } from 'puppeteer'
import { unpackBundledBrowser, type BundledBrowser } from './bundled-browser.js'

export interface BrowserChoice {
  readonly status: 'found'
  readonly executable: string
  readonly origin: 'setting' | 'bundled' | 'installed' | 'puppeteer cache'
  /** Variables to set for the browser's own process. */
  readonly variables: Readonly<Record<string, string>>
  /** False where the browser cannot shut its pages off from the rest of the machine: as root, or the bundled one. */
  readonly sandboxed: boolean
}

/** In plain words, for the reader of the build report. */
export interface BrowserMissing {
  readonly status: 'missing'
  readonly reason: string
  readonly remedy: string
}

type Variables = Readonly<Record<string, string | undefined>>

/** What the search needs to know of the machine. */
export interface Host {
  readonly platform: NodeJS.Platform
  readonly architecture: string
  readonly homeFolder: string
  readonly isRoot: boolean
  isFile(file: string): boolean
  unpackBundled(): Promise<BundledBrowser>
  /** Where Puppeteer keeps a browser that it has downloaded; the file may be missing. */
  puppeteerExecutable(): string
}

/** The setting that wins over everything found. */
export const browserSetting = 'ASFITTED_BROWSER'
/** First version that prints running heads and page numbers (margin boxes of `@page`). */
const oldestVersion = 131
const install = `Install Chrome, Chromium or Edge, version ${oldestVersion} or later, or set ${browserSetting} to the path of one.`

const thisHost: Host = {
  platform: process.platform,
  architecture: process.arch,
  homeFolder: homedir(),
  isRoot: process.getuid?.() === 0,
  isFile: file => existsSync(file) && statSync(file).isFile(),
  unpackBundled: () => unpackBundledBrowser(),
  puppeteerExecutable: () => puppeteer.executablePath(),
}

/**
 * The browser to use: the setting, else the bundled one (Linux x64), else an installed Chrome, Chromium or Edge, else
 * the one in Puppeteer's cache. A setting that names no file is `missing`, never passed over in silence.
 */
export async function findBrowser(variables: Variables, host: Host = thisHost): Promise<BrowserChoice | BrowserMissing> {
  const found = (origin: BrowserChoice['origin'], { executable, variables }: BundledBrowser): BrowserChoice =>
    ({ status: 'found', executable, origin, variables, sandboxed: origin !== 'bundled' && !host.isRoot })
  const own = (executable: string): BundledBrowser => ({ executable, variables: {} })

  const setting = variables[browserSetting]
  if (setting) {
    if (host.isFile(setting)) return found('setting', own(setting))
    return {
      status: 'missing',
      reason: `${browserSetting} is set to ${setting}, which is not a file.`,
      remedy: `Set ${browserSetting} to the path of a Chrome, Chromium or Edge executable, or leave it unset.`,
    }
  }

  let bundledFault = ''
  if (runsBundled(host)) {
    try {
      return found('bundled', await host.unpackBundled())
    } catch (error) {
      bundledFault = ` The bundled browser could not be unpacked: ${messageOf(error)}.`
    }
  }
  const installed = installedBrowsers(variables, host).find(file => host.isFile(file))
  if (installed !== undefined) return found('installed', own(installed))
  const downloaded = puppeteerExecutable(host)
  if (downloaded !== null && host.isFile(downloaded)) return found('puppeteer cache', own(downloaded))
  return { status: 'missing', reason: `No browser was found on this machine.${bundledFault}`, remedy: install }
}

/** The bundled browser is built for x64 and needs the loader of the GNU C library, which not every Linux has. */
const runsBundled = (host: Host): boolean =>
  host.platform === 'linux' && host.architecture === 'x64' && host.isFile('/lib64/ld-linux-x86-64.so.2')

function puppeteerExecutable(host: Host): string | null {
  try {
    return host.puppeteerExecutable()
  } catch {
    return null
  }
}

function installedBrowsers(variables: Variables, host: Host): string[] {
  switch (host.platform) {
    case 'darwin':
      return [
        'Google Chrome.app/Contents/MacOS/Google Chrome',
        'Chromium.app/Contents/MacOS/Chromium',
        'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
      ].flatMap(app => ['/Applications', `${host.homeFolder}/Applications`].map(folder => `${folder}/${app}`))
    case 'win32':
      return ['Google\\Chrome\\Application\\chrome.exe', 'Chromium\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe']
        .flatMap(program => ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'].flatMap(name => {
          const folder = variables[name]
          return folder ? [path.win32.join(folder, program)] : []
        }))
    default: {
      const folders = (variables.PATH ?? '').split(':').filter(folder => folder !== '')
      return ['google-chrome-stable', 'google-chrome', 'chromium', 'chromium-browser', 'microsoft-edge-stable', 'microsoft-edge']
        .flatMap(program => folders.map(folder => path.posix.join(folder, program)))
    }
  }
}

/**
 * Starts the browser. No request of its pages or its own leaves the machine.
 *
 * Errors: the executable does not start, or is older than what printing needs. The message says what to do.
 */
export async function openBrowser(choice: BrowserChoice): Promise<Browser> {
  const browser = await puppeteer.launch({
    executablePath: choice.executable,
    headless: choice.origin === 'bundled' ? 'shell' : true,
    // No open port: the browser is spoken to over a pipe.
    pipe: true,
    args: [...offlineFlags, ...sameOnEveryMachineFlags, ...(choice.sandboxed ? [] : ['--no-sandbox'])],
    env: { ...process.env, ...choice.variables },
  }).catch((error: unknown) => {
    throw new Error(`The browser ${choice.executable} did not start: ${messageOf(error)}. ${install}`, { cause: error })
  })
  const version = await browser.version()
  const major = Number(/\/(\d+)/.exec(version)?.[1])
  if (major >= oldestVersion) return browser
  await browser.close()
  throw new Error(`The browser ${choice.executable} is ${version}, too old to print the manual. ${install}`)
}

const offlineFlags = [
  '--host-resolver-rules=MAP * ~NOTFOUND', '--disable-component-update', '--disable-domain-reliability', '--no-pings',
  '--no-default-browser-check',
]
const sameOnEveryMachineFlags = ['--disable-gpu', '--disable-lcd-text', '--font-render-hinting=none']

/** A new page that is cut off from the network. */
export async function openPage(browser: Browser): Promise<Page> {
  const page = await browser.newPage()
  await page.setOfflineMode(true)
  return page
}

/** First line of what went wrong: the rest of a browser's complaint is its log. */
const messageOf = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n', 1)[0]!.replace(/[.:]$/, '')
