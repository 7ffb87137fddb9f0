/** Cables that carry data or radio signals, and the things at their two ends. */
import { lookup } from '../../model/lookup.js'
import type { Cable, CableUse, PortKind, Vessel } from '../../model/vessel.js'

export interface Link { readonly cable: Cable; readonly carries: Exclude<CableUse, 'power' | 'ac power' | 'bonding'> | PortKind }

/** Every cable whose type, or failing that the port it ends on, says that it carries data or radio signals. */
export function dataLinks(vessel: Vessel): readonly Link[] {
  return vessel.cables.filter(({ status }) => status !== 'removed').flatMap(cable => {
    const carries = carriedBy(vessel, cable)
    return carries === null ? [] : [{ cable, carries }]
  })
}

function carriedBy(vessel: Vessel, cable: Cable): Link['carries'] | null {
  const { cableTypes, equipment } = lookup(vessel)
  const use = cable.typeTag === null ? undefined : cableTypes.get(cable.typeTag)?.use
  if (use === 'power' || use === 'ac power' || use === 'bonding') return null
  const ports = [cable.from, cable.to].map(end => equipment.get(end.tag)?.ports.find(({ name }) => name === end.terminal)?.kind)
  const port = ports.find(kind => kind !== undefined && kind !== 'power') ?? null
  // A port says more than the type: video and audio run in signal cable.
  return use === undefined || use === 'signal' ? port ?? use ?? null : use
}

const tradeNames: Partial<Record<Link['carries'], string>> = { 'can bus': 'CAN bus', ethernet: 'Ethernet', usb: 'USB' }
/** As the trade writes it. */
export const carriedInWords = ({ carries }: Link): string => tradeNames[carries] ?? carries
