/** Where a device can join a CAN bus, for a person, with every sum as it can be redone by hand. */
import type { Examined } from '../build.js'
import type { BusAnswer, BusRequest, SpotAnswer, SpotSupply } from '../calculate/reserve/on-bus.js'
import { inWords } from '../findings/words.js'
import { lookup } from '../model/lookup.js'
import { cableLengthM } from '../model/results.js'
import type { TeeRoom } from '../model/results/can-bus.js'
import { cite } from '../references/bibliography.js'
import { currentPerLenA, deviceLenLimit, newDrop } from '../references/tables/can-rules.js'
import { say, sayAgainst, sayForWorking } from '../units/format.js'
import { labelled, lengthText, type Lines, tableLines, withName } from './reserve-lines.js'

export interface BusPart { readonly request: BusRequest; readonly buses: readonly BusAnswer[] }

export function busText(examined: Examined, { request, buses }: BusPart): Lines {
  return [
    `Where a device of LEN ${request.loadEquivalencyNumber} at ${withName(examined, request.atTag)} can join a CAN bus: it takes `
      + `${lenSum(request.loadEquivalencyNumber)} of the bus, over a drop of ${newDrop.cable} cable.`,
    ...(buses.length === 0 ? ['', 'No CAN bus is recorded.'] : []),
    ...buses.flatMap((bus, i) => ['', ...busLines(examined, request, bus, `${i + 1}. `)]),
  ]
}

const lenSum = (len: number): string => `${len} · ${sayForWorking('currentA', currentPerLenA)} = ${sayForWorking('currentA', len * currentPerLenA)}`

function busLines(examined: Examined, request: BusRequest, { busTag, verdict, reasons, spots }: BusAnswer, bullet: string): Lines {
  const shown = spots.find(spot => spot.verdict === verdict) ?? null
  const closed = spots.filter(spot => spot !== shown && spot.verdict === 'does not fit')
  return [
    `${bullet}${busTag} ${lookup(examined.vessel).canBuses.get(busTag)?.name ?? ''}: ${verdict}`,
    ...reasons.map(reason => `   because ${reason}`),
    ...(spots.length === 0 ? [] : ['', ...overview(examined, spots).map(line => `   ${line}`)]),
    ...(shown === null ? [] : ['', ...spotLines(examined, request, shown)]),
    ...(closed.length === 0 ? [] : ['', '   Does not fit at:', ...closed.map(({ teeTags, reasons: why }) => `   - ${inWords(teeTags)}: ${why.join('; ')}`)]),
  ]
}

/** The places of one bus in one line each, the nearest first. */
function overview({ vessel }: Examined, spots: readonly SpotAnswer[]): Lines {
  return tableLines([['tees', 'zone', '', 'drop', 'LEN up to', 'worst tee, now and with it'], ...spots.map(({ teeTags, freeTeeTags, zoneTag, verdict, run, room, supply }) => {
    const lengthM = cableLengthM(run)
    return [
      `${inWords(teeTags)}${freeTeeTags.length === 0 ? '' : `, free: ${inWords(freeTeeTags)}`}`,
      zoneTag ?? '–', verdict,
      lengthM === null ? '–' : say('cableLengthM', lengthM, vessel),
      room === null ? '–' : room.lenLeftNumber === 0 ? 'none' : String(room.lenLeftNumber),
      supply?.worst == null ? '–' : `${supply.worst.isNew ? 'the new one' : supply.worst.tag} ${say('voltageDropV', supply.worst.beforeDropV)}, ${say('voltageDropV', supply.worst.drop.value)}`,
    ]
  })])
}

function spotLines(examined: Examined, request: BusRequest, spot: SpotAnswer): Lines {
  const { atTeeTag, how, verdict, reasons, room, supply, longerBackbone } = spot
  return [
    `   ${nearest[verdict]}: ${how === 'free tee' ? `free tee ${atTeeTag}` : `a new tee beside ${atTeeTag}`}${spot.zoneTag === null ? '' : `, ${withName(examined, spot.zoneTag)}`}`,
    ...(verdict === 'fits' ? [] : reasons.map(reason => `   because ${reason}`)),
    ...labelled('drop', [`${lengthText(examined, spot.run)}${spot.drop === null ? '' : `; limit ${say('dropLengthM', spot.drop.limit.value, examined.vessel)}: ${cite(spot.drop.limit.citation)}`}`]),
    ...(longerBackbone === null ? [] : labelled('instead', backboneLines(longerBackbone))),
    ...(room === null ? [] : labelled('LEN up to', roomLines(room))),
    ...(supply === null ? [] : supplyLines(request, supply)),
    ...labelled('leaves', [leftText(examined, request, spot)]),
  ]
}

const nearest = { 'fits': 'Nearest that fits', 'not assessed': 'Nearest, not assessed', 'does not fit': 'Nearest, does not fit' } as const

function backboneLines({ nowM, comparison }: NonNullable<SpotAnswer['longerBackbone']>): Lines {
  const wayM = (comparison.value - nowM) / 2
  return [
    'lead the backbone itself to the place and back, with the tee there. That lengthens it:',
    `${sayForWorking('backboneLengthM', nowM)} + 2 · ${sayForWorking('cableLengthM', wayM)} = ${sayForWorking('backboneLengthM', comparison.value)}, limit ${sayForWorking('backboneLengthM', comparison.limit.value)}, ${comparison.within ? 'within' : 'too long'}`,
    'Its voltage changes as well: enter it as planned, and run asfitted check.',
  ]
}

function roomLines({ lenLeftNumber, governed }: TeeRoom): Lines {
  const most = `one device takes at most LEN ${deviceLenLimit.value}`
  if (governed === null) return [`${lenLeftNumber}: ${most}`]
  const { words, by: { input, output } } = governed
  const { marginV, resistanceOhm, marginA } = input
  const isVoltage = marginV !== undefined && resistanceOhm !== undefined
  const sum = isVoltage ? `${sayForWorking('marginV', marginV)} / (${sayForWorking('currentA', currentPerLenA)} · ${sayForWorking('resistanceOhm', resistanceOhm)})`
    : `${sayForWorking('marginA', marginA ?? 0)} / ${sayForWorking('currentA', currentPerLenA)}`
  return [
    `${lenLeftNumber} as the bus is now${lenLeftNumber < output.lenLeftNumber ? `: ${most}` : ''}`,
    `the bus could give ${output.lenLeftNumber} by ${words}: ${sum}, rounded down${isVoltage ? `; with a drop of ${newDrop.lengthM} m` : ''}`,
  ]
}

function supplyLines({ loadEquivalencyNumber }: BusRequest, supply: SpotSupply): Lines {
  const { worst, device, againstProtection, beforeLenNumber, afterLenNumber, circuitTag, plannedCurrentA } = supply
  const volts = (name: string, valueV: number): string => sayForWorking(name, valueV, 'result')
  return [
    ...(worst === null ? [] : labelled('worst tee', worstLines(loadEquivalencyNumber, supply, worst))),
    ...(device === null ? [] : labelled('at the device', [
      `${sayForWorking('voltageV', device.teeVoltageV)} at the tee less the drop cable, 2 · ${sayForWorking('resistanceOhmPerM', device.dropCable.input.resistanceOhmPerM)} · `
        + `${sayForWorking('lengthM', device.dropCable.input.lengthM)} · ${sayForWorking('currentA', device.dropCable.input.currentA)} = ${volts('voltageDropV', device.dropCable.output.voltageDropV)}: `
        + `${volts('voltageV', device.lowest.value)}, at least ${say('voltageV', device.lowest.limit.value)}`,
    ])),
    ...labelled('current', [
      `LEN ${beforeLenNumber} now, ${afterLenNumber} with it: ${lenSum(afterLenNumber)}`
        + (againstProtection === null ? '' : ` through ${circuitTag}, whose device has ${say('ratedCurrentA', againstProtection.limit.value)}`),
      ...(plannedCurrentA === null ? [] : [`${circuitTag} is planned for ${sayForWorking('currentA', plannedCurrentA)}, which is less: enter ${sayForWorking('currentA', afterLenNumber * currentPerLenA)} for it. The voltages with the device are reckoned with that.`]),
    ]),
  ]
}

function worstLines(len: number, { beforeVoltageV, afterVoltageV }: SpotSupply, worst: NonNullable<SpotSupply['worst']>): Lines {
  const { tag, isNew, beforeDropV, sharedResistanceOhm, drop } = worst
  const volts = (dropV: number): string => sayForWorking('voltageDropV', dropV, 'result')
  const added = `${volts(beforeDropV)} + ${sayForWorking('currentA', len * currentPerLenA)} · ${sayForWorking('resistanceOhm', sharedResistanceOhm)} = ${volts(drop.value)}`
  const { actual, limit } = sayAgainst('voltageDropV', drop.value, drop.limit.value)
  return [
    `${isNew ? `the new one, at ${tag}` : tag}: ${volts(beforeDropV)} lost from the insertion now; with it ${sharedResistanceOhm === 0 ? 'as much: no cable is shared' : added}`,
    `${actual}, limit ${limit}: ${cite(drop.limit.citation)}`,
    ...(beforeVoltageV === null || afterVoltageV === null || worst.beforeVoltageV === null || worst.afterVoltageV === null ? [] : [
      `voltage there: ${sayForWorking('voltageV', beforeVoltageV)} − ${volts(beforeDropV)} = ${say('voltageV', worst.beforeVoltageV)} now, `
        + `${sayForWorking('voltageV', afterVoltageV)} − ${volts(drop.value)} = ${say('voltageV', worst.afterVoltageV)} with it`,
    ]),
  ]
}

function leftText({ vessel }: Examined, { sends }: BusRequest, { left }: SpotAnswer): string {
  const { lenLeftNumber, devicesLeft, dropsLeftM, worstLoadPercent, loadLeftPercent } = left
  return [
    ...(lenLeftNumber === null ? [] : [lenLeftNumber === 0 ? 'nothing more at the same place' : `up to LEN ${lenLeftNumber} at the same place`]),
    `${devicesLeft} ${devicesLeft === 1 ? 'device' : 'devices'}`,
    ...(dropsLeftM === null ? [] : [`${say('dropsLeftM', dropsLeftM, vessel)} of drops`]),
    ...(worstLoadPercent === null || loadLeftPercent === null ? [] : [`${say('loadLeftPercent', loadLeftPercent)} of bus load (${say('worstLoadPercent', worstLoadPercent)} taken, ${sends === null ? 'without' : 'with'} what the new device sends)`]),
  ].join(', ')
}

