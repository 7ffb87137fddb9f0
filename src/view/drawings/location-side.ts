/** The boat seen from above or from starboard, bow to the right: what is across and what is up in the drawing, and a plain hull. */
import type { ArrangementView, Position } from '../../model/vessel.js'
import { at } from './svg.js'

/** To the right and upwards in the drawing, metres of the boat. */
export type Seen = readonly [acrossM: number, upM: number]
export interface SeenBox { readonly from: Seen; readonly upTo: Seen }

/** From above port is up; from starboard height is. */
export const seen = (view: ArrangementView, [forwardM, toPortM, upM]: Position): Seen => [forwardM, view === 'plan' ? toPortM : upM]

export interface Hull { readonly lengthM: number | null; readonly beamM: number | null; readonly draughtM: number | null; readonly gunwaleHeightM: number | null }

/** Of the length, where the height of the gunwale is not recorded. Common practice for small craft, no source. */
const usualFreeboardFactor = 0.12

type Scale = (valueM: number) => number

/**
 * A shape of our own in the given length and beam, or length and draught; it is no lines plan. Null where one of the two is not known.
 *
 * Points of a curve are shares of the length, and of half the beam, the height of the gunwale or the draught.
 */
export function hullPath(view: ArrangementView, { lengthM, beamM, draughtM, gunwaleHeightM }: Hull, x: Scale, y: Scale): string | null {
  if (lengthM === null) return null
  if (view === 'plan') return beamM === null ? null : path(planShape, lengthM, beamM / 2, beamM / 2, x, y)
  return draughtM === null ? null : path(profileShape, lengthM, gunwaleHeightM ?? usualFreeboardFactor * lengthM, draughtM, x, y)
}

/** How far a hull reaches, as `from` and `upTo`. */
export function hullBox(view: ArrangementView, { lengthM, beamM, draughtM, gunwaleHeightM }: Hull): SeenBox | null {
  if (lengthM === null) return null
  if (view === 'plan') return beamM === null ? null : { from: [0, -beamM / 2], upTo: [lengthM, beamM / 2] }
  return draughtM === null ? null : { from: [0, -draughtM], upTo: [lengthM, bowFactor * (gunwaleHeightM ?? usualFreeboardFactor * lengthM)] }
}

const bowFactor = 1.25

/** A command of a path and its points; what lies above nothing counts in the first measure, what below in the second. */
type Shape = readonly (readonly [command: 'M' | 'L' | 'C', ...points: readonly number[]])[]

const planShape: Shape = [
  ['M', 0, 0.86], ['C', 0.12, 0.96, 0.22, 1, 0.38, 1], ['C', 0.66, 1, 0.86, 0.7, 1, 0],
  ['C', 0.86, -0.7, 0.66, -1, 0.38, -1], ['C', 0.22, -1, 0.12, -0.96, 0, -0.86],
]
const profileShape: Shape = [
  ['M', 0, 0.95], ['C', 0.35, 0.92, 0.7, 1.05, 1, bowFactor], ['C', 0.98, 0.8, 0.96, 0.3, 0.94, 0],
  ['C', 0.91, -0.5, 0.84, -0.9, 0.7, -1], ['L', 0.3, -1], ['C', 0.2, -0.7, 0.1, -0.5, 0, -0.4],
]

function path(shape: Shape, lengthM: number, aboveM: number, belowM: number, x: Scale, y: Scale): string {
  const place = ([share = 0, height = 0]: readonly number[]): string => `${at(x(share * lengthM))} ${at(y(height * (height < 0 ? belowM : aboveM)))}`
  const pairs = (points: readonly number[]): string => Array.from({ length: points.length / 2 }, (_, i) => place(points.slice(2 * i, 2 * i + 2))).join(' ')
  return `${shape.map(([command, ...points]) => command + pairs(points)).join('')}Z`
}
