/** Which tags a text names. What is code, and what is a link, follows CommonMark 0.31.2 (6.1 code spans, 4.5 fenced code blocks, 2.4 backslash escapes). */
import { expect, it } from 'vitest'
import { replaceTags, tagsInText } from '../../src/model/tags-in-text.js'

const named = (text: string): readonly string[] => tagsInText(text).map(({ tag }) => tag)

it.each<[string, readonly string[]]>([
  ['Open [[Q1]], then [[ A1.7 ]].', ['Q1', 'A1.7']],
  ['`[[Q1]]` and [[Q2]]', ['Q2']],
  ['``a ` [[Q1]]`` [[Q2]]', ['Q2']],
  ['one ` alone [[Q1]]\n\nand ` another [[Q2]]', ['Q1', 'Q2']],
  ['```\n[[Q1]]\n```\n[[Q2]]', ['Q2']],
  ['~~~ text\n[[Q1]]\n```\n[[Q3]]\n~~~\n[[Q2]]', ['Q2']],
  ['```\n[[Q1]] in a block that is never closed', []],
  ['\\[[Q1]] stays as it is, [[Q2]]', ['Q2']],
  ['[[1]](asfitted:safety), [[Q2]]', ['Q2']],
  ['[[two\nlines]] [[]] [[ ]] [Q1] [[Q2]]', ['Q2']],
])('%j', (text, tags) => {
  expect(named(text)).toEqual(tags)
})

it('gives each tag its place, so that it can be replaced', () => {
  const text = 'Open [[Q1]] and `[[Q1]]`.'
  expect(tagsInText(text).map(({ start, end }) => text.slice(start, end))).toEqual(['[[Q1]]'])
  expect(replaceTags(text, tag => `<${tag}>`)).toBe('Open <Q1> and `[[Q1]]`.')
})
