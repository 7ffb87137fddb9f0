/** A boat on shore power that the tests of mains voltage vary: inlet, main breaker, panel, kettle, socket in the galley. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { AcSource, AcSupplyResults } from '../../../src/model/results/ac-supply.js'
import type { Circuit, Equipment, Output, Protection, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aProtection, aVessel, aZone, mm2 } from '../../support/vessel-builder.js'

export const acOutput = (given: Partial<Output> = {}): Output =>
  anOutput({ form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 16, neutralBonded: false, ...given })

export const acSource = (tag: string, kind: string, given: Partial<Equipment> = {}): Equipment =>
  anEquipment({ tag, kind, outputs: [acOutput(kind === 'shore inlet' ? {} : { neutralBonded: true })], ...given })

export const breaker = (ratedCurrentA: number, given: Partial<Protection> = {}): Protection => aProtection('circuit breaker', ratedCurrentA, { poles: 2, ...given })

export const cable = (tag: string, from: string, to: string, lengthM = 1): ReturnType<typeof aCable> => aCable({ tag, from, to, typeTag: 'AC', lengthM })

/** X1 ─W1─ F1 ─W2─ A1 ─ A1.1 kettle, A1.2 socket. */
export const shoreBoat = ({ inlet = {}, main = {}, circuits = [], equipment = [], cables = [], ...vessel }: {
  inlet?: Partial<Equipment>; main?: Partial<Circuit>; circuits?: readonly Circuit[]; equipment?: readonly Equipment[]; cables?: Vessel['cables']
} & Partial<Omit<Vessel, 'circuits' | 'equipment' | 'cables'>> = {}): Vessel => aVessel({
  zones: [aZone({ tag: 'saloon', name: 'Saloon' }), aZone({ tag: 'galley', name: 'Galley' })],
  cableTypes: [aCableType({ tag: 'AC', use: 'ac power', cores: 3, size: mm2(2.5), insulationC: 85 })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'saloon' })],
  equipment: [
    acSource('X1', 'shore inlet', { zoneTag: 'saloon', galvanicIsolationTag: 'R1', ...inlet }),
    anEquipment({ tag: 'R1', kind: 'galvanic isolator', zoneTag: 'saloon' }),
    anEquipment({ tag: 'E1', name: 'Kettle', kind: 'heater', powerW: 2000, zoneTag: 'saloon' }),
    anEquipment({ tag: 'E2', kind: 'socket', zoneTag: 'galley' }),
    ...equipment,
  ],
  circuits: [
    aCircuit({ tag: 'F1', fedFromTag: 'X1', loadTags: ['A1'], protection: breaker(16, { residualCurrentA: 0.03, tripTimeMs: 40 }), ...main }),
    aCircuit({ tag: 'A1.1', fedFromTag: 'A1', loadTags: ['E1'], protection: breaker(10) }),
    aCircuit({ tag: 'A1.2', fedFromTag: 'A1', loadTags: ['E2'], protection: breaker(10), designCurrentA: 5 }),
    ...circuits,
  ],
  cables: [cable('W1', 'X1', 'F1'), cable('W2', 'F1', 'A1'), cable('W3', 'A1.1', 'E1'), cable('W4', 'A1.2', 'E2'), ...cables],
  ...vessel,
})

export const acOf = (vessel: Vessel): AcSupplyResults => calculate(vessel, bases[vessel.basis]).acSupply
export const idsOf = (vessel: Vessel): readonly string[] => acOf(vessel).findings.map(({ id, subject }) => `${id} ${subject.id}`)
export const sourceIn = (vessel: Vessel, tag = 'X1'): AcSource => acOf(vessel).sources.find(source => source.tag === tag)!
export const currentOf = ({ sum }: AcSource['connected']): number | null => (sum.status === 'computed' ? sum.output.connectedCurrentA : null)
