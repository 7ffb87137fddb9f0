/** Findings (PLC): placement: compasses, transducers, navigation lights, radar, mass and moments. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
