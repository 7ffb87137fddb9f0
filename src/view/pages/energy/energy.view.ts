/** Load analysis and energy: each operating mode hour by hour, the column method, the batteries, and what follows for their sizes. */
import type { EnergyGap } from '../../../model/results/energy.js'
import type { ViewContext } from '../../context.js'
import { findingCards } from '../../parts/finding-cards.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { dash } from '../../text.js'
import type { Block, Page, Table } from '../../view-model.js'
import { batteryBlocks, sizingBlocks, ventilationBlocks } from './energy-batteries.view.js'
import { columnBlocks, columnSummary } from './energy-columns.view.js'
import { modeBlocks, modeName, modeSummary, statePlot } from './energy-modes.view.js'

const heading = (text: string, anchor: string): Block => ({ is: 'heading', text, anchor })

export function energyPages(context: ViewContext): readonly Page[] {
  const { modes } = context.results.energy
  const findings = context.findings.filter(({ id }) => id.startsWith('ENG'))
  const found: readonly Block[] = findings.length === 0 ? [] : [heading('Findings', 'energy-findings'), { is: 'findings', empty: '', findings: findingCards(context, findings) }]
  const noModes: readonly Block[] = modes.length > 0 ? [] : [{ is: 'paragraph', text: ['No operating mode is recorded, so what is used in a day, how long a battery lasts and what charges it are not assessed.'] }]
  return [{
    key: fixedPages.energy,
    title: 'Load analysis and energy',
    kicker: null,
    lead: ['What the boat takes from each battery, how long that lasts, and what brings it back. The figures are reckoned from recorded currents and hours of use: they plan, they do not measure. The battery monitor on board has the last word.'],
    printed: [
      ...noModes, ...found,
      ...modes.flatMap(mode => [heading(modeName(context, mode.modeTag), `mode-${mode.modeTag}`), ...modeSummary(context, mode), ...statePlot(context, mode)]),
      heading('Column method', 'column-method'), columnSummary(context),
      heading('Batteries', 'batteries'), ...batteryBlocks(context),
      ...sizingBlocks(context), ...ventilationBlocks(context, { onPaper: true }),
      gapTable(context),
    ],
    trail: [],
    blocks: [
      ...noModes, ...found,
      ...modes.flatMap(mode => [heading(modeName(context, mode.modeTag), `mode-${mode.modeTag}`), ...modeBlocks(context, mode)]),
      heading('Column method', 'column-method'), ...columnBlocks(context),
      heading('Batteries', 'batteries'), ...batteryBlocks(context),
      ...sizingBlocks(context), ...ventilationBlocks(context, { onPaper: false }),
      gapTable(context),
    ],
  }]
}

function gapTable(context: ViewContext): Table {
  return tableOf(context.results.energy.notAssessed, {
    id: 'energy-not-assessed',
    caption: 'Not assessed',
    empty: 'Nothing is missing.',
    columns: [
      { title: 'What', width: 'text', cell: gap => context.named(gap.subjectTag) },
      { title: 'In mode', width: 'short', cell: (gap: EnergyGap) => (gap.modeTag === null ? dash : [modeName(context, gap.modeTag)]) },
      { title: 'Because', width: 'text', cell: gap => [gap.reason] },
    ],
  })
}
