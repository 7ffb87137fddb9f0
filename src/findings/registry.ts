/** Every kind of finding there is, from the lists of the stages and domains: the manual's chapter and the tests are made from it. */
import { findingKinds as dcDistributionKinds } from '../calculate/dc-distribution/findings.js'
import { findingKinds as feedingKinds } from '../calculate/feeding/findings.js'
import { findingKinds as wirewayKinds } from '../calculate/wireways/findings.js'
import { checkFindingKinds } from '../check/findings.js'
import { loadFindingKinds } from '../load/findings.js'
import type { FindingKind } from './finding.js'

// Kinds carry evidence of every shape; only the fields common to all of them are read from the list.
export type AnyFindingKind = FindingKind<any>

export const findingKinds: readonly AnyFindingKind[] = [
  ...loadFindingKinds, ...checkFindingKinds, ...wirewayKinds, ...feedingKinds, ...dcDistributionKinds,
]
