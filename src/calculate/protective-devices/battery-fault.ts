/** What a battery can push into a short: its voltage at rest and its internal resistance, from what is recorded of it. */
import { lookup } from '../../model/lookup.js'
import type { FeedingResults } from '../../model/results.js'
import type { BatteryFault, OtherSource } from '../../model/results/protective-devices.js'
import type { Battery, Equipment, Output, Tag, Vessel } from '../../model/vessel.js'
import { runMethod } from '../run-method.js'
import { bankOf } from '../sources/bank.js'
import { openCircuitVoltageMethod } from './open-circuit-voltage.calc.js'
import { resistanceFromCrankingMethod } from './resistance-from-cranking.calc.js'
import { resistanceFromShortCircuitMethod } from './resistance-from-short-circuit.calc.js'

/** Volts of a charged cell at rest (common practice). */
const leadCellV = 2.1
const lithiumCellV = 3.3
/** Lithium iron phosphate cells come in groups of four, sold as 12 V or 12.8 V. */
const lithiumGroupV = 12.8
/** At 25 °C a lead battery gives 1.5 to 2 times the current of the cold test; the larger makes the fault current larger. */
const warmFactor = 2

export function batteryFault(vessel: Vessel, battery: Battery, feeding: FeedingResults): BatteryFault {
  const openCircuitVoltage = voltageOf(battery)
  return { openCircuitVoltage, internalResistance: resistanceOf(battery, openCircuitVoltage), otherSources: othersOf(vessel, battery, feeding) }
}

function voltageOf({ tag, chemistry, nominalVoltageV }: Battery): BatteryFault['openCircuitVoltage'] {
  if (chemistry === null) return { status: 'not computed', method: openCircuitVoltageMethod.id, reason: `the chemistry of ${tag} is not recorded` }
  return runMethod(openCircuitVoltageMethod, chemistry === 'lfp'
    ? { cellCount: 4 * Math.max(1, Math.round(nominalVoltageV / lithiumGroupV)), cellVoltageV: lithiumCellV }
    : { cellCount: Math.round(nominalVoltageV / 2), cellVoltageV: leadCellV })
}

/** The maker's short-circuit current says most; then the internal resistance; a cranking current only lets it be estimated. */
function resistanceOf(battery: Battery, voltage: BatteryFault['openCircuitVoltage']): BatteryFault['internalResistance'] {
  const { shortCircuitCurrentA, internalResistanceMilliOhm, crankingCurrentA } = bankOf(battery)
  const notComputed = (method: string, reason: string) => ({ status: 'not computed', method, reason }) as const
  if (shortCircuitCurrentA !== null) {
    return voltage.status === 'not computed' ? notComputed(resistanceFromShortCircuitMethod.id, voltage.reason)
      : runMethod(resistanceFromShortCircuitMethod, { openCircuitVoltageV: voltage.output.openCircuitVoltageV, statedShortCircuitCurrentA: shortCircuitCurrentA })
  }
  if (internalResistanceMilliOhm !== null) return { status: 'recorded', internalResistanceMilliOhm }
  if (crankingCurrentA !== null && battery.chemistry !== 'lfp') {
    return runMethod(resistanceFromCrankingMethod, { nominalVoltageV: battery.nominalVoltageV, crankingCurrentA, warmFactor })
  }
  return notComputed(resistanceFromShortCircuitMethod.id, battery.chemistry === 'lfp'
    ? `neither short-circuit current nor internal resistance of ${battery.tag} is recorded, and a cranking current tells neither of a lithium battery`
    : `neither short-circuit current, internal resistance nor cranking current of ${battery.tag} is recorded`)
}

/** Charging sources whose circuits lead to the battery's system and are closed. */
function othersOf(vessel: Vessel, battery: Battery, feeding: FeedingResults): readonly OtherSource[] {
  const { equipment } = lookup(vessel)
  const others = new Map<Tag, OtherSource>()
  for (const circuit of vessel.circuits) {
    const feed = feeding.byCircuit.get(circuit.tag)
    if (circuit.normalState === 'open' || feed?.infeed == null || feed.sourceTag !== battery.tag) continue
    const { parts, currentA } = feed.infeed
    for (const tag of circuit.loadTags) {
      const source = equipment.get(tag)
      const part = parts.find(each => each.tag === tag)
      // Of what has outputs, what only takes here adds nothing; where a current is not known, it may be this one's.
      if (source === undefined || source.outputs.length === 0 || (part === undefined && currentA !== null)) continue
      others.set(tag, otherSource(source, battery, part?.currentA ?? null))
    }
  }
  return [...others.values()]
}

function otherSource({ tag, outputs }: Equipment, { nominalVoltageV }: Battery, putInA: number | null): OtherSource {
  const stated = outputs
    .filter(output => output.form === 'dc' && output.nominalVoltageV === nominalVoltageV)
    .flatMap(({ shortCircuitCurrentA }: Output) => shortCircuitCurrentA ?? [])
  return stated.length > 0
    ? { tag, currentA: Math.max(...stated), from: 'short-circuit current' }
    : { tag, currentA: putInA, from: 'rated current' }
}
