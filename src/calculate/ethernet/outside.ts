/** Wireless networks and links to the outside: how they are secured, and how antenna, equipment and network hang together. */
import { type Finding, find } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type RoutingResults } from '../../model/results.js'
import type { AntennaWay, NetworkResult, OutsideWay, WirelessSecurity } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { OutsideLink, Tag, Vessel, WirelessNetwork } from '../../model/vessel.js'
import { equipmentKind, type EquipmentKindKey } from '../../references/equipment-kinds.js'
import { type EdgeGraph, graphOf, walkOut } from '../graph.js'
import { antennaNotJoined, outsideLinkWithoutEquipment, wirelessSecurityNotRecorded, wirelessSecurityWeak } from './findings.js'
import type { Part } from './part.js'

// --- wireless --------------------------------------------------------------------------------------------------------
/** Words for no security, and names of methods that are broken. */
const openWords = /^(open|none|no|without|unsecured|not secured|no security|no password|no passphrase)$/i
const weakWords = /\bwep\b|\btkip\b|^wpa1?\b(?!.*wpa[23])/i

export const securityOf = ({ security }: WirelessNetwork): WirelessSecurity =>
  (security === null ? 'not recorded' : openWords.test(security.trim()) ? 'open' : weakWords.test(security.trim()) ? 'weak' : 'recorded')

export function wirelessPart(vessel: Vessel): Part<ReadonlyMap<Tag, WirelessSecurity>> {
  const { equipment } = lookup(vessel)
  const rated = new Map(vessel.wirelessNetworks.map(network => [network.tag, securityOf(network)]))
  const isThere = (tag: Tag | null): boolean => tag !== null && equipment.has(tag) && equipment.get(tag)!.status !== 'removed'
  return {
    value: rated,
    findings: vessel.wirelessNetworks.flatMap((network): readonly Finding[] => {
      const about = { subject: { kind: 'wireless network', id: network.tag }, evidence: {}, limit: null }
      const security = rated.get(network.tag)
      if (security === 'not recorded') return [find(wirelessSecurityNotRecorded, { ...about, field: null, context: { name: network.name } })]
      return (security === 'open' || security === 'weak') && network.forGuests !== true ? [find(wirelessSecurityWeak, {
        ...about, field: 'security', context: { name: network.name, how: security === 'open' ? 'open' : `secured by ${network.security}` },
      })] : []
    }),
    notAssessed: vessel.wirelessNetworks.flatMap(({ tag, accessPointTag }) =>
      (isThere(accessPointTag) ? [] : [{ subjectTag: tag, reason: 'what is lost with it: the access point that makes it is not recorded' }])),
  }
}

// --- outside ---------------------------------------------------------------------------------------------------------
export function outsidePart(vessel: Vessel, routing: RoutingResults, networks: ReadonlyMap<Tag, Pick<NetworkResult, 'memberTags' | 'gatewayTags'>>): Part<ReadonlyMap<Tag, OutsideWay>> {
  const antennaCables = antennaGraph(vessel)
  const ways = new Map(vessel.outsideLinks.map(link => [link.tag, wayOf(vessel, routing, networks, antennaCables, link)]))
  return {
    value: ways,
    findings: vessel.outsideLinks.flatMap(link => outsideFindings(link, ways.get(link.tag)!)),
    notAssessed: vessel.outsideLinks.flatMap(link => gapsOf(link, ways.get(link.tag)!)),
  }
}

function wayOf(
  vessel: Vessel, routing: RoutingResults, networks: ReadonlyMap<Tag, Pick<NetworkResult, 'memberTags' | 'gatewayTags'>>, antennaCables: EdgeGraph, link: OutsideLink,
): OutsideWay {
  const { equipment } = lookup(vessel)
  const item = equipment.get(link.equipmentTag ?? '')
  const equipmentTag = item === undefined || item.status === 'removed' ? null : item.tag
  return {
    equipmentTag,
    networks: [...networks].filter(([, { memberTags }]) => equipmentTag !== null && memberTags.includes(equipmentTag))
      .map(([tag, { gatewayTags }]) => ({ tag, gateway: gatewayTags.includes(equipmentTag!) })),
    antennas: link.antennaTags.filter(tag => equipment.get(tag)?.status !== 'removed').map(tag => antennaWay(vessel, routing, antennaCables, tag, equipmentTag)),
    neededByTags: vessel.equipment.filter(({ status, dataFromTags }) => status !== 'removed' && dataFromTags.includes(link.tag)).map(({ tag }) => tag),
  }
}

/** Cables by which an antenna may be joined: coaxial as a rule; antennas with a modem in them have a network cable. */
const antennaGraph = (vessel: Vessel): EdgeGraph => {
  const { cableTypes, items } = lookup(vessel)
  const uses = new Set(['coax', 'ethernet'])
  return graphOf(vessel.cables.filter(({ status, typeTag, from, to }) =>
    status !== 'removed' && uses.has(cableTypes.get(typeTag ?? '')?.use ?? '') && [from, to].every(({ tag }) => items.get(tag)?.status !== 'removed'))
    .map(({ tag, from, to }) => ({ tag, from: from.tag, to: to.tag, weight: 1 })))
}

function antennaWay(vessel: Vessel, routing: RoutingResults, graph: EdgeGraph, tag: Tag, equipmentTag: Tag | null): AntennaWay {
  const { equipment, cables } = lookup(vessel)
  const goesOn = (at: Tag): boolean => {
    const kind = equipment.get(at)?.kind ?? 'other'
    return kind === ('antenna splitter' satisfies EquipmentKindKey) || equipmentKind(kind).joins !== 'nothing'
  }
  const { tree } = walkOut(graph, tag, goesOn)
  const end = tree.findIndex(({ far }) => far === equipmentTag)
  const cableTags: Tag[] = []
  for (let i: number | null = end < 0 ? null : end; i !== null; i = tree[i]!.parent) cableTags.unshift(tree[i]!.tag)
  const lengths = cableTags.map(cable => cableLengthM(routing.byCable.get(cable)))
  return {
    tag, builtIn: tag === equipmentTag,
    cableTags: end < 0 ? null : cableTags,
    lengthM: end < 0 ? null : lengths.reduce((sum, lengthM) => (sum === null || lengthM === null ? null : sum + lengthM), 0),
    planned: equipment.get(tag)?.status === 'planned' || cableTags.some(cable => cables.get(cable)?.status === 'planned'),
  }
}

function outsideFindings(link: OutsideLink, { equipmentTag, antennas }: OutsideWay): readonly Finding[] {
  const about = { subject: { kind: 'outside link', id: link.tag }, evidence: {}, limit: null }
  if (equipmentTag === null) {
    return [find(outsideLinkWithoutEquipment, {
      ...about, field: 'equipmentTag', context: { words: link.equipmentTag === null ? 'no equipment is recorded that makes it' : `its equipment ${link.equipmentTag} is recorded as removed` },
    })]
  }
  // What is planned will come with its cable.
  return antennas.filter(({ builtIn, cableTags, planned }) => !builtIn && cableTags === null && !planned)
    .map(({ tag }) => find(antennaNotJoined, { ...about, field: 'antennaTags', context: { antenna: tag, equipment: equipmentTag } }))
}

function gapsOf({ tag }: OutsideLink, { equipmentTag, networks }: OutsideWay): readonly Gap[] {
  return equipmentTag !== null && networks.length === 0 ? [{ subjectTag: tag, reason: 'which network it leads out of: no network cable joins its equipment to one' }] : []
}
