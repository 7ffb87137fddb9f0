/** The circuit schedule and a page for each circuit, on which every figure can be redone by hand. */
import { isDistributionPoint } from '../../../model/lookup.js'
import { cableLengthM, type CircuitDrop, designCurrentA } from '../../../model/results.js'
import type { Circuit } from '../../../model/vessel.js'
import { say, sayAgainst } from '../../../units/format.js'
import { assessCircuit, type CircuitAssessment, circuitVerdict, marginText, verdictMark } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { proceduresAbout } from '../owner/procedures.js'
import { findingCards } from '../../parts/finding-cards.js'
import { sayOrDash } from '../../parts/say.js'
import { anchorOf, calculationsFile, fixedPages } from '../../site-map.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, joined, muted } from '../../text.js'
import type { Block, Page, Table, Text } from '../../view-model.js'
import { cableCell, protectionText } from '../../parts/circuit-parts.js'
import { deviceBlocks } from '../protective-devices/device-blocks.js'
import { deadBlocks, lossBlocks } from '../fault-tracing/fault-blocks.js'
import { printedWorking } from './circuit-printed.js'
import { capacityTable, circuitFacts, designCurrentBlocks, dropBlocks, protectionBlock, sizeBlock } from './circuit-working.js'

export function circuitPages(context: ViewContext): readonly Page[] {
  const { circuits } = context.vessel
  return [
    {
      key: fixedPages.circuits,
      title: 'Circuit schedule',
      kicker: null,
      lead: [`${counted(circuits.length, 'circuit')}. Drop is the largest from the source to a load, feeder and branch added. The working of each figure is on the circuit’s own page, on paper in a document of its own, Calculations.`],
      // On paper the workings are in a volume of their own: what leads to a circuit leads to its row.
      printed: [inCalculations, circuitTable(context, circuits, { id: 'circuit-schedule', caption: 'Circuits by tag', anchors: true })],
      trail: [],
      blocks: [circuitTable(context, circuits, { id: 'circuit-schedule', caption: 'Circuits by tag' })],
    },
    ...circuits.toSorted(byTag).map(circuit => circuitPage(context, circuit)),
  ]
}

const inCalculations: Block = { is: 'paragraph', text: ['How every figure was worked out, circuit by circuit, is in ', { is: 'pack file', text: 'Calculations', file: calculationsFile }, ', with the limits, formulas and sources.'] }

export function circuitTable(
  context: ViewContext, circuits: readonly Circuit[], { id, caption, anchors = false }: { id: string; caption: string; anchors?: boolean },
): Table {
  const assessed = new Map(circuits.map(circuit => [circuit.tag, assessCircuit(context, circuit)]))
  const of = (circuit: Circuit): CircuitAssessment => assessed.get(circuit.tag)!
  const feed = (circuit: Circuit) => context.results.feeding.byCircuit.get(circuit.tag)
  return tableOf(circuits.toSorted(byTag), {
    id,
    caption,
    empty: 'No circuit is recorded.',
    level: circuit => (circuitVerdict(of(circuit)).level === 'error' ? 'error' : null),
    columns: [
      { title: 'Circuit', width: 'tag', cell: circuit => [context.tag(circuit.tag)] },
      { title: 'Name', width: 'text', cell: circuit => [circuit.name] },
      { title: 'Protection', width: 'short', cell: circuit => [protectionText(circuit)] },
      { title: 'Design current', width: 'number', cell: circuit => { const current = designCurrentA(feed(circuit)); return current === null ? [muted('n.a.')] : [say('designCurrentA', current)] } },
      { title: 'Cable', width: 'short', cell: circuit => cableCell(context, of(circuit).cableTags) },
      { title: 'Length, one way', width: 'number', cell: circuit => sayOrDash('lengthM', oneWayLengthM(context, of(circuit)), context.vessel) },
      { title: 'Drop', width: 'number', cell: circuit => dropCell(of(circuit).drop, context) },
      { title: 'Capacity (ampacity)', width: 'number', cell: circuit => sayOrDash('capacityA', of(circuit).protection?.weakestCapacityA, context.vessel) },
      { title: 'Margin to protection', width: 'number', cell: circuit => marginText(of(circuit).protection?.againstCapacity, context) },
      { title: 'Verdict', width: 'short', cell: circuit => [verdictMark(circuitVerdict(of(circuit)))] },
    ],
    note: ['The verdict speaks of voltage drop, design current, conductors, rating, and of every limit that a finding says is missed. Short circuit, and the distance of the device from its source, have verdicts of their own under Protection and short circuit. Capacity: the least current-carrying capacity among the cables behind the circuit’s protective device. Margin to protection: capacity less the rating of the protective device. n.a.: not assessed; the reason stands under Not assessed.'],
    ...(anchors ? { anchor: (circuit: Circuit) => anchorOf(context.addressOf(circuit.tag)!) } : {}),
  })
}

/** Circuits as on a panel's legend: what, rated how, feeding what. */
export function legendTable(context: ViewContext, circuits: readonly Circuit[], { id, caption }: { id: string; caption: string }): Table {
  return tableOf(circuits.toSorted(byTag), {
    id,
    caption,
    empty: 'No circuit is recorded.',
    columns: [
      { title: 'Circuit', width: 'tag', cell: circuit => [context.tag(circuit.tag)] },
      { title: 'Name', width: 'text', cell: circuit => [circuit.name] },
      { title: 'Protection', width: 'short', cell: circuit => [protectionText(circuit)] },
      { title: 'Feeds', width: 'text', cell: circuit => joined(circuit.loadTags.map(context.named), { is: 'break' }) },
    ],
  })
}

/** One way to the load that is worst off, this circuit's own cables only. */
function oneWayLengthM(context: ViewContext, { drop, cableTags }: CircuitAssessment): number | null {
  const own = new Set(cableTags)
  const tags = drop?.worst === null || drop?.worst === undefined ? [] : [...new Set(drop.worst.steps.map(step => step.cableTag))].filter(tag => own.has(tag) && context.lookup.cables.get(tag)?.carries !== 'negative')
  if (tags.length === 0) return null
  const lengths = tags.map(tag => cableLengthM(context.results.routing.byCable.get(tag)))
  return lengths.every(length => length !== null) ? lengths.reduce((sum, length) => sum + length, 0) : null
}

function dropCell(drop: CircuitDrop | null, context: ViewContext): Text {
  if (drop?.worst == null) return [muted('n.a.')]
  const { comparison } = drop.worst
  const { actual, limit } = sayAgainst(comparison.quantity, comparison.value, comparison.limit.value, context.vessel)
  return [actual, ' ', muted(`of ${limit}`)]
}

function circuitPage(context: ViewContext, circuit: Circuit): Page {
  const assessment = assessCircuit(context, circuit)
  const findings = [circuit.tag, ...assessment.cableTags].flatMap(tag => context.findingsBySubject.get(tag) ?? [])
  const isFeeder = circuit.loadTags.some(tag => isDistributionPoint(context.vessel, tag))
  const panel = context.lookup.panels.get(circuit.fedFromTag)
  const blocks: readonly (Block | null)[] = [
    circuitFacts(context, circuit, assessment),
    ...deadBlocks(context, circuit.tag),
    ...lossBlocks(context, circuit.tag),
    ...proceduresAbout(context, circuit.tag),
    ...designCurrentBlocks(context, circuit),
    ...dropBlocks(context, assessment),
    capacityTable(context, assessment),
    protectionBlock(context, circuit, assessment),
    ...deviceBlocks(context, circuit),
    sizeBlock(context, circuit),
    assessment.notAssessed.length === 0 ? null : {
      is: 'facts', caption: 'Not assessed', entries: assessment.notAssessed.map(reason => {
        const [what = '', ...why] = reason.split(': ')
        return { label: what, value: [why.join(': ')] }
      }),
    },
    findings.length === 0 ? null : { is: 'findings', empty: '', findings: findingCards(context, findings) },
  ]
  return {
    key: context.addressOf(circuit.tag)!,
    title: `${circuit.tag} ${circuit.name}`,
    kicker: `${isFeeder ? 'Feeder' : 'Circuit'}${panel === undefined ? '' : ` of ${panel.name}`}`,
    lead: circuit.purpose === null ? null : [circuit.purpose],
    printed: printedWorking(context, circuit, assessment),
    trail: panel === undefined ? [{ text: 'Circuits', to: fixedPages.circuits }] : [{ text: 'Panels', to: fixedPages.panels }, { text: panel.name, to: context.addressOf(panel.tag)! }],
    blocks: blocks.filter(block => block !== null),
  }
}
