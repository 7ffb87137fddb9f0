/** What is recorded about the conductors of a cable. */
import { lookup } from '../../model/lookup.js'
import type { Cable, Tag, Vessel } from '../../model/vessel.js'
import { resistivityAt20COhmMm2PerM } from '../../references/tables/iec-60028-copper.js'
import { class5Row } from '../../references/tables/iec-60228-class-5.js'
import type { ConductorSize } from '../../units/conductor-size.js'

export interface Conductor {
  readonly size: ConductorSize | null
  readonly insulationC: number | null
  readonly tinned: boolean | null
}

const unknown: Conductor = { size: null, insulationC: null, tinned: null }

export function conductorOf(vessel: Vessel, cableTag: Tag): Conductor {
  const { cables, cableTypes } = lookup(vessel)
  return cableTypes.get(cables.get(cableTag)?.typeTag ?? '') ?? unknown
}

/** The first thing that is missing to assess a cable, and what to do about it; null when all is there. */
export function gapIn(vessel: Vessel, cable: Cable): { readonly missing: string; readonly remedy: string } | null {
  if (cable.typeTag === null) return { missing: 'no cable type is recorded', remedy: `Enter the type of ${cable.tag}.` }
  const { size, insulationC } = conductorOf(vessel, cable.tag)
  const missing = [size === null ? 'conductor size' : null, insulationC === null ? 'insulation temperature' : null].filter(gap => gap !== null)
  if (missing.length === 0) return null
  const words = missing.join(' and ')
  return { missing: `cable type ${cable.typeTag} has no ${words}`, remedy: `Enter the ${words} of cable type ${cable.typeTag}.` }
}

/**
 * Resistance at 20 °C in Ω/km: the class 5 limit for a metric size, the ideal area for a gauge. Where tinning is not
 * recorded the conductor counts as tinned, which is the higher. Null for a metric size below the table.
 */
export function resistanceAt20COhmPerKm(size: ConductorSize, tinned: boolean | null): number | null {
  if (size.system === 'awg') return (1000 * resistivityAt20COhmMm2PerM) / size.crossSectionMm2
  const row = class5Row(size.crossSectionMm2)
  if (row === null) return null
  return tinned === false ? row.plainOhmPerKm : row.tinnedOhmPerKm
}
