/** Silence is no pass: a fact that is taken away leaves a reason that names it. */
import { describe, expect, it } from 'vitest'
import { aMeasurement, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { aPlace, radioBoat, radioOf, reasonsOf, scanner } from './support.js'

describe('an antenna', () => {
  it('of which one end of the range of frequencies is known is not said to suit', () => {
    const chain = (antenna: Parameters<typeof radioBoat>[1]) => radioOf(radioBoat({}, antenna)).chains[0]!.coversFrequency
    expect([chain({}), chain({ fromMHz: null }), chain({ toMHz: null }), chain({ fromMHz: null, toMHz: null })]).toEqual([true, null, null, null])
    expect([chain({ fromMHz: null, toMHz: 150 }), chain({ fromMHz: 160, toMHz: null })]).toEqual([false, false])
    expect(reasonsOf(radioOf(radioBoat({}, { fromMHz: null })), 'T11')).toContain('whether it suits VHF voice: its range of frequencies is not recorded')
  })
  it('of a VHF radio counts as a point without its length, and that is said', () => {
    const reason = 'what is near its upper part, and its middle for the range: the length of its radiating part is not recorded, so that it counts as a point'
    expect(reasonsOf(radioOf(radioBoat()), 'T11')).toContain(reason)
    expect(reasonsOf(radioOf(radioBoat({}, { lengthM: 2.4 })), 'T11')).not.toContain(reason)
  })
  it('that is commissioned has been measured', () => {
    const open = 'standing wave ratio: no reading towards it is recorded'
    const boat = (status: 'commissioned' | 'fitted', read: boolean) => {
      const { equipment, ...rest } = radioBoat({ measurements: read ? [aMeasurement({ number: '1', subjectTag: 'T1', vswrFactor: 1.2 })] : [] })
      return reasonsOf(radioOf({ ...rest, equipment: equipment.map(item => ({ ...item, status })) }), 'T11')
    }
    expect([boat('commissioned', false), boat('commissioned', true), boat('fitted', false)].map(reasons => reasons.includes(open))).toEqual([true, false, false])
  })
  it('of any use has a distance to others only with a position', () => {
    const vessel = aVessel({ equipment: [anEquipment({ tag: 'T8', kind: 'broadcast antenna' })] })
    expect(reasonsOf(radioOf(vessel), 'T8')).toEqual(['distance to other antennas: its position is not recorded'])
  })
})

it.each(['mobile-data router', 'wireless access point'])('a %s transmits, recorded or not', kind => {
  expect(reasonsOf(radioOf(aVessel({ equipment: [anEquipment({ tag: 'K3', kind })] })), 'K3')).toEqual(['loss, range and exposure: what it transmits is not recorded'])
})

describe('a radar with its maker’s distance', () => {
  const reasons = (radar: Parameters<typeof scanner>[2]) => reasonsOf(radioOf(aVessel({ equipment: [scanner('B1', [4, 0, 5], { safeDistanceM: 0.5, ...radar })], standingPlaces: [aPlace('SP1', [0, 0, 1])] })), 'B1')
  it('still names what the limits of exposure lack', () => {
    expect(reasons({})).toEqual([])
    expect(reasons({ gainDbi: null })).toEqual(['distances by the limits of exposure: the gain of its antenna is not recorded'])
    expect(reasons({ frequencyMHz: null })).toEqual(['distances by the limits of exposure: its frequency is not recorded'])
    expect(reasons({ pulseUs: null })).toEqual(['distances by the limits of exposure: neither its mean power nor peak power, pulse and repetition rate together are recorded'])
    expect(reasons({ horizontalBeamDeg: null })).toEqual(['distances by the limits of exposure while it turns: the width of its beam is not recorded'])
  })
})
