/** A small system for the tests of this domain, on which every sum can be done in the head. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { ProtectiveDevicesResults } from '../../../src/model/results/protective-devices.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone, mm2 } from '../../support/vessel-builder.js'

/** A metre of it has 1 mΩ at 20 °C: 1000 / (58 · S). Its capacity is that of 16 mm². */
const aMilliOhmPerM = mm2(1000 / 58)

/**
 * G1 12.6 V behind 5 mΩ → W1 (1 mΩ out and back) → F1 200 A → W2 (2 mΩ) → X1 → F2 60 A on the busbar → W3 (4 mΩ) → A1 → A1.1 10 A.
 */
export const smallSystem = (given: Partial<Vessel> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'Z1' }), aZone({ tag: 'Z2' })],
  cableTypes: [aCableType({ tag: 'T', cores: 2, size: aMilliOhmPerM }), aCableType({ tag: 'T1', cores: 1, size: aMilliOhmPerM })],
  batteries: [aBattery({ tag: 'G1', zoneTag: 'Z1', chemistry: 'agm', internalResistanceMilliOhm: 5 })],
  busbars: [aBusbar({ tag: 'X1', zoneTag: 'Z1' })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'Z2' })],
  equipment: [anEquipment({ tag: 'E1', zoneTag: 'Z2', currentMaxA: 4 })],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'G1', protection: aProtection('flat-link fuse', 200), loadTags: ['X1'] }),
    aCircuit({ tag: 'F2', fedFromTag: 'X1', protection: aProtection('bolt-in fuse, small', 60), loadTags: ['A1'] }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', way: 1, protection: aProtection('blade fuse', 10), loadTags: ['E1'] }),
  ],
  cables: [
    aCable({ tag: 'W1', from: 'G1:+', to: 'F1', typeTag: 'T', lengthM: 0.5 }),
    aCable({ tag: 'W2', from: 'F1', to: 'X1', typeTag: 'T', lengthM: 1 }),
    aCable({ tag: 'W3', from: 'F2', to: 'A1', typeTag: 'T', lengthM: 2 }),
    aCable({ tag: 'W4', from: 'A1.1', to: 'E1', typeTag: 'T', lengthM: 1 }),
  ],
  ...given,
})

export const devicesOf = (vessel: Vessel): ProtectiveDevicesResults => calculate(vessel, bases[vessel.basis]).protectiveDevices

/** One thing of a list with some of its fields changed. */
export const withChanged = <T extends { readonly tag: string }>(things: readonly T[], tag: string, change: Partial<T>): readonly T[] =>
  things.map(thing => (thing.tag === tag ? { ...thing, ...change } : thing))

/** `PDV101 F1`, in order. */
export const found = (of: ProtectiveDevicesResults | Vessel): readonly string[] => ('findings' in of ? of : devicesOf(of)).findings.map(({ id, subject }) => `${id} ${subject.id}`)
