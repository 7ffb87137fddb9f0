/** Findings about mains voltage and how sources are switched (ACS). */
import type { FindingKind } from '../../findings/finding.js'
import { sayResidualCurrent } from '../../references/basis/ac-rules.js'
import { say, sayAgainst, sayAgainstBoth } from '../../units/format.js'

const since = '0.1.0'
const retired = null

export const modeLoadAboveRating: FindingKind<{ connectedCurrentA: number }> = {
  id: 'ACS101', name: 'mode-load-above-rating', since, retired, severity: 'warning',
  meaning: 'In an operating mode more runs at the same time than the source can give, so its breaker opens or it shuts down.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: rated } = sayAgainst('connectedCurrentA', evidence.connectedCurrentA, limit!.value)
    return `Source ${subject.id}: ${actual} in mode ${context?.['mode']} from ${context?.['hours']}, rated ${rated}`
  },
  remedy: () => 'Change what runs at the same time in that mode, correct its duties, or use a source of a higher rating.',
}

export const residualCurrentMissing: FindingKind<{}> = {
  id: 'ACS102', name: 'residual-current-protection-missing', since, retired, severity: 'error',
  meaning: 'The shore supply has no residual-current protection where the basis asks for it. Current that leaks through a person or into the water is not switched off.',
  message: ({ subject, context }) => `Shore supply ${subject.id} from ${context?.['inlet']}: ${context?.['words']}`,
  remedy: () => 'Fit a residual-current device of at most 30 mA with the main shore breaker, or record the one that is there. This is work for a licensed electrician.',
}

export const residualCurrentAboveLimit: FindingKind<{ residualCurrentA: number }> = {
  id: 'ACS103', name: 'residual-current-above-limit', since, retired, severity: 'error',
  meaning: 'The residual-current device of the shore supply trips at more than the basis allows.',
  message: ({ subject, evidence, limit }) =>
    `Residual-current protection at ${subject.id}: rated ${sayResidualCurrent(evidence.residualCurrentA)}, limit ${sayResidualCurrent(limit!.value)}`,
  remedy: () => 'Fit a device of a lower rated residual current, or correct the rating that is recorded.',
}

export const residualTripTimeAboveLimit: FindingKind<{ tripTimeMs: number }> = {
  id: 'ACS104', name: 'residual-trip-time-above-limit', since, retired, severity: 'error',
  meaning: 'The residual-current device of the shore supply takes longer to trip than the basis allows.',
  message: ({ subject, evidence, limit }) => {
    const time = sayAgainst('tripTimeMs', evidence.tripTimeMs, limit!.value)
    return `Residual-current protection at ${subject.id}: trip time ${time.actual}, limit ${time.limit}`
  },
  remedy: () => 'Fit a device that trips in time, or correct the time that is recorded.',
}

export const socketResidualCurrentMissing: FindingKind<{}> = {
  id: 'ACS105', name: 'socket-without-residual-current-protection', since, retired, severity: 'error',
  meaning: 'A mains socket in a wet place or a machinery space can be fed without residual-current protection.',
  message: ({ subject, context }) => `Socket ${subject.id} in ${context?.['zone']}: no residual-current device between it and ${context?.['source']}`,
  remedy: () => 'Fit residual-current protection ahead of the socket, or record the device that is there.',
}

export const socketResidualCurrentAboveLimit: FindingKind<{ residualCurrentA: number }> = {
  id: 'ACS106', name: 'socket-residual-current-above-limit', since, retired, severity: 'error',
  meaning: 'The residual-current protection of a mains socket in a wet place or a machinery space trips at more than the basis allows there.',
  message: ({ subject, evidence, limit, context }) =>
    `Socket ${subject.id} in ${context?.['zone']}: fed from ${context?.['source']}, ${context?.['device']} trips at ${sayResidualCurrent(evidence.residualCurrentA)}, `
    + `limit ${sayResidualCurrent(limit!.value)}`,
  remedy: () => 'Fit protection of a lower rated residual current at the socket or ahead of it.',
}

export const shoreBreakerTooFar: FindingKind<{ distanceM: number }> = {
  id: 'ACS107', name: 'shore-breaker-too-far', since, retired, severity: 'error',
  meaning: 'The first breaker behind a shore inlet is further along the conductor than the basis allows. The conductor before it is protected only by what is ashore.',
  message: ({ subject, evidence, limit, context }) => {
    const distance = sayAgainstBoth('distanceM', evidence.distanceM, limit!.value)
    return `Main shore breaker ${subject.id}: ${distance.actual} of conductor from ${context?.['inlet']}, limit ${distance.limit}`
  },
  remedy: () => 'Fit a further breaker or fuses close to the inlet, or move the main breaker.',
}

export const shoreBreakerAboveInlet: FindingKind<{ ratedCurrentA: number }> = {
  id: 'ACS108', name: 'shore-breaker-above-inlet-rating', since, retired, severity: 'error',
  meaning: 'The main shore breaker lets more current flow than the inlet is made for. Inlet and shore cable can overheat.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: inlet } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, limit!.value)
    return `Main shore breaker ${subject.id}: rated ${actual}, inlet ${context?.['inlet']} ${inlet}`
  },
  remedy: () => 'Fit a breaker of at most the rating of the inlet.',
}

export const shoreBreakerPoles: FindingKind<{ polesCount: number }> = {
  id: 'ACS109', name: 'shore-breaker-poles', since, retired, severity: 'error',
  meaning: 'The main shore breaker does not open all live conductors, so that what is switched off may still be live.',
  message: ({ subject, evidence, limit }) => `Main shore breaker ${subject.id}: opens ${evidence.polesCount} of ${limit!.value} live conductors`,
  remedy: () => 'Fit a breaker that opens all live conductors at once.',
}

export const sourcesNotInterlocked: FindingKind<{}> = {
  id: 'ACS110', name: 'sources-not-interlocked', since, retired, severity: 'error',
  meaning: 'Circuits from different a.c. sources lead to one panel or busbar and nothing lets only one of them be closed. Two sources joined destroy each other, and the shore plug may be live.',
  message: ({ subject, context }) => `${subject.id} can be fed by ${context?.['sources']} together: ${context?.['circuits']} share no interlock`,
  remedy: () => 'Fit a selector or a mechanical interlock and name it at each of the circuits, or name the one that is there.',
}

export const busVoltagesDiffer: FindingKind<{ highestVoltageV: number; lowestVoltageV: number }> = {
  id: 'ACS111', name: 'bus-voltages-differ', since, retired, severity: 'error',
  meaning: 'A panel or busbar can be fed from sources of different voltage, so that its loads are damaged or do not work.',
  message: ({ subject, evidence }) => `${subject.id} can be fed with ${say('nominalVoltageV', evidence.highestVoltageV)} and with ${say('nominalVoltageV', evidence.lowestVoltageV)}`,
  remedy: () => 'Correct the voltages of the outputs, or put a transformer between.',
}

export const polarityNotShown: FindingKind<{}> = {
  id: 'ACS112', name: 'polarity-not-shown', since, retired, severity: 'error',
  meaning: 'On a supply with one live and one neutral conductor nothing shows that they are reversed, and branch breakers open one conductor only. Reversed, the loads stay live when switched off.',
  message: ({ subject, context }) => `Shore inlet ${subject.id}: no polarity indicator, and ${context?.['circuits']} ${context?.['single']} one conductor only`,
  remedy: () => 'Fit a polarity indicator and name it at the inlet, or fit branch breakers that open both conductors.',
}

export const neutralBondedOnShorePower: FindingKind<{}> = {
  id: 'ACS113', name: 'neutral-bonded-on-shore-power', since, retired, severity: 'error',
  meaning: 'On shore power neutral and protective conductor are joined on board too. Load current then flows in the earth conductor and in the water.',
  message: ({ subject }) => `Shore inlet ${subject.id}: neutral and protective conductor are joined on board`,
  remedy: () => 'Take the joint out: on shore power it belongs ashore. This is work for a licensed electrician.',
}

export const neutralNotBonded: FindingKind<{}> = {
  id: 'ACS114', name: 'neutral-not-bonded-at-source', since, retired, severity: 'error',
  meaning: 'At a source on board neutral and protective conductor are not joined, so that a fault to earth trips nothing.',
  message: ({ subject }) => `Source ${subject.id}: neutral and protective conductor are not joined at it`,
  remedy: () => 'Check the earthing of the system with a licensed electrician, who joins them at the source where they belong joined.',
}

export const acSourceDataMissing: FindingKind<{}> = {
  id: 'ACS201', name: 'ac-source-data-missing', since, retired, severity: 'note',
  meaning: 'Voltage or rated current of an a.c. source is not recorded, so what hangs on it is not assessed.',
  message: ({ subject, context }) => `Source ${subject.id}: ${context?.['missing']}`,
  remedy: () => 'Record its output with voltage, frequency and current.',
}

export const connectedLoadAboveRating: FindingKind<{ connectedCurrentA: number }> = {
  id: 'ACS301', name: 'connected-load-above-rating', since, retired, severity: 'note',
  meaning: 'All that is connected to a source draws more than it can give, and no duties say what runs at the same time.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: rated } = sayAgainst('connectedCurrentA', evidence.connectedCurrentA, limit!.value)
    return `Source ${subject.id}: all loads together ${actual}, rated ${rated}`
  },
  remedy: () => 'Record the duties of its loads in the operating modes.',
}

export const severalNormallyClosed: FindingKind<{}> = {
  id: 'ACS302', name: 'several-of-one-interlock-closed', since, retired, severity: 'warning',
  meaning: 'Circuits share an interlock that lets only one of them be closed, and more than one is recorded as normally closed.',
  message: ({ subject, context }) => `Circuit ${subject.id}: recorded as normally closed together with ${context?.['others']}, though ${context?.['interlock']} lets only one be`,
  remedy: () => 'Mark all but one of them as normally open, or correct the interlock.',
}

export const galvanicIsolationMissing: FindingKind<{}> = {
  id: 'ACS303', name: 'galvanic-isolation-missing', since, retired, severity: 'warning',
  meaning: 'The earth conductor of the shore supply joins the boat to her neighbours. Without galvanic isolation her metal below the waterline corrodes.',
  message: ({ subject, context }) => `Shore inlet ${subject.id}: ${context?.['words']}`,
  remedy: () => 'Fit a galvanic isolator or an isolation transformer, or name at the inlet the one that is there.',
}

export const busFrequenciesDiffer: FindingKind<{ highestFrequencyHz: number; lowestFrequencyHz: number }> = {
  id: 'ACS304', name: 'bus-frequencies-differ', since, retired, severity: 'warning',
  meaning: 'A panel or busbar can be fed from sources of different frequency. Motors and transformers made for one may not stand the other.',
  message: ({ subject, evidence }) => `${subject.id} can be fed at ${say('frequencyHz', evidence.highestFrequencyHz)} and at ${say('frequencyHz', evidence.lowestFrequencyHz)}`,
  remedy: () => 'Check that all its loads are made for both, or correct the frequencies of the outputs.',
}

export const findingKinds = [
  modeLoadAboveRating, residualCurrentMissing, residualCurrentAboveLimit, residualTripTimeAboveLimit, socketResidualCurrentMissing,
  socketResidualCurrentAboveLimit, shoreBreakerTooFar, shoreBreakerAboveInlet, shoreBreakerPoles, sourcesNotInterlocked, busVoltagesDiffer,
  polarityNotShown, neutralBondedOnShorePower, neutralNotBonded, acSourceDataMissing, connectedLoadAboveRating, severalNormallyClosed,
  galvanicIsolationMissing, busFrequenciesDiffer,
] as const
