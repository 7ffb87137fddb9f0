/** Bill of cable, and of the parts that the data tell of. */
import type { CableOrder, CableOutside, CableTypeBill, ConductorEnds, DeviceCount } from '../../../model/results/cable-bill.js'
import { ftFromM } from '../../../units/convert.js'
import { say, saySize } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { byTag, tableOf } from '../../tables.js'
import { counted, dash, muted, notRecorded } from '../../text.js'
import type { Block, Page, PageKey, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export const billKey: PageKey = `${fixedPages.workshop}/bill`

export function billPage(context: ViewContext): Page {
  const { types } = context.results.cableBill
  const longest = types.toSorted((a, b) => b.all.laidLengthM - a.all.laidLengthM)[0]
  return {
    key: billKey,
    title: 'Bill of cable and parts',
    kicker: 'Workshop',
    lead: [`${counted(types.reduce((sum, { cableCount }) => sum + cableCount, 0), 'cable')} of ${counted(types.length, 'type')}, with ${say('cableSparePercent', context.vessel.conditions.cableSparePercent)} to spare.`],
    printed: null,
    trail: [{ text: 'Workshop documents', to: fixedPages.workshop }],
    blocks: ([
      cableBillTable(context),
      ...perColour(context),
      ...outsideTable(context),
      ...(longest === undefined ? [] : [workingOf(context, `To order of ${longest.typeTag}`, longest.all.order)]),
      { is: 'heading', text: 'Parts', anchor: 'parts' },
      { is: 'paragraph', text: [muted('Only what follows from the data: which lug, stud, contact or holder is used is not recorded. Parts of equipment, and channels of switching modules, are not counted.')] },
      conductorEndTable(context), plugTable(context), busPartTable(context), deviceTable(context),
    ] satisfies readonly Block[]).filter(block => !(block.is === 'table' && block.rows.length === 0 && block.empty === '')),
  }
}

/** Sold by the whole metre or foot. */
function wholeLength({ vessel: { units } }: Pick<ViewContext, 'vessel'>, lengthM: number): string {
  return units === 'us' ? `${Math.round(ftFromM(lengthM))}\u00A0ft` : `${Math.round(lengthM)}\u00A0m`
}

const orderText = (context: ViewContext, { order, cableCount }: CableOrder): Text =>
  (order.status !== 'computed' ? [muted('not assessed')] : cableCount === 0 ? dash : [wholeLength(context, order.output.orderLengthM)])

function cableBillTable(context: ViewContext): Table {
  const { types } = context.results.cableBill
  const { cableTypes } = context.lookup
  const inParallel = types.some(({ cableCount, pieceCount }) => pieceCount !== cableCount)
  const length = (lengthM: number): Text => [say('lengthM', lengthM, context.vessel)]
  // What is missing makes a sum a least one.
  const least = ({ unknownLengthTags }: CableTypeBill, text: Text): Text => (unknownLengthTags.length === 0 ? text : [...text, muted(` and ${unknownLengthTags.join(', ')}`)])
  return tableOf(types, {
    id: 'cable-bill',
    caption: 'Bill of cable',
    empty: 'No cable whose type is recorded.',
    note: ['Laid: the lengths of all cables, with tails and service loops, conductors in parallel each for itself; a length that is recorded as measured stands as it is. To order: with the spare, rounded up. Planned: of it, what is not fitted yet. The longest piece must come from one drum. “and W1”: the length of W1 is not known and is not in the sum.'],
    columns: [
      { title: 'Type', width: 'tag', cell: ({ typeTag }) => [typeTag] },
      { title: 'Name', width: 'text', cell: ({ typeTag }) => [cableTypes.get(typeTag)!.name] },
      { title: 'Cables', width: 'number', cell: ({ cableCount }) => [String(cableCount)] },
      ...(inParallel ? [{ title: 'Pieces', width: 'number' as const, cell: ({ pieceCount }: CableTypeBill): Text => [String(pieceCount)] }] : []),
      { title: 'Laid', width: 'number', cell: bill => least(bill, length(bill.all.laidLengthM)) },
      { title: 'To order', width: 'number', cell: ({ all }) => orderText(context, all) },
      { title: 'Longest piece', width: 'number', cell: ({ longest }) => (longest === null ? dash : length(longest.pieceLengthM)) },
      { title: 'Which is', width: 'tag', cell: ({ longest }) => (longest === null ? dash : [context.tag(longest.cableTag)]) },
      { title: 'Planned', width: 'number', cell: ({ planned }) => (planned.cableCount === 0 ? dash : length(planned.laidLengthM)) },
      { title: 'To order for it', width: 'number', cell: ({ planned }) => orderText(context, planned) },
    ],
  })
}

/** Single-core cable is bought in the colour of its conductor. */
function perColour(context: ViewContext): readonly Block[] {
  const types = context.results.cableBill.types.filter(({ byConductor }) => byConductor !== null)
  if (types.length === 0) return []
  const length = (lengthM: number): Text => (lengthM === 0 ? dash : [say('lengthM', lengthM, context.vessel)])
  return [tableOf(types, {
    id: 'single-core-bill',
    caption: 'Single-core cable, laid lengths by conductor',
    empty: '',
    columns: [
      { title: 'Type', width: 'tag', cell: ({ typeTag }) => [typeTag] },
      { title: 'Positive', width: 'number', cell: ({ byConductor }) => length(byConductor!.positiveLengthM) },
      { title: 'Negative', width: 'number', cell: ({ byConductor }) => length(byConductor!.negativeLengthM) },
      { title: 'Other', width: 'number', cell: ({ byConductor }) => length(byConductor!.otherLengthM) },
    ],
  })]
}

function outsideTable(context: ViewContext): readonly Table[] {
  const { outside } = context.results.cableBill
  return outside.length === 0 ? [] : [tableOf<CableOutside>(outside.toSorted((a, b) => byTag({ tag: a.cableTag }, { tag: b.cableTag })), {
    id: 'cables-outside-bill',
    caption: 'Cables that are not, or not wholly, in the bill',
    empty: '',
    columns: [
      { title: 'Cable', width: 'tag', cell: ({ cableTag }) => [context.tag(cableTag)] },
      { title: 'Name', width: 'text', cell: ({ cableTag }) => [context.nameOf(cableTag) ?? '–'] },
      { title: 'Type', width: 'tag', cell: ({ typeTag }) => (typeTag === null ? [notRecorded] : [typeTag]) },
      { title: 'Length', width: 'number', cell: ({ lengthM }) => (lengthM === null ? [muted('not known')] : [say('lengthM', lengthM, context.vessel)]) },
      { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
    ],
  })]
}

const useNames: Readonly<Record<ConductorEnds['use'], string>> = {
  'power': 'd.c. power', 'ac power': 'mains', 'bonding': 'bonding', 'serial': 'serial', 'signal': 'signal and control', 'can bus': 'CAN bus', 'ethernet': 'network', 'coax': 'coaxial',
}

const conductorEndTable = (context: ViewContext): Table => tableOf(context.results.cableBill.conductorEnds, {
  id: 'conductor-ends',
  caption: 'Ends of conductors: lugs, ferrules, contacts',
  empty: '',
  note: ['Two for each core of each cable whose cores and size are recorded; cores that are not used are counted too. The stud or clamp at each end is to be looked up on the part.'],
  columns: [
    { title: 'For', width: 'text', cell: ({ use }) => [useNames[use]] },
    { title: 'Conductor', width: 'short', cell: ({ size }) => [saySize(size)] },
    { title: 'Ends', width: 'number', cell: ({ endCount }) => [String(endCount)] },
  ],
})

const plugTable = (context: ViewContext): Table => tableOf(context.results.cableBill.plugs, {
  id: 'plugs',
  caption: 'Connectors of coaxial and network cable',
  empty: '',
  note: ['Where a cable does not say how many connectors it has, one at each end.'],
  columns: [
    { title: 'Type', width: 'tag', cell: ({ typeTag }) => [typeTag] },
    { title: 'Name', width: 'text', cell: ({ typeTag }) => [context.lookup.cableTypes.get(typeTag)!.name] },
    { title: 'Connectors', width: 'number', cell: ({ connectorCount }) => [String(connectorCount)] },
    { title: 'Of them assumed', width: 'number', cell: ({ assumedCount }) => [String(assumedCount)] },
  ],
})

const busPartTable = (context: ViewContext): Table => tableOf(context.results.cableBill.busParts, {
  id: 'bus-parts',
  caption: 'Parts of CAN buses',
  empty: '',
  columns: [
    { title: 'Bus', width: 'text', cell: ({ busTag }) => context.named(busTag) },
    { title: 'Tees', width: 'number', cell: ({ teeCount }) => [String(teeCount)] },
    { title: 'Power insertions', width: 'number', cell: ({ powerTeeCount }) => [String(powerTeeCount)] },
    { title: 'Terminators', width: 'number', cell: ({ terminatorCount }) => [String(terminatorCount)] },
    { title: 'Isolators', width: 'number', cell: ({ isolatorCount }) => [String(isolatorCount)] },
    { title: 'Drop cables', width: 'number', cell: ({ dropCount }) => [String(dropCount)] },
  ],
})

const polesText = ({ polesCount }: DeviceCount): Text => (polesCount === null ? [muted('not recorded')] : [String(polesCount)])

export const deviceTable = (context: ViewContext): Table => tableOf(context.results.cableBill.devices, {
  id: 'devices',
  caption: 'Fuses and breakers',
  empty: '',
  note: ['A device that is not in a way of a panel needs a holder or an enclosure of its own. Spare fuses come on top.'],
  columns: [
    { title: 'Kind', width: 'text', cell: ({ device }) => [device] },
    { title: 'Rating', width: 'number', cell: ({ ratedCurrentA }) => [say('ratedCurrentA', ratedCurrentA)] },
    { title: 'Poles', width: 'number', cell: polesText },
    { title: 'In panels', width: 'number', cell: ({ inPanelCount }) => [String(inPanelCount)] },
    { title: 'Elsewhere, with holder', width: 'number', cell: ({ aloneCount }) => [String(aloneCount)] },
    { title: 'Together', width: 'number', cell: ({ inPanelCount, aloneCount }) => [String(inPanelCount + aloneCount)] },
  ],
})

export const materialTables = (context: ViewContext): readonly Table[] => [conductorEndTable(context), plugTable(context), busPartTable(context), deviceTable(context)]

