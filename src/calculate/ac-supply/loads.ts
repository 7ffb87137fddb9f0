/** What is connected to an a.c. source, and what of it runs at the same time in each operating mode. */
import type { Limit } from '../../findings/finding.js'
import { grouped, isDistributionPoint, lookup } from '../../model/lookup.js'
import type { AcLoad, AverageLoad, LoadSum, ModeLoad } from '../../model/results/ac-supply.js'
import type { FeedingResults } from '../../model/results.js'
import type { Circuit, Duty, Equipment, OperatingMode, Period, Tag, Vessel } from '../../model/vessel.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { averageLoadMethod } from './average-load.calc.js'
import { connectedLoadMethod } from './connected-load.calc.js'
import { type AcOutput, isPassedOn, type SuppliedCircuit } from './supplied.js'

/** An item that draws through a source, or a circuit whose current its author gives. */
export interface Consumer {
  readonly tag: Tag
  readonly circuit: Circuit
  /** Circuits from the source down to its own. */
  readonly way: readonly Circuit[]
  readonly nominalVoltageV: number
  readonly currentA: number | null
  /** What stands for the whole circuit: the items whose duties say when it runs. */
  readonly itemTags: readonly Tag[]
}

export function consumersOf(vessel: Vessel, feeding: FeedingResults, supplied: readonly SuppliedCircuit[]): readonly Consumer[] {
  const { equipment } = lookup(vessel)
  return supplied.flatMap(({ circuit, way, nominalVoltageV }): Consumer[] => {
    const parts = feeding.byCircuit.get(circuit.tag)?.currentParts ?? []
    const loads = [...new Set(circuit.loadTags)].filter(tag => equipment.get(tag)?.status !== 'removed')
    const itemTags = loads.filter(tag => !isDistributionPoint(vessel, tag) && !isPassedOn(vessel, tag))
    const base = { circuit, way, nominalVoltageV }
    // The current that an author gives for a feeder is what its circuits draw, and they are counted themselves.
    if (circuit.designCurrentA !== null && itemTags.length === loads.length) return [{ ...base, tag: circuit.tag, currentA: circuit.designCurrentA, itemTags }]
    // An inverter charger's own charging counts beside what it passes on; a transformer takes nothing for itself.
    const charging = loads.filter(tag => equipment.get(tag)?.kind === 'inverter charger' && isPassedOn(vessel, tag))
    return [...itemTags, ...charging].map(tag =>
      ({ ...base, tag, currentA: parts.find(part => part.tag === tag)?.currentA ?? null, itemTags: [tag] }))
  })
}

/** All that is not normally switched off at its circuit, at full current. */
export const connectedLoadOf = (source: AcOutput, consumers: readonly Consumer[], limit: Limit | null): LoadSum =>
  sumOf(source, consumers.filter(isNormallyOn), limit)

/** A source's own first circuit is closed when the source is in use. */
export const isNormallyOn = ({ circuit, way }: Consumer): boolean => circuit.normalState === 'closed' || way.length === 1

function sumOf({ output }: AcOutput, on: readonly Consumer[], limit: Limit | null, unknownElsewhere: readonly Tag[] = []): LoadSum {
  const parts = on.flatMap(({ tag, circuit, nominalVoltageV, currentA }): AcLoad[] =>
    (currentA === null ? [] : [{ tag, circuitTag: circuit.tag, currentA, nominalVoltageV, powerVa: currentA * nominalVoltageV }]))
  const unknownTags = [...new Set([...unknownIn(on), ...unknownElsewhere])]
  const sum = runMethod(connectedLoadMethod, {
    connectedPowerVa: parts.reduce((total, { powerVa }) => total + powerVa, 0), nominalVoltageV: output.nominalVoltageV,
  })
  const comparison = limit === null || sum.status === 'not computed' ? null : compare('connectedCurrentA', sum.output.connectedCurrentA, limit)
  return { parts, unknownTags, sum, comparison: comparison?.within === true && unknownTags.length > 0 ? null : comparison }
}

const unknownIn = (consumers: readonly Consumer[]): readonly Tag[] =>
  consumers.filter(({ currentA }) => currentA === null).map(({ tag }) => tag)

// --- by operating mode -----------------------------------------------------------------------------------------------
/** A consumer as one row of the duties lets it run. */
interface Run { readonly consumer: Consumer; readonly dutyPercent: number; readonly periods: readonly Period[] }

/** `own`: a duty of one of these lets the source run. `all`: a.c. sources whose duties say which of them run in a mode. */
export interface SourceTags { readonly own: ReadonlySet<Tag>; readonly all: ReadonlySet<Tag> }

export function modeLoadsOf(
  vessel: Vessel, source: AcOutput, consumers: readonly Consumer[], sourceTags: SourceTags, limit: Limit | null,
): readonly ModeLoad[] {
  return vessel.operatingModes.flatMap((mode): ModeLoad[] => {
    const duties = vessel.duties.filter(({ modeTag, dutyPercent }) => modeTag === mode.tag && dutyPercent > 0)
    const runs = runsIn(vessel, duties, consumers)
    const sourceRows = duties.filter(({ itemTag }) => sourceTags.own.has(itemTag))
    const named = duties.some(({ itemTag }) => sourceTags.all.has(itemTag))
    if (runs.length === 0 && sourceRows.length === 0) return []
    return [modeLoad(mode, source, runs, named ? sourceRows.map(({ periods }) => periods) : [[]], limit)]
  })
}

/** An item's own rows come before those of its circuit, and those before rows of the feeders above. */
function runsIn(vessel: Vessel, duties: readonly Duty[], consumers: readonly Consumer[]): readonly Run[] {
  const { equipment } = lookup(vessel)
  const rowsOf = grouped(duties, ({ itemTag }) => [itemTag])
  const asItem = (consumer: Consumer, { itemTag, currentA }: Duty): Consumer => {
    const item: Consumer = consumer.tag === itemTag || consumer.itemTags.length === 1
      ? { ...consumer, tag: itemTag } : { ...consumer, tag: itemTag, currentA: recordedCurrentA(equipment.get(itemTag), consumer) }
    // Of a charger or converter a duty names what it gives; what it takes counts in full.
    const gives = (equipment.get(itemTag)?.outputs.length ?? 0) > 0
    return currentA === null || gives ? item : { ...item, currentA }
  }
  const runs = new Map<string, Run>()
  for (const consumer of consumers) {
    const own = consumer.itemTags.flatMap(tag => rowsOf.get(tag) ?? [])
    const above = consumer.way.findLast(({ tag }) => rowsOf.has(tag))
    const rows = own.length > 0 || above === undefined ? own : rowsOf.get(above.tag)!
    for (const row of rows) {
      const whole = own.length === 0 && row.currentA !== null
      const of = own.length > 0 ? asItem(consumer, row) : whole ? { ...consumer, tag: row.itemTag, currentA: row.currentA } : consumer
      // The current that a row gives for a whole circuit counts once, not for each of its items.
      runs.set(`${of.tag} ${duties.indexOf(row)}`, { consumer: of, dutyPercent: row.dutyPercent, periods: row.periods })
    }
  }
  return [...runs.values()]
}

/** Of one of several items on a circuit whose current is given for all of them together. */
function recordedCurrentA(item: Equipment | undefined, { nominalVoltageV }: Consumer): number | null {
  if (item === undefined) return null
  return item.currentMaxA ?? item.currentTypicalA ?? (item.powerW === null ? null : item.powerW / nominalVoltageV)
}

function modeLoad(mode: OperatingMode, source: AcOutput, runs: readonly Run[], sourcePeriods: readonly (readonly Period[])[], limit: Limit | null): ModeLoad {
  const stretches = stretchesOf([...runs.flatMap(({ periods }) => periods), ...sourcePeriods.flat()])
    .filter(({ middleH }) => sourcePeriods.some(periods => covers(periods, middleH)))
  const onIn = stretches.map(stretch => ({ stretch, on: onAt(runs, stretch.middleH) }))
  const unknown = onIn.flatMap(({ on }) => unknownIn(on))
  const [first, ...others] = onIn.map(({ stretch, on }) => ({ stretch, sum: sumOf(source, on, limit, unknown) }))
  const most = others.reduce((best, each) => (best === undefined || currentOf(each.sum) > currentOf(best.sum) ? each : best), first)
  const averages = runs.map(({ consumer, dutyPercent, periods }): AverageLoad => {
    const runningTimeH = stretches.filter(({ middleH }) => covers(periods, middleH)).reduce((sum, { fromH, toH }) => sum + toH - fromH, 0)
    const outcome: AverageLoad['outcome'] = consumer.currentA === null
      ? { status: 'not computed', method: averageLoadMethod.id, reason: `the current of ${consumer.tag} is not known` }
      : runMethod(averageLoadMethod, { currentA: (consumer.currentA * consumer.nominalVoltageV) / source.output.nominalVoltageV, dutyPercent, runningTimeH })
    return { tag: consumer.tag, outcome }
  })
  return {
    modeTag: mode.tag,
    running: most !== undefined,
    largest: most?.sum ?? sumOf(source, [], limit),
    largestFromH: most?.stretch.fromH ?? 0,
    largestToH: most?.stretch.toH ?? 24,
    averages,
    averageCurrentA: averages.reduce((sum, { outcome }) => sum + (outcome.status === 'computed' ? outcome.output.averageCurrentA : 0), 0),
  }
}

const currentOf = ({ sum }: LoadSum): number => (sum.status === 'computed' ? sum.output.connectedCurrentA : 0)

/** Consumers that are on at an hour, each once, with the largest current that a row gives it. */
function onAt(runs: readonly Run[], atH: number): readonly Consumer[] {
  const on = new Map<Tag, Consumer>()
  for (const { consumer, periods } of runs) {
    if (!covers(periods, atH)) continue
    const known = on.get(consumer.tag)
    if (known === undefined || (consumer.currentA ?? 0) > (known.currentA ?? 0)) on.set(consumer.tag, consumer)
  }
  return [...on.values()]
}

const covers = (periods: readonly Period[], atH: number): boolean =>
  periods.length === 0 || periods.some(({ fromH, toH }) => [atH, atH + 24].some(hour => hour >= fromH && hour < toH))

/** The day cut wherever something goes on or off. */
function stretchesOf(periods: readonly Period[]): readonly { readonly fromH: number; readonly toH: number; readonly middleH: number }[] {
  const cuts = [...new Set([0, 24, ...periods.flatMap(({ fromH, toH }) => [fromH % 24, toH % 24])])].toSorted((a, b) => a - b)
  return cuts.slice(0, -1).map((fromH, i) => ({ fromH, toH: cuts[i + 1]!, middleH: (fromH + cuts[i + 1]!) / 2 }))
}
