/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { Gap } from '../../model/results/gap.js'
import type { DeviceCheck, DeviceGap, ProtectiveDevicesResults } from '../../model/results/protective-devices.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { compare } from '../compare.js'
import type { Upstream } from '../upstream.js'
import { cableRules } from './cable-rules.js'
import { checkCapability } from './capability.js'
import { checkContinuous, type LastingDuties, lastingDuties } from './continuous.js'
import { deviceFindings } from './device-findings.js'
import { checkDistance, exposedConductors } from './distance.js'
import { type FaultCurrents, faultCurrents, isMain } from './fault-current.js'
import { checkMotors } from './motors.js'
import { gapsOf } from './not-assessed.js'
import { checkPanels, panelFindings } from './panels.js'
import { isProtected, type ProtectedCircuit, ratingOrder } from './rating-order.js'
import { checkSwitches, switchFindings, switchGaps } from './switches.js'

export function protectiveDevicesPass(vessel: Vessel, basis: Basis, before: Upstream): ProtectiveDevicesResults {
  const faults = faultCurrents(vessel, basis, before)
  const lasting = lastingDuties(vessel)
  const devices = vessel.circuits.filter(isProtected)
  const byCircuit = new Map(devices.map((circuit): [Tag, DeviceCheck] => [circuit.tag, checkDevice(vessel, basis, circuit, before, faults, lasting)]))
  const distances = new Map([...byCircuit].map(([tag, { distance }]) => [tag, distance]))
  const byPanel = checkPanels(vessel, basis, before)
  const switches = checkSwitches(vessel, basis, before)
  const results = {
    switches, byBattery: faults.byBattery, byPoint: faults.byPoint, byCircuit, byPanel,
    exposed: exposedConductors(vessel, basis, before, distances),
  }
  const notAssessed: readonly Gap[] = [...gapsOf(vessel, before.feeding, results), ...switchGaps(switches)]
  return {
    ...results,
    notAssessed,
    findings: [
      ...devices.flatMap(circuit => deviceFindings(
        vessel, circuit, byCircuit.get(circuit.tag)!, before.protection.byCircuit.get(circuit.tag), isMain(vessel, before.feeding.byCircuit.get(circuit.tag)),
      )),
      ...panelFindings(vessel, byPanel),
      ...switchFindings(switches),
      ...cableRules(vessel, basis),
    ],
  }
}

function checkDevice(vessel: Vessel, basis: Basis, circuit: ProtectedCircuit, before: Upstream, faults: FaultCurrents, lasting: LastingDuties): DeviceCheck {
  const feed = before.feeding.byCircuit.get(circuit.tag)
  const prospective = faults.atDevice(circuit)
  const { reasons: capabilityReasons, ...capability } = checkCapability(vessel, basis, circuit.protection, feed, prospective)
  const { distance, reasons: distanceReasons } = checkDistance(vessel, basis, circuit, before)
  const { motors, reasons: motorReasons } = checkMotors(vessel, circuit, feed)
  const putInA = feed?.infeed?.currentA ?? null
  return {
    prospective,
    ...capability,
    distance,
    order: ratingOrder(vessel, circuit, feed),
    motors,
    continuous: checkContinuous(lasting, circuit, feed),
    charging: putInA === null ? null : compare('currentA', putInA, {
      relation: 'at most', value: circuit.protection.ratedCurrentA, citation: { source: 'iec-60364-4-43', place: 'design current at most the rated current' },
    }),
    notAssessed: [
      ...gaps('interrupting', capabilityReasons), ...gaps('distance', distanceReasons), ...gaps('start', motorReasons),
      ...gaps('charging', feed?.infeed != null && putInA === null ? ['what its charging sources put in is not known'] : []),
    ],
  }
}

const gaps = (about: DeviceGap['about'], reasons: readonly string[]): readonly DeviceGap[] => reasons.map(reason => ({ about, reason }))
