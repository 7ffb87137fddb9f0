/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { Finding } from '../../findings/finding.js'
import type { Gap } from './gap.js'

export interface EthernetResults {
  readonly notAssessed: readonly Gap[]
  readonly findings: readonly Finding[]
}
