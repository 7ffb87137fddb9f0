/** Every kind of finding there is, from the lists of the stages and domains: the manual's chapter and the tests are made from it. */
import { findingKinds as conductorKinds } from '../calculate/conductors/findings.js'
import { findingKinds as feedingKinds } from '../calculate/feeding/findings.js'
import { findingKinds as sourcesKinds } from '../calculate/sources/findings.js'
import { findingKinds as wirewayKinds } from '../calculate/wireways/findings.js'
import { findingKinds as protectiveDevicesKinds } from '../calculate/protective-devices/findings.js'
import { findingKinds as acSupplyKinds } from '../calculate/ac-supply/findings.js'
import { findingKinds as energyKinds } from '../calculate/energy/findings.js'
import { findingKinds as dependencyKinds } from '../calculate/dependency/findings.js'
import { findingKinds as reserveKinds } from '../calculate/reserve/findings.js'
import { findingKinds as commissioningKinds } from '../calculate/commissioning/findings.js'
import { findingKinds as canBusKinds } from '../calculate/can-bus/findings.js'
import { findingKinds as serialKinds } from '../calculate/serial/findings.js'
import { findingKinds as ethernetKinds } from '../calculate/ethernet/findings.js'
import { findingKinds as radioKinds } from '../calculate/radio/findings.js'
import { findingKinds as placementKinds } from '../calculate/placement/findings.js'
import { findingKinds as identifiersKinds } from '../calculate/identifiers/findings.js'
import { findingKinds as configurationKinds } from '../calculate/configuration/findings.js'
import { findingKinds as locationKinds } from '../calculate/location/findings.js'
import { findingKinds as emergencyKinds } from '../calculate/emergency/findings.js'
import { findingKinds as maintenanceKinds } from '../calculate/maintenance/findings.js'
import { findingKinds as cableBillKinds } from '../calculate/cable-bill/findings.js'
import { findingKinds as labelsKinds } from '../calculate/labels/findings.js'
import { findingKinds as completenessKinds } from '../calculate/completeness/findings.js'
import { acceptanceFindingKinds } from './acceptance-findings.js'
import { checkFindingKinds } from '../check/findings.js'
import { loadFindingKinds } from '../load/findings.js'
import type { AnyFindingKind } from './finding.js'

export const findingKinds: readonly AnyFindingKind[] = [
  ...loadFindingKinds, ...checkFindingKinds, ...wirewayKinds, ...sourcesKinds, ...feedingKinds, ...conductorKinds,
  ...protectiveDevicesKinds, ...acSupplyKinds, ...energyKinds, ...dependencyKinds, ...reserveKinds, ...commissioningKinds,
  ...canBusKinds, ...serialKinds, ...ethernetKinds, ...radioKinds, ...placementKinds, ...identifiersKinds, ...configurationKinds,
  ...locationKinds, ...emergencyKinds, ...maintenanceKinds, ...cableBillKinds, ...labelsKinds, ...completenessKinds,
  ...acceptanceFindingKinds,
]
