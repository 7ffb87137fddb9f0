/** JSON as it stands in the pack: the same bytes for the same values, whatever order they were made in. */

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

/**
 * Indented JSON with sorted keys. Maps become objects; a field that is `undefined` is left out.
 *
 * Errors   throws at a number that JSON cannot hold: written as `null` it would read "not recorded"
 */
export const jsonOf = (value: unknown): string => `${JSON.stringify(plain(value, []), null, 2)}\n`

/** `null`, numbers, text, lists and objects only; `path` names the place in an error. */
function plain(value: unknown, path: readonly string[]): Json {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return value
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${path.join('.')} is ${value}, which JSON cannot hold`)
    return value
  }
  if (Array.isArray(value)) return value.map((item, i) => plain(item, [...path, String(i)]))
  if (typeof value === 'object') {
    const entries = value instanceof Map ? [...value].map(([key, of]) => [String(key), of] as const) : Object.entries(value)
    return Object.fromEntries(entries
      .filter(([, of]) => of !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, of]) => [key, plain(of, [...path, key])]))
  }
  throw new Error(`${path.join('.')} is a ${typeof value}, which JSON cannot hold`)
}
