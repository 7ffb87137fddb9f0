/** The circuit schedule and a page for each circuit, on which every figure can be redone by hand. */
import { cableLengthM, type CircuitDrop, type CircuitFeed, designCurrentA, type LoadDrop, type Outcome, type SizeAdvice } from '../../model/results.js'
import type { Circuit, Tag } from '../../model/vessel.js'
import { cite } from '../../references/bibliography.js'
import { type EquipmentKindKey, equipmentKinds } from '../../references/equipment-kinds.js'
import { say, sayAgainst, sayForWorking, saySize } from '../../units/format.js'
import { roundingNoise } from '../../units/quantity.js'
import { assessCircuit, type CircuitAssessment, circuitVerdict, comparisonText, marginText, verdictMark } from '../assessment.js'
import type { ViewContext } from '../context.js'
import { findingCards } from '../finding-cards.js'
import { sayOrDash } from '../say.js'
import { fixedPages } from '../site-map.js'
import { byTag, tableOf } from '../tables.js'
import { counted, dash, joined, muted, orDash } from '../text.js'
import type { Block, Facts, Page, Paragraph, Row, Table, Text, Working } from '../view-model.js'
import { methodOf, workingOf } from '../working.js'
import { circuitPlace, protectionText } from './circuit-parts.js'

export function circuitPages(context: ViewContext): readonly Page[] {
  const { circuits } = context.vessel
  return [
    {
      key: fixedPages.circuits,
      title: 'Circuit schedule',
      kicker: null,
      lead: [`${counted(circuits.length, 'circuit')}. Drop is the largest from the source to a load, feeder and branch added. The working of each figure is on the circuit’s own page.`],
      printed: null,
      trail: [],
      blocks: [circuitTable(context, circuits, { id: 'circuit-schedule', caption: 'Circuits by tag' })],
    },
    ...circuits.toSorted(byTag).map(circuit => circuitPage(context, circuit)),
  ]
}

export function circuitTable(context: ViewContext, circuits: readonly Circuit[], { id, caption }: { id: string; caption: string }): Table {
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
      { title: 'Ampacity', width: 'number', cell: circuit => sayOrDash('capacityA', of(circuit).protection?.weakestCapacityA, context.vessel) },
      { title: 'Margin to protection', width: 'number', cell: circuit => marginText(of(circuit).protection?.againstCapacity, context) },
      { title: 'Verdict', width: 'short', cell: circuit => [verdictMark(circuitVerdict(of(circuit)))] },
    ],
    note: ['The verdict speaks of voltage drop, design current, conductors and rating only; short circuit and the distance of the device from its source are not calculated. Ampacity: the least current-carrying capacity among the cables behind the circuit’s protective device. Margin to protection: ampacity less the rating of the protective device. n.a.: not assessed, see the circuit’s page.'],
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

function cableCell(context: ViewContext, tags: readonly Tag[]): Text {
  return joined(tags.map(tag => {
    const type = context.lookup.cableTypes.get(context.lookup.cables.get(tag)?.typeTag ?? '')
    return [context.tag(tag), type?.size == null ? '' : `\u00A0${saySize(type.size)}`]
  }), { is: 'break' })
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
  const isFeeder = circuit.loadTags.some(tag => isDistributionPoint(context, tag))
  const panel = context.lookup.panels.get(circuit.fedFromTag)
  const blocks: readonly (Block | null)[] = [
    circuitFacts(context, circuit, assessment),
    ...designCurrentBlocks(context, circuit),
    ...dropBlocks(context, assessment),
    capacityTable(context, assessment),
    protectionBlock(context, circuit, assessment),
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

/** On paper the same figures in fewer lines; the formulas stand once, in the chapter on the basis. */
function printedWorking(context: ViewContext, circuit: Circuit, assessment: CircuitAssessment): readonly Block[] {
  const facts = circuitFacts(context, circuit, assessment)
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  const current = designCurrentA(feed)
  const worst = assessment.drop?.worst ?? null
  const entries = [
    ...facts.entries.filter(({ label }) => label !== 'Cables' && (label !== 'Normally' || circuit.normalState === 'open')),
    { label: 'Design current', value: current === null ? [muted('not assessed')] : [sayForWorking('designCurrentA', current, 'result'), ...partsInWords(feed)] },
    ...(worst === null ? [] : [{
      label: 'Voltage drop', value: [
        `${sayForWorking('voltageDropV', worst.voltageDropV, 'result')} of ${say('nominalVoltageV', worst.nominalVoltageV)}: `, ...comparisonText(worst.comparison, context),
        ...(worst.physicalDropPercent === null ? [] : [muted(`; physical ${sayForWorking('voltageDropPercent', worst.physicalDropPercent, 'result')}`)]),
      ] as Text,
    }]),
    ...(protectionBlock(context, circuit, assessment)?.entries.filter(({ label }) => label !== 'Limit from') ?? []),
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

/** Whether a single current is more than all of them together with their demand factors. */
const largestDecides = (feed: CircuitFeed): boolean => {
  const { designCurrent } = feed
  return designCurrent.status === 'computed' && designCurrent.output.designCurrentA > designCurrent.input.demandFactor * designCurrent.input.connectedCurrentA * (1 + roundingNoise)
}
const largestCounts = 'The largest single current counts whole, being more than all together with their demand factors.'

/** `(P1 5 A, P2 3 A × 0.5)` */
function partsInWords(feed: CircuitFeed | undefined): Text {
  const parts = feed?.currentParts ?? []
  if (parts.length === 0) return []
  return [muted(` (${parts.map(({ tag, currentA, demandFactor }) => `${tag} ${sayForWorking('currentA', currentA)}${demandFactor === 1 ? '' : ` × ${demandFactor}`}`).join(', ')}${largestDecides(feed!) ? `; ${largestCounts.toLowerCase().replace('.', '')}` : ''})`)]
}

function sizeInWords(context: ViewContext, circuit: Circuit): readonly { readonly label: string; readonly value: Text }[] {
  const advice = context.results.conductorSize.byCircuit.get(circuit.tag)
  if (advice?.status !== 'computed') return []
  const sizes = ([['mm²', advice.mm2], ['AWG', advice.awg]] as const)
    .flatMap(([unit, choice]) => (choice === null ? [] : [`${choice.designation}\u00A0${unit}, decided by ${choice.governedBy}`]))
  return [{ label: 'Smallest size', value: [sizes.join('; or ') || 'none of the standard sizes'] }]
}

const isDistributionPoint = ({ lookup }: ViewContext, tag: Tag): boolean => lookup.panels.has(tag) || lookup.busbars.has(tag)

function circuitFacts(context: ViewContext, circuit: Circuit, assessment: CircuitAssessment): Facts {
  // Chargers, alternators and the like put current into the circuit that lists them.
  const sources = circuit.loadTags.filter(tag => equipmentKinds[context.lookup.equipment.get(tag)?.kind as EquipmentKindKey]?.draw === 'source')
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  return {
    is: 'facts', caption: null, entries: [
      { label: 'Verdict', value: [verdictMark(circuitVerdict(assessment))] },
      { label: 'Protection', value: [protectionText(circuit)] },
      { label: 'Where it is', value: circuitPlace(context, circuit) },
      { label: 'Feeds', value: circuit.loadTags.length === 0 ? dash : joined(circuit.loadTags.map(context.named), { is: 'break' }) },
      { label: 'From the source', value: feed === undefined || feed.chain.length === 0 ? [muted('no source reached')] : joined([[context.tag(feed.sourceTag!)], ...feed.chain.map(tag => [context.tag(tag), ` ${protectionText(context.lookup.circuits.get(tag)!)}`])], ' → ') },
      { label: 'Cables', value: cableCell(context, assessment.cableTags) },
      ...(feed === undefined || feed.supplySegments.length === 0 ? [] : [{ label: 'Ahead of the device', value: aheadText(context, feed) }]),
      { label: 'Voltage-drop class', value: [circuit.loadTags.some(tag => isDistributionPoint(context, tag)) ? 'main feeder: it feeds a panel or busbar' : circuit.loadClass] },
      ...(sources.length === 0 ? [] : [{ label: 'Live from both ends', value: ['isolate ', ...joined(sources.map(context.named)), ' as well: current comes from there too'] as Text }]),
      { label: 'Normally', value: [circuit.normalState] },
      ...(circuit.manualBypass === null ? [] : [{ label: 'Manual bypass', value: [circuit.manualBypass] as Text }]),
    ],
  }
}

/** Conductors between the source and the protective device, which it does not protect. */
const aheadText = (context: ViewContext, feed: CircuitFeed): Text => [
  ...joined(feed.supplySegments.map(({ cableTag }) => [context.tag(cableTag), ' ', ...sayOrDash('cableLengthM', cableLengthM(context.results.routing.byCable.get(cableTag)), context.vessel)])),
  muted(': not protected by it; how long they may be is not calculated here'),
]

function designCurrentBlocks(context: ViewContext, circuit: Circuit): readonly Block[] {
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  if (feed === undefined) return []
  if (feed.designCurrent.status === 'not computed') return [workingOf(context, 'Design current', feed.designCurrent)]
  const total = sayForWorking('designCurrentA', designCurrentA(feed)!, 'result')
  return [tableOf(feed.currentParts, {
    id: 'design-current',
    caption: `Design current ${total}${circuit.designCurrentA === null ? '' : ', given by the installer'}`,
    empty: 'No load with a current of its own.',
    columns: [
      { title: 'Load', width: 'text', cell: part => context.named(part.tag) },
      { title: 'Taken from', width: 'short', cell: part => [part.from] },
      { title: 'Current', width: 'number', cell: part => [sayForWorking('currentA', part.currentA)] },
      { title: 'Demand factor', width: 'number', cell: part => [sayForWorking('demandFactor', part.demandFactor)] },
      { title: 'Counts', width: 'number', cell: part => [sayForWorking('currentA', part.currentA * part.demandFactor)] },
    ],
    ...(largestDecides(feed) ? { note: [largestCounts] } : {}),
  })]
}

function dropBlocks(context: ViewContext, { drop }: CircuitAssessment): readonly Block[] {
  const worst = drop?.worst
  if (worst === null || worst === undefined) return []
  const others = drop!.toLoads.filter(load => load !== worst)
  return [
    dropSteps(context, worst),
    dropSum(context, worst),
    ...(others.length === 0 ? [] : [tableOf(others, {
      id: 'other-drops',
      caption: 'The other loads of this circuit',
      empty: '',
      columns: [
        { title: 'Load', width: 'text', cell: load => context.named(load.loadTag) },
        { title: 'Drop', width: 'number', cell: load => [sayForWorking('voltageDropV', load.voltageDropV, 'result')] },
        { title: 'Physical', width: 'number', cell: load => (load.physicalDropV === null ? dash : [sayForWorking('voltageDropV', load.physicalDropV, 'result')]) },
        { title: 'Of nominal', width: 'text', cell: load => comparisonText(load.comparison, context) },
      ],
    })]),
  ]
}

const assumedAlike = '* Single-core cable; the way back is taken to be like the way out.'

/** What holds for every table of the chapter, said once. */
export const printedIntroduction = ({ basis }: ViewContext): Text => [
  'Verdicts speak of voltage drop, design current, conductors and rating only. The drop is that to the load which is worst off. Of a feeder the sum is given; its steps stand under the feeder itself. Conductor length is out and back; ',
  `“back” marks a cable of the way back alone. ${assumedAlike} Capacity = table × ambient factor × bundle factor; table: ${cite(basis.ampacity.citation)}. The formulas are in the chapter on the basis of calculation.`,
]

const inputsOf = (outcome: Outcome): Readonly<Record<string, number>> => (outcome.status === 'computed' ? outcome.input : {})

function dropSteps(context: ViewContext, worst: LoadDrop): Table {
  // As the formula of the basis takes it, else as that of the physical drop does.
  const shown = (step: LoadDrop['steps'][number], ...names: readonly string[]): Text => {
    for (const inputs of [inputsOf(step.byBasis), inputsOf(step.physical)]) {
      const name = names.find(each => each in inputs)
      if (name !== undefined) return [sayForWorking(name, inputs[name]!)]
    }
    return dash
  }
  const isReturn = (tag: Tag) => context.lookup.cables.get(tag)?.carries === 'negative'
  const basisMethod = methodOf(context, worst.steps[0]!.byBasis.method)
  return tableOf(worst.steps, {
    id: 'drop-steps',
    caption: `Voltage drop from the source to ${worst.loadTag}`,
    empty: '',
    columns: [
      { title: 'Circuit', width: 'tag', cell: step => [context.tag(step.circuitTag)] },
      { title: 'Cable', width: 'tag', cell: step => [context.tag(step.cableTag), ...(step.returnAssumedAlike ? [muted(' *')] : []), ...(isReturn(step.cableTag) ? [muted(' back')] : [])] },
      { title: 'Cross-section', width: 'number', cell: step => shown(step, 'crossSectionMm2', 'conductorAreaCmil') },
      { title: 'Conductor length', width: 'number', cell: step => shown(step, 'conductorLengthM', 'conductorLengthFt') },
      { title: 'Current', width: 'number', cell: step => shown(step, 'currentA') },
      { title: 'Drop by the basis', width: 'number', cell: step => [sayForWorking('voltageDropV', step.byBasis.output.voltageDropV, 'result')] },
      { title: 'Resistance at 20 °C', width: 'number', cell: step => shown(step, 'resistanceAt20COhmPerKm') },
      { title: 'Conductor at', width: 'number', cell: step => shown(step, 'conductorTemperatureC') },
      { title: 'Physical drop', width: 'number', cell: step => (step.physical.status === 'computed' ? [sayForWorking('voltageDropV', step.physical.output.voltageDropV, 'result')] : dash) },
    ],
    note: [`Conductor length: out and back. By the basis: ${basisMethod.title}. Physical: by the conductor’s resistance at its temperature.${worst.steps.some(step => step.returnAssumedAlike) ? ` ${assumedAlike}` : ''}`],
  })
}

function dropSum(context: ViewContext, worst: LoadDrop): Working {
  const first = worst.steps[0]!
  const method = methodOf(context, first.byBasis.method)
  const { limit } = worst.comparison
  return {
    is: 'working',
    title: `Sum of the drop to ${worst.loadTag}`,
    formula: method.formula,
    inputs: [],
    results: [
      { symbol: null, label: 'Drop by the basis, sum of the column', value: sayForWorking('voltageDropV', worst.voltageDropV, 'result'), remark: null },
      { symbol: null, label: `In percent of ${say('nominalVoltageV', worst.nominalVoltageV)}`, value: sayForWorking('voltageDropPercent', worst.voltageDropPercent, 'result'), remark: null },
      { symbol: null, label: 'Physical drop, sum of the column', value: worst.physicalDropV === null || worst.physicalDropPercent === null ? 'not assessed' : `${sayForWorking('voltageDropV', worst.physicalDropV, 'result')}, ${sayForWorking('voltageDropPercent', worst.physicalDropPercent, 'result')}`, remark: null },
    ],
    limit: comparisonText(worst.comparison, context),
    verdict: null,
    sources: [`Limit: ${cite(limit.citation)}.`, `Formula: ${method.citations.map(cite).join('; ')}.`],
    assumes: method.assumes,
  }
}

function capacityTable(context: ViewContext, { cableTags }: CircuitAssessment): Table | null {
  const rows = cableTags.flatMap(tag => {
    const capacity = context.results.currentCarryingCapacity.byCable.get(tag)
    return capacity === undefined ? [] : [{ tag, capacity }]
  })
  if (rows.length === 0) return null
  const input = (row: (typeof rows)[number], name: string): Text =>
    row.capacity.outcome.status === 'computed' ? [sayForWorking(name, (row.capacity.outcome.input as Record<string, number>)[name]!)] : dash
  return tableOf(rows, {
    id: 'capacity',
    caption: 'Current-carrying capacity of the cables',
    empty: '',
    columns: [
      { title: 'Cable', width: 'tag', cell: row => [context.tag(row.tag)] },
      { title: 'Table entered at', width: 'text', cell: row => joined(row.capacity.lookup.filter(({ label }) => label !== 'Table').map(({ label, text }) => [muted(`${label}: `), text]), '; ') },
      { title: 'Table', width: 'number', cell: row => input(row, 'tableCurrentA') },
      { title: 'Ambient', width: 'number', cell: row => input(row, 'ambientFactor') },
      { title: 'Bundle', width: 'number', cell: row => input(row, 'bundleFactor') },
      { title: 'Capacity', width: 'number', cell: row => (row.capacity.outcome.status === 'computed' ? [sayForWorking('capacityA', row.capacity.outcome.output.currentCarryingCapacityA, 'result')] : [muted('not assessed')]) },
      { title: 'Design current', width: 'text', cell: row => (row.capacity.comparison === null ? dash : comparisonText(row.capacity.comparison, context)) },
    ],
    note: [`Capacity = table × ambient factor × bundle factor. Table: ${cite(context.basis.ampacity.citation)}.`],
  })
}

function protectionBlock(context: ViewContext, circuit: Circuit, { protection }: CircuitAssessment): Facts | null {
  if (protection === null || protection.ratedCurrentA === null) return null
  return {
    is: 'facts', caption: `Protection ${protectionText(circuit)}`, entries: [
      { label: 'Against the load', value: protection.againstLoad === null ? [muted('not assessed')] : ['design current ', ...comparisonText(protection.againstLoad, context)] },
      {
        label: 'Against the conductors', value: protection.againstCapacity === null ? [muted('not assessed')] : [
          'rating ', ...comparisonText(protection.againstCapacity, context),
          ...(protection.weakestCableTag === null ? [] : [' weakest cable ', context.tag(protection.weakestCableTag)]),
        ],
      },
      ...(protection.againstCapacity === null ? [] : [{ label: 'Limit from', value: [cite(protection.againstCapacity.limit.citation)] as Text }]),
    ],
  }
}

/** What the circuit's only cable would allow, for whoever wants to move the load or put in a larger one. */
function reachText({ vessel }: ViewContext, fitted: Extract<SizeAdvice, { readonly status: 'computed' }>['asFitted']): string {
  if (fitted === null) return ''
  return ` The fitted cable ${fitted.cableTag} would allow up to ${say('runM', fitted.longestRunM, vessel)} one way at the same current, or ${say('currentA', fitted.largestCurrentA)} over the same way, as far as drop and capacity go.`
}

function sizeBlock(context: ViewContext, circuit: Circuit): Block | Paragraph | null {
  const advice = context.results.conductorSize.byCircuit.get(circuit.tag)
  if (advice === undefined || advice.status === 'not computed') return null
  const rows = ([['mm²', advice.mm2], ['AWG', advice.awg]] as const).map(([system, choice]) => ({ system, choice }))
  return tableOf(rows, {
    id: 'size-advice',
    caption: 'Smallest standard size that meets drop and capacity',
    empty: '',
    columns: [
      { title: 'Sizes in', width: 'short', cell: row => [row.system] },
      { title: 'Smallest', width: 'short', cell: row => orDash(row.choice === null ? null : row.choice.designation) },
      { title: 'Needed for the drop', width: 'number', cell: row => sayOrDash('crossSectionMm2', row.choice?.byDropMm2, { units: 'metric' }) },
      { title: 'Its capacity', width: 'number', cell: row => sayOrDash('capacityA', row.choice?.capacityA, context.vessel) },
      { title: 'Decided by', width: 'text', cell: row => orDash(row.choice?.governedBy ?? null) },
    ],
    note: [`For ${sayForWorking('designCurrentA', advice.input.designCurrentA)} over ${sayForWorking('conductorLengthM', advice.input.conductorLengthM)} of conductor out and back, with ${sayForWorking('allowedDropV', advice.input.allowedDropV)} left for this circuit after its feeders${advice.input.allowedPhysicalDropV === null ? '' : `, ${sayForWorking('allowedDropV', advice.input.allowedPhysicalDropV)} by resistance`}; insulation ${say('insulationC', advice.input.insulationC)}, factors ${advice.input.ambientFactor} and ${advice.input.bundleFactor}.${reachText(context, advice.asFitted)}`],
  })
}
