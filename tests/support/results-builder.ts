/** Routing and feeding results for tests of the passes that follow, without walking a vessel. */
import type { CableRun, CircuitFeed, FeedingResults, RoutingResults, Segment } from '../../src/model/results.js'
import type { Tag } from '../../src/model/vessel.js'

export interface GivenRun {
  readonly lengthM?: number | null
  readonly zones?: readonly Tag[]
  readonly wireways?: readonly Tag[]
  readonly zonesUnknown?: string
}

/** Each cable with its length and what it passes; each wireway with its number of loaded conductors. */
export function aRouting(runs: Readonly<Record<Tag, GivenRun>>, loadedConductors: Readonly<Record<Tag, number>> = {}): RoutingResults {
  return {
    byCable: new Map(Object.entries(runs).map(([tag, run]) => [tag, aRun(run)])),
    byWireway: new Map(Object.entries(loadedConductors).map(([tag, loadedConductorCount]) => [tag, {
      cableTags: [], loadedConductorCount, fill: { status: 'not computed', method: 'conduit-fill', reason: 'it is not a conduit' }, fillComparison: null,
    }])),
    findings: [],
  }
}

function aRun({ lengthM = 1, zones = ['Z1'], wireways = [], zonesUnknown }: GivenRun): CableRun {
  return {
    routeSource: 'given', wirewayTags: wireways, zoneTags: zones, zonesUnknown: zonesUnknown ?? null,
    length: lengthM === null ? { status: 'not computed', method: 'cable-length', reason: 'no way is known' } : { status: 'declared', cableLengthM: lengthM },
  }
}

/** `W1 A1.7 P1 5`: cable, near end, far end, current (`?` when not known). Segments in a row unless `after` names another. */
export interface GivenFeed {
  readonly chain: readonly Tag[]
  readonly source?: Tag | null
  readonly voltageV?: number | null
  readonly designCurrentA?: number | null
  readonly supply?: readonly string[]
  readonly out?: readonly (string | { readonly segment: string; readonly after: number | null })[]
}

export function aFeeding(feeds: Readonly<Record<Tag, GivenFeed>>): FeedingResults {
  return { byCircuit: new Map(Object.entries(feeds).map(([tag, feed]) => [tag, aFeed(feed)])), findings: [] }
}

function aFeed({ chain, source = 'G1', voltageV = 12, designCurrentA = null, supply = [], out = [] }: GivenFeed): CircuitFeed {
  const segments = out.map((given, i) => (typeof given === 'string' ? aSegment(given, i === 0 ? null : i - 1) : aSegment(given.segment, given.after)))
  return {
    chain, sourceTag: source, nominalVoltageV: voltageV, supplyForm: source === null ? null : 'dc', frequencyHz: null, infeed: null,
    designCurrent: designCurrentA === null
      ? { status: 'not computed', method: 'design-current', reason: 'a load has no current' }
      : { status: 'declared', designCurrentA },
    currentParts: [],
    supplySegments: supply.map((given, i) => aSegment(given, i === 0 ? null : i - 1)),
    segments,
    reachedTags: segments.map(({ farTag }) => farTag),
    unreachedTags: [],
  }
}

function aSegment(given: string, parent: number | null): Segment {
  const [cableTag = '', nearTag = '', farTag = '', current = '?'] = given.split(' ')
  return { cableTag, nearTag, farTag, parent, currentA: current === '?' ? null : Number(current), putInA: 0 }
}
