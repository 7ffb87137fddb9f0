/** Ethernet: ports, power over the cable, lengths, addresses, rings, streams; links to the outside. */
import type { EthernetResults, NetworkResult } from '../../model/results/ethernet.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { addressesPart } from './addresses.js'
import { linksPart, portFindings } from './links.js'
import { outsidePart, wirelessPart } from './outside.js'
import { powerPart } from './power.js'
import { ringsPart } from './rings.js'
import { streamsPart } from './streams.js'
import { unrecordedIn } from './unrecorded.js'
import { ethernetPorts, portsOf, reachOf, wiringOf } from './wiring.js'

export function ethernetPass(vessel: Vessel, _basis: Basis, before: Upstream): EthernetResults {
  const wiring = wiringOf(vessel)
  const ports = new Map(vessel.equipment.filter(item => item.status !== 'removed' && ethernetPorts(item).length > 0).map(item => [item.tag, portsOf(vessel, item, wiring)]))
  const reaches = new Map(vessel.ethernetNetworks.map(network => [network.tag, reachOf(vessel, network, wiring)]))
  const links = linksPart(vessel, before.routing, wiring)
  const power = powerPart(vessel, before, links.value, ports)
  const addresses = addressesPart(vessel, new Map([...reaches].map(([tag, { memberTags }]) => [tag, memberTags])))
  const rings = ringsPart(vessel, wiring)
  const streams = streamsPart(vessel, wiring, links.value)
  const networks = new Map([...reaches].map(([tag, reach]): [string, NetworkResult] => [tag, { ...reach, ...addresses.value.byNetwork.get(tag)! }]))
  const wireless = wirelessPart(vessel)
  const outside = outsidePart(vessel, before.routing, networks)
  const parts = [links, power, addresses, rings, streams, wireless, outside]
  return {
    links: streams.value.links, ports, networks, power: power.value, rings: rings.value, streams: streams.value.streams,
    wirelessSecurity: wireless.value, outsideLinks: outside.value,
    notAssessed: [...parts.flatMap(part => part.notAssessed), ...unrecordedIn(vessel, reaches)],
    findings: [...portFindings(vessel, ports), ...parts.flatMap(part => part.findings)],
  }
}
