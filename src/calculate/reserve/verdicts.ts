/** A verdict from what stands against, and what is not known; the best of several. */
import type { ReserveVerdict } from '../../model/results/reserve.js'

/** What is not known does not count where it does not fit anyhow. */
export const verdictBy = (against: readonly string[], unknown: readonly string[]): { readonly verdict: ReserveVerdict; readonly reasons: readonly string[] } => ({
  verdict: against.length > 0 ? 'does not fit' : unknown.length > 0 ? 'not assessed' : 'fits',
  reasons: against.length > 0 ? against : unknown,
})

interface Judged { readonly verdict: ReserveVerdict }
const rank = { 'fits': 0, 'not assessed': 1, 'does not fit': 2 } as const

/** Those that fit before those of which something is not known, before the others; else in the order they come in. */
export const byVerdict = (a: Judged, b: Judged): number => rank[a.verdict] - rank[b.verdict]

export const bestOf = (answers: readonly Judged[]): ReserveVerdict => answers.toSorted(byVerdict)[0]?.verdict ?? 'does not fit'
