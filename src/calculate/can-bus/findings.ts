/** Findings (CAN): cAN buses: lengths, supply, load, terminators, instances, and what room is left. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
