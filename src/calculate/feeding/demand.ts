/** How much current each circuit is designed for: from the loads up through the feeders. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, type CurrentPart, designCurrentA } from '../../model/results.js'
import type { Circuit, Equipment, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import { designCurrent, designCurrentMethod } from './design-current.calc.js'
import { loadCurrentMethod } from './load-current.calc.js'
import { feederOf, type Supplies } from './supply.js'

export type Demand = Pick<CircuitFeed, 'designCurrent' | 'currentParts'>
export interface Demands {
  ofCircuit(circuit: Circuit): Demand
  /** Current drawn at a load, panel or busbar of that circuit, or null when not known. */
  atLoad(circuit: Circuit, tag: Tag): number | null
}

/** What was found for some loads, and why some were left out. */
interface Gathered { readonly parts: readonly CurrentPart[]; readonly reasons: readonly string[] }

/** An a.c. circuit is listed and drawn, and not calculated yet. */
export function isAcCircuit(vessel: Vessel, circuit: Circuit): boolean {
  const { cablesAt, cableTypes } = lookup(vessel)
  return (cablesAt.get(circuit.tag) ?? []).some(({ typeTag }) => cableTypes.get(typeTag ?? '')?.use === 'ac power')
}

export function demandsOf(vessel: Vessel, supplies: Supplies): Demands {
  const { equipment, panels, busbars, circuitsFedFrom, cablesAt } = lookup(vessel)
  const known = new Map<Tag, Demand>()
  const underWay = new Set<Tag>()

  function ofCircuit(circuit: Circuit): Demand {
    const existing = known.get(circuit.tag)
    if (existing !== undefined) return existing
    if (underWay.has(circuit.tag)) return notComputed([`${circuit.tag} feeds itself in a ring`])
    underWay.add(circuit.tag)
    const demand = workedOut(circuit)
    underWay.delete(circuit.tag)
    known.set(circuit.tag, demand)
    return demand
  }

  function workedOut(circuit: Circuit): Demand {
    if (isAcCircuit(vessel, circuit)) return notComputed(['a.c. circuits are not calculated yet'])
    const { parts, reasons } = gather(circuit, circuit.loadTags)
    if (circuit.designCurrentA !== null) return { designCurrent: { status: 'declared', designCurrentA: circuit.designCurrentA }, currentParts: parts }
    if (circuit.loadTags.length === 0) return notComputed(['it lists no loads'])
    if (reasons.length > 0) return notComputed(reasons, parts)
    if (parts.length === 0) return notComputed(['all that it feeds has been removed'])
    return { designCurrent: runMethod(designCurrentMethod, totalOf(parts)), currentParts: parts }
  }

  function gather(circuit: Circuit, loadTags: readonly Tag[]): Gathered {
    const parts: CurrentPart[] = []
    const reasons: string[] = []
    const unrecorded: Tag[] = []
    for (const tag of new Set(loadTags)) {
      const item = equipment.get(tag)
      if (panels.has(tag) || busbars.has(tag)) {
        const fed = onwards(tag)
        parts.push(...fed.parts)
        reasons.push(...fed.reasons)
      } else if (item?.status !== 'removed') {
        const part = item === undefined ? null : partOf(item, circuit)
        if (part === null) unrecorded.push(tag)
        else if (typeof part === 'string') reasons.push(part)
        else parts.push(part)
      }
    }
    if (unrecorded.length > 0) reasons.unshift(`no current or power is recorded for ${inWords(unrecorded)}`)
    return { parts, reasons }
  }

  /** A load's part; a reason in words; or null when nothing is recorded. */
  function partOf(item: Equipment, circuit: Circuit): CurrentPart | string | null {
    const { tag, currentMaxA, currentTypicalA, powerW } = item
    if (currentMaxA !== null) return { tag, currentA: currentMaxA, demandFactor: 1, from: 'maximum current' }
    if (currentTypicalA !== null) return { tag, currentA: currentTypicalA, demandFactor: 1, from: 'typical current' }
    if (powerW === null) return null
    const supply = supplies.byCircuit.get(circuit.tag)
    if (!supply?.fed) return `of ${tag} only the power is recorded, and the voltage is not known: ${supply?.reason}`
    const current = runMethod(loadCurrentMethod, { powerW, nominalVoltageV: supply.battery.nominalVoltageV })
    return current.status === 'computed' ? { tag, currentA: current.output.loadCurrentA, demandFactor: 1, from: 'power' } : current.reason
  }

  /** What the circuits fed from a panel or busbar draw together. */
  function onwards(pointTag: Tag): Gathered {
    const feeder = feederOf(vessel, pointTag)
    if (feeder.is === 'several') {
      return { parts: [], reasons: [`${pointTag} is fed by ${inWords(feeder.circuits.map(({ tag }) => tag))}, so how the current divides is not known`] }
    }
    const fed = (circuitsFedFrom.get(pointTag) ?? []).filter(circuit => circuit.normalState === 'closed' && !isSpare(circuit) && !feedsOnlyRemoved(circuit))
    if (fed.length === 0) return { parts: [], reasons: [`no normally closed circuit is fed from ${pointTag}`] }
    const unknown: Tag[] = []
    const parts = fed.flatMap((circuit): CurrentPart[] => {
      const currentA = designCurrentA(ofCircuit(circuit))
      if (currentA === null) unknown.push(circuit.tag)
      return currentA === null ? [] : [{ tag: circuit.tag, currentA, demandFactor: circuit.demandFactor, from: 'circuit' }]
    })
    return { parts, reasons: unknown.length === 0 ? [] : [`the design current of ${inWords(unknown)} is not known`] }
  }

  /** An entry that only reserves a way: it feeds nothing and nothing is wired to it. */
  const isSpare = (circuit: Circuit): boolean =>
    circuit.loadTags.length === 0 && circuit.designCurrentA === null && !cablesAt.has(circuit.tag)

  /** What has been taken out draws nothing; what is left of the circuit is not assessed, its feeder is. */
  const feedsOnlyRemoved = (circuit: Circuit): boolean =>
    circuit.designCurrentA === null && circuit.loadTags.length > 0 && circuit.loadTags.every(tag => equipment.get(tag)?.status === 'removed')

  return {
    ofCircuit,
    atLoad: (circuit, tag) => {
      const { parts, reasons } = gather(circuit, [tag])
      return reasons.length > 0 ? null : designCurrent(totalOf(parts)).designCurrentA
    },
  }
}

const weighted = (parts: readonly CurrentPart[]): number => parts.reduce((sum, { currentA, demandFactor }) => sum + demandFactor * currentA, 0)

function totalOf(parts: readonly CurrentPart[]) {
  const connectedCurrentA = parts.reduce((sum, { currentA }) => sum + currentA, 0)
  return {
    connectedCurrentA,
    demandFactor: connectedCurrentA === 0 ? 1 : weighted(parts) / connectedCurrentA,
    largestCurrentA: Math.max(0, ...parts.filter(({ demandFactor }) => demandFactor > 0).map(({ currentA }) => currentA)),
  }
}

const notComputed = (reasons: readonly string[], currentParts: readonly CurrentPart[] = []): Demand =>
  ({ designCurrent: { status: 'not computed', method: designCurrentMethod.id, reason: reasons.join('; ') }, currentParts })
