/** How much current each circuit is designed for: from the loads up through the feeders; and what charging sources put in. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import { type CircuitFeed, type CurrentPart, designCurrentA, type Infeed } from '../../model/results.js'
import type { Circuit, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import { converterInputMethod } from '../sources/converter-input.calc.js'
import { usualEfficiencyPercent } from '../sources/efficiency.js'
import type { CircuitCables } from './circuit-walk.js'
import { designCurrent, designCurrentMethod } from './design-current.calc.js'
import { loadCurrentMethod } from './load-current.calc.js'
import { meetingOf } from './meeting.js'
import { feederOf, type Source, type Supplies } from './supply.js'

export type Demand = Pick<CircuitFeed, 'designCurrent' | 'currentParts' | 'infeed'>
/** What flows at one load, panel or busbar of a circuit; null where it is not known. */
export interface Flow {
  readonly drawnA: number | null
  readonly putInA: number | null
}
export interface Demands {
  ofCircuit(circuit: Circuit): Demand
  atLoad(circuit: Circuit, tag: Tag): Flow
}

/** What was found for some loads, and why some were left out. */
interface Gathered {
  readonly parts: readonly CurrentPart[]
  readonly reasons: readonly string[]
  /** From charging sources; a current that is not recorded leaves its part out, and is counted. */
  readonly putIn: readonly CurrentPart[]
  readonly putInUnknown: boolean
}
const nothing: Gathered = { parts: [], reasons: [], putIn: [], putInUnknown: false }
const together = (all: readonly Gathered[]): Gathered => ({
  parts: all.flatMap(({ parts }) => parts),
  reasons: all.flatMap(({ reasons }) => reasons),
  putIn: all.flatMap(({ putIn }) => putIn),
  putInUnknown: all.some(({ putInUnknown }) => putInUnknown),
})

export function demandsOf(vessel: Vessel, supplies: Supplies, cablesOf: ReadonlyMap<Tag, CircuitCables>): Demands {
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
    const gathered = gather(circuit, circuit.loadTags)
    const { parts, reasons } = gathered
    const infeed = infeedOf(circuit, gathered)
    const currentParts = infeed?.only === true ? infeed.parts : parts
    if (circuit.designCurrentA !== null) return { designCurrent: { status: 'declared', designCurrentA: circuit.designCurrentA }, currentParts, infeed }
    if (circuit.loadTags.length === 0) return notComputed(['it lists no loads'])
    if (infeed?.only === true && infeed.currentA === null) return notComputed(['no current is recorded for the output that charges through it'], currentParts, infeed)
    if (reasons.length > 0) return notComputed(reasons, parts, infeed)
    if (currentParts.length === 0) return notComputed(['all that it feeds has been removed'])
    return { designCurrent: runMethod(designCurrentMethod, totalOf(currentParts)), currentParts, infeed }
  }

  /** Only what it lists puts current in: then the circuit is one for charging. */
  function infeedOf(circuit: Circuit, { parts, reasons, putIn, putInUnknown }: Gathered): Infeed | null {
    if (putIn.length === 0 && !putInUnknown) return null
    const only = parts.length === 0 && reasons.length === 0
    const sumA = putInUnknown ? null : putIn.reduce((sum, { currentA }) => sum + currentA, 0)
    return { currentA: only && circuit.designCurrentA !== null ? circuit.designCurrentA : sumA, parts: putIn, only }
  }

  function gather(circuit: Circuit, loadTags: readonly Tag[]): Gathered {
    const found: Gathered[] = []
    const unrecorded: Tag[] = []
    for (const tag of new Set(loadTags)) {
      const item = equipment.get(tag)
      if (panels.has(tag) || busbars.has(tag)) found.push(onwards(tag))
      else if (item !== undefined && item.outputs.length > 0 && item.status !== 'removed') found.push(ofConverter(item, circuit))
      else if (item?.status !== 'removed') {
        const part = item === undefined ? null : partOf(item, circuit)
        if (part === null) unrecorded.push(tag)
        else if (typeof part === 'string') found.push({ ...nothing, reasons: [part] })
        else found.push({ ...nothing, parts: [part] })
      }
    }
    const gathered = together(found)
    return unrecorded.length === 0 ? gathered : { ...gathered, reasons: [`no current or power is recorded for ${inWords(unrecorded)}`, ...gathered.reasons] }
  }

  /** A load's part; a reason in words; or null when nothing is recorded. */
  function partOf(item: Equipment, circuit: Circuit): CurrentPart | string | null {
    const { tag, powerW } = item
    const recorded = recordedPart(item)
    if (recorded !== null || powerW === null) return recorded
    const supply = supplies.byCircuit.get(circuit.tag)
    if (!supply?.fed) return `of ${tag} only the power is recorded, and the voltage is not known: ${supply?.reason}`
    const current = runMethod(loadCurrentMethod, { powerW, nominalVoltageV: supply.source.nominalVoltageV })
    return current.status === 'computed' ? { tag, currentA: current.output.loadCurrentA, demandFactor: 1, from: 'power', by: current } : current.reason
  }

  function recordedPart({ tag, currentMaxA, currentTypicalA }: Equipment): CurrentPart | null {
    if (currentMaxA !== null) return { tag, currentA: currentMaxA, demandFactor: 1, from: 'maximum current' }
    return currentTypicalA === null ? null : { tag, currentA: currentTypicalA, demandFactor: 1, from: 'typical current' }
  }

  function ofConverter(item: Equipment, circuit: Circuit): Gathered {
    const supply = supplies.byCircuit.get(circuit.tag)
    if (!supply?.fed) return { ...nothing, reasons: [`whether ${item.tag} gives or takes is not known: ${supply?.reason}`] }
    const meeting = meetingOf(vessel, item, supply.source, cablesOf.get(circuit.tag) ?? { supply: [], outwards: [] })
    if ('reason' in meeting) return { ...nothing, reasons: [meeting.reason] }
    return together([
      meeting.gives === null ? nothing : given(item, meeting.gives),
      meeting.takes ? taken(item, supply.source, meeting.gives) : nothing,
    ])
  }

  /** Of an alternator with a curve alone its highest point. */
  const given = ({ tag }: Equipment, { ratedCurrentA: rated, curve }: Output): Gathered => {
    const ratedCurrentA = rated ?? (curve.length === 0 ? null : Math.max(...curve.map(({ currentA }) => currentA)))
    return ratedCurrentA === null ? { ...nothing, putInUnknown: true } : { ...nothing, putIn: [{ tag, currentA: ratedCurrentA, demandFactor: 1, from: 'output' }] }
  }

  /** What a converter, inverter or charger takes at full output; what an inverter charger only passes on is added. */
  function taken(item: Equipment, source: Source, gives: Output | null): Gathered {
    const passesOn = item.kind === 'inverter charger' && source.form === 'ac'
    // The current recorded of an inverter charger is that of its battery side.
    const recorded = passesOn ? null : recordedPart(item)
    if (recorded !== null) return { ...nothing, parts: [recorded] }
    // A solar panel or an alternator decides itself how much flows.
    if (source.drives && source.ratedCurrentA !== null) return { ...nothing, parts: [{ tag: item.tag, currentA: source.ratedCurrentA, demandFactor: 1, from: 'input' }] }
    const outputs = item.outputs.filter(output => output !== gives && !(passesOn && output.form === 'ac'))
    const unrated = outputs.filter(({ ratedCurrentA }) => ratedCurrentA === null)
    if (unrated.length > 0) return { ...nothing, reasons: [`no current is recorded for an output of ${item.tag}`] }
    const input = runMethod(converterInputMethod, {
      outputPowerW: outputs.reduce((sum, { nominalVoltageV, ratedCurrentA }) => sum + nominalVoltageV * (ratedCurrentA ?? 0), 0),
      inputVoltageV: source.nominalVoltageV,
      efficiencyPercent: item.efficiencyPercent ?? usualEfficiencyPercent,
    })
    if (input.status === 'not computed') return { ...nothing, reasons: [input.reason] }
    const own: Gathered = { ...nothing, parts: [{ tag: item.tag, currentA: input.output.inputCurrentA, demandFactor: 1, from: 'input', by: input }] }
    const ac = (circuit: Circuit): boolean => { const from = feederOf(vessel, circuit.fedFromTag, circuit.fedFromTerminal); return from.is === 'source' && from.source.form === 'ac' }
    return passesOn ? together([own, sumOf(item.tag, ac)]) : own
  }

  /** What the circuits fed from a panel or busbar draw together. */
  function onwards(pointTag: Tag): Gathered {
    const feeder = feederOf(vessel, pointTag)
    if (feeder.is === 'several') {
      return { ...nothing, reasons: [`${pointTag} is fed by ${inWords(feeder.circuits.map(({ tag }) => tag))}, so how the current divides is not known`] }
    }
    const sum = sumOf(pointTag)
    return sum === nothing ? { ...nothing, reasons: [`no normally closed circuit is fed from ${pointTag}`] } : sum
  }

  function sumOf(pointTag: Tag, counts: (circuit: Circuit) => boolean = () => true): Gathered {
    const fed = (circuitsFedFrom.get(pointTag) ?? []).filter(circuit => counts(circuit) && circuit.normalState === 'closed' && !isSpare(circuit) && !feedsOnlyRemoved(circuit))
    if (fed.length === 0) return nothing
    const unknown: Tag[] = []
    const putIn: CurrentPart[] = []
    let putInUnknown = false
    const parts = fed.flatMap((circuit): CurrentPart[] => {
      const demand = ofCircuit(circuit)
      const { infeed } = demand
      if (infeed !== null) {
        if (infeed.currentA === null) putInUnknown = true
        else putIn.push({ tag: circuit.tag, currentA: infeed.currentA, demandFactor: 1, from: 'circuit' })
        if (infeed.only) return []
      }
      const currentA = designCurrentA(demand)
      if (currentA === null) unknown.push(circuit.tag)
      return currentA === null ? [] : [{ tag: circuit.tag, currentA, demandFactor: circuit.demandFactor, from: 'circuit' }]
    })
    return { parts, reasons: unknown.length === 0 ? [] : [`the design current of ${inWords(unknown)} is not known`], putIn, putInUnknown }
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
      const gathered = gather(circuit, [tag])
      const { parts, reasons, putIn, putInUnknown } = gathered
      const putInA = putInUnknown ? null : putIn.reduce((sum, { currentA }) => sum + currentA, 0)
      const charging = infeedOf(circuit, gathered)?.only === true
      return { drawnA: charging ? putInA : reasons.length > 0 ? null : designCurrent(totalOf(parts)).designCurrentA, putInA }
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

const notComputed = (reasons: readonly string[], currentParts: readonly CurrentPart[] = [], infeed: Infeed | null = null): Demand =>
  ({ designCurrent: { status: 'not computed', method: designCurrentMethod.id, reason: reasons.join('; ') }, currentParts, infeed })
