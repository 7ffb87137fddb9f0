/** The column method for every battery and every feeder: what it feeds, load by load, beside its design current. */
import { inWords } from '../../findings/words.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import { type CurrentPart, designCurrentA, type FeedingResults } from '../../model/results.js'
import type { ColumnItem, ColumnLoad } from '../../model/results/energy.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { loadColumnCitation, loadColumnOf } from '../../references/tables/load-columns.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { columnTotalMethod } from './column-total.calc.js'

interface Gathered { readonly parts: readonly Pick<CurrentPart, 'tag' | 'currentA'>[]; readonly unknownTags: readonly Tag[] }

export function columnLoads(vessel: Vessel, feeding: FeedingResults): readonly ColumnLoad[] {
  const { circuits, circuitsFedFrom, panels, equipment } = lookup(vessel)
  const inUse = (circuit: Circuit): boolean => circuit.normalState === 'closed'
    && circuit.loadTags.some(tag => equipment.get(tag)?.status !== 'removed')

  /** The loads at the end of a circuit; a load that the circuits of several feeders list counts once in each. */
  function below(circuit: Circuit, seen: ReadonlySet<Tag>): Gathered {
    const feed = feeding.byCircuit.get(circuit.tag)
    if (feed === undefined || seen.has(circuit.tag) || feed.infeed?.only === true) return { parts: [], unknownTags: [] }
    const points = circuit.loadTags.filter(tag => isDistributionPoint(vessel, tag))
    const behind = points.map(tag => belowAll((circuitsFedFrom.get(tag) ?? []).filter(inUse), new Set([...seen, circuit.tag])))
    const own = feed.currentParts.filter(({ from }) => from !== 'circuit' && from !== 'output')
    const loads = circuit.loadTags.filter(tag => !points.includes(tag) && equipment.get(tag)?.status !== 'removed')
    const missing = loads.filter(tag => loadColumnOf(kindAt(tag)).column !== 'none' && !own.some(part => part.tag === tag) && feed.infeed?.parts.some(part => part.tag === tag) !== true)
    // Where the author gives the current of a circuit whose loads are not all known, it stands for them.
    const declared = missing.length > 0 && feed.designCurrent.status === 'declared' ? feed.designCurrent.designCurrentA : null
    if (declared !== null) return { parts: [{ tag: circuit.tag, currentA: declared }], unknownTags: [] }
    return { parts: [...own, ...behind.flatMap(({ parts }) => parts)], unknownTags: [...missing, ...behind.flatMap(({ unknownTags }) => unknownTags)] }
  }
  function belowAll(circuits: readonly Circuit[], seen: ReadonlySet<Tag>): Gathered {
    const all = circuits.map(circuit => below(circuit, seen))
    return { parts: all.flatMap(({ parts }) => parts), unknownTags: all.flatMap(({ unknownTags }) => unknownTags) }
  }

  /** The kind that decides the column: of a whole circuit its first load's. */
  const kindAt = (tag: Tag): string => equipment.get(tag)?.kind ?? equipment.get(circuits.get(tag)?.loadTags[0] ?? '')?.kind ?? 'other'

  function itemsOf(parts: Gathered['parts']): readonly ColumnItem[] {
    const placed = parts.map(({ tag, currentA }) => {
      const given = equipment.get(tag)?.loadColumn ?? null
      return { tag, currentA, row: given === null ? loadColumnOf(kindAt(tag)) : { column: given, reason: 'given for it' } }
    })
    const radios = placed.filter(({ row }) => row.column === 'largest in a')
    const largest = radios.reduce<(typeof radios)[number] | null>((best, each) => (best === null || each.currentA > best.currentA ? each : best), null)
    return placed.map(item => ({
      tag: item.tag, currentA: item.currentA,
      column: item.row.column !== 'largest in a' ? item.row.column : item === largest ? 'a' as const : 'b' as const,
      reason: item.row.column !== 'largest in a' || item === largest ? item.row.reason : 'a further radio',
    }))
  }

  function totalOf({ parts, unknownTags }: Gathered): Pick<ColumnLoad, 'items' | 'total'> {
    const items = itemsOf(parts)
    const currents = (column: ColumnItem['column']) => items.filter(item => item.column === column).map(({ currentA }) => currentA)
    const add = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
    const reason = unknownTags.length > 0 ? `no current or power is recorded for ${inWords(unknownTags)}` : items.length === 0 ? 'it feeds no load' : null
    return {
      items,
      total: reason !== null ? { status: 'not computed', method: columnTotalMethod.id, reason } : runMethod(columnTotalMethod, {
        columnASumA: add(currents('a')), columnBSumA: add(currents('b')), columnBLargestA: Math.max(0, ...currents('b')),
      }),
    }
  }

  const batteries = vessel.batteries.map(({ tag }): ColumnLoad => ({
    tag, pointTags: [], designCurrentA: null, againstProtection: null, againstPanel: null, panelTag: null,
    ...totalOf(belowAll((circuitsFedFrom.get(tag) ?? []).filter(inUse), new Set())),
  }))
  const isFeeder = (circuit: Circuit): boolean => inUse(circuit) && circuit.loadTags.some(tag => isDistributionPoint(vessel, tag))
  const feeders = vessel.circuits.filter(circuit => isFeeder(circuit) && feeding.byCircuit.get(circuit.tag)?.supplyForm !== 'ac').map((circuit): ColumnLoad => {
    const pointTags = circuit.loadTags.filter(tag => isDistributionPoint(vessel, tag))
    const { items, total } = totalOf(below(circuit, new Set()))
    const totalA = total.status === 'computed' ? total.output.columnTotalA : null
    const against = (ratedA: number | null | undefined, place: string) => (totalA === null || ratedA === null || ratedA === undefined ? null
      : compare('columnTotalA', totalA, { relation: 'at most', value: ratedA, citation: { ...loadColumnCitation, place } }))
    const [panel] = pointTags.flatMap(tag => panels.get(tag) ?? []).filter(({ ratedCurrentA }) => ratedCurrentA !== null).toSorted((a, b) => a.ratedCurrentA! - b.ratedCurrentA!)
    return {
      tag: circuit.tag, pointTags, items, total,
      designCurrentA: designCurrentA(feeding.byCircuit.get(circuit.tag)),
      againstProtection: against(circuit.protection?.ratedCurrentA, 'd.c. load calculation, for the feeder and its protective device'),
      againstPanel: against(panel?.ratedCurrentA, 'd.c. load calculation, for the panel'),
      panelTag: panel?.tag ?? null,
    }
  })
  return [...batteries, ...feeders]
}
