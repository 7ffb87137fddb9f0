/** Prospective short-circuit current at every source, busbar and panel, and at every protective device. */
import { lookup } from '../../model/lookup.js'
import { cableLengthM, type CircuitFeed } from '../../model/results.js'
import { type BatteryFault, type LoopStep, type Prospective } from '../../model/results/protective-devices.js'
import type { Circuit, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { shoreClass } from '../../references/tables/interrupting-capacity.js'
import { conductorOf } from '../conductors/conductor.js'
import { pathWithin } from '../conductors/circuit-cables.js'
import { feederOf } from '../feeding/supply.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { batteryFault } from './battery-fault.js'
import { coldConductorMethod } from './cold-conductor.calc.js'
import { prospectiveShortCircuitMethod } from './prospective-short-circuit-current.calc.js'

export interface FaultCurrents {
  readonly byBattery: ReadonlyMap<Tag, BatteryFault>
  readonly byPoint: ReadonlyMap<string, Prospective>
  /** Right behind the device of a circuit. */
  atDevice(circuit: Circuit): Prospective
}

/** The conductors from a source to a place; or why no source is known. */
type Loop = { readonly source: SourceAt; readonly steps: readonly LoopStep[]; readonly leftOut: readonly string[] } | { readonly reason: string }
type SourceAt = { readonly is: 'battery'; readonly tag: Tag } | { readonly is: 'output'; readonly equipment: Equipment; readonly output: Output }

export function faultCurrents(vessel: Vessel, basis: Basis, before: Upstream): FaultCurrents {
  const { batteries, busbars, panels, cables, circuits } = lookup(vessel)
  const byBattery = new Map(vessel.batteries.map(battery => [battery.tag, batteryFault(vessel, battery, before.feeding)]))
  const loops = new Map<string, Loop>()
  const feedOf = (circuit: Circuit): CircuitFeed | undefined => before.feeding.byCircuit.get(circuit.tag)

  function loopTo(pointTag: Tag, terminal: string | null): Loop {
    const key = pointKey(pointTag, terminal)
    const known = loops.get(key)
    if (known !== undefined) return known
    // Stands while the way up is followed, so that circuits in a ring come to an end.
    loops.set(key, { reason: `no source is reached from ${pointTag}` })
    const loop = workedOut(pointTag, terminal)
    loops.set(key, loop)
    return loop
  }

  function workedOut(pointTag: Tag, terminal: string | null): Loop {
    const feeder = feederOf(vessel, pointTag, terminal)
    if (batteries.has(pointTag)) return { source: { is: 'battery', tag: pointTag }, steps: [], leftOut: [] }
    if (feeder.is === 'circuit') return beyond(feeder.circuit, pointTag)
    const found = outputOf(lookup(vessel).equipment.get(pointTag), terminal)
    if (found !== null) return { source: found, steps: [], leftOut: [] }
    return { reason: feeder.is === 'several' ? `several circuits feed ${pointTag}, so what a fault there draws on is not known` : `no source is reached from ${pointTag}` }
  }

  /** From the source through a circuit to what it feeds. */
  function beyond(circuit: Circuit, toTag: Tag): Loop {
    const above = loopTo(circuit.fedFromTag, circuit.fedFromTerminal)
    const feed = feedOf(circuit)
    if ('reason' in above || feed === undefined) return above
    const path = pathWithin(vessel, basis.protection, circuit, feed, toTag, new Map())
    if ('reason' in path) return { ...above, leftOut: [...above.leftOut, path.reason] }
    return extended(above, path.map(({ cableTag, timesLength, returnAssumedAlike }) => ({ circuitTag: circuit.tag, cableTag, timesLength, returnAssumedAlike })))
  }

  function extended(
    above: Exclude<Loop, { readonly reason: string }>,
    path: readonly { readonly circuitTag: Tag; readonly cableTag: Tag; readonly timesLength: 1 | 2; readonly returnAssumedAlike: boolean }[],
  ): Loop {
    const steps: LoopStep[] = [...above.steps]
    const leftOut = [...above.leftOut]
    for (const { circuitTag, cableTag, timesLength, returnAssumedAlike } of path) {
      const resistance = resistanceOf(cableTag, timesLength)
      if (resistance.status === 'not computed') leftOut.push(resistance.reason)
      steps.push({ circuitTag, cableTag, resistance, returnAssumedAlike })
    }
    return { ...above, steps, leftOut }
  }

  function resistanceOf(cableTag: Tag, timesLength: 1 | 2): LoopStep['resistance'] {
    const lengthM = cableLengthM(before.routing.byCable.get(cableTag))
    const { size } = conductorOf(vessel, cableTag)
    if (lengthM === null || size === null) {
      return { status: 'not computed', method: coldConductorMethod.id, reason: `the ${lengthM === null ? 'length' : 'conductor size'} of ${cableTag} is not known` }
    }
    return runMethod(coldConductorMethod, {
      conductorLengthM: timesLength * lengthM, crossSectionMm2: size.crossSectionMm2, parallelCount: cables.get(cableTag)?.parallelCount ?? 1,
    })
  }

  function prospective(loop: Loop, place: 'main' | 'branch'): Prospective {
    if ('reason' in loop) return { sourceTag: null, steps: [], leftOut: [], current: notComputed(loop.reason) }
    const { source, steps, leftOut } = loop
    if (source.is === 'output') return { sourceTag: source.equipment.tag, steps: [], leftOut: [], current: ofOutput(basis, source, place) }
    const { openCircuitVoltage, internalResistance, otherSources } = byBattery.get(source.tag)!
    const common = { sourceTag: source.tag, steps, leftOut }
    if (openCircuitVoltage.status === 'not computed') return { ...common, current: notComputed(openCircuitVoltage.reason) }
    if (internalResistance.status === 'not computed') return { ...common, current: notComputed(internalResistance.reason) }
    return {
      ...common,
      current: runMethod(prospectiveShortCircuitMethod, {
        openCircuitVoltageV: openCircuitVoltage.output.openCircuitVoltageV,
        internalResistanceMilliOhm: internalResistance.status === 'recorded' ? internalResistance.internalResistanceMilliOhm : internalResistance.output.internalResistanceMilliOhm,
        conductorResistanceMilliOhm: steps.reduce((sum, { resistance }) => sum + (resistance.status === 'computed' ? resistance.output.conductorResistanceMilliOhm : 0), 0),
        otherSourcesCurrentA: otherSources.reduce((sum, { currentA }) => sum + (currentA ?? 0), 0),
      }),
    }
  }

  const feeding = [...new Map([...circuits.values()].map(({ fedFromTag, fedFromTerminal }) => [pointKey(fedFromTag, fedFromTerminal), { tag: fedFromTag, terminal: fedFromTerminal }])).values()]
  const points = [
    ...[...batteries.keys(), ...[...busbars.values()].filter(({ polarity }) => polarity === 'positive').map(({ tag }) => tag), ...panels.keys()].map(tag => ({ tag, terminal: null })),
    ...feeding.filter(({ tag }) => lookup(vessel).equipment.has(tag)),
  ]
  return {
    byBattery,
    byPoint: new Map(points.map(({ tag, terminal }) => [pointKey(tag, terminal), prospective(loopTo(tag, terminal), 'main')])),
    atDevice: circuit => {
      const above = loopTo(circuit.fedFromTag, circuit.fedFromTerminal)
      const place = isMain(vessel, feedOf(circuit)) ? 'main' : 'branch'
      if ('reason' in above) return prospective(above, place)
      return prospective(extended(above, (feedOf(circuit)?.supplySegments ?? []).map(({ cableTag }) => {
        // A fault at the device may lie right beside the source's other pole: of a single core only the way out counts.
        return { circuitTag: circuit.tag, cableTag, timesLength: cables.get(cableTag)?.carries === 'both' ? 2 : 1, returnAssumedAlike: false }
      })), place)
    },
  }
}

export const pointKey = (tag: Tag, terminal: string | null): string => (terminal === null ? tag : `${tag}:${terminal}`)

/** The first device behind a source, however many circuits without one lie between; those behind it are branch devices. */
export const isMain = (vessel: Vessel, feed: CircuitFeed | undefined): boolean =>
  feed !== undefined && feed.chain.slice(0, -1).every(tag => lookup(vessel).circuits.get(tag)?.protection == null)

const notComputed = (reason: string) => ({ status: 'not computed', method: prospectiveShortCircuitMethod.id, reason }) as const

/** The only output, or the one whose terminal is meant. */
export function outputOf(equipment: Equipment | undefined, terminal: string | null): Extract<SourceAt, { is: 'output' }> | null {
  if (equipment === undefined) return null
  const output = terminal === null && equipment.outputs.length === 1 ? equipment.outputs[0] : equipment.outputs.find(each => each.terminal === terminal)
  return output === undefined ? null : { is: 'output', equipment, output }
}

/** Conductors only make the current smaller; as the impedance of such a source is not recorded they are not counted. */
function ofOutput({ devices }: Basis, { equipment, output }: Extract<SourceAt, { is: 'output' }>, place: 'main' | 'branch'): Prospective['current'] {
  const { shortCircuitCurrentA, nominalVoltageV, ratedCurrentA } = output
  if (shortCircuitCurrentA !== null) {
    return { status: 'stated', prospectiveShortCircuitCurrentA: shortCircuitCurrentA, citation: { source: 'vessel-data', place: `short-circuit current of ${equipment.tag}` } }
  }
  const assumed = equipment.kind === 'shore inlet' && devices.interruptingCapacity.byClass && ratedCurrentA !== null ? shoreClass(nominalVoltageV, ratedCurrentA) : null
  return assumed === null
    ? notComputed(`the short-circuit current of ${equipment.tag} is not recorded`)
    : { status: 'stated', prospectiveShortCircuitCurrentA: place === 'main' ? assumed.mainA : assumed.branchA, citation: assumed.citation }
}
