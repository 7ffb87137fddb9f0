/** What arrives at a power insertion point. */
import type { Insertion } from '../../model/results/can-bus.js'
import type { DropStep, LoadDrop } from '../../model/results.js'
import type { BackboneElement, Vessel } from '../../model/vessel.js'
import { lookup } from '../../model/lookup.js'
import { highestDeviceV } from '../../references/tables/can-rules.js'
import { compare } from '../compare.js'
import type { Upstream } from '../upstream.js'

type Power = Extract<BackboneElement, { kind: 'power' }>

export function insertionOf(vessel: Vessel, before: Upstream, power: Power, position: number): Insertion {
  const { tag, circuitTag, supplyVoltageV } = power
  const bare = { tag, position, circuitTag, feedResistanceOhm: null }
  const held = (voltageV: number) => compare('voltageV', voltageV, highestDeviceV)
  if (supplyVoltageV !== null) {
    return { ...bare, voltageV: supplyVoltageV, nominalVoltageV: null, feedDropV: null, regulated: true, highest: held(supplyVoltageV), missing: null }
  }
  const feed = feedOf(vessel, before, power)
  if (typeof feed === 'string') return { ...bare, voltageV: null, nominalVoltageV: null, feedDropV: null, regulated: false, highest: null, missing: feed }
  const { nominalVoltageV, feedDropV, feedResistanceOhm } = feed
  if (feedDropV === null) {
    return { ...bare, voltageV: null, nominalVoltageV, feedDropV: null, regulated: false, highest: held(nominalVoltageV), missing: `the voltage drop of circuit ${circuitTag} up to ${tag} is not known` }
  }
  return { ...bare, feedResistanceOhm, voltageV: nominalVoltageV - feedDropV, nominalVoltageV, feedDropV, regulated: false, highest: held(nominalVoltageV - feedDropV), missing: null }
}

interface Feed { readonly nominalVoltageV: number; readonly feedDropV: number | null; readonly feedResistanceOhm: number | null }

/** The drop to the insertion point; where the circuit lists something else, the largest of its drops. */
function feedOf(vessel: Vessel, { feeding, voltageDrop }: Upstream, { tag, circuitTag }: Power): Feed | string {
  if (circuitTag === null || !lookup(vessel).circuits.has(circuitTag)) return `the voltage at ${tag} is not known: no circuit is recorded for it`
  const { nominalVoltageV = null, supplyForm = null } = feeding.byCircuit.get(circuitTag) ?? {}
  if (nominalVoltageV === null || supplyForm !== 'dc') return `the voltage at ${tag} is not known: circuit ${circuitTag} is fed from no d.c. source`
  const drops = voltageDrop.byCircuit.get(circuitTag)?.toLoads ?? []
  const here = drops.filter(({ loadTag }) => loadTag === tag)
  const dropV = ({ physicalDropV, voltageDropV }: LoadDrop): number => physicalDropV ?? voltageDropV
  const largest = (here.length > 0 ? here : drops).toSorted((a, b) => dropV(b) - dropV(a))[0]
  if (largest === undefined) return { nominalVoltageV, feedDropV: null, feedResistanceOhm: null }
  return { nominalVoltageV, feedDropV: dropV(largest), feedResistanceOhm: largest.steps.reduce((sum, step) => sum + resistanceOhm(step), 0) }
}

/** Ohm's law on what a step loses at its own current. A step without current loses nothing, and tells nothing. */
function resistanceOhm({ physical, byBasis, parallelCount }: DropStep): number {
  const { input, output } = physical.status === 'computed' ? physical : byBasis
  const currentA = (input['currentA'] ?? 0) * parallelCount
  return currentA > 0 ? output.voltageDropV / currentA : 0
}
