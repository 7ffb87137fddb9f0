/** Which cautions hold where: by kinds of equipment, by system, by task, by page. */
import type { Caution, SignalWord } from '../../model/content.js'
import { kindsOf } from '../../model/item-kinds.js'
import { isThere } from '../../model/lookup.js'
import type { System, Tag } from '../../model/vessel.js'
import type { CautionPage } from '../../references/caution-words.js'
import type { ProcedurePlace } from '../../references/procedure-places.js'
import { isSystemKind, type SystemKind } from '../../references/system-kinds.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { joined, linkTo, strong } from '../text.js'
import type { Block, Callout } from '../view-model.js'

/** Where a caution is asked for: one that belongs to any of these is meant. */
export interface Where {
  readonly kinds?: readonly string[]
  readonly system?: SystemKind | null
  readonly task?: ProcedurePlace
  readonly pages?: readonly CautionPage[]
}

const severity: Readonly<Record<SignalWord, number>> = { DANGER: 0, WARNING: 1, CAUTION: 2, NOTICE: 3 }

/**
 * The cautions that belong there and hold on this boat, each once: the most severe first, of the same word what is asked for
 * by task or page before what comes with equipment, then what speaks of fewer kinds, since it says more of this one.
 */
export function cautionsFor(context: ViewContext, { kinds = [], system = null, task, pages = [] }: Where): readonly Caution[] {
  const asked = ({ tasks, pages: shown }: Caution): boolean => (task !== undefined && tasks.includes(task)) || shown.some(page => pages.includes(page))
  const byThing = ({ equipmentKinds, systems }: Caution): boolean => equipmentKinds.some(kind => kinds.includes(kind)) || (system !== null && systems.includes(system))
  const rank = (caution: Caution): number => (asked(caution) ? 0 : 100 + caution.equipmentKinds.length)
  return context.content.cautions.filter(caution => (asked(caution) || byThing(caution)) && holdsOnBoard(context, caution))
    .toSorted((a, b) => severity[a.signal] - severity[b.signal] || rank(a) - rank(b))
}

/** False for gas on a boat without gas. What names no equipment and no system holds on every boat. */
export function holdsOnBoard(context: ViewContext, { equipmentKinds, systems, needs, onEveryBoat }: Caution): boolean {
  const there = kindsOnBoard(context)
  if (needs.length > 0 && !needs.some(kind => there.has(kind))) return false
  if (onEveryBoat || (equipmentKinds.length === 0 && systems.length === 0)) return true
  if (systems.includes('mains') && hasMainsCables(context)) return true
  return equipmentKinds.some(kind => there.has(kind)) || context.vessel.systems.some(each => { const kind = systemKindOf(each); return kind !== null && systems.includes(kind) })
}

/** Mains voltage on board shows by its cables even where no source of it is recorded. */
const hasMainsCables = ({ vessel, lookup }: ViewContext): boolean => vessel.cables.some(cable => isThere(cable) && lookup.cableTypes.get(cable.typeTag ?? '')?.use === 'ac power')

/** What a yard calls `mains` and gives no kind is the usual system of that name. */
export const systemKindOf = ({ kind, tag }: System): SystemKind | null => kind ?? (isSystemKind(tag) ? tag : null)

/** Items by kind, of those that are there. */
export function kindsOnBoard(context: ViewContext): ReadonlyMap<string, readonly Tag[]> {
  const known = onBoard.get(context)
  if (known !== undefined) return known
  const made = new Map<string, Tag[]>()
  for (const item of context.lookup.items.values()) {
    if (!isThere(item)) continue
    for (const kind of kindsOf(item)) made.set(kind, [...made.get(kind) ?? [], item.tag])
  }
  onBoard.set(context, made)
  return made
}
const onBoard = new WeakMap<ViewContext, ReadonlyMap<string, readonly Tag[]>>()

export const calloutOf = ({ key, signal, title, markdown }: Caution): Callout => ({ is: 'callout', signal, title, markdown, anchor: `caution-${key}` })

/** At most so many stand in full on a page; who meets fifteen reads none. Every DANGER does. */
const mostInFull = 2

/** The cautions of a place: the first in full, the rest as a line of links to the chapter. */
export function cautionBlocks(context: ViewContext, where: Where, { inFull = mostInFull } = {}): readonly Block[] {
  const cautions = cautionsFor(context, where)
  const full = cautions.filter(({ signal }, i) => i < inFull || (inFull > 0 && signal === 'DANGER'))
  const rest = cautions.slice(full.length)
  return [...full.map(calloutOf), ...(rest.length === 0 ? [] : [linesOf(rest, full.length > 0 ? 'Read also' : 'Read first')])]
}

const linesOf = (cautions: readonly Caution[], words: string): Block =>
  ({ is: 'paragraph', text: [strong(`${words}: `), ...joined(cautions.map(({ key, signal, title }) => [`${signal} `, linkTo(`${fixedPages.safety}#caution-${key}`, title)]), '; '), '.'] })

/** The same on paper, where the chapter on safety is in the manual: nothing but the line. */
export const cautionLine = (context: ViewContext, where: Where): readonly Block[] => cautionBlocks(context, where, { inFull: 0 })

/** On a card, which is read without the manual beside it: what the chapter warns of, by name. */
export function cautionReference(context: ViewContext, where: Where): readonly Block[] {
  const cautions = cautionsFor(context, where)
  return cautions.length === 0 ? [] : [{ is: 'paragraph', text: ['The manual warns, under ', linkTo(fixedPages.safety, 'Safety'), ': ', ...joined(cautions.map(({ title }) => [title]), '; '), '.'] }]
}
