/** What is to be expected between the conductors at each point of a circuit, and which cable ends are touched for it. */
import { lookup } from '../../model/lookup.js'
import type { CircuitFeed, DropStep } from '../../model/results.js'
import type { BusResult, SolvedSection } from '../../model/results/can-bus.js'
import type { CableEndRef, ExpectedOutcome, Reading } from '../../model/results/fault-tracing.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { expectedVoltageMethod } from './expected-voltage.calc.js'

/** Extra-low voltage, at which an owner may touch a circuit with a meter: ISO 10133 is for systems of up to 50 V d.c. (from memory). */
const highestForOwnersV = 50

export const notComputed = (reason: string): ExpectedOutcome => ({ status: 'not computed', method: expectedVoltageMethod.id, reason })

/** Nothing for an owner to measure: a.c., and d.c. above extra-low voltage. */
export const isMains = ({ supplyForm, nominalVoltageV }: Pick<CircuitFeed, 'supplyForm' | 'nominalVoltageV'>): boolean =>
  supplyForm === 'ac' || (nominalVoltageV ?? 0) > highestForOwnersV

/** With the drop by resistance of these cables taken off the source's voltage. */
function afterSteps({ nominalVoltageV, sourceTag }: CircuitFeed, steps: readonly DropStep[]): ExpectedOutcome {
  if (sourceTag === null) return notComputed('no source is reached')
  if (nominalVoltageV === null) return notComputed(`the nominal voltage of ${sourceTag} is not known`)
  let voltageDropV = 0
  for (const { physical } of steps) {
    if (physical.status === 'not computed') return notComputed(physical.reason)
    voltageDropV += physical.output.voltageDropV
  }
  return runMethod(expectedVoltageMethod, { sourceVoltageV: nominalVoltageV, voltageDropV })
}

export interface CircuitVoltages {
  /** At a load, at the end of all its cables. */
  atLoad(loadTag: Tag): ExpectedOutcome
  /** Somewhere on the way: without the cables that lie beyond it. */
  before(loadTag: Tag, beyond: ReadonlySet<Tag>): ExpectedOutcome
  /** At the protective device, which loses nothing that could be reckoned. */
  atDevice(): ExpectedOutcome
  /** At what feeds it. */
  atPoint(): ExpectedOutcome
}

export function circuitVoltages({ feeding, voltageDrop }: Upstream, circuit: Circuit, feed: CircuitFeed): CircuitVoltages {
  const drop = voltageDrop.byCircuit.get(circuit.tag)
  const own = ({ circuitTag }: DropStep): boolean => circuitTag === circuit.tag
  const wayOut = new Set(feed.segments.map(({ cableTag }) => cableTag))
  const supply = new Set(feed.supplySegments.map(({ cableTag }) => cableTag))

  const at = (loadTag: Tag | null, keep: (step: DropStep) => boolean): ExpectedOutcome => {
    const load = drop?.toLoads.find(each => loadTag === null || each.loadTag === loadTag)
    if (load !== undefined) return afterSteps(feed, load.steps.filter(keep))
    const why = drop?.notAssessed.find(each => each.loadTag === loadTag || each.loadTag === null) ?? drop?.notAssessed[0]
    return notComputed(`the voltage drop of ${circuit.tag} is not known${why === undefined ? '' : `: ${why.reason}`}`)
  }
  const atPoint = (): ExpectedOutcome => {
    const feederTag = feed.chain.at(-2)
    if (feederTag === undefined) return afterSteps(feed, [])
    const feeder = voltageDrop.byCircuit.get(feederTag)?.toLoads.find(({ loadTag }) => loadTag === circuit.fedFromTag)
    return feeder === undefined ? notComputed(`the voltage drop of ${feederTag} to ${circuit.fedFromTag} is not known`) : afterSteps(feeding.byCircuit.get(feederTag)!, feeder.steps)
  }
  return {
    atLoad: loadTag => at(loadTag, () => true),
    before: (loadTag, beyond) => at(loadTag, step => !own(step) || !beyond.has(step.cableTag)),
    // What comes back to the device has cables of its own, which do not lie between it and what feeds it.
    atDevice: () => (supply.size === 0 ? atPoint() : at(null, step => !own(step) || (supply.has(step.cableTag) && !wayOut.has(step.cableTag)))),
    atPoint,
  }
}

/** What a CAN bus brings to one of its tees, and past the drop to the device on it; and at its supply. */
export function busVoltages({ bus, supply }: BusResult): { atDevice(tag: Tag): ExpectedOutcome; atTee(teeTag: Tag): ExpectedOutcome; atInsertion(tag: Tag): ExpectedOutcome } {
  const solved = supply.sections.flatMap(section => section.solved ?? [])
  const missing = supply.sections.flatMap(section => section.missing)[0] ?? `the supply of ${bus.tag} is not recorded`
  const sourceV = ({ insertion }: SolvedSection): number | null => (insertion.regulated ? insertion.voltageV : insertion.nominalVoltageV)
  const expected = (section: SolvedSection, beyondV: number): ExpectedOutcome => {
    const sourceVoltageV = sourceV(section)
    const feedDropV = section.insertion.regulated ? 0 : section.insertion.feedDropV
    if (sourceVoltageV === null || feedDropV === null) return notComputed(section.insertion.missing ?? missing)
    return runMethod(expectedVoltageMethod, { sourceVoltageV, voltageDropV: feedDropV + beyondV })
  }
  const teeWhere = (is: (tee: SolvedSection['tees'][number]) => boolean) =>
    solved.flatMap(section => section.tees.filter(is).map(tee => ({ section, tee })))[0]
  return {
    atDevice: tag => {
      const found = teeWhere(({ device }) => device?.tag === tag)
      const dropCable = found?.tee.device?.dropCable
      return found === undefined || dropCable == null ? notComputed(missing) : expected(found.section, found.tee.dropV + dropCable.output.voltageDropV)
    },
    atTee: teeTag => {
      const found = teeWhere(({ tag }) => tag === teeTag)
      return found === undefined ? notComputed(missing) : expected(found.section, found.tee.dropV)
    },
    atInsertion: tag => {
      const section = solved.find(({ insertion }) => insertion.tag === tag)
      return section === undefined ? notComputed(missing) : expected(section, 0)
    },
  }
}

/** The end of a cable that is at a thing; null where neither is. */
export function endAt(vessel: Vessel, cableTag: Tag | undefined, tag: Tag): CableEndRef | null {
  const cable = cableTag === undefined ? undefined : lookup(vessel).cables.get(cableTag)
  if (cable === undefined) return null
  return cable.to.tag === tag ? { tag: cable.tag, end: 'to' } : cable.from.tag === tag ? { tag: cable.tag, end: 'from' } : null
}

/** The other end of the same cable. */
export const farEnd = (end: CableEndRef | null): CableEndRef | null => (end === null ? null : { tag: end.tag, end: end.end === 'to' ? 'from' : 'to' })

/**
 * Where the negative is touched: in the same cable where that holds both conductors, else on a cable of the way back that ends
 * here, else at a battery's post or a negative busbar. `afterWayBack`: the figure has the drop of the way back in it, so it is
 * the busbar at which that begins; else the end next to the source.
 */
export function minusAt(vessel: Vessel, circuit: Circuit, plus: CableEndRef | null, { placeTags, afterWayBack }: { readonly placeTags: readonly Tag[]; readonly afterWayBack: boolean }): CableEndRef | null {
  const { cables, batteries, busbars } = lookup(vessel)
  if (plus !== null && cables.get(plus.tag)?.carries === 'both') return plus
  for (const placeTag of placeTags) {
    for (const cableTag of circuit.returnCableTags) {
      const end = endAt(vessel, cableTag, placeTag)
      if (end !== null) return end
    }
  }
  const ends = circuit.returnCableTags.flatMap(tag => (['from', 'to'] as const).map((end): CableEndRef => ({ tag, end })))
  const placeOf = ({ tag, end }: CableEndRef): Tag => cables.get(tag)?.[end].tag ?? ''
  const atBattery = (end: CableEndRef): boolean => batteries.has(placeOf(end))
  const atBusbar = (end: CableEndRef): boolean => busbars.get(placeOf(end))?.polarity === 'negative'
  return (afterWayBack ? ends.find(atBusbar) ?? ends.find(atBattery) : ends.findLast(end => atBattery(end) || atBusbar(end))) ?? null
}

export const voltageReading = (plus: CableEndRef | null, minus: CableEndRef | null, sourceTag: Tag | null, expected: ExpectedOutcome): Reading =>
  ({ is: 'voltage', plus, minus, sourceTag, expected })
