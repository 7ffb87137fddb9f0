/** Findings (SER): serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
