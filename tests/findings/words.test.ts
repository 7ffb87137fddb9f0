import { expect, it } from 'vitest'
import { inWords } from '../../src/findings/words.js'

it.each([
  [[], ''],
  [['P1'], 'P1'],
  [['P1', 'P2'], 'P1 and P2'],
  [['P1', 'P2', 'P3'], 'P1, P2 and P3'],
  [['1', '2', '3', '4', '5', '6', '7', '8'], '1, 2, 3, 4, 5, 6, 7 and 8'],
  [['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'], '1, 2, 3, 4, 5, 6, 7, 8 and 2 more'],
])('%j reads "%s"', (tags, text) => {
  expect(inWords(tags)).toBe(text)
})
