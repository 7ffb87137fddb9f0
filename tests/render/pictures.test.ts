/** Pictures of the pack, read back by other means than those that made them: JPEG markers by hand, colours by the browser. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Jimp } from 'jimp'
import type { Browser } from 'puppeteer'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findBrowser, openBrowser } from '../../src/render/browser.js'
import { type PictureFile, type Pictures, picturesMissing, preparePictures, type ReadyPicture, writePictures } from '../../src/render/pictures.js'
import { readPictures } from '../../src/load/read-pictures.js'
import { temporaryFolder } from '../support/temporary-folder.js'

const red = 0xe01010ff
const blue = 0x1010e0ff
/** Left half red, right half blue. */
async function halves(width: number, height: number, type: 'image/jpeg' | 'image/png' = 'image/jpeg'): Promise<Buffer> {
  const picture = new Jimp({ width, height, color: red })
  return picture.composite(new Jimp({ width: width / 2, height, color: blue }), width / 2, 0).getBuffer(type)
}

/** What a camera writes after the first marker (Exif 2.3, 4.5 and 4.6): orientation, maker, and a directory of the place. */
function withExif(jpeg: Buffer, orientation: number): Buffer {
  const maker = 'SENTINEL-CAMERA\0'
  const tiff = Buffer.alloc(8 + 2 + 3 * 12 + 4 + maker.length)
  tiff.write('II*\0', 0, 'latin1')
  tiff.writeUInt32LE(8, 4)
  tiff.writeUInt16LE(3, 8)
  const entry = (i: number, tag: number, type: number, count: number, value: number) => {
    const at = 10 + 12 * i
    tiff.writeUInt16LE(tag, at)
    tiff.writeUInt16LE(type, at + 2)
    tiff.writeUInt32LE(count, at + 4)
    tiff.writeUInt32LE(value, at + 8)
  }
  entry(0, 0x010f, 2, maker.length, 50)
  entry(1, 0x0112, 3, 1, orientation)
  entry(2, 0x8825, 4, 1, 0)
  tiff.write(maker, 50, 'latin1')
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff])
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 0])
  head.writeUInt16BE(body.length + 2, 4)
  return Buffer.concat([head, body, jpeg.subarray(2)])
}

/** Markers of a JPEG up to its picture data (ITU-T T.81, annex B), with the size that its frame header gives. */
function markersOf(jpeg: Uint8Array): { readonly markers: readonly string[]; readonly width: number; readonly height: number } {
  const bytes = Buffer.from(jpeg)
  expect(bytes.readUInt16BE(0)).toBe(0xffd8)
  const markers: string[] = []
  let [width, height] = [0, 0]
  for (let at = 2; ;) {
    const marker = bytes.readUInt16BE(at)
    markers.push(marker.toString(16))
    if (marker === 0xffda) return { markers, width, height }
    if (marker >= 0xffc0 && marker <= 0xffc2) [height, width] = [bytes.readUInt16BE(at + 5), bytes.readUInt16BE(at + 7)]
    at += 2 + bytes.readUInt16BE(at + 2)
  }
}

const prepared = (files: Readonly<Record<string, PictureFile | Buffer>>, cacheFolder: string | null = null): Promise<Pictures> =>
  preparePictures(new Map(Object.entries(files).map(([name, file]) => [name, Buffer.isBuffer(file) ? { bytes: file } : file])), cacheFolder)
async function one(file: Buffer): Promise<ReadyPicture> {
  const picture = (await prepared({ 'a.jpg': file })).get('a.jpg')!
  if ('missing' in picture) throw new Error(picture.missing)
  return picture
}

describe('a picture', () => {
  it('is no wider or higher than 1600 pixels, and keeps its proportions', async () => {
    const wide = await one(await halves(2000, 1000))
    expect(markersOf(wide.bytes)).toMatchObject({ width: 1600, height: 800 })
    expect(wide).toMatchObject({ width: 1600, height: 800, proportion: 2 })
    expect(markersOf((await one(await halves(1000, 2000))).bytes)).toMatchObject({ width: 800, height: 1600 })
  })
  it('is not made larger', async () => expect(markersOf((await one(await halves(64, 48, 'image/png'))).bytes)).toMatchObject({ width: 64, height: 48 }))
  it('carries nothing that the camera wrote beside it', async () => {
    const taken = withExif(await halves(64, 32), 1)
    expect(markersOf(taken).markers).toContain('ffe1')
    const { bytes } = await one(taken)
    expect(markersOf(bytes).markers.filter(marker => marker.startsWith('ffe'))).toEqual(['ffe0'])
    expect(Buffer.from(bytes).includes('SENTINEL')).toBe(false)
    expect(Buffer.from(bytes).includes('Exif')).toBe(false)
  })
  it('has the same bytes each time, kept or made anew', async () => {
    const cache = temporaryFolder()
    const file = await halves(120, 80)
    const bytes = async (folder: string | null) => Buffer.from(((await prepared({ 'a.jpg': file }, folder)).get('a.jpg') as ReadyPicture).bytes)
    const first = await bytes(null)
    expect((await bytes(cache)).equals(first)).toBe(true)
    expect(readdirSync(cache)).toHaveLength(1)
    expect((await bytes(cache)).equals(first)).toBe(true)
    expect(readdirSync(cache)).toHaveLength(1)
  })
})

describe('in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    const choice = await findBrowser(process.env)
    if (choice.status === 'missing') throw new Error(choice.reason)
    browser = await openBrowser(choice)
  })
  afterAll(() => browser.close())
  /** Red, green and blue at shares of width and height. */
  async function coloursOf({ bytes }: ReadyPicture, places: readonly (readonly [number, number])[]): Promise<readonly (readonly number[])[]> {
    const page = await browser.newPage()
    const address = `data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}`
    const colours = await page.evaluate(async (src, at) => {
      const image = new Image()
      image.src = src
      await image.decode()
      const canvas = document.createElement('canvas')
      ;[canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight]
      const sheet = canvas.getContext('2d')!
      sheet.drawImage(image, 0, 0)
      return at.map(([x, y]) => [...sheet.getImageData(Math.floor(x! * canvas.width), Math.floor(y! * canvas.height), 1, 1).data].slice(0, 3))
    }, address, places)
    await page.close()
    return colours
  }
  const isRed = ([r = 0, , b = 0]: readonly number[]) => r > 180 && b < 80
  const isBlue = ([r = 0, , b = 0]: readonly number[]) => b > 180 && r < 80

  // Orientation 6: the row that was first goes to the right, the column that was first goes to the top. Left, red, becomes the top.
  it('one that was taken upright, orientation 6, stands upright', async () => {
    const picture = await one(withExif(await halves(64, 32), 6))
    expect(markersOf(picture.bytes)).toMatchObject({ width: 32, height: 64 })
    const [top, bottom] = await coloursOf(picture, [[0.5, 0.2], [0.5, 0.8]])
    expect([isRed(top!), isBlue(bottom!)]).toEqual([true, true])
  })
  it.each([[3, 'turned round'], [1, 'as it is']])('orientation %d is %s', async (orientation, how) => {
    const [left, right] = await coloursOf(await one(withExif(await halves(64, 32), orientation)), [[0.2, 0.5], [0.8, 0.5]])
    expect(how === 'as it is' ? [isRed(left!), isBlue(right!)] : [isBlue(left!), isRed(right!)]).toEqual([true, true])
  })
  it('what is transparent is white', async () => {
    const [middle] = await coloursOf(await one(await new Jimp({ width: 20, height: 20, color: 0x00000000 }).getBuffer('image/png')), [[0.5, 0.5]])
    expect(Math.min(...middle!)).toBeGreaterThan(250)
  })
})

/** The frame header says another size: height and width, each two bytes, after marker, length and precision (ITU-T T.81, B.2.2). */
function withFrame(jpeg: Buffer, width: number, height: number): Buffer {
  const changed = Buffer.from(jpeg)
  const at = changed.indexOf(Buffer.from([0xff, 0xc0]))
  changed.writeUInt16BE(height, at + 5)
  changed.writeUInt16BE(width, at + 7)
  return changed
}

/** With the chunk acTL before the picture data, one frame (PNG, third edition, 11.3.6); its check sum is not looked at before the decoder. */
function animated(png: Buffer): Buffer {
  const at = png.indexOf('IDAT') - 4
  const chunk = Buffer.from([0, 0, 0, 8, ...Buffer.from('acTL'), 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0])
  return Buffer.concat([png.subarray(0, at), chunk, png.subarray(at)])
}

describe('a picture that cannot be shown', () => {
  const png = (width: number, height: number): Buffer => {
    const head = Buffer.alloc(33)
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]).copy(head)
    head.writeUInt32BE(width, 16)
    head.writeUInt32BE(height, 20)
    return head
  }
  it.each<readonly [string, () => Promise<Buffer | PictureFile> | Buffer | PictureFile, string]>([
    ['a.heic', () => Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic0000')]), 'it is a HEIC file; save it as JPEG.'],
    ['a.jpg', () => Buffer.from('no picture at all'), 'it is neither a JPEG nor a PNG file.'],
    ['b.jpg', () => Buffer.alloc(0), 'the file is empty.'],
    ['c.jpg', async () => (await halves(400, 400)).subarray(0, 700), 'it is damaged'],
    ['d.png', () => png(20, 20), 'it is damaged'],
    ['e.png', () => png(60_000, 60_000), 'it has more than 100 million pixels.'],
    ['g.jpg', async () => withFrame(await halves(16, 16), 12_000, 9_000), 'it has more than 100 million pixels.'],
    ['h.png', async () => animated(await halves(16, 16, 'image/png')), 'it is an animated PNG file; save one picture of it.'],
    ['i.svg', () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'it is neither a JPEG nor a PNG file.'],
    ['f.jpg', () => ({ unread: 'permission is denied' }), 'permission is denied.'],
  ])('%s says why, and the others are there', async (name, make, why) => {
    const pictures = await prepared({ [name]: await make(), 'good.png': await halves(8, 8, 'image/png') })
    expect(pictures.get(name)).toEqual({ missing: expect.stringMatching(new RegExp(`^The picture ${name} cannot be shown: ${why.replaceAll('.', '\\.')}`)) })
    expect(picturesMissing(pictures)).toHaveLength(1)
    expect(pictures.get('good.png')).toMatchObject({ width: 8 })
  })
  it('is read from the vessel folder as far as it is there', async () => {
    const files = await readPictures(temporaryFolder(), ['photographs/none.jpg'])
    expect(files.get('photographs/none.jpg')).toEqual({ unread: 'there is nothing at this path' })
  })
})

describe('the folder of pictures', () => {
  it('has a file for each, under names that never meet', async () => {
    const folder = temporaryFolder()
    const file = await halves(8, 8, 'image/png')
    const pictures = await prepared({ 'Photos/Helm 1.png': file, 'photos/helm-1.jpg': file, 'photos/helm 1.jpg': file })
    await writePictures(pictures, folder)
    const names = [...pictures.values()].map(picture => (picture as ReadyPicture).name)
    expect(new Set(names).size).toBe(3)
    expect(readdirSync(join(folder, 'pictures')).toSorted()).toEqual(names.toSorted())
    expect(readFileSync(join(folder, 'pictures', names[0]!)).equals(Buffer.from((pictures.get('Photos/Helm 1.png') as ReadyPicture).bytes))).toBe(true)
  })
  it('is not made for nothing', async () => {
    const folder = temporaryFolder()
    await writePictures(new Map([['a.jpg', { missing: 'Gone.' }]]), folder)
    expect(readdirSync(folder)).toEqual([])
  })
})
