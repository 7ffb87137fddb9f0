/** How far people must keep from what transmits, and whether somebody can stand nearer. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { grouped, lookup } from '../../model/lookup.js'
import type { AntennaUse, ExposedPlace, Exposure, ExposureOutcome, ExposureRow, Part, RadarBeam, RadioChain } from '../../model/results/radio.js'
import type { Radar, Vessel } from '../../model/vessel.js'
import { exposureLimitsAt, groundFactors } from '../../references/tables/exposure-limits.js'
import { say, sayBoth } from '../../units/format.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { exposureDistanceMethod } from './exposure-distance.calc.js'
import { personWithinExposure } from './findings.js'
import { apart, personAt } from './geometry.js'
import { radarMeanPowerMethod } from './radar-mean-power.calc.js'
import type { Scanner } from './radar.js'
import { radiatedPowerMethod } from './radiated-power.calc.js'
import { rotatingPowerMethod } from './rotating-power.calc.js'

const without = <M extends string>(method: M, reason: string) => ({ status: 'not computed', method, reason }) as const

/** Of each antenna that transmits, the transmitter that asks for the greatest distance. */
export function antennaExposures(vessel: Vessel, chains: readonly RadioChain[], antennas: readonly AntennaUse[]): readonly Exposure[] {
  const byAntenna = grouped(chains, ({ antennaTag }) => (antennaTag === null ? [] : [antennaTag]))
  return antennas.flatMap(antenna => {
    const exposures = (byAntenna.get(antenna.tag) ?? []).map(chain => ofChain(vessel, chain, antenna))
    return exposures.toSorted((a, b) => (b.deciding?.value ?? -1) - (a.deciding?.value ?? -1)).slice(0, 1)
  })
}

function ofChain(vessel: Vessel, chain: RadioChain, antenna: AntennaUse): Exposure {
  const { power, frequencyMHz, dutyPercent, itemTag, service } = chain
  const gainDbi = lookup(vessel).equipment.get(antenna.tag)?.antenna?.gainDbi ?? null
  // Without a known loss all of the power counts.
  const antennaPowerW = power.status === 'computed' ? power.output.antennaPowerW : chain.powerW
  const radiated: Exposure['radiated'] = gainDbi === null ? without(radiatedPowerMethod.id, `the gain of ${antenna.tag} is not recorded`) : runMethod(radiatedPowerMethod, { antennaPowerW, gainDbi })
  const steadyW = radiated.status === 'computed' ? radiated.output.radiatedPowerW : null
  const distances = steadyW === null ? [] : rowsAt(frequencyMHz, groundFactors.antenna.groundFactor, steadyW, dutyPercent < 100 ? steadyW * (dutyPercent / 100) : null)
  const deciding = decidingOf(distances, null)
  return {
    of: 'antenna', tag: antenna.tag, itemTag, service, frequencyMHz, lossTakenOff: power.status === 'computed', meanPower: null, radiated, rotating: null, distances, deciding, dutyPercent,
    people: deciding === null || antenna.part === null || antenna.use === 'satellite' ? [] : peopleNear(vessel, antenna.part, deciding, () => true),
    gap: radiated.status === 'not computed' ? radiated.reason : deciding === null ? 'no limit is known at its frequency'
      : antenna.use === 'satellite' ? 'it sends in a beam that follows its satellite; keep the distance that its maker states' : gapOfPlaces(vessel, antenna.part),
  }
}

export function radarExposure(vessel: Vessel, { item, part }: Scanner, beam: RadarBeam): Exposure {
  const { radar } = item
  const gainDbi = radar?.gainDbi ?? null
  const meanPower = meanPowerOf(radar)
  const meanW = radar?.meanPowerW ?? (meanPower?.status === 'computed' ? meanPower.output.meanPowerW : null)
  const radiated: Exposure['radiated'] = meanW === null ? without(radiatedPowerMethod.id, meanPower?.status === 'not computed' ? meanPower.reason : 'its mean power is not recorded')
    : gainDbi === null ? without(radiatedPowerMethod.id, 'the gain of its antenna is not recorded') : runMethod(radiatedPowerMethod, { antennaPowerW: meanW, gainDbi })
  const radiatedPowerW = radiated.status === 'computed' ? radiated.output.radiatedPowerW : null
  const rotating: Exposure['rotating'] = radiatedPowerW === null || radar?.horizontalBeamDeg == null ? null : runMethod(rotatingPowerMethod, { radiatedPowerW, horizontalBeamDeg: radar.horizontalBeamDeg })
  const frequencyMHz = radar?.frequencyMHz ?? null
  const distances = radiatedPowerW === null || frequencyMHz === null ? []
    : rowsAt(frequencyMHz, groundFactors.radar.groundFactor, radiatedPowerW, rotating?.status === 'computed' ? rotating.output.averagePowerW : null)
  const makers = radar?.safeDistanceM ?? null
  const deciding = decidingOf(distances, makers)
  const inBeam = new Map(beam.meets.filter(({ of }) => of === 'person').map(({ tag, inside }) => [tag, inside]))
  return {
    of: 'radar', tag: item.tag, itemTag: item.tag, service: 'Radar', frequencyMHz, lossTakenOff: false, meanPower, radiated, rotating, distances, deciding, dutyPercent: 100,
    // Where the height of the beam is not known everybody may be in it.
    people: deciding === null || part === null ? [] : peopleNear(vessel, part, deciding, tag => inBeam.get(tag) ?? true),
    gap: deciding !== null ? gapOfPlaces(vessel, part)
      : radiated.status === 'not computed' ? radiated.reason : frequencyMHz === null ? 'its frequency is not recorded' : 'no limit is known at its frequency',
  }
}

function meanPowerOf(radar: Radar | null): Exposure['meanPower'] {
  if (radar === null) return without(radarMeanPowerMethod.id, 'nothing about its pulses is recorded')
  if (radar.meanPowerW !== null) return null
  const { peakPowerW, pulseUs, repetitionHz } = radar
  if (peakPowerW === null || pulseUs === null || repetitionHz === null) return without(radarMeanPowerMethod.id, 'neither its mean power nor peak power, pulse and repetition rate together are recorded')
  return runMethod(radarMeanPowerMethod, { peakPowerW, pulseUs, repetitionHz })
}

function rowsAt(frequencyMHz: number, groundFactor: number, steadyW: number, usualW: number | null): readonly ExposureRow[] {
  return exposureLimitsAt(frequencyMHz).map(({ title, people, averaging, limitWPerM2: limitAt, citation }) => {
    const limitWPerM2 = limitAt(frequencyMHz)
    const distance = (radiatedPowerW: number): ExposureOutcome => runMethod(exposureDistanceMethod, { radiatedPowerW, groundFactor, limitWPerM2 })
    return {
      title, people, averaging, limit: { relation: 'at most', value: limitWPerM2, citation },
      steady: distance(steadyW), usual: usualW === null ? null : distance(usualW),
    }
  })
}

/** Up to the next 10 cm; what is only noise of the sum does not count. */
const roundedUp = (distanceM: number): number => Math.ceil(distanceM * 10 - 1e-6) / 10

/** The maker's distance, else what the law's limit for the public asks of a transmitter that sends without a break, or of a beam at rest. */
function decidingOf(rows: readonly ExposureRow[], makersM: number | null): Limit | null {
  if (makersM !== null) return { relation: 'at least', value: makersM, citation: { source: 'makers-data', place: 'distance that people must keep' } }
  const [row] = rows.filter(({ people }) => people === 'general')
  const distanceM = row?.steady.status === 'computed' ? row.steady.output.exposureDistanceM : null
  if (row === undefined || distanceM === null) return null
  const { citation, value } = row.limit
  return { relation: 'at least', value: roundedUp(distanceM), citation: { ...citation, place: `${citation.place}, ${say('limitWPerM2', value)} for the general public; rounded up` } }
}

const peopleNear = (vessel: Vessel, part: Part, deciding: Limit, inBeamOf: (placeTag: string) => boolean): readonly ExposedPlace[] =>
  vessel.standingPlaces.map(place => {
    const { distanceM } = apart(personAt(place), part)
    const inBeam = inBeamOf(place.tag)
    const comparison = compare('distanceM', distanceM, deciding)
    return { placeTag: place.tag, distanceM, inBeam, comparison, tooNear: !comparison.within && (inBeam || deciding.citation.source === 'makers-data') }
  })

const gapOfPlaces = ({ standingPlaces }: Vessel, part: Part | null): string | null =>
  (part === null ? 'its position is not recorded' : standingPlaces.length === 0 ? 'no place where people stand is recorded' : null)

export const exposureFindings = (exposures: readonly Exposure[]): readonly Finding[] => exposures.flatMap(exposure => {
  const [nearest, ...others] = exposure.people.filter(({ tooNear }) => tooNear).toSorted((a, b) => a.distanceM - b.distanceM)
  if (nearest === undefined) return []
  return [find(personWithinExposure, {
    subject: { kind: 'equipment', id: exposure.tag }, field: 'positionM', evidence: { distanceM: nearest.distanceM }, limit: exposure.deciding,
    context: {
      what: exposure.of === 'radar' ? 'Radar' : 'Antenna', place: nearest.placeTag,
      others: others.map(({ placeTag, distanceM }) => `; ${sayBoth('distanceM', distanceM)} from ${placeTag}`).join(''),
    },
  })]
})
