/** Power over the network cables: what each device takes of its switch, with the working of the port that loses most. */
import { slug } from '../../../model/address.js'
import type { NetworkPower, PowerFeed } from '../../../model/results/ethernet.js'
import type { Tag } from '../../../model/vessel.js'
import { powerClassOf, powerTypes } from '../../../references/tables/poe-classes.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { muted, verdict } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

/** What is left by the classes, with what there is: "49.0 W of 60 W"; null where it is not known. */
export function powerLeft({ reservedMargin }: NetworkPower): string | null {
  if (reservedMargin.status === 'not computed') return null
  const { input: { powerBudgetW }, output: { marginPowerW } } = reservedMargin
  return marginPowerW < 0 ? `none, ${say('marginPowerW', -marginPowerW)} too much is kept` : `${say('marginPowerW', marginPowerW)} of ${sayForWorking('powerBudgetW', powerBudgetW)}`
}

export function powerBlocks(context: ViewContext, tags: readonly Tag[]): readonly Block[] {
  const supplies = tags.flatMap(tag => context.results.ethernet.power.get(tag) ?? [])
  if (supplies.length === 0) return []
  const feeds = supplies.flatMap(power => power.feeds)
  const worst = feeds.reduce<PowerFeed | null>((most, feed) => (most === null || lossW(feed) > lossW(most) ? feed : most), null)
  return [
    { is: 'heading', text: 'Power over the network cables', anchor: 'power' },
    { is: 'paragraph', text: ['Some ports supply the device at the other end of the cable. Each such device asks for a class, and the switch keeps the power of that class for it; what it takes is less as a rule. A new device fits only where a free port offers its class and the switch has that much left.'] },
    ...supplies.flatMap(power => supplyBlocks(context, power)),
    ...(worst === null || worst.power.status === 'not computed' ? [] : [
      workingOf(context, `The port that loses most: ${worst.deviceTag} on ${worst.linkTag}`, worst.power, {
        remarks: [
          { label: 'Resistance of the cable', text: resistanceWords(worst) },
          ...(worst.byClass ? [{ label: 'Power at the device', text: 'not recorded; the most that its class allows' }] : []),
        ],
      }),
    ]),
  ]
}

const lossW = ({ power }: PowerFeed): number => (power.status === 'computed' ? power.output.lossPowerW : 0)

function resistanceWords({ askedClass, offeredClass, power }: PowerFeed): string {
  const { type } = powerClassOf(askedClass ?? offeredClass)!
  const perM = power.status === 'computed' ? power.input.loopResistanceOhmPerM : powerTypes[type].loopOhmPerM
  return perM === powerTypes[1].loopOhmPerM ? '20 Ω for 100 m, as the standard has it for type 1 (classes 0 to 3)' : '12.5 Ω for 100 m and pair set, as the standard has it for types 2 to 4 (classes 4 to 8)'
}

function supplyBlocks(context: ViewContext, power: NetworkPower): readonly Block[] {
  const { tag, feeds } = power
  return [tableOf(feeds, {
    id: `power-${slug(tag)}`,
    caption: `${tag} ${context.nameOf(tag) ?? ''}, what lives on its ports`,
    empty: 'Nothing lives on its ports.',
    note: noteOf(context, power),
    columns: [
      { title: 'Port', width: 'tag', cell: ({ portName }) => [portName ?? muted('?')] },
      { title: 'Device', width: 'text', cell: ({ deviceTag }) => context.named(deviceTag) },
      { title: 'Class', width: 'short', cell: classText },
      { title: 'Kept', width: 'number', cell: ({ reservedPowerW }) => [reservedPowerW === null ? muted('not known') : sayForWorking('reservedPowerW', reservedPowerW)] },
      { title: 'Takes', width: 'number', cell: feed => takesText(feed) },
      { title: 'Lost', width: 'number', cell: ({ power: sum }) => [sum.status === 'computed' ? say('lossPowerW', sum.output.lossPowerW) : muted('not known')] },
    ],
  })]
}

function classText({ askedClass, offeredClass }: PowerFeed): Text {
  if (askedClass === null) return [muted('not recorded')]
  const tooHigh = powerClassOf(askedClass)!.sourcePowerW > powerClassOf(offeredClass)!.sourcePowerW
  return tooHigh ? [`${askedClass} `, verdict('error', `port gives ${offeredClass}`)] : [String(askedClass)]
}

function takesText({ power, byClass }: PowerFeed): Text {
  if (power.status === 'not computed') return [muted('not known')]
  return [`${byClass ? 'up to ' : ''}${sayForWorking('devicePowerW', power.input.devicePowerW)}`]
}

function noteOf(context: ViewContext, { tag, feeds, voltageRecorded, reservedPowerW, drawnPowerW, reservedMargin, drawnMargin, supply }: NetworkPower): Text {
  const voltages = [...new Set(feeds.flatMap(({ power }) => (power.status === 'computed' ? [power.input.portVoltageV] : [])))]
  return [
    ...(reservedPowerW === null || feeds.length === 0 ? [] : [`Kept ${sayForWorking('reservedPowerW', reservedPowerW)}${drawnPowerW === null ? '' : `, drawn with what is lost at most ${say('drawnPowerW', drawnPowerW)}`}. `]),
    ...(reservedMargin.status === 'not computed' ? [`What is left is not known: ${reservedMargin.reason}. `] : [
      `Budget ${sayForWorking('powerBudgetW', reservedMargin.input.powerBudgetW)}: `, leftText(reservedMargin.output.marginPowerW), ' by class',
      ...(drawnMargin.status === 'not computed' ? ['. '] : [', ', leftText(drawnMargin.output.marginPowerW), ' by what is drawn. ']),
    ]),
    ...(voltages.length === 0 ? [] : [`Supplied at ${voltages.map(voltage => sayForWorking('portVoltageV', voltage)).join(' and ')}${voltageRecorded ? '' : ', taken since none is recorded'}. `]),
    ...(supply.status === 'not computed' ? [] : [
      `For its whole budget ${tag} takes ${say('inputCurrentA', supply.output.inputCurrentA, context.vessel)} at ${sayForWorking('inputVoltageV', supply.input.inputVoltageV)}, at an efficiency of ${sayForWorking('efficiencyPercent', supply.input.efficiencyPercent)}.`,
    ]),
  ]
}

const leftText = (marginPowerW: number): Text[number] =>
  (marginPowerW < 0 ? verdict('error', `${say('marginPowerW', -marginPowerW)} too much`) : `${say('marginPowerW', marginPowerW)} left`)
