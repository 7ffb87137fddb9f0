/** What a device can break, held against the current that can flow there, the class of its source, and the voltage. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed, Comparison } from '../../model/results.js'
import { type Capability, prospectiveA, type Prospective } from '../../model/results/protective-devices.js'
import type { Battery, Protection, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Citation } from '../../references/bibliography.js'
import { batteryClass, largeBank } from '../../references/tables/interrupting-capacity.js'
import { protectiveDevice, typicalCapacityA, typicalVoltageRatingV } from '../../references/tables/protective-devices.js'
import { compare } from '../compare.js'
import { bankOf } from '../sources/bank.js'
import { isMain } from './fault-current.js'

export interface CapabilityCheck {
  readonly capability: Capability
  readonly againstCurrent: Comparison | null
  readonly againstClass: Comparison | null
  readonly againstVoltage: Comparison | null
  readonly reasons: readonly string[]
}

/** The tables of types hold for d.c.; on a.c. only what is recorded of the device counts. */
export function capabilityOf(protection: Protection, feed: CircuitFeed | undefined): Capability {
  const device = feed?.supplyForm === 'ac' ? null : protectiveDevice(protection.device)
  const voltageV = feed?.nominalVoltageV ?? null
  const byType = device === null || voltageV === null ? null : typicalCapacityA(device, voltageV)
  const interruptingCapacityA = protection.interruptingCapacityA ?? byType
  return {
    interruptingCapacityA,
    voltageRatingV: protection.voltageRatingV ?? (device === null ? null : typicalVoltageRatingV(device)),
    from: protection.interruptingCapacityA !== null ? 'recorded' : interruptingCapacityA === null ? 'unknown' : 'type',
  }
}

export function checkCapability(vessel: Vessel, { devices }: Basis, protection: Protection, feed: CircuitFeed | undefined, prospective: Prospective): CapabilityCheck {
  const capability = capabilityOf(protection, feed)
  const { interruptingCapacityA, voltageRatingV } = capability
  const reasons: string[] = []
  const nominalVoltageV = feed?.nominalVoltageV ?? null

  if (nominalVoltageV === null) reasons.push('the nominal voltage is not known')
  else if (interruptingCapacityA === null) {
    reasons.push(voltageRatingV !== null && voltageRatingV < nominalVoltageV
      ? 'what it can break is not known at a voltage that it is not made for' : `the interrupting capacity of the ${protection.device} is not recorded`)
  }
  if (voltageRatingV === null) reasons.push(`the voltage rating of the ${protection.device} is not recorded`)

  const current = againstCurrent(interruptingCapacityA, prospective, capacityCitation(protection))
  if (current !== null && 'reason' in current) reasons.push(current.reason)
  const battery = lookup(vessel).batteries.get(feed?.sourceTag ?? '')
  const byClass = !devices.interruptingCapacity.byClass || battery === undefined || interruptingCapacityA === null
    ? null : againstBatteryClass(battery, isMain(vessel, feed), interruptingCapacityA, voltageRatingV)
  if (byClass !== null && 'reason' in byClass) reasons.push(byClass.reason)
  return {
    capability,
    againstCurrent: current === null || 'reason' in current ? null : current,
    againstClass: byClass === null || 'reason' in byClass ? null : byClass,
    againstVoltage: voltageRatingV === null || nominalVoltageV === null ? null
      : compare('voltageRatingV', voltageRatingV, { relation: 'at least', value: nominalVoltageV, citation: devices.voltageRating.citation }),
    reasons,
  }
}

function capacityCitation({ device, interruptingCapacityA }: Protection): Citation {
  const byType = protectiveDevice(device)?.interrupts?.citation
  return interruptingCapacityA === null && byType !== undefined ? byType : { source: 'vessel-data', place: 'interrupting capacity of the device' }
}

/** Begins the reason, of a device as of the place it is at. */
export const currentUnknown = 'prospective short-circuit current: '

/** Conductors that could not be counted make the current too large: within is then certain, above is not. */
function againstCurrent(interruptingCapacityA: number | null, prospective: Prospective, citation: Citation): Comparison | { readonly reason: string } | null {
  const currentA = prospectiveA(prospective)
  if (currentA === null) return { reason: `${currentUnknown}${prospective.current.status === 'not computed' ? prospective.current.reason : ''}` }
  if (interruptingCapacityA === null) return null
  const comparison = compare('prospectiveShortCircuitCurrentA', currentA, { relation: 'at most', value: interruptingCapacityA, citation })
  return comparison.within || prospective.leftOut.length === 0
    ? comparison
    : { reason: `whether it can break the short-circuit current: ${prospective.leftOut.join('; ')}` }
}

/** By ABYC E-11 table V.A; of a large bank by its maker's short-circuit rating, which binds the main device. */
export function againstBatteryClass(battery: Battery, main: boolean, interruptingCapacityA: number, voltageRatingV: number | null): Comparison | { readonly reason: string } | null {
  const { crankingCurrentA, capacityAh, shortCircuitCurrentA } = bankOf(battery)
  const atLeast = (value: number, citation: Citation) => compare('interruptingCapacityA', interruptingCapacityA, { relation: 'at least', value, citation })
  if ((crankingCurrentA ?? 0) > largeBank.aboveCrankingA || (capacityAh ?? 0) > largeBank.aboveCapacityAh) {
    if (!main) return null
    if (shortCircuitCurrentA === null) return { reason: `the short-circuit current of the large bank ${battery.tag} is not recorded, and the class of its main device depends on it` }
    if (shortCircuitCurrentA <= largeBank.ratingA) return atLeast(shortCircuitCurrentA, largeBank.citation)
    const capacity = atLeast(largeBank.capacityA, largeBank.citation)
    if (!capacity.within) return capacity
    return voltageRatingV === null ? { reason: 'its voltage rating is not recorded, and the class of a large bank asks for one' }
      : voltageRatingV < largeBank.voltageRatingV ? compare('voltageRatingV', voltageRatingV, { relation: 'at least', value: largeBank.voltageRatingV, citation: largeBank.citation })
      : capacity
  }
  if (crankingCurrentA === null) return { reason: `the cold cranking current of ${battery.tag} is not recorded, and the class of its devices depends on it` }
  const found = batteryClass(battery.nominalVoltageV, crankingCurrentA)
  return found === null
    ? { reason: `the classes of ABYC E-11 table V.A end below the voltage of ${battery.tag}` }
    : atLeast(main ? found.mainA : found.branchA, found.citation)
}
