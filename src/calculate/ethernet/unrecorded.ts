/** What is missing from the record of networks that no one calculation stumbles over: without it a figure looks better than it is. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { NetworkResult } from '../../model/results/ethernet.js'
import type { OutsideLink, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'

type Networks = ReadonlyMap<Tag, Pick<NetworkResult, 'memberTags'>>

export const unrecordedIn = (vessel: Vessel, networks: Networks): readonly Gap[] => [
  ...switchGaps(vessel, networks), ...senderGaps(vessel, networks), ...networkGaps(vessel, networks), ...wirelessGaps(vessel), ...antennaGaps(vessel),
]

const switchGaps = ({ equipment }: Vessel, networks: Networks): readonly Gap[] => {
  const members = new Set([...networks.values()].flatMap(({ memberTags }) => memberTags))
  return equipment.filter(({ tag, kind, status }) => kind === ('network switch' satisfies EquipmentKindKey) && status !== 'removed' && !members.has(tag))
    .map(({ tag }) => ({ subjectTag: tag, reason: 'members and addresses: it is on no Ethernet network on record' }))
}

/** They are on a network for nothing else than to send. */
const senders: ReadonlySet<string> = new Set<EquipmentKindKey>(['camera', 'thermal camera', 'radar scanner', 'sonar module'])

function senderGaps(vessel: Vessel, networks: Networks): readonly Gap[] {
  const { equipment } = lookup(vessel)
  return [...networks].flatMap(([tag, { memberTags }]): readonly Gap[] => {
    const silent = memberTags.filter(member => senders.has(equipment.get(member)?.kind ?? '') && equipment.get(member)!.streams.length === 0)
    return silent.length === 0 ? [] : [{ subjectTag: tag, reason: `load of the links: the streams of ${inWords(silent)} are not recorded` }]
  })
}

function networkGaps(vessel: Vessel, networks: Networks): readonly Gap[] {
  const { equipment } = lookup(vessel)
  return vessel.ethernetNetworks.flatMap(({ tag, gatewayAddress, subnet, dynamicRange }): readonly Gap[] => {
    const members = networks.get(tag)?.memberTags ?? []
    const ways = vessel.outsideLinks.filter(link => equipmentOf(vessel, link) !== null && members.includes(link.equipmentTag!)).map(link => link.tag)
    const isGiven = members.some(member => (equipment.get(member)?.addressing ?? 'static') !== 'static') || vessel.wirelessNetworks.some(({ networkTag }) => networkTag === tag)
    return [
      ...(gatewayAddress !== null || ways.length === 0 ? [] : [{ subjectTag: tag, reason: `way out: ${inWords(ways)} ${ways.length === 1 ? 'leads' : 'lead'} out of it, and its gateway is not recorded` }]),
      ...(subnet === null || dynamicRange !== null || !isGiven ? [] : [{ subjectTag: tag, reason: 'free addresses: some are given out, and their range is not recorded, so that fewer are free than it seems' }]),
    ]
  })
}

/** Guests may well be led ashore only; without a network on cables there is none to name. */
const wirelessGaps = ({ wirelessNetworks, ethernetNetworks }: Vessel): readonly Gap[] =>
  wirelessNetworks.filter(({ networkTag, forGuests }) => networkTag === null && forGuests !== true && ethernetNetworks.length > 0).map(({ tag }) => ({ subjectTag: tag, reason: 'what it leads to: its network is not recorded' }))

const antennaGaps = (vessel: Vessel): readonly Gap[] =>
  vessel.outsideLinks.filter(link => (link.kind === 'mobile data' || link.kind === 'satellite') && link.antennaTags.length === 0 && equipmentOf(vessel, link) !== null)
    .map(({ tag }) => ({ subjectTag: tag, reason: 'its antennas: none is recorded; where it is built in, name the equipment itself' }))

function equipmentOf(vessel: Vessel, { equipmentTag }: OutsideLink): Tag | null {
  const item = lookup(vessel).equipment.get(equipmentTag ?? '')
  return item === undefined || item.status === 'removed' ? null : item.tag
}
