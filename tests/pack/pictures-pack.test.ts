/** The pack of a small vessel with pictures, one of which cannot be shown: nothing else is lost for it. */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build, type Built, examine } from '../../src/build.js'
import { vesselFolder } from '../vessels/cases.js'

const folder = mkdtempSync(path.join(tmpdir(), 'asfitted-pictures-'))
const vessel = path.join(folder, 'vessel')
let built: Built
const read = (file: string): string => readFileSync(path.join(built.place, file), 'utf8')

beforeAll(async () => {
  cpSync(vesselFolder('location'), vessel, { recursive: true })
  writeFileSync(path.join(vessel, 'pictures/both.png'), 'not a picture any more')
  const made = await build(vessel, { placeFor: () => path.join(folder, 'pack'), pdf: true, edition: 'owner', asOf: '2026-05-04', variables: process.env, drawingCache: null, step: () => undefined })
  if (made.status !== 'built') throw new Error(made.findings.map(({ message }) => message).join('; '))
  built = made
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('a pack with pictures', () => {
  it('tells whoever builds it which pictures are missing, and why', () => expect(built.lacking.toSorted()).toEqual([
    'The picture pictures/both.png cannot be shown: it is neither a JPEG nor a PNG file.', 'The picture pictures/gone.jpg cannot be shown: there is nothing at this path.', 'The picture pictures/locker.heic cannot be shown: it is a HEIC file; save it as JPEG.',
  ]))
  it('tells the reader on the page, beside the call-outs', () => {
    const page = read('site/photographs/pictures-both/index.html')
    expect(page).toContain('The picture pictures/both.png cannot be shown: it is neither a JPEG nor a PNG file.')
    expect(page).toContain('../../equipment/f1/index.html')
    expect(page).not.toContain('<img')
  })
  it('shows the others, and lays the plan over the yard’s drawing', () => {
    expect(readdirSync(path.join(built.place, 'site/pictures')).toSorted()).toEqual(['pictures-cabin.jpg', 'pictures-plan.jpg'])
    expect(read('site/photographs/pictures-cabin/index.html')).toContain('<img src="../../pictures/pictures-cabin.jpg" width="24" height="16"')
    expect(read('site/location/index.html')).toContain('<image href="../pictures/pictures-plan.jpg"')
  })
  it('holds in its record what its pages show, and can be built from that again', async () => {
    expect(readFileSync(path.join(built.place, 'record/source/pictures/cabin.jpg')).equals(readFileSync(path.join(built.place, 'site/pictures/pictures-cabin.jpg')))).toBe(true)
    expect(existsSync(path.join(built.place, 'record/source/pictures/both.png'))).toBe(false)
    const again = path.join(folder, 'again')
    cpSync(path.join(built.place, 'record/source'), again, { recursive: true })
    const { findings } = await examine(again)
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(findings.filter(({ id }) => id === 'REF201').map(({ subject }) => subject.id).toSorted()).toEqual(['pictures/both.png', 'pictures/gone.jpg', 'pictures/locker.heic'])
  })
  it('prints them', async () => {
    const document = await getDocument({ data: new Uint8Array(readFileSync(path.join(built.place, 'manual.pdf'))) }).promise
    const images: number[] = []
    for (let i = 1; i <= document.numPages; i += 1) images.push(await imagesOn(document, i))
    await document.destroy()
    // The cabin; the yard's plan under two levels.
    expect(images.reduce((sum, count) => sum + count, 0)).toBe(3)
  })
})

type Pdf = Awaited<ReturnType<typeof getDocument>['promise']>
const imagesOn = async (document: Pdf, number: number): Promise<number> => (await (await document.getPage(number)).getOperatorList()).fnArray.filter(operation => operation === OPS.paintImageXObject).length
