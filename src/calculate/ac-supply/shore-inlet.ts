/** What is asked of a shore inlet: its main breaker, polarity, galvanic isolation; and of every source, its earth. */
import { find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Requirement, ShoreChecks, ShoreMain } from '../../model/results/ac-supply.js'
import type { Circuit } from '../../model/vessel.js'
import { liveConductorCount, polarizedSystem } from '../../references/basis/ac-rules.js'
import { say } from '../../units/format.js'
import { compare } from '../compare.js'
import {
  galvanicIsolationMissing, neutralBondedOnShorePower, neutralNotBonded, polarityNotShown, shoreBreakerAboveInlet, shoreBreakerPoles,
  shoreBreakerTooFar,
} from './findings.js'
import { lengthOf } from './inlet-distance.js'
import { doubtful, met, missed, notAssessed, notRequired } from './requirement.js'
import { type Judged, shoreResidualCurrent, type ShoreSupply } from './residual-current.js'
import type { AcOutput } from './supplied.js'

export function shoreChecks(shore: ShoreSupply, source: AcOutput): { readonly checks: ShoreChecks; readonly findings: readonly Judged['findings'][number][] } {
  const mains = shore.supplied.filter(({ way }) => way.length === 1).map(({ circuit }) => {
    const judged = {
      rating: mainRating(shore, source, circuit),
      distance: mainDistance(shore, circuit),
      poles: mainPoles(shore, source, circuit),
      residualCurrent: shoreResidualCurrent(shore, circuit),
    }
    const main: ShoreMain = {
      circuitTag: circuit.tag, rating: judged.rating.requirement, distance: judged.distance.requirement, poles: judged.poles.requirement,
      residualCurrent: judged.residualCurrent.requirement,
    }
    return { main, findings: Object.values(judged).flatMap(({ findings }) => findings) }
  })
  const polarity = polarityOf(shore, source)
  const galvanic = galvanicIsolationOf(shore, source)
  return {
    checks: { mains: mains.map(({ main }) => main), polarity: polarity.requirement, galvanicIsolation: galvanic.requirement },
    findings: [...mains.flatMap(({ findings }) => findings), ...polarity.findings, ...galvanic.findings],
  }
}

const only = (requirement: Requirement): Judged => ({ requirement, findings: [] })
const noDevice = 'no protective device is recorded'

function mainRating({ rules, inletTag }: ShoreSupply, { output: { ratedCurrentA: inletA } }: AcOutput, { tag, protection }: Circuit): Judged {
  if (protection === null) return only(missed(noDevice))
  if (inletA === null) return only(notAssessed(`the rated current of ${inletTag} is not recorded`))
  const limit = { relation: 'at most', value: inletA, citation: rules.inletRatingCitation } as const
  const comparison = compare('ratedCurrentA', protection.ratedCurrentA, limit)
  const words = `rated ${say('ratedCurrentA', protection.ratedCurrentA)}`
  if (comparison.within) return only(met(words, comparison))
  const finding = find(shoreBreakerAboveInlet, {
    subject: { kind: 'circuit', id: tag }, field: 'protection', evidence: { ratedCurrentA: protection.ratedCurrentA }, limit, context: { inlet: inletTag },
  })
  return { requirement: missed(words, comparison), findings: [finding] }
}

function mainDistance({ feeding, lengths, rules, inletTag }: ShoreSupply, { tag, protection }: Circuit): Judged {
  if (protection === null) return only(missed(noDevice))
  const segments = feeding.byCircuit.get(tag)?.supplySegments ?? []
  const distanceM = protection.distanceM ?? (segments.length === 0 ? null : lengthOf(lengths, segments))
  if (distanceM === null) {
    return only(notAssessed(segments.length === 0
      ? `no cable from ${inletTag} to the device and no distance is recorded`
      : `the length of ${inWords(segments.map(({ cableTag }) => cableTag))} is not known`))
  }
  const limit = rules.inletDistanceM
  const comparison = compare('distanceM', distanceM, limit)
  const words = `${say('distanceM', distanceM)} of conductor`
  if (comparison.within) return only(met(words, comparison))
  const finding = find(shoreBreakerTooFar, {
    subject: { kind: 'circuit', id: tag }, field: 'protection', evidence: { distanceM }, limit, context: { inlet: inletTag },
  })
  return { requirement: missed(words, comparison), findings: [finding] }
}

function mainPoles({ rules }: ShoreSupply, { output: { nominalVoltageV } }: AcOutput, { tag, protection }: Circuit): Judged {
  if (protection === null) return only(missed(noDevice))
  const { poles } = protection
  if (poles === null) return only(notAssessed('how many poles the device opens is not recorded'))
  const needed = liveConductorCount(nominalVoltageV)
  if (poles >= needed) return only(met(`${poles} poles`))
  const finding = find(shoreBreakerPoles, {
    subject: { kind: 'circuit', id: tag }, field: 'protection', evidence: { polesCount: poles },
    limit: { relation: 'at least', value: needed, citation: rules.polesCitation },
  })
  return { requirement: missed(`${poles === 1 ? '1 pole' : `${poles} poles`} of ${needed} live conductors`), findings: [finding] }
}

/** Only where one of two conductors is to be neutral: elsewhere, and behind a transformer, there is nothing to reverse. */
function polarityOf({ vessel, supplied, rules, inletTag }: ShoreSupply, { item, output: { nominalVoltageV } }: AcOutput): Judged {
  if (item.polarityIndicatorTag !== null) return only(met(`${item.polarityIndicatorTag} shows reversed polarity`))
  if (nominalVoltageV < polarizedSystem.fromV || nominalVoltageV > polarizedSystem.toV) return only(notRequired(`not asked for at ${say('nominalVoltageV', nominalVoltageV)}, where plugs turn either way: breakers that open both conductors settle it`))
  const branches = supplied.map(({ circuit }) => circuit).filter(({ loadTags }) => !loadTags.some(tag => isDistributionPoint(vessel, tag) || kindOf(vessel, tag) === 'isolation transformer'))
  if (supplied.length > 0 && branches.length === 0) return only(notRequired('an isolation transformer makes the polarity on board'))
  const poles = branches.map(({ protection }) => protection?.poles ?? null)
  const single = branches.filter(({ protection }) => protection?.poles === 1).map(({ tag }) => tag)
  if (single.length > 0) {
    const finding = find(polarityNotShown, {
      subject: { kind: 'equipment', id: inletTag }, field: 'polarityIndicatorTag', evidence: {}, limit: null,
      context: { circuits: inWords(single), single: single.length === 1 ? 'opens' : 'open', citation: rules.polarityCitation.place },
    })
    return { requirement: missed(`nothing shows reversed polarity, and ${inWords(single)} ${single.length === 1 ? 'opens' : 'open'} one conductor only`), findings: [finding] }
  }
  return only(branches.length === 0 || poles.some(count => count === null)
    ? notAssessed('no polarity indicator is recorded, and neither are the poles of all branch breakers')
    : met('all branch breakers open both conductors, so polarity does not matter'))
}

const kindOf = (vessel: ShoreSupply['vessel'], tag: string): string | undefined => lookup(vessel).equipment.get(tag)?.kind

const isolators: readonly string[] = ['galvanic isolator', 'isolation transformer']
function galvanicIsolationOf({ vessel, inletTag }: ShoreSupply, { item: { galvanicIsolationTag: tag } }: AcOutput): Judged {
  const named = tag === null ? undefined : lookup(vessel).equipment.get(tag)
  if (named !== undefined && isolators.includes(named.kind) && named.status !== 'removed') return only(met(`${named.tag} ${named.name}`))
  const words = named === undefined ? 'no galvanic isolator or isolation transformer is recorded'
    : named.status === 'removed' ? `${named.tag} has been removed` : `${named.tag} is neither a galvanic isolator nor an isolation transformer`
  const finding = find(galvanicIsolationMissing, {
    subject: { kind: 'equipment', id: inletTag }, field: 'galvanicIsolationTag', evidence: {}, limit: null, context: { words },
  })
  return { requirement: doubtful(words), findings: [finding] }
}

/** Neutral and protective conductor are joined at the source, and nowhere else. The source of a shore inlet is ashore. */
export function neutralOf({ item, output: { neutralBonded } }: AcOutput): Judged {
  const about = { subject: { kind: 'equipment', id: item.tag }, field: 'outputs', evidence: {}, limit: null }
  if (neutralBonded === null) return only(notAssessed('whether neutral and protective conductor are joined there is not recorded'))
  if (item.kind === 'shore inlet') {
    return neutralBonded
      ? { requirement: missed('neutral and protective conductor are joined on board'), findings: [find(neutralBondedOnShorePower, about)] }
      : only(met('not joined on board; the joint is ashore'))
  }
  return neutralBonded
    ? only(met('neutral and protective conductor are joined at this source'))
    : { requirement: missed('neutral and protective conductor are not joined at this source'), findings: [find(neutralNotBonded, about)] }
}
