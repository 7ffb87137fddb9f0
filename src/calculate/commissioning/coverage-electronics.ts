/** What buses and transmitters are measured for. */
import { grouped } from '../../model/lookup.js'
import type { BusResult } from '../../model/results/can-bus.js'
import type { CheckKind, MeasuredTransmitter } from '../../model/results/commissioning.js'
import type { RadioResults } from '../../model/results/radio.js'
import type { Vessel } from '../../model/vessel.js'
import { limitOf, mayReadAt } from '../radio/standing-waves.js'

/** The voltage only where the bus itself supplies its devices. */
export const busKindsOf = ({ supply }: BusResult): readonly CheckKind[] => [
  'resistance between data wires', ...(supply.sections.length > 0 ? ['voltage on a bus' as const] : []), 'load of a bus',
]

/** What standing wave meters for boats reach, and what can be sent on for as long as it takes. Common practice, no source. */
const meterReachesMHz = 500

/** Those with a connector at which a meter can be put in; of several that share it the strongest. */
export function transmittersOf(vessel: Vessel, { chains, standingWaves }: RadioResults): readonly MeasuredTransmitter[] {
  const measurable = chains.filter(({ terminal, frequencyMHz }) => terminal !== null && frequencyMHz <= meterReachesMHz)
  return [...grouped(measurable, ({ itemTag, terminal }) => [JSON.stringify([itemTag, terminal])]).values()].map(sharing => {
    const chain = sharing.reduce((a, b) => (b.powerW > a.powerW ? b : a))
    const read = standingWaves.filter(({ readAtTag, antennaTag }) => readAtTag === chain.itemTag && (antennaTag === null || antennaTag === chain.antennaTag))
    const limit = limitOf(vessel, chain.antennaTag)
    return {
      tag: chain.itemTag, numbers: read.map(({ number }) => number), missing: read.some(({ verdict }) => verdict !== 'not assessed') ? [] : ['standing wave ratio'],
      chain, limit, mayRead: mayReadAt(limit, chain.lossDb, chain.antennaGap ?? lossNotKnown),
    }
  })
}
const lossNotKnown = 'the loss of the cable is not known'
