/** The answer of `asfitted reserve` for a person: a part for each thing that was asked, and what to mind. */
import type { Examined } from '../build.js'
import { bestOf } from '../calculate/reserve/verdicts.js'
import type { ReserveVerdict } from '../model/results/reserve.js'
import type { Tag } from '../model/vessel.js'
import { type BusPart, busText } from './reserve-bus-text.js'
import { type CircuitPart, circuitText } from './reserve-circuit-text.js'
import { type Lines, withName } from './reserve-lines.js'
import { type NetworkPart, networkText } from './reserve-network-text.js'

/** Null: not asked. */
export interface ReserveAnswer {
  readonly circuit: CircuitPart | null
  readonly bus: BusPart | null
  readonly network: NetworkPart | null
}

/** Of each part that was asked the best that there is. */
export function verdictsOf({ circuit, bus, network }: ReserveAnswer): readonly { readonly part: string; readonly verdict: ReserveVerdict }[] {
  return [
    ...(circuit === null ? [] : [{ part: 'circuit', verdict: bestOf(circuit.places) }]),
    ...(bus === null ? [] : [{ part: 'CAN bus', verdict: bestOf(bus.buses) }]),
    ...(network === null ? [] : [{ part: 'network', verdict: bestOf(network.switches) }]),
  ]
}

export function reserveText(examined: Examined, atTag: Tag, answer: ReserveAnswer, notes: readonly string[]): string {
  const { circuit, bus, network } = answer
  const verdicts = verdictsOf(answer)
  const errorCount = examined.results.findings.filter(({ severity }) => severity === 'error').length
  const parts: readonly Lines[] = [
    [
      ...(verdicts.length < 2 ? [] : [`One device at ${withName(examined, atTag)}: ${verdicts.map(({ part, verdict }) => `${part}: ${verdict}`).join('; ')}.`]),
      ...notes,
      ...(errorCount === 0 ? [] : [`The vessel as it is has ${errorCount === 1 ? 'an error' : `${errorCount} errors`}: run asfitted check, and mend that first.`]),
    ],
    circuit === null ? [] : circuitText(examined, circuit),
    bus === null ? [] : busText(examined, bus),
    network === null ? [] : networkText(examined, network),
    [
      'A plan, not a permission: check starting currents, room in the conduits and the maker’s instructions; local codes and',
      'licensed practice come first. Record what you add, and run asfitted check.',
    ],
  ]
  return `${parts.filter(lines => lines.length > 0).map(lines => lines.join('\n')).join(verdicts.length < 2 ? '\n\n' : '\n\n\n')}\n`
}
