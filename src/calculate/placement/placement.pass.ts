/** Placement: compasses, transducers, navigation lights, radar, mass and moments. */
import { isThere } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { PlacementResults, PositionReference } from '../../model/results/placement.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { aisReferenceMethod } from './ais-reference.calc.js'
import { compassPlacements } from './compasses.js'
import { lightsOf } from './lights.js'
import { momentsOf } from './moments.js'
import { radarPlacements } from './radars.js'
import { transducerPlacements } from './transducers.js'

export function placementPass(vessel: Vessel, basis: Basis, before: Upstream): PlacementResults {
  const compasses = compassPlacements(vessel, basis, before)
  const lights = lightsOf(vessel)
  const radars = radarPlacements(vessel)
  const transducers = transducerPlacements(vessel)
  const references = positionReferences(vessel)
  const moments = momentsOf(vessel)
  return {
    compasses: compasses.placed,
    lights: lights.lights,
    radars: radars.placed,
    transducers: transducers.placed,
    positionReferences: references.placed,
    moments: moments.moments,
    notAssessed: [compasses, lights, radars, transducers, references, moments].flatMap(({ notAssessed }) => notAssessed),
    findings: [compasses, lights, radars, transducers, moments].flatMap(({ findings }) => findings),
  }
}

/** What receives the position of the boat. */
const positionKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['gnss receiver', 'gnss antenna'])

/** Only where there is an AIS transceiver to be told. */
function positionReferences({ equipment, identity: { lengthM, beamM, name } }: Vessel): { readonly placed: readonly PositionReference[]; readonly notAssessed: readonly Gap[] } {
  const there = equipment.filter(isThere)
  if (!there.some(({ kind }) => kind === 'ais transceiver')) return { placed: [], notAssessed: [] }
  if (lengthM === null || beamM === null) {
    const missing = lengthM !== null ? 'the beam of the vessel is' : beamM !== null ? 'the length of the vessel is' : 'length and beam of the vessel are'
    return { placed: [], notAssessed: [{ subjectTag: name, reason: `reference point for AIS: ${missing} not recorded` }] }
  }
  const ofPositions = there.filter(({ kind }) => positionKinds.has(kind))
  const receivers = ofPositions.flatMap(({ tag, positionM }) => (positionM === null ? [] : [{ tag, positionM }]))
  const placed = receivers.map(({ tag, positionM: [forwardM, toPortM] }): PositionReference => ({ tag, dimensions: runMethod(aisReferenceMethod, { lengthM, beamM, forwardM, toPortM }) }))
  return {
    placed,
    notAssessed: [
      ...(ofPositions.length === 0 ? [{ subjectTag: name, reason: 'reference point for AIS: no receiver of positions is recorded' }] : []),
      ...ofPositions.filter(({ positionM }) => positionM === null).map(({ tag }) => ({ subjectTag: tag, reason: 'reference point for AIS: its position is not recorded' })),
      ...placed.flatMap(({ tag, dimensions }) => (dimensions.status === 'computed' ? [] : [{ subjectTag: tag, reason: `reference point for AIS: ${dimensions.reason}` }])),
    ],
  }
}
