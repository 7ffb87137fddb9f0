/** What a thing of the vessel looks like in a drawing and what is written in its box; the same in every diagram. */
import { lookup } from '../../model/lookup.js'
import type { BackboneElement, Cable, CableEnd, CableType, CanBus, Circuit, Equipment, ItemStatus, Panel, Tag, Vessel } from '../../model/vessel.js'
import { type EquipmentKind, equipmentKind } from '../../references/equipment-kinds.js'
import { say, sayForWorking, saySize } from '../../units/format.js'
import type { Inline, PageKey } from '../view-model.js'
import type { Box, BoxClass } from './mermaid-text.js'

/** The page of a thing, or null when it has none. */
export type Address = (tag: Tag) => PageKey | null

export interface VesselBoxes {
  /** The box of anything with a tag. What is not known by that tag is a reference. */
  boxOf(tag: Tag): Box
  /** The same as a pointer to where it is drawn in full. */
  referenceTo(tag: Tag): Box
  /** How equipment is drawn and whether a circuit goes on through it; null for what is not equipment. */
  kindOf(tag: Tag): EquipmentKind | null
  /** The same with what it takes from its circuit. */
  consumerBox(tag: Tag): Box
  /** Tags and size of the cables that make up a line, as written on it; `said` in place of the size. */
  cableLabel(tags: readonly Tag[], said?: readonly string[]): readonly string[]
  /** The tag in running text, linked to its page. */
  tagged(tag: Tag): Inline
  nameOf(tag: Tag): string | null
}

export function vesselBoxes(vessel: Vessel, address: Address): VesselBoxes {
  const { equipment, batteries, busbars, panels, circuits, cables, cableTypes, canBuses, ethernetNetworks, zones, items } = lookup(vessel)
  const elements = backboneElements(vessel.canBuses)

  const box = (tag: Tag, is: BoxClass, beside: readonly (string | null)[], below: readonly (string | null)[]): Box =>
    ({ key: tag, is, tag, beside: beside.filter(text => text !== null), below: below.filter(text => text !== null), page: address(tag) })

  function boxOf(tag: Tag): Box {
    const device = equipment.get(tag)
    if (device !== undefined) {
      const { draw } = equipmentKind(device.kind)
      const is = device.kind === 'network switch' ? 'module' : draw === 'nothing' ? 'load' : draw
      return box(tag, is, [unfinished(device)], [device.name])
    }
    const circuit = circuits.get(tag)
    if (circuit !== undefined) return box(tag, 'protection', circuitFacts(circuit, panels.get(circuit.fedFromTag)), [circuit.name])
    const battery = batteries.get(tag)
    if (battery !== undefined) {
      const capacity = battery.capacityAh === null ? null : say('capacityAh', battery.capacityAh)
      return box(tag, 'source', [say('nominalVoltageV', battery.nominalVoltageV), capacity, unfinished(battery)], [battery.name])
    }
    const busbar = busbars.get(tag)
    if (busbar !== undefined) return box(tag, 'busbar', [rated(busbar.ratedCurrentA), unfinished(busbar)], [busbar.name])
    const panel = panels.get(tag)
    if (panel !== undefined) return box(tag, isModule(panel) ? 'module' : 'panel', [rated(panel.ratedCurrentA), unfinished(panel)], [panel.name])
    const network = canBuses.get(tag) ?? ethernetNetworks.get(tag)
    if (network !== undefined) return box(tag, 'junction', [], [network.name])
    const element = elements.get(tag)
    if (element !== undefined) return box(tag, 'junction', [], [elementWords[element.kind]])
    return box(tag, 'reference', [], [])
  }

  const nameOf = (tag: Tag): string | null =>
    items.get(tag)?.name ?? circuits.get(tag)?.name ?? canBuses.get(tag)?.name ?? ethernetNetworks.get(tag)?.name ?? zones.get(tag)?.name ?? null

  return {
    boxOf,
    referenceTo: tag => ({ ...boxOf(tag), is: 'reference', beside: [] }),
    kindOf: tag => {
      const device = equipment.get(tag)
      return device === undefined ? null : equipmentKind(device.kind)
    },
    consumerBox: tag => {
      const device = equipment.get(tag)
      const own = boxOf(tag)
      return device === undefined ? own : { ...own, beside: [consumption(device), ...own.beside].filter(text => text !== null) }
    },
    cableLabel: (tags, said) => {
      const held = tags.flatMap(tag => cables.get(tag) ?? [])
      const sizes = [...new Set(held.map(({ typeTag }) => conductorWords(cableTypes.get(typeTag ?? ''))))]
      const each = tags.length > 1 && sizes.length === 1 ? ' each' : ''
      return [tags.join(', '), ...said ?? sizes.map(size => size + each), ...new Set(held.map(unfinished).filter(text => text !== null))]
    },
    tagged: tag => {
      const to = address(tag)
      return to === null ? { is: 'tag', text: tag } : { is: 'link', tag: true, text: tag, to }
    },
    nameOf,
  }
}

const isModule = ({ kind }: Panel): boolean => kind === 'switching module'

/** All of a backbone but its cables. */
type BackbonePart = Exclude<BackboneElement, { kind: 'segment' }>
const elementWords: Readonly<Record<BackbonePart['kind'], string>> = { terminator: 'terminator', tee: 'tee', power: 'power insertion', isolator: 'power isolator' }
function backboneElements(buses: readonly CanBus[]): ReadonlyMap<Tag, BackbonePart> {
  const parts = buses.flatMap(({ backbone }) => backbone.filter(element => element.kind !== 'segment'))
  return new Map(parts.map(part => [part.tag, part]))
}

function conductorWords(type: CableType | undefined): string {
  if (type === undefined) return 'type not recorded'
  if (type.size === null) return 'size not recorded'
  return type.cores !== null && type.cores > 1 ? `${type.cores} × ${saySize(type.size)}` : saySize(type.size)
}

const rated = (currentA: number | null): string | null => (currentA === null ? null : say('ratedCurrentA', currentA))

/** Said only while the thing is not, or no longer, on board. */
const unfinished = ({ status }: { readonly status: ItemStatus | null }): string | null =>
  status === 'planned' || status === 'removed' ? status : null

/** What the device takes from its circuit, by the same choice as the design current. */
function consumption({ currentMaxA, currentTypicalA, powerW }: Equipment): string | null {
  const currentA = currentMaxA ?? currentTypicalA
  if (currentA !== null) return sayForWorking('currentA', currentA)
  return powerW === null ? null : sayForWorking('powerW', powerW)
}

function circuitFacts({ way, protection, unprotectedReason, normalState }: Circuit, panel: Panel | undefined): readonly (string | null)[] {
  const place = way === null || panel === undefined ? null : `${isModule(panel) ? 'channel' : 'way'} ${way}`
  const rating = protection !== null ? say('ratedCurrentA', protection.ratedCurrentA)
    : unprotectedReason !== null ? 'unprotected' : 'protection not recorded'
  return [place, rating, normalState === 'open' ? 'normally open' : null]
}

/** The end of a cable at a thing; of a cable with both ends there, the first. */
export const endAt = ({ from, to }: Cable, tag: Tag): CableEnd | null => (from.tag === tag ? from : to.tag === tag ? to : null)
