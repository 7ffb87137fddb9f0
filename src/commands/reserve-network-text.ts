/** Where a device can be plugged into a network, for a person, with every sum as it can be redone by hand. */
import type { Examined } from '../build.js'
import type { NetworkRequest, SwitchAnswer, SwitchPower } from '../calculate/reserve/on-network.js'
import { inWords } from '../findings/words.js'
import { lookup } from '../model/lookup.js'
import { cableLengthM } from '../model/results.js'
import type { NetworkPower, PortUse } from '../model/results/ethernet.js'
import { cite } from '../references/bibliography.js'
import { powerClassCitation, powerClassOf } from '../references/tables/poe-classes.js'
import { say, sayForWorking } from '../units/format.js'
import { labelled, lengthText, type Lines, tableLines, withName } from './reserve-lines.js'

export interface NetworkPart { readonly request: NetworkRequest; readonly switches: readonly SwitchAnswer[] }

export function networkText(examined: Examined, { request, switches }: NetworkPart): Lines {
  const asked = powerClassOf(request.powerClass)
  return [
    `Where a device ${asked === null ? 'with a network plug' : `of power class ${asked.classNumber}`} at ${withName(examined, request.atTag)} can be plugged in: ` + (asked === null ? 'any free port of a network switch.'
      : `its class reserves ${sayForWorking('sourcePowerW', asked.sourcePowerW)} of the switch for ${sayForWorking('devicePowerW', asked.devicePowerW)} at the device (${cite(powerClassCitation)}).`),
    ...(switches.length === 0 ? ['', 'No network switch is recorded.'] : ['', ...overview(examined, switches, asked !== null)]),
    ...switches.flatMap((answer, i) => ['', ...switchLines(examined, answer, `${i + 1}. `)]),
  ]
}

const classText = ({ powerClass }: PortUse): string => (powerClass === null ? 'no power' : `class ${powerClass}`)

/** The switches in one line each, the nearest first. */
function overview({ vessel }: Examined, switches: readonly SwitchAnswer[], isPowered: boolean): Lines {
  return tableLines([['', '', 'cable', 'port', 'gives', ...(isPowered ? ['left by class'] : [])], ...switches.map(({ switchTag, verdict, run, port, power }, i) => {
    const lengthM = run === null ? null : cableLengthM(run)
    return [
      `${i + 1}. ${switchTag} ${lookup(vessel).items.get(switchTag)?.name ?? ''}`, verdict,
      lengthM === null ? '–' : say('cableLengthM', lengthM, vessel),
      port?.name ?? '–',
      port === null ? '–' : classText(port),
      ...(isPowered ? [power === null ? '–' : leftText(power)] : []),
    ]
  })])
}

function leftText({ before, after }: SwitchPower): string {
  const [now, then] = [before.reservedMargin, after.reservedMargin]
  return now.status === 'computed' && then.status === 'computed' ? `${say('marginPowerW', now.output.marginPowerW)} now, ${say('marginPowerW', then.output.marginPowerW)} with it` : 'not known'
}

function switchLines(examined: Examined, answer: SwitchAnswer, bullet: string): Lines {
  const { switchTag, networkTag, verdict, reasons, freePorts, port, run, length, power } = answer
  const { items, ethernetNetworks } = lookup(examined.vessel)
  return [
    `${bullet}${switchTag} ${items.get(switchTag)?.name ?? ''}, in ${networkTag} ${ethernetNetworks.get(networkTag)?.name ?? ''}: ${verdict}`,
    ...reasons.map(reason => `   because ${reason}`),
    ...(port === null ? [] : labelled('port', [portText(examined, port, freePorts)])),
    ...(run === null ? [] : labelled('cable', [`${lengthText(examined, run)}${length === null ? '' : `; limit ${say('channelLengthM', length.limit.value, examined.vessel)}: ${cite(length.limit.citation)}`}`])),
    ...(power === null ? [] : powerLines(power)),
    ...labelled('address', [addressText(answer)]),
  ]
}

function portText({ vessel }: Examined, port: PortUse, freePorts: readonly PortUse[]): string {
  const others = freePorts.filter(each => each !== port).map(({ name }) => name)
  const speed = port.speedMbitPerS === null ? 'speed not recorded' : say('speedMbitPerS', port.speedMbitPerS, vessel)
  return `${port.name}: ${classText(port)}, ${speed}; ${others.length === 0 ? 'no other is free' : `free besides: ${inWords(others)}`}`
}

function powerLines({ before, after, feed }: SwitchPower): Lines {
  return [
    ...labelled('by class', [`${marginText(before.reservedMargin)} left now`, `${marginText(after.reservedMargin)} with it`]),
    ...labelled('as drawn', [`${marginText(before.drawnMargin)} left now`, `${marginText(after.drawnMargin)} with it`]),
    ...(feed?.power.status !== 'computed' ? [] : labelled('at the port', [
      `${sayForWorking('devicePowerW', feed.power.input.devicePowerW)} at the device + ${sayForWorking('channelResistanceOhm', feed.power.output.channelResistanceOhm)} · `
        + `(${sayForWorking('supplyCurrentA', feed.power.output.supplyCurrentA, 'result')})² = ${sayForWorking('portPowerW', feed.power.output.portPowerW, 'result')}, from ${say('portVoltageV', feed.power.input.portVoltageV)}`,
    ])),
  ]
}

const marginText = (margin: NetworkPower['reservedMargin']): string => (margin.status === 'not computed' ? `not known: ${margin.reason};`
  : `${sayForWorking('powerBudgetW', margin.input.powerBudgetW)} − ${sayForWorking('takenPowerW', margin.input.takenPowerW)} = ${sayForWorking('marginPowerW', margin.output.marginPowerW)}`)

function addressText({ address: { subnet, nextFree, freeCount, isGiven } }: SwitchAnswer): string {
  if (subnet === null) return 'not known: the address range of the network is not recorded'
  if (nextFree === null) return `none of ${subnet} is free to be set${isGiven ? '; it can be given one' : ''}`
  return `${nextFree} is free next${freeCount === null ? '' : `, of ${freeCount} free`} in ${subnet}`
}
