/** How far the work on the boat is. */
import { isThere, lookup } from '../../model/lookup.js'
import type { MeasuredThing } from '../../model/results/commissioning.js'
import type { Progress, TestDue, ZoneProgress } from '../../model/results/completeness.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { BeforeCompleteness } from './rule.js'

export function progressOf(vessel: Vessel, { commissioning: { coverage }, configuration: { software } }: BeforeCompleteness): Progress {
  const { items } = lookup(vessel)
  const cables = vessel.cables.filter(isThere)
  const photographed = new Set(vessel.photographs.map(({ zoneTag }) => zoneTag))
  const due = (what: TestDue['what'], things: readonly MeasuredThing[]): readonly TestDue[] =>
    things.filter(({ missing }) => missing.length > 0).map(({ tag, numbers, missing }) => ({ tag, what, begun: numbers.length > 0, missing }))
  return {
    byZone: [...vessel.zones.map(({ tag }) => tag), null].flatMap(zoneTag => zoneProgress(vessel, zoneTag)),
    openCables: cables.filter(({ status }) => status !== 'commissioned').map(({ tag, status }) => ({ tag, status })),
    cablesWithoutType: cables.filter(({ typeTag }) => typeTag === null).map(({ tag }) => tag),
    testsDue: [
      ...due('circuit', coverage.circuits), ...due('battery', coverage.batteries), ...due('residual-current device', coverage.residualDevices),
      ...due('CAN bus', coverage.buses), ...due('transmitter', coverage.transmitters),
    ],
    softwareUnread: software.filter(({ version }) => version === null).map(({ itemTag }) => itemTag),
    withoutDocument: software.filter(({ itemTag }) => items.get(itemTag)!.documents.length === 0).map(({ itemTag }) => itemTag),
    zonesWithoutPhotograph: vessel.zones.filter(({ tag }) => !photographed.has(tag)).map(({ tag }) => tag),
  }
}

/** Nothing of a zone in which nothing is. */
function zoneProgress(vessel: Vessel, zoneTag: Tag | null): readonly ZoneProgress[] {
  const items = [...lookup(vessel).items.values()].filter(item => isThere(item) && item.zoneTag === zoneTag)
  if (items.length === 0) return []
  const counts = { planned: 0, fitted: 0, commissioned: 0, removed: 0, none: 0 }
  for (const { status } of items) counts[status ?? 'none']++
  return [{ zoneTag, counts, open: items.filter(({ status }) => status !== 'commissioned').map(({ tag, status }) => ({ tag, status })) }]
}
