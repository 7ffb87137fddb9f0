/** What each part of the pass hands on: its values, what it found, what it could not assess. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from '../../model/results/gap.js'

export interface Part<T> { readonly value: T; readonly findings: readonly Finding[]; readonly notAssessed: readonly Gap[] }
