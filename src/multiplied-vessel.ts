/** A vessel many times the size of another, to see how the work grows with it. */
import type { Vessel } from './model/vessel.js'

/**
 * The vessel with everything in it `times` over, each copy complete in itself: its tags, and every reference to them, end
 * in the number of the copy. A larger vessel is used in no more ways: the operating modes are those of the one.
 */
export function multipliedVessel(vessel: Vessel, times: number): Vessel {
  const copies = Array.from({ length: times }, (_, i) => withTags(vessel, tag => `${tag}+${i + 1}`))
  const entries = Object.entries(vessel).map(([key, value]) =>
    [key, Array.isArray(value) && key !== 'operatingModes' ? copies.flatMap(copy => copy[key as keyof Vessel] as readonly unknown[]) : value])
  // Lists stay lists of what they held, everything else is as it was.
  return Object.fromEntries(entries) as Vessel
}

/** By their names, which the model keeps to: `tag`, and whatever ends in `Tag` or `Tags`. */
const isTagField = (name: string): boolean => name === 'tag' || (/Tags?$/.test(name) && name !== 'modeTag')

function withTags<T>(value: T, rename: (tag: string) => string, field = ''): T {
  if (typeof value === 'string') return (isTagField(field) ? rename(value) : value) as T
  if (Array.isArray(value)) return value.map(item => withTags(item, rename, field)) as T
  if (value !== null && typeof value === 'object') {
    // What a cable's end holds is fields again, not a tag.
    return Object.fromEntries(Object.entries(value).map(([name, of]) => [name, withTags(of, rename, name)])) as T
  }
  return value
}
