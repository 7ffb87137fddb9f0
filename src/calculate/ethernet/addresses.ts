/** Addresses of each network: what is set, what is given out, what is free, and what cannot be. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, lookup } from '../../model/lookup.js'
import type { NetworkAddresses } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { Equipment, EthernetNetwork, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import {
  addressesNotRecorded, addressNotValid, addressOfSubnetItself, addressOutsideSubnet, addressRepeated, dynamicRangeUnusable, gatewayNotOnBoard,
  gatewayOutsideSubnet, staticInDynamicRange,
} from './address-findings.js'
import { freeAddressesMethod } from './free-addresses.calc.js'
import { type Address, firstHost, isIn, keepsEnds, lastHost, readAddress, readSubnet, type Subnet, written } from './ip.js'
import type { Part } from './part.js'

export interface AddressBook { readonly byNetwork: ReadonlyMap<Tag, { readonly addresses: NetworkAddresses; readonly gatewayTags: readonly Tag[] }> }

/** A network as it can be reckoned with. */
interface Read {
  readonly network: EthernetNetwork
  readonly subnet: Subnet | null
  readonly range: { readonly first: Address; readonly last: Address } | null
  readonly gateway: Address | null
  /** What its cables reach, and what has an address of its range without being on any cable: that is on the air. */
  readonly members: readonly Equipment[]
  readonly cabledTags: ReadonlySet<Tag>
  readonly free: NetworkAddresses['free']
  readonly nextFree: string | null
}

export function addressesPart(vessel: Vessel, membersOf: ReadonlyMap<Tag, readonly Tag[]>): Part<AddressBook> {
  const cabled = new Set([...membersOf.values()].flat())
  const onAir = vessel.equipment.filter(({ tag, status, address }) => address !== null && status !== 'removed' && !cabled.has(tag))
  const reads = vessel.ethernetNetworks.map(network => read(vessel, network, membersOf.get(network.tag) ?? [], onAir))
  const ofItem = grouped(reads.flatMap(each => each.members.map(item => ({ item, read: each }))), ({ item }) => [item])
  return {
    value: { byNetwork: new Map(reads.map(each => [each.network.tag, { addresses: addressesOf(each), gatewayTags: gatewayTagsOf(each) }])) },
    findings: [
      ...reads.flatMap(each => networkFindings(each)),
      ...[...ofItem].flatMap(([item, on]) => itemFindings(item, on.map(each => each.read))),
      ...repeated(reads),
    ],
    notAssessed: reads.flatMap(each => gapsOf(each)),
  }
}

const isSet = ({ address, addressing }: Equipment): boolean => address !== null && addressing !== 'dynamic'
const ownAddress = (item: Equipment): Address | null => (item.address === null ? null : readAddress(item.address))

function read(vessel: Vessel, network: EthernetNetwork, cabledTags: readonly Tag[], onAir: readonly Equipment[]): Read {
  const { equipment } = lookup(vessel)
  const subnet = network.subnet === null ? null : readSubnet(network.subnet)
  const isOnIt = (item: Equipment): boolean => { const own = ownAddress(item); return own !== null && subnet !== null && isIn(own, subnet) }
  const members = [...cabledTags.flatMap(tag => equipment.get(tag) ?? []), ...onAir.filter(isOnIt)]
  const [first, last] = (network.dynamicRange ?? []).map(readAddress)
  const range = first != null && last != null ? { first, last } : null
  const gateway = network.gatewayAddress === null ? null : readAddress(network.gatewayAddress)
  const base = { network, subnet, range, gateway, members, cabledTags: new Set(cabledTags) }
  if (subnet === null) return { ...base, free: { status: 'not computed', method: freeAddressesMethod.id, reason: 'the address range of the network is not recorded' }, nextFree: null }
  if (subnet.version === 6) return { ...base, free: { status: 'not computed', method: freeAddressesMethod.id, reason: 'addresses of IPv6 are not counted: there are more than enough' }, nextFree: null }
  const given = range !== null && rangeFault(range, subnet) === null ? range : null
  const isGiven = (value: bigint): boolean => given !== null && value >= given.first.value && value <= given.last.value
  const isHost = (value: bigint): boolean => value >= firstHost(subnet) && value <= lastHost(subnet)
  const all = [...members.filter(isSet).map(ownAddress), gateway].flatMap(address => (address === null || !isIn(address, subnet) ? [] : [address.value]))
  const taken = new Set(all.filter(value => isHost(value) && !isGiven(value)))
  const free = runMethod(freeAddressesMethod, {
    prefixNumber: subnet.prefixNumber, dynamicCount: given === null ? 0 : hostsIn(given, subnet), takenCount: taken.size,
  })
  return { ...base, free, nextFree: nextFree(subnet, given, taken) }
}

/** Addresses of the range that a device can have. */
const hostsIn = ({ first, last }: { readonly first: Address; readonly last: Address }, subnet: Subnet): number => {
  const [from, to] = [first.value < firstHost(subnet) ? firstHost(subnet) : first.value, last.value > lastHost(subnet) ? lastHost(subnet) : last.value]
  return to < from ? 0 : Number(to - from) + 1
}

/** The lowest; what is given out is stepped over at once. */
function nextFree(subnet: Subnet, range: Read['range'], taken: ReadonlySet<bigint>): string | null {
  for (let value = firstHost(subnet); value <= lastHost(subnet); value++) {
    if (range !== null && value >= range.first.value && value <= range.last.value) value = range.last.value
    else if (!taken.has(value)) return written(value, subnet)
  }
  return null
}

function addressesOf({ members, cabledTags, subnet, free, nextFree: next }: Read): NetworkAddresses {
  return {
    members: members.map(({ tag, address, addressing }) => ({ tag, address, addressing, cabled: cabledTags.has(tag) })),
    subnet: subnet?.text ?? null,
    firstHost: subnet === null ? null : written(firstHost(subnet), subnet),
    lastHost: subnet === null ? null : written(lastHost(subnet), subnet),
    free, nextFree: next,
  }
}

const sameAddress = (a: Address | null, b: Address | null): boolean => a !== null && b !== null && a.version === b.version && a.value === b.value
const gatewayTagsOf = ({ gateway, members }: Read): readonly Tag[] => members.filter(item => sameAddress(ownAddress(item), gateway)).map(({ tag }) => tag)

/** Why what is given out cannot be; null when it can. */
function rangeFault({ first, last }: { readonly first: Address; readonly last: Address }, subnet: Subnet): string | null {
  if (first.value > last.value || first.version !== last.version) return 'ends before it begins'
  return isIn(first, subnet) && isIn(last, subnet) ? null : `is not within ${subnet.text}`
}

// --- findings --------------------------------------------------------------------------------------------------------
const exampleSubnet = '192.168.50.0/24'
const exampleAddress = '192.168.50.10'
const exampleRange = '192.168.50.100-192.168.50.199'

function networkFindings(each: Read): readonly Finding[] {
  const { network, subnet, range, gateway, members } = each
  const about = { subject: { kind: 'Ethernet network', id: network.tag }, evidence: {}, limit: null }
  const wrong = (field: string, text: string | null, isRead: boolean, expected: string, example: string): readonly Finding[] =>
    (text === null || isRead ? [] : [find(addressNotValid, { ...about, field, context: { written: text, expected, example } })])
  const rangeText = network.dynamicRange === null ? null : network.dynamicRange.join('-')
  const fault = range === null || subnet === null ? null : rangeFault(range, subnet)
  const unrecorded = members.filter(isUnrecorded)
  // Where nothing is written down of addresses, the network as a whole is not assessed.
  const inUse = network.subnet !== null || members.some(({ address }) => address !== null)
  return [
    ...wrong('subnet', network.subnet, subnet !== null, 'a range of addresses with its prefix', exampleSubnet),
    ...wrong('gatewayAddress', network.gatewayAddress, gateway !== null, 'an address', exampleAddress),
    ...wrong('dynamicRange', rangeText, range !== null, 'a first and a last address', exampleRange),
    ...(fault === null ? [] : [find(dynamicRangeUnusable, { ...about, field: 'dynamicRange', context: { range: rangeText ?? '', fault } })]),
    ...(gateway === null || subnet === null || isIn(gateway, subnet) ? [] : [find(gatewayOutsideSubnet, { ...about, field: 'gatewayAddress', context: { address: gateway.text, subnet: subnet.text } })]),
    ...(gateway === null || gatewayTagsOf(each).length > 0 || mayHaveOthers(each) || (subnet !== null && !isIn(gateway, subnet)) ? [] : [find(gatewayNotOnBoard, { ...about, field: 'gatewayAddress', context: { address: gateway.text } })]),
    ...(!inUse || unrecorded.length === 0 ? [] : [find(addressesNotRecorded, { ...about, field: null, evidence: { itemCount: unrecorded.length }, context: { items: inWords(unrecorded.map(({ tag }) => tag)) } })]),
  ]
}

/** Plain switches have no address. */
const isUnrecorded = ({ address, addressing, kind }: Equipment): boolean => address === null && addressing === null && kind !== 'network switch'

/** The router may be known by the address that it has on another of its networks. */
const mayHaveOthers = ({ subnet, members, gateway }: Read): boolean =>
  subnet !== null && gateway !== null && isIn(gateway, subnet) && members.some(item => {
    const own = ownAddress(item)
    return item.kind === 'mobile-data router' && own !== null && !isIn(own, subnet)
  })

function itemFindings(item: Equipment, on: readonly Read[]): readonly Finding[] {
  if (item.address === null) return []
  const about = { subject: { kind: 'equipment', id: item.tag }, field: 'address', evidence: {}, limit: null }
  const own = ownAddress(item)
  if (own === null) return [find(addressNotValid, { ...about, context: { written: item.address, expected: 'an address', example: exampleAddress } })]
  if (!isSet(item)) return []
  const known = on.filter((each): each is Read & { readonly subnet: Subnet } => each.subnet !== null)
  const home = known.find(({ subnet }) => isIn(own, subnet))
  if (home === undefined) {
    return known.length === 0 || known.length < on.length ? [] : [find(addressOutsideSubnet, { ...about, context: { address: own.text, subnets: inWords(known.map(({ subnet }) => subnet.text)), ...freeOf(known[0]!) } })]
  }
  const { subnet, range, network } = home
  const isEnd = keepsEnds(subnet) && (own.value === subnet.first || own.value === subnet.last)
  const isGiven = range !== null && rangeFault(range, subnet) === null && own.value >= range.first.value && own.value <= range.last.value
  return [
    ...(isEnd ? [find(addressOfSubnetItself, { ...about, context: { address: own.text, which: own.value === subnet.first ? 'the first, the name' : 'the last, the call to all', subnet: subnet.text, ...freeOf(home) } })] : []),
    ...(isGiven && item.addressing !== 'reserved' ? [find(staticInDynamicRange, { ...about, context: { address: own.text, range: network.dynamicRange!.join('-'), ...freeOf(home) } })] : []),
  ]
}

const freeOf = ({ nextFree: next }: Read): { readonly free?: string } => (next === null ? {} : { free: next })

/** Among all networks of one range; of unknown range each by itself. */
function repeated(reads: readonly Read[]): readonly Finding[] {
  const byRange = grouped(reads, ({ subnet, network }) => [subnet?.text ?? `network ${network.tag}`])
  const seen = new Set<string>()
  return [...byRange.values()].flatMap(alike => {
    const items = [...new Set(alike.flatMap(({ members }) => members))].filter(item => isSet(item) && ownAddress(item) !== null)
    return [...grouped(items, item => [ownAddress(item)!.text])].flatMap(([address, sharing]) => {
      const key = sharing.map(({ tag }) => tag).join(' ')
      if (sharing.length < 2 || seen.has(key)) return []
      seen.add(key)
      const last = sharing.at(-1)!
      return [find(addressRepeated, {
        subject: { kind: 'equipment', id: last.tag }, field: 'address', evidence: {}, limit: null,
        context: { address, others: inWords(sharing.slice(0, -1).map(({ tag }) => tag)), ...freeOf(alike[0]!) },
      })]
    })
  })
}

function gapsOf(each: Read): readonly Gap[] {
  const { network, members, gateway } = each
  return [
    ...(network.subnet === null && members.length > 0 ? [{ subjectTag: network.tag, reason: 'addresses: the address range of the network is not recorded' }] : []),
    ...(gateway !== null && gatewayTagsOf(each).length === 0 && mayHaveOthers(each)
      ? [{ subjectTag: network.tag, reason: 'gateway: the address that the router has on this network is not recorded, only another' }] : []),
  ]
}
