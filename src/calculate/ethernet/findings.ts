/** Findings (ETH): ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { AnyFindingKind } from '../../findings/finding.js'

export const findingKinds: readonly AnyFindingKind[] = []
