/** What every page maker needs, gathered once. */
import type { AnyMethod } from '../calculate/method.js'
import type { AnyFindingKind, LocatedFinding } from '../findings/finding.js'
import { grouped, type Lookup, lookup } from '../model/lookup.js'
import type { Content } from '../model/content.js'
import type { Results } from '../model/results.js'
import type { Circuit, Edition, Tag, Vessel } from '../model/vessel.js'
import type { Basis } from '../references/basis/basis.js'
import { siteMap } from './site-map.js'
import { linkTo } from './text.js'
import type { Inline, PageKey, Text } from './view-model.js'

/** The lists of all calculations and all kinds of finding; the reference chapters are made from them. */
export interface Registries {
  readonly methods: readonly AnyMethod[]
  readonly findingKinds: readonly AnyFindingKind[]
}

export interface ViewContext {
  /** Whom the pack is for. */
  readonly edition: Edition
  readonly vessel: Vessel
  readonly results: Results
  readonly basis: Basis
  readonly content: Content
  readonly registries: Registries
  readonly findings: readonly LocatedFinding[]
  readonly lookup: Lookup
  readonly findingsBySubject: ReadonlyMap<Tag, readonly LocatedFinding[]>
  /** Circuits that keep a thing alive: those that list it, else those whose cables pass it, else its CAN bus's supply. */
  circuitsOf(tag: Tag): readonly Circuit[]
  addressOf(tag: Tag): PageKey | null
  /** Of a photograph, by its file. */
  photographPage(file: string): PageKey
  /** The tag, set as a designation and linked to its page where it has one. */
  tag(tag: Tag): Inline
  /** Tag and name: `P1 Helm display, port`; of zones and systems, whose tags are words, the name alone. */
  named(tag: Tag): Text
  nameOf(tag: Tag): string | null
}

export function viewContext(
  vessel: Vessel, results: Results, basis: Basis, findings: readonly LocatedFinding[], content: Content,
  registries: Registries, edition: Edition,
): ViewContext {
  const known = lookup(vessel)
  const { addressOf, photographPage } = siteMap(vessel)
  const findingsBySubject = grouped(findings, ({ subject }) => [subject.id])
  const passing = circuitsPassing(vessel, results)
  const tagInline = (tag: Tag): Inline => {
    const to = addressOf(tag)
    return to === null ? { is: 'tag', text: tag } : { is: 'link', tag: true, text: tag, to }
  }
  const nameOf = (tag: Tag): string | null =>
    known.items.get(tag)?.name ?? known.circuits.get(tag)?.name ?? known.zones.get(tag)?.name ?? known.systems.get(tag)?.name
    ?? known.points.get(tag)?.name ?? known.wireways.get(tag)?.name ?? known.cables.get(tag)?.name
    ?? known.canBuses.get(tag)?.name ?? known.ethernetNetworks.get(tag)?.name
    ?? known.serialLinks.get(tag)?.name ?? known.wirelessNetworks.get(tag)?.name ?? known.outsideLinks.get(tag)?.name
    ?? known.structures.get(tag)?.name ?? known.standingPlaces.get(tag)?.name ?? null
  return {
    edition, vessel, results, basis, content, registries, findings, lookup: known, findingsBySubject, addressOf, photographPage, nameOf,
    circuitsOf: tag => known.circuitsOfLoad.get(tag) ?? (passing.get(tag) ?? []).map(circuitTag => known.circuits.get(circuitTag)!),
    tag: tagInline,
    named: tag => {
      const name = nameOf(tag)
      const to = addressOf(tag)
      if (name !== null && to !== null && (known.zones.has(tag) || known.systems.has(tag))) return [linkTo(to, name)]
      return name === null ? [tagInline(tag)] : [tagInline(tag), ` ${name}`]
    },
  }
}

/** By tag of a thing without a circuit of its own: a switch in a circuit's way, a device that its CAN bus supplies. */
function circuitsPassing(vessel: Vessel, results: Results): ReadonlyMap<Tag, readonly Tag[]> {
  const { equipment } = lookup(vessel)
  // What stands ahead of the protective device is not protected by it.
  const passed = [...results.feeding.byCircuit].flatMap(([circuitTag, { segments }]) =>
    segments.flatMap(({ nearTag, farTag }) => [nearTag, farTag].filter(tag => equipment.has(tag)).map(tag => ({ tag, circuitTag }))))
  const onBuses = vessel.canBuses.flatMap(({ backbone }) => {
    const supplies = backbone.flatMap(element => (element.kind === 'power' && element.circuitTag !== null ? [element.circuitTag] : []))
    return backbone.flatMap(element => (element.kind === 'tee' && element.deviceTag !== null ? supplies.map(circuitTag => ({ tag: element.deviceTag!, circuitTag })) : []))
  })
  const pairs = grouped([...passed, ...onBuses], ({ tag }) => [tag])
  return new Map([...pairs].map(([tag, found]) => [tag, [...new Set(found.map(({ circuitTag }) => circuitTag))]]))
}
