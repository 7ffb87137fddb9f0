/** A circuit on paper: the same figures in fewer lines. */
import { type CircuitFeed, designCurrentA, type LoadDrop } from '../../../model/results.js'
import type { Circuit } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { say, sayForWorking } from '../../../units/format.js'
import { type CircuitAssessment, comparisonText } from '../../parts/assessment.js'
import { cautionsFor } from '../../cautions/cautions.js'
import type { ViewContext } from '../../context.js'
import { dash, joined, muted } from '../../text.js'
import type { Block, Row, Table, Text } from '../../view-model.js'
import { assumedAlike, capacityTable, circuitFacts, convertedText, dropSteps, largestCounts, largestDecides, protectionBlock } from './circuit-working.js'

/** What holds for every table of the chapter, said once. */
export const printedIntroduction = (context: ViewContext): Text => [
  ...cautionsFor(context, { pages: ['circuits'] }).map(({ signal, title }) => `${signal}: ${title}. `),
  'Verdicts speak of voltage drop, design current, conductors and rating only. The drop is that to the load which is worst off. Of a feeder the sum is given; its steps stand under the feeder itself. Conductor length is out and back; ',
  `“back” marks a cable of the way back alone. ${assumedAlike} Capacity = table × ambient factor × bundle factor; table: ${cite(context.basis.ampacity.citation)}. The formulas are in the chapter on the basis of calculation. What a warning names stands in full under Safety, in the manual.`,
]

/** On paper the same figures in fewer lines; the formulas stand once, in the chapter on the basis. */
export function printedWorking(context: ViewContext, circuit: Circuit, assessment: CircuitAssessment): readonly Block[] {
  const facts = circuitFacts(context, circuit, assessment, { onPaper: true })
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  const current = designCurrentA(feed)
  const worst = assessment.drop?.worst ?? null
  const entries = [
    ...facts.entries,
    { label: 'Design current', value: current === null ? [muted('not assessed')] : [sayForWorking('designCurrentA', current, 'result'), ...partsInWords(feed)] },
    ...(feed?.infeed == null || feed.infeed.only ? [] : [{
      label: 'Put in by charging',
      value: [feed.infeed.currentA === null ? muted('not known') : `${sayForWorking('currentA', feed.infeed.currentA, 'result')} (${feed.infeed.parts.map(({ tag, currentA }) => `${tag} ${sayForWorking('currentA', currentA)}`).join(', ')})`] as Text,
    }]),
    ...(worst === null ? [] : [{
      label: 'Voltage drop', value: [
        `${sayForWorking('voltageDropV', worst.voltageDropV, 'result')} of ${say('nominalVoltageV', worst.nominalVoltageV)}: `, ...comparisonText(worst.comparison, context),
        ...(worst.physicalDropPercent === null ? [] : [muted(`; physical ${sayForWorking('voltageDropPercent', worst.physicalDropPercent, 'result')}`)]),
      ] as Text,
    }]),
    ...(protectionBlock(context, circuit, assessment, { onPaper: true })?.entries ?? []),
    ...sizeInWords(context, circuit),
    ...(assessment.notAssessed.length === 0 ? [] : [{ label: 'Not assessed', value: joined(assessment.notAssessed.map(reason => [reason]), { is: 'break' }) }]),
  ]
  return [
    { ...facts, entries, dense: true },
    ...(worst === null ? [] : [printedDrop(context, circuit, worst)]),
    ...[capacityTable(context, assessment)].filter(table => table !== null).map(table => ({ ...table, note: null })),
  ]
}

/** The circuit's own cables one by one; of a feeder the sum, whose steps stand under the feeder itself. */
function printedDrop(context: ViewContext, circuit: Circuit, worst: LoadDrop): Table {
  const own = dropSteps(context, { ...worst, steps: worst.steps.filter(step => step.circuitTag === circuit.tag) })
  const feeders = [...new Set(worst.steps.map(step => step.circuitTag))].filter(tag => tag !== circuit.tag)
  const sums = feeders.map((tag): Row => {
    const steps = worst.steps.filter(step => step.circuitTag === tag)
    const physical = steps.map(step => (step.physical.status === 'computed' ? step.physical.output.voltageDropV : null))
    const sum = (values: readonly number[]) => sayForWorking('voltageDropV', values.reduce((total, value) => total + value, 0), 'result')
    return {
      level: null, anchor: null, cells: [
        [context.tag(tag)], [muted('feeder')], dash, dash, dash, [sum(steps.map(step => step.byBasis.output.voltageDropV))], dash, dash,
        physical.every(value => value !== null) ? [sum(physical)] : dash,
      ],
    }
  })
  return { ...own, rows: [...sums, ...own.rows], note: null }
}

/** `(P1 5 A, P2 3 A × 0.5)` */
function partsInWords(feed: CircuitFeed | undefined): Text {
  const parts = feed?.currentParts ?? []
  if (parts.length === 0) return []
  return [muted(` (${parts.map(({ tag, currentA, demandFactor }) => `${tag} ${sayForWorking('currentA', currentA)}${demandFactor === 1 ? '' : ` × ${demandFactor}`}`).join(', ')}${parts.flatMap(convertedText).map(text => `; ${text}`).join('')}${largestDecides(feed!) ? `; ${largestCounts.toLowerCase().replace('.', '')}` : ''})`)]
}

function sizeInWords(context: ViewContext, circuit: Circuit): readonly { readonly label: string; readonly value: Text }[] {
  const advice = context.results.conductorSize.byCircuit.get(circuit.tag)
  if (advice?.status !== 'computed') return []
  const sizes = ([['mm²', advice.mm2], ['AWG', advice.awg]] as const)
    .flatMap(([unit, choice]) => (choice === null ? [] : [`${choice.designation}\u00A0${unit}, decided by ${choice.governedBy}`]))
  return [{ label: 'Smallest size', value: [sizes.join('; or ') || 'none of the standard sizes'] }]
}
