/** What every label says, and whether it can be read at its size. */
import type { LabelsResults } from '../../model/results/labels.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function labelsPass(_vessel: Vessel, _basis: Basis, _before: Upstream): LabelsResults {
  return { notAssessed: [], findings: [] }
}
