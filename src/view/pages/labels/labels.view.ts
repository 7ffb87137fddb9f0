/** Every label there is to print: what on which stock, how to print it, and where the danger labels go. */
import { isThere } from '../../../model/lookup.js'
import type { Label } from '../../../model/results/labels.js'
import type { LabelSize } from '../../../model/vessel.js'
import { cite } from '../../../references/bibliography.js'
import { labelCitations, leastWarnedDistanceM } from '../../../references/tables/label-practice.js'
import { say, sayBoth } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../parts/finding-cards.js'
import { framedLabel } from '../../labels/label-drawing.js'
import { labelListFile } from '../../labels/label-lists.js'
import { codeOf, type LabelRun, labelRuns, useTitles } from '../../labels/label-runs.js'
import { testSheets } from '../../labels/test-sheets.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, linkTo, lineBreak, muted, orDash, strong } from '../../text.js'
import type { Block, Drawing, Page, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function labelPages(context: ViewContext): readonly Page[] {
  const runs = labelRuns(context)
  if (runs.length === 0) return []
  const labelCount = runs.reduce((sum, { labels }) => sum + labels.length, 0)
  return [{
    key: fixedPages.labels,
    title: 'Labels',
    kicker: null,
    lead: [`${counted(labelCount, 'label')} to print, zone by zone in the order in which they are stuck on; the two of a cable stand side by side.`],
    printed: null,
    trail: [],
    blocks: [
      sheetTable(context, runs), { is: 'heading', text: 'How to print them', anchor: 'printing' }, printing, testSheetLinks(runs),
      ...wrapBlocks(context, runs), ...codeBlocks(context, runs), ...dangerBlocks(context), ...examples(context, runs), ...findingBlocks(context),
    ],
  }]
}

function sheetTable(context: ViewContext, runs: readonly LabelRun[]): Table {
  return tableOf(runs, {
    id: 'label-sheets', caption: 'Sheets of labels', empty: '',
    columns: [
      { title: 'For', width: 'short', cell: ({ use }) => [strong(useTitles[use])] },
      { title: 'Label stock', width: 'text', cell: ({ size }) => [size.title, lineBreak, muted(size.key)] },
      { title: 'Labels', width: 'number', cell: ({ labels }) => [String(labels.length)] },
      { title: 'Sheets', width: 'number', cell: ({ sheetCount }) => [String(sheetCount)] },
      { title: 'Smallest letters', width: 'number', cell: ({ labels }) => [say('letterHeightMm', Math.min(...labels.map(({ comparison }) => comparison.value)), context.vessel)] },
      { title: 'To print', width: 'text', cell: ({ file, use }) => [{ is: 'pack file', text: 'Sheets', file }, lineBreak, { is: 'pack file', text: 'Table for a label printer', file: labelListFile(use) }] },
    ],
    note: ['Letters: height of capitals. A table holds all labels of its kind, whatever their size, in UTF-8. ', `Cables: ${cite(labelCitations.bothEnds)}.`],
  })
}

const printing: Block = {
  is: 'markdown', source: [
    '1. Print the test sheets on plain paper at 100 %, called "actual size" in many print windows; nothing may be fitted to the page.',
    '2. Measure the line on the test sheet: it is 100 mm long. Hold the sheet and the label stock against the light: the outlines lie on the labels. If they do not, measure the stock and enter it under `label-sizes`.',
    '3. Print the sheets of labels with the same settings, on the side that carries the labels.',
    '4. Use stock made for boats: a film that takes oil, water and heat, with print that does not run. Paper labels do not last.',
  ].join('\n'),
}

function testSheetLinks(runs: readonly LabelRun[]): Block {
  const files = testSheets(runs.map(({ size }) => size))
  return { is: 'paragraph', text: joined(files.map(({ file, title }): Text => [{ is: 'pack file', text: title, file }]), lineBreak) }
}

// --- around cables ---------------------------------------------------------------------------------------------------
function wrapBlocks(context: ViewContext, runs: readonly LabelRun[]): readonly Block[] {
  const wraps = runs.filter(({ use, size }) => use === 'cables' && size.form === 'wrap')
  if (wraps.length === 0) return []
  const example = wraps.flatMap(({ labels }) => labels).find(({ wrap }) => wrap !== null)
  const rows = wraps.toSorted((a, b) => a.size.clearTailMm - b.size.clearTailMm)
  return [
    tableOf(rows, {
      id: 'wrap-sizes', caption: 'Labels around cables', empty: '',
      columns: [
        { title: 'Label stock', width: 'text', cell: ({ size }) => [size.title] },
        { title: 'Cables, outside diameter', width: 'short', cell: ({ size }) => [diameters(context, size)] },
        { title: 'Cables', width: 'number', cell: ({ labels }) => [String(new Set(labels.map(({ aboutTag }) => aboutTag)).size)] },
      ],
      note: ['Each cable has the shortest label whose clear tail goes around it and whose print does not lap over itself. A cable whose diameter is not recorded has the usual size: hold it against the cable first.'],
    }),
    ...(example?.wrap == null ? [] : [workingOf(context, `Example: cable ${example.aboutTag}`, example.wrap)]),
  ]
}

const diameters = ({ vessel }: ViewContext, { labelHeightMm, clearTailMm }: LabelSize): string =>
  `${say('outerDiameterMm', labelHeightMm / Math.PI, vessel)} to ${say('outerDiameterMm', clearTailMm / Math.PI, vessel)}`

// --- codes -----------------------------------------------------------------------------------------------------------
function codeBlocks(context: ViewContext, runs: readonly LabelRun[]): readonly Block[] {
  const labels = runs.filter(({ use }) => use === 'equipment').flatMap(run => run.labels)
  if (labels.length === 0) return []
  const coded = labels.filter(label => codeOf(context, label) !== null).length
  const { manualAddress } = context.vessel.document
  const leads: Text = manualAddress === null
    ? ['No address of this manual on the network is recorded, so the codes hold tag, name and vessel in words.']
    : ['The codes lead to the thing’s own page below ', { is: 'tag', text: manualAddress }, '. They need that site to be there: on board without a network, look the tag up in this pack.']
  const without = labels.length - coded
  return [
    { is: 'heading', text: 'Codes on equipment', anchor: 'codes' },
    { is: 'paragraph', text: [`${counted(coded, 'label')} of equipment carry a code for a camera. `, ...leads, ...(without === 0 ? [] : [` ${counted(without, 'label')} carry none: it would be too small to be read.`]), ` Source: ${cite(labelCitations.code)}.`] },
  ]
}

// --- danger ----------------------------------------------------------------------------------------------------------
function dangerBlocks(context: ViewContext): readonly Block[] {
  const labels = context.results.labels.labels.filter(({ use }) => use === 'danger')
  const unlabelled = context.vessel.batteries.filter(battery => isThere(battery) && battery.chemistry === null)
  return [
    { is: 'heading', text: 'Danger labels', anchor: 'danger' },
    { is: 'paragraph', text: [
      'Made from what is recorded of this boat. They do not replace labels that law, class or a maker asks for, and there may be dangers that nobody recorded: look for them on board. ',
      `No label warns of antennas from which less than ${say('distanceM', leastWarnedDistanceM, context.vessel)} has to be kept: see `, linkTo(fixedPages.radio, 'Radio and antennas'), '.',
      ...(unlabelled.length === 0 ? [] : [' Without a label, for want of their chemistry: ', ...joined(unlabelled.map(({ tag }) => context.named(tag))), '.']),
    ] },
    tableOf(labels, {
      id: 'danger-labels', caption: 'Where they go', empty: 'Nothing that is recorded asks for one.',
      columns: [
        { title: 'Zone', width: 'short', cell: ({ place }) => (place.zoneTag === null ? dash : context.named(place.zoneTag)) },
        { title: 'On', width: 'text', cell: ({ place }) => context.named(place.atTag) },
        { title: 'It warns', width: 'text', cell: ({ signal, texts }) => [strong(signal ?? ''), ` ${texts[0] ?? ''}`] },
        { title: 'Where exactly', width: 'text', cell: ({ place }) => orDash(place.words) },
      ],
    }),
  ]
}

// --- what they look like ---------------------------------------------------------------------------------------------
function examples(context: ViewContext, runs: readonly LabelRun[]): readonly Block[] {
  return [{ is: 'heading', text: 'What they look like', anchor: 'examples' }, ...runs.map(run => exampleOf(context, run))]
}

function exampleOf(context: ViewContext, { use, size, labels }: LabelRun): Drawing {
  const label = labels[0]!
  const tail = size.clearTailMm > 0 ? ' The shaded part is clear and goes around over the print.' : ''
  return {
    is: 'drawing', id: `label-${use}-${size.key}`, caption: `${useTitles[use]}: ${size.title}`, narrow: true, svg: framedLabel(label, size, codeOf(context, label)),
    description: [`${wordsOn(label)}. ${sayBoth('labelWidthMm', size.labelWidthMm, context.vessel)} wide.${tail}`],
  }
}

const wordsOn = ({ headline, texts }: Label): string => [headline, ...texts].filter(part => part !== null).join(' ')

function findingBlocks(context: ViewContext): readonly Block[] {
  const findings = context.findings.filter(({ id, subject }) => id.startsWith('LBL') || subject.kind === 'label size')
  return findings.length === 0 ? [] : [{ is: 'heading', text: 'Findings', anchor: 'findings' }, { is: 'findings', empty: '', findings: findingCards(context, findings) }]
}
