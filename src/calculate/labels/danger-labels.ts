/** What the boat's own data say is dangerous, each with the place where a label has to warn of it. */
import { grouped, isDistributionPoint, isThere, lookup } from '../../model/lookup.js'
import type { DangerKind, DangerText } from '../../model/content.js'
import type { LabelWords } from '../../model/results/labels.js'
import type { Results } from '../../model/results.js'
import type { Battery, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { leastWarnedDistanceM } from '../../references/tables/label-practice.js'
import { say } from '../../units/format.js'
import { feedBacks, passedBy } from '../emergency/isolation.js'
import { compareTags } from '../../model/tag-order.js'
import { placesOf } from '../wireways/places.js'
import { zoneOf } from './place.js'

export type DangerSources = Pick<Results, 'feeding' | 'acSupply' | 'radio'>
interface Danger { readonly kind: DangerKind; readonly tag: Tag; readonly facts: Readonly<Record<string, string>> }

/** Started from a distance or by themselves, with parts that a hand can reach. */
const movingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['thruster', 'windlass', 'winch', 'gyro stabiliser', 'autopilot drive'])

export function dangerLabels(vessel: Vessel, before: DangerSources, texts: readonly DangerText[]): readonly LabelWords[] {
  const { items } = lookup(vessel)
  const placeOf = placesOf(vessel)
  return dangers(vessel, before).flatMap(({ kind, tag, facts }): readonly LabelWords[] => {
    const text = texts.find(each => each.kind === kind)
    const item = items.get(tag)
    if (text === undefined || item === undefined || !isThere(item)) return []
    return [{
      use: 'danger', aboutTag: tag, end: null, danger: kind, signal: text.signal, headline: text.signal, texts: [filled(text.title, facts), filled(text.text, facts)],
      place: { zoneTag: zoneOf(placeOf, tag), atTag: tag, words: text.where }, copiesCount: 1, hasCode: false,
    }]
  })
}

/** Errors: the text asks for a fact that this danger does not have, which is a fault of ours. */
const filled = (text: string, facts: Readonly<Record<string, string>>): string => text.replace(/\{\{ (\w+) \}\}/g, (_, name: string) => {
  const fact = facts[name]
  if (fact === undefined) throw new Error(`a danger label asks for "${name}", which is not among its facts`)
  return fact
})

function dangers(vessel: Vessel, { feeding, acSupply, radio }: DangerSources): readonly Danger[] {
  const mains = mainsDangers(vessel, { feeding, acSupply })
  return [
    ...mains,
    ...severalSupplies(vessel, feeding, mains),
    ...liveInLight(vessel),
    ...vessel.batteries.flatMap(batteryDanger),
    ...unprotected(vessel, feeding),
    ...vessel.equipment.filter(({ kind }) => movingKinds.has(kind)).map(({ tag }): Danger => ({ kind: 'moving machine', tag, facts: {} })),
    ...radio.exposures.flatMap(({ tag, deciding }): readonly Danger[] =>
      (deciding === null || deciding.value < leastWarnedDistanceM ? [] : [{ kind: 'radiation', tag, facts: { distance: say('distanceM', deciding.value, vessel) } }])),
  ]
}

/** `G1 House bank; X91 Shore inlet`: names have commas of their own. */
function named(vessel: Vessel, tags: Iterable<Tag>): string {
  const { items } = lookup(vessel)
  return [...new Set(tags)].map(tag => `${tag} ${items.get(tag)?.name ?? ''}`.trim()).join('; ')
}

/** `G1 House bank (open Q1)`: with what cuts the thing off from each battery that feeds it. Chargers, sun and shore are told by their names alone. */
function namedWithCutOff(vessel: Vessel, feeding: Results['feeding'], tag: Tag, sourceTags: Iterable<Tag>): string {
  return [...new Set(sourceTags)].map(sourceTag => {
    const openTags = cutOffTags(vessel, feeding, tag, sourceTag)
    return `${named(vessel, [sourceTag])}${openTags.length === 0 ? '' : ` (open\u00A0${openTags.join(', ')})`}`
  }).join('; ')
}

/** The battery isolators between the two, else the device of the circuit at the battery; none of a source that is no battery. */
function cutOffTags(vessel: Vessel, { byCircuit }: Results['feeding'], tag: Tag, sourceTag: Tag): readonly Tag[] {
  const { batteries, circuits, equipment, circuitsOfLoad } = lookup(vessel)
  if (!batteries.has(sourceTag) || tag === sourceTag) return []
  const found = (circuitsOfLoad.get(tag) ?? []).filter(circuit => byCircuit.get(circuit.tag)?.sourceTag === sourceTag).flatMap((circuit): readonly Tag[] => {
    const chain = byCircuit.get(circuit.tag)?.chain ?? []
    const isolators = chain.flatMap(circuitTag => passedBy(byCircuit.get(circuitTag))).filter(passed => equipment.get(passed)?.kind === ('battery isolator' satisfies EquipmentKindKey))
    const first = circuits.get(chain[0] ?? circuit.tag)
    return isolators.length > 0 ? isolators : first?.protection == null ? [] : [first.tag]
  })
  return [...new Set(found)].toSorted(compareTags)
}

/** Where the circuits that list the thing start. */
const sourcesOf = (vessel: Vessel, feeding: Results['feeding'], tag: Tag): readonly Tag[] =>
  [...new Set((lookup(vessel).circuitsOfLoad.get(tag) ?? []).flatMap(circuit => feeding.byCircuit.get(circuit.tag)?.sourceTag ?? []))]

/** Inlets, sources, and what a.c. circuits start from or lead to that has several ways. */
function mainsDangers(vessel: Vessel, { feeding, acSupply }: Pick<DangerSources, 'feeding' | 'acSupply'>): readonly (Danger & { readonly sourceTags: readonly Tag[] })[] {
  const { panels, busbars, circuits } = lookup(vessel)
  const voltage = (volts: readonly number[]): string => `${[...new Set(volts)].map(volt => say('nominalVoltageV', volt)).join(' and ')} a.c.`
  const atSources = acSupply.sources.map(({ tag, kind, nominalVoltageV }) => {
    const behind = sourcesOf(vessel, feeding, tag)
    const sourceTags = behind.length > 0 ? behind : [tag]
    return { kind: kind === 'shore inlet' ? 'shore inlet' as const : 'mains' as const, tag, sourceTags, facts: { voltage: voltage([nominalVoltageV]), sources: namedWithCutOff(vessel, feeding, tag, sourceTags) } }
  })
  const points = new Map<Tag, Tag[]>()
  for (const [circuitTag, { supplyForm }] of feeding.byCircuit) {
    const circuit = circuits.get(circuitTag)!
    if (supplyForm !== 'ac') continue
    for (const tag of [circuit.fedFromTag, ...circuit.loadTags]) if (panels.has(tag) || busbars.has(tag)) points.set(tag, [...points.get(tag) ?? [], circuitTag])
  }
  const atPoints = [...points].map(([tag, circuitTags]) => {
    const sources = acSupply.sources.filter(source => source.circuitTags.some(circuitTag => circuitTags.includes(circuitTag)))
    const sourceTags = sources.map(source => source.tag)
    return { kind: 'mains' as const, tag, sourceTags, facts: { voltage: voltage(sources.map(({ nominalVoltageV }) => nominalVoltageV)), sources: named(vessel, sourceTags) } }
  })
  return [...atSources, ...atPoints.filter(({ sourceTags }) => sourceTags.length > 0)]
}

/**
 * What circuits feed from several sources, and busbars and panels onto which chargers, alternators or the sun feed besides.
 * None where the label on mains voltage names all of them already.
 */
function severalSupplies(vessel: Vessel, feeding: Results['feeding'], mains: readonly { readonly tag: Tag; readonly sourceTags: readonly Tag[] }[]): readonly Danger[] {
  const { circuitsOfLoad, items } = lookup(vessel)
  // Of a feeder that only charges, the parts are circuits: what charges stands at their ends, and has its own row.
  const onto = grouped(feedBacks(vessel, feeding).filter(({ sourceTag, ontoTag }) => items.has(sourceTag) && isDistributionPoint(vessel, ontoTag)), ({ ontoTag }) => [ontoTag])
  return [...circuitsOfLoad.keys()].flatMap((tag): readonly Danger[] => {
    const sourceTags = [...new Set([...sourcesOf(vessel, feeding, tag), ...(onto.get(tag) ?? []).map(({ sourceTag }) => sourceTag)])]
    const said = mains.find(danger => danger.tag === tag)?.sourceTags ?? []
    if (!items.has(tag) || sourceTags.length < 2 || sourceTags.every(sourceTag => said.includes(sourceTag))) return []
    return [{ kind: 'several supplies', tag, facts: { sources: namedWithCutOff(vessel, feeding, tag, sourceTags) } }]
  })
}

/** What the cables of solar panels lead to. */
function liveInLight(vessel: Vessel): readonly Danger[] {
  const { circuitsOfLoad, equipment } = lookup(vessel)
  return [...circuitsOfLoad].flatMap(([tag, circuits]): readonly Danger[] => {
    const panelTags = circuits.map(({ fedFromTag }) => fedFromTag).filter(fedFromTag => equipment.get(fedFromTag)?.kind === 'solar panel')
    return panelTags.length === 0 ? [] : [{ kind: 'live in light', tag, facts: { sources: named(vessel, panelTags) } }]
  })
}

const chemistries = { lfp: 'lithium iron phosphate' } as const

function batteryDanger({ tag, chemistry }: Battery): readonly Danger[] {
  if (chemistry === null) return []
  return chemistry === 'lfp' ? [{ kind: 'lithium battery', tag, facts: { chemistry: chemistries.lfp } }] : [{ kind: 'lead-acid battery', tag, facts: {} }]
}

/** At both ends. A solar panel gives no more than its cable carries. */
function unprotected(vessel: Vessel, feeding: Results['feeding']): readonly Danger[] {
  const { equipment } = lookup(vessel)
  const circuits = vessel.circuits.filter(({ protection, unprotectedReason, fedFromTag }) => protection === null && unprotectedReason !== null && equipment.get(fedFromTag)?.kind !== 'solar panel')
  const ends = circuits.flatMap(({ fedFromTag, loadTags }) => [fedFromTag, ...loadTags].map(tag => ({ tag, fedFromTag })))
  const byTag = new Map<Tag, Tag[]>()
  for (const { tag, fedFromTag } of ends) byTag.set(tag, [...byTag.get(tag) ?? [], fedFromTag])
  return [...byTag].map(([tag, fedFromTags]) => ({ kind: 'unprotected conductor', tag, facts: { sources: namedWithCutOff(vessel, feeding, tag, fedFromTags) } }))
}
