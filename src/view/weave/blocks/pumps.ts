/** Each bilge pump: where, what starts it by itself, what starts it by hand. */
import type { PumpCircuit } from '../../../model/results/emergency.js'
import type { ViewContext } from '../../context.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { joined, muted, strong } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { circuitWhere, entryOf, reach } from './reach.js'

export function pumpReach(context: ViewContext): readonly Block[] {
  return reach('Bilge pumps', context.results.emergency.pumps.map(({ pumpTag, byFloat, byHand }) => {
    const item = context.lookup.equipment.get(pumpTag)!
    const remark: Text = [
      ...way(context, 'By hand: ', byHand), ' ', ...way(context, 'By itself: ', byFloat),
      ...(item.notes === null ? [] : [' ', item.notes]),
    ]
    return { ...entryOf(context, [item], remark), act: byHand.length === 0 ? null : 'Switch on' }
  }))
}

function way(context: ViewContext, title: string, circuits: readonly PumpCircuit[]): Text {
  if (circuits.length === 0) return [strong(title), muted('no way recorded'), '.']
  return [strong(title), ...joined(circuits.map(({ circuitTag, alwaysLive }): Text => {
    const circuit = context.lookup.circuits.get(circuitTag)!
    return [
      context.tag(circuitTag), ` ${protectionText(circuit)}, `, ...circuitWhere(context, circuit), ...(alwaysLive ? [', always live'] : []),
      ...(circuit.manualBypass === null ? [] : [`. Does not start: ${circuit.manualBypass}`]),
    ]
  }), '; '), '.']
}
