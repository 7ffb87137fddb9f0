/** Findings about readings taken on board (COM). The subject is the reading; what it is of stands in the context. */
import type { Facts, FindingKind } from '../../findings/finding.js'
import { sayResidualCurrent } from '../../references/basis/ac-rules.js'
import type { Quantities } from '../../units/quantity.js'
import { say, sayAgainst } from '../../units/format.js'

const since = '0.1.0'
const retired = null

/** `of`: what was measured, in words; `remedy`: where to look first. */
const of = ({ subject, context }: Facts<Quantities>): string => `Reading ${subject.id}: ${context?.['of']}`
const remedy = ({ context }: Facts<Quantities>): string => context?.['remedy'] ?? ''

const againstLimit = (name: string) => (facts: Facts<Quantities>): string => {
  const { actual, limit } = sayAgainst(name, facts.evidence[name]!, facts.limit!.value)
  return `${of(facts)} ${actual}, limit ${limit}`
}
const againstRecorded = (name: string) => (facts: Facts<Quantities>): string => {
  const { actual, limit } = sayAgainst(name, facts.evidence[name]!, facts.limit!.value)
  return `${of(facts)} ${actual}, ${facts.limit!.relation} ${limit} accepted; ${facts.context?.['against']}`
}

export const measuredDropAboveLimit: FindingKind<{ measuredDropPercent: number; measuredDropV: number }> = {
  id: 'COM101', name: 'measured-drop-above-limit', since, retired, severity: 'warning',
  meaning: 'As measured, and brought to the design current, a circuit loses more voltage between the source and a load than the basis allows.',
  message: facts => {
    const { actual, limit } = sayAgainst('measuredDropPercent', facts.evidence.measuredDropPercent, facts.limit!.value)
    return `${of(facts)} ${actual}${facts.context?.['how']}, limit ${limit} (${say('measuredDropV', facts.evidence.measuredDropV)} as read)`
  },
  remedy,
}

export const voltageTooLow: FindingKind<{ voltageV: number }> = {
  id: 'COM102', name: 'voltage-too-low', since, retired, severity: 'warning',
  meaning: 'A voltage was read below the range in which the item works, or a battery at rest has less than its nominal voltage.',
  message: againstLimit('voltageV'), remedy,
}
export const voltageTooHigh: FindingKind<{ voltageV: number }> = {
  id: 'COM103', name: 'voltage-too-high', since, retired, severity: 'error',
  meaning: 'A voltage was read above the range that the item stands. It can be destroyed.',
  message: againstLimit('voltageV'), remedy,
}

export const insulationBelowLimit: FindingKind<{ insulationMOhm: number }> = {
  id: 'COM104', name: 'insulation-below-limit', since, retired, severity: 'error',
  meaning: 'The insulation of a circuit lets more current through than the rules allow. That is a risk of shock, fire and corrosion.',
  message: againstLimit('insulationMOhm'), remedy,
}

export const polarityReversed: FindingKind<{}> = {
  id: 'COM105', name: 'polarity-reversed', since, retired, severity: 'error',
  meaning: 'Positive and negative, or line and neutral, are exchanged. Equipment can be destroyed, and on mains a switch then leaves it live.',
  message: facts => `${of(facts)} is reversed`, remedy,
}

export const tripTimeAboveLimit: FindingKind<{ tripTimeMs: number }> = {
  id: 'COM106', name: 'trip-time-above-limit', since, retired, severity: 'error',
  meaning: 'A residual-current device took longer to trip than it may. It may not save a life.',
  message: againstLimit('tripTimeMs'), remedy,
}
const tripCurrentMessage = (facts: Facts<{ residualCurrentA: number }>): string =>
  `${of(facts)} ${sayResidualCurrent(facts.evidence.residualCurrentA)}, ${facts.limit!.relation} ${sayResidualCurrent(facts.limit!.value)} is right`
export const tripCurrentAboveRating: FindingKind<{ residualCurrentA: number }> = {
  id: 'COM107', name: 'trip-current-above-rating', since, retired, severity: 'error',
  meaning: 'A residual-current device needs more than its rated residual current to trip. It may not save a life.',
  message: tripCurrentMessage, remedy,
}

export const measuredCurrentAboveRating: FindingKind<{ currentA: number }> = {
  id: 'COM108', name: 'measured-current-above-rating', since, retired, severity: 'warning',
  meaning: 'More current was read in a circuit than its protective device is rated for, so the device can open in normal use.',
  message: againstLimit('currentA'),
  remedy: () => 'Look for an extra load or a fault on the circuit, and move loads to another circuit if the current is right; a larger fuse needs a cable that carries it.',
}

export const readingWithoutValue: FindingKind<{}> = {
  id: 'COM201', name: 'reading-without-value', since, retired, severity: 'note',
  meaning: 'A reading is entered and holds nothing that can be held against anything.',
  message: ({ subject, context }) => `Reading ${subject.id} of ${context?.['subject']} holds no value to assess`,
  remedy: () => 'Enter what was read, or take the entry out.',
}

export const readingNotAssessed: FindingKind<{}> = {
  id: 'COM202', name: 'reading-not-assessed', since, retired, severity: 'note',
  meaning: 'Something was measured and cannot be held against anything, because a fact is missing from the data or from the reading.',
  message: facts => `${of(facts)} not assessed: ${facts.context?.['reason']}`,
  remedy: () => 'Record what is missing, or measure it again with everything that belongs to it.',
}

export const readingInconsistent: FindingKind<{}> = {
  id: 'COM301', name: 'reading-inconsistent', since, retired, severity: 'warning',
  meaning: 'A reading contradicts the data or itself; it may be written against the wrong thing.',
  message: ({ subject, context }) => `Reading ${subject.id}: ${context?.['doubt']}`,
  remedy: () => 'Check the reading against the test sheet, and correct the entry or measure again.',
}

export const dropNotAsCalculated: FindingKind<{ measuredDropV: number }> = {
  id: 'COM302', name: 'drop-not-as-calculated', since, retired, severity: 'warning',
  meaning: 'A voltage drop was read that is further from the calculated one than tolerance and meter explain: what was built differs from what is recorded, or a joint is bad.',
  message: againstRecorded('measuredDropV'), remedy,
}

export const insulationLow: FindingKind<{ insulationMOhm: number }> = {
  id: 'COM303', name: 'insulation-low', since, retired, severity: 'warning',
  meaning: 'The insulation of a circuit is within the rules and lower than that of a sound, dry cable. It is likely to become worse.',
  message: againstRecorded('insulationMOhm'), remedy,
}

export const tripCurrentLow: FindingKind<{ residualCurrentA: number }> = {
  id: 'COM304', name: 'trip-current-low', since, retired, severity: 'warning',
  meaning: 'A residual-current device trips before it should, so it will trip for no reason.',
  message: tripCurrentMessage, remedy,
}

export const internalResistanceNotAsRecorded: FindingKind<{ internalResistanceMilliOhm: number }> = {
  id: 'COM305', name: 'internal-resistance-not-as-recorded', since, retired, severity: 'warning',
  meaning: 'The internal resistance of a battery is far from the one recorded for it: it has aged, a connection is bad, or the record is wrong.',
  message: againstRecorded('internalResistanceMilliOhm'), remedy,
}

export const currentNotAsRecorded: FindingKind<{ currentA: number }> = {
  id: 'COM306', name: 'current-not-as-recorded', since, retired, severity: 'warning',
  meaning: 'A load or circuit draws a current that is far from the one recorded for it.',
  message: againstRecorded('currentA'), remedy,
}

export const findingKinds = [
  measuredDropAboveLimit, voltageTooLow, voltageTooHigh, insulationBelowLimit, polarityReversed, tripTimeAboveLimit, tripCurrentAboveRating,
  measuredCurrentAboveRating, readingWithoutValue, readingNotAssessed, readingInconsistent, dropNotAsCalculated, insulationLow, tripCurrentLow,
  internalResistanceNotAsRecorded, currentNotAsRecorded,
] as const
