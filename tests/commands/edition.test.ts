/** What an edition must not carry is in no byte of its pack; what it may carry is. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { examine, viewOf } from '../../src/build.js'
import { forEdition } from '../../src/edition.js'
import { editions } from '../../src/model/edition.js'
import type { Credential, Edition } from '../../src/model/vessel.js'
import { renderVolume } from '../../src/render/site.js'
import { runCommand } from '../support/run-command.js'
import { temporaryFolder } from '../support/temporary-folder.js'
import { folderOf, lampBoat } from '../support/vessel-folders.js'

/** One form of writing each; the marks are such as HTML, JSON, YAML and tables have to write otherwise. */
const secrets = {
  flow: 'flow-9<&>"sentinel', block: 'block sentinel: 7 # not a comment', literal: 'literal-sentinel-5', alias: 'alias-sentinel-3', cell: 'cell-sentinel, "1"', user: 'user-sentinel-2',
} as const

const boat = () => folderOf({
  ...lampBoat(),
  'credentials.yaml': `credentials:
  - {item: E1, name: Flow, user: ${secrets.user}, secret: 'flow-9<&>"sentinel', kept-at: safe of the yard}
  - item: E1
    name: Block
    secret: "block sentinel: 7 # not a comment" # literal-sentinel-5 before 2026
    kept-at: safe of the yard
  - item: E1
    name: Literal
    secret: |
      literal-sentinel-5
    editions: [owner]
  - {item: E1, name: Alias, user: &word alias-sentinel-3, secret: *word, editions: owner}
  - {item: E1, name: For the shop, user: shop, secret: shop-word-8, editions: [service, yard]}
  - {item: E1, name: In a safe, kept-at: 'safe, ashore'}
  # - {item: E1, name: Former, secret: former-sentinel-6}
`,
  'more.yaml': 'equipment:\n  - {tag: E2, name: Fan, documents: [{file: ./credentials.yaml, title: Logins}, {file: credentials-more.csv, title: More}]}\n',
  'credentials-more.csv': 'item,name,secret,kept-at\nE1,Cell,"cell-sentinel, ""1""",\nE1,Second cell,,folder\n',
})

const forms = (text: string): readonly string[] => [
  text, JSON.stringify(text).slice(1, -1), text.replaceAll('"', '""'), text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;'), encodeURIComponent(text),
]

const filesBelow = (folder: string): readonly string[] => readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter(entry => entry.isFile()).map(entry => join(entry.parentPath, entry.name)).toSorted()
const filesWith = (folder: string, text: string): readonly string[] => filesBelow(folder)
  .filter(file => { const bytes = readFileSync(file); return forms(text).some(form => bytes.includes(form)) }).map(file => file.slice(folder.length + 1))

async function packOf(edition: Edition): Promise<{ readonly folder: string; readonly stdout: string }> {
  const workingFolder = temporaryFolder()
  const { code, stdout, stderr } = await runCommand(['build', boat(), '--edition', edition, '--out', 'pack'], { workingFolder })
  expect(code, stderr).toBe(0)
  return { folder: join(workingFolder, 'pack'), stdout }
}

describe.each(['service', 'yard'] as const)('the %s edition', edition => {
  it('has none of the owner’s secrets and users in any byte of its pack', async () => {
    const { folder, stdout } = await packOf(edition)
    const found = [...Object.values(secrets), 'former-sentinel-6', 'sentinel'].flatMap(secret => filesWith(folder, secret))
    expect(found).toEqual([])
    expect(stdout).toContain(`${edition} edition`)
    expect(filesWith(folder, 'shop-word-8')).toEqual(expect.arrayContaining([join('site', 'logging-in', 'index.html'), join('record', 'vessel.json'), join('record', 'source', 'credentials.yaml')]))
  })

  it('says that there is something, and where it is kept', async () => {
    const page = readFileSync(join((await packOf(edition)).folder, 'site/logging-in/index.html'), 'utf8')
    for (const words of ['Flow', 'Block', 'Cell', 'safe of the yard', 'safe, ashore', 'not in this edition', `${edition} edition`]) expect(page).toContain(words)
  })

  it('keeps a copy of the data that reads as before, logins aside', async () => {
    const { folder } = await packOf(edition)
    const [before, after] = [await examine(boat()), await examine(join(folder, 'record/source'))]
    if (before.status !== 'examined' || after.status !== 'examined') throw new Error('not a vessel')
    const open = ({ editions: may }: Credential) => may.includes(edition)
    expect(after.vessel.credentials).toEqual(before.vessel.credentials.map(credential => (open(credential) ? credential : {
      ...credential, user: credential.user === null ? null : 'not in this edition', secret: credential.secret === null ? null : 'not in this edition',
    })))
    expect({ ...after.vessel, credentials: [] }).toEqual({ ...before.vessel, credentials: [] })
  })

  it('prints none of them', async () => {
    const examined = await examine(boat())
    if (examined.status !== 'examined') throw new Error('not a vessel')
    const outFolder = temporaryFolder()
    const view = await viewOf(forEdition(examined, edition))
    await renderVolume(view, view.volumes[0]!, { outFolder, drawings: new Map(), undrawnReason: 'Not drawn.', pictures: new Map() })
    expect(filesWith(outFolder, 'sentinel')).toEqual([])
    expect(filesWith(outFolder, 'Logging in')).toContain(join('print', 'manual', 'index.html'))
  })
})

describe('the owner’s edition', () => {
  it('is what is built unless another is asked for, and has the owner’s logins and not the shop’s', async () => {
    const workingFolder = temporaryFolder()
    const { stdout } = await runCommand(['build', boat()], { workingFolder })
    const folder = join(workingFolder, 'handover', 'lamp-boat')
    expect(stdout).toContain('owner’s edition')
    for (const secret of Object.values(secrets)) expect(filesWith(folder, secret)).toEqual(expect.arrayContaining([join('site', 'logging-in', 'index.html'), join('record', 'vessel.json')]))
    expect(filesWith(folder, 'shop-word-8')).toEqual([])
  })

  it('stands on its own sheet and page only', async () => {
    const { folder } = await packOf('owner')
    expect(filesWith(folder, secrets.literal)).toEqual([join('record', 'source', 'credentials.yaml'), join('record', 'vessel.json'), join('site', 'logging-in', 'index.html')])
  })
})

it('differs from another edition in nothing but the logins and its name', async () => {
  const [owner, yard] = await Promise.all((['owner', 'yard'] as const).map(async edition => (await packOf(edition)).folder))
  const different = filesBelow(owner!).map(file => file.slice(owner!.length + 1)).filter(file => {
    const [a, b] = [owner!, yard!].map(folder => readFileSync(join(folder, file), 'utf8'))
    return a !== b!.replaceAll('yard edition', 'owner’s edition')
  })
  expect(different).toEqual([
    'SHA256SUMS', join('record', 'source', 'credentials-more.csv'), join('record', 'source', 'credentials.yaml'), join('record', 'vessel.json'), join('site', 'logging-in', 'index.html'),
  ])
})

it('puts another edition’s pack beside the owner’s', async () => {
  const workingFolder = temporaryFolder()
  const folder = boat()
  for (const edition of editions) await runCommand(['build', folder, '--edition', edition], { workingFolder })
  expect(readdirSync(join(workingFolder, 'handover')).toSorted()).toEqual(['lamp-boat', 'lamp-boat-service', 'lamp-boat-yard'])
})

it('refuses an edition that there is not', async () => {
  const { code, stderr } = await runCommand(['build', boat(), '--edition', 'dealer'], { workingFolder: temporaryFolder() })
  expect(code).toBe(2)
  expect(stderr).toContain('one of owner, service, yard is expected.')
})

describe('at the terminal', () => {
  const said = async (files: Readonly<Record<string, string>>) => (await runCommand(['check', folderOf({ ...lampBoat(), ...files })], { workingFolder: temporaryFolder() })).stdout

  it('a faulty credential is shown without its secret', async () => {
    const unknown = await said({ 'credentials.yaml': 'credentials:\n  - {item: E9, name: Router, user: user-sentinel, secret: word-sentinel}\n' })
    expect(unknown).toContain('REF103')
    expect(unknown).toContain('secret: •••••••••••••}')
    const numeric = await said({ 'credentials.yaml': 'credentials:\n  - {item: E1, name: Router, secret: 4711}\n' })
    expect(numeric).toContain('is something not shown here, expected text')
    for (const text of [unknown, numeric]) expect(text).not.toMatch(/sentinel|4711/)
  })

  it('nor is one of a file that cannot be read', async () => {
    const broken = await said({ 'credentials.yaml': 'credentials:\n  - {item: E1, name: Router, secret: word-sentinel, : ]\n' })
    expect(broken).toContain('SRC')
    const ragged = await said({ 'credentials.csv': 'item,name,secret\nE1,Router,word-sentinel,one too many\n' })
    expect(ragged).toContain('credentials.csv:2:1')
    for (const text of [broken, ragged]) expect(text).not.toContain('sentinel')
  })

  it('a place in the line is still pointed at', async () => {
    expect(await said({ 'credentials.yaml': 'credentials:\n  - {secret: word-sentinel, item: E9, name: Router}\n' })).toMatch(/\{secret: •{13}, item: E9, name: Router\}\n +\| {35}\^\^/)
  })
})
