/** JSON Schemas (draft 2020-12) for editors, which complete and check a file while it is written. Made from the schemas of the check stage. */
import { kindNames } from '../load/entry-kinds.js'
import { described, type Described } from './schema/described.js'
import { entryKinds, type KindKey, kindKeys } from './schema/kinds.js'

type JsonSchema = Readonly<Record<string, unknown>>

/** The schema for a file of any kinds, which serves every YAML file of a folder. */
export const anyKindsFileName = 'vessel-folder.schema.json'

/** One schema for a file of any kinds, and one for a file that holds one kind alone; by file name. */
export function jsonSchemas(): ReadonlyMap<string, JsonSchema> {
  const any: readonly [string, JsonSchema] = [anyKindsFileName, fileSchema('File of a vessel folder', kindKeys)]
  return new Map([any, ...kindKeys.map(kind => [`${kind}.schema.json`, fileSchema(entryKinds[kind].about, [kind])] as const)])
}

function fileSchema(title: string, kinds: readonly KindKey[]): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title,
    type: 'object',
    properties: Object.fromEntries(kinds.map(kind => [kind, kindSchema(kind)])),
    additionalProperties: false,
  }
}

/** A kind with nothing below it yet is accepted. */
function kindSchema(kind: KindKey): JsonSchema {
  const entry = forEditors(described(kind))
  const about = { description: entryKinds[kind].about }
  return kindNames[kind].shape === 'single' ? { ...about, anyOf: [entry, none] } : { ...about, type: ['array', 'null'], items: entry }
}

const none: JsonSchema = { type: 'null' }

/** Our marks taken out; what they stand for, and empty values of keys that may be left out, put in. */
function forEditors({ dimension: _dimension, takes: _takes, orText, properties, items, anyOf, ...rest }: Described): JsonSchema {
  const schema = {
    ...rest,
    ...(anyOf === undefined ? {} : { anyOf: anyOf.map(forEditors) }),
    ...(items === undefined ? {} : { items: forEditors(items) }),
    ...(properties === undefined ? {} : {
      properties: Object.fromEntries(Object.entries(properties).map(([key, value]) =>
        [key, rest.required?.includes(key) ? forEditors(value) : orNone(forEditors(value))])),
    }),
  }
  return orText === undefined ? schema : oneOf(schema, { type: 'string' })
}

const orNone = (schema: JsonSchema): JsonSchema => oneOf(schema, none)

/** The description stays outside, where editors look for it. */
const oneOf = ({ description, ...schema }: JsonSchema, other: JsonSchema): JsonSchema =>
  ({ ...(description === undefined ? {} : { description }), anyOf: [...('anyOf' in schema ? schema['anyOf'] as JsonSchema[] : [schema]), other] })
