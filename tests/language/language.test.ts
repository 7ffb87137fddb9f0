/** The language of the pack: spelling, one term for one thing, short sentences, and references that lead somewhere. */
import { beforeAll, describe, expect, it } from 'vitest'
import { bibliography } from '../../src/references/bibliography.js'
import { readContent } from '../../src/load/read-content.js'
import { tagsInText } from '../../src/model/tags-in-text.js'
import type { View } from '../../src/view/view-model.js'
import { contentPassages, type Passage, samplePack, viewPassages } from './passages.js'
import { isKnown, ownWords, spelling, wordsIn } from './spelling.js'
import { endsInIze, terms } from './terms.js'

let view: View
let tags: ReadonlySet<string>
let general: readonly Passage[]
let everything: readonly Passage[]
beforeAll(async () => {
  ;({ view, tags } = await samplePack())
  general = await contentPassages()
  // The same words stand on many pages; once is enough.
  everything = [...new Map([...general, ...viewPassages(view)].map(passage => [passage.text, passage])).values()]
}, 60_000)

const shown = ({ where, text }: Passage, what: string): string => `${what}: ${where}: ${text.slice(0, 120)}`

describe('spelling', () => {
  it('is British, by the dictionary of cspell and the words of this project', async () => {
    const isRight = await spelling()
    const first = new Map<string, Passage>()
    for (const passage of everything) for (const word of wordsIn(passage.text)) if (!first.has(word)) first.set(word, passage)
    expect(first.size).toBeGreaterThan(3000)
    expect([...first].filter(([word]) => !isRight(word)).map(([word, passage]) => shown(passage, word))).toEqual([])
  }, 60_000)

  it('ends verbs in -ise', () => {
    expect(everything.flatMap(passage => { const found = endsInIze.exec(passage.text); return found === null ? [] : [shown(passage, found[0])] })).toEqual([])
  })

  it('has its own words sorted, each once, and none that the dictionary knows', async () => {
    expect(ownWords).toEqual([...new Set(ownWords)].sort())
    const known = await isKnown()
    expect(ownWords.filter(known)).toEqual([])
  }, 60_000)
})

describe('terms', () => {
  const withoutBrackets = (text: string): string => text.replace(/\([^()]*\)/g, ' ')

  it('are the glossary’s', () => {
    const wrong = everything.filter(({ where, text }) => where !== 'content/glossary.md' && where !== 'glossary' && !titles.has(text))
      .flatMap(passage => terms.flatMap(({ not, use }) => { const found = not.exec(withoutBrackets(passage.text)); return found === null ? [] : [shown(passage, `${found[0]} (use ${use})`)] }))
    expect(wrong).toEqual([])
  })

  // A document is called what it is called.
  const titles: ReadonlySet<string> = new Set(Object.values(bibliography).map(({ title }) => title))

  it('stand in the glossary, each once', async () => {
    const defined = await glossaryTerms()
    expect(terms.map(({ use }) => use).filter(use => !defined.includes(use))).toEqual([])
    expect(defined.filter((one, i) => defined.indexOf(one) !== i)).toEqual([])
  })

  it('are explained there where the general text abbreviates', async () => {
    const glossary = (await readContent()).pages.get('glossary')!.markdown
    const unexplained = general.flatMap(passage => [...passage.text.matchAll(/(?<![\p{L}\d-])\p{Lu}{2,6}(?![\p{L}\d-])/gu)].map(([word]) => ({ word, passage })))
      .filter(({ word }) => !bodiesAndSigns.has(word) && !new RegExp(`\\b${word}\\b`).test(glossary))
    expect(unexplained.map(({ word, passage }) => shown(passage, word))).toEqual([])
  })
})

/** Standards, public bodies, signal words, words that are spoken on the radio: no terms of the manual. */
const bodiesAndSigns: ReadonlySet<string> = new Set([
  'IEC', 'ISO', 'ANSI', 'NMEA', 'IEEE', 'CFR', 'ABYC', 'EU', 'ITU', 'COLREG', 'AWG', 'UL', 'EN', 'BS', 'DANGER', 'WARNING', 'CAUTION', 'NOTICE',
  'MAYDAY', 'PAN', 'OVER', 'OUT', 'CSV', 'JSON', 'YAML', 'PDF', 'IMO', 'SOLAS', 'GMDSS', 'TEST',
])

async function glossaryTerms(): Promise<readonly string[]> {
  const { markdown } = (await readContent()).pages.get('glossary')!
  return [...markdown.matchAll(/^- .*$/gm)].flatMap(([line]) => [...line.matchAll(/\*\*([^*]+)\*\*/g)].map(([, name]) => name!.charAt(0).toUpperCase() + name!.slice(1)))
}

describe('sentences of the general text', () => {
  // As in tests/load/read-content.test.ts, over every folder.
  it('have at most 28 words', () => {
    const long = general.flatMap(passage => passage.text.split(/[.:?;!]\s|\n/).filter(sentence => sentence.trim().split(/\s+/).length > 28).map(sentence => shown(passage, sentence)))
    expect(long).toEqual([])
  })

  it('have no dash where a full stop or a comma belongs', () => {
    expect(everything.filter(({ text }) => text.includes('—')).map(passage => shown(passage, '—'))).toEqual([])
  })
})

describe('references', () => {
  /** Every address in a value: of links, cards and trails; in Markdown and drawings. */
  function addressesIn(value: unknown): readonly string[] {
    if (typeof value === 'string') return [...value.matchAll(/asfitted:([^\s"')]+)/g)].map(([, key]) => key!)
    if (Array.isArray(value)) return value.flatMap(addressesIn)
    if (value === null || typeof value !== 'object') return []
    return Object.entries(value).flatMap(([key, part]) => (key === 'to' && typeof part === 'string' ? [part] : addressesIn(part)))
  }

  it('of every page lead to a page that is there', () => {
    const keys = new Set(view.pages.map(({ key }) => key))
    const found = view.pages.flatMap(page => [...new Set(addressesIn(page))].map(to => ({ from: page.key, to: to.split('#')[0]! })))
    expect(found.length).toBeGreaterThan(5000)
    expect(found.filter(({ to }) => !keys.has(to)).map(({ from, to }) => `${from} → ${to}`)).toEqual([])
    expect(addressesIn([view.navigation]).concat(view.navigation.flatMap(({ key, children }) => [key, ...children.map(child => child.key)])).filter(to => !keys.has(to))).toEqual([])
  })

  const generalPages: ReadonlySet<string> = new Set(['basis', 'methods', 'finding-kinds', 'glossary', 'how-to-read'])

  // A designation as the sample vessel forms them: a class letter of IEC 81346-2, or one of her own prefixes, and a number.
  it('in words name only what is on board', () => {
    const strange = viewPassages(view).filter(({ where }) => !generalPages.has(where.split('/')[0]!)).flatMap(passage =>
      [...passage.text.matchAll(/(?<![\p{L}\d.-])(?:[ABCEFGKMPQRSTXNW]|WW|SP|ST|EX|SL|CAN|LAN)\d+(?:\.\d+)?(?![\p{L}\d-])/gu)].filter(([tag]) => !tags.has(tag)).map(([tag]) => shown(passage, tag)))
    expect([...new Set(strange)]).toEqual([])
  })

  it('by tag in a text are resolved everywhere', () => {
    const left = view.pages.flatMap(page => page.blocks.flatMap(block =>
      (block.is === 'markdown' ? tagsInText(block.source) : block.is === 'callout' ? tagsInText(block.markdown) : []).map(({ tag }) => `${page.key}: [[${tag}]]`)))
    expect(left).toEqual([])
  })
})
