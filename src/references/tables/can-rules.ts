/** What limits a CAN bus: its cable, lengths, number of devices, supply. Published by several makers of cables and devices, and not everywhere alike. */
import { atMost, type Limit } from '../../findings/finding.js'
import type { BusCable, CanBus } from '../../model/vessel.js'
import type { Citation } from '../bibliography.js'

const guides = (place: string): Citation => ({ source: 'bus-cable-guides', place })

export interface BusCableRow {
  /** Of one conductor of the supply pair. */
  readonly resistanceOhmPerKm: number
  /** Through one stretch of the backbone. */
  readonly currentA: number
  readonly backboneM: number
}

export const busCables: Readonly<Record<BusCable, BusCableRow>> = {
  light: { resistanceOhmPerKm: 57, currentA: 3, backboneM: 100 },
  mid: { resistanceOhmPerKm: 13.2, currentA: 4, backboneM: 200 },
  heavy: { resistanceOhmPerKm: 13.2, currentA: 8, backboneM: 200 },
}
export const busCableCitation: Citation = guides('supply pair 22 AWG in light cable (5.7 Ω/100 m), 16 AWG in mid and heavy cable (1.32 Ω/100 m)')
export const segmentCurrentLimit = (cable: BusCable): Limit => ({ relation: 'at most', value: busCables[cable].currentA, citation: guides(`current through ${cable} cable`) })

/** The kind that limits most, of those that a backbone is made of. */
export const lightestOf = (cables: readonly BusCable[]): BusCable | null => (['light', 'mid', 'heavy'] as const).find(kind => cables.includes(kind)) ?? null

/** 1 LEN. */
export const currentPerLenA = 0.05
export const lenCitation: Citation = guides('load equivalency number: 50 mA each, rounded up')

export interface BusRules {
  backboneM(cable: BusCable): Limit
  readonly dropM: Limit
  readonly dropsTogetherM: Limit | null
  readonly devices: Limit
}
const engineBus = (place: string): Citation => ({ source: 'sae-j1939', place })

export const busRules: Readonly<Record<CanBus['protocol'], BusRules>> = {
  'nmea 2000': {
    backboneM: cable => atMost(busCables[cable].backboneM, guides(`backbone of ${cable} cable`)),
    dropM: atMost(6, guides('length of one drop')),
    dropsTogetherM: atMost(78, guides('sum of the drops')),
    devices: atMost(50, guides('devices on one bus')),
  },
  'j1939': {
    backboneM: () => atMost(40, engineBus('parts 11 and 15: length of the bus')),
    dropM: atMost(3, engineBus('part 15: length of a stub; part 11, of shielded cable, allows 1 m')),
    dropsTogetherM: null,
    devices: atMost(30, engineBus('part 11: nodes on one segment; part 15 allows 10')),
  },
}

export const terminatorOhm = 120
export const terminatorCitation: Citation = guides('a terminator of 120 Ω at each end of the backbone')
/** A reading further off than this share is not that of the terminators recorded. */
export const terminationTolerance = { sharePercent: 10, citation: { source: 'common-practice', place: 'resistance between the data wires within 10 %' } as Citation } as const

/** From the power insertion point to any tee: of a bus that lives on a battery, and of a regulated supply of its own. */
export const supplyDropLimit = {
  battery: atMost(1.5, guides('voltage drop of the backbone, 12 V battery')),
  regulated: atMost(3, guides('voltage drop of the backbone, isolated supply of 13.8 V')),
} as const
export const lowestDeviceV: Limit = { relation: 'at least', value: 9, citation: { source: 'iec-61162-3', place: 'supply of a device: 9 V to 16 V' } }
export const highestDeviceV: Limit = { relation: 'at most', value: 16, citation: { source: 'iec-61162-3', place: 'supply of a device: 9 V to 16 V' } }
export const deviceLenLimit: Limit = atMost(20, guides('a device takes at most 1 A (LEN 20) from the bus'))
/** What protects a supply pair is rated at most as what may flow in it. */
export const supplyProtectionLimit = (cable: BusCable): Limit => atMost(busCables[cable].currentA, guides(cable === 'light' ? 'fuse of a bus of light cable: 3 A' : `current through ${cable} cable`))

/** Both protocols. */
export const bitRateBitPerS = 250_000
export const bitRateCitation: Citation = guides('250 kbit/s')
/** Above this there is no telling what waits: room for bursts, and for what is not in the sum. */
export const plannedLoadLimit: Limit = atMost(50, { source: 'common-practice', place: 'bus load in planning at most 50 % with every frame at its longest' })

/** Readings that differ by no more agree with the sum. */
export const readingTolerance = {
  voltageV: 0.3,
  loadPercent: 5,
  citation: { source: 'common-practice', place: 'voltage at a tee within 0.3 V, bus load within 5 points of a hundred' } as Citation,
} as const

/** A device added later: its drop as long and of such cable as the rules let it be. */
export const newDrop = { lengthM: 6, cable: 'light' } as const
/** The device that is tried at every tee. */
export const trialLenNumber = 4
