/** Identifiers: MMSI, call sign, hull identification, beacons. */
import type { AnyMethod } from '../method.js'
import { beaconCountryCodeMethod } from './beacon-country-code.calc.js'

export { findingKinds } from './findings.js'
export { identifiersPass } from './identifiers.pass.js'

export const methods: readonly AnyMethod[] = [beaconCountryCodeMethod]
