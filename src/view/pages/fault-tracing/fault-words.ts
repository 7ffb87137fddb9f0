/** Words of fault tracing: where a thing is, what to look for, what is lost. */
import { endText } from '../../../model/cable-label.js'
import { grouped, isSwitch, isThere } from '../../../model/lookup.js'
import type { Effect, LossKind } from '../../../model/results/dependency.js'
import type { FaultPoint } from '../../../model/results/fault-tracing.js'
import type { Equipment, SafetyService, Tag } from '../../../model/vessel.js'
import { safetyServiceOf, safetyServices, serviceDefinitions } from '../../../references/safety-services.js'
import type { ViewContext } from '../../context.js'
import { dash, joined, lineBreak, muted, strong } from '../../text.js'
import type { Text } from '../../view-model.js'
import { circuitPlace } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import type { EquipmentKindKey } from '../../../references/equipment-kinds.js'
import { say } from '../../../units/format.js'

/** Where to go for it: panel and way, zone, words, and how to get there. */
export function thingPlace(context: ViewContext, tag: Tag, { withAccess = true } = {}): Text {
  const { lookup, vessel } = context
  const circuit = lookup.circuits.get(tag)
  if (circuit !== undefined) return circuitPlace(context, circuit, { withAccess })
  const item = lookup.items.get(tag)
  if (item !== undefined) return placeText(context, item, { withAccess })
  const cable = lookup.cables.get(tag)
  if (cable !== undefined) return [`from ${endText(cable.from)} to ${endText(cable.to)}`]
  const part = vessel.canBuses.flatMap(({ backbone }) => backbone).find(each => each.kind !== 'segment' && each.tag === tag)
  return part !== undefined && 'zoneTag' in part && part.zoneTag !== null ? context.named(part.zoneTag) : dash
}

/** Where spare fuses are kept: nothing where no store is recorded. */
export const spareStores = ({ vessel }: ViewContext): readonly Equipment[] =>
  vessel.equipment.filter(item => item.kind === ('tools and spares' satisfies EquipmentKindKey) && isThere(item))

/** The least that a thing, or a point on the way to it, may show: of a thing never less than its maker asks for. */
export function leastVoltage({ lookup }: ViewContext, { what, tag }: Pick<FaultPoint, 'what' | 'tag'>, leastVoltageV: number): string {
  const asked = what === 'item' ? lookup.equipment.get(tag)?.supplyMinV ?? 0 : 0
  return say('leastVoltageV', Math.max(leastVoltageV, asked))
}

/** The service that ends, or loses a part, with the item; null for none, or where the item still gives it. */
function serviceHit({ lookup }: ViewContext, { tag, how }: Effect): SafetyService | null {
  const item = lookup.equipment.get(tag)
  const service = item === undefined || how === 'degraded' ? null : safetyServiceOf(item)
  return service === null || (how === 'no data' && !serviceDefinitions[service].endsWithoutData) ? null : service
}

const lossTitles: Readonly<Record<LossKind, string>> = {
  'dead': 'No supply', 'no data': 'Without data they need', 'cut off': 'Nothing left to work with', 'degraded': 'Work with less',
}

export interface LossGroup { readonly title: string; readonly isService: boolean; readonly effects: readonly Effect[] }

/** Safety services first, the most pressing on top; then the rest by how it is lost. */
export function lossGroups(context: ViewContext, effects: readonly Effect[]): readonly LossGroup[] {
  const byService = grouped(effects, effect => { const service = serviceHit(context, effect); return service === null ? [] : [service] })
  const rest = grouped(effects.filter(effect => serviceHit(context, effect) === null), ({ how }) => [how])
  return [
    ...safetyServices.flatMap(service => { const hit = byService.get(service); return hit === undefined ? [] : [{ title: serviceDefinitions[service].title, isService: true, effects: hit }] }),
    ...(Object.keys(lossTitles) as LossKind[]).flatMap(how => { const hit = rest.get(how); return hit === undefined ? [] : [{ title: lossTitles[how], isService: false, effects: hit }] }),
  ]
}

/** More than these stand in running text, so that a main fuse does not fill a screen. */
const mostLines = 8

/** Names with what is lost; a short list ends with how many more. */
export function effectNames(context: ViewContext, effects: readonly Effect[], { most = Infinity, withCause = true } = {}): Text {
  const shown = effects.slice(0, most).map((effect): Text => {
    const cause = withCause ? causeText(effect) : null
    return [...context.named(effect.tag), ...(cause === null ? [] : [' ', muted(`(${cause})`)])]
  })
  const more = effects.length - shown.length
  return [...joined(shown, withCause && shown.length <= mostLines ? lineBreak : '; '), ...(more > 0 ? [` and ${more} more`] : [])]
}

/** What it misses, where the heading does not say it: `data from B7`. */
function causeText({ how, causes }: Effect): string | null {
  const tagsOf = (of: string) => causes.filter(cause => cause.of === of).flatMap(({ tag }) => tag ?? []).join(', ')
  if (how === 'dead') return null
  const words = ([['giver', 'data from'], ['partner', 'works with'], ['network', 'off'], ['supply', 'left without its supply by'], ['charging', 'no longer charges through']] as const)
    .flatMap(([of, text]) => { const tags = tagsOf(of); return tags === '' ? [] : [`${text} ${tags}`] })
  return words.join('; ')
}

/** A link is closed at the switch in its way, not at its fuse: "Q3 (link F38)"; without one the circuit's own device is meant. */
export function closedBy(context: ViewContext, circuitTag: Tag): Text {
  const feed = context.results.feeding.byCircuit.get(circuitTag)
  const passed = [...feed?.supplySegments ?? [], ...feed?.segments ?? []].map(({ farTag }) => farTag)
  const switches = [...new Set(passed)].filter(tag => isSwitch(context.vessel, tag))
  return switches.length === 0 ? [context.tag(circuitTag)] : [...joined(switches.map(tag => [context.tag(tag)])), ' (link ', context.tag(circuitTag), ')']
}

export const offersLink = (context: ViewContext, effects: readonly { readonly restoreBy: readonly Tag[] }[]): boolean =>
  effects.some(({ restoreBy }) => restoreBy.some(tag => context.lookup.circuits.get(tag)?.normalState === 'open'))

/** Said wherever closing a link is offered. */
export const linkCaution = 'Closing a link joins two supplies. First find the fault: what is faulty stays cut off, or the link feeds it. Open the link again as soon as you can, or it empties the good battery.'

/** By which circuits all or some of it comes back by hand. */
export function restoreText(context: ViewContext, effects: readonly { readonly restoreBy: readonly Tag[] }[]): Text {
  const restored = effects.filter(({ restoreBy }) => restoreBy.length > 0)
  const circuits = [...new Set(restored.flatMap(({ restoreBy }) => restoreBy))].flatMap(tag => context.lookup.circuits.get(tag) ?? [])
  if (circuits.length === 0) return dash
  const close = circuits.filter(({ normalState }) => normalState === 'open')
  const bypass = circuits.filter(({ normalState }) => normalState === 'closed')
  const means = [
    ...(close.length === 0 ? [] : [['close ', ...joined(close.map(({ tag }) => closedBy(context, tag)))]]),
    ...(bypass.length === 0 ? [] : [['bypass ', ...joined(bypass.map(({ tag }) => [context.tag(tag)]))]]),
  ]
  return [...joined(means, '; '), ...(restored.length < effects.length ? [' ', muted(`(${restored.length} of ${effects.length})`)] : [])]
}

/** One line for a cell of a table: services first, the rest by number and name. */
export function lossLine(context: ViewContext, effects: readonly Effect[]): Text {
  if (effects.length === 0) return [muted('nothing that is recorded')]
  return joined(lossGroups(context, effects).map(({ title, isService, effects: hit }): Text =>
    [isService ? strong(`${title}: `) : muted(`${title}: `), ...effectNames(context, hit, { most: 6, withCause: false })]), lineBreak)
}
