/** Findings (IDN): identifiers: MMSI, call sign, hull identification, beacons. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
