/** Records with nothing recorded: what a new thing starts from. */
import type { BusFacts, Cable, CableType, Equipment, ItemBase, Port, Tag } from './vessel.js'

export const blankItem = (tag: Tag, name: string): ItemBase => ({
  tag, name, zoneTag: null, systemTag: null, pointTag: null, location: null, maker: null, model: null, serial: null, status: null, notes: null,
  fittedOn: null, madeOn: null, expiresOn: null, documents: [],
})

export const blankBusFacts: BusFacts = { loadEquivalencyNumber: null, deviceInstanceNumber: null, sends: [] }

export const blankEquipment = (tag: Tag, name: string): Equipment => ({
  ...blankItem(tag, name), kind: 'other', description: null, software: null, softwareDate: null, positionM: null, massKg: null,
  supplyMinV: null, supplyMaxV: null, currentTypicalA: null, currentMaxA: null, powerW: null, ports: [], address: null,
  ratedCurrentA: null, startingCurrentA: null, makersFuseA: null, outputs: [], efficiencyPercent: null, peakPowerW: null, loadColumn: null,
  safetyService: null, dataFromTags: [], residualCurrentA: null, tripTimeMs: null, galvanicIsolationTag: null, polarityIndicatorTag: null,
  ...blankBusFacts, forwards: [], addressing: null, macAddress: null, streams: [], networkPowerW: null, powerBudgetW: null,
  powerVoltageV: null, passesEthernet: null, loopProtection: null, transmitters: [], radar: null, antenna: null, portLosses: [],
  compassClass: null, compassSafeStandardM: null, compassSafeSteeringM: null, navigationLight: null, transducer: null, mmsi: null, beaconIdentity: null,
  maintenance: [],
})

export const blankPort = (name: string, kind: Port['kind']): Port =>
  ({ name, kind, speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null })

export const blankCableType = (tag: Tag, use: CableType['use']): CableType => ({
  tag, name: '', use, cores: null, size: null, insulationC: null, tinned: null, outerDiameterMm: null, shielded: null, busCable: null,
  conductorResistanceOhmPerKm: null, coax: null,
})

export const blankCable = (tag: Tag, from: Cable['from'], to: Cable['to']): Cable => ({
  tag, name: null, from, to, typeTag: null, carries: 'none', routeTags: null, lengthM: null, serviceLoopM: 0, parallelCount: 1,
  labelFrom: null, labelTo: null, status: null, notes: null, connectorCount: null,
})
