/** What several pages say of a circuit. */
import type { Circuit, Tag } from '../../model/vessel.js'
import { say, saySize } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { joined, muted, notRecorded } from '../text.js'
import type { Text } from '../view-model.js'

export function protectionText({ protection, unprotectedReason }: Circuit): string {
  if (protection !== null) return `${protection.device}${protection.device.includes(',') ? ',' : ''} ${say('ratedCurrentA', protection.ratedCurrentA)}`
  return unprotectedReason === null ? 'no protection recorded' : `unprotected: ${unprotectedReason}`
}

/** Its own, else that of what it is fed from. */
export const zoneOfCircuit = ({ lookup }: ViewContext, { zoneTag, fedFromTag }: Circuit): Tag | null => zoneTag ?? lookup.items.get(fedFromTag)?.zoneTag ?? null

/** Where the protective device is: panel and way, zone, words; with how to get there for whoever must go now. */
export function circuitPlace(context: ViewContext, circuit: Circuit, { withAccess = false } = {}): Text {
  const source = context.lookup.items.get(circuit.fedFromTag)
  const zone = zoneOfCircuit(context, circuit)
  const location = circuit.location ?? (circuit.zoneTag === null ? source?.location ?? null : null)
  const access = zone === null || !withAccess ? null : context.lookup.zones.get(zone)?.access ?? null
  return [
    context.tag(circuit.fedFromTag),
    ...(circuit.way === null ? [] : [` way ${circuit.way}`]),
    ', ',
    ...(zone === null ? [notRecorded] : context.named(zone)),
    ...(location === null ? [] : [' ', muted(`(${location})`)]),
    ...(access === null ? [] : [' ', muted(`(access: ${access})`)]),
  ]
}

/** Cables with their sizes, one a line. */
export function cableCell(context: ViewContext, tags: readonly Tag[]): Text {
  return joined(tags.map(tag => {
    const type = context.lookup.cableTypes.get(context.lookup.cables.get(tag)?.typeTag ?? '')
    return [context.tag(tag), type?.size == null ? '' : `\u00A0${saySize(type.size)}`]
  }), { is: 'break' })
}
