/** How far the boat has been measured: what each circuit, battery, residual-current device, bus and transmitter still lacks. */
import { grouped, lookup } from '../../model/lookup.js'
import { type CheckKind, type Coverage, isAssessed, type MeasuredThing, type ReadingCheck } from '../../model/results/commissioning.js'
import { cableTagsOf } from '../../model/results.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { bankOf } from '../sources/bank.js'
import type { BeforeCommissioning } from './before.js'
import { busKindsOf, transmittersOf } from './coverage-electronics.js'
import { residualDeviceOf, residualLimits } from './check-devices.js'
import { expectedAt } from './check-drop.js'
import { leastInsulation } from './check-values.js'

/** What belongs on a test sheet. A drop says at least as much as a voltage. */
const ofCircuit: readonly CheckKind[] = ['voltage drop', 'current', 'insulation resistance', 'polarity']
const ofBattery: readonly CheckKind[] = ['voltage', 'internal resistance']
const ofResidualDevice: readonly CheckKind[] = ['trip current', 'trip time']

export function coverage(vessel: Vessel, basis: Basis, before: BeforeCommissioning, checks: readonly ReadingCheck[]): Coverage {
  const { circuitsOfLoad } = lookup(vessel)
  const bySubject = grouped(checks, ({ subjectTag }) => [subjectTag])
  const measured = (tag: Tag, about: readonly Tag[], kinds: readonly CheckKind[]): MeasuredThing => {
    const found = [...new Set(about)].flatMap(each => bySubject.get(each) ?? [])
    const read = new Set(found.filter(isAssessed).map(({ kind }) => kind))
    return { tag, numbers: [...new Set(found.map(({ number }) => number))], missing: kinds.filter(kind => !read.has(kind)) }
  }
  return {
    circuits: vessel.circuits.map(circuit => {
      const feed = before.feeding.byCircuit.get(circuit.tag)
      // A load with several circuits does not say which of them was measured.
      const loads = circuit.loadTags.filter(tag => circuitsOfLoad.get(tag)?.length === 1)
      const least = feed === undefined ? null : leastInsulation(feed)
      return {
        ...measured(circuit.tag, [circuit.tag, ...cableTagsOf(circuit, feed), ...loads], ofCircuit),
        insulation: least?.status === 'computed' ? least.output : null,
        drops: circuit.loadTags.flatMap(loadTag => {
          const expected = expectedAt(before, circuit, loadTag)
          return expected === null ? [] : [{ loadTag, leastDropV: expected.leastDropV, mostDropV: expected.mostDropV }]
        }),
      }
    }),
    batteries: vessel.batteries.map(battery => ({
      ...measured(battery.tag, [battery.tag], ofBattery), internalResistanceMilliOhm: bankOf(battery).internalResistanceMilliOhm,
    })),
    residualDevices: [...vessel.circuits, ...vessel.equipment].flatMap(({ tag }) => {
      const device = residualDeviceOf(vessel, before, tag)
      if (device === null) return []
      const { range, time } = residualLimits(basis, device, tag)
      return [{
        ...measured(tag, [tag], ofResidualDevice), tripCurrent: range?.status === 'computed' ? range.output : null, tripTimeMs: time?.value ?? null,
      }]
    }),
    buses: [...before.canBus.byBus.values()].map(result => measured(result.bus.tag, [result.bus.tag], busKindsOf(result))),
    transmitters: transmittersOf(vessel, before.radio),
  }
}
