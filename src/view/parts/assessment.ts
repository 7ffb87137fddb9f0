/** What the results say of a circuit or a cable, in one word and one colour. */
import { cableTagsOf, type CircuitDrop, type CircuitProtection, type Comparison } from '../../model/results.js'
import type { Circuit, Tag } from '../../model/vessel.js'
import { say, sayAgainst } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { muted, verdict } from '../text.js'
import type { Inline, Level, Text } from '../view-model.js'

export interface CircuitAssessment {
  readonly drop: CircuitDrop | null
  readonly protection: CircuitProtection | null
  readonly cableTags: readonly Tag[]
  readonly comparisons: readonly Comparison[]
  /** Within by the constant of the basis, above by the conductor's resistance, or a finding says that a limit is missed. */
  readonly doubtful: boolean
  readonly limitMissed: boolean
  /** What is not assessed, one reason each. */
  readonly notAssessed: readonly string[]
}

export function assessCircuit({ results, findingsBySubject }: ViewContext, circuit: Circuit): CircuitAssessment {
  const drop = results.voltageDrop.byCircuit.get(circuit.tag) ?? null
  const protection = results.protection.byCircuit.get(circuit.tag) ?? null
  const cableTags = cableTagsOf(circuit, results.feeding.byCircuit.get(circuit.tag))
  const capacities = cableTags.map(tag => [tag, results.currentCarryingCapacity.byCable.get(tag)] as const)
  const comparisons = [
    ...(drop?.toLoads.map(load => load.comparison) ?? []),
    ...capacities.map(([, capacity]) => capacity?.comparison ?? null),
    protection?.againstLoad ?? null,
    protection?.againstCapacity ?? null,
  ].filter(comparison => comparison !== null)
  const notAssessed = [
    ...(drop?.notAssessed.map(({ loadTag, reason }) => `voltage drop${loadTag === null ? '' : ` to ${loadTag}`}: ${reason}`) ?? []),
    ...capacities.flatMap(([tag, capacity]) =>
      capacity?.outcome.status === 'not computed' ? [`current-carrying capacity of ${tag}: ${capacity.outcome.reason}`] : []),
    ...(protection?.notAssessed.map(reason => `protection: ${reason}`) ?? []),
  ]
  const doubtful = drop?.toLoads.some(({ physicalComparison }) => physicalComparison?.within === false) ?? false
  // A limit that only a finding knows of counts as well: 1xx is "limit not met".
  const limitMissed = comparisons.some(({ within }) => !within)
    || [circuit.tag, ...cableTags].some(tag => findingsBySubject.get(tag)?.some(({ id }) => /^[A-Z]{3}1/.test(id)) ?? false)
  return { drop, protection, cableTags, comparisons, doubtful, limitMissed, notAssessed }
}

/** One mark for the whole circuit. What is not assessed never counts as within. */
export function circuitVerdict(assessment: CircuitAssessment): { readonly level: Level; readonly text: string } {
  if (assessment.limitMissed) return { level: 'error', text: 'outside limit' }
  if (assessment.notAssessed.length > 0 || assessment.comparisons.length === 0) return { level: 'not assessed', text: 'not assessed' }
  if (assessment.doubtful) return { level: 'warning', text: 'within by the constant only' }
  return { level: 'good', text: 'within limits' }
}

export const verdictMark = ({ level, text }: { readonly level: Level; readonly text: string }): Inline => verdict(level, text)

/** `2.1 %, limit 3.0 %` with the mark. */
export function comparisonText(comparison: Comparison, context: ViewContext): Text {
  const { actual, limit } = sayAgainst(comparison.quantity, comparison.value, comparison.limit.value, context.vessel)
  return [`${actual} `, muted(`limit ${comparison.limit.relation} ${limit}`), ' ', verdict(comparison.within ? 'good' : 'error', comparison.within ? 'within' : 'outside')]
}

/** The margin that is left, in the limit's unit; negative when the limit is passed. */
export const marginText = (comparison: Comparison | null | undefined, context: ViewContext): Text =>
  comparison === null || comparison === undefined ? [muted('–')] : [say(comparison.quantity, comparison.margin, context.vessel)]
