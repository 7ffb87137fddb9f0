/** How long the batteries last where no engine and no shore power charges them, and what takes the most. */
import type { ModeEnergy } from '../../../model/results/energy.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { modeName } from '../../pages/energy/energy-modes.view.js'
import { fixedPages } from '../../site-map.js'
import { tableOf } from '../../tables.js'
import { counted, linkTo, muted, strong } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'

/** What lasts longer than this is no question of a night. */
const longestH = 30 * 24
const mostUsers = 8

export function onBatteries(context: ViewContext): readonly Block[] {
  const modes = context.results.energy.modes.filter(({ sources }) => sources.every(({ kind }) => kind === 'solar'))
  const rows = modes.flatMap(mode => mode.batteries.flatMap(day =>
    (day.endurance.status === 'computed' && day.loadAh > 0 && day.endurance.output.enduranceH < longestH ? [{ mode, day, enduranceH: day.endurance.output.enduranceH }] : [])))
  if (rows.length === 0) return [{ is: 'paragraph', text: ['How long the batteries last is not assessed: no operating mode without engine and shore power is recorded with its loads.'] }]
  return [
    ...rows.map(({ mode, day, enduranceH }): Block => ({
      is: 'facts', caption: `${modeName(context, mode.modeTag)}: ${[day.batteryTag, context.nameOf(day.batteryTag) ?? ''].join(' ').trim()}`, entries: [
        { label: 'Lasts, with nothing charging', value: [strong(inDays(enduranceH)), ', from full down to the lowest charge allowed'] },
        { label: 'Used in a day', value: [say('loadAh', day.loadAh)] },
        ...(mode.sources.length === 0 ? [] : [{ label: 'With the sun', value: sunText(day.offeredAh, day.run) }]),
      ],
    })),
    { is: 'paragraph', text: ['How this was reckoned is told under ', linkTo(fixedPages.energy, 'Load analysis and energy'), '.'] },
    ...modes.filter(mode => rows.some(row => row.mode === mode)).map(mode => usersTable(context, mode)),
  ]
}

/** Nights are counted, and below two of them hours. Begun hours are not promised. */
export const inDays = (timeH: number): string => (timeH < 48 ? say('timeH', timeH) : `${Math.floor(timeH / 24)} days and ${counted(Math.floor(timeH % 24), 'hour')}`)

function sunText(offeredAh: number, run: ModeEnergy['batteries'][number]['run']): Text {
  if (run === null) return [muted('not assessed')]
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
