/** Radar scanners: what stands in their beam. */
import { isThere } from '../../model/lookup.js'
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { AntennaUse, BeamMeeting, Part, RadarBeam } from '../../model/results/radio.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { sayBoth } from '../../units/format.js'
import { isScanner } from './chains.js'
import { antennaCrossesBeam, skyAntennaInBeam } from './findings.js'
import { apart, elevationFrom, partOf, personAt } from './geometry.js'

export interface Scanner { readonly item: Equipment; readonly part: Part | null }

export const scannersOf = (vessel: Vessel): readonly Scanner[] =>
  vessel.equipment.filter(item => isThere(item) && isScanner(item)).map(item => ({ item, part: partOf(item) }))

/** Of a scanner its beam is taken to go out level, all round, from the middle of its part. */
export function radarBeamOf(vessel: Vessel, { item, part }: Scanner, antennas: readonly AntennaUse[]): RadarBeam {
  const verticalBeamDeg = item.radar?.verticalBeamDeg ?? null
  const scannerHeightM = part === null ? null : (part.footM + part.topM) / 2
  return {
    tag: item.tag, scannerHeightM, verticalBeamDeg,
    gap: scannerHeightM === null ? 'its position is not recorded' : verticalBeamDeg === null ? 'the height of its beam is not recorded' : null,
    meets: part === null || verticalBeamDeg === null ? [] : [
      ...antennas.flatMap(antenna => (antenna.part === null ? [] : [meeting(antenna.tag, 'antenna', antenna.part, part, verticalBeamDeg)])),
      ...vessel.standingPlaces.map(place => meeting(place.tag, 'person', personAt(place), part, verticalBeamDeg)),
    ],
  }
}

function meeting(tag: string, of: BeamMeeting['of'], met: Part, scanner: Part, verticalBeamDeg: number): BeamMeeting {
  const { horizontalM } = apart(met, scanner)
  const middleM = (scanner.footM + scanner.topM) / 2
  const elevationDeg = elevationFrom(middleM, met, horizontalM)
  const { distanceM } = apart(met, { ...scanner, footM: middleM, topM: middleM })
  return { tag, of, horizontalM, distanceM, elevationDeg, inside: Math.abs(elevationDeg) <= verticalBeamDeg / 2 }
}

export function beamFindings(radars: readonly RadarBeam[], antennas: readonly AntennaUse[]): readonly Finding[] {
  const useOf = new Map(antennas.map(({ tag, use }) => [tag, use]))
  const looksUp = (tag: string): boolean => useOf.get(tag) === 'gnss' || useOf.get(tag) === 'satellite'
  return radars.flatMap(({ tag, verticalBeamDeg, meets }) => {
    const inside = meets.filter(met => met.of === 'antenna' && met.inside)
    const crossing = inside.filter(met => !looksUp(met.tag)).map(met => met.tag)
    return [
      ...inside.filter(met => looksUp(met.tag)).map(met => find(skyAntennaInBeam, {
        subject: { kind: 'equipment', id: met.tag }, field: 'positionM', evidence: { elevationDeg: Math.abs(met.elevationDeg) },
        limit: { relation: 'at least', value: verticalBeamDeg! / 2, citation: { source: 'common-practice', place: 'antennas out of the beam of a radar' } },
        context: { radar: tag, distance: sayBoth('distanceM', met.horizontalM) },
      })),
      ...(crossing.length === 0 ? [] : [find(antennaCrossesBeam, {
        subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: {}, limit: null, context: { antennas: inWords(crossing) },
      })]),
    ]
  })
}
