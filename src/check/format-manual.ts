/** The manual of the vessel folder, written from the schemas: every kind, every key, what it takes. */
import { catalogueKinds, kindNames } from '../load/entry-kinds.js'
import { equipmentKindKeys, equipmentKinds } from '../references/equipment-kinds.js'
import { protectiveDeviceKeys, protectiveDevices } from '../references/tables/protective-devices.js'
import { type ListedContent, listChapters, listsFor } from './manual-lists.js'
import { referenceFields } from './reference-fields.js'
import { described, type Described } from './schema/described.js'
import { entryKinds, type KindKey, kindKeys } from './schema/kinds.js'

/** Markdown. `content`: the manual's own text, for the lists of its keys. */
export function formatManual(content: ListedContent): string {
  return `${[introduction(), contents(), ...kindKeys.map(kindChapter), ...listChapters(content), ...wordLists.map(wordChapter)].join('\n\n')}\n`
}

const introduction = (): string => `# The vessel folder

One folder describes one vessel. This page is made from the schemas that check it and from the manual's own text; it is not edited by hand.

## Files

- Every \`.yaml\`, \`.yml\` and \`.csv\` file in the folder and below it is data, and so are the procedures. Hidden files and folders (names that begin with a dot) are passed over.
- The text is UTF-8. A byte order mark and Windows line ends are accepted. A file has at most 8 MB.
- Files may be split and named as you like. A YAML file begins with the kind of its entries and may hold several kinds:

  \`\`\`yaml
  zones:
    - tag: helm
      name: Helm
      space: interior
  equipment:
    - tag: P1
      name: Helm display, port
      zone: helm
      position: [4.10 m, 0.35 m, 1.90 m]
  \`\`\`

- A Markdown file of the folder \`procedures\`, at the top of the vessel folder, is a procedure. Its head gives the keys of [\`procedures\`](#procedures); what stands below is its text. A Markdown file anywhere else is a document.

  \`\`\`markdown
  ---
  title: Starting with a flat bank
  about: [M1, Q3]
  ---
  1. Lift the guard of [[Q3]] and close it.
  \`\`\`

- In the text of a procedure, and in the \`notes\` of items and cables, a tag in double brackets (\`[[P1]]\`) becomes a link to what has that tag. Inside a code span it is left as it is.
- A CSV file holds one kind, which its name begins with: \`cables.csv\`, \`cables-helm.csv\`. Its first row names the columns, which are the keys below; a dot parts the keys of a map (\`protection.type\`). Comma, semicolon or tab part the cells, whichever the first row uses. A line that begins with \`#\` is a comment.
- An empty cell, and a key with nothing behind it, count as left out.
- A link that leads out of the folder is not followed.
- A catalogue is a folder of its own, shared by several vessels. It may hold ${inWords(catalogueKinds.map(code))}. A vessel folder may hold them too.

## Values

- A quantity carries its unit: \`6.4 m\`, \`21 ft 6 in\`, \`2.5 mm2\`, \`14 AWG\`, \`300 mA\`. Decimals have a point. A number without a unit is refused.
- A tag is made of letters, digits and \`. _ / + -\`, without spaces. It is unique in the vessel, whatever it names, and two tags must differ in more than capitals and signs. Models have names of their own.
- What looks like a number but is a name (\`007\`, \`1e3\`) stands in quotes.
- A list may be written as words parted by spaces: \`loads: P1 P2\`.
- What is not recorded is left out. It limits what can be calculated, and is listed as not assessed.`

const contents = (): string =>
  ['## Kinds of entry', '', '| Kind | Holds |', '| --- | --- |', ...kindKeys.map(kind => `| [\`${kind}\`](#${kind}) | ${cell(entryKinds[kind].about)} |`)].join('\n')

function kindChapter(kind: KindKey): string {
  const { about } = entryKinds[kind]
  const shape = kindNames[kind].shape === 'single' ? 'One map for the whole folder.' : 'A list; its entries may be spread over files.'
  return [
    `## ${kind}`, '', `${about} ${shape}`, ...listsFor(kind), '', '| Key | Required | Takes | What it is |', '| --- | --- | --- | --- |',
    ...rows(kind, described(kind), '', ''),
  ].join('\n')
}

/** `shown`: the keys that lead here, as they are shown; `path`: as the table of references writes them. */
function rows(kind: KindKey, map: Described, shown: string, path: string): readonly string[] {
  return Object.entries(map.properties ?? {}).flatMap(([key, part]) => {
    const name = shown + key
    const required = map.required?.includes(key) ? 'yes' : ''
    const row = `| \`${name}\` | ${required} | ${cell(takes(part, referenceAt(kind, path + key)))} | ${cell(part.description ?? '')} |`
    return [row, ...rows(kind, part, `${name}.`, `${path}${key}.`), ...rows(kind, part.items ?? {}, `${name}[].`, `${path}${key}.*.`)]
  })
}

function referenceAt(kind: KindKey, path: string): string | null {
  const field = referenceFields[kind]?.find(reference => reference.path.join('.') === path)
  return field === undefined || field.form === 'cable end' || field.form === 'wire end' || field.form === 'in text' ? null : `the tag of ${field.expected.inWords}`
}

function takes(part: Described, reference: string | null): string {
  if (part.type === 'array') return listTakes(part, reference)
  if (part.type === 'object') return 'a map of the keys below'
  if (part.enum !== undefined) return wordsTaken(part.enum)
  return reference ?? part.takes ?? ''
}

interface WordList { readonly title: string; readonly anchor: string; readonly words: readonly string[]; readonly aboutWord: (word: string) => string }

/** Lists too long for a cell of a table. */
const wordLists: readonly WordList[] = [
  {
    title: 'Kinds of equipment', anchor: 'kinds-of-equipment', words: equipmentKindKeys,
    aboutWord: word => `designation letter ${equipmentKinds[word as keyof typeof equipmentKinds].classLetter}`,
  },
  {
    title: 'Types of protective device', anchor: 'types-of-protective-device', words: protectiveDeviceKeys,
    aboutWord: word => protectiveDevices[word as keyof typeof protectiveDevices].ratingsA?.map(rating => `${rating} A`).join(', ') ?? 'set or programmed to any rating',
  },
]

function wordChapter({ title, words, aboutWord }: WordList): string {
  return [`## ${title}`, '', ...words.map(word => `- ${code(word)}: ${aboutWord(word)}`)].join('\n')
}

function wordsTaken(words: readonly string[]): string {
  const list = wordLists.find(known => known.words.join() === words.join())
  return list === undefined ? `one of: ${words.map(code).join(', ')}` : `one of the [${list.title.toLowerCase()}](#${list.anchor})`
}

function listTakes({ items = {}, orText }: Described, reference: string | null): string {
  const each = items.type === 'object' ? 'maps of the keys below' : `values, each ${takes(items, reference)}`
  return `a list of ${each}${orText === undefined ? '' : `; or ${orText}`}`
}

const code = (word: string): string => `\`${word}\``
const inWords = (words: readonly string[]): string => new Intl.ListFormat('en-GB').format(words)
const cell = (text: string): string => text.replaceAll('|', '\\|')
