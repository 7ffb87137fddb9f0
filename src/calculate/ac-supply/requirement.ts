/** Makers of requirements: how each stands, in words. */
import type { Requirement } from '../../model/results/ac-supply.js'
import type { Comparison } from '../../model/results.js'

const maker = (state: Requirement['state']) => (words: string, comparison: Comparison | null = null): Requirement => ({ state, words, comparison })

export const met = maker('met')
export const missed = maker('missed')
export const doubtful = maker('doubtful')
export const notAssessed = maker('not assessed')
export const notRequired = maker('not required')
