/** Findings (SER): serial links: who talks to whom, at which rate, how much of the line is in use, and the wires. */
import type { Facts, FindingKind } from '../../findings/finding.js'
import { say, sayAgainst } from '../../units/format.js'

const since = '0.2.0'
const retired = null

const usedUp = ({ subject, evidence, limit }: Facts<{ lineUsePercent: number }>): string => {
  const { actual, limit: most } = sayAgainst('lineUsePercent', evidence.lineUsePercent, limit!.value)
  return `Link ${subject.id}: its sentences take ${actual} of the line, limit ${most}`
}

export const lineOverloaded: FindingKind<{ lineUsePercent: number }> = {
  id: 'SER101', name: 'line-overloaded', since, retired, severity: 'error',
  meaning: 'More is to be sent on a serial line than it can carry, so sentences are late or lost.',
  message: usedUp,
  remedy: () => 'Take sentences off the link, send them less often, or set both ends to a higher rate.',
}

export const lineAbovePlan: FindingKind<{ lineUsePercent: number }> = {
  id: 'SER102', name: 'line-above-plan', since, retired, severity: 'warning',
  meaning: 'A serial line is fuller than lines are planned to be. It works as long as nothing is added and every sentence is as short as reckoned.',
  message: usedUp,
  remedy: () => 'Take sentences off the link, send them less often, or set both ends to a higher rate.',
}

export const twoTalkersAtOneInput: FindingKind<{}> = {
  id: 'SER103', name: 'two-talkers-at-one-input', since, retired, severity: 'error',
  meaning: 'Two talkers are joined to one input. Each garbles what the other says, and an output may be damaged.',
  message: ({ subject, context }) => `Link ${subject.id}: its listener ${context?.['input']} already listens to ${context?.['others']}`,
  remedy: () => 'Use another input, or put a serial multiplexer between them.',
}

export const listenersAboveDrive: FindingKind<{ drawnCurrentMilliA: number; listenersCount: number }> = {
  id: 'SER104', name: 'listeners-above-drive', since, retired, severity: 'warning',
  meaning: 'The listeners of a talker take more current than it can drive. The signal becomes weak, and some of them may not hear it.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = sayAgainst('drawnCurrentMilliA', evidence.drawnCurrentMilliA, limit!.value)
    return `Link ${subject.id}: ${evidence.listenersCount} listeners take ${actual}, ${context?.['talker']} drives ${most}`
  },
  remedy: () => 'Put a buffer or multiplexer between them, or record the currents that the makers state.',
}

export const sentenceTooLong: FindingKind<{ lengthCharacterCount: number }> = {
  id: 'SER105', name: 'sentence-too-long', since, retired, severity: 'error',
  meaning: 'A sentence is longer than the standard allows; listeners may throw it away.',
  message: ({ subject, evidence, limit, context }) => `Link ${subject.id}: sentence ${context?.['sentence']} has ${evidence.lengthCharacterCount} characters, limit ${limit!.value}`,
  remedy: () => 'Correct the length, start and line end included, or set the talker to send a shorter form.',
}

export const directionWrong: FindingKind<{}> = {
  id: 'SER106', name: 'connector-direction-wrong', since, retired, severity: 'error',
  meaning: 'A link starts at a connector that only listens, or leads to one that only talks.',
  message: ({ subject, context }) => `Link ${subject.id}: ${context?.['end']} ${context?.['does']} only, and is its ${context?.['part']}`,
  remedy: () => 'Correct the connector, or exchange talker and listener.',
}

export const ratesDoNotMeet: FindingKind<{ baudRateBaud: number }> = {
  id: 'SER107', name: 'rates-do-not-meet', since, retired, severity: 'error',
  meaning: 'A link runs at a rate that one of its ends cannot be set to, so that end understands nothing.',
  message: ({ subject, evidence, context }) => `Link ${subject.id}: it runs at ${say('baudRateBaud', evidence.baudRateBaud)}, which ${context?.['ends']} cannot be set to`,
  remedy: () => 'Set all ends to a rate that they share, or put a multiplexer between them that changes the rate.',
}

export const talksToItself: FindingKind<{}> = {
  id: 'SER108', name: 'talks-to-itself', since, retired, severity: 'error',
  meaning: 'A link has the same item as talker and as listener.',
  message: ({ subject, context }) => `Link ${subject.id}: ${context?.['item']} is its talker and a listener`,
  remedy: () => 'Correct the talker or the listener.',
}

export const oneTalkerTwoRates: FindingKind<{ baudRateBaud: number; otherRateBaud: number }> = {
  id: 'SER109', name: 'one-talker-two-rates', since, retired, severity: 'error',
  meaning: 'Two links start at one connector and have different rates. A connector talks at one rate.',
  message: ({ subject, evidence, context }) =>
    `Link ${subject.id}: its talker ${context?.['talker']} is to send at ${say('baudRateBaud', evidence.baudRateBaud)}, on ${context?.['other']} at ${say('otherRateBaud', evidence.otherRateBaud)}`,
  remedy: () => 'Correct the rate or the connector of one of the two links.',
}

export const sentencesGoRound: FindingKind<{}> = {
  id: 'SER110', name: 'sentences-go-round', since, retired, severity: 'error',
  meaning: 'Multiplexers pass sentences to one another in a ring. What enters it never leaves, and fills the lines.',
  message: ({ subject, context }) => `Link ${subject.id}: what is sent on it comes back to it by ${context?.['way']}`,
  remedy: () => 'Set the filter of one multiplexer so that it does not pass back what it was given.',
}

export const coreNotRecorded: FindingKind<{}> = {
  id: 'SER201', name: 'wire-core-not-recorded', since, retired, severity: 'note',
  meaning: 'Wires of serial links are entered without their cable or core, so nobody can find them in the cable.',
  message: ({ subject, context }) => `Vessel ${subject.id}: cable or core is missing of wires of ${context?.['links']}`,
  remedy: () => 'Enter cable and core of each wire.',
}

export const wiresNotRecorded: FindingKind<{}> = {
  id: 'SER202', name: 'wires-not-recorded', since, retired, severity: 'note',
  meaning: 'Serial links are entered without their wires. The pack cannot show which core goes to which terminal.',
  message: ({ subject, context }) => `Vessel ${subject.id}: no wires are entered of ${context?.['links']}`,
  remedy: () => 'Enter the wires terminal by terminal, with cable and core.',
}

export const rateNotOfStandard: FindingKind<{ baudRateBaud: number }> = {
  id: 'SER301', name: 'rate-not-of-standard', since, retired, severity: 'warning',
  meaning: 'A link runs at another rate than the standard that is entered for it has. One of the two is likely to be wrong.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: usual } = sayAgainst('baudRateBaud', evidence.baudRateBaud, limit!.value)
    return `Link ${subject.id}: it runs at ${actual}, ${context?.['standard']} at ${usual}`
  },
  remedy: () => 'Correct the rate or the standard; enter "other" for a rate that is in neither part.',
}

export const wireElsewhere: FindingKind<{}> = {
  id: 'SER302', name: 'wire-elsewhere', since, retired, severity: 'warning',
  meaning: 'A wire of a link ends at something that is neither its talker, nor a listener, nor a terminal block or connector on the way.',
  message: ({ subject, context }) => `Link ${subject.id}: its wire ${context?.['signal']} ends at ${context?.['end']}, which is no part of the link`,
  remedy: () => 'Correct the end of the wire, or add the listener.',
}

export const signalWireMissing: FindingKind<{}> = {
  id: 'SER303', name: 'signal-wire-missing', since, retired, severity: 'warning',
  meaning: 'Wires of a link are entered, and not both of A and B lead from the talker to a listener. With one of them it may work on some days.',
  message: ({ subject, context }) => `Link ${subject.id}: no wire ${context?.['signals']} leads to its listener ${context?.['listener']}`,
  remedy: () => 'Enter the wire, or fit it; give a single-ended output the same common as the listener’s B.',
}

export const coreUsedTwice: FindingKind<{}> = {
  id: 'SER304', name: 'core-used-twice', since, retired, severity: 'warning',
  meaning: 'One core of a cable is entered for two different wires.',
  message: ({ subject, context }) => `Link ${subject.id}: core ${context?.['core']} of ${context?.['cable']} is its wire ${context?.['signal']} and also ${context?.['other']}`,
  remedy: () => 'Correct the core of one of the wires.',
}

export const findingKinds = [
  lineOverloaded, lineAbovePlan, twoTalkersAtOneInput, listenersAboveDrive, sentenceTooLong, directionWrong, ratesDoNotMeet, talksToItself, oneTalkerTwoRates,
  sentencesGoRound, coreNotRecorded, wiresNotRecorded, rateNotOfStandard, wireElsewhere, signalWireMissing, coreUsedTwice,
] as const
