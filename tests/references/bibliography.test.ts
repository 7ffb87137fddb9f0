import { describe, expect, it, test } from 'vitest'
import { methods } from '../../src/calculate/conductors/index.js'
import { bases } from '../../src/references/basis/bases.js'
import { bibliography, type Citation, cite, standingOf } from '../../src/references/bibliography.js'
import { isoAnnexA } from '../../src/references/tables/iso-13297-annex-a.js'
import { protectiveDevice, protectiveDeviceKeys } from '../../src/references/tables/protective-devices.js'

/** Every citation anywhere in a piece of data. */
function citationsIn(data: unknown): Citation[] {
  if (typeof data !== 'object' || data === null) return []
  const found = Object.values(data).flatMap(citationsIn)
  return 'source' in data && 'place' in data ? [data as unknown as Citation, ...found] : found
}

test('every citation names a source of the bibliography', () => {
  const cited = citationsIn([bases, methods, protectiveDeviceKeys.map(protectiveDevice)])
  expect(cited.length).toBeGreaterThan(60)
  for (const { source } of cited) expect(Object.keys(bibliography)).toContain(source)
})

describe('a citation in words', () => {
  it('says so where the figure is from memory', () => {
    expect(cite(isoAnnexA.citation)).toMatch(/^ISO 13297, annex A, table A\.1 \(from memory; confirm against the source\)$/)
    expect(cite(isoAnnexA.columns[3]!.engineSpace.citation)).toContain('from memory')
  })
  it('does not where it was read', () => {
    expect(standingOf(bases.abyc.ampacity.citation)).toBe('public law')
    expect(cite(bases.abyc.ampacity.citation)).toBe('33 CFR 183, 183.425 table 5')
  })
  it('leaves out an empty place', () => {
    expect(cite({ source: 'common-practice', place: '' })).toBe('common practice')
  })
})
