import { describe, expect, test } from 'vitest'
import { check } from '../../src/check/check.js'
import { checkFindingKinds } from '../../src/check/findings.js'
import { isUnreadable } from '../../src/load/findings.js'
import { listed, smallVessel, smallVesselAttached, sourceOf } from '../support/vessel-files.js'
import { hidingCases, referenceCases, schemaCases } from './cases.js'

const cases = [...schemaCases, ...referenceCases, ...hidingCases]

describe('check', () => {
  test('has nothing to say of a vessel without a fault', () => {
    const { findings, vessel } = check(sourceOf(smallVessel, { attached: smallVesselAttached }))
    expect(findings).toEqual([])
    expect(vessel).not.toBeNull()
  })

  test.each(cases)('$name', ({ files, findings, says }) => {
    const source = sourceOf(files, { attached: smallVesselAttached })
    const checked = check(source)
    expect(listed(checked.findings, source.texts)).toEqual(findings)
    if (says !== undefined) expect(checked.findings.map(({ message }) => message).join('\n')).toContain(says)
    expect(checked.vessel === null).toBe(checked.findings.some(({ severity }) => severity === 'error'))
  })

  test('schema and reference errors leave the folder readable', () => {
    for (const { files } of [...schemaCases, ...referenceCases]) expect(check(sourceOf(files)).findings.some(isUnreadable)).toBe(false)
  })

  test.each(checkFindingKinds.map(({ id }) => id))('%s is triggered by a case', id => {
    expect(cases.some(({ findings }) => findings.some(finding => finding.split(' ').includes(id)))).toBe(true)
  })
})

test('a list may be longer than a function call has room for', () => {
  const source = sourceOf({ 'vessel.yaml': `vessel: {name: Tern, basis: iso}\nzones: [${'1,'.repeat(150_000)}]\n` })
  expect(check(source).findings).toHaveLength(150_000)
})

// What protects a circuit is read off the boat; a guess written in good faith could be the wrong device.
test('no protective device is proposed for a mistyped one', () => {
  const { files } = schemaCases.find(({ name }) => name === 'a protective device is not guessed')!
  expect(check(sourceOf(files, { attached: smallVesselAttached })).findings.map(({ remedy }) => remedy)).toEqual([expect.stringMatching(/^Write one of: /)])
})
