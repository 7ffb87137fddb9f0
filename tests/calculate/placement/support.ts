/** A motor boat of 15 m for the tests of placement. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { PlacementResults } from '../../../src/model/results/placement.js'
import type { Equipment, Identity, NavigationLight, NavigationLightKind, Position, Structure, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { lightTypes } from '../../../src/references/tables/navigation-lights.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'

const stability: Identity['stability'] = { centreOfGravityM: [6, 0, 0.5], metacentricHeightM: 0.9, includesEquipment: false, gunwaleHeightM: 1.5 }
export const aBoat = (given: Partial<Vessel> = {}, identity: Partial<Identity> = {}): Vessel => {
  const blank = aVessel()
  return aVessel({
    identity: { ...blank.identity, name: 'Sandpiper', lengthM: 15, beamM: 4.4, draughtM: 1.9, displacementKg: 9000, propulsion: 'power-driven', stability, ...identity },
    conditions: { ...blank.conditions, horizontalFieldMicroT: 18 }, ...given,
  })
}
export const withStability = (given: Partial<Identity['stability']>): Partial<Identity> => ({ stability: { ...stability, ...given } })

export const placementOf = (vessel: Vessel): PlacementResults => calculate(vessel, bases[vessel.basis]).placement
export const idsOf = (vessel: Vessel): readonly string[] => placementOf(vessel).findings.map(({ id, subject }) => `${id} ${subject.id}`)
export const reasonsOf = (vessel: Vessel): readonly string[] => placementOf(vessel).notAssessed.map(({ subjectTag, reason }) => `${subjectTag}: ${reason}`)

/** The same without what is said of lights where there are none. */
export const reasonsBesideLights = (vessel: Vessel): readonly string[] => reasonsOf(vessel).filter(reason => !reason.includes('navigation lights she needs'))

export const aLight = (tag: string, kind: NavigationLightKind, positionM: Position | null, given: Partial<NavigationLight> = {}): Equipment =>
  anEquipment({ tag, kind: 'navigation light', positionM, navigationLight: { kind, rangeNmi: 6, arcDeg: lightTypes[kind].sector.widthDeg, intensityCd: null, ...given } })
/** All that a power-driven vessel of 12 to 50 m needs, where it belongs. */
export const lightsAsTheyShould: readonly Equipment[] = [
  aLight('E1', 'port side', [8, 1.6, 2.5]), aLight('E2', 'starboard side', [8, -1.6, 2.5]), aLight('E3', 'masthead', [8.5, 0, 8]), aLight('E4', 'stern', [0.1, 0, 1.5]), aLight('E5', 'all-round white', [5, 0, 9]),
]
export const aStructure = (tag: string, fromM: Position, toM: Position): Structure => ({ tag, name: `Structure ${tag}`, fromM, toM, notes: null })
