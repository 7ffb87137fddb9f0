import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { withoutDeadLinks } from '../../src/render/links.js'
import { renderVolume, renderSite } from '../../src/render/site.js'
import { aView } from '../support/view-builder.js'

let folder: string
let home: string
let equipment: string
let manual: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'asfitted-site-'))
  const options = {
    outFolder: folder,
    drawings: new Map([['drawn', { svg: '<svg role="img"><a href="asfitted:equipment/p1"><text>P1</text></a></svg>', widthPx: 10, heightPx: 20 }]]),
    undrawnReason: 'No browser was found.',
    pictures: new Map([
      ['photographs/helm.jpg', { name: 'photographs-helm.jpg', bytes: Buffer.from('JPEG'), width: 1600, height: 1000, proportion: 1.6 }], ['drawings/plan.png', { name: 'drawings-plan.jpg', bytes: Buffer.from('JPEG'), width: 80, height: 20, proportion: 4 }],
      ['photographs/gone.jpg', { missing: 'The picture photographs/gone.jpg cannot be shown.' }], ['drawings/gone.png', { missing: 'The picture drawings/gone.png cannot be shown.' }],
    ] as const),
  }
  await renderSite(aView, options)
  await renderVolume(aView, aView.volumes[0]!, options)
  ;[home, equipment, manual] = await Promise.all(['site/index.html', 'site/equipment/p1/index.html', 'print/manual/index.html'].map(file => readFile(join(folder, file), 'utf8'))) as [string, string, string]
})
afterAll(() => rm(folder, { recursive: true }))

const attributes = (html: string, name: string) => [...html.matchAll(new RegExp(` ${name}="([^"]*)"`, 'g'))].map(([, value]) => value!)

describe('a page number', () => {
  const html = '<article id="here"></article><span class="page-of" data-page-of="here">000</span>, <span class="page-of" data-page-of="there">000</span>, <span class="page-of" data-page-of="nowhere">000</span>'

  it('of a page in another document is that document’s name, and one of a page in none keeps its place, for the print to refuse', () => {
    const words = withoutDeadLinks(html, new Map([['there', 'Calculations'], ['here', 'Calculations']]))
    expect(words).toBe('<article id="here"></article><span class="page-of" data-page-of="here">000</span>, Calculations, <span class="page-of" data-page-of="nowhere">000</span>')
  })

  it('is so in the volumes of a view', async () => {
    const [both] = aView.volumes
    const [first, second] = both!.chapters
    const one = { ...both!, file: 'one.pdf', chapters: [first!] }
    const other = { ...both!, file: 'other.pdf', name: 'The other', chapters: [second!] }
    await renderVolume({ ...aView, volumes: [one, other] }, one, { outFolder: folder, drawings: new Map(), undrawnReason: '', pictures: new Map() })
    const document = await readFile(join(folder, 'print/one/index.html'), 'utf8')
    expect(document).toContain('A planThe other</p>')
    expect(document).not.toContain('data-page-of="equipment-p1"')
  })
})

describe('site', () => {
  it('links from a page to another by a relative address that names the file', () => {
    expect(attributes(home, 'href')).toContain('equipment/p1/index.html')
    expect(attributes(equipment, 'href')).toContain('../../index.html')
    expect(attributes(equipment, 'href')).toContain('../../assets/blocks.css')
  })

  it('asks nothing of any other place', () => {
    for (const html of [home, equipment, manual]) {
      for (const address of [...attributes(html, 'href'), ...attributes(html, 'src')]) expect(address).not.toMatch(/^[a-z]+:|^\/\/|^\//)
    }
  })

  it('leads to a file of the record, beside the site', () => {
    expect(equipment).toContain('<a href="../../../record/source/documents/a%20plan.pdf">A plan</a>')
  })

  it('rewrites links in drawings and in Markdown', () => {
    expect(home).toContain('<svg role="img"><a href="equipment/p1/index.html">')
    expect(home).toContain('<svg role="group"><a href="equipment/p1/index.html">')
    expect(manual).toContain('<svg role="group"><a href="#equipment-p1">')
    expect(home).toContain('<a href="equipment/p1/index.html">a link</a>')
    expect(manual).toContain('<svg role="img"><a href="#equipment-p1">')
    expect(manual).not.toContain('asfitted:')
  })

  it('shows a picture from beside the pages, its call-outs at shares of width and height', () => {
    expect(home).toContain('<img src="pictures/photographs-helm.jpg" width="1600" height="1000" alt="The helm. Numbered points: 1 P1 Display." loading="lazy">')
    expect(equipment).toContain('<img src="../../pictures/photographs-helm.jpg"')
    expect(home).toContain('<a class="mark meant" href="equipment/p1/index.html" style="--from-left: 23.5%; --from-top: 40%" title="P1 Display" aria-label="1: P1 Display">1</a>')
    expect(home).toContain('<span class="mark" style="--from-left: 70%; --from-top: 8%" title="W1">2</span>')
    expect(home).toMatch(/<span class="mark">1<\/span> <span><a href="equipment\/p1\/index.html" class="tag">P1<\/a> Display: behind the &quot;glass&quot;/)
    expect(existsSync(join(folder, 'site/pictures/photographs-helm.jpg'))).toBe(true)
  })

  it('says which picture cannot be shown, and asks for none that is not there', () => {
    expect(home).toContain('<p class="undrawn-reason">The picture photographs/gone.jpg cannot be shown.</p>')
    expect(home).toContain('<p class="undrawn-reason">The picture drawings/gone.png cannot be shown.</p>')
    for (const html of [home, equipment, manual]) expect(html).not.toMatch(/asfitted-picture|pictures\/undefined|gone\.(jpg|png)"/)
  })

  it('lays a drawing over the yard’s own', () => {
    expect(home).toContain('<svg role="img"><image href="pictures/drawings-plan.jpg" x="1"/></svg>')
    expect(equipment).toContain('<image href="../../pictures/drawings-plan.jpg"')
    expect(manual).toContain('<image href="pictures/drawings-plan.jpg"')
    expect(existsSync(join(folder, 'print/manual/pictures/drawings-plan.jpg'))).toBe(true)
    expect(home).toContain('<figure class="own-drawing wide" id="over-picture">')
  })

  it('sets narrow drawings side by side', () => expect(home).toContain('<figure class="own-drawing narrow" id="own">'))

  it('shows HTML in the data as text', () => {
    expect(home).toContain('&lt;b&gt;HTML&lt;/b&gt;')
    expect(home).toContain('2.0 &lt; 3.0')
  })

  it('gives a diagram that is not drawn in words, with the reason', () => {
    expect(home).toMatch(/No browser was found\.[\s\S]*<details class="in-words" open>[\s\S]*F2 feeds P1\./)
  })

  it('says that a table has no rows', () => {
    expect(home).toContain('<strong>Spare parts.</strong> None is recorded.')
  })

  it('sets formulas as MathML', () => {
    expect(home).toMatch(/<math[^>]*display="block"[\s\S]*<mfrac>/)
  })
})

describe('printed document', () => {
  it('has no id twice and no link to nowhere', () => {
    const ids = attributes(manual, 'id')
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
    const targets = attributes(manual, 'href').filter(href => href.startsWith('#')).map(href => href.slice(1))
    expect(targets.filter(target => !ids.includes(target))).toEqual([])
  })

  it('asks for a page number for each chapter and cross-reference', () => {
    expect(attributes(manual, 'data-page-of')).toEqual(expect.arrayContaining(['chapter-1', 'chapter-2', 'equipment-p1']))
    expect(home).not.toContain('data-page-of')
  })

  it('carries the title block on every sheet, quotes escaped', () => {
    expect(manual).toContain('"No. N-1 \\"draft\\""')
    expect(manual).toContain('counter(page) " of " counter(pages)')
  })
})
