/** Motors and other loads with a high starting current: what their makers ask for, and whether the device carries the start. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed } from '../../model/results.js'
import type { MotorCheck } from '../../model/results/protective-devices.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import { deviceAdvice } from '../../references/basis/device-advice.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { roundingNoise } from '../../units/quantity.js'
import { exceeds } from '../compare.js'
import { segmentsTo } from '../feeding/segments.js'
import { runMethod } from '../run-method.js'
import { motorDeviceMethod } from './motor-device.calc.js'
import type { ProtectedCircuit } from './rating-order.js'
import { startingCurrentMethod } from './starting-current.calc.js'

export interface MotorChecks { readonly motors: readonly MotorCheck[]; readonly reasons: readonly string[] }

export function checkMotors(vessel: Vessel, circuit: ProtectedCircuit, feed: CircuitFeed | undefined): MotorChecks {
  const { equipment } = lookup(vessel)
  const motors = circuit.loadTags.flatMap(tag => {
    const load = equipment.get(tag)
    return load === undefined || load.status === 'removed' || !concerns(load) ? [] : [checkMotor(vessel, circuit, load, feed)]
  })
  return {
    motors,
    reasons: motors.flatMap(({ loadTag, ownFuse, makersFuseA, carriesStart, starting }) => [
      ...(ownFuse && makersFuseA !== null ? [`the fuse in the holder of ${loadTag} is not recorded, and its maker asks for a value`] : []),
      ...(starting !== null && carriesStart === null ? [`whether it carries the start of ${loadTag}, which is above its rating: its time-current curve is not recorded`] : []),
    ]),
  }
}

/** Driven by a motor, whatever it drives. The engine itself is none: its circuit feeds electronics. */
function isMotor({ kind }: Equipment): boolean {
  const { classLetter, draw } = equipmentKind(kind)
  return kind !== 'engine' && draw === 'load' && (classLetter === 'M' || classLetter === 'G')
}
const concerns = (load: Equipment): boolean => isMotor(load) || load.makersFuseA !== null || load.startingCurrentA !== null

function checkMotor(vessel: Vessel, { protection }: ProtectedCircuit, load: Equipment, feed: CircuitFeed | undefined): MotorCheck {
  const { tag, makersFuseA, startingCurrentA } = load
  const { ratedCurrentA } = protection
  const parts = feed?.currentParts ?? []
  const otherCurrentA = parts.reduce((sum, part) => sum + (part.tag === tag ? 0 : part.currentA * part.demandFactor), 0)
  const starting = startingCurrentA === null ? null : runMethod(startingCurrentMethod, { startingCurrentA, otherCurrentA })
  const runningCurrentA = parts.find(part => part.tag === tag)?.currentA ?? null
  const ownFuse = passesFuseHolder(vessel, feed, tag)
  return {
    loadTag: tag,
    ownFuse,
    makersFuseA,
    againstMakers: makersFuseA === null || ownFuse ? null
      : Math.abs(ratedCurrentA - makersFuseA) <= roundingNoise * makersFuseA ? 'equal' : ratedCurrentA > makersFuseA ? 'above' : 'below',
    starting,
    carriesStart: starting?.status === 'computed'
      && !exceeds(starting.output.highestCurrentA, { relation: 'at most', value: ratedCurrentA, citation: deviceAdvice.motor.citation }) ? true : null,
    advice: makersFuseA !== null || runningCurrentA === null || !isMotor(load) || feed?.supplyForm === 'ac' ? null
      : runMethod(motorDeviceMethod, { runningCurrentA, ratingFactor: deviceAdvice.motor.ratingFactor }),
  }
}

function passesFuseHolder(vessel: Vessel, feed: CircuitFeed | undefined, loadTag: Tag): boolean {
  const { equipment } = lookup(vessel)
  return segmentsTo(feed?.segments ?? [], loadTag).some(({ nearTag }) => equipment.get(nearTag)?.kind === 'fuse holder')
}
