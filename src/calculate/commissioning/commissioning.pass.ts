/** Measured values held against calculated ones. Of two readings of the same, the later one counts. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, lookup } from '../../model/lookup.js'
import { type CommissioningResults, isAssessed, type ReadingCheck } from '../../model/results/commissioning.js'
import type { Measurement, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { BeforeCommissioning } from './before.js'
import type { Upstream } from '../upstream.js'
import { internalResistanceChecks, residualChecks, twoPointChecks } from './check-devices.js'
import { dropChecks } from './check-drop.js'
import { type Checked, readingOf } from './checked.js'
import { busChecks, standingWaveChecks } from './check-electronics.js'
import { currentChecks, insulationChecks, polarityChecks, voltageChecks } from './check-values.js'
import { coverage } from './coverage.js'
import { readingInconsistent, readingNotAssessed, readingWithoutValue } from './findings.js'
import { type Place, places } from './place.js'

export function commissioningPass(vessel: Vessel, basis: Basis, before: BeforeCommissioning): CommissioningResults {
  const { placeOf } = places(vessel, before)
  const ofCircuits = vessel.measurements.filter(({ subjectTag }) => !lookup(vessel).canBuses.has(subjectTag))
  const placed = ofCircuits.map(measurement => ({ measurement, place: placeOf(measurement) }))
  const pairs = twoPoints(vessel)
  const all = placed.flatMap(({ measurement, place }) => [...checksOf(vessel, basis, before, measurement, place), ...pairs.get(measurement) ?? []])
  const supersededBy = latest(all.map(({ check }) => check))
  const standing = all.filter(({ check }) => supersededBy(check) === null)
  const own = all.map(({ check }): ReadingCheck => ({ ...check, supersededBy: supersededBy(check) }))
  const checks = inOrderOf(vessel, [...own, ...busChecks(before.canBus), ...standingWaveChecks(before.radio)])
  return {
    checks,
    coverage: coverage(vessel, basis, before, checks),
    notAssessed: standing.flatMap(({ check: { subjectTag, kind, gaps } }) => gaps.map(reason => ({ subjectTag, reason: `${kind} as measured: ${reason}` }))),
    findings: [
      ...vessel.measurements.flatMap(withoutValue),
      ...placed.flatMap(({ measurement, place }) => doubtsAbout(measurement, place)),
      ...standing.flatMap(({ findings }) => findings),
      ...gapFindings(standing.map(({ check }) => check)),
    ],
  }
}

function inOrderOf({ measurements }: Vessel, checks: readonly ReadingCheck[]): readonly ReadingCheck[] {
  const position = new Map(measurements.map(({ number }, i) => [number, i]))
  return checks.toSorted((a, b) => position.get(a.number)! - position.get(b.number)!)
}

const checksOf = (vessel: Vessel, basis: Basis, before: Upstream, measurement: Measurement, place: Place): readonly Checked[] => [
  ...dropChecks(before, measurement, place),
  ...voltageChecks(measurement, place),
  ...currentChecks(measurement, place),
  ...insulationChecks(measurement, place),
  ...polarityChecks(measurement, place),
  ...residualChecks(vessel, basis, before, measurement),
  ...internalResistanceChecks(measurement, place),
]

/** Under the reading with the greater current of each pair. */
function twoPoints(vessel: Vessel): ReadonlyMap<Measurement, readonly Checked[]> {
  const byNumber = new Map(vessel.measurements.map(measurement => [measurement.number, measurement]))
  const found = [...lookup(vessel).batteries.values()].flatMap(battery =>
    twoPointChecks(vessel.measurements.filter(({ subjectTag }) => subjectTag === battery.tag), battery))
  return grouped(found, ({ check }) => [byNumber.get(check.number)!])
}

type Check = Checked['check']

/**
 * Number of the later reading of the same kind, subject and load; days in order, then as entered; no date is earliest.
 * One that could not be held against anything takes no other's place.
 */
function latest(checks: readonly Check[]): (check: Check) => string | null {
  const same = ({ kind, subjectTag, loadTag }: Check): string => JSON.stringify([kind, subjectTag, loadTag])
  const inOrder = checks.toSorted((a, b) => inWordOrder(a.date ?? '', b.date ?? ''))
  const place = new Map(inOrder.map((check, i) => [check, i]))
  const last = new Map(inOrder.filter(isAssessed).map(check => [same(check), check]))
  return check => {
    const counting = last.get(same(check))
    return counting !== undefined && place.get(check)! < place.get(counting)! ? counting.number : null
  }
}
const inWordOrder = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

const withoutValue = (measurement: Measurement): readonly Finding[] => (hasValue(measurement) ? []
  : [find(readingWithoutValue, { subject: readingOf(measurement), field: null, evidence: {}, limit: null, context: { subject: measurement.subjectTag } })])
const doubtsAbout = (measurement: Measurement, { doubts }: Place): readonly Finding[] =>
  doubts.map(({ field, words }) => find(readingInconsistent, { subject: readingOf(measurement), field, evidence: {}, limit: null, context: { doubt: words } }))

/** What a reading is taken for; the voltage at the source only serves the drop. Buses and antennas are held against theirs by their own domains. */
const values = [
  'voltageV', 'voltageDropV', 'currentA', 'insulationMOhm', 'polarity', 'residualCurrentA', 'tripTimeMs', 'internalResistanceMilliOhm',
  'resistanceOhm', 'busLoadPercent', 'vswrFactor',
] as const satisfies readonly (keyof Measurement)[]
const hasValue = (measurement: Measurement): boolean => values.some(name => measurement[name] !== null)

/** What shares a reading and a reason stands in one sentence. */
function gapFindings(checks: readonly Check[]): readonly Finding[] {
  const gaps = checks.flatMap(check => check.gaps.map(reason => ({ check, reason })))
  const alike = grouped(gaps, ({ check, reason }) => [JSON.stringify([check.number, reason])])
  return [...alike.values()].map(sharing => {
    const [{ check: { number, subjectTag }, reason }] = sharing as [typeof gaps[number]]
    return find(readingNotAssessed, {
      subject: { kind: 'measurement', id: number }, field: null, evidence: {}, limit: null,
      context: { of: `${inWords(sharing.map(({ check }) => check.kind))} of ${subjectTag}`, reason },
    })
  })
}
