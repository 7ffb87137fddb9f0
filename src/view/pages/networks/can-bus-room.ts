/** What room is left on a CAN bus, for its page and the page of spare capacity. */
import { inWords } from '../../../findings/words.js'
import type { BusResult, TeeRoom } from '../../../model/results/can-bus.js'
import { trialLenNumber } from '../../../references/tables/can-rules.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { muted } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../working.js'

/** "One more device of LEN 4 fits at every tee but X124." */
export function roomText({ vessel }: ViewContext, { room, bus }: BusResult): Text {
  const { tees, missing, devicesLeft, dropsLeftM, loadLeftPercent, freeTeeTags } = room
  const full = [
    ...(devicesLeft < 1 ? ['no further device is allowed'] : []),
    ...(dropsLeftM !== null && dropsLeftM <= 0 ? ['the drops together are as long as allowed'] : []),
    ...(loadLeftPercent !== null && loadLeftPercent <= 0 ? ['its load is at the limit'] : []),
  ]
  if (full.length > 0) return [`The bus is full: ${full.join(', ')}.`]
  const left = `Left: ${[`${devicesLeft} devices`, ...(dropsLeftM === null ? [] : [`${say('dropsLeftM', dropsLeftM, vessel)} of drops`]), ...(loadLeftPercent === null ? [] : [`${say('loadLeftPercent', loadLeftPercent)} of the load`])].join(', ')}.`
  const free = freeTeeTags.length === 0 ? 'No tee is free: add one.' : `Free: ${inWords(freeTeeTags)}.`
  return [...supplyRoomText(bus.suppliesDevices, tees, missing), ` ${left} ${free}`]
}

function supplyRoomText(suppliesDevices: boolean, tees: readonly TeeRoom[], missing: readonly string[]): Text {
  if (!suppliesDevices) return ['A new device needs a supply of its own.']
  if (tees.length === 0) return [muted(`How much a new device may take is not assessed${missing.length === 0 ? '' : `: ${missing.join('; ')}`}.`)]
  const unfit = tees.filter(({ lenLeftNumber }) => lenLeftNumber < trialLenNumber)
  const least = Math.min(...tees.map(({ lenLeftNumber }) => lenLeftNumber))
  const part = missing.length === 0 ? '' : ' Of the rest it is not assessed.'
  if (unfit.length === 0) return [`One more device of up to LEN ${least} fits at every tee.${part}`]
  const most = Math.max(...unfit.map(({ lenLeftNumber }) => lenLeftNumber))
  const there = most === 0 ? 'none fits there' : `up to LEN ${most} fits there`
  if (unfit.length === tees.length) return [most === 0 ? `No further device fits.${part}` : `One more device fits at no tee with LEN ${trialLenNumber}, with LEN ${most} at some.${part}`]
  return [`One more device of LEN ${trialLenNumber} fits at every tee but ${inWords(unfit.map(({ tag }) => tag))}; ${there}.${part}`]
}

export function roomBlocks(context: ViewContext, { room, bus }: BusResult): readonly Block[] {
  if (!bus.suppliesDevices || room.tees.length === 0) return []
  const tightest = room.tees.filter(({ by }) => by !== null).toSorted((a, b) => a.lenLeftNumber - b.lenLeftNumber)[0]
  return [
    { is: 'heading', text: 'Room for one more device', anchor: 'room' },
    roomTable(room.tees),
    ...(tightest?.by == null ? [] : [workingOf(context, `Room at ${tightest.tag}: ${tightest.governedBy}`, tightest.by)]),
  ]
}

const roomTable = (tees: readonly TeeRoom[]): Table => tableOf(tees, {
  id: 'room',
  caption: 'The largest load equivalency number of one more device at each tee',
  empty: '',
  note: ['Voltage at every tee and device, current in the cables on the way, the protective device of the supply and 1 A for one device are held to their limits; what governs is named. The new drop is reckoned as 6 m of light cable. For one device: reckon again for the next.'],
  level: ({ lenLeftNumber }) => (lenLeftNumber === 0 ? 'error' : null),
  columns: [
    { title: 'At', width: 'tag', cell: ({ tag, free }) => [{ is: 'tag', text: tag }, ...(free ? [muted(' free')] : [])] },
    { title: 'LEN up to', width: 'number', cell: ({ lenLeftNumber }) => [lenLeftNumber === 0 ? 'none' : String(lenLeftNumber)] },
    { title: 'Governed by', width: 'text', cell: ({ governedBy }) => [governedBy] },
  ],
})
