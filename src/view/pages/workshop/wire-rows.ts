/** Every end of every cable, every end of every wire of a serial link, and what is plugged together without a cable, in the order of work. */
import { grouped, isThere } from '../../../model/lookup.js'
import type { Cable, CableEnd, ItemStatus, Tag } from '../../../model/vessel.js'
import type { ViewContext } from '../../context.js'
import { compareTags } from '../../tables.js'
import { labelText } from '../../../model/cable-label.js'
import { type Conductor, conductorsOf, wireConductor } from './conductors.js'

/** One thing to connect at one place. */
export interface WireRow {
  readonly zoneTag: Tag | null
  /** The panel or busbar whose way it is, else the item itself. */
  readonly ownerTag: Tag
  readonly here: CableEnd
  readonly far: CableEnd
  readonly farZoneTag: Tag | null
  /** `cable`: an end of a cable. `wire`: of one core of it. `plug`: joined without a cable. */
  readonly is: 'cable' | 'wire' | 'plug'
  /** Null where none is recorded. */
  readonly cable: Cable | null
  readonly conductors: readonly Conductor[]
  readonly label: string | null
  readonly status: ItemStatus | null
}

export interface WireList { readonly zoneTag: Tag | null; readonly rows: readonly WireRow[] }

/** The zones in their order, each with its rows; last what has no zone. Zones where nothing ends are left out. */
export function wireLists(context: ViewContext): readonly WireList[] {
  const known = wireListsByContext.get(context)
  if (known !== undefined) return known
  const byZone = grouped(wireRows(context), row => [row.zoneTag])
  const order = [...context.vessel.zones.map(({ tag }) => tag), null]
  const made = [...byZone].map(([zoneTag, rows]) => ({ zoneTag, rows: inOrderOfWork(context, rows) }))
    .toSorted((a, b) => order.indexOf(a.zoneTag) - order.indexOf(b.zoneTag))
  wireListsByContext.set(context, made)
  return made
}
const wireListsByContext = new WeakMap<ViewContext, readonly WireList[]>()

function wireRows(context: ViewContext): readonly WireRow[] {
  const { vessel, lookup, results } = context
  const zoneOf = (tag: Tag): Tag | null => results.cableBill.zoneByTag.get(tag) ?? null
  const placed = (here: CableEnd, far: CableEnd) => ({ zoneTag: zoneOf(here.tag), ownerTag: ownerOf(context, here.tag), here, far, farZoneTag: zoneOf(far.tag) })
  const cableRows = vessel.cables.filter(isThere).flatMap(cable => {
    const of = { is: 'cable' as const, cable, conductors: conductorsOf(context, cable), status: cable.status }
    return [
      { ...of, ...placed(cable.from, cable.to), label: labelText(cable, 'from') },
      { ...of, ...placed(cable.to, cable.from), label: labelText(cable, 'to') },
    ]
  })
  const wires = vessel.serialLinks.flatMap(link => link.wires)
  const wireEnds = wires.flatMap((wire): readonly WireRow[] => {
    const cable = lookup.cables.get(wire.cableTag ?? '') ?? null
    if (cable !== null && !isThere(cable)) return []
    const of = { is: 'wire' as const, cable, conductors: [wireConductor(wire)], label: null, status: cable?.status ?? null }
    return [{ ...of, ...placed(wire.from, wire.to) }, { ...of, ...placed(wire.to, wire.from) }]
  })
  // A device on a bus whose drop is not recorded sits on its tee.
  const plugs = vessel.canBuses.flatMap(({ backbone }) => backbone.flatMap((element): readonly WireRow[] => {
    if (element.kind !== 'tee' || element.deviceTag === null || element.dropCableTag !== null) return []
    const [tee, device] = [{ tag: element.tag, terminal: null }, { tag: element.deviceTag, terminal: element.deviceTerminal }]
    const status = lookup.items.get(element.deviceTag)?.status ?? null
    if (!isThere({ status })) return []
    const of = { is: 'plug' as const, cable: null, conductors: [], label: null, status }
    return [{ ...of, ...placed(tee, device) }, { ...of, ...placed(device, tee) }]
  }))
  return [...cableRows, ...wireEnds, ...plugs]
}

/** A way belongs to its panel or busbar, unless its device is somewhere else. */
function ownerOf({ lookup, results }: ViewContext, tag: Tag): Tag {
  const circuit = lookup.circuits.get(tag)
  if (circuit === undefined) return tag
  const { zoneByTag } = results.cableBill
  return zoneByTag.get(circuit.fedFromTag) === zoneByTag.get(tag) ? circuit.fedFromTag : tag
}

/** Panels first; at each its own terminals, then its ways by number; then everything else by tag, terminal and cable. */
function inOrderOfWork({ lookup }: ViewContext, rows: readonly WireRow[]): readonly WireRow[] {
  const way = ({ here }: WireRow): number => { const circuit = lookup.circuits.get(here.tag); return circuit === undefined ? -1 : circuit.way ?? Number.MAX_VALUE }
  const later = ({ ownerTag }: WireRow): number => (lookup.panels.has(ownerTag) ? 0 : 1)
  return rows.toSorted((a, b) => later(a) - later(b) || compareTags(a.ownerTag, b.ownerTag) || way(a) - way(b)
    || compareTags(a.here.tag, b.here.tag) || compareTags(a.here.terminal ?? '', b.here.terminal ?? '')
    || compareTags(a.cable?.tag ?? '', b.cable?.tag ?? '') || Number(a.is === 'wire') - Number(b.is === 'wire'))
}
