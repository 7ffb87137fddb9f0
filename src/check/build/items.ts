/** Equipment with its model, batteries, and what all items have in common → records of the vessel. */
import type { Battery, Equipment, ItemBase, Output } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import type { Entry } from '../schema/kinds.js'
import { taskFactsOf } from './maintenance.js'
import { busFactsOf, portOf, streamOf } from './networks.js'
import { compassClassOf, pointOf, transducerOf } from './placement.js'
import { radarOf, transmitterOf } from './radio.js'

export const itemOf = (item: Entry<'equipment' | 'batteries' | 'busbars' | 'panels'>): ItemBase => ({
  tag: item.tag,
  name: item.name,
  zoneTag: item.zone ?? null,
  systemTag: item.system ?? null,
  pointTag: item.point ?? null,
  location: item.location ?? null,
  maker: item.maker ?? null,
  model: item['model-name'] ?? null,
  serial: item.serial ?? null,
  status: item.status ?? null,
  notes: item.notes ?? null,
  fittedOn: item['fitted-on'] ?? null,
  madeOn: item['made-on'] ?? null,
  expiresOn: item['expires-on'] ?? null,
  documents: item.documents ?? [],
})

export function equipmentOf(item: Entry<'equipment'>, models: ReadonlyMap<string, Entry<'models'>>): Equipment {
  const model = models.get(item.model ?? '')
  const facts = { ...model, ...withoutEmpty(item) }
  return {
    ...itemOf(item),
    maker: facts.maker ?? null,
    model: item['model-name'] ?? model?.title ?? null,
    kind: facts.kind ?? 'other',
    description: facts.description ?? null,
    software: item.software ?? null,
    positionM: item.position === undefined ? null : pointOf(item.position),
    massKg: facts.mass ?? null,
    supplyMinV: facts['supply-min'] ?? null,
    supplyMaxV: facts['supply-max'] ?? null,
    currentTypicalA: facts['current-typical'] ?? null,
    currentMaxA: facts['current-max'] ?? null,
    powerW: facts.power ?? null,
    ports: (facts.ports ?? []).map(portOf),
    address: item.address ?? null,
    ratedCurrentA: facts.rating ?? null,
    startingCurrentA: facts['starting-current'] ?? null,
    makersFuseA: facts['makers-fuse'] ?? null,
    outputs: (facts.outputs ?? []).map(output => outputOf(output, facts.kind ?? 'other')),
    efficiencyPercent: facts.efficiency ?? null,
    peakPowerW: facts['peak-power'] ?? null,
    loadColumn: facts['load-column'] ?? null,
    safetyService: item['safety-service'] ?? null,
    dataFromTags: item['data-from'] ?? [],
    residualCurrentA: facts['residual-current'] ?? null,
    tripTimeMs: facts['trip-time'] ?? null,
    galvanicIsolationTag: item['galvanic-isolation'] ?? null,
    polarityIndicatorTag: item['polarity-indicator'] ?? null,
    softwareDate: item['software-date'] ?? null,
    ...networkFacts(item, facts),
    ...placementFacts(item, facts),
    transmitters: (facts.transmitters ?? []).map(transmitterOf),
    radar: facts.radar === undefined ? null : radarOf(facts.radar),
    antenna: facts.antenna === undefined ? null : {
      gainDbi: facts.antenna.gain ?? null, fromMHz: facts.antenna.from ?? null, toMHz: facts.antenna.to ?? null, lengthM: facts.antenna.length ?? null,
      vswrFactor: facts.antenna.vswr ?? null, clearanceM: facts.antenna.clearance ?? null,
    },
    portLosses: (facts['port-losses'] ?? []).map(({ from, to, loss }) => ({ fromTerminal: from, toTerminal: to, lossDb: loss })),
    maintenance: (facts.maintenance ?? []).map(taskFactsOf),
  }
}

/** Of an item and its model together. */
type ModelFacts = Omit<Entry<'equipment'>, 'model'>

const networkFacts = (item: Entry<'equipment'>, facts: ModelFacts) => ({
  ...busFactsOf({ ...facts, 'device-instance': item['device-instance'] }),
  forwards: (facts.forwards ?? []).map(({ from, to, only }) => ({ fromTerminal: from, toTerminal: to, only: only ?? null })),
  addressing: item.addressing ?? (item.address === undefined ? null : 'static' as const),
  macAddress: item.mac ?? null,
  streams: (facts.streams ?? []).map(streamOf),
  networkPowerW: facts['network-power'] ?? null,
  powerBudgetW: facts['power-budget'] ?? null,
  powerVoltageV: facts['power-voltage'] ?? null,
  passesEthernet: facts['passes-ethernet'] ?? (passingKinds.has(facts.kind ?? 'other') ? true : null),
  loopProtection: facts['loop-protection'] ?? null,
})
/** Kinds whose purpose it is to pass traffic from one Ethernet port to another. */
const passingKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['network switch', 'mobile-data router', 'wireless access point'])

const placementFacts = (item: Entry<'equipment'>, facts: ModelFacts) => ({
  compassClass: compassClassOf(facts['compass-class'], facts.kind ?? 'other'),
  compassSafeStandardM: facts['compass-safe-standard'] ?? null,
  compassSafeSteeringM: facts['compass-safe-steering'] ?? null,
  navigationLight: facts['navigation-light'] === undefined ? null : {
    kind: facts['navigation-light'].kind, rangeNmi: facts['navigation-light'].range ?? null, arcDeg: facts['navigation-light'].arc ?? null,
    intensityCd: facts['navigation-light'].intensity ?? null,
  },
  transducer: facts.transducer === undefined && item['depth-offset'] === undefined ? null : transducerOf(facts.transducer ?? {}, item['depth-offset']),
  mmsi: item.mmsi ?? null,
  beaconIdentity: item['beacon-identity'] ?? null,
})

/** Kinds whose outputs are a.c. unless the author says otherwise. */
const acKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['shore inlet', 'generator', 'inverter', 'isolation transformer'])

const outputOf = (output: NonNullable<Entry<'equipment'>['outputs']>[number], kind: string): Output => ({
  terminal: output.terminal ?? null,
  form: output.form ?? (acKinds.has(kind) ? 'ac' : 'dc'),
  nominalVoltageV: output.voltage,
  frequencyHz: output.frequency ?? null,
  ratedCurrentA: output.current ?? null,
  shortCircuitCurrentA: output['short-circuit-current'] ?? null,
  neutralBonded: output['neutral-bonded'] ?? null,
  curve: (output.curve ?? []).map(({ speed, current }) => ({ speedRpm: speed, currentA: current })),
})

export const batteryOf = (battery: Entry<'batteries'>): Battery => ({
  ...itemOf(battery),
  ...busFactsOf(battery),
  chemistry: battery.chemistry ?? null,
  nominalVoltageV: battery['nominal-voltage'],
  capacityAh: battery.capacity ?? null,
  crankingCurrentA: battery['cranking-current'] ?? null,
  ratedTimeH: battery['rated-time'] ?? null,
  peukertNumber: battery.peukert ?? null,
  internalResistanceMilliOhm: battery['internal-resistance'] ?? null,
  shortCircuitCurrentA: battery['short-circuit-current'] ?? null,
  depthOfDischargePercent: battery['depth-of-discharge'] ?? null,
  chargeCurrentMaxA: battery['charge-current-max'] ?? null,
  dischargeCurrentMaxA: battery['discharge-current-max'] ?? null,
  massKg: battery.mass ?? null,
  positionM: battery.position === undefined ? null : pointOf(battery.position),
  blocks: battery.blocks === undefined ? null : {
    seriesCount: battery.blocks.series,
    parallelCount: battery.blocks.parallel,
    nominalVoltageV: battery.blocks.voltage ?? null,
    capacityAh: battery.blocks.capacity ?? null,
    crankingCurrentA: battery.blocks['cranking-current'] ?? null,
    internalResistanceMilliOhm: battery.blocks['internal-resistance'] ?? null,
    shortCircuitCurrentA: battery.blocks['short-circuit-current'] ?? null,
  },
})

/** A key without a value must not hide the model's value. */
const withoutEmpty = <T extends object>(entry: T): T =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as T
