/** What a cable passes on its way: how hot it is there, and how many other conductors run with it. */
import { lookup } from '../../model/lookup.js'
import type { RoutingResults } from '../../model/results.js'
import type { Tag, Vessel, Zone } from '../../model/vessel.js'
import { cite } from '../../references/bibliography.js'
import { type BundleRule, bundleFactor } from '../../references/basis/basis.js'
import type { AmpacityColumn, AmpacityTable } from '../../references/tables/ampacity-table.js'
import { say, sayBoth } from '../../units/format.js'

/** There is no figure, and why. */
export interface Reason { readonly reason: string }
export interface Factor { readonly factor: number; readonly text: string }

export interface Surroundings {
  readonly hottest: Zone
  readonly machinery: Zone | null
  /** The fullest wireway on the way; null when the cable runs through none and is a bundle of its own conductors. */
  readonly wirewayTag: Tag | null
  readonly loadedConductorCount: number
}

export function surroundings(vessel: Vessel, routing: RoutingResults, cableTag: Tag): Surroundings | Reason {
  const { zones, cables } = lookup(vessel)
  const run = routing.byCable.get(cableTag)
  if (run === undefined || run.zonesUnknown !== null) {
    return { reason: `the zones that cable ${cableTag} passes are not all known${run?.zonesUnknown ? `: ${run.zonesUnknown}` : ''}` }
  }
  const passed = run.zoneTags.map(tag => zones.get(tag)).filter(zone => zone !== undefined)
  const [hottest] = passed.toSorted((a, b) => b.ambientC - a.ambientC)
  if (hottest === undefined) return { reason: `no zone is recorded for cable ${cableTag}` }
  const bundles = run.wirewayTags.map(wirewayTag => ({ wirewayTag, count: routing.byWireway.get(wirewayTag)?.loadedConductorCount ?? 0 }))
  const [fullest] = bundles.toSorted((a, b) => b.count - a.count)
  return {
    hottest,
    machinery: passed.find(({ space }) => space === 'machinery') ?? null,
    wirewayTag: fullest?.wirewayTag ?? null,
    loadedConductorCount: fullest?.count ?? (cables.get(cableTag)?.carries === 'both' ? 2 : 1),
  }
}

/**
 * The factor of the ambient for a column of the table: 1, or that of engine spaces where the cable passes a machinery
 * space or any zone hotter than the ambient of the table.
 *
 * Errors   a reason above the ambient of the engine-space factor, or where the insulation is not used in engine spaces
 */
export function ambientFactor(table: AmpacityTable, column: AmpacityColumn, { hottest, machinery }: Surroundings): Factor | Reason {
  const where = `hottest zone ${hottest.tag}, ${sayBoth('ambientC', hottest.ambientC)}`
  if (machinery === null && hottest.ambientC <= table.ambientC) {
    return { factor: 1, text: `${where}, within the ${sayBoth('ambientC', table.ambientC)} of the table: factor 1` }
  }
  if (hottest.ambientC > table.engineSpaceAmbientC) {
    return { reason: `${where}, is above the ${sayBoth('ambientC', table.engineSpaceAmbientC)} up to which ${table.title} has a factor` }
  }
  const { factor, citation } = column.engineSpace
  if (factor === null) return { reason: `insulation of ${column.title} is not used in engine spaces by ${table.title}` }
  const why = machinery === null ? `hotter than the ${sayBoth('ambientC', table.ambientC)} of the table` : `machinery space ${machinery.tag}`
  return { factor, text: `${where}; ${why}: engine-space factor ${factor} by ${cite(citation)}` }
}

export interface BundleFactor extends Factor {
  /** The factor where the basis has one but does not require it at this voltage; else null. */
  readonly adviceFactor: number | null
}

/**
 * The factor of the bundle: 1 where the basis does not require one at the nominal voltage.
 *
 * Errors   a reason where the voltage decides and is not known
 */
export function bundleFactorOf(rule: BundleRule, { loadedConductorCount, wirewayTag }: Surroundings, nominalVoltageV: number | null): BundleFactor | Reason {
  const factor = bundleFactor(rule, loadedConductorCount)
  const where = `${loadedConductorCount} loaded conductor${loadedConductorCount === 1 ? '' : 's'}${wirewayTag === null ? '' : ` in wireway ${wirewayTag}`}`
  if (factor === 1) return { factor, text: `${where}: factor 1`, adviceFactor: null }
  if (rule.requiredFromV > 0 && nominalVoltageV === null) return { reason: 'the nominal voltage is not known, and the bundle factor depends on it' }
  if (nominalVoltageV !== null && nominalVoltageV < rule.requiredFromV) {
    return {
      factor: 1,
      text: `${where}: no factor required below ${say('nominalVoltageV', rule.requiredFromV)} by ${cite(rule.citation)}; as advice ${factor}`,
      adviceFactor: factor,
    }
  }
  return { factor, text: `${where}: bundle factor ${factor} by ${cite(rule.citation)}`, adviceFactor: null }
}
