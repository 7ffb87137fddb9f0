import { copyFile, cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readContent } from '../../src/load/read-content.js'
import type { Content } from '../../src/model/content.js'
import { equipmentKindKeys } from '../../src/references/equipment-kinds.js'
import { emergencyTasks, ownerTasks } from '../../src/references/procedure-places.js'
import { systemKinds } from '../../src/references/system-kinds.js'
import { fixedPages } from '../../src/view/site-map.js'

interface Piece { readonly where: string; readonly title: string; readonly markdown: string }

describe('the manual’s own text', () => {
  let content: Content
  let pieces: readonly Piece[]
  beforeAll(async () => {
    content = await readContent()
    pieces = [
      ...[...content.pages].map(([key, { title, markdown }]) => ({ where: key, title, markdown })),
      ...content.cautions.map(({ key, title, markdown }) => ({ where: `cautions/${key}`, title, markdown })),
      ...([...content.emergency, ...content.owner] as const).map(([key, { title, lead, markdown }]) => ({ where: key, title, markdown: `${lead}\n\n${markdown}` })),
      ...[...content.operating, ...content.faultTrees].map(({ key, title, markdown }) => ({ where: key, title, markdown })),
      ...[...content.systems].map(([key, { title, markdown }]) => ({ where: `systems/${key}`, title, markdown })),
    ]
  })

  it('has the pages that the view makes chapters of, and the parts of the card for a distress call', () => {
    expect([...content.pages.keys()].sort()).toEqual(['basis', 'distress-alert', 'distress-beacons', 'distress-other-calls', 'glossary', 'how-to-read', 'safety'])
  })

  it('has a title everywhere, and no heading that competes with it', () => {
    for (const { where, title, markdown } of pieces) {
      expect(title, where).toMatch(/^[A-Z]/)
      expect(markdown, where).not.toMatch(/^# /m)
    }
  })

  it('links only to pages that every pack has', () => {
    const known: readonly string[] = [...Object.values(fixedPages), ...emergencyTasks.map(task => `${fixedPages.emergency}/${task}`)]
    const links = pieces.flatMap(({ where, markdown }) =>
      [...markdown.matchAll(/\]\(([^)]*)\)/g)].map(([, to = '']) => ({ where, to })))
    expect(links.length).toBeGreaterThan(5)
    expect(links.filter(({ to }) => !to.startsWith('asfitted:') || !known.includes(to.slice('asfitted:'.length)))).toEqual([])
  })

  it('gives the cautions from the worst outcome to the least, each once', () => {
    const severities = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']
    const given = content.cautions.map(({ signal }) => severities.indexOf(signal))
    expect(given).toEqual(given.toSorted((a, b) => a - b))
    expect(new Set(content.cautions.map(({ key }) => key)).size).toBe(content.cautions.length)
  })

  it('explains the four signal words in the order of ANSI Z535', () => {
    const explained = [...content.pages.get('safety')!.markdown.matchAll(/^\| ([A-Z]+) \|/gm)].map(([, word]) => word)
    expect(explained).toEqual(['DANGER', 'WARNING', 'CAUTION', 'NOTICE'])
  })

  // ANSI Z535.4 and ISO 3864-2 as tabled in published summaries: what is said of each word.
  it.each([
    ['DANGER', /will.*kill or seriously injure.*most extreme/], ['WARNING', /could.*kill or seriously injure/], ['CAUTION', /could.*minor or moderate injury/], ['NOTICE', /[Nn]o injury/],
  ])('%s means what the standards say', (word, meaning) => {
    const [, explained = ''] = new RegExp(`^\\| ${word} \\| (.*) \\|$`, 'm').exec(content.pages.get('safety')!.markdown) ?? []
    expect(explained).toMatch(meaning)
    if (word !== 'DANGER') expect(explained).not.toMatch(/\bwill\b/)
  })

  it('tells of each kind of equipment once how it is used, in 60 to 180 words', () => {
    const kinds = content.operating.flatMap(text => text.kinds)
    expect(kinds.filter((kind, i) => kinds.indexOf(kind) !== i)).toEqual([])
    const all = [...equipmentKindKeys, 'lead-acid battery', 'lithium battery', 'busbar', 'panel']
    expect(all.filter(kind => !kinds.includes(kind))).toEqual([])
    const lengths = content.operating.map(({ key, markdown }) => ({ key, words: markdown.split(/\s+/).length }))
    expect(lengths.filter(({ words }) => words < 60 || words > 180)).toEqual([])
  })

  it('says of each kind of equipment the same seven things, in one order', () => {
    const said = ['What it does', 'Switch on', 'Use', 'Switch off', 'Normal', 'Depends on', 'Do not']
    for (const { key, markdown } of content.operating) expect([key, ...[...markdown.matchAll(/^- \*\*([^*]+)\.\*\*/gm)].map(([, what]) => what)]).toEqual([key, ...said])
  })

  it('has a text for each of the usual systems and each task of the owner', () => {
    expect([...content.systems.keys()].toSorted()).toEqual(systemKinds.toSorted())
    expect([...content.owner.keys()].toSorted()).toEqual(ownerTasks.toSorted())
  })

  // ANSI Z535: the word follows the worst credible outcome. What can kill is never below WARNING; without injury it is a NOTICE.
  it.each([
    ['shore-power-and-mains', 'WARNING'], ['battery-gas', 'WARNING'], ['fuse-ratings', 'WARNING'], ['hot-surfaces', 'CAUTION'],
    ['isolator-under-charge', 'NOTICE'], ['cooking-gas', 'WARNING'], ['fuel', 'WARNING'], ['carbon-monoxide', 'WARNING'], ['working-aloft', 'WARNING'],
    ['magnets-and-pacemakers', 'WARNING'], ['lifting-heavy-things', 'WARNING'], ['welding-and-insulation-tests', 'NOTICE'],
  ])('%s is a %s', (key, signal) => {
    expect(content.cautions.find(caution => caution.key === key)?.signal).toBe(signal)
  })

  it('says where each caution and each text on faults comes from', () => {
    for (const { key, markdown } of [...content.cautions, ...content.faultTrees]) expect(markdown, key).toMatch(/\n\*Source: [^*]+\.\*$/)
  })

  it('reads well aloud: no sentence is long', () => {
    for (const { where, markdown } of pieces) {
      for (const sentence of sentencesOf(withoutSource(markdown))) expect(sentence.split(/\s+/).length, `${where}: ${sentence}`).toBeLessThanOrEqual(28)
    }
  })

  // A brand or a model is a capitalised word inside a sentence, so all those that may stand there are listed.
  it('names nothing but standards, public bodies and terms of the trade', () => {
    const strangers = pieces.flatMap(({ where, title, markdown }) =>
      [title, ...sentencesOf(markdown)].flatMap(sentence => namesIn(sentence).filter(name => !mayBeNamed.has(name)).map(name => `${where}: ${name}`)))
    expect(strangers).toEqual([])
  })

  it('sends nobody out of the pack', () => {
    for (const { where, markdown } of pieces) expect(markdown, where).not.toMatch(/https?:|www\.|[™®©]|^\s*</m)
  })
})

const mayBeNamed = new Set([
  'IEC', 'ISO', 'ANSI', 'Z535', 'NMEA', 'IEEE', 'PoE', 'CFR', 'ABYC', 'E-11', 'A', 'A-1', 'A-28', 'Ah', 'COLREG', 'Directive', 'EU', 'Ethernet', 'CAN',
  'MAYDAY', 'PAN-PAN', 'Fire', 'Person', 'IAMSAR', 'III', 'AIS', 'VHF', 'DSC', 'GNSS', 'MMSI', 'MID', 'PGN', 'VSWR', 'EIRP', 'GM', 'Bd', 'MHz', 'EPIRB', 'PLB', 'SART', 'AIS-SART', 'ITU', 'Radio', 'Regulations', 'LEN', 'AWG', 'American', 'AIC', 'RCD', 'ELCI', 'GFCI', 'CIN', 'HIN', 'Source',
  'DANGER', 'WARNING', 'CAUTION', 'NOTICE', 'W', 'V', 'Findings', 'Kinds', 'Not', 'Calculations', 'Find', 'Fault', 'Mains', 'Safety', 'A1', 'P1', 'As', 'It', 'I',
  'B', 'E', 'F', 'G', 'K', 'M', 'P', 'Q', 'T', 'X', 'A', 'Ah', 'WLAN', 'MAYDAY', 'PAN-PAN', 'IAMSAR', 'III', 'Fire', 'Person',
])

const withoutSource = (markdown: string): string => markdown.replace(/\n\*Source: .*$/, '')

/** Sentences, list items, table cells and headings, without the marks of Markdown. */
const sentencesOf = (markdown: string): readonly string[] =>
  markdown.replace(/\{\{[^}]*\}\}/g, '').replace(/\]\([^)]*\)/g, '').replace(/`[^`]*`/g, 'x').replace(/[*#[\]"]/g, '')
    .split(/[.:?]\s|\n|\|/).map(piece => piece.replace(/^[\s\-\d.]+/, '').trim()).filter(piece => piece !== '')

const namesIn = (sentence: string): readonly string[] =>
  sentence.split(/[\s,;()/]+/).slice(1).map(word => word.replace(/[.’':]+.*$/, '')).filter(word => /^[A-Z]/.test(word))

describe('a broken content file', () => {
  let folder: string
  beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'content-')) })
  afterAll(async () => { await rm(folder, { recursive: true }) })

  const sound = '---\nsignal: NOTICE\ntitle: A title\nhazard: water\nequipment-kinds: []\n---\nText.\n'
  async function readWith(file: string, text: string): Promise<Content> {
    const home = await mkdtemp(join(folder, 'case-'))
    for (const part of ['cautions', 'emergency', 'owner', 'operating', 'systems', 'fault-trees', 'maintenance']) await mkdir(join(home, part))
    for (const file of ['label-sizes.yaml', 'danger-labels.yaml']) await copyFile(join('content', file), join(home, file))
    await writeFile(join(home, 'page.md'), '---\ntitle: A page\n---\nText.\n')
    await writeFile(join(home, 'cautions', '02-sound.md'), sound)
    await writeFile(join(home, file), text)
    return readContent(home)
  }

  it('is what the other cases differ from', async () => {
    const rest = { hazard: 'water', onEveryBoat: false, needs: [], systems: [], tasks: [], pages: [] }
    const content = await readWith('cautions/01-first.md', sound.replace('[]', '[display, battery]'))
    expect(content.cautions).toEqual([
      { key: 'first', signal: 'NOTICE', title: 'A title', markdown: 'Text.', equipmentKinds: ['display', 'battery'], ...rest },
      { key: 'sound', signal: 'NOTICE', title: 'A title', markdown: 'Text.', equipmentKinds: [], ...rest },
    ])
    expect(content.pages.get('page')).toEqual({ title: 'A page', markdown: 'Text.' })
  })

  it.each(['cautions', 'emergency', 'owner', 'operating', 'systems', 'fault-trees', 'maintenance', 'label-sizes.yaml', 'danger-labels.yaml'])('that is not there throws: %s', async part => {
    const home = await mkdtemp(join(folder, 'bare-'))
    await cp('content', home, { recursive: true })
    await rm(join(home, part), { recursive: true })
    await expect(readContent(home)).rejects.toThrow(/ENOENT/)
  })

  it.each([
    ['no front matter', 'page.md', 'Text.', /page\.md: no front matter/],
    ['no text', 'page.md', '---\ntitle: A page\n---\n\n', /page\.md: no text/],
    ['no title', 'page.md', '---\nheading: A page\n---\nText.', /page\.md: .*title/s],
    ['YAML that does not parse', 'page.md', '---\ntitle: [\n---\nText.', /page\.md: /],
    ['a signal word that is none', 'cautions/01-odd.md', sound.replace('NOTICE', 'BEWARE'), /01-odd\.md: .*signal/s],
    ['a hazard that is none', 'cautions/01-odd.md', sound.replace('water', 'ghosts'), /01-odd\.md: .*hazard/s],
    ['an unknown kind of equipment', 'cautions/01-odd.md', sound.replace('[]', '[teapot]'), /01-odd\.md: .*no kind of equipment/s],
    ['a caution without its number', 'cautions/odd.md', sound, /odd\.md: .*two digits/],
  ])('with %s throws with its name', async (_, file, text, message) => {
    await expect(readWith(file, text)).rejects.toThrow(message)
  })
})
