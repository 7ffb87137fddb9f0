/** What each wireway holds: its cables, their loaded conductors, and how full it is when it is a conduit. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { CableRun, Comparison, WirewayLoad } from '../../model/results.js'
import type { Cable, CableType, Tag, Vessel, Wireway } from '../../model/vessel.js'
import { conduitFillLimit } from '../../references/tables/nec-conduit-fill.js'
import { compare } from '../compare.js'
import { isPowerCable } from '../power-cable.js'
import { runMethod } from '../run-method.js'
import { conduitFillMethod, outsideAreaMm2 } from './conduit-fill.calc.js'
import { conduitJamMethod, jamRange } from './conduit-jam.calc.js'
import { conduitMayJam, conduitOverfilled } from './findings.js'

export function wirewayLoads(vessel: Vessel, byCable: ReadonlyMap<Tag, CableRun>): { readonly byWireway: ReadonlyMap<Tag, WirewayLoad>; readonly findings: readonly Finding[] } {
  const { cableTypes } = lookup(vessel)
  const typeOf = (cable: Cable): CableType | null => cableTypes.get(cable.typeTag ?? '') ?? null
  const cablesIn = new Map<Tag, Cable[]>(vessel.wireways.map(({ tag }) => [tag, []]))
  for (const cable of vessel.cables) {
    for (const tag of new Set(byCable.get(cable.tag)?.wirewayTags)) cablesIn.get(tag)?.push(cable)
  }

  const byWireway = new Map<Tag, WirewayLoad>()
  const findings: Finding[] = []
  for (const wireway of vessel.wireways) {
    const cables = cablesIn.get(wireway.tag) ?? []
    const diameters = cables.map(cable => ({ cable, outerDiameterMm: typeOf(cable)?.outerDiameterMm ?? null }))
    const fill = fillOf(wireway, diameters)
    const fillComparison = comparisonOf(fill)
    byWireway.set(wireway.tag, {
      cableTags: cables.map(({ tag }) => tag),
      loadedConductorCount: cables.reduce((sum, cable) => sum + loadedConductors(cable, typeOf(cable)), 0),
      fill,
      fillComparison,
    })
    if (fill.status === 'not computed') continue
    const subject = { kind: 'wireway', id: wireway.tag }
    if (fillComparison?.within === false) {
      const evidence = { fillPercent: fill.output.fillPercent, cableCount: fill.input.cableCount }
      findings.push(find(conduitOverfilled, { subject, field: 'boreMm', evidence, limit: fillComparison.limit }))
    }
    const jam = jamOf(fill.input.boreMm, diameters.flatMap(({ cable, outerDiameterMm }) => Array<number>(cable.parallelCount).fill(outerDiameterMm ?? 0)))
    if (jam !== null) findings.push(find(conduitMayJam, { subject, field: 'boreMm', evidence: jam, limit: null }))
  }
  return { byWireway, findings }
}

/**
 * Conductors of a cable that carry current at the same time. A d.c. cable that holds both ways has two whatever further
 * cores it has. An a.c. cable of up to three cores is line, neutral and earth: two; of more, three lines: three (common
 * practice; neither earth nor the neutral of a balanced load counts). Of a cable without a type, what it carries tells.
 */
function loadedConductors(cable: Cable, type: CableType | null): number {
  if (type?.use === 'ac power') return cable.parallelCount * (type.cores === null ? 2 : type.cores > 3 ? 3 : Math.min(type.cores, 2))
  return isPowerCable(cable, type) ? cable.parallelCount * { both: 2, positive: 1, negative: 1, none: 0 }[cable.carries] : 0
}

interface Measured { readonly cable: Cable; readonly outerDiameterMm: number | null }

function fillOf({ kind, boreMm }: Wireway, cables: readonly Measured[]): WirewayLoad['fill'] {
  const notComputed = (reason: string) => ({ status: 'not computed', method: conduitFillMethod.id, reason }) as const
  if (kind !== 'conduit') return notComputed('it is not a conduit')
  if (boreMm === null) return notComputed('its bore is not recorded')
  const unmeasured = cables.filter(({ outerDiameterMm }) => outerDiameterMm === null).map(({ cable }) => cable.tag)
  if (unmeasured.length > 0) return notComputed(`no outside diameter is recorded for the type of ${inWords(unmeasured)}`)
  const cableAreaMm2 = cables.reduce((sum, { cable, outerDiameterMm }) => sum + cable.parallelCount * outsideAreaMm2(outerDiameterMm ?? 0), 0)
  return runMethod(conduitFillMethod, { boreMm, cableAreaMm2, cableCount: cables.reduce((sum, { cable }) => sum + cable.parallelCount, 0) })
}

/** An empty conduit has a fill and no limit: the limit goes by the number of cables. */
function comparisonOf(fill: WirewayLoad['fill']): Comparison | null {
  if (fill.status === 'not computed' || fill.input.cableCount === 0) return null
  return compare('fillPercent', fill.output.fillPercent, conduitFillLimit(fill.input.cableCount))
}

function jamOf(boreMm: number, diametersMm: readonly number[]) {
  if (diametersMm.length !== 3) return null
  const jam = runMethod(conduitJamMethod, { boreMm, meanDiameterMm: diametersMm.reduce((sum, d) => sum + d, 0) / 3 })
  if (jam.status === 'not computed') return null
  const { jamRatioFactor } = jam.output
  return jamRatioFactor >= jamRange.fromFactor && jamRatioFactor <= jamRange.toFactor ? { ...jam.input, jamRatioFactor } : null
}
