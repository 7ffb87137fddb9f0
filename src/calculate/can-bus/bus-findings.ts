/** What is found about one bus, from its results. */
import { type AnyFindingKind, type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { BusReading, BusResult, SupplySection } from '../../model/results/can-bus.js'
import { type Comparison, designCurrentA } from '../../model/results.js'
import { sayForWorking } from '../../units/format.js'
import { deviceLenLimit, lightestOf, terminationTolerance, terminatorOhm } from '../../references/tables/can-rules.js'
import { exceeds } from '../compare.js'
import type { Upstream } from '../upstream.js'
import { devicesOf } from './backbone.js'
import {
  backboneTooLong, busCableNotRecorded, busCurrentAboveDesign, busCurrentAboveProtection, busLoadAboveLimit, busLoadNotAsCalculated, busVoltageLow, deviceTakesTooMuch,
  deviceVoltageTooLow, dropsTooLong, dropTooLong, lenNotRecorded, protectionAboveCable, sectionWithoutSupply, segmentCurrentAboveLimit, severalInsertions,
  supplyDropAboveLimit, supplyVoltageTooHigh, terminationNotAsRecorded, terminatorResistance, terminatorsWrong, tooManyDevices,
} from './findings.js'
import { kindless } from './lengths.js'

export function findingsOf(before: Upstream, result: BusResult): readonly Finding[] {
  return [
    ...lengthFindings(result), ...terminatorFindings(result), ...dataFindings(result), ...result.supply.sections.flatMap(section => sectionFindings(before, result, section)),
    ...loadFindings(result), ...readingFindings(result),
  ]
}

const isOutside = (comparison: Comparison | null): comparison is Comparison => comparison !== null && !comparison.within
const busOf = ({ bus }: BusResult) => ({ kind: 'CAN bus', id: bus.tag })

function lengthFindings(result: BusResult): readonly Finding[] {
  const { lengths: { backboneComparison, drops, dropsComparison, devices } } = result
  const about = { subject: busOf(result), field: null }
  return [
    ...(isOutside(backboneComparison) ? [find(backboneTooLong, { ...about, evidence: { backboneLengthM: backboneComparison.value }, limit: backboneComparison.limit })] : []),
    ...drops.filter(({ comparison }) => !comparison.within).map(({ teeTag, cableTag, comparison: { value, limit } }) =>
      find(dropTooLong, { subject: { kind: 'tee', id: teeTag }, field: 'dropCableTag', evidence: { dropLengthM: value }, limit, context: { cable: cableTag } })),
    ...(isOutside(dropsComparison) ? [find(dropsTooLong, { ...about, evidence: { dropsTogetherM: dropsComparison.value }, limit: dropsComparison.limit })] : []),
    ...(isOutside(devices) ? [find(tooManyDevices, { ...about, evidence: { deviceCount: devices.value }, limit: devices.limit })] : []),
  ]
}

function terminatorFindings(result: BusResult): readonly Finding[] {
  const { termination: { terminatorTags, asItShouldBe }, backbone: { stations } } = result
  const odd = stations.flatMap(({ part }) => (part.kind === 'terminator' && part.resistanceOhm !== null && Math.abs(part.resistanceOhm - terminatorOhm) > (terminationTolerance.sharePercent / 100) * terminatorOhm
    ? [find(terminatorResistance, { subject: { kind: 'terminator', id: part.tag }, field: 'resistanceOhm', evidence: { resistanceOhm: part.resistanceOhm }, limit: null })] : []))
  if (asItShouldBe || stations.length === 0) return odd
  const words = { words: terminatorWords(result) }
  return [find(terminatorsWrong, { subject: busOf(result), field: null, evidence: { terminatorCount: terminatorTags.length }, limit: null, context: words }), ...odd]
}

/** Which end is open, and which terminator stands elsewhere. */
function terminatorWords({ backbone: { stations, spans }, termination: { terminatorTags } }: BusResult): string {
  const ends = [{ which: 'first', station: stations[0], beyond: spans[0]! }, { which: 'last', station: stations.at(-1), beyond: spans.at(-1)! }]
  const closed = ends.filter(({ station, beyond }) => station?.part.kind === 'terminator' && beyond.length === 0)
  const atEnds = new Set(closed.map(({ station }) => station!.part.tag))
  const elsewhere = terminatorTags.filter(tag => !atEnds.has(tag))
  const open = ends.filter(end => !closed.includes(end) || (stations.length === 1 && end.which === 'last')).map(({ which }) => which)
  const number = terminatorTags.length === 0 ? 'no terminator' : terminatorTags.length === 1 ? `one terminator (${terminatorTags[0]})` : `${terminatorTags.length} terminators (${inWords(terminatorTags)})`
  return [
    number,
    ...(open.length === 0 ? [] : [`none at the ${open.join(' and ')} end`]),
    ...(elsewhere.length === 0 || terminatorTags.length === 0 ? [] : [`${inWords(elsewhere)} not at an end`]),
  ].join(', ')
}

function dataFindings(result: BusResult): readonly Finding[] {
  const { bus, backbone } = result
  const unknown = bus.suppliesDevices ? [...new Set(devicesOf(backbone).filter(device => device.loadEquivalencyNumber === null).map(({ tag }) => tag))] : []
  const cables = bus.suppliesDevices || bus.protocol !== 'j1939' ? kindless(backbone) : []
  const about = { subject: busOf(result), field: null, evidence: {}, limit: null }
  return [
    ...(unknown.length === 0 ? [] : [find(lenNotRecorded, { ...about, context: { devices: inWords(unknown) } })]),
    ...(cables.length === 0 ? [] : [find(busCableNotRecorded, { ...about, context: { cables: inWords(cables) } })]),
  ]
}

function sectionFindings(before: Upstream, result: BusResult, section: SupplySection): readonly Finding[] {
  const { bus, backbone: { stations } } = result
  const { insertionTags, deviceCount, solved, from, to } = section
  const about = { subject: busOf(result), field: null }
  const devices = stations.slice(from, to + 1).flatMap(({ device }) => device ?? [])
  const tooMuch = devices.filter(({ loadEquivalencyNumber }) => loadEquivalencyNumber !== null && exceeds(loadEquivalencyNumber, deviceLenLimit))
  const found = tooMuch.map(({ tag, loadEquivalencyNumber }) => find(deviceTakesTooMuch, {
    subject: { kind: 'equipment', id: tag }, field: 'loadEquivalencyNumber', evidence: { loadEquivalencyNumber: loadEquivalencyNumber! }, limit: deviceLenLimit, context: { bus: bus.tag },
  }))
  if (insertionTags.length === 0 && deviceCount > 0) {
    found.push(find(sectionWithoutSupply, { ...about, evidence: { deviceCount }, limit: null, context: { devices: inWords(devices.map(({ tag }) => tag)) } }))
  }
  if (insertionTags.length > 1) {
    found.push(find(severalInsertions, { ...about, evidence: { insertionCount: insertionTags.length }, limit: null, context: { insertions: inWords(insertionTags) } }))
  }
  return solved === null ? found : [...found, ...solvedFindings(before, result, section, solved)]
}

function solvedFindings(before: Upstream, result: BusResult, { loadEquivalencyNumber, from, to }: SupplySection, solved: NonNullable<SupplySection['solved']>): readonly Finding[] {
  const { bus, backbone } = result
  const { insertion, worst, tees, legs, againstProtection, protection, current } = solved
  const ofBus = { bus: bus.tag }
  const circuit = { subject: { kind: 'circuit', id: insertion.circuitTag ?? '' }, context: ofBus }
  const low = tees.flatMap(({ device }) => (device !== null && !device.lowest.within ? [device] : [])).toSorted((a, b) => a.voltageV - b.voltageV)[0]
  const overloaded = legs.flatMap(({ stretches }) => stretches).filter((stretch): stretch is typeof stretch & { current: Comparison } => isOutside(stretch.current))
  const most = overloaded.toSorted((a, b) => b.current.value - a.current.value)[0]
  const designA = designCurrentA(before.feeding.byCircuit.get(insertion.circuitTag ?? ''))
  const { currentA } = current.output
  const cable = lightestOf(backbone.spans.slice(from + 1, to + 1).flat().flatMap(({ busCable }) => busCable ?? []))
  const design = designA === null ? null : { relation: 'at most', value: designA, citation: { source: 'bus-cable-guides', place: 'load equivalency number: 50 mA each' } } as const
  return [
    ...(worst !== null && !worst.drop.within ? [find(supplyDropAboveLimit, {
      subject: busOf(result), field: null, evidence: { supplyDropV: worst.dropV, loadEquivalencyNumber }, limit: worst.drop.limit, context: { tee: worst.tag, insertion: insertion.tag },
    })] : []),
    ...(low === undefined ? [] : [find(deviceVoltageTooLow, { subject: { kind: 'equipment', id: low.tag }, field: null, evidence: { voltageV: low.voltageV }, limit: low.lowest.limit, context: ofBus })]),
    ...(isOutside(insertion.highest) ? [find(supplyVoltageTooHigh, {
      subject: { kind: 'power insertion point', id: insertion.tag }, field: null, evidence: { voltageV: insertion.highest.value }, limit: insertion.highest.limit, context: ofBus,
    })] : []),
    ...(most === undefined ? [] : [find(segmentCurrentAboveLimit, {
      subject: { kind: 'cable', id: most.cableTag }, field: null, evidence: { currentA: most.current.value }, limit: most.current.limit, context: ofBus,
    })]),
    ...(isOutside(protection) ? [find(protectionAboveCable, {
      ...circuit, field: 'protection.ratedCurrentA', evidence: { ratedCurrentA: protection.value }, limit: protection.limit, context: { ...ofBus, cable: cable ?? '' },
    })] : []),
    ...(isOutside(againstProtection) ? [find(busCurrentAboveProtection, { ...circuit, field: 'protection.ratedCurrentA', evidence: { currentA: againstProtection.value }, limit: againstProtection.limit })] : []),
    ...(design !== null && exceeds(currentA, design) ? [find(busCurrentAboveDesign, { ...circuit, field: null, evidence: { currentA }, limit: design })] : []),
  ]
}

function loadFindings(result: BusResult): readonly Finding[] {
  const { load: { comparison } } = result
  return comparison.within ? [] : [find(busLoadAboveLimit, { subject: busOf(result), field: null, evidence: { worstLoadPercent: comparison.value }, limit: comparison.limit })]
}

function readingFindings({ bus, readings }: BusResult): readonly Finding[] {
  return readings.filter(({ agrees, supersededBy }) => agrees === false && supersededBy === null).map(({ number, quantity, measured, calculated, atTag, words }) => find(kinds[quantity], {
    subject: { kind: 'measurement', id: number }, field: quantity, evidence: { [quantity]: measured }, limit: null,
    context: { bus: bus.tag, at: quantity === 'voltageV' ? atTag ?? '' : '', calculated: sayForWorking(quantity, calculated ?? 0, 'result'), words: words ?? '' },
  }))
}
const kinds: Readonly<Record<BusReading['quantity'], AnyFindingKind>> = { resistanceOhm: terminationNotAsRecorded, busLoadPercent: busLoadNotAsCalculated, voltageV: busVoltageLow }
