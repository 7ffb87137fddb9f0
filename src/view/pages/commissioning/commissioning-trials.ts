/** Sheets for what is seen at work rather than measured: networks link by link, then position, depth, lights, radio and beacons. */
import { inWords } from '../../../findings/words.js'
import type { BusResult } from '../../../model/results/can-bus.js'
import type { EthernetLink, EthernetResults, LinkEnd } from '../../../model/results/ethernet.js'
import type { SerialLink, Tag } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { byTag } from '../../tables.js'
import { counted, joined, lineBreak, muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { box, forPen, signed } from './commissioning-sheet-parts.js'
import { itemTrials } from './commissioning-trials-items.js'

/** One thing to try: what must be seen, and boxes for what is. */
export interface Trial { readonly what: Text; readonly expected: Text; readonly found: Text }

export function trialSheets(context: ViewContext): readonly Block[] {
  return [
    ...trialSheet('trial-networks', 'Trial sheet: networks', networkTrials(context), ['With all of it switched on, tick each device and sentence that is seen, and each link whose speed and power are as said.']),
    ...trialSheet('trial-items', 'Trial sheet: position, depth, lights and radio', itemTrials(context), ['Of lights only the sector is seen, not the range. Bearings clockwise from the bow.']),
  ]
}

const trialSheet = (id: string, caption: string, trials: readonly Trial[], note: Text): readonly Table[] => (trials.length === 0 ? [] : [forPen(trials, {
  id, caption, note,
  columns: [
    { title: 'What', width: 'text', cell: ({ what }) => what },
    { title: 'Must be seen', width: 'text', cell: ({ expected }) => expected },
    { title: 'Found', width: 'short', cell: ({ found }) => found },
    { title: 'Date, initials', width: 'short', cell: () => signed },
  ],
})])

function networkTrials(context: ViewContext): readonly Trial[] {
  const { canBus, ethernet, serial } = context.results
  return [
    ...[...canBus.byBus.values()].map(result => busTrial(context, result)),
    ...linksByNetwork(ethernet).map(([tag, links]) => linksTrial(context, tag, links)),
    ...context.vessel.serialLinks.filter(({ tag }) => serial.byLink.has(tag)).map(link => serialTrial(context, link)),
  ]
}

function busTrial(context: ViewContext, { bus, backbone }: BusResult): Trial {
  const devices = backbone.stations.flatMap(({ device }) => (device === null ? [] : [device.tag]))
  return {
    what: context.named(bus.tag),
    expected: devices.length === 0 ? [muted('no device is recorded')]
      : [`${counted(devices.length, 'device')}: `, ...joined(devices.map(tag => [tickBox, ...context.named(tag)]), ' ')],
    found: box('devices seen'),
  }
}

/** Each link once, with the first network that it is of; those of none last. */
function linksByNetwork({ networks, links }: EthernetResults): readonly (readonly [Tag | null, readonly EthernetLink[]])[] {
  const networkOf = (link: EthernetLink): Tag | null => [...networks].find(([, { linkTags }]) => linkTags.includes(link.tag))?.[0] ?? null
  return [...networks.keys(), null].flatMap(tag => {
    const own = links.filter(link => networkOf(link) === tag)
    return own.length === 0 ? [] : [[tag, own.toSorted(byTag)] as const]
  })
}

const linksTrial = (context: ViewContext, tag: Tag | null, links: readonly EthernetLink[]): Trial => ({
  what: tag === null ? ['Other network cables'] : context.named(tag),
  expected: joined(links.map(link => [tickBox, ...linkText(context, link)]), lineBreak),
  found: box('those that differ'),
})

function linkText(context: ViewContext, { tag, ends, speedMbitPerS }: EthernetLink): Text {
  const feed = [...context.results.ethernet.power.values()].flatMap(({ feeds }) => feeds).find(({ linkTag }) => linkTag === tag)
  const endText = (end: LinkEnd): Text => [context.tag(end.tag), ...(end.portName === null ? [] : [muted(` ${end.portName}`)])]
  return [
    context.tag(tag), ', ', ...endText(ends[0]), ' to ', ...endText(ends[1]), ': ',
    speedMbitPerS === null ? muted('speed not known') : say('speedMbitPerS', speedMbitPerS, context.vessel),
    ...(feed === undefined ? [] : [', ', feed.power.status === 'computed' ? `gives at most ${say('portPowerW', feed.power.output.portPowerW)}` : muted('power not known')]),
  ]
}

function serialTrial(context: ViewContext, { tag, talker, baudRateBaud }: SerialLink): Trial {
  const { sentences, listeners } = context.results.serial.byLink.get(tag)!
  return {
    what: [...context.named(tag), lineBreak, muted(`from ${talker.tag} to ${listeners.length === 0 ? 'no recorded listener' : inWords(listeners.map(listener => listener.tag))}`)],
    expected: [
      ...(sentences.length === 0 ? [muted('sentences not recorded')] : joined(sentences.map(({ formatter }) => [tickBox, formatter]), ' ')),
      ...(baudRateBaud === null ? [] : [` at ${say('baudRateBaud', baudRateBaud)}`]),
    ],
    found: box(...(listeners.length === 0 ? ['seen'] : listeners.map(listener => `at ${listener.tag}`))),
  }
}

const tickBox = '☐\u00A0'
