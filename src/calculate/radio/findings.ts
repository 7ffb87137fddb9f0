/** Findings (RAD): radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
