/** One zone from above or from starboard, to scale, its items as numbers. */
import type { ArrangementView, UnitSystem } from '../../model/vessel.js'
import type { PageKey } from '../view-model.js'
import { forwardArrow, scaleBar } from './location-ruler.js'
import type { Seen, SeenBox } from './location-side.js'
import { at, element, linked } from './svg.js'

export interface DetailMark {
  readonly number: string
  readonly name: string
  readonly to: PageKey | null
  readonly place: Seen
  /** False: somewhere in the zone. */
  readonly exact: boolean
}
export interface ZoneDetail {
  readonly title: string
  readonly view: ArrangementView
  readonly box: SeenBox
  readonly marks: readonly DetailMark[]
  readonly units: UnitSystem
}

/** No wider than a telephone shows it, so that its letters are not made small there. */
const [innerWidth, mostHeight, leastHeight, edge, mostPerM] = [315, 400, 40, 14, 240] as const
const [radius, clear] = [8.5, 18.5] as const
const [leastForWords, wordsWidth] = [140, 62] as const
const colours = { ink: '#17242d', edge: '#7d919d', zone: '#eef3f5', mark: '#0f5a78', water: '#2b7da0' } as const

export function zoneDetail({ title, view, box, marks, units }: ZoneDetail): string {
  const seen: readonly SeenBox[] = [box, ...marks.map(({ place }) => ({ from: place, upTo: place }))]
  const least = ([0, 1] as const).map(axis => Math.min(...seen.map(({ from }) => from[axis])))
  const span = ([0, 1] as const).map(axis => Math.max(...seen.map(({ upTo }) => upTo[axis])) - least[axis]!)
  const perM = Math.min(innerWidth / Math.max(span[0]!, 0.01), mostHeight / Math.max(span[1]!, 0.01), mostPerM)
  const width = innerWidth + 2 * edge
  const height = Math.max(span[1]! * perM, leastHeight) + 2 * edge
  const x = (acrossM: number): number => (width - span[0]! * perM) / 2 + (acrossM - least[0]!) * perM
  const y = (upM: number): number => (height + span[1]! * perM) / 2 - (upM - least[1]!) * perM

  const homes = marks.map(({ place }): Spot => [x(place[0]), y(place[1])])
  const spots = movedApart(homes, { width, height })
  const content = [
    element('rect', { x: x(box.from[0]), y: y(box.upTo[1]), width: x(box.upTo[0]) - x(box.from[0]), height: y(box.from[1]) - y(box.upTo[1]), fill: colours.zone, stroke: colours.ink, 'stroke-width': 1.2 }),
    ...(view === 'plan' ? lineAt('centreline', 0, '10 3 2 3', colours.edge) : lineAt('waterline', 0, '8 3', colours.water)),
    ...marks.flatMap(({ exact }, i) => (exact ? ledFrom(homes[i]!, spots[i]!) : [])),
    ...marks.map((mark, i) => numberDrawn(mark, spots[i]!)),
    ...forwardArrow(edge, height + 14),
    ...scaleBar(width - edge, height + 14, perM, units),
  ]
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${at(width)} ${at(height + 20)}`, role: 'img', 'aria-label': title }, content.join(''))

  function lineAt(name: string, upM: number, dashes: string, stroke: string): readonly string[] {
    if (upM <= box.from[1] || upM >= box.upTo[1]) return []
    const [aft, fore] = [x(box.from[0]), x(box.upTo[0])]
    // At the end where fewer numbers are.
    const numbersAt = (left: number): number => spots.filter(([atX, atY]) => atX > left - radius && atX < left + 58 && Math.abs(atY - y(upM) + 7) < radius + 8).length
    const isAft = numbersAt(aft) < numbersAt(fore - 50)
    // Beside a narrow zone there is room, in it there is none.
    const isBeside = fore - aft < leastForWords && width - fore > wordsWidth
    return [
      element('line', { x1: aft, x2: fore, y1: y(upM), y2: y(upM), stroke, 'stroke-width': 0.9, 'stroke-dasharray': dashes }),
      isBeside
        ? element('text', { class: 'over', x: fore + 4, y: y(upM) + 4, 'text-anchor': 'start' }, name)
        : element('text', { class: 'over', x: isAft ? aft + 4 : fore - 4, y: y(upM) - 3, 'text-anchor': isAft ? 'start' : 'end' }, name),
    ]
  }
}

/** From the number to the place, where it had to make room. */
const ledFrom = ([homeX, homeY]: Spot, [x, y]: Spot): readonly string[] => (Math.hypot(x - homeX, y - homeY) < 2 ? [] : [
  element('line', { x1: x, y1: y, x2: homeX, y2: homeY, stroke: colours.mark, 'stroke-width': 0.9 }),
  element('circle', { cx: homeX, cy: homeY, r: 2.2, fill: colours.mark }),
])

function numberDrawn({ number, name, to, exact }: DetailMark, [cx, cy]: Spot): string {
  const ring = exact ? { fill: colours.mark, stroke: '#ffffff', 'stroke-width': 0.8 } : { fill: '#ffffff', stroke: colours.mark, 'stroke-width': 1.3, 'stroke-dasharray': '2.4 1.8' }
  return linked(to, element('circle', { cx, cy, r: radius, ...ring }) + element('text', { class: exact ? 'number on' : 'number', x: cx, y: cy + 4, 'text-anchor': 'middle' }, number), name)
}

export type Spot = readonly [x: number, y: number]
const mostSteps = 400

/**
 * Numbers that would lie on one another are pushed apart, two at a time, half the way each, and stay inside the sheet. The same places
 * give the same drawing; where there is no room left, some still touch.
 */
export function movedApart(homes: readonly Spot[], { width, height }: { readonly width: number; readonly height: number }): readonly Spot[] {
  const spots = homes.map(([x, y]) => ({ x, y }))
  const inside = (value: number, size: number): number => Math.min(Math.max(value, radius + 1), size - radius - 1)
  for (let step = 0, moved = true; moved && step < mostSteps; step += 1) {
    moved = false
    spots.forEach((a, i) => spots.slice(i + 1).forEach((b, j) => {
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const apart = Math.hypot(dx, dy)
      if (apart >= clear - 0.01) return
      moved = true
      // One upon the other: apart in directions that differ from pair to pair.
      const turn = (i + 2.4 * (j + 1)) % (2 * Math.PI)
      const [ux, uy] = apart < 0.01 ? [Math.cos(turn), Math.sin(turn)] : [dx / apart, dy / apart]
      const push = (clear - apart) / 2
      Object.assign(a, { x: inside(a.x - ux * push, width), y: inside(a.y - uy * push, height) })
      Object.assign(b, { x: inside(b.x + ux * push, width), y: inside(b.y + uy * push, height) })
    }))
  }
  return spots.map(({ x, y }) => [x, y])
}
