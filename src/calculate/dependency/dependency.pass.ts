/** What needs what: the chain of each item to its source, what goes dead with each device, single points behind safety services. */
import type { DependencyResults } from '../../model/results/dependency.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function dependencyPass(_vessel: Vessel, _basis: Basis, _before: Upstream): DependencyResults {
  return { findings: [] }
}
