/** How far antennas, radars and eyes on board reach, by their height and that of usual partners. */
import { type AntennaUse, middleM, type OwnRange, type RadarBeam } from '../../model/results/radio.js'
import type { Vessel } from '../../model/vessel.js'
import { radioPartners } from '../../references/tables/radio-partners.js'
import { runMethod } from '../run-method.js'
import { personAt } from './geometry.js'
import { radarHorizonMethod } from './radar-horizon.calc.js'
import { radioHorizonMethod } from './radio-horizon.calc.js'
import { sightDistanceMethod } from './sight-distance.calc.js'

const methodOf = { radio: radioHorizonMethod, radar: radarHorizonMethod, eye: sightDistanceMethod } as const

export const rangesOf = (vessel: Vessel, antennas: readonly AntennaUse[], radars: readonly RadarBeam[]): readonly OwnRange[] => [
  ...antennas.flatMap(({ tag, use, part }) => (use !== 'vhf' || part === null ? [] : [rangeOf('radio', tag, middleM(part))])),
  ...radars.flatMap(({ tag, scannerHeightM }) => (scannerHeightM === null ? [] : [rangeOf('radar', tag, scannerHeightM)])),
  ...vessel.standingPlaces.map(place => rangeOf('eye', place.tag, personAt(place).topM)),
]

const rangeOf = (of: OwnRange['of'], tag: string, heightM: number): OwnRange => ({
  of, tag, heightM,
  to: radioPartners.map(partner => ({ partnerKey: partner.key, outcome: runMethod(methodOf[of], { ownHeightM: heightM, otherHeightM: partner.heightM }) })),
})
