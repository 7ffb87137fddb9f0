/** Bearings and boxes: where a thing stands as seen from another. Positions are forward, to port, up; bearings clockwise from the bow. */
import type { Position } from '../model/vessel.js'
import type { Sector } from '../model/results/sector.js'

/** Two opposite corners. */
export interface Box { readonly fromM: Position; readonly toM: Position }
/** Angles above the horizontal. */
export interface Band { readonly lowestDeg: number; readonly highestDeg: number }

const degPerRad = 180 / Math.PI
/** Narrower than any edge that is measured on a boat. */
const sliverDeg = 1e-6

export const distanceBetweenM = (a: Position, b: Position): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Into 0 up to 360. */
export const normalDeg = (angleDeg: number): number => ((angleDeg % 360) + 360) % 360

export const bearingDeg = (eye: Position, [forward, toPort]: readonly [number, number, ...number[]]): number =>
  normalDeg(Math.atan2(eye[1] - toPort, forward - eye[0]) * degPerRad)

export const allRound: Sector = { fromDeg: 0, widthDeg: 360 }
export const isIn = ({ fromDeg, widthDeg }: Sector, atDeg: number): boolean => normalDeg(atDeg - fromDeg) <= widthDeg
/** Of sectors that do not overlap. */
export const widthOf = (sectors: readonly Sector[]): number => sectors.reduce((sum, { widthDeg }) => sum + widthDeg, 0)

const edgesOf = (sectors: readonly Sector[]): readonly number[] => sectors.flatMap(({ fromDeg, widthDeg }) => (widthDeg >= 360 ? [] : [fromDeg, fromDeg + widthDeg]))

/** The bearings in any of the sectors, each once. */
export const united = (sectors: readonly Sector[]): readonly Sector[] =>
  sectorsWhere(edgesOf(sectors), atDeg => sectors.some(sector => isIn(sector, atDeg)))

/** The bearings in one of each. */
export const overlap = (a: readonly Sector[], b: readonly Sector[]): readonly Sector[] =>
  sectorsWhere([...edgesOf(a), ...edgesOf(b)], atDeg => a.some(sector => isIn(sector, atDeg)) && b.some(sector => isIn(sector, atDeg)))

/** The bearings at which `holds`; it may change at the edges given and nowhere else. */
function sectorsWhere(edgesDeg: readonly number[], holds: (atDeg: number) => boolean): readonly Sector[] {
  const edges = edgesDeg.map(normalDeg).toSorted((a, b) => a - b)
  if (edges.length === 0) return holds(0) ? [allRound] : []
  const parts = edges.map((fromDeg, i) => ({ fromDeg, widthDeg: (edges[i + 1] ?? edges[0]! + 360) - fromDeg }))
    .filter(({ fromDeg, widthDeg }) => widthDeg > sliverDeg && holds(normalDeg(fromDeg + widthDeg / 2)))
  const found: { fromDeg: number; widthDeg: number }[] = []
  for (const part of parts) {
    const last = found.at(-1)
    if (last !== undefined && part.fromDeg - last.fromDeg - last.widthDeg < 2 * sliverDeg) last.widthDeg = part.fromDeg + part.widthDeg - last.fromDeg
    else found.push({ ...part })
  }
  const [first, last] = [found[0], found.at(-1)]
  if (first !== undefined && last !== undefined && first !== last && first.fromDeg + 360 - last.fromDeg - last.widthDeg < 2 * sliverDeg) {
    last.widthDeg += first.widthDeg
    found.shift()
  }
  return found.some(({ widthDeg }) => widthDeg > 360 - 2 * sliverDeg) ? [allRound] : found
}

const sorted = (a: number, b: number): readonly [number, number] => [Math.min(a, b), Math.max(a, b)]

export const isInside = ({ fromM, toM }: Box, eye: Position): boolean =>
  eye.every((value, axis) => { const [low, high] = sorted(fromM[axis]!, toM[axis]!); return value > low && value < high })

/** The bearings at which something of the box stands within a band of elevations, as seen from the eye. */
export function sectorsOfBox(box: Box, eye: Position, { lowestDeg, highestDeg }: Band): readonly Sector[] {
  const [bottomM, topM] = sorted(box.fromM[2] - eye[2], box.toM[2] - eye[2])
  const farM = Math.max(...cornersOf(box).map(([forward, toPort]) => Math.hypot(forward - eye[0], toPort - eye[1])))
  // The whole box lies under the band or above it, even where it is farthest.
  if (Math.atan2(topM, farM) * degPerRad < Math.min(lowestDeg, 0) || Math.atan2(bottomM, farM) * degPerRad > Math.max(highestDeg, 0)) return []
  // Where the top comes down to the band, or the bottom rises out of it, the answer changes within a face.
  const radii = [topM / Math.tan(lowestDeg / degPerRad), bottomM / Math.tan(highestDeg / degPerRad)].filter(radius => radius > 0 && Number.isFinite(radius))
  const edges = [...cornersOf(box), ...radii.flatMap(radius => crossings(box, eye, radius))].map(point => bearingDeg(eye, point))
  return sectorsWhere(edges, atDeg => {
    const stands = elevationsOfBox(box, eye, atDeg)
    return stands !== null && stands.highestDeg > lowestDeg && stands.lowestDeg < highestDeg
  })
}

/** Between which elevations the box stands on a bearing, as seen from the eye; null where the line passes it by. */
export function elevationsOfBox(box: Box, eye: Position, atDeg: number): Band | null {
  const way = wayThrough(box, eye, atDeg)
  if (way === null) return null
  const [bottomM, topM] = sorted(box.fromM[2] - eye[2], box.toM[2] - eye[2])
  return {
    lowestDeg: Math.atan2(bottomM, bottomM > 0 ? way.farM : way.nearM) * degPerRad,
    highestDeg: Math.atan2(topM, topM > 0 ? way.nearM : way.farM) * degPerRad,
  }
}

const cornersOf = ({ fromM: a, toM: b }: Box): readonly (readonly [number, number])[] => [[a[0], a[1]], [a[0], b[1]], [b[0], b[1]], [b[0], a[1]]]

/** Where a circle around the eye crosses the sides of the box, in plan. */
function crossings({ fromM: a, toM: b }: Box, eye: Position, radiusM: number): readonly (readonly [number, number])[] {
  const along = (fixed: number, [low, high]: readonly [number, number], eyeFixed: number, eyeFree: number): readonly number[] => {
    const left = radiusM ** 2 - (fixed - eyeFixed) ** 2
    return left < 0 ? [] : [eyeFree - Math.sqrt(left), eyeFree + Math.sqrt(left)].filter(free => free > low && free < high)
  }
  return [
    ...[a[0], b[0]].flatMap(forward => along(forward, sorted(a[1], b[1]), eye[0], eye[1]).map(toPort => [forward, toPort] as const)),
    ...[a[1], b[1]].flatMap(toPort => along(toPort, sorted(a[0], b[0]), eye[1], eye[0]).map(forward => [forward, toPort] as const)),
  ]
}

/** From where to where, in plan, a line on a bearing runs through the box; null where it passes by. */
function wayThrough({ fromM: a, toM: b }: Box, eye: Position, atDeg: number): { readonly nearM: number; readonly farM: number } | null {
  const direction = [Math.cos(atDeg / degPerRad), -Math.sin(atDeg / degPerRad)] as const
  let [nearM, farM] = [0, Number.POSITIVE_INFINITY]
  for (const axis of [0, 1] as const) {
    const [low, high] = sorted(a[axis] - eye[axis], b[axis] - eye[axis])
    if (Math.abs(direction[axis]) < 1e-12) {
      if (low >= 0 || high <= 0) return null
      continue
    }
    const [enters, leaves] = sorted(low / direction[axis], high / direction[axis])
    nearM = Math.max(nearM, enters)
    farM = Math.min(farM, leaves)
  }
  // A plate has no thickness and is in the way all the same.
  return farM >= nearM && farM > 0 ? { nearM, farM } : null
}
