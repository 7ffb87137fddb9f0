/** Findings (RAD): radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import type { AnyFindingKind, FindingKind } from '../../findings/finding.js'
import { say, sayAgainst, sayAgainstBoth, sayForWorking } from '../../units/format.js'

const since = '0.1.0'
const retired = null

export const lossAboveLimit: FindingKind<{ lossDb: number; powerW: number; antennaPowerW: number }> = {
  id: 'RAD101', name: 'antenna-cable-loss-above-limit', since, retired, severity: 'warning',
  meaning: 'Between transmitter and antenna so much is lost that less than half of the power is radiated. The same loss weakens what is received.',
  message: ({ subject, evidence, limit, context }) => {
    const loss = sayAgainst('lossDb', evidence.lossDb, limit!.value)
    return `Transmitter ${subject.id}, ${context?.['service']}: ${loss.actual} lost on the way to ${context?.['antenna']}, limit ${loss.limit}; `
      + `${sayForWorking('antennaPowerW', evidence.antennaPowerW, 'result')} of ${sayForWorking('powerW', evidence.powerW)} arrive`
  },
  remedy: () => 'Use a cable of lower loss, take a shorter way, or leave out connectors and splitters.',
}

export const antennaNotForFrequency: FindingKind<{ frequencyMHz: number }> = {
  id: 'RAD102', name: 'antenna-not-for-frequency', since, retired, severity: 'error',
  meaning: 'An antenna is not made for the frequency of a transmitter that is connected to it. Range is small and the transmitter may be damaged.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: made } = sayAgainst('frequencyMHz', evidence.frequencyMHz, limit!.value)
    return `Antenna ${subject.id}: ${context?.['service']} of ${context?.['transmitter']} sends at ${actual}, made for ${limit!.relation} ${made}`
  },
  remedy: () => 'Fit an antenna for that frequency, or correct the range that is recorded.',
}

export const sharedWithoutSplitter: FindingKind<{}> = {
  id: 'RAD103', name: 'antenna-shared-without-splitter', since, retired, severity: 'error',
  meaning: 'Two transmitters are connected to one antenna and no splitter keeps the power of one out of the receiver of the other, which it destroys.',
  message: ({ subject, context }) => `Antenna ${subject.id}: ${context?.['transmitters']} share it without a splitter`,
  remedy: () => 'Fit a splitter made for transmitters, or an antenna for each; record the splitter that is there with the loss between its connectors.',
}

export const antennasTooClose: FindingKind<{ distanceM: number }> = {
  id: 'RAD104', name: 'antennas-too-close', since, retired, severity: 'warning',
  meaning: 'Two antennas stand nearer to each other than they should. The stronger deafens or damages what is behind the other, and each distorts the other’s pattern.',
  message: ({ subject, evidence, limit, context }) => {
    const distance = sayAgainstBoth('distanceM', evidence.distanceM, limit!.value)
    return `Antenna ${subject.id}: ${context?.['held']} ${distance.actual} to ${context?.['other']}, limit ${distance.limit}`
  },
  remedy: () => 'Move one of the antennas, best straight above or below the other, or let both services use one antenna through a splitter.',
}

export const skyAntennaInBeam: FindingKind<{ elevationDeg: number }> = {
  id: 'RAD105', name: 'antenna-in-radar-beam', since, retired, severity: 'warning',
  meaning: 'An antenna for position or for a satellite stands in the beam of a radar. The pulses blind its amplifier and may destroy it.',
  message: ({ subject, evidence, limit, context }) => {
    const angle = sayAgainst('elevationDeg', evidence.elevationDeg, limit!.value)
    return `Antenna ${subject.id}: ${angle.actual} off the middle of the beam of ${context?.['radar']}, which reaches to ${angle.limit}; horizontally ${context?.['distance']} away`
  },
  remedy: () => 'Move the antenna above or below the beam, or raise the scanner.',
}

export const personWithinExposure: FindingKind<{ distanceM: number }> = {
  id: 'RAD106', name: 'person-within-exposure-distance', since, retired, severity: 'warning',
  meaning: 'Somebody can stand so near a transmitting antenna or in front of a radar that the limit for the general public is passed if it goes on.',
  message: ({ subject, evidence, limit, context }) => {
    const distance = sayAgainstBoth('distanceM', evidence.distanceM, limit!.value)
    return `${context?.['what']} ${subject.id}: ${distance.actual} from ${context?.['place']}, distance to keep ${distance.limit}${context?.['others']}`
  },
  remedy: () => 'Move the antenna or the place, or mark it and keep people away while it transmits; the maker’s manual and the authorities’ limits come first.',
}

export const standingWaveAboveLimit: FindingKind<{ vswrFactor: number }> = {
  id: 'RAD107', name: 'standing-wave-above-limit', since, retired, severity: 'warning',
  meaning: 'A measured standing wave ratio is above the limit: antenna, cable or a connector reflects power.',
  message: ({ subject, evidence, limit, context }) => {
    const ratio = sayAgainst('vswrFactor', evidence.vswrFactor, limit!.value)
    return `Reading ${subject.id} at ${context?.['at']}: standing wave ratio ${ratio.actual}, limit ${ratio.limit}`
  },
  remedy: () => 'Look for water and bad joints in the connectors first, then measure at the antenna itself.',
}

export const standingWaveHidden: FindingKind<{ antennaVswrFactor: number; vswrFactor: number }> = {
  id: 'RAD108', name: 'standing-wave-hidden-by-cable-loss', since, retired, severity: 'warning',
  meaning: 'A standing wave ratio looks good at the transmitter only because the cable swallows what the antenna sends back. At the antenna it is above the limit.',
  message: ({ subject, evidence, limit, context }) => {
    const ratio = sayAgainst('vswrFactor', evidence.antennaVswrFactor, limit!.value)
    return `Reading ${subject.id} at ${context?.['at']}: ${say('vswrFactor', evidence.vswrFactor)} behind ${context?.['loss']} of cable means a standing wave ratio of ${ratio.actual} at ${context?.['antenna']}, limit ${ratio.limit}`
  },
  remedy: () => 'Measure at the antenna itself, look at its connectors, and mend or change antenna or cable.',
}

export const antennaNotReached: FindingKind<{}> = {
  id: 'RAD201', name: 'antenna-not-reached', since, retired, severity: 'note',
  meaning: 'From a transmitter no way to an antenna is recorded, so that neither loss nor range nor exposure is worked out.',
  message: ({ subject, context }) => `Transmitter ${subject.id}, ${context?.['service']}: ${context?.['gap']}`,
  remedy: () => 'Record the coaxial cables with the connectors at both ends, and the losses between the connectors of splitters and filters.',
}

export const aisLossHigh: FindingKind<{ lossDb: number }> = {
  id: 'RAD301', name: 'ais-cable-loss-high', since, retired, severity: 'note',
  meaning: 'AIS sends with little power; on the way to its antenna more is lost than is preferred.',
  message: ({ subject, evidence, limit, context }) => {
    const loss = sayAgainst('lossDb', evidence.lossDb, limit!.value)
    return `Transmitter ${subject.id}, ${context?.['service']}: ${loss.actual} lost on the way to ${context?.['antenna']}, preferred at most ${loss.limit}`
  },
  remedy: () => 'Use a cable of lower loss or a shorter one where it can be had.',
}

export const antennaNearTransmitter: FindingKind<{ distanceM: number }> = {
  id: 'RAD302', name: 'antenna-near-transmitter', since, retired, severity: 'note',
  meaning: 'An antenna stands nearer to a transmitting antenna or a radar scanner than is usual practice. It may be disturbed while that transmits.',
  message: ({ subject, evidence, limit, context }) => {
    const distance = sayAgainstBoth('distanceM', evidence.distanceM, limit!.value)
    return `${context?.['what']} ${subject.id}: ${distance.actual} to ${context?.['other']}, common practice ${distance.limit}${context?.['others']}`
  },
  remedy: () => 'Move one of the two, or check on board that position and reception hold while it transmits.',
}

export const antennaCrossesBeam: FindingKind<{}> = {
  id: 'RAD303', name: 'antenna-crosses-radar-beam', since, retired, severity: 'note',
  meaning: 'An antenna stands in the beam of a radar. It throws a narrow shadow and may pick up the pulses.',
  message: ({ subject, context }) => `Radar ${subject.id}: its beam is crossed by ${context?.['antennas']}`,
  remedy: () => 'Keep antennas out of the beam where there is a choice.',
}

export const skyBlockedAbove: FindingKind<{ blockedPercent: number }> = {
  id: 'RAD304', name: 'sky-view-blocked', since, retired, severity: 'note',
  meaning: 'Structures hide more of the sky from an antenna than the planning value, so that position or connection may fail on some headings.',
  message: ({ subject, evidence, limit, context }) => {
    const share = sayAgainst('blockedPercent', evidence.blockedPercent, limit!.value)
    return `Antenna ${subject.id}: ${share.actual} of the sky hidden by ${context?.['structures']}, planning value ${share.limit}`
  },
  remedy: () => 'Move the antenna higher or clear of the structure.',
}

export const standingWaveNotExplained: FindingKind<{ vswrFactor: number; lossDb: number }> = {
  id: 'RAD305', name: 'standing-wave-not-explained', since, retired, severity: 'warning',
  meaning: 'More comes back than the recorded cable would let through if its far end were open. The reading, the loss of the cable, or a fault close to the meter is to be looked for.',
  message: ({ subject, evidence, context }) =>
    `Reading ${subject.id} at ${context?.['at']}: standing wave ratio ${say('vswrFactor', evidence.vswrFactor)}, which no antenna behind ${say('lossDb', evidence.lossDb)} of cable can give`,
  remedy: () => 'Measure again, and look at the first connector behind the meter; then check type and length of the cable on record.',
}

export const findingKinds: readonly AnyFindingKind[] = [
  lossAboveLimit, antennaNotForFrequency, sharedWithoutSplitter, antennasTooClose, skyAntennaInBeam, personWithinExposure, standingWaveAboveLimit,
  standingWaveHidden, antennaNotReached, aisLossHigh, antennaNearTransmitter, antennaCrossesBeam, skyBlockedAbove, standingWaveNotExplained,
]
