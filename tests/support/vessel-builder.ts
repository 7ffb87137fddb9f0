/**
 * Vessels for tests, built in code. Each helper fills every field with its empty value, so that a test names only
 * what it is about.
 */
import { awgSize } from '../../src/references/tables/astm-b258-awg.js'
import type { ConductorSize } from '../../src/units/conductor-size.js'
import type {
  Battery, Busbar, Cable, CableEnd, CableType, Circuit, Equipment, ItemBase, Panel, SpaceKind, Vessel, Wireway, WirewayPoint, Zone,
} from '../../src/model/vessel.js'

/** Everything may be left out but what makes no sense without a value. */
type Given<T, K extends keyof T> = Partial<T> & Pick<T, K>

/** "2.5 mm2" sizes by number, gauges by designation: `mm2(2.5)`, `awg('14')`. */
export const mm2 = (crossSectionMm2: number): ConductorSize =>
  ({ system: 'mm2', designation: String(crossSectionMm2), crossSectionMm2 })
export function awg(designation: string): ConductorSize {
  const size = awgSize(designation)
  if (size === null) throw new Error(`${designation} is no gauge`)
  return size
}

/** `P1:power` → item P1, terminal "power". */
export function anEnd(written: string): CableEnd {
  const [tag = '', terminal = null] = written.split(':')
  return { tag, terminal }
}

const ambientCBySpace: Record<SpaceKind, number> = {
  interior: 30, machinery: 60, bilge: 30, battery: 30, deck: 30, mast: 30, cockpit: 30, locker: 30,
}

export const aVessel = (given: Partial<Vessel> = {}): Vessel => ({
  identity: {
    name: 'Test vessel', model: null, builder: null, hullNumber: null, hullIdentification: null, designCategory: null,
    yearBuilt: null, flag: null, homePort: null, callSign: null, mmsi: null, lengthM: null, beamM: null, draughtM: null,
    displacementKg: null, maximumPersons: null, description: null,
  },
  document: {
    number: null, issue: null, issuedOn: null, preparedBy: null, checkedBy: null, approvedBy: null, installer: null, contact: null,
  },
  basis: 'iso',
  units: 'metric',
  conditions: { ambientCBySpace, cableTailM: 0 },
  changes: [], systems: [], zones: [], points: [], wireways: [], cableTypes: [], cables: [], equipment: [], batteries: [],
  busbars: [], panels: [], circuits: [], canBuses: [], ethernetNetworks: [],
  ...given,
})

export const aZone = (given: Given<Zone, 'tag'>): Zone => {
  const space = given.space ?? 'interior'
  return { name: `Zone ${given.tag}`, space, ambientC: ambientCBySpace[space], ignitionProtection: false, access: null, ...given }
}

export const aPoint = (given: Given<WirewayPoint, 'tag' | 'zoneTag'>): WirewayPoint => ({ name: `Point ${given.tag}`, ...given })

export const aWireway = (given: Given<Wireway, 'tag' | 'fromTag' | 'toTag'>): Wireway => ({
  name: null, lengthM: 1, kind: 'clipped', boreMm: null, zoneTags: [given.fromTag, given.toTag], ...given,
})

export const aCableType = (given: Given<CableType, 'tag'>): CableType => ({
  name: `Type ${given.tag}`, use: 'power', cores: 2, size: null, insulationC: 105, tinned: true, outerDiameterMm: null, shielded: null,
  ...given,
})

/** Ends may be written `P1:power`. */
export const aCable = (given: { readonly tag: string; readonly from: string; readonly to: string } & Partial<Omit<Cable, 'tag' | 'from' | 'to'>>): Cable => ({
  name: null, typeTag: null, carries: 'both', routeTags: null, lengthM: null, serviceLoopM: 0, labelFrom: null, labelTo: null,
  status: null, notes: null, ...given, from: anEnd(given.from), to: anEnd(given.to),
})

const itemBase = (tag: string, name: string): ItemBase => ({
  tag, name, zoneTag: null, systemTag: null, pointTag: null, location: null, maker: null, model: null, serial: null, status: null,
  notes: null, documents: [],
})

export const anEquipment = (given: Given<Equipment, 'tag'>): Equipment => ({
  ...itemBase(given.tag, `Equipment ${given.tag}`), kind: 'other', description: null, software: null, positionM: null, massKg: null,
  supplyMinV: null, supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, loadEquivalencyNumber: null,
  ports: [], address: null, ...given,
})

export const aBattery = (given: Given<Battery, 'tag'>): Battery => ({
  ...itemBase(given.tag, `Battery ${given.tag}`), chemistry: null, nominalVoltageV: 12, capacityAh: null, crankingCurrentA: null, ...given,
})

export const aBusbar = (given: Given<Busbar, 'tag'>): Busbar => ({
  ...itemBase(given.tag, `Busbar ${given.tag}`), ratedCurrentA: null, polarity: 'positive', ...given,
})

export const aPanel = (given: Given<Panel, 'tag'>): Panel => ({
  ...itemBase(given.tag, `Panel ${given.tag}`), kind: 'breaker panel', ways: null, ratedCurrentA: null, ...given,
})

export const aCircuit = (given: Given<Circuit, 'tag' | 'fedFromTag'>): Circuit => ({
  name: `Circuit ${given.tag}`, purpose: null, way: null, protection: null, unprotectedReason: null, loadClass: 'general', loadTags: [],
  designCurrentA: null, demandFactor: 1, normalState: 'closed', zoneTag: null, location: null, manualBypass: null, returnCableTags: [],
  ...given,
})
