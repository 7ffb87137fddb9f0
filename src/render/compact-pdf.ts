/**
 * Rewrites a PDF as the browser prints it: objects packed into compressed streams, our own document information, and
 * nothing that differs between two prints of one document. Tags make such a file large: in a manual of tables nine
 * tenths of it are small objects of structure, which the browser leaves uncompressed.
 *
 * The objects are moved as they are, by the offsets in the file's own table; a general PDF library reads and writes
 * each of some hundred thousand objects, which takes a hundred times as long.
 *
 * Source: ISO 32000-1, 7.5.7 object streams, 7.5.8 cross-reference streams, 14.3.3 document information.
 */
import { createHash } from 'node:crypto'
import { promisify } from 'node:util'
import { deflate } from 'node:zlib'

export interface DocumentInformation {
  readonly title: string
  readonly author: string
  readonly subject: string
  readonly keywords: readonly string[]
  /** ISO date or date and time, UTC. The file's dates: two builds of one issue give the same bytes. */
  readonly date: string
}

interface PdfObject {
  readonly number: number
  /** What stands between `obj` and `endobj`, as Latin-1 text: one character a byte. */
  readonly body: string
}

const objectsPerStream = 200
const compress = promisify(deflate)

/**
 * @param headings  words of the document's headings in their order, for its outline
 *
 * Errors: the file is not built as the browser builds it (one table of objects, no object streams).
 */
export async function compactPdf(pdf: Uint8Array, information: DocumentInformation, headings: readonly string[]): Promise<Buffer> {
  const { objects, root, info } = readObjects(Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1'))
  const withOwnInformation = objects.map(({ number, body }) => {
    const producer = /\/Producer (\([^)]*\))/.exec(body)?.[1] ?? null
    return { number, body: number === info ? informationDictionary(information, producer) : body }
  })
  return await writeObjects(withTitles(withStableStructureIds(withOwnInformation), headings), root, info)
}

const unknownForm = (what: string): Error => new Error(`The browser wrote a PDF of an unknown form: ${what}.`)

function readObjects(text: string): { objects: PdfObject[]; root: number; info: number } {
  const tableAt = Number(/startxref\s+(\d+)\s+%%EOF\s*$/.exec(text.slice(-64))?.[1])
  const head = /^xref\s+0 (\d+)\s+/.exec(text.slice(tableAt, tableAt + 64))
  const trailer = text.slice(text.lastIndexOf('trailer'))
  const root = /\/Root (\d+) 0 R/.exec(trailer)?.[1]
  const info = /\/Info (\d+) 0 R/.exec(trailer)?.[1]
  if (head === null || root === undefined || info === undefined) throw unknownForm('no table of objects')

  const entryLength = 20
  const places = Array.from({ length: Number(head[1]) }, (_, number) => {
    const at = tableAt + head[0].length + entryLength * number
    return { number, start: Number(text.slice(at, at + 10)), inUse: text[at + 17] === 'n' }
  }).filter(({ inUse }) => inUse).sort((one, other) => one.start - other.start)
  const objects = places.map(({ number, start }, i) => {
    const opening = `${number} 0 obj\n`
    const closing = '\nendobj\n'
    const end = places[i + 1]?.start ?? tableAt
    if (!text.startsWith(opening, start) || !text.startsWith(closing, end - closing.length)) {
      throw unknownForm(`object ${number} is not at its place`)
    }
    return { number, body: text.slice(start + opening.length, end - closing.length) }
  })
  return { objects: objects.sort((one, other) => one.number - other.number), root: Number(root), info: Number(info) }
}

function informationDictionary(information: DocumentInformation, producer: string | null): string {
  const { title, author, subject, keywords } = information
  const date = `(D:${new Date(information.date).toISOString().replace(/\.\d+Z$/, '').replace(/\D/g, '')}Z)`
  const entries = Object.entries({
    Title: textString(title), Author: textString(author), Subject: textString(subject), Keywords: textString(keywords.join(', ')),
    Creator: textString('asfitted'), ...(producer === null ? {} : { Producer: producer }), CreationDate: date, ModDate: date,
  })
  return `<<${entries.map(([key, value]) => `/${key} ${value}`).join('\n')}>>`
}

/** UTF-16BE with its byte order mark, in hexadecimal (ISO 32000-1, 7.9.2.2): right for any script. */
const textString = (text: string): string => `<FEFF${Buffer.from(text, 'utf16le').swap16().toString('hex').toUpperCase()}>`

/**
 * Header cells are named after counters of the browser's process, which differ from run to run. Names them in the order
 * in which they stand, and makes the index of names, which is sorted, anew.
 */
function withStableStructureIds(objects: readonly PdfObject[]): readonly PdfObject[] {
  const named = /\/ID \((node\d+)\)/
  const names = new Map<string, string>()
  const owners: number[] = []
  for (const { number, body } of objects) {
    const name = named.exec(body)?.[1]
    if (name === undefined || body.endsWith('endstream')) continue
    owners.push(number)
    names.set(name, `node${String(names.size + 1).padStart(8, '0')}`)
  }
  const tree = objects.map(({ body }) => /\/Type \/StructTreeRoot[^]*\/IDTree (\d+) 0 R/.exec(body)?.[1]).find(found => found !== undefined)
  const index = [...names.values()].map((name, i) => `(${name}) ${owners[i]!} 0 R`).join(' ')
  const isLeaf = (body: string) => body.startsWith('<</Limits [(node')
  return objects.filter(({ number, body }) => number === Number(tree) || !isLeaf(body)).map(({ number, body }) => {
    if (number === Number(tree)) return { number, body: `<</Names [${index}]>>` }
    if (!body.startsWith('<</Type /StructElem')) return { number, body }
    return { number, body: body.replace(/\((node\d+)\)/g, (all, name: string) => (names.has(name) ? `(${names.get(name)!})` : all)) }
  })
}

/** The browser writes the words of a heading at the head of a sheet twice; an outline of as many entries as there are headings gets their own. */
function withTitles(objects: readonly PdfObject[], headings: readonly string[]): readonly PdfObject[] {
  const bodies = new Map(objects.map(({ number, body }) => [number, body]))
  const outline = objects.find(({ body }) => body.startsWith('<</Type /Outlines'))
  const numberAfter = (body: string, key: string): number | null => { const found = new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1]; return found === undefined ? null : Number(found) }
  const inOrder = (body: string): readonly number[] => {
    const entries: number[] = []
    for (let entry = numberAfter(body, 'First'); entry !== null; entry = numberAfter(bodies.get(entry)!, 'Next')) entries.push(entry, ...inOrder(bodies.get(entry)!))
    return entries
  }
  const entries = outline === undefined ? [] : inOrder(outline.body)
  if (entries.length !== headings.length) return objects
  const titles = new Map(entries.map((number, i) => [number, headings[i]!]))
  return objects.map(({ number, body }) => {
    const title = titles.get(number)
    return { number, body: title === undefined ? body : body.replace(/^<<\/Title [^]*?(?=\n\/)/, () => `<</Title ${textString(title)}`) }
  })
}

async function writeObjects(objects: readonly PdfObject[], root: number, info: number): Promise<Buffer> {
  const isStream = ({ body }: PdfObject) => body.endsWith('\nendstream')
  const small = objects.filter(object => !isStream(object))
  const groups = Array.from({ length: Math.ceil(small.length / objectsPerStream) },
    (_, i) => small.slice(i * objectsPerStream, (i + 1) * objectsPerStream))
  const firstNew = objects.reduce((last, { number }) => Math.max(last, number), 0) + 1

  const packed = await Promise.all(groups.map(async group => {
    let offset = 0
    const index = group.map(({ number, body }) => {
      const entry = `${number} ${offset}`
      offset += body.length + 1
      return entry
    }).join(' ')
    const data = await compress(Buffer.from([index, ...group.map(({ body }) => body)].join('\n'), 'latin1'))
    return stream(`/Type /ObjStm /N ${group.length} /First ${index.length + 1}`, data)
  }))

  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n%\xe2\xe3\xcf\xd3\n', 'latin1')]
  const table: { type: 0 | 1 | 2; where: number; place: number }[] = []
  let length = parts[0]!.length
  const write = (number: number, body: Buffer): void => {
    table[number] = { type: 1, where: length, place: 0 }
    const object = Buffer.concat([Buffer.from(`${number} 0 obj\n`), body, Buffer.from('\nendobj\n')])
    parts.push(object)
    length += object.length
  }
  for (const object of objects.filter(isStream)) write(object.number, Buffer.from(object.body, 'latin1'))
  packed.forEach((body, i) => {
    write(firstNew + i, body)
    groups[i]!.forEach(({ number }, place) => { table[number] = { type: 2, where: firstNew + i, place } })
  })

  const tableNumber = firstNew + packed.length
  const startOfTable = length
  table[tableNumber] = { type: 1, where: startOfTable, place: 0 }
  const rows = Buffer.alloc(7 * (tableNumber + 1))
  for (let number = 0; number <= tableNumber; number++) {
    const { type, where, place } = table[number] ?? { type: 0, where: 0, place: 0 }
    rows.writeUInt8(type, 7 * number)
    rows.writeUInt32BE(where, 7 * number + 1)
    rows.writeUInt16BE(place, 7 * number + 5)
  }
  const hash = createHash('sha256')
  for (const part of parts) hash.update(part)
  const id = `<${hash.digest('hex').slice(0, 32)}>`
  write(tableNumber, stream(
    `/Type /XRef /Size ${tableNumber + 1} /W [1 4 2] /Root ${root} 0 R /Info ${info} 0 R /ID [${id} ${id}]`, await compress(rows)))
  parts.push(Buffer.from(`startxref\n${startOfTable}\n%%EOF\n`))
  return Buffer.concat(parts)
}

const stream = (entries: string, data: Buffer): Buffer => Buffer.concat([
  Buffer.from(`<<${entries} /Filter /FlateDecode /Length ${data.length}>> stream\n`), data, Buffer.from('\nendstream'),
])
