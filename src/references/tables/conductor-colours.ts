/** Colours that the rules and the standards of data cables give to conductors by what they are for. */
import type { Citation } from '../bibliography.js'

/** What a conductor is for. */
export type ConductorFunction =
  | 'positive' | 'negative' | 'line' | 'neutral' | 'protective earth' | 'bonding'
  | 'supply +' | 'supply −' | 'CAN high' | 'CAN low' | 'screen' | 'engine bus high' | 'engine bus low'

export interface ConductorColour { readonly colour: string; readonly citation: Citation }

const distribution = (place: string): Citation => ({ source: 'abyc-e11', place })
const bus = (place: string): Citation => ({ source: 'bus-cable-guides', place })
const engineBus: Citation = { source: 'sae-j1939', place: 'part 11, twisted pair' }

export const conductorColours: Readonly<Record<ConductorFunction, ConductorColour>> = {
  'positive': { colour: 'red', citation: distribution('tables of d.c. colours, and ISO 13297 (from memory)') },
  'negative': { colour: 'yellow or black', citation: distribution('tables of d.c. colours, and ISO 13297 (from memory); yellow is preferred where mains voltage is on board too') },
  'line': { colour: 'brown or black', citation: distribution('a.c. colours, alike in ISO 13297') },
  'neutral': { colour: 'light blue or white', citation: distribution('a.c. colours, alike in ISO 13297') },
  'protective earth': { colour: 'green-yellow or green', citation: distribution('a.c. colours, alike in ISO 13297') },
  'bonding': { colour: 'green-yellow or green', citation: distribution('grounding and bonding, alike in ISO 13297') },
  'supply +': { colour: 'red', citation: bus('NET-S') },
  'supply −': { colour: 'black', citation: bus('NET-C') },
  'CAN high': { colour: 'white', citation: bus('NET-H') },
  'CAN low': { colour: 'blue', citation: bus('NET-L') },
  'screen': { colour: 'bare', citation: bus('shield') },
  'engine bus high': { colour: 'yellow', citation: engineBus },
  'engine bus low': { colour: 'green', citation: engineBus },
}

/** Five-core mains cable, of three phases. */
export const threePhaseColours = {
  conductors: [['L1', 'brown'], ['L2', 'black'], ['L3', 'grey'], ['neutral', 'light blue'], ['protective earth', 'green-yellow']],
  citation: { source: 'iec-60445', place: 'L1, L2, L3, N, PE' },
} as const satisfies { readonly conductors: readonly (readonly [string, string])[]; readonly citation: Citation }

/** Pins 1 to 8 of an eight-way network plug; the same order at both ends, unless the cable is to be crossed. */
export const networkPlugPins = {
  a: ['white-green', 'green', 'white-orange', 'blue', 'white-blue', 'orange', 'white-brown', 'brown'],
  b: ['white-orange', 'orange', 'white-green', 'blue', 'white-blue', 'green', 'white-brown', 'brown'],
  citation: { source: 'tia-568', place: 'T568A and T568B' },
} as const satisfies { readonly a: readonly string[]; readonly b: readonly string[]; readonly citation: Citation }
