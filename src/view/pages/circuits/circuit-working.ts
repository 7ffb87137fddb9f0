/** A circuit's figures with their working, so that each can be redone by hand: what the circuit's page and its printed form are made of. */
import { isDistributionPoint } from '../../../model/lookup.js'
import { cableLengthM, type CircuitFeed, type CurrentPart, designCurrentA, type LoadDrop, type Outcome, type SizeAdvice } from '../../../model/results.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { type EquipmentKindKey, equipmentKinds } from '../../../references/equipment-kinds.js'
import { say, sayForWorking } from '../../../units/format.js'
import { type CircuitAssessment, circuitVerdict, comparisonText, verdictMark } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../parts/say.js'
import { tableOf } from '../../tables.js'
import { dash, joined, muted, orDash } from '../../text.js'
import type { Block, Facts, Paragraph, Table, Text, Working } from '../../view-model.js'
import { methodOf, workingOf } from '../../parts/working.js'
import { cableCell, circuitPlace, protectionText } from '../../parts/circuit-parts.js'

export function circuitFacts(context: ViewContext, circuit: Circuit, assessment: CircuitAssessment, { onPaper = false } = {}): Facts {
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
      ...(onPaper ? [] : [{ label: 'Cables', value: cableCell(context, assessment.cableTags) }]),
      ...(feed === undefined || feed.supplySegments.length === 0 ? [] : [{ label: 'Ahead of the device', value: aheadText(context, feed) }]),
      { label: 'Voltage-drop class', value: [circuit.loadTags.some(tag => isDistributionPoint(context.vessel, tag)) ? 'main feeder: it feeds a panel or busbar' : circuit.loadClass] },
      ...(sources.length === 0 ? [] : [{ label: 'Live from both ends', value: ['isolate ', ...joined(sources.map(context.named)), ' as well: current comes from there too'] as Text }]),
      // Paper says only what is out of the ordinary.
      ...(onPaper && circuit.normalState === 'closed' ? [] : [{ label: 'Normally', value: [circuit.normalState] as Text }]),
      ...(circuit.manualBypass === null ? [] : [{ label: 'Manual bypass', value: [circuit.manualBypass] as Text }]),
    ],
  }
}

/** Conductors between the source and the protective device, which it does not protect. */
const aheadText = (context: ViewContext, feed: CircuitFeed): Text => [
  ...joined(feed.supplySegments.map(({ cableTag }) => [context.tag(cableTag), ' ', ...sayOrDash('cableLengthM', cableLengthM(context.results.routing.byCable.get(cableTag)), context.vessel)])),
  muted(': not protected by it'),
]

export function designCurrentBlocks(context: ViewContext, circuit: Circuit): readonly Block[] {
  const feed = context.results.feeding.byCircuit.get(circuit.tag)
  if (feed === undefined) return []
  if (feed.designCurrent.status === 'not computed') return [workingOf(context, 'Design current', feed.designCurrent)]
  const total = sayForWorking('designCurrentA', designCurrentA(feed)!, 'result')
  const { infeed } = feed
  const note = [...(largestDecides(feed) ? [largestCounts] : []), ...feed.currentParts.flatMap(part => convertedText(part))].join(' ')
  return [
    partsTable(context, feed.currentParts, {
      id: 'design-current',
      caption: `${infeed?.only === true ? 'Charging current' : 'Design current'} ${total}${circuit.designCurrentA === null ? '' : ', given by the installer'}`,
      note: note === '' ? null : [note],
    }),
    ...(infeed === null || infeed.only ? [] : [partsTable(context, infeed.parts, {
      id: 'put-in',
      caption: `Put in by charging sources: ${infeed.currentA === null ? 'not known' : sayForWorking('currentA', infeed.currentA, 'result')}`,
      note: ['It flows towards the source, against the design current; the larger of the two counts for the cables.'],
    })]),
  ]
}

function partsTable(context: ViewContext, parts: readonly CurrentPart[], { id, caption, note }: { id: string; caption: string; note: Text | null }): Table {
  return tableOf(parts, {
    id,
    caption,
    empty: 'No load with a current of its own.',
    columns: [
      { title: 'Load', width: 'text', cell: part => context.named(part.tag) },
      { title: 'Taken from', width: 'short', cell: part => [partOrigin[part.from]] },
      { title: 'Current', width: 'number', cell: part => [sayForWorking('currentA', part.currentA)] },
      { title: 'Demand factor', width: 'number', cell: part => [sayForWorking('demandFactor', part.demandFactor)] },
      { title: 'Counts', width: 'number', cell: part => [sayForWorking('currentA', part.currentA * part.demandFactor)] },
    ],
    ...(note === null ? {} : { note }),
  })
}

const partOrigin: Readonly<Record<CurrentPart['from'], string>> = {
  'maximum current': 'maximum current', 'typical current': 'typical current', power: 'power', circuit: 'circuit', output: 'output of the source',
  input: 'what it takes at full output',
}

/** "T20: 1610 W / (12 V × 85 %) = 157.8 A." */
export function convertedText({ tag, currentA, by }: CurrentPart): readonly string[] {
  if (by === undefined) return []
  const { outputPowerW, inputVoltageV, efficiencyPercent, powerW, nominalVoltageV } = by.input
  const said = (name: string, value: number | undefined) => sayForWorking(name, value!)
  const sum = outputPowerW === undefined ? `${said('powerW', powerW)} / ${said('nominalVoltageV', nominalVoltageV)}`
    : `${said('outputPowerW', outputPowerW)} at its outputs / (${said('inputVoltageV', inputVoltageV)} × ${said('efficiencyPercent', efficiencyPercent)})`
  return [`${tag}: ${sum} = ${sayForWorking('currentA', currentA, 'result')}.`]
}

/** Whether a single current is more than all of them together with their demand factors. */
export const largestDecides = (feed: CircuitFeed): boolean => {
  const { designCurrent } = feed
  return designCurrent.status === 'computed' && designCurrent.output.designCurrentA > designCurrent.input.demandFactor * designCurrent.input.connectedCurrentA
}

export const largestCounts = 'The largest single current counts whole, being more than all together with their demand factors.'

export function dropBlocks(context: ViewContext, { drop }: CircuitAssessment): readonly Block[] {
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

export const assumedAlike = '* Single-core cable; the way back is taken to be like the way out.'

const inputsOf = (outcome: Outcome): Readonly<Record<string, number>> => (outcome.status === 'computed' ? outcome.input : {})

export function dropSteps(context: ViewContext, worst: LoadDrop): Table {
  // As the formula of the basis takes it, else as that of the physical drop does.
  const shown = (step: LoadDrop['steps'][number], ...names: readonly string[]): Text => {
    for (const inputs of [inputsOf(step.byBasis), inputsOf(step.physical)]) {
      const name = names.find(each => each in inputs)
      if (name !== undefined) return [sayForWorking(name, inputs[name]!)]
    }
    return dash
  }
  const parallelCount = (tag: Tag) => context.lookup.cables.get(tag)?.parallelCount ?? 1
  const isReturn = (tag: Tag) => context.lookup.cables.get(tag)?.carries === 'negative'
  const basisMethod = methodOf(context, worst.steps[0]!.byBasis.method)
  return tableOf(worst.steps, {
    id: 'drop-steps',
    caption: `Voltage drop from the source to ${worst.loadTag}`,
    empty: '',
    columns: [
      { title: 'Cable', width: 'tag', cell: step => [context.tag(step.cableTag), ...(step.returnAssumedAlike ? [muted(' *')] : []), ...(isReturn(step.cableTag) ? [muted(' back')] : [])] },
      { title: 'Circuit', width: 'tag', cell: step => [context.tag(step.circuitTag)] },
      { title: 'Cross-section', width: 'number', cell: step => shown(step, 'crossSectionMm2', 'conductorAreaCmil') },
      { title: 'Conductor length', width: 'number', cell: step => shown(step, 'conductorLengthM', 'conductorLengthFt') },
      { title: 'Current', width: 'number', cell: step => shown(step, 'currentA') },
      { title: 'Drop by the basis', width: 'number', cell: step => [sayForWorking('voltageDropV', step.byBasis.output.voltageDropV, 'result')] },
      { title: 'Resistance at 20 °C', width: 'number', cell: step => shown(step, 'resistanceAt20COhmPerKm') },
      { title: 'Conductor at', width: 'number', cell: step => shown(step, 'conductorTemperatureC') },
      { title: 'Physical drop', width: 'number', cell: step => (step.physical.status === 'computed' ? [sayForWorking('voltageDropV', step.physical.output.voltageDropV, 'result')] : dash) },
    ],
    note: [`Conductor length: out and back.${worst.steps.some(step => parallelCount(step.cableTag) > 1) ? ' Current: of each of the conductors in parallel.' : ''} By the basis: ${basisMethod.title}. Physical: by the conductor’s resistance at its temperature.${worst.steps.some(step => step.returnAssumedAlike) ? ` ${assumedAlike}` : ''}`],
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

export function capacityTable(context: ViewContext, { cableTags }: CircuitAssessment): Table | null {
  const rows = cableTags.flatMap(tag => {
    const capacity = context.results.currentCarryingCapacity.byCable.get(tag)
    return capacity === undefined ? [] : [{ tag, capacity }]
  })
  if (rows.length === 0) return null
  const input = (row: (typeof rows)[number], name: string): Text =>
    row.capacity.outcome.status === 'computed' ? [sayForWorking(name, (row.capacity.outcome.input as Record<string, number>)[name]!)] : dash
  const inParallel = cableTags.some(tag => context.lookup.cables.get(tag)?.parallelCount !== 1)
  return tableOf(rows, {
    id: 'capacity',
    caption: 'Current-carrying capacity of the cables',
    empty: '',
    columns: [
      { title: 'Cable', width: 'tag', cell: row => [context.tag(row.tag)] },
      { title: 'Table entered at', width: 'text', cell: row => joined(row.capacity.lookup.filter(({ label }) => label !== 'Table').map(({ label, text }) => [muted(`${label}: `), text]), '; ') },
      { title: 'Table', width: 'number', cell: row => input(row, 'tableCurrentA') },
      ...(inParallel ? [{ title: 'In parallel', width: 'number' as const, cell: (row: (typeof rows)[number]) => input(row, 'parallelCount') }] : []),
      { title: 'Ambient', width: 'number', cell: row => input(row, 'ambientFactor') },
      { title: 'Bundle', width: 'number', cell: row => input(row, 'bundleFactor') },
      { title: 'Capacity', width: 'number', cell: row => (row.capacity.outcome.status === 'computed' ? [sayForWorking('capacityA', row.capacity.outcome.output.currentCarryingCapacityA, 'result')] : [muted('not assessed')]) },
      { title: 'Design current', width: 'text', cell: row => (row.capacity.comparison === null ? dash : comparisonText(row.capacity.comparison, context)) },
    ],
    note: [`Capacity = ${inParallel ? 'number in parallel × ' : ''}table × ambient factor × bundle factor. Table: ${cite(context.basis.ampacity.citation)}.`],
  })
}

export function protectionBlock(context: ViewContext, circuit: Circuit, { protection }: CircuitAssessment, { onPaper = false } = {}): Facts | null {
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
      ...(protection.againstCapacity === null || onPaper ? [] : [{ label: 'Limit from', value: [cite(protection.againstCapacity.limit.citation)] as Text }]),
    ],
  }
}

export function sizeBlock(context: ViewContext, circuit: Circuit): Block | Paragraph | null {
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

/** What the circuit's only cable would allow, for whoever wants to move the load or put in a larger one. */
function reachText({ vessel }: ViewContext, fitted: Extract<SizeAdvice, { readonly status: 'computed' }>['asFitted']): string {
  if (fitted === null) return ''
  return ` The fitted cable ${fitted.cableTag} would allow up to ${say('runM', fitted.longestRunM, vessel)} one way at the same current, or ${say('currentA', fitted.largestCurrentA)} over the same way, as far as drop and capacity go.`
}
