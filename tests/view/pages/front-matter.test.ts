import { expect, it } from 'vitest'
import { aVessel } from '../../support/vessel-builder.js'
import { frontMatterPages, generalText } from '../../../src/view/pages/front-matter.view.js'
import { fixedPages } from '../../../src/view/site-map.js'
import { contextOf, wordsOn } from './support.js'

const pages = frontMatterPages(contextOf(aVessel()))

it('makes the page on reading the manual and the glossary', () => {
  expect(pages.map(({ key }) => key)).toEqual([fixedPages.howToRead, fixedPages.glossary])
})

it('says what the pack does not do', () => {
  const words = wordsOn(pages[0]!)
  expect(words).toContain('It does not certify')
  expect(words).toMatch(/Local codes, .* licensed practice come first/)
  expect(words).toMatch(/not assessed \| .*It is not a pass/)
})

it('throws for a general text that is missing, for it is part of the program', () => {
  expect(() => generalText(contextOf(aVessel()), 'preface')).toThrow('content/preface.md is missing')
})
