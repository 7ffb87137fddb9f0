/** Where a new circuit can be taken from, for a person, with every sum as it can be redone by hand. */
import type { Examined } from '../build.js'
import { abycConstant } from '../calculate/conductors/voltage-drop-by-abyc-constant.calc.js'
import { isoConstantOhmMm2PerM } from '../calculate/conductors/voltage-drop-by-iso-constant.calc.js'
import type { NewCircuit } from '../calculate/reserve/new-circuit.js'
import type { PlaceAnswer, PlaceRequest } from '../calculate/reserve/places-for.js'
import { lookup } from '../model/lookup.js'
import type { DropStep } from '../model/results.js'
import type { FeederChange } from '../model/results/reserve.js'
import type { SupplyForm } from '../model/vessel.js'
import type { Basis } from '../references/basis/basis.js'
import { cite } from '../references/bibliography.js'
import type { Quantities } from '../units/quantity.js'
import { say, sayAgainst, sayForWorking, saySize, saySizeBoth } from '../units/format.js'
import { labelled, lengthText, type Lines, tableLines, withName } from './reserve-lines.js'

export interface CircuitPart { readonly request: PlaceRequest; readonly places: readonly PlaceAnswer[] }

export const formInWords = (form: SupplyForm): string => (form === 'dc' ? 'd.c.' : 'a.c.')

export function circuitText(examined: Examined, { request, places }: CircuitPart): Lines {
  const otherVoltage = places.filter(({ reserve }) => reserve.nominalVoltageV !== null && !sameSupply(reserve, request))
  const asked = places.filter(answer => !otherVoltage.includes(answer))
  const open = asked.filter(({ verdict }) => verdict !== 'does not fit')
  const closed = asked.filter(({ verdict }) => verdict === 'does not fit')
  return [
    head(examined, request),
    ...(open.length === 0 ? ['', 'No panel, module or busbar can take it as it is.'] : ['', ...overview(examined, open)]),
    ...open.flatMap((answer, i) => ['', ...answerLines(examined, request, answer, `${i + 1}. `)]),
    ...(closed.length === 0 ? [] : ['', 'Does not fit:']),
    ...closed.flatMap(answer => ['', ...closedLines(examined, answer)]),
    ...(otherVoltage.length === 0 ? [] : ['', `Of another voltage: ${otherVoltage.map(({ pointTag, reserve }) => `${pointTag} (${supplyOf(reserve)})`).join(', ')}.`]),
    ...(request.form === 'ac' ? ['', 'Mains voltage: residual-current protection, the protective conductor and the reactance of the cable are left out here.'] : []),
  ]
}

const sameSupply = ({ nominalVoltageV, supplyForm }: PlaceAnswer['reserve'], request: PlaceRequest): boolean =>
  nominalVoltageV === request.nominalVoltageV && supplyForm === request.form
const supplyOf = ({ nominalVoltageV, supplyForm }: PlaceAnswer['reserve']): string =>
  `${say('nominalVoltageV', nominalVoltageV ?? 0)} ${formInWords(supplyForm ?? 'dc')}`

function head(examined: Examined, request: PlaceRequest): string {
  const notes = [
    `${request.loadClass} load`,
    ...(request.continuous ? ['runs for hours'] : []),
    ...(request.demandFactor === 1 ? [] : [`demand factor ${sayForWorking('demandFactor', request.demandFactor)} in the feeders above`]),
  ]
  return `Where ${say('currentA', request.currentA)} at ${withName(examined, request.atTag)} can be taken from: ` +
    `${say('nominalVoltageV', request.nominalVoltageV)} ${formInWords(request.form)}, ${notes.join(', ')}, by ${examined.basis.title}.`
}

/** The places in one line each. */
function overview({ vessel }: Examined, answers: readonly PlaceAnswer[]): Lines {
  const { items } = lookup(vessel)
  const rows = answers.map(({ pointTag, verdict, circuit, protection }, i) => [
    `${i + 1}. ${pointTag} ${items.get(pointTag)?.name ?? ''}`,
    verdict,
    circuit?.run.length.status === 'computed' ? say('cableLengthM', circuit.run.length.output.cableLengthM, vessel) : '–',
    circuit?.size == null ? '–' : saySize(circuit.size),
    protection === null ? '–' : say('ratedCurrentA', protection.ratedCurrentA),
    circuit?.drop == null ? '–' : say('voltageDropPercent', circuit.drop.voltageDropPercent),
  ])
  return tableLines([['', '', 'cable', 'conductor', 'protection', 'drop'], ...rows])
}

function answerLines(examined: Examined, request: PlaceRequest, answer: PlaceAnswer, bullet: string): Lines {
  const { reserve, circuit, feeders, daily } = answer
  return [
    ...titleLines(examined, answer, bullet),
    ...labelled('ways free', [waysText(reserve)]),
    ...(circuit === null ? [] : circuitLines(examined, request, answer, circuit)),
    ...feeders.flatMap(feeder => labelled(`feeder ${feeder.circuitTag}`, feederText(feeder))),
    ...(daily === null ? [] : labelled('each day', [dailyText(daily)])),
  ]
}

/** Of a place that does not fit: why, and the feeders that are the reason. */
const closedLines = (examined: Examined, answer: PlaceAnswer): Lines => [
  ...titleLines(examined, answer, '- '),
  ...answer.feeders.filter(({ verdict }) => verdict === 'does not fit').flatMap(feeder => labelled(`feeder ${feeder.circuitTag}`, feederText(feeder))),
]

function titleLines({ vessel, results }: Examined, { pointTag, reserve, verdict, reasons }: PlaceAnswer, bullet: string): Lines {
  const { items } = lookup(vessel)
  const source = results.feeding.byCircuit.get(reserve.chain[0] ?? '')?.sourceTag ?? null
  const from = source === null ? '' : `, from ${source} ${items.get(source)?.name ?? ''}`
  return [`${bullet}${pointTag} ${items.get(pointTag)?.name ?? ''}${from}: ${verdict}`, ...reasons.map(reason => `   because ${reason}`)]
}

function waysText({ kind, freeWays }: PlaceAnswer['reserve']): string {
  if (kind === 'busbar') return 'a fuse of its own at the busbar, if a stud is free'
  if (freeWays === null) return 'not recorded'
  return freeWays.length === 0 ? 'none' : freeWays.join(', ')
}

function circuitLines(examined: Examined, request: PlaceRequest, { protection, insulationC }: PlaceAnswer, circuit: NewCircuit): Lines {
  const { vessel, basis } = examined
  const { run, size, choice, capacity, drop } = circuit
  return [
    ...labelled('cable', [lengthText(examined, run)]),
    ...(size === null || choice === null ? []
      : labelled('conductor', [`${saySizeBoth(size)}, insulation of ${say('insulationC', insulationC ?? 0, vessel)}; decided by: ${choice.governedBy}`])),
    ...(drop === null ? [] : labelled('voltage drop', dropLines(basis, request, circuit, drop))),
    ...(capacity?.outcome.status === 'computed' ? labelled('capacity', capacityLines(capacity.outcome, capacity.lookup)) : []),
    ...(protection === null ? [] : labelled('protection', [protectionText(protection, capacity?.outcome)])),
  ]
}

/** The formulas of the two bases on one line. */
const dropSums: Readonly<Record<Basis['dropMethod'], (input: Quantities) => string>> = {
  'voltage-drop-by-iso-constant': q => `${isoConstantOhmMm2PerM} · ${inputOf(q, 'currentA')} · ${inputOf(q, 'conductorLengthM')} / ${inputOf(q, 'crossSectionMm2')}`,
  'voltage-drop-by-abyc-constant': q => `${abycConstant} · ${inputOf(q, 'currentA')} · ${inputOf(q, 'conductorLengthFt')} / ${inputOf(q, 'conductorAreaCmil')}`,
}
const inputOf = (input: Quantities, name: string): string => sayForWorking(name, input[name]!)

function dropLines(basis: Basis, { nominalVoltageV }: PlaceRequest, { feederDropV }: NewCircuit, drop: NonNullable<NewCircuit['drop']>): Lines {
  const own: DropStep = drop.steps.at(-1)!
  const { actual, limit } = sayAgainst('voltageDropPercent', drop.voltageDropPercent, drop.comparison.limit.value)
  const volts = (dropV: number): string => sayForWorking('voltageDropV', dropV, 'result')
  return [
    `${actual}, limit ${limit}: ${cite(drop.comparison.limit.citation)}`,
    `new cable, out and back: ${dropSums[basis.dropMethod](own.byBasis.input)} = ${volts(own.byBasis.output.voltageDropV)}`,
    `feeders above, with the load on: ${volts(feederDropV ?? 0)}; together ${volts(drop.voltageDropV)} of ${say('nominalVoltageV', nominalVoltageV)}`,
    ...(drop.physicalDropPercent === null ? [] : [`by resistance of the warm conductors: ${say('physicalDropPercent', drop.physicalDropPercent)}`]),
  ]
}

function capacityLines({ input, output }: { readonly input: Quantities; readonly output: Quantities }, conditions: readonly { readonly label: string; readonly text: string }[]): Lines {
  const sum = ['tableCurrentA', 'ambientFactor', 'bundleFactor'].map(name => inputOf(input, name)).join(' · ')
  return [
    `${say('currentCarryingCapacityA', output['currentCarryingCapacityA']!)} = ${sum} (table, ambient, bundle)`,
    ...conditions.filter(({ label }) => label !== 'Row').map(({ label, text }) => `${label.toLowerCase()}: ${text}`),
  ]
}

function protectionText({ device, ratedCurrentA, least }: NonNullable<PlaceAnswer['protection']>, capacity: NonNullable<NewCircuit['capacity']>['outcome'] | undefined): string {
  const { continuousFactor, currentA } = least.input
  const atMost = capacity?.status === 'computed' ? `, at most the capacity of ${say('currentCarryingCapacityA', capacity.output.currentCarryingCapacityA)}` : ''
  return `${device} of ${say('ratedCurrentA', ratedCurrentA)}: at least ${continuousFactor} · ${sayForWorking('currentA', currentA)} = ` +
    `${sayForWorking('currentA', least.output.leastRatedCurrentA)}${atMost}`
}

function feederText({ beforeCurrentA, afterCurrentA, least, missing, verdict }: FeederChange): Lines {
  const unknown = verdict === 'fits' ? [] : missing.map(reason => `not assessed: ${reason}`)
  if (beforeCurrentA === null || afterCurrentA === null || least === null) return unknown
  const { limitCurrentA, takenCurrentA } = least.margin.input
  const sum = `${sayForWorking('limitCurrentA', limitCurrentA)} − ${sayForWorking('takenCurrentA', takenCurrentA)} = ${sayForWorking('marginCurrentA', least.margin.output.marginCurrentA)}`
  return [
    `${say('currentA', beforeCurrentA)} now, ${say('currentA', afterCurrentA)} with it; least margin, of ${least.of} ${least.tag}: ${sum}, ${least.within ? 'within' : 'too little'}`,
    ...unknown,
  ]
}

function dailyText({ batteryTag, charge, capacityAh }: NonNullable<PlaceAnswer['daily']>): string {
  const { currentA, timeH } = charge.input
  const share = capacityAh === null ? `; the capacity of ${batteryTag} is not recorded`
    : `, ${say('sharePercent', (100 * charge.output.chargeAh) / capacityAh)} of the ${say('capacityAh', capacityAh)} of ${batteryTag}`
  return `${sayForWorking('currentA', currentA)} · ${sayForWorking('timeH', timeH)} = ${sayForWorking('chargeAh', charge.output.chargeAh, 'result')}${share}`
}
