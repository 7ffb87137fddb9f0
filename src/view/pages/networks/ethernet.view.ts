/** An Ethernet network: what is free in plain words, the drawing, then ports, power, links, addresses, streams and rings. */
import { inWords } from '../../../findings/words.js'
import type { EthernetLink, NetworkPower, NetworkResult, PortUse } from '../../../model/results/ethernet.js'
import type { Equipment, EthernetNetwork } from '../../../model/vessel.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { counted, joined, muted, verdict } from '../../text.js'
import type { Diagram, Page, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { deadBlocks, lossBlocks } from '../fault-tracing/fault-blocks.js'
import { proceduresAbout } from '../owner/procedures.js'
import { addressBlocks } from './ethernet-addresses.js'
import { fullest, isFree, lengthM, linkTable, loadTable, percentOf, portTable, streamTable } from './ethernet-links.js'
import { powerBlocks, powerLeft } from './ethernet-power.js'
import { foundBlocks } from '../../parts/found-blocks.js'
import { networkTrail, withDrawings } from './network-parts.js'

export function ethernetPage(context: ViewContext, network: EthernetNetwork, diagrams: readonly Diagram[]): Page {
  const { ethernet } = context.results
  const result = ethernet.networks.get(network.tag)!
  const links = result.linkTags.flatMap(tag => ethernet.links.find(link => link.tag === tag) ?? [])
  const switches = network.switchTags.flatMap(tag => context.lookup.equipment.get(tag) ?? [])
  const worst = fullest(links)
  return {
    key: context.addressOf(network.tag)!,
    title: `${network.tag} ${network.name}`,
    kicker: 'Ethernet',
    lead: network.purpose === null ? null : [network.purpose],
    trail: networkTrail,
    ...withDrawings(diagrams, [
      { is: 'facts', caption: 'At a glance', entries: glance(context, network, result, links, switches) },
      ...deadBlocks(context, network.tag),
      ...lossBlocks(context, network.tag),
      ...proceduresAbout(context, network.tag),
      { is: 'heading', text: 'Ports', anchor: 'ports' },
      ...switches.map(item => portTable(context, item)),
      ...powerBlocks(context, result.memberTags),
      { is: 'heading', text: 'Links and what runs over them', anchor: 'links' },
      linkTable(context, links),
      ...streamTable(context, ethernet.streams.filter(({ senderTag }) => result.memberTags.includes(senderTag))),
      loadTable(context, links),
      ...(worst === null ? [] : [workingOf(context, `The fullest link: ${worst.link.tag} from ${worst.from.tag} to ${worst.to.tag}`, worst.load.load)]),
      { is: 'paragraph', text: ringText(context, result) },
      ...addressBlocks(context, network, result),
      ...foundBlocks(context, { letters: 'ETH', notAssessed: context.results.ethernet.notAssessed, about: new Set([network.tag, ...result.memberTags, ...result.linkTags]) }),
    ]),
  }
}

/** What somebody wants to know who is about to add a device, and what is worst. */
function glance(
  context: ViewContext, network: EthernetNetwork, { memberTags, addresses: { nextFree }, gatewayTags }: NetworkResult, links: readonly EthernetLink[], switches: readonly Equipment[],
): readonly { readonly label: string; readonly value: Text }[] {
  const { ports, power } = context.results.ethernet
  const longest = links.reduce<EthernetLink | null>((most, link) => (lengthM(link) !== null && (most === null || lengthM(link)! > lengthM(most)!) ? link : most), null)
  const worst = fullest(links)
  return [
    { label: 'Members', value: [`${memberTags.length}, on ${counted(switches.length, 'network switch', 'network switches')}`] },
    ...switches.map(({ tag }) => ({ label: `Free at ${tag}`, value: freeText(ports.get(tag) ?? [], power.get(tag)) })),
    { label: 'Next free address', value: [nextFree ?? muted('not known')] },
    { label: 'Way out', value: gatewayTags.length === 0 ? [muted(network.gatewayAddress === null ? 'none recorded' : 'not found on board')] : joined(gatewayTags.map(tag => context.named(tag))) },
    { label: 'Links to the outside', value: outsideText(context, network) },
    { label: 'Longest link', value: longest === null ? [muted('no length is known')] : [context.tag(longest.tag), `, ${say('channelLengthM', lengthM(longest)!, context.vessel)}`, ...(longest.lengthComparison?.within === false ? [' ', verdict('error', 'too long')] : [])] },
    {
      label: 'Fullest link', value: worst === null ? [muted('no stream is recorded')] : [
        context.tag(worst.link.tag), ' from ', context.tag(worst.from.tag), ' to ', context.tag(worst.to.tag),
        `, ${sayForWorking('streamsMbitPerS', worst.load.streamsMbitPerS)} or ${say('loadPercent', percentOf(worst)!)} of its speed`,
        ...(worst.load.againstSpeed?.within === false ? [' ', verdict('error', 'too much')] : worst.load.againstPlan?.within === false ? [' ', verdict('warning', 'little room')] : []),
      ],
    },
  ]
}

/** "1 of 10 ports: port-3 (up to class 3); power left 49.0 W of 60 W" */
function freeText(ports: readonly PortUse[], supply: NetworkPower | undefined): Text {
  const free = ports.filter(isFree).map(({ name }) => {
    const fitting = supply?.freePorts.find(port => port.name === name)?.fittingClass ?? null
    return fitting === null ? name : `${name} (up to class ${fitting})`
  })
  const left = supply === undefined ? null : powerLeft(supply)
  return [
    `${free.length || 'none'} of ${counted(ports.length, 'port')}${free.length === 0 ? '' : `: ${inWords(free)}`}`,
    ...(supply === undefined ? [] : [left === null ? muted('; power left not known') : `; power left ${left}`]),
  ]
}

/** In the order in which they are tried. */
function outsideText(context: ViewContext, { tag }: EthernetNetwork): Text {
  const links = context.vessel.outsideLinks.filter(link => context.results.ethernet.outsideLinks.get(link.tag)?.networks.some(network => network.tag === tag))
    .toSorted((a, b) => (a.priorityNumber ?? Infinity) - (b.priorityNumber ?? Infinity))
  return links.length === 0 ? [muted('none recorded')] : joined(links.map(link => context.named(link.tag)))
}

function ringText(context: ViewContext, { linkTags }: NetworkResult): Text {
  const rings = context.results.ethernet.rings.filter(ring => ring.linkTags.some(tag => linkTags.includes(tag)))
  if (rings.length === 0) return ['Its cables make no ring, as far as is recorded.']
  return joined(rings.map(({ linkTags: links, itemTags, protectedTags, safe }): Text => [
    safe ? verdict('good', 'Ring, protected') : verdict('error', 'Ring'), ' of the cables ', ...joined(links.map(tag => [context.tag(tag)])),
    ' through ', ...joined(itemTags.map(tag => [context.tag(tag)])),
    ...(protectedTags.length === 0 ? [': nothing on it is recorded to keep a ring from doing harm.'] : ['. Loop protection at ', ...joined(protectedTags.map(tag => [context.tag(tag)])), safe ? '.' : ', and yet a part of it is without.']),
  ]), ' ')
}
