/**
 * Shows a site that changes while its author works: a static server for this machine only, which tells open pages to
 * load again. Eleventy's own development server listens to the whole network and cannot show a report in a page's place.
 */
import { once } from 'node:events'
import { createReadStream } from 'node:fs'
import { readFile, stat } from 'node:fs/promises'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'

/** What is shown at the moment: a site's folder, or one report in the place of every page. */
export type Shown = { readonly folder: string } | { readonly reportHtml: string }

export interface PreviewServer {
  readonly address: string
  /** Shows something else, and has every open page load again. */
  show(shown: Shown): void
  close(): Promise<void>
}

const host = '127.0.0.1'
/** Below a folder name that no page's address has. */
const changesPath = '/-/changes'
const reloadScript = `<script>new EventSource('${changesPath}').onmessage = () => location.reload()</script>`

/**
 * Starts the server. `port` 0 takes any that is free.
 *
 * Errors   rejects with the system's error, EADDRINUSE when another program has the port
 */
export async function startPreviewServer(port: number, first: Shown): Promise<PreviewServer> {
  let shown = first
  const listeners = new Set<ServerResponse>()
  const server = createServer((request, response) => {
    if (!isFromHere(request)) return end(response, 403, 'text/plain', 'This preview is for this machine only.')
    const pathname = pathOf(request)
    if (pathname === null) return end(response, 400, 'text/plain', 'This address cannot be read.')
    if (pathname === changesPath) return listen(response, listeners)
    answer(pathname, shown, response).catch((error: unknown) => end(response, 500, 'text/plain', String(error)))
  })
  server.listen(port, host)
  await once(server, 'listening')
  return {
    address: `http://${host}:${(server.address() as AddressInfo).port}/`,
    show(next) {
      shown = next
      for (const listener of listeners) listener.write('data: changed\n\n')
    },
    async close() {
      const closed = once(server, 'close')
      server.close()
      server.closeAllConnections()
      await closed
    },
  }
}

/** A page elsewhere on the web can have its own host name point here; the name that it asks for gives it away. */
const isFromHere = ({ headers }: IncomingMessage): boolean => /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(headers.host ?? '')

function pathOf({ url = '/' }: IncomingMessage): string | null {
  try {
    return decodeURIComponent(new URL(url, `http://${host}`).pathname)
  } catch {
    return null
  }
}

function listen(response: ServerResponse, listeners: Set<ServerResponse>): void {
  response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
  response.flushHeaders()
  listeners.add(response)
  response.on('close', () => listeners.delete(response))
}

async function answer(pathname: string, shown: Shown, response: ServerResponse): Promise<void> {
  const asked = path.extname(pathname) === '' ? 'text/html' : (contentTypes[path.extname(pathname)] ?? 'application/octet-stream')
  if ('reportHtml' in shown) {
    // Reload must work from whatever page the author had open when the mistake was made.
    return end(response, asked === 'text/html' ? 503 : 404, 'text/html', shown.reportHtml + reloadScript)
  }
  const file = path.join(shown.folder, pathname)
  const found = file.startsWith(shown.folder + path.sep) ? await stat(file).catch(() => null) : null
  if (found?.isDirectory()) {
    if (pathname.endsWith('/')) return answer(`${pathname}index.html`, shown, response)
    return void response.writeHead(302, { location: encodeURI(`${pathname}/`) }).end()
  }
  if (!found?.isFile()) return end(response, 404, 'text/html', notFoundHtml + reloadScript)
  if (asked === 'text/html') return end(response, 200, asked, (await readFile(file, 'utf8')) + reloadScript)
  response.writeHead(200, headersFor(asked))
  createReadStream(file).on('error', () => response.destroy()).pipe(response)
}

const notFoundHtml = '<!doctype html><title>No such page</title><p>There is no page at this address. <a href="/">To the start</a></p>'

function end(response: ServerResponse, status: number, type: string, body: string): void {
  response.writeHead(status, headersFor(type)).end(body)
}

const headersFor = (type: string) => ({
  'content-type': /^text\/|json|svg/.test(type) ? `${type}; charset=utf-8` : type,
  'cache-control': 'no-store',
})

const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.txt': 'text/plain',
  '.csv': 'text/csv',
  '.ics': 'text/calendar',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
}
