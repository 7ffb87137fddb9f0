/** Findings about links, power over the cable, rings, streams and what leads outside (ETH); those about addresses are in address-findings.ts. */
import type { FindingKind } from '../../findings/finding.js'
import { say, sayAgainst, sayAgainstBoth, sayForWorking } from '../../units/format.js'
import { addressFindingKinds } from './address-findings.js'

const since = '0.3.0'
const retired = null

// --- links -----------------------------------------------------------------------------------------------------------
export const linkTooLong: FindingKind<{ channelLengthM: number }> = {
  id: 'ETH101', name: 'link-too-long', since, retired, severity: 'error',
  meaning: 'A network link is longer from port to port than copper cable may be. It may not come up, or lose data in bad weather and heat.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = sayAgainstBoth('channelLengthM', evidence.channelLengthM, limit!.value)
    return `Link ${subject.id} from ${context?.['from']} to ${context?.['to']}: ${actual}, limit ${most}`
  },
  remedy: () => 'Put a network switch in between, use fibre, or correct the length.',
}

export const severalCablesOnPort: FindingKind<{ cableCount: number }> = {
  id: 'ETH109', name: 'several-cables-on-one-port', since, retired, severity: 'error',
  meaning: 'More than one cable is recorded at one network port, which takes one. One of them ends elsewhere.',
  message: ({ subject, evidence, context }) => `Port ${context?.['port']} of ${subject.id}: ${evidence.cableCount} cables end there (${context?.['cables']})`,
  remedy: () => 'Look which cable is in the port, and correct the ends of the others.',
}

export const portRecordedTwice: FindingKind<{ timesCount: number }> = {
  id: 'ETH305', name: 'port-recorded-twice', since, retired, severity: 'warning',
  meaning: 'An item lists two network ports of the same name, so that a cable does not tell which it ends at. The first is taken for both.',
  message: ({ subject, evidence, context }) => `${subject.id}: port ${context?.['port']} is listed ${evidence.timesCount} times`,
  remedy: () => 'Give each port the name that is printed beside it, or remove the row that is there once too often.',
}

export const uplinkSlow: FindingKind<{ speedMbitPerS: number; devicesMbitPerS: number }> = {
  id: 'ETH307', name: 'uplink-slower-than-devices', since, retired, severity: 'note',
  meaning: 'Two parts of a network are joined by a link that is slower than links on both its sides. It is where the network will be full first.',
  message: ({ subject, evidence, context }) =>
    `Link ${subject.id} between ${context?.['from']} and ${context?.['to']}: ${say('speedMbitPerS', evidence.speedMbitPerS)} (${context?.['reason']}), `
    + `${say('speedMbitPerS', evidence.devicesMbitPerS)} on both sides of it`,
  remedy: () => 'Move the link to a faster port at both ends where one is free.',
}

// --- power over the cable --------------------------------------------------------------------------------------------
export const portPowerTooLow: FindingKind<{ offeredPowerW: number; askedPowerW: number }> = {
  id: 'ETH102', name: 'port-power-too-low', since, retired, severity: 'error',
  meaning: 'A device that lives on its network cable asks for a power class that the port does not give. It stays dead, or starts with less than it needs.',
  message: ({ subject, evidence, context }) =>
    `${subject.id}: asks class ${context?.['asked']} (${sayForWorking('askedPowerW', evidence.askedPowerW)} at the device) of port ${context?.['port']} of ${context?.['switch']}, which gives `
    + (context?.['offered'] === undefined ? 'no power' : `class ${context['offered']} (${sayForWorking('offeredPowerW', evidence.offeredPowerW)})`),
  remedy: ({ context }) => `Move it to a port of class ${context?.['asked']} or more, put a power injector in its cable, or correct the classes.`,
}

export const reservedPowerAboveBudget: FindingKind<{ reservedPowerW: number }> = {
  id: 'ETH103', name: 'reserved-power-above-budget', since, retired, severity: 'warning',
  meaning: 'The classes of what hangs on a switch add up to more than it can give. A switch that reserves by class leaves the last device without power.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: budget } = sayAgainst('reservedPowerW', evidence.reservedPowerW, limit!.value)
    return `Switch ${subject.id}: the classes on its ports reserve ${actual}, power budget ${budget}`
  },
  remedy: () => 'Move a device to another switch or to a supply of its own, or set the ports to reserve what is drawn where the switch can.',
}

export const drawnPowerAboveBudget: FindingKind<{ drawnPowerW: number }> = {
  id: 'ETH104', name: 'drawn-power-above-budget', since, retired, severity: 'error',
  meaning: 'What hangs on a switch takes more power than it can give. Devices drop out, first of all when all run together.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: budget } = sayAgainst('drawnPowerW', evidence.drawnPowerW, limit!.value)
    return `Switch ${subject.id}: its devices take ${actual} with the loss in the cables, power budget ${budget}`
  },
  remedy: () => 'Move a device to another switch or to a supply of its own.',
}

export const powerAboveClass: FindingKind<{ networkPowerW: number }> = {
  id: 'ETH306', name: 'power-above-class', since, retired, severity: 'warning',
  meaning: 'A device is recorded to take more over its network cable than the class allows that it asks for. One of the two is wrong.',
  message: ({ subject, evidence, limit, context }) =>
    `${subject.id}: takes ${sayForWorking('networkPowerW', evidence.networkPowerW)} over its network cable, class ${context?.['asked']} allows ${sayForWorking('networkPowerW', limit!.value)}`,
  remedy: () => 'Correct the power or the class by the plate of the device.',
}

export const powerVoltageLow: FindingKind<{ powerVoltageV: number }> = {
  id: 'ETH308', name: 'power-voltage-below-type', since, retired, severity: 'warning',
  meaning: 'A switch is recorded to supply its ports at less than the standard asks for the highest class that it offers.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: least } = sayAgainst('powerVoltageV', evidence.powerVoltageV, limit!.value)
    return `Switch ${subject.id}: supplies its ports at ${actual}, class ${context?.['offered']} needs at least ${least}`
  },
  remedy: () => 'Correct the voltage or the class of the ports by the plate of the switch.',
}

// --- rings and streams -----------------------------------------------------------------------------------------------
export const ringUnprotected: FindingKind<{ linkCount: number }> = {
  id: 'ETH108', name: 'network-ring', since, retired, severity: 'error',
  meaning: 'Network cables make a ring, and nothing on it is recorded to keep a ring from doing harm. Broadcasts go round for ever and the whole network stands still.',
  message: ({ subject, evidence, context }) => `${subject.id}: on a ring of ${evidence.linkCount} ${evidence.linkCount === 1 ? 'link' : 'links'} (${context?.['links']}) through ${context?.['items']} without loop protection`,
  remedy: () => 'Pull one cable of the ring, or switch loop protection on at a switch of it and record that.',
}

export const loadAboveSpeed: FindingKind<{ streamsMbitPerS: number }> = {
  id: 'ETH107', name: 'streams-above-speed', since, retired, severity: 'error',
  meaning: 'Steady streams need more of a link than it can carry. Pictures break up, and radar or sonar with them.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: speed } = sayAgainst('streamsMbitPerS', evidence.streamsMbitPerS, limit!.value)
    return `Link ${subject.id} from ${context?.['from']} to ${context?.['to']}: streams of ${actual}, speed ${speed} (${context?.['reason']})`
  },
  remedy: () => 'Use faster ports for this link, lower the rate of a stream, or move its receiver to the same switch.',
}

export const loadAbovePlan: FindingKind<{ loadPercent: number; streamsMbitPerS: number }> = {
  id: 'ETH303', name: 'streams-above-plan', since, retired, severity: 'warning',
  meaning: 'Steady streams take so much of a link that charts, updates and voice have little room left.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = sayAgainst('loadPercent', evidence.loadPercent, limit!.value)
    return `Link ${subject.id} from ${context?.['from']} to ${context?.['to']}: streams of ${say('streamsMbitPerS', evidence.streamsMbitPerS)} are ${actual} of its speed, to plan with ${most}`
  },
  remedy: () => 'Use faster ports for this link before more is added to it, or lower the rate of a stream.',
}

// --- wireless and outside --------------------------------------------------------------------------------------------
export const wirelessSecurityWeak: FindingKind<{}> = {
  id: 'ETH304', name: 'wireless-security-weak', since, retired, severity: 'warning',
  meaning: 'A wireless network that is not for guests is open, or secured by a method that is easily broken: whoever is in the harbour can reach what hangs on it.',
  message: ({ subject, context }) => `Wireless network ${subject.id} "${context?.['name']}": ${context?.['how']}, and not for guests`,
  remedy: () => 'Set WPA2 or WPA3 with a passphrase of its own, and record it.',
}

export const wirelessSecurityNotRecorded: FindingKind<{}> = {
  id: 'ETH204', name: 'wireless-security-not-recorded', since, retired, severity: 'note',
  meaning: 'How a wireless network is secured is not recorded.',
  message: ({ subject, context }) => `Wireless network ${subject.id} "${context?.['name']}": how it is secured is not recorded`,
  remedy: () => 'Record the method, for example WPA3, or that it is open.',
}

export const outsideLinkWithoutEquipment: FindingKind<{}> = {
  id: 'ETH202', name: 'outside-link-without-equipment', since, retired, severity: 'warning',
  meaning: 'A link to the outside names no equipment that is on board and makes it, so that nobody knows what to switch on or look at when it is lost.',
  message: ({ subject, context }) => `Outside link ${subject.id}: ${context?.['words']}`,
  remedy: () => 'Name the router, modem or terminal that makes it.',
}

export const antennaNotJoined: FindingKind<{}> = {
  id: 'ETH203', name: 'antenna-cable-not-recorded', since, retired, severity: 'warning',
  meaning: 'An antenna of a link to the outside has no cable on record that leads to the equipment.',
  message: ({ subject, context }) => `Outside link ${subject.id}: no antenna cable joins ${context?.['antenna']} to ${context?.['equipment']}`,
  remedy: () => 'Record the antenna cable with both ends, or fit it.',
}

export const findingKinds = [
  linkTooLong, portPowerTooLow, reservedPowerAboveBudget, drawnPowerAboveBudget, loadAboveSpeed, ringUnprotected, severalCablesOnPort,
  outsideLinkWithoutEquipment, antennaNotJoined, wirelessSecurityNotRecorded,
  loadAbovePlan, wirelessSecurityWeak, portRecordedTwice, powerAboveClass, uplinkSlow, powerVoltageLow,
  ...addressFindingKinds,
] as const
