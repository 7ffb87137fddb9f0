/** The other values of a reading, each against what a rule, a maker or the record says of it. */
import { find, type Limit } from '../../findings/finding.js'
import { type CircuitFeed, designCurrentA } from '../../model/results.js'
import type { Measurement } from '../../model/vessel.js'
import type { Citation } from '../../references/bibliography.js'
import { say } from '../../units/format.js'
import { runMethod } from '../run-method.js'
import { acceptedCurrentCitation, acceptedCurrentMethod, currentAllowanceFactor } from './accepted-current.calc.js'
import { type Checked, checked, held, type Held, readingOf, recorded } from './checked.js'
import {
  currentNotAsRecorded, insulationBelowLimit, insulationLow, measuredCurrentAboveRating, polarityReversed, voltageTooHigh, voltageTooLow,
} from './findings.js'
import { extraLowLimitV, insulationCitation, insulationMinimumMethod, soundInsulationCitation, soundInsulationMOhm } from './insulation-minimum.calc.js'
import type { Place } from './place.js'
import { voltageRangeCitation, voltageRangeMethod, voltageRangePercent } from './voltage-range.calc.js'

// --- voltage ---------------------------------------------------------------------------------------------------------
export function voltageChecks(measurement: Measurement, place: Place): readonly Checked[] {
  const { voltageV, currentA, subjectTag } = measurement
  if (voltageV === null) return []
  const { battery, load, loadTag, feed } = place
  const about = { measurement, loadTag, kind: 'voltage', field: 'voltageV', of: `voltage at ${loadTag ?? subjectTag}`, measured: { quantity: 'voltageV', value: voltageV } } as const
  const low = (value: number, citation: Citation) => held('voltageV', voltageV, { relation: 'at least', value, citation }, voltageTooLow)
  const high = (value: number, citation: Citation) => held('voltageV', voltageV, { relation: 'at most', value, citation }, voltageTooHigh)
  const aboutNominal = (nominalVoltageV: number, form: 'dc' | 'ac') => runMethod(voltageRangeMethod, { nominalVoltageV, ...voltageRangePercent[form] })
  if (battery !== null) {
    // Under load it is half of a pair, from which the internal resistance comes.
    if (currentA !== null && currentA > 0) return []
    const range = aboutNominal(battery.nominalVoltageV, 'dc')
    if (range.status === 'not computed') return [checked({ ...about, gaps: [range.reason] })]
    return [checked({
      ...about, workings: [range],
      limits: [
        low(battery.nominalVoltageV, { source: 'common-practice', place: 'a battery at rest has at least its nominal voltage' }),
        high(range.output.highestVoltageV, voltageRangeCitation),
      ],
    })]
  }
  if (loadTag === null) return [checked({ ...about, gaps: [place.loadGap] })]
  // Of a charging source the recorded supply range is that of its other side.
  const own = feed?.infeed?.only === true ? null : load
  const range = feed === null || feed.nominalVoltageV === null || feed.supplyForm === null ? null : aboutNominal(feed.nominalVoltageV, feed.supplyForm)
  const general = range?.status === 'computed' ? range.output : null
  const lowest = own?.supplyMinV ?? null
  const highest = own?.supplyMaxV ?? null
  const limits = [
    ...(lowest !== null ? [low(lowest, recorded(`lowest supply voltage of ${loadTag}`))] : general === null ? [] : [low(general.lowestVoltageV, voltageRangeCitation)]),
    ...(highest !== null ? [high(highest, recorded(`highest supply voltage of ${loadTag}`))] : general === null ? [] : [high(general.highestVoltageV, voltageRangeCitation)]),
  ]
  return [checked({
    ...about, limits,
    workings: range !== null && (lowest === null || highest === null) ? [range] : [],
    gaps: limits.length === 2 ? [] : [`neither a whole supply range of ${loadTag} nor the nominal voltage of its circuit is known`],
  })]
}

// --- current ---------------------------------------------------------------------------------------------------------
export function currentChecks(measurement: Measurement, place: Place): readonly Checked[] {
  const { currentA, subjectTag } = measurement
  if (currentA === null || place.battery !== null) return []
  const { circuit, feed, load } = place
  const single = circuit !== null && circuit.loadTags.length === 1
  // What is read at a load's own terminals is the load's; what is read at the circuit, or at the panel it feeds, is that of all.
  const ofCircuit = circuit !== null && (circuit.tag === subjectTag || load === null)
  const inCable = feed?.segments.find(({ cableTag }) => cableTag === place.cableTag)
  const highestA = inCable !== undefined ? inCable.currentA : ofCircuit ? designCurrentA(feed ?? undefined) : load?.currentMaxA ?? load?.currentTypicalA ?? fromPowerA(place)
  const typicalA = ofCircuit && !single ? null : load?.currentTypicalA ?? null
  const whose = ofCircuit && place.cableTag === null ? circuit.tag : subjectTag
  const about = { measurement, loadTag: place.loadTag, kind: 'current', field: 'currentA', of: `current of ${whose}`, measured: { quantity: 'currentA', value: currentA } } as const
  const accepted = (recordedCurrentA: number | null, allowanceFactor: number) =>
    recordedCurrentA === null ? null : runMethod(acceptedCurrentMethod, { recordedCurrentA, allowanceFactor })
  const most = accepted(highestA, currentAllowanceFactor.highest)
  const least = accepted(typicalA, currentAllowanceFactor.typical)
  const against = [
    ...(typicalA === null ? [] : [`typical ${say('currentA', typicalA)}`]),
    ...(highestA === null ? [] : [`${ofCircuit ? 'design current' : 'highest'} ${say('currentA', highestA)}`]),
  ].join(', ')
  const tolerance = (outcome: typeof most, relation: Limit['relation']): readonly Held[] =>
    outcome?.status !== 'computed' ? [] : [held('currentA', currentA, { relation, value: outcome.output.acceptedCurrentA, citation: acceptedCurrentCitation }, currentNotAsRecorded, { context: { against } })]
  const ratedA = ofCircuit || single ? circuit?.protection?.ratedCurrentA ?? null : null
  return [checked({
    ...about,
    calculated: highestA === null ? null : { quantity: 'currentA', least: typicalA === null ? highestA : Math.min(typicalA, highestA), most: highestA },
    workings: [least, most].filter(outcome => outcome !== null),
    tolerances: [...tolerance(least, 'at least'), ...tolerance(most, 'at most')],
    limits: ratedA === null ? [] : [held('currentA', currentA, { relation: 'at most', value: ratedA, citation: { source: 'iec-60364-4-43', place: 'design current at most the rated current' } }, measuredCurrentAboveRating)],
    gaps: most === null ? [`no current is recorded for ${whose}`] : most.status === 'not computed' ? [most.reason] : [],
  })]
}

function fromPowerA({ load, feed }: Place): number | null {
  const nominalVoltageV = feed?.nominalVoltageV ?? null
  return load === null || load.powerW === null || nominalVoltageV === null || !(nominalVoltageV > 0) ? null : load.powerW / nominalVoltageV
}

// --- insulation and polarity -----------------------------------------------------------------------------------------
/** What is asked of a circuit; null where its voltage is not known. */
export const leastInsulation = ({ nominalVoltageV, supplyForm }: CircuitFeed) =>
  (nominalVoltageV === null || supplyForm === null ? null : runMethod(insulationMinimumMethod, { nominalVoltageV, extraLowVoltageLimitV: extraLowLimitV[supplyForm] }))

export function insulationChecks(measurement: Measurement, { feed, loadTag }: Place): readonly Checked[] {
  const { insulationMOhm, subjectTag } = measurement
  if (insulationMOhm === null) return []
  const about = {
    measurement, loadTag, kind: 'insulation resistance', field: 'insulationMOhm', of: `insulation resistance of ${subjectTag}`,
    measured: { quantity: 'insulationMOhm', value: insulationMOhm },
  } as const
  const least = feed === null ? null : leastInsulation(feed)
  if (least?.status !== 'computed') return [checked({ ...about, gaps: [least === null ? `the nominal voltage of ${subjectTag} is not known` : least.reason] })]
  const limit = held('insulationMOhm', insulationMOhm, { relation: 'at least', value: least.output.minimumInsulationMOhm, citation: insulationCitation }, insulationBelowLimit)
  // What misses the limit needs no second word about being low.
  const sound = held(
    'insulationMOhm', insulationMOhm, { relation: 'at least', value: soundInsulationMOhm, citation: soundInsulationCitation }, insulationLow,
    { context: { against: `the rules ask for ${say('insulationMOhm', least.output.minimumInsulationMOhm)}` } },
  )
  return [checked({ ...about, workings: [least], limits: [limit], tolerances: limit.comparison.within ? [sound] : [] })]
}

export function polarityChecks(measurement: Measurement, { loadTag }: Place): readonly Checked[] {
  const { polarity, subjectTag } = measurement
  if (polarity === null) return []
  const of = `polarity of ${subjectTag}${loadTag === null || loadTag === subjectTag ? '' : ` at ${loadTag}`}`
  const { check } = checked({ measurement, loadTag, kind: 'polarity', field: 'polarity', of, measured: { words: polarity } })
  const reversed = { subject: readingOf(measurement), field: 'polarity', evidence: {}, limit: null, context: { of, remedy: check.meaning?.lookFirst ?? '' } }
  return [{ check, findings: polarity === 'reversed' ? [find(polarityReversed, reversed)] : [] }]
}
