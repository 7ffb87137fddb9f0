/** Findings about conductors, voltage drop and ratings (DCD, from the time when only d.c. circuits were calculated). */
import type { FindingKind } from '../../findings/finding.js'
import { say, sayAgainst } from '../../units/format.js'

const since = '0.1.0'
const retired = null

export const currentAboveCapacity: FindingKind<{ currentA: number }> = {
  id: 'DCD101', name: 'current-above-capacity', since, retired, severity: 'error',
  meaning: 'A cable is to carry more current than it can without its insulation growing hotter than it is made for. That is a fire risk.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: capacity } = sayAgainst('currentA', evidence.currentA, limit!.value)
    return `Cable ${subject.id} of circuit ${context?.['circuit']}: design current ${actual}, current-carrying capacity ${capacity}`
  },
  remedy: ({ subject }) => `Replace ${subject.id} with a larger conductor or one of hotter insulation, take it another way, or confirm the design current.`,
}

export const voltageDropAboveLimit: FindingKind<{ voltageDropPercent: number; voltageDropV: number; feederDropV: number }> = {
  id: 'DCD102', name: 'voltage-drop-above-limit', since, retired, severity: 'warning',
  meaning: 'At its design current a circuit loses more voltage between the source and a load than the basis allows.',
  message: ({ subject, evidence, limit, context }) => {
    const drop = sayAgainst('voltageDropPercent', evidence.voltageDropPercent, limit!.value)
    const feeders = evidence.feederDropV > 0 ? `, ${say('voltageDropV', evidence.feederDropV)} of it in the feeders above` : ''
    return `Circuit ${subject.id}: voltage drop to ${context?.['load']} ${drop.actual}, limit ${drop.limit} (${say('voltageDropV', evidence.voltageDropV)}${feeders})`
  },
  remedy: () => 'Fit a larger conductor in the part that loses most, shorten the way, or confirm the design current.',
}

export const ratingBelowLoad: FindingKind<{ designCurrentA: number; ratedCurrentA: number }> = {
  id: 'DCD103', name: 'rating-below-design-current', since, retired, severity: 'warning',
  meaning: 'The protective device is rated for less than the design current, so it can open in normal use.',
  message: ({ subject, evidence, context }) => {
    const { actual, limit } = sayAgainst('designCurrentA', evidence.designCurrentA, evidence.ratedCurrentA)
    return `Circuit ${subject.id}: design current ${actual}, ${context?.['device']} rated ${limit}`
  },
  remedy: ({ context }) => context?.['remedy'] ?? '',
}

export const ratingAboveCapacity: FindingKind<{ ratedCurrentA: number; currentCarryingCapacityA: number }> = {
  id: 'DCD104', name: 'rating-above-capacity', since, retired, severity: 'error',
  meaning: 'The protective device would let more current flow than the conductor behind it can carry. That is a fire risk.',
  message: ({ subject, evidence, limit, context }) => {
    const rating = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, limit!.value)
    const capacity = evidence.currentCarryingCapacityA === limit!.value
      ? 'its current-carrying capacity' : `current-carrying capacity ${say('currentCarryingCapacityA', evidence.currentCarryingCapacityA)}`
    return `Circuit ${subject.id}: ${context?.['device']} rated ${rating.actual}, limit for cable ${context?.['cable']} ${rating.limit} (${capacity})`
  },
  remedy: ({ context }) => context?.['remedy'] ?? '',
}

export const noProtection: FindingKind<{}> = {
  id: 'DCD105', name: 'no-overcurrent-protection', since, retired, severity: 'error',
  meaning: 'A circuit has no overcurrent protective device and no reason is given why it has none. That is a fire risk.',
  message: ({ subject }) => `Circuit ${subject.id}: no overcurrent protection, and no reason for it`,
  remedy: ({ subject }) => `Record the protective device of ${subject.id}, fit one at its source if there is none, or state why it has none.`,
}

export const cableDataMissing: FindingKind<{}> = {
  id: 'DCD201', name: 'cable-data-missing', since, retired, severity: 'note',
  meaning: 'A cable of a circuit has no type, or its type lacks the size or the insulation temperature, so the circuit cannot be assessed.',
  message: ({ subject, context }) => `Cable ${subject.id} of circuit ${context?.['circuit']}: ${context?.['missing']}`,
  remedy: ({ context }) => context?.['remedy'] ?? '',
}

export const physicalDropAboveLimit: FindingKind<{ voltageDropPercent: number; physicalDropPercent: number }> = {
  id: 'DCD301', name: 'physical-drop-above-limit', since, retired, severity: 'note',
  meaning: 'By the constant of the basis the voltage drop is within its limit; by the resistance of the warm conductor it is above.',
  message: ({ subject, evidence, limit, context }) => {
    const drop = sayAgainst('physicalDropPercent', evidence.physicalDropPercent, limit!.value)
    const byBasis = sayAgainst('voltageDropPercent', evidence.voltageDropPercent, limit!.value)
    return `Circuit ${subject.id}: voltage drop to ${context?.['load']} by the resistance of the conductor ${drop.actual}, limit ${drop.limit}; `
      + `by the constant of the basis ${byBasis.actual}`
  },
  remedy: () => 'Measure the voltage at the load under full current, and fit a larger conductor if it is too low.',
}

export const ratingAboveTarget: FindingKind<{ ratedCurrentA: number; currentCarryingCapacityA: number }> = {
  id: 'DCD302', name: 'rating-above-target', since, retired, severity: 'note',
  meaning: 'The protective device is rated above the capacity of the conductor, within what the basis still permits.',
  message: ({ subject, evidence, context }) => {
    const { actual, limit } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, evidence.currentCarryingCapacityA)
    return `Circuit ${subject.id}: ${context?.['device']} rated ${actual}, current-carrying capacity of cable ${context?.['cable']} ${limit}; permitted by ${context?.['permittedBy']}`
  },
  remedy: ({ context }) => context?.['remedy'] ?? '',
}

export const ratingNotStandard: FindingKind<{ ratedCurrentA: number }> = {
  id: 'DCD303', name: 'rating-not-standard', since, retired, severity: 'note',
  meaning: 'The rating is not one that devices of this type are made in; it may be mistyped.',
  message: ({ subject, evidence, context }) =>
    `Circuit ${subject.id}: a ${context?.['device']} of ${say('ratedCurrentA', evidence.ratedCurrentA)} is not a standard rating`,
  remedy: ({ context }) => `Read the rating off the device; ${context?.['near']}.`,
}

export const unprotectedForStatedReason: FindingKind<{}> = {
  id: 'DCD304', name: 'unprotected-for-stated-reason', since, retired, severity: 'warning',
  meaning: 'A circuit has no overcurrent protection for a reason that the basis does not name as an exemption.',
  message: ({ subject, context }) => `Circuit ${subject.id}: no overcurrent protection; reason given: ${context?.['reason']}`,
  remedy: ({ subject }) => `Fit a protective device at the source of ${subject.id}, or have the exemption confirmed by a licensed electrician.`,
}

export const unprotectedAsExempt: FindingKind<{}> = {
  id: 'DCD305', name: 'unprotected-as-exempt', since, retired, severity: 'note',
  meaning: 'A circuit has no overcurrent protection because the basis exempts it. Its conductors stay live under any fault.',
  message: ({ subject, context }) => `Circuit ${subject.id}: no overcurrent protection, exempt as ${context?.['reason']}`,
  remedy: () => 'Keep the conductors short, supported and guarded against chafe, and mark them as unprotected.',
}

export const limitedByItsSource: FindingKind<{ limitA: number; outputA: number }> = {
  id: 'DCD306', name: 'limited-by-its-source', since: '0.2.0', retired: null, severity: 'note',
  meaning: 'A circuit has no overcurrent protection, and needs none against its own source: a solar panel or alternator cannot give more than its conductors carry. '
    + 'What feeds it from its other end must be protected there.',
  message: ({ subject, evidence }) => `Circuit ${subject.id}: no overcurrent protection; its source gives ${say('currentA', evidence.outputA)} at most, its conductors carry ${say('currentA', evidence.limitA)}`,
  remedy: () => 'Check that its other end is protected against what is joined there.',
}

export const findingKinds = [
  currentAboveCapacity, voltageDropAboveLimit, ratingBelowLoad, ratingAboveCapacity, noProtection, cableDataMissing, physicalDropAboveLimit,
  ratingAboveTarget, ratingNotStandard, unprotectedForStatedReason, unprotectedAsExempt, limitedByItsSource,
] as const
