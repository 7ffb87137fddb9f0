/** Templates print, loop and branch on a boolean; a template that needs a number lacks a field in the view. */
import { describe, expect, it } from 'vitest'
import { filesBelow, textOf } from './files.js'

const templates = filesBelow('templates', '.njk')

describe.each(templates)('%s', file => {
  const expressions = [...textOf(file).matchAll(/\{\{-?(.*?)-?\}\}|\{%-?(.*?)-?%\}/gs)].map(([, printed, logic]) => (printed ?? logic ?? '').trim())

  it('calculates nothing', () => {
    const withoutStrings = expressions.map(expression => expression.replace(/'[^']*'|"[^"]*"/g, '""'))
    expect(withoutStrings.filter(expression => /[^=!<>]=?[<>]=?|[*/%]|\d\s*[-+]|[-+]\s*\d/.test(expression))).toEqual([])
  })

  it('formats no date and no number', () => {
    expect(expressions.filter(expression => /\|\s*(date|round|int|float|abs|sum)\b/.test(expression))).toEqual([])
  })
})
