/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { EthernetResults } from '../../model/results/ethernet.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'

export function ethernetPass(_vessel: Vessel, _basis: Basis, _before: Upstream): EthernetResults {
  return { notAssessed: [], findings: [] }
}
