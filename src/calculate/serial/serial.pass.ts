/** Serial links: who talks to whom, at which rate, and how much of the line is in use. */
import type { SerialResults } from '../../model/results/serial.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function serialPass(_vessel: Vessel, _basis: Basis, _before: Upstream): SerialResults {
  return { notAssessed: [], findings: [] }
}
