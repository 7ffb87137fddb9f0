/** Suggests the word an author may have meant. */
import { closest, distance } from 'fastest-levenshtein'

/** The candidate that differs least from `word`, or null when none is near enough to be what was meant. */
export function nearest(word: string, candidates: readonly string[]): string | null {
  if (candidates.length === 0) return null
  const lower = word.toLowerCase()
  const alike = candidates.find(candidate => candidate.toLowerCase() === lower)
  if (alike !== undefined) return alike
  const found = closest(word, candidates)
  const most = Math.max(Math.floor(word.length / 3), lettersOf(word) === lettersOf(found) ? transposition : 0)
  return distance(word, found) <= most ? found : null
}

/** Two letters that have changed places count as two. */
const transposition = 2
const lettersOf = (word: string): string => [...word].sort().join('')

/** The same as context of a finding: `nearest`, where there is one. */
export function nearestOf(word: string, candidates: readonly string[]): Readonly<Record<string, string>> {
  const found = nearest(word, candidates)
  return found === null ? {} : { nearest: found }
}

/** `; did you mean "loads"?`, or nothing. */
export const didYouMean = (suggestion: string | undefined): string => (suggestion === undefined ? '' : `; did you mean "${suggestion}"?`)
