/** Findings about routes, lengths and wireways (WWY). */
import type { FindingKind } from '../../findings/finding.js'
import { say, sayAgainst } from '../../units/format.js'

export const conduitOverfilled: FindingKind<{ fillPercent: number; cableCount: number }> = {
  id: 'WWY101',
  name: 'conduit-overfilled',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The cables in a conduit take more of its inside cross-section than the rule for easy pulling and cooling allows. It is a rule for buildings, used as advice.',
  message: ({ subject, evidence, limit }) => {
    const fill = sayAgainst('fillPercent', evidence.fillPercent, limit?.value ?? evidence.fillPercent)
    return `Wireway ${subject.id}: ${evidence.cableCount === 1 ? 'one cable fills' : `${evidence.cableCount} cables fill`} ${fill.actual} of the conduit, limit ${fill.limit}`
  },
  remedy: () => 'Use a conduit with a larger bore, or take some of the cables another way.',
}

export const placeNotRecorded: FindingKind<{ cableCount: number }> = {
  id: 'WWY201',
  name: 'place-not-recorded',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'Cables end at something whose zone is not recorded, so their ways and the surroundings they pass are not known.',
  message: ({ subject, evidence: { cableCount } }) =>
    `${subject.id} has no zone: ${cableCount === 1 ? 'one cable that ends there has' : `${cableCount} cables that end there have`} no known way`,
  remedy: ({ subject }) => `Enter the zone of ${subject.id}.`,
}

export const placesNotJoined: FindingKind<{ cableCount: number }> = {
  id: 'WWY202',
  name: 'places-not-joined',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'Cables run between two places that no wireways join, so their ways and lengths are not known.',
  message: ({ subject, evidence: { cableCount }, context }) =>
    `No wireways lead from ${subject.id} to ${context?.to}: ${cableCount === 1 ? 'one cable between them has' : `${cableCount} cables between them have`} no known way`,
  remedy: ({ subject, context }) => `Enter the wireways between ${subject.id} and ${context?.to}, or the length of each cable.`,
}

export const routeBroken: FindingKind<{}> = {
  id: 'WWY301',
  name: 'route-broken',
  since: '0.1.0',
  retired: null,
  severity: 'error',
  meaning: 'The wireways named for a cable do not join one end to the other in the order written.',
  message: ({ subject, context }) => `Cable ${subject.id}: its route is broken: ${context?.gap}`,
  remedy: () => 'Write the wireways in order from the first end to the second, or leave the route out to have the shortest way worked out.',
}

export const declaredLengthShort: FindingKind<{ cableLengthM: number; wirewayLengthM: number }> = {
  id: 'WWY302',
  name: 'declared-length-short',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The length given for a cable is less than that of the wireways it is said to run through.',
  message: ({ subject, evidence: { cableLengthM, wirewayLengthM } }) => {
    const length = sayAgainst('lengthM', cableLengthM, wirewayLengthM)
    return `Cable ${subject.id}: the length given is ${length.actual}, the wireways of its route add up to ${length.limit}`
  },
  remedy: () => 'Measure the cable again, or correct its route or the lengths of the wireways.',
}

export const conduitMayJam: FindingKind<{ jamRatioFactor: number; boreMm: number; meanDiameterMm: number }> = {
  id: 'WWY303',
  name: 'conduit-may-jam',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'Three cables whose diameter is about a third of the bore can wedge side by side in a bend while they are pulled in.',
  message: ({ subject, evidence }) =>
    `Wireway ${subject.id}: three cables of ${say('meanDiameterMm', evidence.meanDiameterMm)} in a bore of ${say('boreMm', evidence.boreMm)} can jam, ratio ${say('jamRatioFactor', evidence.jamRatioFactor)}`,
  remedy: () => 'Pull the cables in together with a lubricant, or use another bore.',
}

export const findingKinds = [conduitOverfilled, placeNotRecorded, placesNotJoined, routeBroken, declaredLengthShort, conduitMayJam] as const
