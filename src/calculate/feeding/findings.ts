/** Findings about what feeds what (FED). */
import type { FindingKind } from '../../findings/finding.js'
import { say } from '../../units/format.js'

export const supplyOutsideRange: FindingKind<{ nominalVoltageV: number }> = {
  id: 'FED101',
  name: 'supply-outside-range',
  since: '0.2.0',
  retired: null,
  severity: 'error',
  meaning: 'An item is on a circuit whose nominal voltage is outside the supply range that its maker gives: it will not work, or will be destroyed.',
  message: ({ subject, evidence, context }) => `Circuit ${subject.id}: ${context?.load} is made for ${context?.range}, the circuit has ${say('nominalVoltageV', evidence.nominalVoltageV)}`,
  remedy: ({ context }) => `Move ${context?.load} to a system of its voltage, or correct its supply range.`,
}

export const circuitWithoutCables: FindingKind<{}> = {
  id: 'FED201',
  name: 'circuit-without-cables',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'A circuit lists loads, and no cable is entered that leaves its protective device.',
  message: ({ subject, context }) => `Circuit ${subject.id}: no cable is entered to ${context?.loads}`,
  remedy: ({ subject }) => `Enter the cables of the circuit, the first with ${subject.id} as one end.`,
}

export const demandOnNoCircuit: FindingKind<{}> = {
  id: 'FED202',
  name: 'demand-on-no-circuit',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'An item has a current or a power recorded, and no circuit lists it as a load.',
  message: ({ subject }) => `${subject.id} draws power and no circuit lists it`,
  remedy: ({ subject }) => `Add ${subject.id} to the loads of the circuit that feeds it.`,
}

export const terminalNotNamed: FindingKind<{}> = {
  id: 'FED203',
  name: 'terminal-not-named',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'A cable ends at a terminal block, which joins only cables on the same terminal, and its terminal is not named.',
  message: ({ subject, context }) => `Cable ${subject.id}: its terminal at ${context?.block} is not named, so what it is joined to is not known`,
  remedy: ({ context }) => `Write the terminal after the tag, for example ${context?.block}:1.`,
}

export const powerCableOnNoCircuit: FindingKind<{}> = {
  id: 'FED204',
  name: 'power-cable-on-no-circuit',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'A power cable is not reached from any circuit, so nothing about it can be assessed.',
  message: ({ subject, context }) => `Cable ${subject.id}: no circuit reaches it, from ${context?.from} to ${context?.to}`,
  remedy: () => 'Write the tag of the circuit as the end at its protective device, or enter the cable that is missing before it.',
}

export const distributionPointNotFed: FindingKind<{ circuitCount: number }> = {
  id: 'FED205',
  name: 'distribution-point-not-fed',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'Circuits are fed from a panel or busbar that no circuit lists as its load, or from a source that has been removed, so no source is reached.',
  message: ({ subject, evidence: { circuitCount } }) =>
    `Nothing feeds ${subject.id}, from which ${circuitCount === 1 ? 'one circuit is' : `${circuitCount} circuits are`} fed`,
  remedy: ({ subject }) => (subject.kind === 'battery' || subject.kind === 'equipment' ? `Name the source that took the place of ${subject.id}.` : `List ${subject.id} as a load of the circuit that feeds it.`),
}

export const outputNotNamed: FindingKind<{}> = {
  id: 'FED206',
  name: 'output-not-named',
  since: '0.2.0',
  retired: null,
  severity: 'warning',
  meaning: 'A circuit is fed from equipment with several outputs, and which of them is meant is not said, so its voltage is not known.',
  message: ({ subject, context }) => `Circuit ${subject.id}: which output of ${context?.source} feeds it is not known`,
  remedy: ({ context }) => `Write the terminal after the tag: ${context?.source}: and one of ${context?.terminals}.`,
}

export const loadNotReached: FindingKind<{}> = {
  id: 'FED301',
  name: 'load-not-reached',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'A circuit lists a load that its cables do not reach.',
  message: ({ subject, context }) => `Circuit ${subject.id}: its cables do not reach ${context?.loads}`,
  remedy: () => 'Enter the cable that is missing, correct an end of one, or take the load off the list.',
}

export const loadNotListed: FindingKind<{}> = {
  id: 'FED302',
  name: 'load-not-listed',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'A cable of a circuit leads to something that the circuit does not list as a load, so its current is not counted.',
  message: ({ subject, context }) => `Circuit ${subject.id}: cable ${context?.cable} leads to ${context?.load}, which the circuit does not list`,
  remedy: ({ context }) => `Add ${context?.load} to the loads of the circuit, or correct the end of cable ${context?.cable}.`,
}

export const circuitsJoined: FindingKind<{}> = {
  id: 'FED303',
  name: 'circuits-joined',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The cables of one circuit lead to the protective device of another, so a fault on one is fed through both.',
  message: ({ subject, context }) => `Circuit ${subject.id}: cable ${context?.cable} leads to circuit ${context?.other}`,
  remedy: () => 'Correct the end of the cable; where the boat is wired so, part the circuits.',
}

export const cableLoop: FindingKind<{}> = {
  id: 'FED304',
  name: 'cable-loop',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'A cable joins two things that other cables join already. How the current divides is not known, so the cable is left out of the calculations.',
  message: ({ subject, context }) => `Cable ${subject.id}: other cables join ${context?.ends} already`,
  remedy: () => 'Correct an end of the cable; enter alike cables laid in parallel as one, with "parallel" for their number.',
}

export const cableWithoutProtection: FindingKind<{}> = {
  id: 'FED305',
  name: 'cable-without-protection',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'A power cable is joined to a battery, busbar or panel, and no circuit with its protective device comes between.',
  message: ({ subject, context }) => `Cable ${subject.id}: it is live from ${context?.point} and belongs to no circuit`,
  remedy: ({ context }) =>
    `Enter the circuit, with its protection or the reason why there is none, and write its tag in place of ${context?.point} as the end of the cable.`,
}

export const severalFeeders: FindingKind<{}> = {
  id: 'FED306',
  name: 'several-feeders',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'Several circuits feed a panel or busbar at once, or none is normally closed, so what it draws through which is not known.',
  message: ({ subject, context }) => `${subject.id} is fed by ${context?.circuits}; how the current divides is not assessed`,
  remedy: () => 'Mark the circuits that are normally open, so that one feeds it in normal use.',
}

export const feedingRing: FindingKind<{}> = {
  id: 'FED307',
  name: 'feeding-ring',
  since: '0.1.0',
  retired: null,
  severity: 'error',
  meaning: 'Circuits feed one another round and round, and none of them is fed from a source.',
  message: ({ subject, context }) => `Circuit ${subject.id}: ${context?.ring}, so no source is reached`,
  remedy: () => 'Correct what the circuits are fed from, or what they list as loads.',
}

export const removedLoadListed: FindingKind<{}> = {
  id: 'FED308',
  name: 'removed-load-listed',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'A circuit still lists a load that has been removed; its current is not counted.',
  message: ({ subject, context }) => `Circuit ${subject.id}: ${context?.loads} on its list, but removed`,
  remedy: () => 'Take what has been removed off the list.',
}

export const findingKinds = [
  supplyOutsideRange, circuitWithoutCables, demandOnNoCircuit, terminalNotNamed, powerCableOnNoCircuit, distributionPointNotFed, outputNotNamed,
  loadNotReached, loadNotListed, circuitsJoined, cableLoop, cableWithoutProtection, severalFeeders, feedingRing,
  removedLoadListed,
] as const
