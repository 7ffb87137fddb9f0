/** Small parts that follow from the data: ends of conductors, connectors, parts of the buses, fuses and breakers. */
import { grouped, isThere, lookup } from '../../model/lookup.js'
import type { BusParts, ConductorEnds, DeviceCount, Plugs, SpareFuses } from '../../model/results/cable-bill.js'
import type { Gap } from '../../model/results/gap.js'
import type { Cable, CableType, CableUse, Vessel } from '../../model/vessel.js'
import { usualConnectorCount } from '../../references/tables/coax-attenuation.js'

/** Uses whose conductors are ended one by one; those of bus, network and coaxial cable end together in a connector. */
const endedSingly: ReadonlySet<CableUse> = new Set(['power', 'ac power', 'bonding', 'serial', 'signal'])

const withType = (vessel: Vessel, cables: readonly Cable[]): readonly { readonly cable: Cable; readonly type: CableType }[] =>
  cables.flatMap(cable => { const type = lookup(vessel).cableTypes.get(cable.typeTag ?? ''); return type === undefined ? [] : [{ cable, type }] })

/** Two ends of each core of each conductor in parallel, by use and size. */
export function conductorEnds(vessel: Vessel, cables: readonly Cable[]): readonly ConductorEnds[] {
  const counted = new Map<string, ConductorEnds>()
  for (const { cable, type: { use, size, cores } } of withType(vessel, cables)) {
    if (!endedSingly.has(use) || size === null || cores === null) continue
    const key = `${use} ${size.designation} ${size.system}`
    counted.set(key, { use, size, endCount: (counted.get(key)?.endCount ?? 0) + 2 * cores * cable.parallelCount })
  }
  const uses = [...endedSingly]
  return [...counted.values()].toSorted((a, b) => uses.indexOf(a.use) - uses.indexOf(b.use) || a.size.crossSectionMm2 - b.size.crossSectionMm2)
}

/** Of what is ended singly, types without their cores: their ends cannot be counted. Signal cables without a size end as their makers have it. */
export function coresUnknown(vessel: Vessel, cables: readonly Cable[]): readonly Gap[] {
  const fixed: ReadonlySet<CableUse> = new Set(['power', 'ac power', 'bonding'])
  return withType(vessel, cables).flatMap(({ cable, type: { tag, use, cores, size } }) => {
    if (!fixed.has(use)) return []
    const missing = [...(cores === null ? ['cores'] : []), ...(size === null ? ['size'] : [])]
    return missing.length === 0 ? [] : [{ subjectTag: cable.tag, reason: `the ends of its conductors are not counted: ${missing.join(' and ')} of type ${tag} not recorded` }]
  })
}

export function plugs(vessel: Vessel, cables: readonly Cable[]): readonly Plugs[] {
  return vessel.cableTypes.flatMap(({ tag, use }): readonly Plugs[] => {
    if (use !== 'coax' && use !== 'ethernet') return []
    const own = cables.filter(({ typeTag }) => typeTag === tag)
    const recorded = own.reduce((sum, { connectorCount }) => sum + (connectorCount ?? 0), 0)
    const assumedCount = own.filter(({ connectorCount }) => connectorCount === null).length * usualConnectorCount
    return own.length === 0 ? [] : [{ typeTag: tag, use, connectorCount: recorded + assumedCount, assumedCount }]
  })
}

export const busParts = (vessel: Vessel): readonly BusParts[] => vessel.canBuses.map(({ tag, backbone }) => {
  const { cables } = lookup(vessel)
  const count = (kind: string): number => backbone.filter(element => element.kind === kind).length
  // The cable to a power insertion is one of its circuit.
  const drops = backbone.flatMap(element => (element.kind === 'tee' && element.dropCableTag !== null ? [element.dropCableTag] : []))
  return {
    busTag: tag, teeCount: count('tee'), powerTeeCount: count('power'), terminatorCount: count('terminator'), isolatorCount: count('isolator'),
    dropCount: drops.filter(drop => { const cable = cables.get(drop); return cable !== undefined && isThere(cable) }).length,
  }
})

interface Device { readonly device: string; readonly ratedCurrentA: number }
const byDevice = (a: Device, b: Device): number => (a.device < b.device ? -1 : a.device > b.device ? 1 : 0) || a.ratedCurrentA - b.ratedCurrentA

export function deviceCounts(vessel: Vessel): readonly DeviceCount[] {
  const { panels } = lookup(vessel)
  const fitted = vessel.circuits.flatMap(({ protection, fedFromTag }) => (protection === null || protection.device === 'electronic channel' ? [] : [{ protection, inPanel: panels.has(fedFromTag) }]))
  return [...grouped(fitted, ({ protection: { device, ratedCurrentA, poles } }) => [`${device} ${ratedCurrentA} ${poles}`]).values()].map((alike): DeviceCount => {
    const { device, ratedCurrentA, poles } = alike[0]!.protection
    const inPanelCount = alike.filter(({ inPanel }) => inPanel).length
    return { device, ratedCurrentA, polesCount: poles, inPanelCount, aloneCount: alike.length - inPanelCount }
  }).toSorted((a, b) => byDevice(a, b) || (a.polesCount ?? 0) - (b.polesCount ?? 0))
}

/**
 * Fuses are used up; a breaker is switched on again. Of plug-in fuses two of each rating are carried, or one for four fitted
 * where that is more; of bolted fuses one of each rating. Common practice, no source.
 */
export function spareFuses({ circuits }: Vessel): readonly SpareFuses[] {
  const fused = circuits.flatMap(({ tag, protection }) => (protection?.device.includes('fuse') === true ? [{ tag, protection }] : []))
  return [...grouped(fused, ({ protection: { device, ratedCurrentA } }) => [`${device} ${ratedCurrentA}`]).values()].map((alike): SpareFuses => {
    const { device, ratedCurrentA } = alike[0]!.protection
    const spareCount = device.includes('blade') ? Math.max(2, Math.ceil(alike.length / 4)) : 1
    return { device, ratedCurrentA, circuitTags: alike.map(({ tag }) => tag), spareCount }
  }).toSorted(byDevice)
}
