/** From which battery, shore connection or generator a circuit is supplied while certain sources run. */
import { inWords } from '../../findings/words.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { Circuit, Equipment, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { typicalEfficiencyPercent } from './practice.js'

/** A converter on the way, nearest to the load first. */
export interface Step { readonly tag: Tag; readonly efficiencyPercent: number; readonly recorded: boolean }

export type Supplied =
  | { readonly is: 'battery'; readonly batteryTag: Tag; readonly through: readonly Step[]; readonly passed: readonly Tag[] }
  /** Shore, generator: energy that no battery gives. */
  | { readonly is: 'outside'; readonly sourceTag: Tag; readonly passed: readonly Tag[] }
  | { readonly is: 'none'; readonly reason: string }

const outsideKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['shore inlet', 'generator', 'alternator', 'solar panel'])

export interface SupplyFinder {
  /** Of a circuit, while the sources of `running` run. */
  ofCircuit(circuit: Circuit, running: ReadonlySet<Tag>): Supplied
  /** Of the input of a charging source; `charges` is the battery it charges. Null where no input circuit is recorded. */
  ofInput(item: Equipment, charges: Tag, running: ReadonlySet<Tag>): Supplied | null
}

/** Of a circuit's loads those that put current into its battery through it, with their current where it is known. */
export function putInThrough(vessel: Vessel, feeding: FeedingResults, circuit: Circuit): ReadonlyMap<Tag, number | null> {
  const { equipment } = lookup(vessel)
  const feed = feeding.byCircuit.get(circuit.tag)
  const known = new Map<Tag, number | null>((feed?.infeed?.parts ?? []).flatMap(({ tag, from, currentA }) => (from === 'output' ? [[tag, currentA]] : [])))
  if (feed === undefined || feed.infeed === null) return known
  // One whose current is not recorded is no part of the sum, and draws nothing either.
  for (const tag of circuit.loadTags) {
    const item = equipment.get(tag)
    const draws = feed.currentParts.some(part => part.tag === tag)
    if (item !== undefined && item.outputs.length > 0 && item.status !== 'removed' && !known.has(tag) && !draws) known.set(tag, null)
  }
  return known
}

export function supplyFinder(vessel: Vessel, feeding: FeedingResults): SupplyFinder {
  const { batteries, equipment, circuitsOfLoad } = lookup(vessel)
  const putsIn = (circuit: Circuit, itemTag: Tag): boolean => putInThrough(vessel, feeding, circuit).has(itemTag)
  const isAc = ({ tag }: Circuit): boolean => feeding.byCircuit.get(tag)?.supplyForm === 'ac'
  const inverterCharger: EquipmentKindKey = 'inverter charger'
  const closedInputs = (tag: Tag): readonly Circuit[] => (circuitsOfLoad.get(tag) ?? []).filter(({ normalState }) => normalState === 'closed')

  function along(circuit: Circuit, running: ReadonlySet<Tag>, on: readonly Tag[]): Supplied {
    if (on.includes(circuit.tag)) return { is: 'none', reason: `${inWords(on)} feed one another in a ring` }
    const passed = [...on, circuit.tag]
    const from = circuit.fedFromTag
    if (batteries.has(from)) return { is: 'battery', batteryTag: from, through: [], passed }
    const item = equipment.get(from)
    if (item !== undefined) return ofSource(item, running, passed)
    return isDistributionPoint(vessel, from) ? ofPoint(from, running, passed) : { is: 'none', reason: `what feeds ${circuit.tag} is not known` }
  }

  /** Of several circuits to one panel the interlocked ones take turns: whichever has a source that runs. */
  function ofPoint(pointTag: Tag, running: ReadonlySet<Tag>, passed: readonly Tag[]): Supplied {
    const listing = circuitsOfLoad.get(pointTag) ?? []
    const closed = listing.filter(({ normalState }) => normalState === 'closed')
    const interlocked = listing.filter(({ interlockTag }) => interlockTag !== null)
    const usual = closed.length > 0 ? closed : listing
    if (interlocked.length > 1) return firstThatRuns([...new Set([...closed, ...interlocked])], running, passed, `nothing that feeds ${pointTag} runs`)
    const [circuit] = usual
    if (circuit === undefined) return { is: 'none', reason: `nothing feeds ${pointTag}` }
    if (usual.length > 1) return { is: 'none', reason: `${pointTag} is fed by ${inWords(usual.map(({ tag }) => tag))}` }
    return along(circuit, running, passed)
  }

  function firstThatRuns(circuits: readonly Circuit[], running: ReadonlySet<Tag>, passed: readonly Tag[], reason: string): Supplied {
    const found = circuits.map(circuit => along(circuit, running, passed))
    return found.find(({ is }) => is !== 'none') ?? (found.length === 1 ? found[0]! : { is: 'none', reason })
  }

  function ofSource(item: Equipment, running: ReadonlySet<Tag>, on: readonly Tag[]): Supplied {
    const { tag } = item
    if (on.includes(tag)) return { is: 'none', reason: `${tag} feeds itself` }
    const passed = [...on, tag]
    const stands: Supplied = { is: 'none', reason: `${tag}, which feeds it, does not run then` }
    if (outsideKinds.has(item.kind)) return running.has(tag) ? { is: 'outside', sourceTag: tag, passed } : stands
    // A transformer follows what feeds it, and so does an inverter charger while shore or a generator does.
    const inputs = closedInputs(tag)
    if (item.kind === ('isolation transformer' satisfies EquipmentKindKey)) return firstThatRuns(inputs, running, passed, stands.reason)
    if (item.kind === inverterCharger) {
      const passedOn = firstThatRuns(inputs.filter(isAc), running, passed, stands.reason)
      if (passedOn.is === 'outside') return passedOn
    }
    if (!running.has(tag)) return stands
    const taking = inputs.filter(circuit => (item.kind === inverterCharger ? !isAc(circuit) : !putsIn(circuit, tag)))
    const before = firstThatRuns(taking, running, passed, `what feeds ${tag} is not known or does not run`)
    return before.is === 'battery' ? { ...before, through: [stepOf(item), ...before.through] } : before
  }

  return {
    ofCircuit: (circuit, running) => along(circuit, running, []),
    ofInput: (item, charges, running) => {
      const inputs = closedInputs(item.tag).filter(circuit => (item.kind === inverterCharger ? isAc(circuit) : !putsIn(circuit, item.tag)))
      if (inputs.length === 0) return null
      const found = firstThatRuns(inputs, running, [item.tag], `nothing that feeds ${item.tag} runs then`)
      if (found.is !== 'battery') return found
      return found.batteryTag === charges
        ? { is: 'none', reason: `${item.tag} would charge ${charges} out of ${charges} itself` }
        : { ...found, through: [stepOf(item), ...found.through] }
    },
  }
}

const stepOf = ({ tag, efficiencyPercent }: Equipment): Step =>
  ({ tag, efficiencyPercent: efficiencyPercent ?? typicalEfficiencyPercent, recorded: efficiencyPercent !== null })

/** Amperes of a battery for an ampere at the end of the steps. */
export const currentRatio = (voltageV: number, batteryV: number, through: readonly Step[]): number =>
  through.length === 0 ? 1 : through.reduce((ratio, { efficiencyPercent }) => ratio / (efficiencyPercent / 100), voltageV / batteryV)
