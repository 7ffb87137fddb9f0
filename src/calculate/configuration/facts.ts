/** What the entries of the data say already about how a device is to be set: nobody has to write that twice. */
import ipaddr from 'ipaddr.js'
import { lookup } from '../../model/lookup.js'
import type { RestoreFact } from '../../model/results/configuration.js'
import type { Circuit, Equipment, EthernetNetwork, Panel, SerialLink, Tag, Vessel } from '../../model/vessel.js'
import { sendsIdentity } from '../../references/configured-kinds.js'
import { say } from '../../units/format.js'

type Value = RestoreFact['value']
const fact = (name: string, value: Value | null, from: string, remark: string | null = null): readonly RestoreFact[] =>
  (value === null ? [] : [{ name, value, from, remark }])

/** In the order in which a device is set up: network, bus, serial lines, what it measures, who it is. */
export function factsOf(vessel: Vessel, item: Equipment): readonly RestoreFact[] {
  return [
    ...networkFacts(vessel, item),
    ...fact('Device instance', item.deviceInstanceNumber === null ? null : String(item.deviceInstanceNumber), 'its entry'),
    ...serialFacts(vessel, item),
    ...wirelessFacts(vessel, item.tag),
    ...depthFacts(item),
    ...identityFacts(vessel, item),
  ]
}

function networkFacts(vessel: Vessel, { address, addressing, macAddress }: Equipment): readonly RestoreFact[] {
  const network = address === null ? undefined : vessel.ethernetNetworks.find(each => isWithin(address, each))
  const ways = { static: 'set on the device', reserved: 'given out, always the same', dynamic: 'given out' }
  return [
    ...fact('Network address', address, 'its entry'),
    ...fact('How it comes by its address', addressing === null ? null : ways[addressing], 'its entry'),
    ...(address === null || addressing !== 'static' ? [] : [
      ...fact('Subnet', network?.subnet ?? null, `network ${network?.tag}`),
      ...fact('Gateway', network?.gatewayAddress ?? null, `network ${network?.tag}`),
    ]),
    ...(addressing !== 'reserved' ? [] : fact('Hardware address', macAddress, 'its entry', 'a new device has another: change it where addresses are given out')),
  ]
}

function isWithin(address: string, { subnet }: EthernetNetwork): boolean {
  if (subnet === null || !ipaddr.isValid(address) || !ipaddr.isValidCIDR(subnet)) return false
  const [parsed, range] = [ipaddr.parse(address), ipaddr.parseCIDR(subnet)]
  return parsed.kind() === range[0].kind() && parsed.match(range)
}

// --- serial lines ----------------------------------------------------------------------------------------------------
function serialFacts({ serialLinks }: Vessel, { tag, forwards }: Equipment): readonly RestoreFact[] {
  return [
    ...serialLinks.flatMap(link => [
      ...[link.talker, ...link.listeners].filter(end => end.tag === tag).flatMap(({ terminal }) =>
        fact(`Rate${at(terminal)}`, link.baudRateBaud === null ? null : { quantity: 'baudRateBaud', value: link.baudRateBaud, words: '' }, `link ${link.tag}`)),
      ...(link.talker.tag === tag ? fact(`Sentences sent${at(link.talker.terminal)}`, sentencesText(link), `link ${link.tag}`) : []),
    ]),
    ...forwards.flatMap(({ fromTerminal, toTerminal, only }) => fact(`Passed on from ${fromTerminal} to ${toTerminal}`, only === null ? 'all' : `${only.join(', ')} only`, 'its entry')),
  ]
}

const at = (terminal: string | null): string => (terminal === null ? '' : ` at ${terminal}`)

const sentencesText = ({ sentences }: SerialLink): string | null =>
  sentences.length === 0 ? null : sentences.map(({ formatter, ratePerS }) => (ratePerS === null ? formatter : `${formatter} ${ratePerS}/s`)).join(', ')

// --- wireless networks and outside links -----------------------------------------------------------------------------
function wirelessFacts({ wirelessNetworks, outsideLinks }: Vessel, tag: Tag): readonly RestoreFact[] {
  return [
    ...wirelessNetworks.filter(({ accessPointTag }) => accessPointTag === tag).flatMap(({ tag: network, name, band, channel, security, forGuests }) => {
      const from = `wireless network ${network}`
      return [
        ...fact('Name of the wireless network', name, from),
        ...fact(`Band and channel of ${name}`, [band, channel].filter(word => word !== null).join(', ') || null, from),
        ...fact(`Security of ${name}`, security, from),
        ...fact(`Guests on ${name}`, forGuests === null ? null : forGuests ? 'it is for guests: keep it apart from the vessel’s own network' : 'not for guests', from),
      ]
    }),
    ...outsideLinks.filter(({ equipmentTag }) => equipmentTag === tag).flatMap(({ tag: link, name, provider, priorityNumber }) => [
      ...fact(`Provider of ${name}`, provider, `outside link ${link}`),
      ...fact(`Order in which ${name} is tried`, priorityNumber === null ? null : String(priorityNumber), `outside link ${link}`),
    ]),
  ]
}

// --- what it measures, who it is -------------------------------------------------------------------------------------
function depthFacts({ transducer }: Equipment): readonly RestoreFact[] {
  const offset = transducer?.depthOffset ?? null
  return fact('Depth offset', offset === null ? null : { quantity: 'offsetM', value: offset.offsetM, words: `depth is shown ${offset.reads}` }, 'its entry',
    'sound the depth by hand afterwards: a wrong sign shows more water than there is')
}

function identityFacts({ identity }: Vessel, { kind, mmsi, beaconIdentity }: Equipment): readonly RestoreFact[] {
  const own = sendsIdentity.has(kind)
  return [
    ...fact('MMSI', mmsi ?? (own ? identity.mmsi : null), mmsi === null ? 'the vessel' : 'its entry', 'many devices take it once only: check it before it is confirmed'),
    ...fact('Call sign', own ? identity.callSign : null, 'the vessel'),
    ...(kind !== 'ais transceiver' ? [] : [
      ...fact('Name of the vessel', identity.name, 'the vessel'),
      ...fact('Length', identity.lengthM === null ? null : { quantity: 'lengthM', value: identity.lengthM, words: '' }, 'the vessel', 'as distances from its antenna to bow and stern'),
      ...fact('Beam', identity.beamM === null ? null : { quantity: 'beamM', value: identity.beamM, words: '' }, 'the vessel', 'as distances from its antenna to port and starboard'),
    ]),
    ...fact('Identity of the beacon', beaconIdentity, 'its entry', 'it is coded by a service agent and registered with the authority'),
  ]
}

// --- switching modules -----------------------------------------------------------------------------------------------
/** Channel by channel: where it trips, and what it does when the network is lost. */
export function moduleFacts(vessel: Vessel, { tag, kind, networkLoss }: Panel): readonly RestoreFact[] {
  if (kind !== 'switching module') return []
  return (lookup(vessel).circuitsFedFrom.get(tag) ?? []).flatMap(circuit =>
    fact(circuit.way === null ? circuit.tag : `Channel ${circuit.way}, ${circuit.tag}`, channelText(circuit, networkLoss), `circuit ${circuit.tag}`))
}

function channelText({ name, protection, networkLoss }: Circuit, ofModule: Panel['networkLoss']): string {
  const loss = networkLoss ?? ofModule
  return [name, ...(protection === null ? [] : [`trips at ${say('ratedCurrentA', protection.ratedCurrentA)}`]), ...(loss === null ? [] : [`network lost: ${loss === 'hold' ? 'stays as it is' : `goes ${loss}`}`])].join(', ')
}
