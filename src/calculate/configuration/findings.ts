/** Findings (CFG): configuration record: software and settings to restore after a replacement. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
