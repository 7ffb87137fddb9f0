import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed } from '../../model/results.js'
import type { Circuit, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { exceeds } from '../compare.js'
import { say } from '../../units/format.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import type { Backbones } from './backbones.js'
import {
  circuitsJoined, circuitWithoutCables, demandOnNoCircuit, loadNotListed, loadNotReached, removedLoadListed, supplyOutsideRange,
} from './findings.js'
import type { PowerGraph } from './power-graph.js'

/** About one circuit: what it lists against what its cables reach. */
export function circuitFindings(vessel: Vessel, circuit: Circuit, feed: CircuitFeed, { passes }: PowerGraph, backbones: Backbones): Finding[] {
  const { circuits, equipment } = lookup(vessel)
  const findings: Finding[] = []
  const about = (field: keyof Circuit) => ({ subject: { kind: 'circuit', id: circuit.tag }, field, limit: null })

  const removed = circuit.loadTags.filter(tag => equipment.get(tag)?.status === 'removed')
  if (removed.length > 0) {
    const loads = `${inWords(removed)} ${removed.length === 1 ? 'is' : 'are'}`
    findings.push(find(removedLoadListed, { ...about('loadTags'), evidence: {}, context: { loads } }))
  }

  if (feed.unreachedTags.length > 0) {
    const kind = hasCableOutwards(vessel, circuit, feed) ? loadNotReached : circuitWithoutCables
    findings.push(find(kind, { ...about('loadTags'), evidence: {}, context: { loads: inWords(feed.unreachedTags) } }))
  }
  findings.push(...circuit.loadTags.flatMap(tag => rangeFinding(circuit, equipment.get(tag), feed.nominalVoltageV)))
  const listed = new Set(circuit.loadTags)
  for (const { cableTag, farTag } of feed.segments) {
    if (listed.has(farTag) || passes(farTag)) continue
    const element = backbones.get(farTag)
    if (element !== undefined && (element.circuitTag === circuit.tag || listed.has(element.busTag))) continue
    findings.push(circuits.has(farTag)
      ? find(circuitsJoined, { ...about('tag'), evidence: {}, context: { cable: cableTag, other: farTag } })
      : find(loadNotListed, { ...about('loadTags'), evidence: {}, context: { cable: cableTag, load: farTag } }))
  }
  return findings
}

/** A converter takes and gives at different voltages: which of them its range is about is not known. */
function rangeFinding(circuit: Circuit, item: Equipment | undefined, nominalVoltageV: number | null): readonly Finding[] {
  if (item === undefined || item.status === 'removed' || item.outputs.length > 0 || nominalVoltageV === null) return []
  const { tag, supplyMinV, supplyMaxV } = item
  const bounds: readonly Limit[] = [
    ...(supplyMaxV === null ? [] : [{ relation: 'at most' as const, value: supplyMaxV, ...makersRange }]),
    ...(supplyMinV === null ? [] : [{ relation: 'at least' as const, value: supplyMinV, ...makersRange }]),
  ]
  const limit = bounds.find(bound => exceeds(nominalVoltageV, bound))
  if (limit === undefined) return []
  const said = (valueV: number | null) => (valueV === null ? '…' : say('supplyV', valueV))
  return [find(supplyOutsideRange, {
    subject: { kind: 'circuit', id: circuit.tag }, field: 'loadTags', evidence: { nominalVoltageV }, limit, context: { load: tag, range: `${said(supplyMinV)} to ${said(supplyMaxV)}` },
  })]
}
const makersRange = { citation: { source: 'common-practice', place: 'supply range stated by the maker of the item' } } as const

/** Whether a cable is entered at the protective device that does not bring its supply. */
function hasCableOutwards(vessel: Vessel, { tag }: Circuit, { supplySegments }: CircuitFeed): boolean {
  return (lookup(vessel).cablesAt.get(tag) ?? []).some(cable =>
    cable.status !== 'removed' && !supplySegments.some(({ cableTag }) => cableTag === cable.tag))
}

/** About items that draw power and are on no circuit, neither listed nor wired to one. */
export function demandFindings(vessel: Vessel, byCircuit: ReadonlyMap<Tag, CircuitFeed>): Finding[] {
  const { circuitsOfLoad } = lookup(vessel)
  const wired = new Set([...byCircuit.values()].flatMap(feed => feed.segments.map(({ farTag }) => farTag)))
  const switches = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags))
  return vessel.equipment
    .filter(item => drawsPower(item) && !circuitsOfLoad.has(item.tag) && !wired.has(item.tag) && (switches.has(item.tag) || !fedOverData(item)))
    .map(({ tag }) => find(demandOnNoCircuit, { subject: { kind: 'equipment', id: tag }, field: null, evidence: {}, limit: null }))
}

const drawsPower = ({ kind, status, currentMaxA, currentTypicalA, powerW }: Equipment): boolean =>
  status !== 'removed' && equipmentKind(kind).draw === 'load' && (currentMaxA ?? currentTypicalA ?? powerW ?? 0) > 0

/** It asks for power on a data port and has no port for a supply. */
const fedOverData = ({ ports }: Equipment): boolean => ports.some(port => port.powerClass !== null) && !ports.some(port => port.kind === 'power')
