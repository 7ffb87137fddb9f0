/** Distances between antennas, and from antennas to radar scanners, each against the rule that holds for the pair. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { grouped, lookup } from '../../model/lookup.js'
import type { AntennaUse, Part, RadioChain, Separation } from '../../model/results/radio.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { classAFromW, makersClearance, noOffsetM, practiceSeparation, shipSeparation } from '../../references/basis/radio-rules.js'
import { sayBoth } from '../../units/format.js'
import { compare } from '../compare.js'
import { isAis } from './chains.js'
import { antennaNearTransmitter, antennasTooClose } from './findings.js'
import { apart, type Apart } from './geometry.js'

/** One of a pair. */
interface Placed { readonly item: Equipment; readonly part: Part; readonly use: AntennaUse['use'] | 'radar'; readonly transmits: boolean; readonly classA: boolean }

export function separationsOf(vessel: Vessel, chains: readonly RadioChain[], antennas: readonly AntennaUse[], scanners: readonly { readonly item: Equipment; readonly part: Part | null }[]): readonly Separation[] {
  const { equipment } = lookup(vessel)
  const placed: readonly Placed[] = [
    ...antennas.flatMap(({ tag, use, part, servesTags }): readonly Placed[] => (part === null ? [] : [{
      item: equipment.get(tag)!, part, use, transmits: servesTags.length > 0,
      classA: chains.some(chain => chain.antennaTag === tag && isAis(chain) && chain.powerW >= classAFromW),
    }])),
    ...scanners.flatMap(({ item, part }): readonly Placed[] => (part === null ? [] : [{ item, part, use: 'radar', transmits: true, classA: false }])),
  ]
  return placed.flatMap((a, i) => placed.slice(i + 1).flatMap(b => {
    const distances = apart(a.part, b.part)
    const rule = ruleFor(a, b, distances)
    if (rule === null) return []
    const { held, limit } = rule
    const value = held === 'vertical' ? distances.verticalM : held === 'horizontal' ? distances.horizontalM : distances.distanceM
    // The one that transmits first: what is near it is told of it.
    const [first, second] = b.use === 'radar' || (b.transmits && !a.transmits) ? [b, a] : [a, b]
    return [{ aTag: first.item.tag, bTag: second.item.tag, ...distances, held, comparison: compare('distanceM', value, limit) }]
  }))
}

interface Rule { readonly held: Separation['held']; readonly limit: Limit }

/** Their makers' word first, then the rules for ships where a class A AIS is concerned, then small-craft practice; null where none of them has anything to say. */
function ruleFor(a: Placed, b: Placed, { horizontalM }: Apart): Rule | null {
  const asked = [a, b].flatMap(({ item, use }) => (use === 'radar' ? [] : item.antenna?.clearanceM ?? []))
  if (asked.length > 0) return { held: 'distance', limit: { relation: 'at least', value: Math.max(...asked), citation: makersClearance } }
  const uses = new Set([a.use, b.use])
  const classA = a.classA || b.classA
  if (uses.has('radar')) return uses.size === 1 ? null : { held: 'distance', limit: classA ? shipSeparation.radar : practiceSeparation.radar }
  if (uses.size === 1 && uses.has('vhf')) {
    if (!classA) return { held: 'distance', limit: practiceSeparation.vhf }
    return horizontalM <= noOffsetM ? { held: 'vertical', limit: shipSeparation.vertical } : { held: 'horizontal', limit: shipSeparation.horizontal }
  }
  return uses.has('vhf') && uses.has('gnss') ? { held: 'distance', limit: practiceSeparation.gnss } : null
}

const heldWords = { distance: 'distance', vertical: 'vertical distance', horizontal: 'horizontal distance' } as const

/** A pair of VHF antennas, a maker's word and a rule for ships are findings of their own; what only practice asks is gathered under what transmits. */
export function separationFindings(separations: readonly Separation[], antennas: readonly AntennaUse[]): readonly Finding[] {
  const useOf = new Map(antennas.map(({ tag, use }) => [tag, use]))
  const missed = separations.filter(({ comparison }) => !comparison.within)
  const firm = (pair: Separation): boolean => pair.comparison.limit.citation.source !== 'common-practice' || (useOf.get(pair.aTag) === 'vhf' && useOf.get(pair.bTag) === 'vhf')
  return [
    ...missed.filter(firm).map(({ aTag, bTag, held, comparison }) => find(antennasTooClose, {
      subject: { kind: 'equipment', id: bTag }, field: 'positionM', evidence: { distanceM: comparison.value }, limit: comparison.limit,
      context: { other: aTag, held: heldWords[held] },
    })),
    ...[...grouped(missed.filter(pair => !firm(pair)), ({ aTag }) => [aTag])].map(([tag, pairs]) => {
      const [nearest, ...others] = pairs.toSorted((x, y) => x.comparison.margin - y.comparison.margin) as [Separation, ...Separation[]]
      return find(antennaNearTransmitter, {
        subject: { kind: 'equipment', id: tag }, field: 'positionM', evidence: { distanceM: nearest.comparison.value }, limit: nearest.comparison.limit,
        context: {
          what: useOf.has(tag) ? 'Antenna' : 'Radar', other: nearest.bTag,
          others: others.map(({ bTag, comparison }) => `; to ${bTag} ${sayBoth('distanceM', comparison.value)}`).join(''),
        },
      })
    }),
  ]
}
