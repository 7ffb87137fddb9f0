/** Pictures for the pack: upright, small enough for a telephone, and without what a camera writes beside the picture. */
import { createHash } from 'node:crypto'
import { createRequire } from 'node:module'
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { slug } from '../model/address.js'
import { openContentCache } from './content-cache.js'

/** As the vessel folder has it: its bytes, or why they could not be read. */
export type PictureFile = { readonly bytes: Uint8Array } | { readonly unread: string }

/** `name`: of the file in the folder `pictures`. */
export interface ReadyPicture {
  readonly name: string
  readonly bytes: Uint8Array
  readonly width: number
  readonly height: number
  /** Width over height. */
  readonly proportion: number
}
/** `missing`: a sentence for the reader of the page. */
export type Picture = ReadyPicture | { readonly missing: string }
export type Pictures = ReadonlyMap<string, Picture>

const settings = { longestSidePx: 1600, qualityPercent: 80 } as const
/** A picture that claims to be larger would take all memory there is. */
const mostPixels = 100_000_000
const tooLarge = 'it has more than 100 million pixels'
/** What the decoder may take for one: about 11 bytes a pixel. Its own limits refuse what a telephone takes today. */
const decoding = { 'image/jpeg': { maxResolutionInMP: mostPixels / 1e6, maxMemoryUsageInMB: 1600 } }

const require = createRequire(import.meta.url)

interface Kept { readonly width: number; readonly height: number; readonly base64: string }

/**
 * Makes each picture a JPEG of at most 1600 pixels on its longer side, turned as its camera says, on white where it is transparent.
 * Position, time and maker that a camera or telephone wrote into the file do not go over. Same bytes in, same bytes out.
 *
 * @param cacheFolder  folder that keeps pictures from one build to the next, or null for none
 */
export async function preparePictures(files: ReadonlyMap<string, PictureFile>, cacheFolder: string | null): Promise<Pictures> {
  const names = namesOf([...files.keys()])
  const { version } = require('jimp/package.json') as { version: string }
  const cache = cacheFolder === null ? null : await openContentCache<Kept>(cacheFolder, ['picture', version, settings])
  const pictures = new Map<string, Picture>()
  // One after the other: each takes its memory many times over while it is unpacked.
  for (const [file, found] of files) {
    try {
      if ('unread' in found) throw new Error(found.unread)
      const key = createHash('sha256').update(found.bytes).digest('hex')
      let kept = await cache?.read(key) ?? null
      if (kept === null) {
        kept = await converted(found.bytes)
        await cache?.write(key, kept)
      }
      const { width, height, base64 } = kept
      pictures.set(file, { name: names.get(file)!, bytes: Buffer.from(base64, 'base64'), width, height, proportion: Math.round((1000 * width) / height) / 1000 })
    } catch (error) {
      pictures.set(file, { missing: `The picture ${file} cannot be shown: ${error instanceof Error ? error.message : String(error)}.` })
    }
  }
  return pictures
}

/** Sentences for whoever builds the pack. */
export const picturesMissing = (pictures: Pictures): readonly string[] => [...pictures.values()].flatMap(picture => ('missing' in picture ? [picture.missing] : []))

/** The bytes of those that can be shown, by file of the vessel folder. */
export const picturesReady = (pictures: Pictures): ReadonlyMap<string, Uint8Array> =>
  new Map([...pictures].flatMap(([file, picture]) => ('bytes' in picture ? [[file, picture.bytes] as const] : [])))

/** Writes those that can be shown to the folder `pictures`. */
export async function writePictures(pictures: Pictures, folder: string): Promise<void> {
  const ready = [...pictures.values()].filter(picture => 'bytes' in picture)
  if (ready.length === 0) return
  await mkdir(path.join(folder, 'pictures'), { recursive: true })
  await Promise.all(ready.map(({ name, bytes }) => writeFile(path.join(folder, 'pictures', name), bytes)))
}

async function converted(bytes: Uint8Array): Promise<Kept> {
  refuseStrange(bytes)
  const { Jimp } = await import('jimp')
  const read = await Jimp.fromBuffer(Buffer.from(bytes), decoding).catch((error: unknown) => {
    throw new Error(whyNotRead(error instanceof Error ? error.message : String(error)))
  })
  const { longestSidePx } = settings
  if (Math.max(read.width, read.height) > longestSidePx) read.scaleToFit({ w: longestSidePx, h: longestSidePx })
  const onWhite = new Jimp({ width: read.width, height: read.height, color: 0xffffffff }).composite(read)
  const jpeg = await onWhite.getBuffer('image/jpeg', { quality: settings.qualityPercent })
  return { width: onWhite.width, height: onWhite.height, base64: jpeg.toString('base64') }
}

const whyNotRead = (message: string): string =>
  /^max(Resolution|MemoryUsage)In/.test(message) ? tooLarge
  : message.includes('image/apng') ? 'it is an animated PNG file; save one picture of it'
  : `it is damaged (${message})`

/** By its first bytes, whatever its name says. */
function refuseStrange(bytes: Uint8Array): void {
  const head = Buffer.from(bytes.subarray(0, 32))
  if (head.length === 0) throw new Error('the file is empty')
  if (head.subarray(1, 4).toString('latin1') === 'PNG') {
    if (head.length >= 24 && head.readUInt32BE(16) * head.readUInt32BE(20) > mostPixels) throw new Error(tooLarge)
    return
  }
  if (head[0] === 0xff && head[1] === 0xd8) return
  const brand = head.subarray(4, 12).toString('latin1')
  throw new Error(/^ftyp(hei|hev|mif)/.test(brand) ? 'it is a HEIC file; save it as JPEG' : 'it is neither a JPEG nor a PNG file')
}

/** Names that would come out alike get a number, in the order of the files. */
function namesOf(files: readonly string[]): ReadonlyMap<string, string> {
  const taken = new Set<string>()
  return new Map(files.toSorted().map(file => {
    const stem = slug(file.replace(/\.[^./]*$/, ''))
    let name = `${stem}.jpg`
    for (let number = 2; taken.has(name); number += 1) name = `${stem}-${number}.jpg`
    taken.add(name)
    return [file, name]
  }))
}
