/** How long the batteries last where no engine and no shore power charges them, and what takes the most. */
import type { ModeEnergy } from '../../model/results/energy.js'
import { say } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { modeName, sayTime } from '../pages/energy-modes.view.js'
import { fixedPages } from '../site-map.js'
import { tableOf } from '../tables.js'
import { dash, linkTo, muted } from '../text.js'
import type { Block, Table, Text } from '../view-model.js'

/** What lasts longer than this is no question of a night. */
const longestH = 30 * 24
const mostUsers = 8

export function onBatteries(context: ViewContext): readonly Block[] {
  const modes = context.results.energy.modes.filter(({ sources }) => sources.every(({ kind }) => kind === 'solar'))
  const rows = modes.flatMap(mode => mode.batteries.flatMap(day =>
    (day.endurance.status === 'computed' && day.loadAh > 0 && day.endurance.output.enduranceH < longestH ? [{ mode, day, enduranceH: day.endurance.output.enduranceH }] : [])))
  if (rows.length === 0) return [{ is: 'paragraph', text: ['How long the batteries last is not assessed: no operating mode without engine and shore power is recorded with its loads.'] }]
  return [
    tableOf(rows, {
      id: 'lasts',
      caption: 'How long the batteries last',
      empty: '',
      columns: [
        { title: 'Use', width: 'text', cell: ({ mode }) => [modeName(context, mode.modeTag)] },
        { title: 'Battery', width: 'text', cell: ({ day }) => context.named(day.batteryTag) },
        { title: 'Used in a day', width: 'number', cell: ({ day }) => [say('loadAh', day.loadAh)] },
        { title: 'Lasts with no charging', width: 'number', cell: ({ enduranceH }) => [sayTime(enduranceH)] },
        { title: 'With the sun', width: 'text', cell: ({ day, mode }) => sunText(mode, day.offeredAh, day.run) },
      ],
      note: ['From full down to the lowest charge allowed. The working is under ', linkTo(fixedPages.energy, 'Load analysis and energy'), '.'],
    }),
    ...modes.filter(mode => rows.some(row => row.mode === mode)).map(mode => usersTable(context, mode)),
  ]
}

function sunText({ sources }: ModeEnergy, offeredAh: number, run: ModeEnergy['batteries'][number]['run']): Text {
  if (sources.length === 0 || run === null) return dash
  const days = Math.round(run.hours.length / 24)
  return [
    `${say('offeredAh', offeredAh)} in a day. `,
    ...(run.emptyHoursCount > 0 ? ['It runs empty all the same.'] : [`After ${days === 1 ? 'a day' : `${days} days`} lowest at ${say('chargePercent', run.lowestPercent)}`, muted(`, allowed ${say('chargePercent', run.limitPercent)}`), '.']),
  ]
}

/** What to switch off first. */
function usersTable(context: ViewContext, mode: ModeEnergy): Table {
  const loads = mode.loads.filter(({ batteryTag, energyWh }) => batteryTag !== null && energyWh > 0).toSorted((a, b) => b.energyWh - a.energyWh)
  return tableOf(loads.slice(0, mostUsers), {
    id: `users-${mode.modeTag}`,
    caption: `What takes the most: ${modeName(context, mode.modeTag)}`,
    empty: '',
    columns: [
      { title: 'Load', width: 'text', cell: ({ itemTag }) => context.named(itemTag) },
      { title: 'In a day', width: 'number', cell: ({ energyWh }) => [say('energyWh', energyWh)] },
      { title: 'Hours a day', width: 'number', cell: ({ timeH, dutyPercent }) => [say('timeH', (timeH * dutyPercent) / 100)] },
    ],
  })
}
