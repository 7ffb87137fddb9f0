/** The boat from above or from starboard, to scale: zones, and the items that are to be found on it. */
import type { ArrangementView, UnitSystem } from '../../model/vessel.js'
import type { PageKey } from '../view-model.js'
import { type Called, labelRows } from './call-labels.js'
import { forwardArrow, scaleBar, ticksBetween } from './location-ruler.js'
import { type Hull, hullBox, hullPath, type Seen, type SeenBox } from './location-side.js'
import { at, element, escaped, label, linked } from './svg.js'

export interface PlanZone extends SeenBox {
  readonly name: string
  /** Under the name, where there is room. */
  readonly below: string | null
  readonly to: PageKey | null
  /** `named`: shaded, its name in it or called from the edge. `plain`: an outline without a name. */
  readonly is: 'named' | 'plain'
}
export interface PlanMark {
  readonly tag: string
  readonly to: PageKey | null
  readonly place: Seen
  /** False: only its zone is known. */
  readonly exact: boolean
}
/** A picture of the vessel folder; its corners lie at these places. */
export interface PlanImage extends SeenBox { readonly file: string }

export interface LocationPlan {
  readonly title: string
  readonly view: ArrangementView
  readonly hull: Hull
  readonly zones: readonly PlanZone[]
  readonly marks: readonly PlanMark[]
  readonly images: readonly PlanImage[]
  readonly units: UnitSystem
  readonly width: number
  /** With lines at whole metres or feet, and their figures. */
  readonly ruled: boolean
}

const mostHeight = 420
const [rowHeight, lineHeight, letterWidth, marginM] = [16, 14, 6.2, 0.25] as const
const colours = { ink: '#17242d', edge: '#7d919d', zone: '#e6eef2', hull: '#f7f9fa', mark: '#0f5a78', water: '#2b7da0' } as const

/** Called from above or below the drawing. */
interface Call { readonly text: string; readonly to: PageKey | null; readonly x: number; readonly y: number; readonly isTag: boolean; readonly above: boolean }

export function locationPlan(plan: LocationPlan): string {
  const { title, view, zones, marks, images, ruled, units } = plan
  const edges = edgesOf(plan)
  const [left, right] = [ruled ? 34 : 4, 6]
  const perM = Math.min((plan.width - left - right) / (edges.upTo[0] - edges.from[0]), mostHeight / (edges.upTo[1] - edges.from[1]))
  const [width, height] = [(edges.upTo[0] - edges.from[0]) * perM, (edges.upTo[1] - edges.from[1]) * perM]

  const x = (acrossM: number): number => left + (acrossM - edges.from[0]) * perM
  const aboveTop = (upM: number): number => (edges.upTo[1] - upM) * perM
  const names = placedNames(zones, marks, perM, edges)
  const calls: readonly Call[] = [
    ...zones.filter(zone => zone.is === 'named' && !names.has(zone)).map(({ name, to, from, upTo }) => {
      const middle = aboveTop((from[1] + upTo[1]) / 2)
      return { text: name, to, x: x((from[0] + upTo[0]) / 2), y: aboveTop(middle <= height / 2 ? upTo[1] : from[1]), isTag: false, above: middle <= height / 2 }
    }),
    ...marks.map(({ tag, to, place }) => ({ text: tag, to, x: x(place[0]), y: aboveTop(place[1]), isTag: true, above: aboveTop(place[1]) <= height / 2 })),
  ]
  const rowsOf = (called: readonly Call[]) => labelRows(called, { left, width, textOf: ({ text }) => text, wantedX: call => call.x })
  const [above, below] = [rowsOf(calls.filter(call => call.above)), rowsOf(calls.filter(call => !call.above))]
  const top = above.length * rowHeight + 6
  const y = (upM: number): number => top + aboveTop(upM)
  const foot = top + height
  const afterRows = foot + below.length * rowHeight + 4

  const across = ticksBetween(edges.from[0], edges.upTo[0], perM, 40, units)
  const upwards = ticksBetween(edges.from[1], edges.upTo[1], perM, 26, units)
  const content = [
    ...images.map(image => imageAt(image, x, y)),
    ...hullDrawn(plan, x, y, 'filled'),
    ...(ruled ? across.list.map(({ atM }) => element('line', { class: 'grid', x1: x(atM), x2: x(atM), y1: top, y2: foot, 'stroke-dasharray': '1 3' })) : []),
    ...(ruled ? upwards.list.map(({ atM, text }) => label(left - 5, y(atM) + 4, view === 'plan' ? text.replace('-', '') : text, 'end')) : []),
    ...zones.map(zone => zoneDrawn(zone, x, y, images.length > 0)),
    ...(view === 'profile' ? waterline(left, width, y(0)) : []),
    ...hullDrawn(plan, x, y, 'outline'),
    ...[...names].map(([zone, name]) => nameDrawn(zone, name, left, top)),
    ...above.flatMap((row, i) => row.flatMap(each => callDrawn(each, top - 7 - i * rowHeight, top, 1))),
    ...below.flatMap((row, i) => row.flatMap(each => callDrawn(each, foot + 14 + i * rowHeight, top, -1))),
    ...marks.map(mark => markDrawn(mark, x, y)),
    ...(ruled ? across.list.map(({ atM, text }) => label(x(atM), afterRows + 12, text, 'middle')) : []),
    ...(ruled ? [label(left, afterRows + 28, `${across.symbol} forward of the transom; to the left ${across.symbol} ${view === 'plan' ? 'from the centreline, port above' : 'above the waterline'}`)] : forwardArrow(left, afterRows + 12)),
    ...scaleBar(left + width, afterRows + (ruled ? 28 : 12), perM, units),
  ]
  return element('svg', {
    xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${at(left + width + right)} ${at(afterRows + (ruled ? 34 : 18))}`, role: 'img', 'aria-label': title,
  }, content.join(''))
}

type Scale = (valueM: number) => number

/** All that is drawn, with a little room around it. */
function edgesOf({ view, hull, zones, marks, images }: LocationPlan): SeenBox {
  const boxes: readonly SeenBox[] = [...zones, ...images, ...marks.map(({ place }) => ({ from: place, upTo: place })), ...[hullBox(view, hull)].filter(box => box !== null)]
  const least = (axis: 0 | 1): number => Math.min(...boxes.map(({ from }) => from[axis])) - marginM
  const most = (axis: 0 | 1): number => Math.max(...boxes.map(({ upTo }) => upTo[axis])) + marginM
  return { from: [least(0), least(1)], upTo: [most(0), most(1)] }
}

/** A name in its zone: its lines, and the upper left corner of the first, in the drawing's units from the edges. */
interface PlacedName { readonly lines: readonly string[]; readonly fromLeft: number; readonly fromTop: number }

/** The names that have room in their zones and lie upon no other zone's name; the rest is called from the edge. In the corner with the fewest marks. */
function placedNames(zones: readonly PlanZone[], marks: readonly PlanMark[], perM: number, edges: SeenBox): ReadonlyMap<PlanZone, PlacedName> {
  const spots = marks.map(({ place }) => [(place[0] - edges.from[0]) * perM, (edges.upTo[1] - place[1]) * perM] as const)
  const placed = new Map<PlanZone, PlacedName>()
  for (const zone of zones.filter(({ is }) => is === 'named')) {
    const [width, height] = [(zone.upTo[0] - zone.from[0]) * perM, (zone.upTo[1] - zone.from[1]) * perM]
    const lines = inLines(zone.name, width - 6)
    const room = Math.floor((height - 4) / lineHeight)
    if (lines === null || lines.length > room || [...placed.keys()].some(other => overlap(zone, other))) continue
    const all = zone.below === null || lines.length + 1 > room ? lines : [...lines, zone.below]
    const [wide, high] = [Math.max(...all.map(({ length }) => length)) * letterWidth, all.length * lineHeight]
    const [left, top] = [(zone.from[0] - edges.from[0]) * perM, (edges.upTo[1] - zone.upTo[1]) * perM]
    const corners = [top + 2, top + height - high - 4].flatMap(fromTop => [left + 4, left + Math.max(4, width - wide - 4)].map(fromLeft => ({ lines: all, fromLeft, fromTop })))
    const marksIn = ({ fromLeft, fromTop }: PlacedName): number => spots.filter(([x, y]) => x > fromLeft - 6 && x < fromLeft + wide + 4 && y > fromTop - 4 && y < fromTop + high + 6).length
    placed.set(zone, corners.toSorted((a, b) => marksIn(a) - marksIn(b))[0]!)
  }
  return placed
}
const overlap = (a: SeenBox, b: SeenBox): boolean =>
  ([0, 1] as const).every(axis => Math.min(a.upTo[axis], b.upTo[axis]) - Math.max(a.from[axis], b.from[axis]) > 0.05)

/** Null where a word is wider than the room. */
function inLines(text: string, room: number): readonly string[] | null {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    if (word.length * letterWidth > room) return null
    const longer = lines.length === 0 ? word : `${lines.at(-1)!} ${word}`
    if (lines.length > 0 && longer.length * letterWidth <= room) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}

const imageAt = ({ file, from, upTo }: PlanImage, x: Scale, y: Scale): string => element('image', {
  href: `asfitted-picture:${file}`, x: x(from[0]), y: y(upTo[1]), width: x(upTo[0]) - x(from[0]), height: y(from[1]) - y(upTo[1]), preserveAspectRatio: 'none',
})

/** Under the zones, and once more over them; the yard's own drawing shows it better. */
function hullDrawn({ view, hull, images }: LocationPlan, x: Scale, y: Scale, how: 'filled' | 'outline'): readonly string[] {
  const d = images.length > 0 ? null : hullPath(view, hull, x, y)
  return d === null ? [] : [element('path', how === 'filled' ? { d, fill: colours.hull } : { d, fill: 'none', stroke: colours.ink, 'stroke-width': 1.2 })]
}

function zoneDrawn({ from, upTo, to, name, is }: PlanZone, x: Scale, y: Scale, overImage: boolean): string {
  const shade = is === 'plain' ? { fill: 'none' } : { fill: colours.zone, 'fill-opacity': overImage ? '0.35' : '0.75' }
  const box = element('rect', { x: x(from[0]), y: y(upTo[1]), width: x(upTo[0]) - x(from[0]), height: y(from[1]) - y(upTo[1]), ...shade, stroke: colours.edge, 'stroke-width': 1 })
  return linked(is === 'plain' ? null : to, box, name)
}

const nameDrawn = ({ to }: PlanZone, { lines, fromLeft, fromTop }: PlacedName, left: number, top: number): string => linked(to, lines.map((line, i) =>
  element('text', { class: 'over', x: left + fromLeft, y: top + fromTop + 11 + i * lineHeight, 'text-anchor': 'start' }, escaped(line))).join(''))

const waterline = (left: number, width: number, y: number): readonly string[] => [
  element('line', { x1: left, x2: left + width, y1: y, y2: y, stroke: colours.water, 'stroke-width': 1.2, 'stroke-dasharray': '8 3' }),
  element('text', { class: 'over', x: left + width - 2, y: y - 4, 'text-anchor': 'end' }, 'waterline'),
]

/** The name, and a thin line from it to the thing. `side` 1: the name stands above. */
const callDrawn = ({ thing, labelX }: Called<Call>, labelY: number, top: number, side: -1 | 1): readonly string[] => [
  element('line', { x1: labelX, y1: labelY + (side === 1 ? 3 : -11), x2: thing.x, y2: top + thing.y, stroke: colours.edge, 'stroke-width': '0.7' }),
  linked(thing.to, element('text', { ...(thing.isTag ? { class: 'tag' } : {}), x: labelX, y: labelY, 'text-anchor': 'middle' }, escaped(thing.text))),
]

function markDrawn({ tag, to, place, exact }: PlanMark, x: Scale, y: Scale): string {
  const spot = { cx: x(place[0]), cy: y(place[1]) }
  return linked(to, exact
    ? element('circle', { ...spot, r: 3.6, fill: colours.mark, stroke: '#ffffff', 'stroke-width': 0.8 })
    : element('circle', { ...spot, r: 4.2, fill: '#ffffff', stroke: colours.mark, 'stroke-width': 1.4, 'stroke-dasharray': '2 1.6' }), tag)
}
