/** One protective device with its working: what it must break, where it sits, what trips first, motors, lasting loads, charging. */
import { cableLengthM } from '../../../model/results.js'
import { type DeviceCheck, type DeviceGap, doesNotFall, type MotorCheck, type Prospective, prospectiveA, type RatingOrder } from '../../../model/results/protective-devices.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { deviceAdvice } from '../../../references/basis/device-advice.js'
import { cite } from '../../../references/bibliography.js'
import { say, sayBoth, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { joined, muted, verdict } from '../../text.js'
import type { Block, Facts, Inline, Paragraph, Text, Working } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { protectionText } from '../../parts/circuit-parts.js'

/** All that is worked out about the device of one circuit. */
export function deviceBlocks(context: ViewContext, circuit: Circuit): readonly Block[] {
  const check = context.results.protectiveDevices.byCircuit.get(circuit.tag)
  if (check === undefined) return []
  const { continuous, charging } = check
  const facts: Facts = {
    is: 'facts', caption: `Device ${protectionText(circuit)}: short circuit, place, order`, entries: [
      { label: 'Short circuit', value: check.againstCurrent === null ? [currentText(context, check.prospective), ' ', notAssessedMark] : ['prospective current ', ...comparisonText(check.againstCurrent, context)] },
      { label: 'It can break', value: [capabilityText(context, check)] },
      ...(check.againstClass === null ? [] : [{ label: 'By class', value: [...comparisonText(check.againstClass, context), muted(` ${cite(check.againstClass.limit.citation)}`)] as Text }]),
      { label: 'Voltage rating', value: check.againstVoltage === null ? [notAssessedMark] : comparisonText(check.againstVoltage, context) },
      { label: 'Where it sits', value: distanceText(context, circuit, check) },
      { label: 'What opens first', value: orderText(context, circuit, check.order) },
      ...check.motors.map(motor => ({ label: `Load ${motor.loadTag}`, value: motorText(context, motor) })),
      ...(continuous?.comparison == null ? [] : [{ label: 'Running on and on', value: ['rating ', ...comparisonText(continuous.comparison, context), muted(` advice: ${cite(continuous.comparison.limit.citation)}`)] as Text }]),
      ...(charging === null ? [] : [{ label: 'Charging through it', value: comparisonText(charging, context) }]),
      ...check.notAssessed.map(({ about, reason }) => ({ label: `Not assessed: ${gapWords[about]}`, value: [reason] as Text })),
    ],
  }
  return [facts, ...faultWorking(context, `Short-circuit current behind ${circuit.tag}`, check.prospective)]
}

const gapWords: Readonly<Record<DeviceGap['about'], string>> = { interrupting: 'breaking a short circuit', distance: 'distance', start: 'starting', charging: 'charging' }
export const notAssessedMark: Inline = verdict('not assessed', 'not assessed')
export const hasGap = ({ notAssessed }: DeviceCheck, about: DeviceGap['about']): boolean => notAssessed.some(gap => gap.about === about)

// --- short circuit ---------------------------------------------------------------------------------------------------
/** "1926.0 A"; "at most" where conductors could not be counted. */
export function currentText({ vessel }: ViewContext, prospective: Prospective): string {
  const currentA = prospectiveA(prospective)
  if (currentA === null) return 'not known'
  const upTo = prospective.leftOut.length > 0 || prospective.current.status === 'stated' ? 'at most ' : ''
  return `${upTo}${say('prospectiveShortCircuitCurrentA', currentA, vessel)}`
}

export function capabilityText({ vessel }: ViewContext, { capability: { interruptingCapacityA, from } }: DeviceCheck): string {
  if (interruptingCapacityA === null) return 'not known'
  return `${say('ratedCurrentA', interruptingCapacityA, vessel)}${from === 'type' ? ', by its type' : ''}`
}

/** The sum at a place, each conductor a line. */
export function faultWorking(context: ViewContext, title: string, { current, steps, leftOut }: Prospective): readonly (Working | Paragraph)[] {
  if (current.status === 'stated') {
    return [{ is: 'paragraph', text: [`${title}: at most ${say('currentA', current.prospectiveShortCircuitCurrentA, context.vessel)}, as stated for its source (${cite(current.citation)}); conductors, which only make it smaller, are not counted.`] }]
  }
  const remarks = [
    ...steps.map(({ cableTag, circuitTag, resistance, returnAssumedAlike }) => ({
      label: `Cable ${cableTag} of ${circuitTag}`,
      text: resistance.status === 'not computed' ? 'left out' : [
        sayForWorking('conductorLengthM', resistance.input.conductorLengthM), 'of conductor of', sayForWorking('crossSectionMm2', resistance.input.crossSectionMm2),
        ...(resistance.input.parallelCount > 1 ? [`× ${resistance.input.parallelCount}`] : []), 'is', sayForWorking('conductorResistanceMilliOhm', resistance.output.conductorResistanceMilliOhm, 'result'),
        ...(returnAssumedAlike ? ['(way back taken alike)'] : []),
      ].join(' '),
    })),
    ...leftOut.map(reason => ({ label: 'Left out, so that the current comes out too large', text: reason })),
  ]
  return [workingOf(context, title, current, { remarks })]
}

// --- place -----------------------------------------------------------------------------------------------------------
export function distanceText(context: ViewContext, circuit: Circuit, { distance }: DeviceCheck): Text {
  const { distanceMm, from, protectedByTag, comparison } = distance
  if (distanceMm === null) return [notAssessedMark]
  if (from === 'panel') return ['in ', context.tag(circuit.fedFromTag), ', no conductor ahead of it']
  if (from === 'source') return ['at ', context.tag(circuit.fedFromTag), ', no conductor ahead of it']
  const how = from === 'measured' ? ' as measured' : ' by the length of its cables'
  if (protectedByTag !== null) return [sayBoth('distanceMm', distanceMm, context.vessel), muted(how), '; the conductor ahead can carry the rating of ', context.tag(protectedByTag), ', which protects it']
  return [...(comparison === null ? [sayBoth('distanceMm', distanceMm, context.vessel)] : comparisonText(comparison, context)), muted(comparison === null ? `${how}; a shore inlet has a limit of its own, under the mains` : how)]
}

export const lengthText = ({ results, vessel }: ViewContext, cableTag: Tag): string | null => {
  const lengthM = cableLengthM(results.routing.byCable.get(cableTag))
  return lengthM === null ? null : say('lengthM', lengthM, vessel)
}

// --- order -----------------------------------------------------------------------------------------------------------
/** `G1 → F1 250 A → F2 80 A`. */
export function chainText(context: ViewContext, tag: Tag): Text {
  const feed = context.results.feeding.byCircuit.get(tag)
  return joined([
    ...(feed?.sourceTag == null ? [] : [[context.tag(feed.sourceTag)]]),
    ...(feed?.chain ?? []).map((each): Text => {
      const protection = context.lookup.circuits.get(each)?.protection
      return [context.tag(each), protection == null ? ' no device' : ` ${say('ratedCurrentA', protection.ratedCurrentA, context.vessel)}`]
    }),
  ], ' → ')
}

function orderText(context: ViewContext, circuit: Circuit, order: RatingOrder | null): Text {
  if (order === null) return ['it is the first device behind its source']
  const first: Text = doesNotFall(order)
    ? ['by ratings either ', context.tag(order.aboveTag), ' or ', context.tag(circuit.tag), ' ', verdict('warning', 'doubtful')]
    : [context.tag(circuit.tag), ' by its rating']
  return [...chainText(context, circuit.tag), ': ', ...first, `, ratio ${ratioText(order)}. `, muted(`Ratings only; time–current curves are not compared.${ratioAdvice(order)}`)]
}

export const ratioText = ({ ratio }: RatingOrder): string => (ratio.status === 'computed' ? say('ratioFactor', ratio.output.ratioFactor) : 'not known')

/** Advice only where two fuses of one type stand closer than it. */
export function ratioAdvice({ ratio, likeFuses }: RatingOrder): string {
  const { ratioFactor, citation } = deviceAdvice.fuseRatio
  return likeFuses && ratio.status === 'computed' && ratio.output.ratioFactor < ratioFactor
    ? ` Advice: at least ${ratioFactor} between fuses of one type, ${cite(citation)}; on d.c. common practice.` : ''
}

// --- motors ----------------------------------------------------------------------------------------------------------
export function motorText(context: ViewContext, motor: MotorCheck): Text {
  const parts: readonly (Text | null)[] = [makersText(context, motor), startText(context, motor), adviceText(context, motor)]
  const said = parts.filter(part => part !== null)
  return said.length === 0 ? [muted('neither maker’s fuse, starting nor running current recorded')] : joined(said, '; ')
}

export function makersText({ vessel }: ViewContext, { makersFuseA, againstMakers, ownFuse }: MotorCheck): Text | null {
  if (makersFuseA === null) return null
  const asked = `maker asks for ${say('ratedCurrentA', makersFuseA, vessel)} `
  if (ownFuse) return [asked, notAssessedMark, muted(' fuse holder of its own')]
  return [asked, againstMakers === 'equal' ? verdict('good', 'as asked') : againstMakers === 'above' ? verdict('error', 'rated above') : verdict('warning', 'rated below')]
}

export function startText({ vessel }: ViewContext, { starting, carriesStart }: MotorCheck): Text | null {
  if (starting?.status !== 'computed') return null
  return [
    `${say('currentA', starting.output.highestCurrentA, vessel)} while it starts `,
    carriesStart === true ? verdict('good', 'within its rating') : notAssessedMark,
  ]
}

export function adviceText({ vessel }: ViewContext, { advice }: MotorCheck): Text | null {
  if (advice?.status !== 'computed') return null
  return [`advice: up to ${say('ratedCurrentA', advice.output.highestRatedCurrentA, vessel)}, ${100 * advice.input.ratingFactor} % of ${say('currentA', advice.input.runningCurrentA, vessel)}`]
}
