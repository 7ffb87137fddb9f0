/** How a circuit meets equipment that gives outputs: at one of them, from which current comes in, or at its input. */
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import type { CircuitCables } from './circuit-walk.js'
import type { Source } from './supply.js'

export interface Meeting {
  /** The output that puts current in; null at an input. */
  readonly gives: Output | null
  readonly takes: boolean
}

/** Kinds that have no input for the direct current of a battery: where such a circuit meets them, they give. */
const onlyGive: ReadonlySet<string> = new Set<EquipmentKindKey>(['alternator', 'charger', 'solar panel', 'generator', 'shore inlet'])

/**
 * Decided by the terminal at which the circuit's cables end. Without a named terminal, what can only give does; a solar
 * charge controller gives unless the circuit comes from a solar panel; all else takes.
 *
 * Errors   a reason when the item has several outputs of the circuit's form and the terminal is none of them
 */
export function meetingOf(vessel: Vessel, item: Equipment, source: Source, cables: CircuitCables): Meeting | { readonly reason: string } {
  const taken: Meeting = { gives: null, takes: true }
  if (item.outputs.length === 0) return taken
  // An inverter charger charges through the terminal by which it takes what it inverts.
  const given = (gives: Output): Meeting => ({ gives, takes: item.kind === ('inverter charger' satisfies EquipmentKindKey) && gives.form === 'dc' })
  const outputs = item.outputs.filter(({ form }) => form === source.form)
  const terminals = terminalsAt(vessel, item.tag, cables)
  const named = outputs.find(({ terminal }) => terminal !== null && terminals.has(terminal))
  if (named !== undefined) return given(named)
  if (outputs.length === 0 || !givesWithoutName(vessel, item, source, terminals.size > 0 && outputs.some(({ terminal }) => terminal !== null))) return taken
  const [output] = outputs
  return outputs.length === 1 ? given(output!) : {
    reason: `at which output of ${item.tag} the circuit ends is not known: name ${inWords(outputs.flatMap(({ terminal }) => terminal ?? []))} at the end of its cable`,
  }
}

function givesWithoutName(vessel: Vessel, { kind }: Equipment, source: Source, otherTerminal: boolean): boolean {
  if (onlyGive.has(kind)) return true
  const fromPanel = lookup(vessel).equipment.get(source.tag)?.kind === ('solar panel' satisfies EquipmentKindKey)
  return kind === ('solar charge controller' satisfies EquipmentKindKey) && !fromPanel && !otherTerminal
}

function terminalsAt(vessel: Vessel, tag: Tag, { outwards }: CircuitCables): ReadonlySet<string> {
  const { cables } = lookup(vessel)
  return new Set(outwards.flatMap(edge => {
    const cable = cables.get(edge.tag)
    return [cable?.from, cable?.to].flatMap(end => (end?.tag === tag && end.terminal !== null ? [end.terminal] : []))
  }))
}
