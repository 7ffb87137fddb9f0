/** Limits of networks that stand in no basis. */
import type { Limit } from '../../findings/finding.js'
import type { Citation } from '../../references/bibliography.js'

export const channelLimit: Limit = { relation: 'at most', value: 100, citation: { source: 'iso-iec-11801', place: 'copper channel of 100 m: 90 m of fixed cable and 10 m of cords' } }

/** What runs without a break should leave room for the rest: charts, updates, voice. */
export const plannedLoad: Limit = { relation: 'at most', value: 70, citation: { source: 'common-practice', place: 'steady streams take at most 70 % of a link' } }
export const linkSpeed: Citation = { source: 'ieee-802-3', place: 'full duplex: each direction has the whole speed' }

/** A cable of fewer cores has no four pairs. */
export const twoPairSpeedMbitPerS = 100
export const fourPairsCoreCount = 8
