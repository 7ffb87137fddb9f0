/** Findings about CAN buses (CAN). */
import type { FindingKind } from '../../findings/finding.js'
import { sayAgainst, sayAgainstBoth, sayForWorking } from '../../units/format.js'

const since = '0.3.0'
const retired = null

type Message<E extends Readonly<Record<string, number>>> = FindingKind<E>['message']
/** "…: actual, limit …" of the first piece of evidence. */
const against = <E extends Readonly<Record<string, number>>>(quantity: keyof E & string, words: (facts: Parameters<Message<E>>[0]) => string): Message<E> => facts => {
  const { actual, limit } = sayAgainst(quantity, facts.evidence[quantity]!, facts.limit!.value)
  return `${words(facts)} ${actual}, limit ${limit}`
}
const againstBoth = <E extends Readonly<Record<string, number>>>(quantity: keyof E & string, words: (facts: Parameters<Message<E>>[0]) => string): Message<E> => facts => {
  const { actual, limit } = sayAgainstBoth(quantity, facts.evidence[quantity]!, facts.limit!.value)
  return `${words(facts)} ${actual}, limit ${limit}`
}

export const backboneTooLong: FindingKind<{ backboneLengthM: number }> = {
  id: 'CAN101', name: 'backbone-too-long', since, retired, severity: 'warning',
  meaning: 'The backbone of a CAN bus is longer than its cable allows at 250 kbit/s: bits from its ends come too late.',
  message: againstBoth('backboneLengthM', ({ subject }) => `CAN bus ${subject.id}: backbone of`),
  remedy: () => 'Use the next heavier bus cable, take a shorter way, or part the bus with a bridge.',
}

export const dropTooLong: FindingKind<{ dropLengthM: number }> = {
  id: 'CAN102', name: 'drop-too-long', since, retired, severity: 'warning',
  meaning: 'A drop is longer than allowed: its open end throws back what runs along it.',
  message: againstBoth('dropLengthM', ({ subject, context }) => `Tee ${subject.id}: drop ${context?.['cable']} of`),
  remedy: ({ subject }) => `Move tee ${subject.id} closer to its device, or lead the backbone there.`,
}

export const dropsTooLong: FindingKind<{ dropsTogetherM: number }> = {
  id: 'CAN103', name: 'drops-together-too-long', since, retired, severity: 'warning',
  meaning: 'All drops of a bus together are longer than allowed.',
  message: againstBoth('dropsTogetherM', ({ subject }) => `CAN bus ${subject.id}: drops together of`),
  remedy: () => 'Use shorter drops, the longest first.',
}

export const tooManyDevices: FindingKind<{ deviceCount: number }> = {
  id: 'CAN104', name: 'too-many-devices', since, retired, severity: 'warning',
  meaning: 'More devices hang on a bus than its transceivers are made for.',
  message: ({ subject, evidence, limit }) => `CAN bus ${subject.id}: ${evidence.deviceCount} devices, limit ${limit!.value}`,
  remedy: () => 'Move some devices to a bus of their own behind a bridge.',
}

export const terminatorsWrong: FindingKind<{ terminatorCount: number }> = {
  id: 'CAN105', name: 'terminators-wrong', since, retired, severity: 'error',
  meaning: 'A bus has not one terminator at each end of its backbone and none elsewhere. Data come back from an open end and spoil what is sent.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: ${context?.['words']}`,
  remedy: () => 'Fit one terminator of 120 Ω at each end of the backbone and take out any other, or record those that are there.',
}

export const terminatorResistance: FindingKind<{ resistanceOhm: number }> = {
  id: 'CAN106', name: 'terminator-of-other-resistance', since, retired, severity: 'warning',
  meaning: 'A terminator has not the resistance that the data pair of the cable asks for.',
  message: ({ subject, evidence }) => `Terminator ${subject.id}: ${sayForWorking('resistanceOhm', evidence.resistanceOhm)} recorded, 120 Ω asked for`,
  remedy: ({ subject }) => `Replace ${subject.id} by a terminator of 120 Ω, or correct what is recorded.`,
}

export const supplyDropAboveLimit: FindingKind<{ supplyDropV: number; loadEquivalencyNumber: number }> = {
  id: 'CAN107', name: 'bus-supply-drop-above-limit', since, retired, severity: 'warning',
  meaning: 'With every device at its most, the backbone loses more voltage from its power insertion to a tee than the guides allow.',
  message: against('supplyDropV', ({ subject, context, evidence }) => `CAN bus ${subject.id}: LEN ${evidence.loadEquivalencyNumber} fed at ${context?.['insertion']}, drop to ${context?.['tee']}`),
  remedy: () => 'Move the power insertion to the middle of the load, use heavier cable, or fit a power isolator and feed both parts.',
}

export const deviceVoltageTooLow: FindingKind<{ voltageV: number }> = {
  id: 'CAN108', name: 'bus-voltage-too-low', since, retired, severity: 'error',
  meaning: 'With every device at its most, less arrives at a device than it needs to work.',
  message: against('voltageV', ({ subject, context }) => `Device ${subject.id} on CAN bus ${context?.['bus']}:`),
  remedy: () => 'Move the power insertion closer, use heavier cable, or mend the supply circuit of the bus.',
}

export const supplyVoltageTooHigh: FindingKind<{ voltageV: number }> = {
  id: 'CAN109', name: 'bus-voltage-too-high', since, retired, severity: 'error',
  meaning: 'A bus is fed with more than its devices are made for, for example with 24 V.',
  message: against('voltageV', ({ subject, context }) => `Power insertion ${subject.id} of CAN bus ${context?.['bus']}:`),
  remedy: () => 'Fit a converter to 12 V ahead of the bus, or record the voltage of the one that is there.',
}

export const segmentCurrentAboveLimit: FindingKind<{ currentA: number }> = {
  id: 'CAN110', name: 'bus-cable-current-above-limit', since, retired, severity: 'error',
  meaning: 'More current flows through a cable of the backbone than it, or its connectors, may carry.',
  message: against('currentA', ({ subject, context }) => `Backbone cable ${subject.id} of CAN bus ${context?.['bus']}:`),
  remedy: () => 'Move the power insertion to the middle of the load, use heavier cable, or feed both parts on their own.',
}

export const protectionAboveCable: FindingKind<{ ratedCurrentA: number }> = {
  id: 'CAN111', name: 'bus-protection-above-cable', since, retired, severity: 'error',
  meaning: 'The protective device of a bus is rated higher than the supply pair of its cable may carry, so the cable can overheat before it opens.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = sayAgainst('ratedCurrentA', evidence.ratedCurrentA, limit!.value)
    return `Circuit ${subject.id} feeds CAN bus ${context?.['bus']} of ${context?.['cable']} cable: rated ${actual}, limit ${most}`
  },
  remedy: ({ subject }) => `Fit a device of a lower rating in ${subject.id}, or a further one at the power insertion, and record it.`,
}

export const busCurrentAboveProtection: FindingKind<{ currentA: number }> = {
  id: 'CAN112', name: 'bus-current-above-protection', since, retired, severity: 'warning',
  meaning: 'The devices of a bus may take more together than its protective device is rated for.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: rated } = sayAgainst('currentA', evidence.currentA, limit!.value)
    return `Circuit ${subject.id}: the devices of CAN bus ${context?.['bus']} take ${actual}, rated ${rated}`
  },
  remedy: () => 'Fit a power isolator and feed both parts on their own, or move devices to another bus.',
}

export const severalInsertions: FindingKind<{ insertionCount: number }> = {
  id: 'CAN113', name: 'several-supplies-on-one-stretch', since, retired, severity: 'error',
  meaning: 'Two power insertions feed one stretch of a backbone with no power isolator between them: two supplies in parallel, and neither device protects the cable alone.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: ${context?.['insertions']} feed one stretch of the backbone`,
  remedy: () => 'Fit a power isolator between them, or take one of them out.',
}

export const sectionWithoutSupply: FindingKind<{ deviceCount: number }> = {
  id: 'CAN114', name: 'stretch-without-supply', since, retired, severity: 'error',
  meaning: 'A stretch of a backbone that supplies its devices has no power insertion.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: nothing feeds ${context?.['devices']}`,
  remedy: () => 'Record the power insertion of that stretch, or fit one.',
}

export const deviceTakesTooMuch: FindingKind<{ loadEquivalencyNumber: number }> = {
  id: 'CAN115', name: 'device-takes-too-much-from-bus', since, retired, severity: 'warning',
  meaning: 'One device takes more from a bus than a single device may.',
  message: ({ subject, evidence, limit, context }) => `Device ${subject.id} on CAN bus ${context?.['bus']}: LEN ${evidence.loadEquivalencyNumber}, limit ${limit!.value}`,
  remedy: ({ subject }) => `Give ${subject.id} a supply of its own, or correct its load equivalency number.`,
}

export const busLoadAboveLimit: FindingKind<{ worstLoadPercent: number }> = {
  id: 'CAN116', name: 'bus-load-above-limit', since, retired, severity: 'warning',
  meaning: 'With every frame at its longest, what is sent takes more of a bus than good planning leaves for bursts and for what is added later.',
  message: against('worstLoadPercent', ({ subject }) => `CAN bus ${subject.id}: load at worst`),
  remedy: () => 'Move devices to a bus of their own behind a bridge that passes only what is needed, or let them send less often.',
}

export const lenNotRecorded: FindingKind<{}> = {
  id: 'CAN201', name: 'load-equivalency-not-recorded', since, retired, severity: 'note',
  meaning: 'Without the load equivalency number of every device the supply of a bus cannot be assessed. 0 counts as none where nothing else feeds the device.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: no load equivalency number is recorded for ${context?.['devices']}`,
  remedy: () => 'Record the number from the plate or the manual of the device.',
}

export const busCableNotRecorded: FindingKind<{}> = {
  id: 'CAN202', name: 'bus-cable-not-recorded', since, retired, severity: 'note',
  meaning: 'Without the kind of its cable, light, mid or heavy, neither length nor supply of a bus can be held against a limit.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: the kind of bus cable is not recorded for ${context?.['cables']}`,
  remedy: () => 'Record the kind of bus cable, and its resistance where the maker states it, with the cable type.',
}

export const alikeInData: FindingKind<{ instanceNumber: number }> = {
  id: 'CAN301', name: 'same-data-instance', since, retired, severity: 'warning',
  meaning: 'Two devices on one network send the same kind of data under the same instance. A display takes one engine, tank or battery for the other.',
  message: ({ subject, evidence, context }) => `Devices ${subject.id} and ${context?.['other']}: both send ${context?.['groups']} as instance ${evidence.instanceNumber}`,
  remedy: ({ context }) => `Set another instance in one of them, and record it at what ${context?.['other']} sends.`,
}

export const alikeDevices: FindingKind<{ instanceNumber: number }> = {
  id: 'CAN302', name: 'same-device-instance', since, retired, severity: 'note',
  meaning: 'Two devices on one network give the same kind of data under one device instance. Which of them a display shows is left to chance until its source is chosen.',
  message: ({ subject, evidence, context }) => `Devices ${subject.id} and ${context?.['other']}: both send ${context?.['groups']} under device instance ${evidence.instanceNumber}`,
  remedy: () => 'Set different device instances, choose the source on the displays, and record both.',
}

const reading = <E extends Readonly<Record<string, number>>>(quantity: keyof E & string, what: string): Message<E> => ({ subject, evidence, context }) =>
  `Reading ${subject.id} of CAN bus ${context?.['bus']}: ${what}${context?.['at']} ${sayForWorking(quantity, evidence[quantity]!)} measured, ${context?.['calculated']} calculated`
const lookFirst: FindingKind<{}>['remedy'] = ({ context }) => `Check what it usually means: ${context?.['words']}.`

export const terminationNotAsRecorded: FindingKind<{ resistanceOhm: number }> = {
  id: 'CAN303', name: 'measured-termination-not-as-recorded', since, retired, severity: 'error',
  meaning: 'The resistance measured between the data wires is not that of the terminators recorded.',
  message: reading('resistanceOhm', 'resistance'), remedy: lookFirst,
}

export const busVoltageLow: FindingKind<{ voltageV: number }> = {
  id: 'CAN304', name: 'measured-bus-voltage-low', since, retired, severity: 'warning',
  meaning: 'Less voltage was measured on a bus than is left with every device at its most.',
  message: reading('voltageV', 'voltage at '), remedy: lookFirst,
}

export const busLoadNotAsCalculated: FindingKind<{ busLoadPercent: number }> = {
  id: 'CAN305', name: 'measured-bus-load-not-as-calculated', since, retired, severity: 'note',
  meaning: 'The load measured on a bus is not what its devices should send by the record.',
  message: reading('busLoadPercent', 'load'), remedy: lookFirst,
}

export const busCurrentAboveDesign: FindingKind<{ currentA: number }> = {
  id: 'CAN306', name: 'bus-current-above-design', since, retired, severity: 'note',
  meaning: 'The circuit that feeds a bus is reckoned with less current than its devices may take by their load equivalency numbers, so its voltage drop is reckoned too small.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: design } = sayAgainst('currentA', evidence.currentA, limit!.value)
    return `Circuit ${subject.id}: the devices of CAN bus ${context?.['bus']} take ${actual}, designed for ${design}`
  },
  remedy: () => 'Correct the current of the power insertion point or the design current of the circuit.',
}

export const cableNotAsEntered: FindingKind<{ cableCount: number }> = {
  id: 'CAN307', name: 'bus-cable-not-as-entered', since, retired, severity: 'warning',
  meaning: 'A cable of a bus does not end where the backbone has it, or is missing there, so that lengths, currents and voltages are reckoned for another bus than the one that is fitted.',
  message: ({ subject, context }) => `CAN bus ${subject.id}: ${context?.['words']}`,
  remedy: () => 'Correct the order of the backbone, or the ends of the cable.',
}

export const findingKinds = [
  backboneTooLong, dropTooLong, dropsTooLong, tooManyDevices, terminatorsWrong, terminatorResistance, supplyDropAboveLimit, deviceVoltageTooLow,
  supplyVoltageTooHigh, segmentCurrentAboveLimit, protectionAboveCable, busCurrentAboveProtection, severalInsertions, sectionWithoutSupply,
  deviceTakesTooMuch, busLoadAboveLimit, lenNotRecorded, busCableNotRecorded, alikeInData, alikeDevices, terminationNotAsRecorded, busVoltageLow,
  busLoadNotAsCalculated, busCurrentAboveDesign, cableNotAsEntered,
] as const
