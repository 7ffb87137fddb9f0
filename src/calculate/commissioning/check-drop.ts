/** A measured voltage drop against the calculated one at the same current, and against the limit of the basis. */
import type { Limit } from '../../findings/finding.js'
import { type CircuitFeed, designCurrentA, type DropStep, type Outcome } from '../../model/results.js'
import type { Circuit, Measurement, Tag } from '../../model/vessel.js'
import { say } from '../../units/format.js'
import { exceeds } from '../compare.js'
import { voltageDropPercentMethod } from '../conductors/voltage-drop-percent.calc.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { type Checked, checked, held, type Held } from './checked.js'
import { dropAtDesignCurrentMethod } from './drop-at-design-current.calc.js'
import { expectedDropMethod, type ExpectedDropOutput, toleranceCitation } from './expected-drop.calc.js'
import { dropNotAsCalculated, measuredDropAboveLimit } from './findings.js'
import { differenceOf, measuredDropV, type Place } from './place.js'

export function dropChecks(before: Upstream, measurement: Measurement, place: Place): readonly Checked[] {
  const measuredV = place.battery === null ? measuredDropV(measurement, place.feed) : null
  if (measuredV === null) return []
  const { circuit, loadTag, cableTag } = place
  const along = cableTag === null ? '' : ` along ${cableTag}`
  const about = {
    measurement, loadTag, kind: 'voltage drop', field: measurement.voltageDropV === null ? 'voltageV' : 'voltageDropV',
    of: circuit === null ? `voltage drop at ${measurement.subjectTag}` : `voltage drop of ${circuit.tag}${loadTag === null || cableTag !== null ? '' : ` to ${loadTag}`}${along}`,
    measured: { quantity: 'measuredDropV', value: measuredV, ...differenceOf(measurement, place.feed) },
  } as const
  const calculated = calculatedDrop(before, measurement.subjectTag, place)
  if ('reason' in calculated) return [checked({ ...about, gaps: [calculated.reason] })]
  const { currentA } = measurement
  const expected = currentA === null ? null : runMethod(expectedDropMethod, { ...calculated.input, currentA })
  const whole = cableTag === null ? atDesignCurrent(measuredV, currentA, calculated) : null
  return [checked({
    ...about,
    calculated: expected?.status === 'computed' ? { quantity: 'voltageDropV', least: expected.output.leastDropV, most: expected.output.mostDropV } : null,
    workings: [...(expected === null ? [] : [expected]), ...(whole?.working ?? [])],
    tolerances: expected?.status !== 'computed' ? [] : tolerancesOf(measuredV, expected.output),
    limits: whole?.held ?? [],
    gaps: [
      ...(expected === null ? ['the current was not read at the same time'] : expected.status === 'not computed' ? [expected.reason] : []),
      ...(whole?.gaps ?? []),
    ],
  })]
}

function tolerancesOf(measuredV: number, { leastDropV, mostDropV, lowestAcceptedV, highestAcceptedV }: ExpectedDropOutput): readonly Held[] {
  const against = leastDropV === mostDropV
    ? `calculated ${say('voltageDropV', leastDropV)} at that current`
    : `calculated ${say('voltageDropV', leastDropV)} to ${say('voltageDropV', mostDropV)} at that current`
  const accepted = (relation: Limit['relation'], value: number): Held =>
    held('measuredDropV', measuredV, { relation, value, citation: toleranceCitation }, dropNotAsCalculated, { context: { against } })
  return [accepted('at least', lowestAcceptedV), accepted('at most', highestAcceptedV)]
}

type CalculatedAt = Pick<Place, 'circuit' | 'feed' | 'loadTag' | 'cableTag' | 'circuitGap' | 'loadGap'>

/** What is to be expected at a load of a circuit at its design current, for the test sheet; null where it is not assessed. */
export function expectedAt(before: Upstream, circuit: Circuit, loadTag: Tag): ExpectedDropOutput | null {
  const feed = before.feeding.byCircuit.get(circuit.tag) ?? null
  const calculated = calculatedDrop(before, circuit.tag, { circuit, feed, loadTag, cableTag: null, circuitGap: '', loadGap: '' })
  if ('reason' in calculated) return null
  const expected = runMethod(expectedDropMethod, { ...calculated.input, currentA: calculated.input.designCurrentA })
  return expected.status === 'computed' ? expected.output : null
}

interface Calculated {
  readonly input: { readonly branchDropV: number; readonly designCurrentA: number; readonly feederDropV: number; readonly feederResistanceMilliOhm: number }
  readonly nominalVoltageV: number
  readonly limit: Limit
}

/** The calculated drop, parted into what the circuit's own current makes and what its feeders add. */
function calculatedDrop({ voltageDrop }: Upstream, subjectTag: Tag, { circuit, feed, loadTag, cableTag, circuitGap, loadGap }: CalculatedAt): Calculated | { readonly reason: string } {
  if (circuit === null) return { reason: circuitGap }
  if (loadTag === null && cableTag === null) return { reason: loadGap }
  const drop = voltageDrop.byCircuit.get(circuit.tag)
  const load = drop?.toLoads.find(each => (loadTag === null ? each.steps.some(step => step.cableTag === cableTag) : each.loadTag === loadTag))
  if (load === undefined) {
    const why = drop?.notAssessed.find(each => each.loadTag === loadTag || each.loadTag === null) ?? drop?.notAssessed[0]
    return { reason: `the voltage drop could not be calculated${why === undefined ? '' : `: ${why.reason}`}` }
  }
  const steps = cableTag === null ? load.steps : load.steps.filter(step => step.cableTag === cableTag)
  const parts = steps.map(step => ({ step, ...physicalOf(step) }))
  const gap = parts.find(({ reason }) => reason !== null)?.reason
  if (gap !== undefined) return { reason: `the voltage drop by resistance could not be calculated: ${gap}` }
  if (parts.length === 0) return { reason: `cable ${cableTag} does not lie on the way to ${load.loadTag}` }
  const own = parts.filter(({ step }) => step.circuitTag === circuit.tag)
  const feeders = parts.filter(({ step }) => step.circuitTag !== circuit.tag)
  const designA = cableTag === null ? currentOfSubject(feed, circuit, subjectTag) : parts[0]!.currentA
  if (designA === null) return { reason: `the design current of ${subjectTag} is not known` }
  return {
    input: {
      branchDropV: sum(own.map(({ dropV }) => dropV)), designCurrentA: designA,
      feederDropV: sum(feeders.map(({ dropV }) => dropV)), feederResistanceMilliOhm: sum(feeders.map(({ milliOhm }) => milliOhm)),
    },
    nominalVoltageV: load.nominalVoltageV,
    limit: load.comparison.limit,
  }
}

/** The current that belongs with a reading: of a circuit that of all its loads, of a load its own. */
function currentOfSubject(feed: CircuitFeed | null, circuit: Circuit, subjectTag: Tag): number | null {
  const own = subjectTag === circuit.tag || circuit.loadTags.length === 1 ? null : feed?.currentParts.find(({ tag }) => tag === subjectTag)
  return own === null ? designCurrentA(feed ?? undefined) : own?.currentA ?? null
}

/** The drop is reckoned with the current of each conductor; what is read is that of all in parallel. */
function physicalOf({ physical, parallelCount }: DropStep): { readonly dropV: number; readonly currentA: number; readonly milliOhm: number; readonly reason: string | null } {
  if (physical.status === 'not computed') return { dropV: 0, currentA: 0, milliOhm: 0, reason: physical.reason }
  const { voltageDropV: dropV } = physical.output
  const currentA = parallelCount * (physical.input['currentA'] ?? 0)
  return { dropV, currentA, milliOhm: currentA > 0 ? (1000 * dropV) / currentA : 0, reason: null }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/**
 * Against the limit of the basis, which holds at the design current. With too little current to go by, a drop that is above
 * the limit as read is above it all the more; one below it says nothing.
 */
function atDesignCurrent(measuredV: number, currentA: number | null, { input, nominalVoltageV, limit }: Calculated): {
  readonly working: readonly Outcome[]; readonly held: readonly Held[]; readonly gaps: readonly string[]
} {
  const atLimit = (measuredDropPercent: number, how: string): Held =>
    held('measuredDropPercent', measuredDropPercent, limit, measuredDropAboveLimit, { evidence: { measuredDropV: measuredV }, context: { how } })
  const scaled = currentA === null ? null
    : runMethod(dropAtDesignCurrentMethod, { measuredDropV: measuredV, currentA, designCurrentA: input.designCurrentA, nominalVoltageV })
  if (scaled?.status === 'computed') {
    return { working: [scaled], held: [atLimit(scaled.output.measuredDropPercent, ' at the design current')], gaps: [] }
  }
  const asRead = runMethod(voltageDropPercentMethod, { voltageDropV: measuredV, nominalVoltageV })
  if (asRead.status === 'computed' && exceeds(asRead.output.voltageDropPercent, limit)) {
    return { working: [asRead], held: [atLimit(asRead.output.voltageDropPercent, ' as read')], gaps: [] }
  }
  return { working: [], held: [], gaps: scaled === null ? [] : [scaled.reason] }
}
