/** Networks for the tests: switches and devices with ports, and the cables between them. */
import { ethernetPass } from '../../../src/calculate/ethernet/index.js'
import { blankPort } from '../../../src/model/blank.js'
import type { EthernetLink, EthernetResults } from '../../../src/model/results/ethernet.js'
import type { Cable, Equipment, OutsideLink, Port, Vessel, WirelessNetwork } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCable, aCableType, anEquipment, aNetwork, aVessel } from '../../support/vessel-builder.js'
import { upstreamOf } from '../reserve/support.js'

export const port = (name: string, given: Partial<Port> = {}): Port => ({ ...blankPort(name, 'ethernet'), speedMbitPerS: 1000, ...given })

/** Ports 1 to `count`; `given` for some of them by name. */
export const aSwitch = (tag: string, count: number, given: Partial<Equipment> = {}, ports: Readonly<Record<string, Partial<Port>>> = {}): Equipment => anEquipment({
  tag, kind: 'network switch', passesEthernet: true, ports: Array.from({ length: count }, (_, i) => port(String(i + 1), ports[String(i + 1)])), ...given,
})
export const aDevice = (tag: string, given: Partial<Equipment> = {}, of: Partial<Port> = {}): Equipment => anEquipment({ tag, kind: 'display', ports: [port('lan', of)], ...given })

export const link = (tag: string, from: string, to: string, given: Partial<Omit<Cable, 'tag' | 'from' | 'to'>> = {}): Cable =>
  aCable({ tag, from, to, typeTag: 'ETH', carries: 'none', lengthM: 10, ...given })

export const networkVessel = (given: Partial<Vessel>): Vessel => aVessel({
  cableTypes: [aCableType({ tag: 'ETH', use: 'ethernet', cores: 8 }), aCableType({ tag: 'CX', use: 'coax' })],
  ethernetNetworks: [aNetwork({ tag: 'LAN', switchTags: ['N1'] })],
  ...given,
})

export const aWireless = (given: Partial<WirelessNetwork>): WirelessNetwork =>
  ({ tag: 'WL1', name: 'Tern', purpose: null, accessPointTag: 'K4', networkTag: null, band: null, channel: null, security: 'WPA3', forGuests: null, ...given })
export const anOutside = (given: Partial<OutsideLink> = {}): OutsideLink => ({
  tag: 'EX1', name: 'Mobile data', purpose: null, kind: 'mobile data', equipmentTag: 'K3', antennaTags: [], downMbitPerS: null, upMbitPerS: null, provider: null, priorityNumber: null, coverage: null, ...given,
})

export const ethernetOf = (vessel: Vessel): EthernetResults => ethernetPass(vessel, bases[vessel.basis], upstreamOf(vessel))
export const linkOf = ({ links }: EthernetResults, tag: string): EthernetLink => links.find(each => each.tag === tag)!
/** `ETH101 W1` */
export const foundIn = ({ findings }: EthernetResults): readonly string[] => findings.map(({ id, subject }) => `${id} ${subject.id}`)
