/** A small boat that the energy tests add to: a house battery, a main fuse and a panel; what is added hangs on the panel. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { EnergyResults, ModeEnergy } from '../../../src/model/results/energy.js'
import type { Duty, Equipment, Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aBattery, aCircuit, aDuty, aMode, anEquipment, anOutput, aPanel, aProtection, aVessel } from '../../support/vessel-builder.js'

/** A load on a way of panel A1: `load('E1', { currentTypicalA: 3 })`. */
export const load = (tag: string, given: Partial<Equipment> = {}): Equipment => anEquipment({ tag, ...given })
export const duty = (itemTag: string, given: Partial<Duty> = {}): Duty => aDuty({ modeTag: 'M', itemTag, ...given })
export const hours = (fromH: number, toH: number): Pick<Duty, 'periods'> => ({ periods: [{ fromH, toH }] })

export const house = aBattery({ tag: 'G1', chemistry: 'flooded', capacityAh: 400 })
export const start = aBattery({ tag: 'G2', chemistry: 'agm', capacityAh: 100 })
export const alternator = (given: Partial<Equipment> = {}): Equipment =>
  anEquipment({ tag: 'G3', kind: 'alternator', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 80 })], ...given })

/** G1 ─ F1 ─ A1 ─ a way for each of `loads`; the rest as given, added to it. */
export function boat(loads: readonly Equipment[], { equipment = [], circuits = [], batteries = [house], operatingModes = [aMode({ tag: 'M' })], ...given }: Partial<Vessel> = {}): Vessel {
  return aVessel({
    batteries,
    panels: [aPanel({ tag: 'A1' })],
    equipment: [...loads, ...equipment],
    circuits: [
      aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['A1'], protection: aProtection('terminal fuse', 100) }),
      ...loads.map(({ tag }, i) => aCircuit({ tag: `A1.${i + 1}`, fedFromTag: 'A1', loadTags: [tag] })),
      ...circuits,
    ],
    operatingModes,
    ...given,
  })
}

export const energyOf = (vessel: Vessel): EnergyResults => calculate(vessel, bases[vessel.basis]).energy
export function modeOf(vessel: Vessel): ModeEnergy {
  const [mode] = energyOf(vessel).modes
  if (mode === undefined) throw new Error('no operating mode')
  return mode
}

/** `E1 in M: reason` */
export const gapsOf = (vessel: Vessel): readonly string[] =>
  energyOf(vessel).notAssessed.filter(({ modeTag }) => modeTag !== null).map(({ subjectTag, modeTag, reason }) => `${subjectTag} in ${modeTag}: ${reason}`)

/** Output of an outcome that must have been computed. */
export function outputOf<T>(outcome: { readonly status: 'computed'; readonly output: T } | { readonly status: 'not computed'; readonly reason: string }): T {
  if (outcome.status === 'not computed') throw new Error(outcome.reason)
  return outcome.output
}
