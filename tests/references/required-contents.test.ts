import { describe, expect, it } from 'vitest'
import { bibliography, standingOf } from '../../src/references/bibliography.js'
import { contentKeys, outsideManual, requiredContents } from '../../src/references/tables/required-contents.js'
import { referenceTable } from '../support/reference-table.js'

const headings = referenceTable('required-contents')
const cited = [...contentKeys.flatMap(key => requiredContents[key].askedBy.map(citation => ({ key: key as string, citation }))), ...outsideManual.map(({ citation }) => ({ key: 'outside', citation }))]
const at = (source: string, place: string) => cited.filter(({ citation }) => bibliography[citation.source].designation === source && citation.place === place)

describe('the list of contents', () => {
  // Headings of the sources as they were read; the file says of each row how.
  it.each(headings.map(({ source, place, heading }) => [source, place, heading] as const))('carries %s, %s: %s', (source, place) => {
    expect(at(source!, place!)).not.toEqual([])
  })

  it('carries each of the six things that point 2.5 asks for', () => {
    expect(at('Directive 2013/53/EU', 'annex I A, 2.5').map(({ key }) => key).toSorted())
      .toEqual(['builders-plate', 'fire-and-flooding-risks', 'handling', 'language', 'maximum-load', 'unladen-mass'])
  })

  it('asks for nothing that no heading asks for', () => {
    // What the signal words mean, and how an identification number is made, have standards of their own.
    const own = new Set(['ANSI Z535.4 and ISO 3864-2', 'ISO 10087'])
    const known = new Set(headings.map(({ source, place }) => `${source} ${place}`))
    const unknown = cited.map(({ citation }) => citation).filter(({ source, place }) => !own.has(bibliography[source].designation) && !known.has(`${bibliography[source].designation} ${place}`))
    expect(unknown).toEqual([])
  })

  it('says of 5.3 alone that its text is law as read, and of what is from memory that it is', () => {
    const directive = cited.filter(({ citation }) => citation.source === '2013-53-eu')
    expect(directive.filter(({ citation }) => standingOf(citation) === 'public law').map(({ citation }) => citation.place)).toEqual(['annex I A, 5.3'])
    expect(cited.filter(({ citation }) => citation.source === 'iso-10133').every(({ citation }) => standingOf(citation) === 'from memory')).toBe(true)
  })
})
