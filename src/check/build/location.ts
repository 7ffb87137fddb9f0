/** Boxes of zones and pictures → records of the vessel. */
import type { ArrangementDrawing, Box, Photograph } from '../../model/vessel.js'
import type { Entry } from '../schema/kinds.js'
import { pointOf } from './placement.js'

/** The corners may be written in any order. */
export function boxOf(from: readonly number[] | undefined, to: readonly number[] | undefined): Box | null {
  if (from === undefined || to === undefined) return null
  const corner = (pick: (a: number, b: number) => number) => pointOf(from.map((value, axis) => pick(value, to[axis]!)))
  return { fromM: corner(Math.min), toM: corner(Math.max) }
}

export const photographOf = ({ file, caption, zone, date, by, 'call-outs': callOuts }: Entry<'photographs'>): Photograph => ({
  file, caption, zoneTag: zone ?? null, date: date ?? null, by: by ?? null,
  callOuts: (callOuts ?? []).map(({ at: [left = 0, top = 0], item, words }) => ({ itemTag: item, fromLeftPercent: left, fromTopPercent: top, words: words ?? null })),
})

export const arrangementDrawingOf = ({ file, view, from, to }: Entry<'arrangement-drawings'>): ArrangementDrawing =>
  ({ file, view, lowerLeftM: pointOf(from), upperRightM: pointOf(to) })
