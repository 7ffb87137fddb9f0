/** The parts of CAN backbones by their tag: a supply cable may end at one of them. */
import type { Tag, Vessel } from '../../model/vessel.js'

export type Backbones = ReadonlyMap<Tag, { readonly busTag: Tag; readonly circuitTag: Tag | null }>

export function backbonesOf(vessel: Vessel): Backbones {
  return new Map(vessel.canBuses.flatMap(bus => bus.backbone.flatMap(element =>
    element.kind === 'segment' ? [] : [[element.tag, { busTag: bus.tag, circuitTag: element.kind === 'power' ? element.circuitTag : null }]])))
}
