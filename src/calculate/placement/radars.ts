/** Radar scanners: what stands in their beam, and how near the water they see. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import type { Gap } from '../../model/results/gap.js'
import type { RadarPlacement } from '../../model/results/placement.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { isIn, united, widthOf } from '../geometry.js'
import { runMethod } from '../run-method.js'
import type { Judged } from './compasses.js'
import { radarBlindAhead } from './findings.js'
import { radarBlindDistanceMethod } from './radar-blind-distance.calc.js'
import { hiddenBy, standsIn } from './structures.js'

export function radarPlacements(vessel: Vessel): Judged<RadarPlacement> {
  const scanners = vessel.equipment.filter(({ kind, radar, status }) => status !== 'removed' && (kind === 'radar scanner' || radar !== null))
  const placed = scanners.map(scanner => placementOf(vessel, scanner))
  return { placed, notAssessed: scanners.flatMap((scanner, i) => gapsOf(vessel, scanner, placed[i]!)), findings: placed.flatMap(findingsOf) }
}

function placementOf(vessel: Vessel, { tag, positionM, radar }: Equipment): RadarPlacement {
  const verticalBeamDeg = radar?.verticalBeamDeg ?? null
  if (positionM === null || verticalBeamDeg === null) {
    const reason = positionM === null ? 'its position is not recorded' : 'the height of its beam is not recorded'
    return { tag, blindDistance: { status: 'not computed', method: radarBlindDistanceMethod.id, reason }, blind: null }
  }
  const blindDistance = runMethod(radarBlindDistanceMethod, { heightM: positionM[2], verticalBeamDeg })
  if (vessel.structures.length === 0) return { tag, blindDistance, blind: null }
  const by = hiddenBy(vessel, positionM, { lowestDeg: -verticalBeamDeg / 2, highestDeg: verticalBeamDeg / 2 })
  const sectors = united(by.flatMap(each => each.sectors))
  return { tag, blindDistance, blind: { by, sectors, ahead: sectors.some(sector => isIn(sector, 0)) } }
}

function gapsOf(vessel: Vessel, { tag, positionM }: Equipment, { blindDistance, blind }: RadarPlacement): readonly Gap[] {
  return [
    ...(blindDistance.status === 'not computed' ? [{ subjectTag: tag, reason: `blind sector and blind distance: ${blindDistance.reason}` }]
      : blind === null ? [{ subjectTag: tag, reason: 'blind sector: no structure is recorded' }] : []),
    ...standsIn(vessel, positionM).map(structure => ({ subjectTag: tag, reason: `blind sector from ${structure}: its position lies inside it` })),
  ]
}

function findingsOf({ tag, blind }: RadarPlacement): readonly Finding[] {
  if (blind === null || !blind.ahead) return []
  const ahead = blind.by.filter(({ sectors }) => sectors.some(sector => isIn(sector, 0)))
  return [find(radarBlindAhead, {
    subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { blindSectorDeg: widthOf(united(ahead.flatMap(({ sectors }) => sectors))) }, limit: null,
    context: { by: inWords(ahead.map(({ structureTag }) => structureTag)) },
  })]
}
