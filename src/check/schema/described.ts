/** The schemas as plain data, for messages, for editors and for the manual of the format. */
import { z } from 'zod'
import type { Dimension } from '../../units/parse-quantity.js'
import { entryKinds, type KindKey } from './kinds.js'

/** What is used of JSON Schema, with the marks of fields.ts, which are taken out before it is handed on. */
export interface Described {
  readonly type?: string
  readonly description?: string
  readonly properties?: Readonly<Record<string, Described>>
  readonly required?: readonly string[]
  readonly additionalProperties?: boolean
  readonly items?: Described
  readonly enum?: readonly string[]
  readonly anyOf?: readonly Described[]
  readonly pattern?: string
  readonly minimum?: number
  readonly maximum?: number
  readonly format?: string
  readonly dimension?: Dimension
  readonly takes?: string
  readonly orText?: string
}

const known = new Map<KindKey, Described>()

/** One entry of a kind, as an author writes it. */
export function described(kind: KindKey): Described {
  const existing = known.get(kind)
  if (existing !== undefined) return existing
  // The generator's own type is wider than what it makes of these schemas.
  const { $schema: _, ...made } = z.toJSONSchema(entryKinds[kind].schema, { io: 'input', unrepresentable: 'any' })
  known.set(kind, made as Described)
  return made as Described
}

/** The part of an entry at a path of keys and list positions; null where the schema knows none. */
export const describedAt = (kind: KindKey, path: readonly PropertyKey[]): Described | null =>
  path.reduce<Described | null>((part, step) => (typeof step === 'number' ? part?.items : part?.properties?.[String(step)]) ?? null, described(kind))

export const keysOf = (part: Described | null): readonly string[] => Object.keys(part?.properties ?? {})
