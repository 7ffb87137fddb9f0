/** Wireless networks and links to the outside: what makes them, by which antenna and cable, what depends on them. */
import type { AntennaWay, OutsideWay, WirelessSecurity } from '../../../model/results/ethernet.js'
import { slug } from '../../../model/address.js'
import type { OutsideLink, Tag, WirelessNetwork } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { fixedPages } from '../../site-map.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, dash, joined, muted, notRecorded, orDash, orNotRecorded, verdict } from '../../text.js'
import type { Block, Facts, Page, Table, Text } from '../../view-model.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { effectNames, thingPlace } from '../fault-tracing/fault-words.js'
import { networkSupply } from './network-parts.js'
import { foundBlocks } from '../../parts/found-blocks.js'

export function outsideLinkPages(context: ViewContext): readonly Page[] {
  const { wirelessNetworks, outsideLinks } = context.vessel
  if (wirelessNetworks.length + outsideLinks.length === 0) return []
  return [{
    key: fixedPages.outsideLinks,
    title: 'Wireless and outside links',
    kicker: null,
    lead: [`${counted(wirelessNetworks.length, 'wireless network')} on board, ${counted(outsideLinks.length, 'link')} to the outside. Passphrases are not on this page.`],
    printed: null,
    trail: [],
    blocks: [...wirelessBlocks(context), ...outsideBlocks(context), ...foundBlocks(context, { letters: 'ETH', notAssessed: context.results.ethernet.notAssessed, about: new Set([...wirelessNetworks, ...outsideLinks].map(({ tag }) => tag)) })],
  }]
}

// --- wireless --------------------------------------------------------------------------------------------------------
function wirelessBlocks(context: ViewContext): readonly Block[] {
  const networks = context.vessel.wirelessNetworks.toSorted(byTag)
  if (networks.length === 0) return []
  return [
    { is: 'heading', text: 'Wireless networks', anchor: 'wireless' },
    tableOf(networks, {
      id: 'wireless-networks',
      caption: 'Networks as devices show them',
      empty: '',
      columns: [
        { title: 'Tag', width: 'tag', cell: ({ tag }) => [{ is: 'tag', text: tag }] },
        { title: 'Name', width: 'text', cell: ({ name, purpose }) => [name, ...(purpose === null ? [] : [' ', muted(purpose)])] },
        { title: 'For', width: 'short', cell: ({ forGuests }) => (forGuests === null ? dash : [forGuests ? 'guests' : 'crew']) },
        { title: 'Security', width: 'short', cell: network => securityText(context, network) },
        { title: 'Leads to', width: 'text', cell: ({ networkTag, forGuests }) => (networkTag === null ? [notRecorded] : [...context.named(networkTag), ...(forGuests === true ? [muted(', unless its access point keeps guests apart')] : [])]) },
      ],
    }),
    tableOf(networks, {
      id: 'access-points',
      caption: 'What makes them',
      empty: '',
      note: ['If an access point is lost, its networks are; what hangs on network cables works on.'],
      columns: [
        { title: 'Tag', width: 'tag', cell: ({ tag }) => [{ is: 'tag', text: tag }] },
        { title: 'Access point', width: 'text', cell: ({ accessPointTag }) => (accessPointTag === null ? [notRecorded] : context.named(accessPointTag)) },
        { title: 'Where', width: 'text', cell: ({ accessPointTag }) => (accessPointTag === null ? dash : thingPlace(context, accessPointTag, { withAccess: false })) },
        { title: 'Supply', width: 'text', cell: ({ accessPointTag }) => (accessPointTag === null ? dash : supplyText(context, accessPointTag)) },
        { title: 'Band, channel', width: 'text', cell: ({ band, channel }) => orDash([band, channel].filter(word => word !== null).join(', ') || null) },
      ],
    }),
  ]
}

const securityMarks: Readonly<Record<WirelessSecurity, (text: string | null, forGuests: boolean) => Text>> = {
  'open': (_, forGuests) => [verdict(forGuests ? 'note' : 'warning', 'open')],
  'weak': text => [verdict('warning', `${text}, weak`)],
  'recorded': text => orNotRecorded(text),
  'not recorded': () => [notRecorded],
}
const securityText = ({ results }: ViewContext, { tag, security, forGuests }: WirelessNetwork): Text =>
  securityMarks[results.ethernet.wirelessSecurity.get(tag) ?? 'not recorded'](security, forGuests === true)

/** Its circuit with the protective device, or the port of the switch that it lives on. */
function supplyText(context: ViewContext, tag: Tag): Text {
  const circuits = context.circuitsOf(tag)
  if (circuits.length > 0) return joined(circuits.map((circuit): Text => [context.tag(circuit.tag), ` ${protectionText(circuit)}`]))
  return networkSupply(context, tag) ?? [muted('none recorded')]
}

// --- outside ---------------------------------------------------------------------------------------------------------
function outsideBlocks(context: ViewContext): readonly Block[] {
  const links = context.vessel.outsideLinks.toSorted((a, b) => (a.priorityNumber ?? Infinity) - (b.priorityNumber ?? Infinity) || byTag(a, b))
  if (links.length === 0) return []
  const ways = context.results.ethernet.outsideLinks
  return [
    { is: 'heading', text: 'Links to the outside', anchor: 'outside' },
    tableOf(links, {
      id: 'outside-links',
      caption: 'In the order in which they are tried',
      empty: '',
      columns: [
        { title: 'Order', width: 'number', cell: ({ priorityNumber }) => orDash(priorityNumber === null ? null : String(priorityNumber)) },
        { title: 'Link', width: 'text', cell: ({ tag, name }) => [{ is: 'tag', text: tag }, ` ${name}`] },
        { title: 'To the boat', width: 'number', cell: ({ downMbitPerS }) => sayOrDash('downMbitPerS', downMbitPerS, context.vessel) },
        { title: 'From the boat', width: 'number', cell: ({ upMbitPerS }) => sayOrDash('upMbitPerS', upMbitPerS, context.vessel) },
        { title: 'Where it works', width: 'text', cell: ({ coverage }) => orNotRecorded(coverage) },
      ],
    }),
    ...links.flatMap(link => linkBlocks(context, link, ways.get(link.tag)!)),
  ]
}

function linkBlocks(context: ViewContext, link: OutsideLink, way: OutsideWay): readonly Block[] {
  return [{ is: 'heading', text: `${link.tag} ${link.name}`, anchor: `link-${slug(link.tag)}` }, factsOf(context, link, way), ...antennaBlocks(context, link, way)]
}

function factsOf(context: ViewContext, { kind, purpose, provider }: OutsideLink, way: OutsideWay): Facts {
  const { equipmentTag } = way
  return {
    is: 'facts', caption: null, entries: [
      ...(purpose === null ? [] : [{ label: 'For', value: [purpose] }]),
      { label: 'By', value: [kind, ...(provider === null ? [] : [muted(`, ${provider}`)])] },
      { label: 'Made by', value: equipmentTag === null ? [notRecorded] : [...context.named(equipmentTag), '; ', ...thingPlace(context, equipmentTag)] },
      ...(equipmentTag === null ? [] : [{ label: 'Supply', value: supplyText(context, equipmentTag) }]),
      { label: 'Leads out of', value: networksText(context, way) },
      { label: 'If it is lost', value: lossText(context, way) },
    ],
  }
}

const networksText = (context: ViewContext, { networks }: OutsideWay): Text => (networks.length === 0 ? [muted('no network on record')]
  : joined(networks.map(({ tag, gateway }): Text => [...context.named(tag), ...(gateway ? [muted(', as its gateway')] : [])]), '; '))

/** Who says that it needs the link, with all that falls when its data do not come. */
function lossText(context: ViewContext, { neededByTags, equipmentTag, antennas }: OutsideWay): Text {
  const others = neededByTags.filter(tag => tag !== equipmentTag)
  if (others.length === 0) return ['Nothing on board is recorded to need it.']
  const lost = context.results.dependency.losses.get(equipmentTag ?? '') ?? []
  const further = lost.filter(({ tag }) => !others.includes(tag) && antennas.every(antenna => antenna.tag !== tag))
  return [
    ...joined(others.map(tag => context.named(tag))), others.length === 1 ? ' no longer gets what comes over it.' : ' no longer get what comes over it.',
    ...(further.length === 0 ? [] : [' If ', context.tag(equipmentTag!), ' itself is dead, you lose as well: ', ...effectNames(context, further, { most: 6, withCause: false }), '.']),
  ]
}

function antennaBlocks(context: ViewContext, { tag, name }: OutsideLink, { antennas }: OutsideWay): readonly Table[] {
  return antennas.length === 0 ? [] : [tableOf(antennas, {
    id: `antennas-${slug(tag)}`,
    caption: `Antennas of ${tag} ${name}`,
    empty: '',
    note: ['Lengths from the antenna to the equipment. What the cable loses at its frequency is under radio and antennas.'],
    columns: [
      { title: 'Antenna', width: 'text', cell: antenna => [...context.named(antenna.tag), ...(antenna.planned ? [' ', verdict('note', 'planned')] : [])] },
      { title: 'Where', width: 'text', cell: antenna => thingPlace(context, antenna.tag, { withAccess: false }) },
      { title: 'Cable', width: 'short', cell: antenna => cableText(context, antenna) },
      { title: 'Type', width: 'text', cell: antenna => typeText(context, antenna) },
      { title: 'Length', width: 'number', cell: ({ lengthM }) => (lengthM === null ? dash : [say('lengthM', lengthM, context.vessel)]) },
    ],
  })]
}

function cableText(context: ViewContext, { builtIn, cableTags, planned }: AntennaWay): Text {
  if (builtIn) return ['built in']
  if (cableTags === null) return [planned ? muted('to come') : verdict('warning', 'none recorded')]
  return joined(cableTags.map(tag => [context.tag(tag)]), ' + ')
}

function typeText({ lookup }: ViewContext, { cableTags }: AntennaWay): Text {
  const types = [...new Set((cableTags ?? []).map(tag => lookup.cables.get(tag)?.typeTag ?? null))]
  return types.length === 0 ? dash : joined(types.map(type => (type === null ? [notRecorded] : [lookup.cableTypes.get(type)?.name ?? type])), '; ')
}
