import { mkdirSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { type PreviewServer, type Shown, startPreviewServer } from '../../src/preview/preview-server.js'
import { temporaryFolder } from '../support/temporary-folder.js'

function site(): string {
  const folder = join(temporaryFolder(), 'site')
  mkdirSync(join(folder, 'equipment/p1'), { recursive: true })
  mkdirSync(`${folder}-private`)
  writeFileSync(join(folder, 'index.html'), '<!doctype html><p>Home</p>')
  writeFileSync(join(folder, 'equipment/p1/index.html'), '<!doctype html><p>Größe 2.5 mm²</p>')
  writeFileSync(join(folder, 'style.css'), 'p { color: navy }')
  writeFileSync(join(folder, 'font.woff2'), Buffer.from([0, 255, 1, 254]))
  writeFileSync(join(`${folder}-private`, 'letter.txt'), 'private')
  return folder
}

async function serve(shown: Shown): Promise<PreviewServer> {
  const server = await startPreviewServer(0, shown)
  onTestFinished(() => server.close())
  return server
}

/** The request as written, where fetch would tidy its address or its host. */
const rawRequest = (address: string, pathname: string, headers: Record<string, string> = {}) =>
  new Promise<{ status: number; body: string }>((resolve, reject) => {
    const { hostname, port } = new URL(address)
    request({ hostname, port, path: pathname, headers }, response => {
      let body = ''
      response.setEncoding('utf8').on('data', (chunk: string) => { body += chunk }).on('end', () => resolve({ status: response.statusCode!, body }))
    }).on('error', reject).end()
  })

describe('preview server', () => {
  it('answers on this machine’s own address only', async () => {
    const { address } = await serve({ folder: site() })
    expect(new URL(address).hostname).toBe('127.0.0.1')
    expect((await rawRequest(address, '/', { host: 'boat.example' })).status).toBe(403)
    expect((await rawRequest(address, '/', { host: `localhost:${new URL(address).port}` })).status).toBe(200)
  })

  it('serves pages with the reload script, and everything else as it is', async () => {
    const { address } = await serve({ folder: site() })
    const page = await fetch(`${address}equipment/p1`)
    expect(page.url).toBe(`${address}equipment/p1/`)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(await page.text()).toMatch(/^<!doctype html><p>Größe 2\.5 mm²<\/p><script>new EventSource/)

    const style = await fetch(`${address}style.css`)
    expect(style.headers.get('content-type')).toBe('text/css; charset=utf-8')
    expect(await style.text()).toBe('p { color: navy }')

    const font = await fetch(`${address}font.woff2`)
    expect(font.headers.get('content-type')).toBe('font/woff2')
    expect([...new Uint8Array(await font.arrayBuffer())]).toEqual([0, 255, 1, 254])
  })

  it('says that there is no such page', async () => {
    const { address } = await serve({ folder: site() })
    const missing = await fetch(`${address}equipment/p2/`)
    expect(missing.status).toBe(404)
    expect(await missing.text()).toContain('no page at this address')
  })

  it('keeps to the site’s folder, however the way out is written', async () => {
    const { address } = await serve({ folder: site() })
    for (const way of ['/../site-private/letter.txt', '/..%2fsite-private/letter.txt', '/%2e%2e%2fsite-private%2fletter.txt', '/..%5csite-private/letter.txt']) {
      const { status, body } = await rawRequest(address, way)
      expect([way, status]).toEqual([way, 404])
      expect(body).not.toContain('private</')
    }
    expect((await rawRequest(address, '/%')).status).toBe(400)
    expect((await rawRequest(address, '/%00')).status).toBe(404)
  })

  it('shows a report in the place of every page', async () => {
    const server = await serve({ folder: site() })
    server.show({ reportHtml: '<!doctype html><pre>1 error</pre>' })
    const page = await fetch(`${server.address}equipment/p1/`)
    expect(page.status).toBe(503)
    expect(await page.text()).toMatch(/1 error.*new EventSource/)
  })

  it('tells open pages of every change', async () => {
    const server = await serve({ folder: site() })
    const events = await fetch(`${server.address}-/changes`)
    expect(events.headers.get('content-type')).toBe('text/event-stream')
    const reader = events.body!.pipeThrough(new TextDecoderStream()).getReader()
    server.show({ folder: site() })
    expect((await reader.read()).value).toBe('data: changed\n\n')
    server.show({ reportHtml: 'x' })
    expect((await reader.read()).value).toBe('data: changed\n\n')
  })

  it('says when the port is taken', async () => {
    const { address } = await serve({ folder: site() })
    await expect(startPreviewServer(Number(new URL(address).port), { folder: site() })).rejects.toMatchObject({ code: 'EADDRINUSE' })
  })
})
