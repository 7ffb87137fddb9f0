/** What one more circuit brings to the feeders above it, by hand. */
import { describe, expect, it } from 'vitest'
import { feedersWith } from '../../../src/calculate/reserve/added-load.js'
import { reservePass } from '../../../src/calculate/reserve/index.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCircuit, anEquipment } from '../../support/vessel-builder.js'
import { breaker, changed, handBoat, upstreamOf } from './support.js'

function feedersAbove(vessel: Vessel, pointTag: string, currentA: number, demandFactor = 1) {
  const upstream = upstreamOf(vessel)
  const { byFeeder, byPoint } = reservePass(vessel, bases.iso, upstream)
  return feedersWith(vessel, upstream.feeding.byCircuit, byFeeder, byPoint.get(pointTag)!.chain, { currentA, demandFactor })
}
const currents = (feeders: ReturnType<typeof feedersAbove>) => feeders.map(({ circuitTag, beforeCurrentA, afterCurrentA, verdict }) => [circuitTag, beforeCurrentA, afterCurrentA, verdict])

describe('one more circuit', () => {
  it('adds its current to each feeder, the nearest first', () => {
    expect(currents(feedersAbove(handBoat(), 'A1', 8))).toEqual([['F2', 12.5, 20.5, 'fits'], ['F1', 12.5, 20.5, 'fits']])
    expect(currents(feedersAbove(handBoat(), 'X1', 8))).toEqual([['F1', 12.5, 20.5, 'fits']])
  })

  it('counts with its demand factor, and whole where it is the largest of all', () => {
    // 12.5 A + 0.25 · 8 A; and 12.5 A + 0.25 · 30 A = 20 A, less than the 30 A that it can draw alone.
    expect(currents(feedersAbove(handBoat(), 'A1', 8, 0.25))[0]).toEqual(['F2', 12.5, 14.5, 'fits'])
    expect(currents(feedersAbove(handBoat(), 'A1', 30, 0.25))[0]).toEqual(['F2', 12.5, 30, 'fits'])
  })

  it('grows a feeder above by the demand factor of the one below', () => {
    // F2 counts half in F1: 0.5 · 12.5 A, but never less than 12.5 A whole; with 8 A more F2 has 20.5 A, and so has F1.
    const vessel = handBoat({ circuits: changed(handBoat().circuits, 'F2', { demandFactor: 0.5 }) })
    expect(currents(feedersAbove(vessel, 'A1', 8))).toEqual([['F2', 12.5, 20.5, 'fits'], ['F1', 12.5, 20.5, 'fits']])
    // With 30 A beside it at the busbar: 0.5 · 12.5 A + 30 A = 36.25 A before, 0.5 · 20.5 A + 30 A = 40.25 A after.
    const beside = { ...vessel, equipment: [...vessel.equipment, anEquipment({ tag: 'E3', currentMaxA: 30 })], circuits: [...vessel.circuits, aCircuit({ tag: 'F3', fedFromTag: 'X1', loadTags: ['E3'], protection: breaker(40) })] }
    expect(currents(feedersAbove(beside, 'A1', 8))[1]).toEqual(['F1', 36.25, 40.25, 'fits'])
  })

  it('is added to a design current that the author gives', () => {
    const vessel = handBoat({ circuits: changed(handBoat().circuits, 'F2', { designCurrentA: 25 }) })
    expect(currents(feedersAbove(vessel, 'A1', 8))).toEqual([['F2', 25, 33, 'fits'], ['F1', 25, 33, 'fits']])
  })

  it('does not fit where it passes a limit, and does on it', () => {
    // 40 A fuse: 12.5 A + 27.5 A is on it.
    expect(currents(feedersAbove(handBoat(), 'A1', 27.5))[0]).toEqual(['F2', 12.5, 40, 'fits'])
    expect(currents(feedersAbove(handBoat(), 'A1', 27.6))[0]?.[3]).toBe('does not fit')
  })

  it('is not assessed above a current that is not known', () => {
    const vessel = handBoat({ equipment: changed(handBoat().equipment, 'E1', { currentMaxA: null }) })
    expect(currents(feedersAbove(vessel, 'A1', 8))).toEqual([['F2', null, null, 'not assessed'], ['F1', null, null, 'not assessed']])
  })
})
