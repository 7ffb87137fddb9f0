/** The passes in order, as plain calls; each gets the vessel and, by name, the results it needs. */
import type { Results } from '../model/results.js'
import type { Vessel } from '../model/vessel.js'
import type { Basis } from '../references/basis/basis.js'
import { methods as acSupplyMethods, acSupplyPass } from './ac-supply/index.js'
import { methods as canBusMethods, canBusPass } from './can-bus/index.js'
import { methods as serialMethods, serialPass } from './serial/index.js'
import { methods as ethernetMethods, ethernetPass } from './ethernet/index.js'
import { methods as radioMethods, radioPass } from './radio/index.js'
import { methods as placementMethods, placementPass } from './placement/index.js'
import { methods as identifiersMethods, identifiersPass } from './identifiers/index.js'
import { methods as configurationMethods, configurationPass } from './configuration/index.js'
import { methods as locationMethods, locationPass } from './location/index.js'
import { methods as emergencyMethods, emergencyPass } from './emergency/index.js'
import { methods as maintenanceMethods, maintenancePass } from './maintenance/index.js'
import { methods as cableBillMethods, cableBillPass } from './cable-bill/index.js'
import { methods as labelsMethods, labelsPass } from './labels/index.js'
import { methods as completenessMethods, completenessPass } from './completeness/index.js'
import { methods as commissioningMethods, commissioningPass } from './commissioning/index.js'
import { conductorSizePass } from './conductors/conductor-size.pass.js'
import { currentCarryingCapacityPass } from './conductors/current-carrying-capacity.pass.js'
import { methods as conductorMethods } from './conductors/index.js'
import { protectionPass } from './conductors/protection.pass.js'
import { voltageDropPass } from './conductors/voltage-drop.pass.js'
import { methods as dependencyMethods, dependencyPass } from './dependency/index.js'
import { faultTracingPass, methods as faultTracingMethods } from './fault-tracing/index.js'
import { methods as energyMethods, energyPass } from './energy/index.js'
import { feedingPass, methods as feedingMethods } from './feeding/index.js'
import type { AnyMethod } from './method.js'
import { noOccasion, type Occasion } from './occasion.js'
import { methods as protectiveDevicesMethods, protectiveDevicesPass } from './protective-devices/index.js'
import { methods as reserveMethods, reservePass } from './reserve/index.js'
import { methods as sourcesMethods, sourcesPass } from './sources/index.js'
import type { Upstream } from './upstream.js'
import { methods as wirewayMethods, routingPass } from './wireways/index.js'

/** Every calculation there is, from the lists of the domains: the methods chapter and the tests are made from it. */
export const methods: readonly AnyMethod[] = [
  ...wirewayMethods, ...sourcesMethods, ...feedingMethods, ...conductorMethods, ...protectiveDevicesMethods, ...acSupplyMethods,
  ...energyMethods, ...dependencyMethods, ...faultTracingMethods, ...reserveMethods, ...commissioningMethods,
  ...canBusMethods, ...serialMethods, ...ethernetMethods, ...radioMethods, ...placementMethods, ...identifiersMethods, ...configurationMethods,
  ...locationMethods, ...emergencyMethods, ...maintenanceMethods, ...cableBillMethods, ...labelsMethods, ...completenessMethods,
]

/** Everything that is worked out about a vessel. Same vessel, basis and occasion, same results. */
export function calculate(vessel: Vessel, basis: Basis, occasion: Occasion = noOccasion): Results {
  const routing = routingPass(vessel)
  const sources = sourcesPass(vessel)
  const feeding = feedingPass(vessel)
  const currentCarryingCapacity = currentCarryingCapacityPass(vessel, basis, routing, feeding)
  const voltageDrop = voltageDropPass(vessel, basis, routing, feeding, currentCarryingCapacity)
  const protection = protectionPass(vessel, basis, feeding, currentCarryingCapacity)
  const conductorSize = conductorSizePass(vessel, basis, routing, feeding, voltageDrop)
  const upstream: Upstream = { routing, sources, feeding, currentCarryingCapacity, voltageDrop, protection, conductorSize }
  const protectiveDevices = protectiveDevicesPass(vessel, basis, upstream)
  const acSupply = acSupplyPass(vessel, basis, upstream)
  const energy = energyPass(vessel, basis, upstream)
  const dependency = dependencyPass(vessel, basis, upstream)
  const reserve = reservePass(vessel, basis, upstream)
  const electronics = {
    canBus: canBusPass(vessel, basis, upstream),
    serial: serialPass(vessel, basis, upstream),
    ethernet: ethernetPass(vessel, basis, upstream),
    radio: radioPass(vessel, basis, upstream),
    placement: placementPass(vessel, basis, upstream),
    identifiers: identifiersPass(vessel, basis, upstream),
    configuration: configurationPass(vessel, basis, upstream),
  }
  const commissioning = commissioningPass(vessel, basis, { ...upstream, canBus: electronics.canBus, radio: electronics.radio })
  const faultTracing = faultTracingPass(vessel, basis, { ...upstream, dependency, canBus: electronics.canBus })
  const handover = {
    location: locationPass(vessel, basis),
    emergency: emergencyPass(vessel, basis, { ...upstream, dependency }),
    maintenance: maintenancePass(vessel, basis, occasion),
    cableBill: cableBillPass(vessel, basis, upstream),
    labels: labelsPass(vessel, basis, { ...upstream, acSupply, radio: electronics.radio }, occasion),
    completeness: completenessPass(vessel, basis, { ...upstream, acSupply, commissioning, configuration: electronics.configuration }),
  }
  const onwards = { protectiveDevices, acSupply, energy, dependency, faultTracing, reserve, commissioning, ...electronics, ...handover }
  const findings = [routing, sources, feeding, currentCarryingCapacity, voltageDrop, protection, ...Object.values(onwards)].flatMap(results => results.findings)
  return { ...upstream, ...onwards, findings }
}
