/** It has power and shows nothing: what it hears and what it is heard by, each as a step. */
import type { BusResult, SolvedSection } from '../../../model/results/can-bus.js'
import type { DataLine } from '../../../model/results/dependency.js'
import type { EthernetLink } from '../../../model/results/ethernet.js'
import type { SerialLink, Tag } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { joined, muted, strong } from '../../text.js'
import type { Block, Step, Text } from '../../view-model.js'
import { endText, labelText } from '../../../model/cable-label.js'
import { treeLink } from './fault-tree-links.js'
import { thingPlace } from './fault-words.js'

type DataStep = Omit<Step, 'number'>

export function dataSteps(context: ViewContext, tag: Tag): readonly Block[] {
  const { results, vessel } = context
  const lines = results.dependency.traces.get(tag)?.data ?? []
  const buses = [...results.canBus.byBus.values()].filter(({ backbone }) => backbone.stations.some(({ device }) => device?.tag === tag))
  const links = vessel.serialLinks.filter(link => results.serial.byLink.has(link.tag) && [link.talker, ...link.listeners].some(end => end.tag === tag))
  const steps: readonly DataStep[] = [
    ...buses.map(bus => busStep(context, tag, bus)),
    ...results.ethernet.links.filter(({ ends }) => ends.some(end => end.tag === tag)).map(link => ethernetStep(context, tag, link)),
    ...links.map(link => serialStep(context, tag, link)),
    ...lines.filter(({ is }) => is !== 'network').map(line => needStep(context, line)),
  ]
  if (steps.length === 0) return []
  return [{ is: 'steps', id: 'data-steps', caption: 'It has its supply, and data are missing', note: null, steps: steps.map((step, i) => ({ number: String(i + 1), ...step })) }]
}

/** Its tee, the devices beside it, and what a meter says of the bus. */
function busStep(context: ViewContext, tag: Tag, result: BusResult): DataStep {
  const { bus, backbone: { stations }, supply } = result
  const at = stations.findIndex(({ device }) => device?.tag === tag)
  const { part, drop } = stations[at]!
  const beside = [stations[at - 1], stations[at + 1]].flatMap(station => station?.device?.tag ?? [])
  const tee = supply.sections.flatMap(({ solved }) => solved?.tees ?? []).find(each => each.tag === part.tag)
  return {
    title: ['On ', ...context.named(bus.tag), ', tee ', { is: 'tag', text: part.tag }],
    where: thingPlace(context, part.tag),
    lines: [
      { label: 'Look', text: [
        beside.length === 0 ? 'Do other devices on the bus show?' : 'Do its neighbours on the bus show: ', ...joined(beside.map(each => context.named(each))), beside.length === 0 ? '' : '? ',
        ...(drop === null ? [] : ['Then its own drop ', context.tag(drop.cableTag), ' is suspect: both plugs seated? ']), ...treeLink(context, 'can-bus'),
      ] },
      ...(drop === null ? [] : [{ label: 'Labels', text: joined((['from', 'to'] as const).map((end): Text => [{ is: 'tag', text: labelText(context.lookup.cables.get(drop.cableTag)!, end) }])) }]),
      { label: 'Measure', text: terminationText(result) },
      ...(tee?.voltageV == null ? [] : [{ label: 'Measure', text: teeText(tee) }]),
    ],
  }
}

/** Two terminators side by side. */
export function terminationText({ termination: { expected } }: BusResult): Text {
  const supplyOff = 'with the supply of the bus off, between the two data wires: '
  if (expected.status !== 'computed') return [supplyOff, muted(`not assessed: ${expected.reason}`)]
  return [supplyOff, strong(say('nominalOhm', expected.output.resistanceOhm)), '. About 120 Ω: a terminator is missing or the line is broken. About 40 Ω or less: one too many, or a short.']
}

const teeText = ({ voltageV }: SolvedSection['tees'][number]): Text => ['with the bus on, + to − at the tee: about ', strong(say('voltageV', voltageV!)), ', at least 9 V.']

/** Lamps, labels at both ends, and an address that should answer. */
function ethernetStep(context: ViewContext, tag: Tag, { ends, cableTags }: EthernetLink): DataStep {
  const [own, far] = ends[0].tag === tag ? ends : [ends[1], ends[0]]
  const port = ({ portName }: typeof own): string => (portName === null ? '' : `, ${/^port/i.test(portName) ? '' : 'port '}${portName}`)
  const item = context.lookup.equipment.get(tag)
  const labels = cableTags.flatMap(cableTag => { const cable = context.lookup.cables.get(cableTag); return cable === undefined ? [] : (['from', 'to'] as const).map((end): Text => [{ is: 'tag', text: labelText(cable, end) }]) })
  return {
    title: ['Network cable ', ...joined(cableTags.map(each => [context.tag(each)])), ' to ', ...context.named(far.tag), port(far)],
    where: thingPlace(context, far.tag),
    lines: [
      { label: 'Look', text: [`Lamps on at both plugs (${tag}${port(own)})? None: another port, then another cable. `, ...treeLink(context, 'ethernet')] },
      { label: 'Labels', text: joined(labels) },
      ...(item?.address == null ? [] : [{ label: 'Try', text: ['does ', strong(item.address), ' answer from another device on the network? ', muted(item.addressing === 'dynamic' ? 'Given out by the router: it may have changed.' : 'Nothing else may have the same.')] }]),
    ],
  }
}

function serialStep(context: ViewContext, tag: Tag, link: SerialLink): DataStep {
  const talks = link.talker.tag === tag
  const others = talks ? link.listeners : [link.talker]
  const wires = link.wires.filter(({ from, to }) => from.tag === tag || to.tag === tag)
  return {
    title: [...context.named(link.tag), talks ? ': it talks to ' : ': it listens to ', ...joined(others.map(end => context.named(end.tag)))],
    where: null,
    lines: [
      { label: 'Look', text: [
        `Set to ${link.baudRateBaud === null ? 'the same rate' : say('baudRateBaud', link.baudRateBaud)} at both ends? Does ${talks ? 'it' : others.map(end => end.tag).join(', ')} have what it is to send? `, ...treeLink(context, 'serial'),
      ] },
      ...(wires.length === 0 ? [] : [{ label: 'Wires', text: joined(wires.map(({ signal, from, to, cableTag, core }): Text => [
        `${signal}: ${endText(from)} to ${endText(to)}`, ...(cableTag === null ? [] : [' in ', context.tag(cableTag)]), ...(core === null ? [] : [`, ${core}`]),
      ]), { is: 'break' }) }]),
    ],
  }
}

function needStep(context: ViewContext, { is, tag, wayTags }: DataLine): DataStep {
  return {
    title: [is === 'giver' ? 'It needs data from ' : 'It works with ', ...context.named(tag)],
    where: thingPlace(context, tag, { withAccess: false }),
    lines: [{ label: 'Look', text: ['Is that alive? Its own page has its steps.', ...(wayTags === null ? [' ', muted('No way between is recorded.')] : wayTags.length === 0 ? [] : [' ', muted('Between them: '), ...joined(wayTags.map(way => [context.tag(way)])), '.'])] }],
  }
}
