/** What is wrong with a circuit's device, from its checks. */
import { type Finding, find } from '../../findings/finding.js'
import type { CircuitProtection } from '../../model/results.js'
import { type DeviceCheck, doesNotFall } from '../../model/results/protective-devices.js'
import type { Vessel } from '../../model/vessel.js'
import { sayAgainst } from '../../units/format.js'
import {
  aboveMakersFuse, belowMakersFuse, capacityBelowClass, capacityBelowCurrent, chargingAboveRating, deviceTooFar, ratingNotFalling, smallForContinuousLoad,
  voltageRatingTooLow,
} from './findings.js'
import type { ProtectedCircuit } from './rating-order.js'

export function deviceFindings(vessel: Vessel, circuit: ProtectedCircuit, check: DeviceCheck, rating: CircuitProtection | undefined, main: boolean): readonly Finding[] {
  const { device, ratedCurrentA } = circuit.protection
  return [
    ...capacity(circuit, check, main),
    ...(check.againstVoltage?.within === false
      ? [find(voltageRatingTooLow, { ...about(circuit), limit: check.againstVoltage.limit, evidence: { voltageRatingV: check.againstVoltage.value }, context: { device } })] : []),
    ...distance(circuit, check),
    ...order(circuit, check),
    ...makers(circuit, check),
    ...(check.continuous?.comparison?.within === false && check.continuous.least.status === 'computed' ? [find(smallForContinuousLoad, {
      ...about(circuit), limit: check.continuous.comparison.limit,
      evidence: { ratedCurrentA, continuousCurrentA: check.continuous.least.input.continuousCurrentA },
      context: { mode: `mode ${vessel.operatingModes.find(({ tag }) => tag === check.continuous!.modeTag)?.name ?? check.continuous.modeTag}` },
    })] : []),
    // A charging circuit's design current is what is put in: the rating against it has a finding already.
    ...(check.charging?.within === false && rating?.againstLoad?.within !== false
      ? [find(chargingAboveRating, { ...about(circuit), limit: check.charging.limit, evidence: { currentA: check.charging.value, ratedCurrentA } })] : []),
  ]
}

const about = ({ tag }: ProtectedCircuit) => ({ subject: { kind: 'circuit', id: tag }, field: 'protection' })

/** The class is pointed out only where the current itself is within, or not known. */
function capacity(circuit: ProtectedCircuit, { againstCurrent, againstClass, capability }: DeviceCheck, main: boolean): readonly Finding[] {
  const { device } = circuit.protection
  if (againstCurrent?.within === false) {
    return [find(capacityBelowCurrent, {
      ...about(circuit), limit: againstCurrent.limit,
      evidence: { prospectiveShortCircuitCurrentA: againstCurrent.value, interruptingCapacityA: againstCurrent.limit.value },
      context: { device, byType: capability.from === 'type' ? ' by its type' : '' },
    })]
  }
  if (againstClass?.within !== false) return []
  const { quantity, value, limit } = againstClass
  const printed = sayAgainst(quantity, value, limit.value)
  return [find(capacityBelowClass, {
    ...about(circuit), limit, evidence: quantity === 'voltageRatingV' ? { voltageRatingV: value } : { interruptingCapacityA: value },
    context: { device, what: quantity === 'voltageRatingV' ? 'voltage rating' : 'interrupting capacity', place: main ? 'main' : 'branch', actual: printed.actual, limit: printed.limit },
  })]
}

function distance(circuit: ProtectedCircuit, { distance: { comparison } }: DeviceCheck): readonly Finding[] {
  if (comparison?.within !== false) return []
  return [find(deviceTooFar, { ...about(circuit), limit: comparison.limit, evidence: { distanceMm: comparison.value }, context: { source: circuit.fedFromTag } })]
}

function order(circuit: ProtectedCircuit, check: DeviceCheck): readonly Finding[] {
  if (check.order === null || !doesNotFall(check.order)) return []
  const { aboveTag, comparison: { limit } } = check.order
  return [find(ratingNotFalling, {
    ...about(circuit), limit: null, evidence: { ratedCurrentA: circuit.protection.ratedCurrentA, upstreamRatedA: limit.value }, context: { above: aboveTag },
  })]
}

function makers(circuit: ProtectedCircuit, { motors }: DeviceCheck): readonly Finding[] {
  const { ratedCurrentA } = circuit.protection
  return motors.flatMap(({ loadTag, makersFuseA, againstMakers }) => {
    if (makersFuseA === null || againstMakers === null || againstMakers === 'equal') return []
    const kind = againstMakers === 'above' ? aboveMakersFuse : belowMakersFuse
    const limit = { relation: againstMakers === 'above' ? 'at most' : 'at least', value: makersFuseA, citation: { source: 'vessel-data', place: `maker’s fuse of ${loadTag}` } } as const
    return [find(kind, { ...about(circuit), limit, evidence: { ratedCurrentA, makersFuseA }, context: { load: loadTag } })]
  })
}
