import { describe, expect, test } from 'vitest'
import { didYouMean, nearest } from '../../src/findings/nearest.js'

describe('nearest', () => {
  test.each([
    ['serail', ['serial', 'software'], 'serial'],
    ['hlem', ['mast', 'helm'], 'helm'],
    ['Helm', ['helm', 'hell'], 'helm'],
    ['fedfrom', ['fed-from', 'loads'], 'fed-from'],
    ['colour', ['tag', 'from', 'to'], null],
    ['X9', ['X1'], null],
    ['x', [], null],
    ['', ['a'], null],
  ])('%s among %j is %s', (word, candidates, expected) => {
    expect(nearest(word, candidates)).toBe(expected)
  })
})

test('didYouMean', () => {
  expect(didYouMean('loads')).toBe('; did you mean "loads"?')
  expect(didYouMean(undefined)).toBe('')
})
