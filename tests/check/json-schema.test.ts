/**
 * The JSON Schemas against their standard and against the check stage. The library that reads them here was not used to
 * check the files, and knows nothing of the schemas they were made from.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse as parseYaml } from 'yaml'
import { z } from 'zod'
import { check } from '../../src/check/check.js'
import { anyKindsFileName, jsonSchemas } from '../../src/check/json-schema.js'
import { kindKeys } from '../../src/load/entry-kinds.js'
import { type Dimension, parseQuantity, quantityPattern } from '../../src/units/parse-quantity.js'
import { smallVessel, sourceOf } from '../support/vessel-files.js'
import { schemaCases } from './cases.js'

const schemas = jsonSchemas()

/** JSON Schema 2020-12: the core, applicator, validation and meta-data vocabularies, and `format`. */
const keywords = new Set([
  '$schema', '$id', '$ref', '$anchor', '$dynamicRef', '$dynamicAnchor', '$vocabulary', '$comment', '$defs',
  'allOf', 'anyOf', 'oneOf', 'not', 'if', 'then', 'else', 'dependentSchemas', 'prefixItems', 'items', 'contains', 'properties', 'patternProperties', 'additionalProperties', 'propertyNames',
  'type', 'enum', 'const', 'multipleOf', 'maximum', 'exclusiveMaximum', 'minimum', 'exclusiveMinimum', 'maxLength', 'minLength', 'pattern', 'maxItems', 'minItems', 'uniqueItems',
  'maxContains', 'minContains', 'maxProperties', 'minProperties', 'required', 'dependentRequired',
  'title', 'description', 'default', 'deprecated', 'readOnly', 'writeOnly', 'examples', 'format',
])
const types = ['null', 'boolean', 'object', 'array', 'number', 'string', 'integer']

type Node = Readonly<Record<string, unknown>>
const childrenOf = ({ properties = {}, items, anyOf = [] }: Node): readonly Node[] =>
  [...Object.values(properties as Record<string, Node>), ...(items === undefined ? [] : [items as Node]), ...(anyOf as Node[])]
const nodesOf = (node: Node): readonly Node[] => [node, ...childrenOf(node).flatMap(nodesOf)]

describe('as the standard has it', () => {
  test('one schema for files of any kinds and one for each kind', () => {
    expect([...schemas.keys()]).toEqual([anyKindsFileName, ...kindKeys.map(kind => `${kind}.schema.json`)])
    expect(Object.keys(schemas.get(anyKindsFileName)!['properties'] as object)).toEqual([...kindKeys])
  })

  test.each([...schemas])('%s', (_, schema) => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema')
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema)
    for (const node of nodesOf(schema)) {
      expect(Object.keys(node).filter(keyword => !keywords.has(keyword))).toEqual([])
      expect([node['type'] ?? []].flat().filter(type => !types.includes(type as string))).toEqual([])
      if (typeof node['pattern'] === 'string') expect(() => new RegExp(node['pattern'] as string, 'u')).not.toThrow()
      for (const key of (node['required'] ?? []) as string[]) expect(node['properties']).toHaveProperty([key])
    }
  })
})

describe('beside the check stage', () => {
  const reader = z.fromJSONSchema(schemas.get(anyKindsFileName) as Parameters<typeof z.fromJSONSchema>[0])
  const accepts = (text: string): boolean => reader.safeParse(parseYaml(text, { logLevel: 'silent' })).success

  test.each(Object.entries(smallVessel).filter(([name]) => name.endsWith('.yaml')))('%s is accepted', (_, text) => {
    expect(accepts(text)).toBe(true)
  })

  /** What a pattern cannot say, or a parser does before the schema is asked. */
  const beyond = new Set(['a backbone element of two kinds', 'a file outside the folder', 'one faulty word of a list', 'two vessels', 'a rating of nothing', 'protection and the reason for none',
    'a zone box without width, its corners in any order', 'a word of the list that asks for more', 'a drawing whose corners are the wrong way round', 'a call-out beside its photograph'])
  const files = schemaCases.filter(({ name }) => !beyond.has(name)).flatMap(({ name, files: all }) =>
    Object.entries(all).filter(([file]) => file.endsWith('.yaml')).map(([file, text]) => [name, file, text, all] as const))

  test.each(files)('%s: %s', (_name, file, text, all) => {
    const objected = check(sourceOf(all)).findings.some(({ id, at }) => id.startsWith('SCH') && at?.file === file)
    expect(accepts(text)).toBe(!objected)
  })
})

describe('patterns of quantities beside the reader of quantities', () => {
  const dimensions: readonly Dimension[] = [
    'length', 'coordinate', 'diameter', 'current', 'voltage', 'power', 'charge', 'energy', 'mass', 'temperature', 'percent', 'resistance', 'data rate', 'conductor size',
  ]
  const number = fc.constantFrom('0', '7', '6.4', '.5', '-2', '−2', '1,5', '1_000', '1e3', '', '12.', '٣', '4/0', '14', '250')
  const unit = fc.constantFrom(
    '', 'm', 'cm', 'mm', 'ft', 'in', 'M', 'A', 'mA', 'V', 'mV', 'W', 'kW', 'Ah', 'Wh', 'kWh', 'kg', 'g', 't', 'lb', '°C', 'C', '°F', 'F', '%', 'ohm', 'Ω', 'mΩ',
    'Mbit/s', 'kbit/s', 'Gbit/s', 'mm2', 'mm²', 'AWG', 'ft 6 in', 'ft 3.5 in', 'x',
  )
  const written = fc.tuple(fc.constantFrom('', ' ', 'AWG '), number, fc.constantFrom('', ' ', '  '), unit, fc.constantFrom('', ' ', '\n', 'x')).map(parts => parts.join(''))

  test.each(dimensions)('%s', dimension => {
    fc.assert(fc.property(written, text => {
      const { ok } = parseQuantity(text, dimension)
      const matches = quantityPattern(dimension).test(text)
      if (ok) expect(matches).toBe(true)
      // A pattern lets through a conductor of no area, and a gauge that is not made.
      else if (matches) expect([dimension, /^\s*0?\s*mm|AWG/.test(text)]).toEqual(['conductor size', true])
    }), { numRuns: 400 })
  })
})
