/** Which conductors a cable holds, and their colours as far as what they are for decides them. */
import type { Cable, CableType, CanBus, SerialWire } from '../../../model/vessel.js'
import { conductorColours, type ConductorFunction, threePhaseColours } from '../../../references/tables/conductor-colours.js'
import type { ViewContext } from '../../context.js'
import { circuitOfCable } from '../cables.view.js'

/** `what`: what it is for, or how many there are. `colour`: by the rules; null where nothing decides it. */
export interface Conductor { readonly what: string; readonly colour: string | null }

/** Where a cable's cores are recorded one by one, as on a serial link, they stand in rows of their own. */
export function conductorsOf(context: ViewContext, cable: Cable): readonly Conductor[] {
  const type = context.lookup.cableTypes.get(cable.typeTag ?? '') ?? null
  switch (type?.use ?? null) {
    case 'bonding': return named('bonding')
    case 'ac power': return mainsConductors(type!)
    case 'can bus': return busConductors(type!, busOf(context, cable))
    case 'ethernet': return [{ what: 'four pairs, by pin', colour: null }]
    case 'coax': return [{ what: 'inner conductor and screen', colour: null }]
    case 'serial': case 'signal': return [{ what: `${coresText(type)}${spareText(context, cable, type)}`, colour: null }]
    case 'power': case null: return poweredByMains(context, cable) ? [{ what: `live conductors${type === null ? '' : `, ${coresText(type)}`}`, colour: null }] : directCurrent(cable, type)
  }
}

const named = (...functions: readonly ConductorFunction[]): readonly Conductor[] => functions.map(what => ({ what, colour: conductorColours[what].colour }))
const coresText = (type: CableType | null): string => (type === null || type.cores === null ? 'cores not recorded' : type.cores === 1 ? '1 core' : `${type.cores} cores`)

/** Cores that no recorded wire uses; nothing where no wire of the cable is recorded. */
function spareText({ vessel }: ViewContext, { tag }: Cable, type: CableType | null): string {
  const used = new Set(vessel.serialLinks.flatMap(({ wires }) => wires).filter(({ cableTag }) => cableTag === tag).map(({ signal, core }) => core ?? signal)).size
  return used === 0 || type?.cores == null || type.cores <= used ? '' : `, ${type.cores - used} spare`
}

function directCurrent({ carries }: Cable, type: CableType | null): readonly Conductor[] {
  if (carries === 'none') return [{ what: type === null ? 'cores not recorded' : `${coresText(type)}, not of a circuit`, colour: null }]
  const own = carries === 'both' ? named('positive', 'negative') : named(carries)
  const more = type?.cores == null ? 0 : type.cores - own.length
  return more > 0 ? [...own, { what: `of ${coresText(type)}`, colour: null }] : own
}

function mainsConductors(type: CableType): readonly Conductor[] {
  if (type.cores === 2) return named('line', 'neutral')
  if (type.cores === 3) return named('line', 'neutral', 'protective earth')
  if (type.cores === 5) return threePhaseColours.conductors.map(([what, colour]) => ({ what, colour }))
  return [{ what: `live conductors and earth, ${coresText(type)}`, colour: null }]
}

/** Cable made for NMEA 2000 has its own colours, whatever runs on it. */
function busConductors({ busCable, cores }: CableType, bus: CanBus | null): readonly Conductor[] {
  if (busCable !== null || bus?.protocol === 'nmea 2000') return named('supply +', 'supply −', 'CAN high', 'CAN low', 'screen')
  if (bus?.protocol === 'j1939') return named('engine bus high', 'engine bus low')
  return [{ what: cores === null ? 'cores not recorded' : `${cores} cores`, colour: null }]
}

const busOf = ({ vessel }: ViewContext, { tag }: Cable): CanBus | null =>
  vessel.canBuses.find(({ backbone }) => backbone.some(element => (element.kind === 'segment' ? element.cableTag : 'dropCableTag' in element ? element.dropCableTag : null) === tag)) ?? null

/** Of a type that does not say so itself. */
function poweredByMains(context: ViewContext, { tag }: Cable): boolean {
  const circuitTag = circuitOfCable(context).get(tag)
  return circuitTag !== undefined && context.results.feeding.byCircuit.get(circuitTag)?.supplyForm === 'ac'
}

/** A wire of a serial link: its signal, and its core as it was noted on board. */
export const wireConductor = ({ signal, core }: SerialWire): Conductor => ({ what: signal, colour: core })
