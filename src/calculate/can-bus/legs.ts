/** One way along the backbone from its power insertion: current, drop and what arrives, stretch by stretch. */
import type { Backbone, BusDevice, BusSegment, Insertion, Leg, Side, Stretch, StretchDrop, TeeSupply } from '../../model/results/can-bus.js'
import { currentPerLenA, lowestDeviceV, segmentCurrentLimit, supplyDropLimit } from '../../references/tables/can-rules.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { lumpedDropMethod, stretchDropMethod } from './supply-drop.calc.js'

/** A section and where it is fed. */
export interface Reach { readonly backbone: Backbone; readonly from: number; readonly to: number; readonly position: number }

/** Positions on one side, from the insertion outwards, each with the cables that lead there from the one before. */
function* outwards({ backbone: { spans }, from, to, position }: Reach, side: Side): Generator<{ readonly near: number; readonly far: number; readonly segments: readonly BusSegment[] }> {
  if (side === 'towards the last end') for (let i = position + 1; i <= to; i++) yield { near: i - 1, far: i, segments: spans[i]! }
  else for (let i = position - 1; i >= from; i--) yield { near: i + 1, far: i, segments: spans[i + 1]!.toReversed() }
}

const lenOf = (device: BusDevice | null): number => device?.loadEquivalencyNumber ?? 0

export function legOf(reach: Reach, side: Side): Leg {
  const { stations } = reach.backbone
  const steps = [...outwards(reach, side)]
  const lastTee = steps.findLastIndex(({ far }) => stations[far]!.part.kind === 'tee')
  const lastDevice = steps.findLastIndex(({ far }) => stations[far]!.device !== null)
  const total = steps.reduce((sum, { far }) => sum + lenOf(stations[far]!.device), 0)
  let beyond = total
  let totalDropV = 0
  let distanceM = 0
  let [lengthM, momentLenM, highestOhmPerM] = [0, 0, 0]
  const stretches: Stretch[] = []
  steps.slice(0, lastTee + 1).forEach(({ near, far, segments }, i) => {
    for (const segment of segments) {
      const drop = dropOf(segment, beyond)
      if (drop === null) continue
      totalDropV += drop.output.voltageDropV
      distanceM += drop.input.lengthM
      if (i <= lastDevice) highestOhmPerM = Math.max(highestOhmPerM, drop.input.resistanceOhmPerM)
      stretches.push({
        cableTag: segment.cableTag, nearTag: stations[near]!.part.tag, farTag: stations[far]!.part.tag, loadEquivalencyNumber: beyond, drop, totalDropV,
        current: segment.busCable === null ? null : compare('currentA', drop.input.currentA, segmentCurrentLimit(segment.busCable)),
      })
    }
    const here = lenOf(stations[far]!.device)
    momentLenM += here * distanceM
    beyond -= here
    if (i <= lastDevice) lengthM = distanceM
  })
  const lumped = total === 0 || lengthM === 0 ? null : runMethod(lumpedDropMethod, { loadEquivalencyNumber: total, lengthM, resistanceOhmPerM: highestOhmPerM })
  return { side, loadEquivalencyNumber: total, lengthM, momentLenM, lumped: lumped?.status === 'computed' ? lumped : null, stretches }
}

/** Null where its length or resistance is not known. */
export function dropOf({ lengthM, resistanceOhmPerM }: BusSegment, loadEquivalencyNumber: number): StretchDrop | null {
  if (lengthM === null || resistanceOhmPerM === null) return null
  const drop = runMethod(stretchDropMethod, { resistanceOhmPerM, lengthM, currentA: currentPerLenA * loadEquivalencyNumber })
  return drop.status === 'computed' ? drop : null
}

/** Every tee of the section with what arrives there, in the order of the backbone. */
export function teesOf(reach: Reach, insertion: Insertion, legs: readonly Leg[]): readonly TeeSupply[] {
  const { stations } = reach.backbone
  return legs.flatMap(({ side, stretches }) => {
    let [dropV, distanceM, loopResistanceOhm, next] = [0, 0, 0, 0]
    return [...outwards(reach, side)].flatMap(({ far, segments }): readonly TeeSupply[] => {
      for (const stretch of stretches.slice(next, next + segments.length)) {
        dropV += stretch.drop.output.voltageDropV
        distanceM += stretch.drop.input.lengthM
        loopResistanceOhm += 2 * stretch.drop.input.lengthM * stretch.drop.input.resistanceOhmPerM
      }
      next += segments.length
      const { part, device, drop } = stations[far]!
      if (part.kind !== 'tee') return []
      const voltageV = insertion.voltageV === null ? null : insertion.voltageV - dropV
      return [{
        position: far, tag: part.tag, side, distanceM, loopResistanceOhm, dropV,
        drop: compare('supplyDropV', dropV, supplyDropLimit[insertion.regulated ? 'regulated' : 'battery']),
        voltageV,
        device: device === null || drop === null || voltageV === null ? null : atDevice(device, drop, voltageV),
      }]
    })
  }).toSorted((a, b) => a.position - b.position)
}

function atDevice(device: BusDevice, drop: BusSegment, teeV: number): TeeSupply['device'] {
  const dropCable = dropOf(drop, lenOf(device))
  if (dropCable === null) return null
  const voltageV = teeV - dropCable.output.voltageDropV
  return { tag: device.tag, dropCable, voltageV, lowest: compare('voltageV', voltageV, lowestDeviceV) }
}
