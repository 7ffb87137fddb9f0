/** What room is left on a CAN bus, for its page and the page of spare capacity. */
import { inWords } from '../../../findings/words.js'
import type { BusResult, TeeRoom } from '../../../model/results/can-bus.js'
import type { Tag } from '../../../model/vessel.js'
import { deviceLenLimit, newDrop, trialLenNumber } from '../../../references/tables/can-rules.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { counted, dash, joined, muted, notRecorded } from '../../text.js'
import type { Block, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

/** "One more device of LEN 4 fits at every tee but X124." */
export function roomText({ vessel, nameOf }: ViewContext, { room, bus, backbone }: BusResult): Text {
  const { tees, missing, devicesLeft, dropsLeftM, loadLeftPercent, freeTeeTags } = room
  const full = [
    ...(devicesLeft < 1 ? ['no further device is allowed'] : []),
    ...(dropsLeftM !== null && dropsLeftM <= 0 ? ['the drops together are as long as allowed'] : []),
    ...(loadLeftPercent !== null && loadLeftPercent <= 0 ? ['its load is at the limit'] : []),
  ]
  if (full.length > 0) return [`The bus is full: ${full.join(', ')}.`]
  const left = `Left: ${[counted(devicesLeft, 'device'), ...(dropsLeftM === null ? [] : [`${say('dropsLeftM', dropsLeftM, vessel)} of drops`]), ...(loadLeftPercent === null ? [] : [`${say('loadLeftPercent', loadLeftPercent)} of the load`])].join(', ')}.`
  const placed = backbone.stations.filter(({ part }) => freeTeeTags.includes(part.tag)).map(({ part: { tag, zoneTag } }) => (zoneTag === null ? tag : `${tag} (${nameOf(zoneTag) ?? zoneTag})`))
  const free = placed.length === 0 ? 'No tee is free: add one.' : `Free: ${inWords(placed)}.`
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

export function roomBlocks(context: ViewContext, { room, bus, backbone }: BusResult): readonly Block[] {
  if (!bus.suppliesDevices || room.tees.length === 0) return []
  const zones = new Map(backbone.stations.map(({ part }) => [part.tag, part.zoneTag]))
  const [tightest] = room.tees.filter(({ governed }) => governed !== null).toSorted((a, b) => unitsOf(a) - unitsOf(b))
  return [
    { is: 'heading', text: 'Room for one more device', anchor: 'room' },
    roomTable(context, room.tees.map(tee => ({ ...tee, zoneTag: zones.get(tee.tag) ?? null }))),
    ...(tightest?.governed == null ? [] : [workingOf(context, `Room at ${tightest.tag}: ${tightest.governed.words}`, tightest.governed.by)]),
  ]
}

const unitsOf = ({ governed }: TeeRoom): number => governed?.by.output.lenLeftNumber ?? Infinity

interface PlacedRoom extends TeeRoom { readonly zoneTag: Tag | null }
/** Neighbours alike in everything stand in one row. */
function alike(tees: readonly PlacedRoom[]): readonly (readonly [PlacedRoom, ...PlacedRoom[]])[] {
  const rows: [PlacedRoom, ...PlacedRoom[]][] = []
  for (const tee of tees) {
    const last = rows.at(-1)
    if (last !== undefined && last[0].zoneTag === tee.zoneTag && last[0].lenLeftNumber === tee.lenLeftNumber && unitsOf(last[0]) === unitsOf(tee) && last[0].governed?.words === tee.governed?.words) last.push(tee)
    else rows.push([tee])
  }
  return rows
}

const roomTable = (context: ViewContext, tees: readonly PlacedRoom[]): Table => tableOf(alike(tees), {
  id: 'room',
  caption: 'The largest load equivalency number of one more device at each tee',
  empty: '',
  note: [`Voltage at every tee and device, current in the cables on the way and the protective device of the supply are held to their limits; the one that governs is named. What the circuit of the supply loses more is reckoned in. One device takes at most LEN ${deviceLenLimit.value}. The new drop is reckoned as ${newDrop.lengthM} m of ${newDrop.cable} cable. What is added changes the sums: reckon again for the next.`],
  level: ([{ lenLeftNumber }]) => (lenLeftNumber === 0 ? 'error' : null),
  columns: [
    { title: 'Zone', width: 'short', cell: ([{ zoneTag }]) => (zoneTag === null ? [notRecorded] : context.named(zoneTag)) },
    { title: 'At', width: 'text', cell: row => joined(row.map(({ tag, free }): Text => [{ is: 'tag', text: tag }, ...(free ? [muted(' free')] : [])])) },
    { title: 'LEN up to', width: 'number', cell: ([{ lenLeftNumber }]) => [lenLeftNumber === 0 ? 'none' : String(lenLeftNumber)] },
    { title: 'The bus could give', width: 'text', cell: ([tee]) => (tee.governed === null ? dash : [`${unitsOf(tee)} by ${tee.governed.words}`]) },
  ],
})
