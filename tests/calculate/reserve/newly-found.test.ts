import { expect, it } from 'vitest'
import { find } from '../../../src/findings/finding.js'
import { cableDataMissing, ratingBelowLoad } from '../../../src/calculate/conductors/findings.js'
import { newlyFound } from '../../../src/calculate/reserve/newly-found.js'

const below = (id: string) => find(ratingBelowLoad, { subject: { kind: 'circuit', id }, field: null, evidence: { designCurrentA: 2, ratedCurrentA: 1 }, limit: null, context: { device: 'fuse' } })

it('leaves out what is known, what is about the new things, and notes', () => {
  const note = { ...below('F4'), severity: 'note' as const }
  const found = newlyFound({ findings: [below('F1')] }, [{ findings: [below('F1'), below('F2')] }, { findings: [below('the new circuit'), note, { ...below('F1'), id: cableDataMissing.id }] }], ['the new circuit'])
  expect(found.map(({ id, subject }) => `${id} ${subject.id}`)).toEqual([`${ratingBelowLoad.id} F2`, `${cableDataMissing.id} F1`])
})
