/** A small boat with a CAN bus, and its results. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { BusResult } from '../../../src/model/results/can-bus.js'
import type { BackboneElement, BusCable, BusMessage, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aBus, aCable, aCableType, aCircuit, anEquipment, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'

export const terminator = (tag: string, resistanceOhm: number | null = null): BackboneElement => ({ kind: 'terminator', tag, zoneTag: null, resistanceOhm })
export const isolator = (tag: string): BackboneElement => ({ kind: 'isolator', tag, zoneTag: null })
export const power = (tag: string, { circuitTag = 'F1', supplyVoltageV = null }: { circuitTag?: string | null; supplyVoltageV?: number | null } = {}): BackboneElement =>
  ({ kind: 'power', tag, zoneTag: null, circuitTag, dropCableTag: null, supplyVoltageV })
/** `W3 20`: cable and length. */
export interface GivenDevice { readonly len?: number | null; readonly drop?: number | null; readonly sends?: readonly BusMessage[]; readonly instance?: number | null }

export const aMessage = (pgnNumber: number, given: Partial<BusMessage> = {}): BusMessage =>
  ({ pgnNumber, intervalMs: null, payloadByteCount: null, terminal: null, timesCount: 1, instanceNumber: null, ...given })

/** What stands along the backbone: a length in metres is a cable of that length, a word a tee with the device of that name, `''` a free tee. */
export type Along = number | string | BackboneElement
export interface GivenBus { readonly along: readonly Along[]; readonly devices?: Readonly<Record<string, GivenDevice>>; readonly cable?: BusCable | null; readonly ratingA?: number | null }

/** A bus on a circuit F1 of battery G1, of which 12 V arrive at the insertion: its cable is so thick and short that it loses next to nothing. */
export function busBoat({ along, devices = {}, cable = 'light', ratingA = 3 }: GivenBus, given: Partial<Vessel> = {}): Vessel {
  let [cables, tees] = [0, 0]
  const backbone = along.map((part): BackboneElement => {
    if (typeof part === 'number') return { kind: 'segment', cableTag: `W${++cables}` }
    if (typeof part !== 'string') return part
    const drop = part === '' ? null : devices[part]?.drop
    return { kind: 'tee', tag: `X${++tees}`, zoneTag: null, deviceTag: part === '' ? null : part, dropCableTag: drop == null ? null : `D-${part}`, deviceTerminal: null }
  })
  const lengths = along.filter(part => typeof part === 'number')
  const dropsFrom = new Map(backbone.flatMap(part => (part.kind === 'tee' && part.dropCableTag !== null ? [[part.dropCableTag, part.tag]] : [])))
  return aVessel({
    zones: [aZone({ tag: 'Z1' })],
    batteries: [aBattery({ tag: 'G1', zoneTag: 'Z1' })],
    circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1', protection: ratingA === null ? null : aProtection('blade fuse', ratingA), loadTags: ['X0'], designCurrentA: 3 })],
    cableTypes: [
      aCableType({ tag: 'thick', size: { system: 'mm2', designation: '95', crossSectionMm2: 95 } }),
      aCableType({ tag: 'bus', use: 'can bus', busCable: cable }), aCableType({ tag: 'drop', use: 'can bus', busCable: 'light' }),
    ],
    cables: [
      aCable({ tag: 'W-G1', from: 'G1', to: 'F1', typeTag: 'thick', lengthM: 0.01 }), aCable({ tag: 'W-F1', from: 'F1', to: 'X0', typeTag: 'thick', lengthM: 0.01 }),
      ...lengths.map((lengthM, i) => aCable({ tag: `W${i + 1}`, ...endsOf(backbone, `W${i + 1}`), typeTag: 'bus', carries: 'none', lengthM })),
      ...Object.entries(devices).flatMap(([tag, { drop }]) => (drop == null ? [] : [aCable({ tag: `D-${tag}`, from: dropsFrom.get(`D-${tag}`) ?? 'X0', to: `${tag}:can`, typeTag: 'drop', carries: 'none', lengthM: drop })])),
    ],
    equipment: Object.entries(devices).map(([tag, { len = 1, sends = [], instance = null }]) =>
      // What takes nothing from the bus is fed otherwise.
      anEquipment({ tag, zoneTag: 'Z1', loadEquivalencyNumber: len, networkPowerW: len === 0 ? 1 : null, sends, deviceInstanceNumber: instance })),
    canBuses: [aBus({ tag: 'N1', backbone, suppliesDevices: true })],
    ...given,
  })
}

/** From the part before to the part after; between two cables a connector, beyond the last part an open end. */
function endsOf(backbone: readonly BackboneElement[], cableTag: string): { readonly from: string; readonly to: string } {
  const at = backbone.findIndex(part => part.kind === 'segment' && part.cableTag === cableTag)
  const tagOf = (part: BackboneElement | undefined, side: number): string => (part === undefined ? 'open' : part.kind === 'segment' ? `joint ${at + side}` : part.tag)
  return { from: tagOf(backbone[at - 1], 0), to: tagOf(backbone[at + 1], 1) }
}

export const resultsOf = (vessel: Vessel) => calculate(vessel, bases.iso).canBus
export const busIn = (vessel: Vessel, tag = 'N1'): BusResult => resultsOf(vessel).byBus.get(tag)!
/** `ID subject`, in order of writing. */
export const foundIn = (vessel: Vessel): readonly string[] => resultsOf(vessel).findings.map(({ id, subject }) => `${id} ${subject.id}`)
