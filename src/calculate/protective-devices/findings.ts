/** Kinds of finding of this domain (PDV). */
import type { FindingKind } from '../../findings/finding.js'
import { say, sayAgainst, sayAgainstBoth } from '../../units/format.js'

const since = '0.2.0'
const retired = null

export const capacityBelowCurrent: FindingKind<{ prospectiveShortCircuitCurrentA: number; interruptingCapacityA: number }> = {
  id: 'PDV101', name: 'interrupting-capacity-below-current', since, retired, severity: 'error',
  meaning: 'A short circuit behind the device can draw more current than the device can break. It may burst or go on arcing instead of opening. That is a fire risk.',
  message: ({ subject, evidence, context }) => {
    const { actual, limit } = sayAgainst('prospectiveShortCircuitCurrentA', evidence.prospectiveShortCircuitCurrentA, evidence.interruptingCapacityA)
    return `Circuit ${subject.id}: prospective short-circuit current ${actual}, the ${context?.['device']} breaks at most ${limit}${context?.['byType'] ?? ''}`
  },
  remedy: ({ subject }) => `Fit a device at ${subject.id} that can break this current, or record what the fitted one is made for.`,
}

export const capacityBelowClass: FindingKind<{ interruptingCapacityA: number } | { voltageRatingV: number }> = {
  id: 'PDV102', name: 'interrupting-capacity-below-class', since, retired, severity: 'error',
  meaning: 'The device breaks less current than the rules ask for behind a battery of that size, or it is made for too low a voltage.',
  message: ({ subject, context }) => `Circuit ${subject.id}: ${context?.['what']} of the ${context?.['device']} ${context?.['actual']}, needed as a ${context?.['place']} device ${context?.['limit']}`,
  remedy: ({ subject }) => `Fit a device of that class at ${subject.id}, or record what the fitted one is made for.`,
}

export const voltageRatingTooLow: FindingKind<{ voltageRatingV: number }> = {
  id: 'PDV103', name: 'voltage-rating-below-circuit', since, retired, severity: 'error',
  meaning: 'The device is made for a lower voltage than the circuit has, so it may not put out its own arc. That is a fire risk.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: nominal } = sayAgainst('voltageRatingV', evidence.voltageRatingV, limit!.value)
    return `Circuit ${subject.id}: voltage rating of the ${context?.['device']} ${actual}, nominal voltage ${nominal}`
  },
  remedy: ({ subject }) => `Fit a device at ${subject.id} that is rated for the voltage, or record the rating of the fitted one.`,
}

export const deviceTooFar: FindingKind<{ distanceMm: number }> = {
  id: 'PDV104', name: 'device-too-far-from-source', since, retired, severity: 'error',
  meaning: 'The conductor between the source and its protective device is longer than the basis allows, and nothing protects it. That is a fire risk.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = sayAgainstBoth('distanceMm', evidence.distanceMm, limit!.value)
    return `Circuit ${subject.id}: its device sits ${actual} of conductor away from ${context?.['source']}, limit ${most}`
  },
  remedy: ({ subject, context }) => `Move the device of ${subject.id} nearer to ${context?.['source']}, or record its distance as measured.`,
}

export const aboveMakersFuse: FindingKind<{ ratedCurrentA: number; makersFuseA: number }> = {
  id: 'PDV105', name: 'rating-above-makers-fuse', since, retired, severity: 'error',
  meaning: 'The device is rated above the value that the maker of the load asks for, so a jammed motor or a fault inside can burn before it opens.',
  message: ({ subject, evidence, context }) => {
    const { actual, limit } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, evidence.makersFuseA)
    return `Circuit ${subject.id}: rated ${actual}, the maker of ${context?.['load']} asks for ${limit}`
  },
  remedy: ({ context }) => `Fit the value that the maker of ${context?.['load']} asks for, with a device of its own if other loads need more.`,
}

export const protectionAbovePanel: FindingKind<{ ratedCurrentA: number }> = {
  id: 'PDV106', name: 'protection-above-panel-rating', since, retired, severity: 'error',
  meaning: 'The device that feeds a panel or busbar lets more current flow than the panel or busbar is rated for.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: rated } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, limit!.value)
    return `${subject.id}: fed by ${context?.['circuit']} with a rating of ${actual}, rated ${rated} itself`
  },
  remedy: ({ subject, context }) => `Fit a device at ${context?.['circuit']} of not more than the rating of ${subject.id}, or confirm that rating.`,
}

export const currentAbovePanel: FindingKind<{ currentA: number }> = {
  id: 'PDV107', name: 'current-above-panel-rating', since, retired, severity: 'error',
  meaning: 'A panel or busbar is to carry more current than it is rated for.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: rated } = sayAgainst('currentA', evidence.currentA, limit!.value)
    return `${subject.id}: carries ${actual} from ${context?.['circuit']}, rated ${rated}`
  },
  remedy: ({ subject }) => `Move circuits away from ${subject.id}, replace it with a larger one, or confirm the currents.`,
}

export const chargingAboveRating: FindingKind<{ currentA: number; ratedCurrentA: number }> = {
  id: 'PDV108', name: 'charging-current-above-rating', since, retired, severity: 'error',
  meaning: 'What charging sources put in through a device is more than its rating: it opens while charging, and an alternator that loses its battery is damaged.',
  message: ({ subject, evidence }) => {
    const { actual, limit } = sayAgainst('currentA', evidence.currentA, evidence.ratedCurrentA)
    return `Circuit ${subject.id}: charging current ${actual}, rated ${limit}`
  },
  remedy: ({ subject }) => `Fit a larger device at ${subject.id} if its conductors allow it, or confirm what the sources put in.`,
}

export const conductorBelowMinimum: FindingKind<{ crossSectionMm2: number }> = {
  id: 'PDV109', name: 'conductor-below-minimum-size', since, retired, severity: 'warning',
  meaning: 'A power cable is thinner than the basis allows whatever the current, because thin conductors break under vibration.',
  message: ({ subject, context }) => `Cable ${subject.id}: ${context?.['size']}, least size ${context?.['kind']} ${context?.['least']}`,
  remedy: ({ subject }) => `Replace ${subject.id} with a thicker conductor.`,
}

export const currentAboveSwitch: FindingKind<{ currentA: number }> = {
  id: 'PDV110', name: 'current-above-switch-rating', since, retired, severity: 'error',
  meaning: 'More current flows through a switch, isolator or connector than it is made for: its contacts grow hot.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: rated } = sayAgainst('currentA', evidence.currentA, limit?.value ?? 0)
    return `${subject.id} carries ${actual}, rated ${rated}`
  },
  remedy: ({ subject }) => `Fit a switch of a higher rating in place of ${subject.id}, or move loads or charging sources to another way.`,
}

export const ratingNotFalling: FindingKind<{ ratedCurrentA: number; upstreamRatedA: number }> = {
  id: 'PDV301', name: 'rating-not-below-upstream', since, retired, severity: 'warning',
  meaning: 'A device is not rated lower than the next one towards the source, so a fault behind it may put out everything behind the other.',
  message: ({ subject, evidence, context }) => evidence.ratedCurrentA === evidence.upstreamRatedA
    ? `Circuit ${subject.id}: rated ${say('ratedCurrentA', evidence.ratedCurrentA)}, and so is ${context?.['above']} above it`
    : `Circuit ${subject.id}: rated ${say('ratedCurrentA', evidence.ratedCurrentA)}, ${context?.['above']} above it only ${say('ratedCurrentA', evidence.upstreamRatedA)}`,
  remedy: ({ subject, context }) => `Fit a smaller device at ${subject.id} if its loads allow it, or accept that ${context?.['above']} may open first.`,
}

export const belowMakersFuse: FindingKind<{ ratedCurrentA: number; makersFuseA: number }> = {
  id: 'PDV302', name: 'rating-below-makers-fuse', since, retired, severity: 'warning',
  meaning: 'The device is rated below the value that the maker of the load asks for, so it may open when the load starts.',
  message: ({ subject, evidence, context }) => {
    const { actual, limit } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, evidence.makersFuseA)
    return `Circuit ${subject.id}: rated ${actual}, the maker of ${context?.['load']} asks for ${limit}`
  },
  remedy: ({ context }) => `Fit the value that the maker of ${context?.['load']} asks for, if the conductor allows it.`,
}

export const smallForContinuousLoad: FindingKind<{ ratedCurrentA: number; continuousCurrentA: number }> = {
  id: 'PDV303', name: 'device-small-for-continuous-load', since, retired, severity: 'warning',
  meaning: 'What the device carries runs for three hours or more without a break, and the device is rated less than a quarter above it. It grows warm and may open.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: least } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, limit!.value)
    return `Circuit ${subject.id}: rated ${actual}, advised at least ${least} for what runs on and on in ${context?.['mode']}`
  },
  remedy: ({ subject }) => `Fit a larger device at ${subject.id} if its conductors allow it, or use one that is rated for its full value without a break.`,
}

export const parallelTooThin: FindingKind<{ crossSectionMm2: number }> = {
  id: 'PDV304', name: 'parallel-conductors-thin', since, retired, severity: 'note',
  meaning: 'Thin conductors are joined in parallel. If one of them breaks, the others carry its share, and nothing shows it.',
  message: ({ subject, context }) => `Cable ${subject.id}: conductors of ${context?.['size']} in parallel, advised from ${context?.['least']} on`,
  remedy: ({ subject }) => `Replace ${subject.id} with one thicker conductor, or protect each of its conductors by itself.`,
}

export const findingKinds = [
  capacityBelowCurrent, capacityBelowClass, voltageRatingTooLow, deviceTooFar, aboveMakersFuse, protectionAbovePanel, currentAbovePanel,
  chargingAboveRating, conductorBelowMinimum, currentAboveSwitch, ratingNotFalling, belowMakersFuse, smallForContinuousLoad, parallelTooThin,
] as const
