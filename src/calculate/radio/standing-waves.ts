/** Measured standing wave ratios: what they mean at the antenna, behind the loss of the cable between. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import { lossOf, type RadioChain, type StandingWaveCheck } from '../../model/results/radio.js'
import type { Measurement, Tag, Vessel } from '../../model/vessel.js'
import { makersStandingWave, usualStandingWave } from '../../references/basis/radio-rules.js'
import { say } from '../../units/format.js'
import { exceeds } from '../compare.js'
import { runMethod } from '../run-method.js'
import { standingWaveAboveLimit, standingWaveHidden, standingWaveNotExplained } from './findings.js'
import { returnLossMethod } from './return-loss.calc.js'
import { isExplained, standingWaveAtAntennaMethod } from './standing-wave-at-antenna.calc.js'
import { standingWaveBehindCableMethod } from './standing-wave-behind-cable.calc.js'

export function standingWaveChecks(vessel: Vessel, chains: readonly RadioChain[]): readonly StandingWaveCheck[] {
  const checks = vessel.measurements.flatMap(measurement => (measurement.vswrFactor === null ? [] : [checkOf(vessel, chains, measurement, measurement.vswrFactor)]))
  return checks.map(check => ({ ...check, supersededBy: laterThan(check, checks) }))
}

/** Of readings at one place the last counts: by day, then as entered. */
function laterThan(check: StandingWaveCheck, checks: readonly StandingWaveCheck[]): string | null {
  const same = checks.filter(({ subjectTag, readAtTag, antennaTag }) => subjectTag === check.subjectTag && readAtTag === check.readAtTag && antennaTag === check.antennaTag)
  const last = same.toSorted((a, b) => ((a.date ?? '') < (b.date ?? '') ? -1 : (a.date ?? '') > (b.date ?? '') ? 1 : 0)).at(-1)!
  return last === check ? null : last.number
}

function checkOf(vessel: Vessel, chains: readonly RadioChain[], { number, date, subjectTag, atTag }: Measurement, readVswrFactor: number): StandingWaveCheck {
  const place = placeOf(vessel, chains, subjectTag, atTag)
  const { antennaTag, lossDb } = place
  const limit = limitOf(vessel, antennaTag)
  const without = (method: string) => ({ status: 'not computed', method, reason: place.gap ?? '' }) as const
  const known = antennaTag !== null && lossDb !== null
  const about = { number, date, subjectTag, readAtTag: place.readAtTag, antennaTag, readVswrFactor, limit, lossDb, supersededBy: null }
  const atAntenna: StandingWaveCheck['atAntenna'] = known ? runMethod(standingWaveAtAntennaMethod, { readVswrFactor, lossDb }) : without(standingWaveAtAntennaMethod.id)
  return {
    ...about,
    reading: runMethod(returnLossMethod, { vswrFactor: readVswrFactor }),
    expected: mayReadAt(limit, known ? lossDb : null, place.gap ?? ''),
    atAntenna, gap: place.gap,
    verdict: known && !isExplained({ readVswrFactor, lossDb }) ? 'not explained'
      : antennaTag !== null && exceeds(readVswrFactor, limit) ? 'above limit'
        : !known ? 'not assessed'
          : atAntenna.status === 'computed' && exceeds(atAntenna.output.antennaVswrFactor, limit) ? 'hidden by loss' : 'within',
  }
}

/** What an antenna on its limit gives behind so much loss. */
export const mayReadAt = (limit: Limit, lossDb: number | null, gap: string): StandingWaveCheck['expected'] =>
  (lossDb === null ? { status: 'not computed', method: standingWaveBehindCableMethod.id, reason: gap }
    : runMethod(standingWaveBehindCableMethod, { antennaVswrFactor: limit.value, lossDb }))

export function limitOf(vessel: Vessel, antennaTag: Tag | null): Limit {
  const stated = antennaTag === null ? null : lookup(vessel).equipment.get(antennaTag)?.antenna?.vswrFactor ?? null
  return stated === null ? usualStandingWave : { relation: 'at most', value: stated, citation: makersStandingWave }
}

interface Place { readonly readAtTag: Tag; readonly antennaTag: Tag | null; readonly lossDb: number | null; readonly gap: string | null }

/** Where on a way to an antenna the reading was taken, and what is lost from there on. */
function placeOf(vessel: Vessel, chains: readonly RadioChain[], subjectTag: Tag, atTag: Tag | null): Place {
  const nowhere = (gap: string): Place => ({ readAtTag: atTag ?? subjectTag, antennaTag: null, lossDb: null, gap })
  const ways = chains.filter(({ antennaTag }) => antennaTag !== null).map(chain => ({ chain, stations: stationsOf(vessel, chain) }))
    .filter(({ chain, stations }) => stations.includes(subjectTag) || chain.steps.some(step => step.is === 'cable' && step.cableTag === subjectTag))
  if (ways.length === 0) return nowhere(`${subjectTag} is on no recorded way from a transmitter to an antenna`)
  const meant = atTag === null ? ways : ways.filter(({ stations }) => stations.includes(atTag))
  if (meant.length === 0) return nowhere(`${atTag} is not on the way that ${subjectTag} is on`)
  const antennas = [...new Set(meant.map(({ chain }) => chain.antennaTag!))]
  if (antennas.length > 1) return nowhere(`${subjectTag} is on the ways to ${inWords(antennas)}, and the reading does not say which is meant`)
  const [{ chain, stations }] = meant as [typeof meant[number]]
  const cableAt = chain.steps.findIndex(step => step.is === 'cable' && step.cableTag === subjectTag)
  // Looked at towards the antenna: at a splitter from its far side, of a cable from its near end.
  const from = stations.lastIndexOf(atTag ?? (cableAt === -1 ? subjectTag : stations[cableAt]!))
  const losses = chain.steps.slice(from).map(lossOf)
  const lossDb = losses.some(loss => loss === null) ? null : losses.reduce<number>((sum, loss) => sum + loss!, 0)
  return { readAtTag: stations[from]!, antennaTag: chain.antennaTag, lossDb, gap: lossDb === null ? 'the loss between there and the antenna is not known' : null }
}

/** The items on a way: before each step, and the antenna at its end. */
function stationsOf(vessel: Vessel, { itemTag, steps }: RadioChain): readonly Tag[] {
  const { cables } = lookup(vessel)
  const stations = [itemTag]
  for (const step of steps) {
    const here = stations.at(-1)!
    const cable = step.is === 'cable' ? cables.get(step.cableTag)! : null
    stations.push(cable === null ? here : cable.from.tag === here ? cable.to.tag : cable.from.tag)
  }
  return stations
}

export const standingWaveFindings = (checks: readonly StandingWaveCheck[]): readonly Finding[] =>
  checks.filter(({ supersededBy }) => supersededBy === null).flatMap(({ number, verdict, readVswrFactor, limit, lossDb, atAntenna, readAtTag, antennaTag }) => {
    const facts = { subject: { kind: 'measurement', id: number }, field: 'vswrFactor', limit, context: { at: readAtTag, antenna: antennaTag ?? '', loss: lossDb === null ? '' : say('lossDb', lossDb) } }
    switch (verdict) {
      case 'above limit': return [find(standingWaveAboveLimit, { ...facts, evidence: { vswrFactor: readVswrFactor } })]
      case 'not explained': return [find(standingWaveNotExplained, { ...facts, limit: null, evidence: { vswrFactor: readVswrFactor, lossDb: lossDb! } })]
      case 'hidden by loss': return atAntenna.status === 'computed'
        ? [find(standingWaveHidden, { ...facts, evidence: { antennaVswrFactor: atAntenna.output.antennaVswrFactor, vswrFactor: readVswrFactor } })] : []
      default: return []
    }
  })
