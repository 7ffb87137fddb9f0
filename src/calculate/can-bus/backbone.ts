/** A backbone in its physical order, with what hangs on it and what is known of its cables. */
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type RoutingResults } from '../../model/results.js'
import type { Backbone, BusDevice, BusSegment, Station } from '../../model/results/can-bus.js'
import type { BackboneElement, CanBus, Cable, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { busCables } from '../../references/tables/can-rules.js'
import { runMethod } from '../run-method.js'
import { lenOfCurrentMethod } from './supply-drop.calc.js'

export function backboneOf(vessel: Vessel, routing: RoutingResults, bus: CanBus): Backbone {
  const stations: Station[] = []
  const spans: BusSegment[][] = [[]]
  for (const part of bus.backbone) {
    if (part.kind === 'segment') {
      const segment = segmentOf(vessel, routing, part.cableTag)
      if (segment !== null) spans.at(-1)!.push(segment)
    } else {
      stations.push(stationOf(vessel, routing, part))
      spans.push([])
    }
  }
  return { stations, spans }
}

/** Null where it has been taken out. */
function segmentOf(vessel: Vessel, routing: RoutingResults, cableTag: Tag): BusSegment | null {
  const { cables, cableTypes } = lookup(vessel)
  const cable = cables.get(cableTag)
  if (cable?.status === 'removed') return null
  const type = cableTypes.get(cable?.typeTag ?? '')
  const busCable = type?.busCable ?? null
  const ohmPerKm = type?.conductorResistanceOhmPerKm ?? (busCable === null ? null : busCables[busCable].resistanceOhmPerKm)
  return { cableTag, busCable, lengthM: cableLengthM(routing.byCable.get(cableTag)), resistanceOhmPerM: ohmPerKm === null || !(ohmPerKm > 0) ? null : ohmPerKm / 1000 }
}

function stationOf(vessel: Vessel, routing: RoutingResults, part: Exclude<BackboneElement, { kind: 'segment' }>): Station {
  if (part.kind !== 'tee') return { part, device: null, drop: null }
  return {
    part,
    device: deviceOf(vessel, part),
    drop: part.dropCableTag === null ? null : segmentOf(vessel, routing, part.dropCableTag),
  }
}

function deviceOf(vessel: Vessel, { tag: teeTag, deviceTag, dropCableTag, deviceTerminal }: Extract<BackboneElement, { kind: 'tee' }>): BusDevice | null {
  const { equipment, panels, batteries, cables, circuitsOfLoad } = lookup(vessel)
  const item = equipment.get(deviceTag ?? '')
  const device = item ?? panels.get(deviceTag ?? '') ?? batteries.get(deviceTag ?? '')
  if (device === undefined || device.status === 'removed') return null
  // What has no circuit lives on the bus alone, so its whole current is the bus's.
  const currentA = item === undefined || circuitsOfLoad.has(item.tag) ? null : item.currentMaxA ?? item.currentTypicalA
  const isUnfed = item !== undefined && device.loadEquivalencyNumber === 0 && !isFedElsewhere(item, circuitsOfLoad.has(item.tag))
  const recorded = isUnfed ? null : device.loadEquivalencyNumber
  const byCurrent = recorded !== null || currentA === null ? null : runMethod(lenOfCurrentMethod, { currentA })
  const lenByCurrent = byCurrent?.status === 'computed' ? byCurrent : null
  const ports = item?.ports.filter(({ kind }) => kind === 'can bus') ?? []
  return {
    tag: device.tag,
    teeTag,
    terminal: terminalAt(cables.get(dropCableTag ?? ''), device.tag) ?? deviceTerminal ?? (ports.length === 1 ? ports[0]!.name : null),
    loadEquivalencyNumber: recorded ?? lenByCurrent?.output.loadEquivalencyNumber ?? null,
    lenByCurrent,
    instanceNumber: device.deviceInstanceNumber,
    sends: device.sends,
    forwards: item?.forwards ?? [],
  }
}

/** By a circuit or over its network cable. What has neither cannot work on a load equivalency number of 0, so that is none. */
const isFedElsewhere = ({ networkPowerW, ports }: Equipment, hasCircuit: boolean): boolean => hasCircuit || networkPowerW !== null || ports.some(({ powerClass }) => powerClass !== null)

const terminalAt = (cable: Cable | undefined, tag: Tag): string | null =>
  cable?.from.tag === tag ? cable.from.terminal : cable?.to.tag === tag ? cable.to.terminal : null

export const devicesOf = ({ stations }: Backbone): readonly BusDevice[] => stations.flatMap(({ device }) => device ?? [])
export const segmentsOf = ({ spans }: Backbone): readonly BusSegment[] => spans.flat()

/** Sum of lengths; null where one of them is not known. */
export const lengthOf = (segments: readonly BusSegment[]): number | null =>
  segments.reduce<number | null>((sum, { lengthM }) => (sum === null || lengthM === null ? null : sum + lengthM), 0)
