/** Radio: losses, range, antennas too near one another, exposure, standing waves, sight of the sky. */
import { isThere, lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { AntennaUse, Exposure, RadioChain, RadioResults } from '../../model/results/radio.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import type { Upstream } from '../upstream.js'
import { antennasOf, chainFindings, chainsOf, lossGaps } from './chains.js'
import { antennaExposures, exposureFindings, radarExposure } from './exposure.js'
import { beamFindings, radarBeamOf, scannersOf } from './radar.js'
import { rangesOf } from './ranges.js'
import { separationFindings, separationsOf } from './separation.js'
import { skyFindings, skyViewOf } from './sky.js'
import { standingWaveChecks, standingWaveFindings } from './standing-waves.js'

export function radioPass(vessel: Vessel, _basis: Basis, { routing }: Pick<Upstream, 'routing'>): RadioResults {
  const chains = chainsOf(vessel, routing)
  const antennas = antennasOf(vessel, chains)
  const scanners = scannersOf(vessel)
  const radars = scanners.map(scanner => radarBeamOf(vessel, scanner, antennas))
  const ranges = rangesOf(vessel, antennas, radars)
  const separations = separationsOf(vessel, chains, antennas, scanners)
  const exposures = [...antennaExposures(vessel, chains, antennas), ...scanners.map((scanner, i) => radarExposure(vessel, scanner, radars[i]!))]
  const skies = antennas.filter(({ use }) => use === 'gnss' || use === 'satellite').map(antenna => skyViewOf(vessel, antenna))
  const standingWaves = standingWaveChecks(vessel, chains)
  return {
    chains, antennas, ranges, separations, radars, exposures, skies, standingWaves,
    notAssessed: [
      ...silent(vessel),
      ...chains.flatMap(chainGaps),
      ...antennas.flatMap(antenna => antennaGaps(vessel, antenna)),
      ...radars.flatMap(({ tag, gap }) => (gap === null ? [] : [{ subjectTag: tag, reason: `what stands in its beam: ${gap}` }])),
      ...exposures.flatMap(({ tag, gap }) => (gap === null ? [] : [{ subjectTag: tag, reason: `exposure of people: ${gap}` }])),
      ...exposures.flatMap(radarGaps),
      ...skies.flatMap(({ tag, gap }) => (gap === null ? [] : [{ subjectTag: tag, reason: `view of the sky: ${gap}` }])),
      ...antennas.flatMap(antenna => unread(vessel, antenna, standingWaves)),
      ...standingWaves.flatMap(({ subjectTag, gap, supersededBy }) => (gap === null || supersededBy !== null ? [] : [{ subjectTag, reason: `standing wave ratio as measured: ${gap}` }])),
    ],
    findings: [
      ...chainFindings(vessel, chains), ...separationFindings(separations, antennas), ...beamFindings(radars, antennas),
      ...exposureFindings(exposures), ...skyFindings(skies), ...standingWaveFindings(standingWaves),
    ],
  }
}

const transmittingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['vhf transceiver', 'ais transceiver', 'mobile-data router', 'wireless access point'])

/** What transmits by its kind, and says nothing of it. */
const silent = (vessel: Vessel): readonly Gap[] => vessel.equipment
  .filter(item => isThere(item) && transmittingKinds.has(item.kind) && item.transmitters.length === 0)
  .map(({ tag }) => ({ subjectTag: tag, reason: 'loss, range and exposure: what it transmits is not recorded' }))

function chainGaps({ itemTag, service, antennaGap, antennaTag, steps, coversFrequency }: RadioChain): readonly Gap[] {
  if (antennaGap !== null) return [{ subjectTag: itemTag, reason: `loss and exposure of ${service}: ${antennaGap}` }]
  return [
    ...lossGaps(steps).map(reason => ({ subjectTag: itemTag, reason: `loss of ${service}: ${reason}` })),
    ...(coversFrequency === null ? [{ subjectTag: antennaTag!, reason: `whether it suits ${service}: its range of frequencies is not recorded` }] : []),
  ]
}

function antennaGaps(vessel: Vessel, { tag, use, part }: AntennaUse): readonly Gap[] {
  const gap = (reason: string): readonly Gap[] => [{ subjectTag: tag, reason }]
  if (part === null) return gap(use === 'vhf' ? 'range and distance to other antennas: its position is not recorded' : 'distance to other antennas: its position is not recorded')
  // A whip is metres long; what else stands about is small enough to count as a point.
  return use === 'vhf' && lookup(vessel).equipment.get(tag)?.antenna?.lengthM == null
    ? gap('what is near its upper part, and its middle for the range: the length of its radiating part is not recorded, so that it counts as a point') : []
}

/** Before commissioning nobody has read it yet. */
const unread = (vessel: Vessel, { tag, use, servesTags }: AntennaUse, readings: RadioResults['standingWaves']): readonly Gap[] =>
  (use === 'vhf' && servesTags.length > 0 && lookup(vessel).equipment.get(tag)?.status === 'commissioned' && !readings.some(({ antennaTag }) => antennaTag === tag)
    ? [{ subjectTag: tag, reason: 'standing wave ratio: no reading towards it is recorded' }] : [])

/** A maker's distance decides, and leaves open what the limits ask for. */
function radarGaps({ of, tag, deciding, distances, radiated, rotating }: Exposure): readonly Gap[] {
  if (of !== 'radar' || deciding === null) return []
  if (distances.length === 0) return [{ subjectTag: tag, reason: `distances by the limits of exposure: ${radiated.status === 'computed' ? 'its frequency is not recorded' : radiated.reason}` }]
  return rotating === null ? [{ subjectTag: tag, reason: 'distances by the limits of exposure while it turns: the width of its beam is not recorded' }] : []
}
