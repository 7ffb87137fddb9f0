import fc from 'fast-check'
import { expect, test } from 'vitest'
import { check } from '../../src/check/check.js'
import { reportJson, reportText } from '../../src/findings/report.js'
import { type Files, smallVessel, smallVesselAttached, sourceOf } from '../support/vessel-files.js'

const pieces = [
  '', ' ', '\n', '\t', ':', ': ', '- ', '"', "'", '#', ',', '[', ']', '{', '}', '&a ', '*a', '|', '>', '!x ', '---\n', '? ', '0', '-1', '1e999', '.inf', '.nan', 'null', 'true', '~',
  'P1', 'zones:\n', 'vessel: {}\n', 'tag: P1\n', 'A1:A1:A1', '\uFEFF', '\u0000', '\u001B[2J', '\uD800', '𝄞', '__proto__: ', 'constructor', '<<: *a', '%YAML 1.1\n', '- [- -',
]
const slip = fc.record({ file: fc.constantFrom(...Object.keys(smallVessel)), at: fc.nat(), drop: fc.nat({ max: 30 }), piece: fc.constantFrom(...pieces) })

const slipped = (files: Files, { file, at, drop, piece }: { file: string; at: number; drop: number; piece: string }): Files => {
  const text = files[file]!
  const start = at % (text.length + 1)
  return { ...files, [file]: text.slice(0, start) + piece + text.slice(start + drop) }
}

test('no slip of the pen makes the program fail; every finding stands in its file; a vessel has what it refers to', () => {
  fc.assert(fc.property(fc.array(slip, { minLength: 1, maxLength: 4 }), slips => {
    const source = sourceOf(slips.reduce(slipped, smallVessel), { attached: smallVesselAttached })
    const { findings, vessel } = check(source)
    expect(vessel === null).toBe(findings.some(({ severity }) => severity === 'error'))
    for (const { at, message, remedy } of findings) {
      expect(`${message}${remedy}`).not.toMatch(/undefined|\[object/)
      if (at === null) continue
      const lines = source.texts.get(at.file)!.split(/\r\n|\n|\r/)
      expect(at.line).toBeGreaterThan(0)
      expect(at.column).toBeGreaterThan(0)
      expect(at.line).toBeLessThanOrEqual(lines.length)
      expect(at.column).toBeLessThanOrEqual(lines[at.line - 1]!.length + 1)
      expect(at.endLine > at.line || at.endColumn >= at.column).toBe(true)
    }
    if (vessel !== null) {
      const supplies = new Set([...vessel.batteries, ...vessel.busbars, ...vessel.panels].map(({ tag }) => tag))
      expect(vessel.circuits.filter(({ fedFromTag }) => !supplies.has(fedFromTag))).toEqual([])
      const wireways = new Set(vessel.wireways.map(({ tag }) => tag))
      expect(vessel.cables.flatMap(({ routeTags }) => routeTags ?? []).filter(tag => !wireways.has(tag))).toEqual([])
    }
    expect(JSON.parse(reportJson(findings, null)).findings).toHaveLength(findings.length)
    reportText(findings, { textOf: file => source.texts.get(file), colour: false })
  }), { numRuns: 150 })
})
