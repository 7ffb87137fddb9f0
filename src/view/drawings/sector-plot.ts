/** Sectors seen from above, the bow up: what lights show over, and what stands in the way of lights and radar beams. */
import type { Sector } from '../../model/results/sector.js'
import { at, element, label } from './svg.js'

export type RingColour = 'white' | 'red' | 'green' | 'yellow' | 'beam'
export interface SectorRing {
  readonly name: string
  /** Parts in their colours; a light of several colours has several. */
  readonly shown: readonly { readonly sector: Sector; readonly colour: RingColour }[]
  readonly hidden: readonly Sector[]
}
export interface SectorPlot { readonly title: string; readonly rings: readonly SectorRing[]; readonly hiddenMeans: string }

const [width, centreX, centreY] = [420, 210, 170] as const
const [outer, ringWidth, gap] = [138, 15, 4] as const
const lineHeight = 18
const ink = '#17242d'
/** Pale enough for a number to be read on them. */
const fills: Readonly<Record<RingColour, string>> = { white: '#fffdf2', red: '#f0a39d', green: '#9ed0b0', yellow: '#f3d56b', beam: '#d5e4ec' }

/** As many as find room around the boat. */
export const mostRings = 5
const mostLetters = 58
const shortened = (name: string): string => (name.length <= mostLetters ? name : `${name.slice(0, mostLetters - 1)}…`)

const point = (radius: number, bearing: number): readonly [number, number] =>
  [centreX + radius * Math.sin((bearing * Math.PI) / 180), centreY - radius * Math.cos((bearing * Math.PI) / 180)]

export function sectorPlot({ title, rings, hiddenMeans }: SectorPlot): string {
  const legendTop = centreY + outer + 34
  const hasHidden = rings.some(({ hidden }) => hidden.length > 0)
  const height = legendTop + (rings.length + (hasHidden ? 1 : 0)) * lineHeight + 4
  const content = [
    ...[0, 45, 90, 135, 180, 225, 270, 315].map(bearing => {
      const [[x1, y1], [x2, y2]] = [point(34, bearing), point(outer + 6, bearing)]
      return element('line', { class: 'grid', x1, y1, x2, y2 })
    }),
    ...rings.flatMap((ring, i) => ringDrawn(ring, outer - i * (ringWidth + gap), i + 1)),
    boat(),
    label(centreX, centreY - outer - 12, 'ahead 0°', 'middle'),
    label(centreX + outer + 10, centreY + 4, '90°'),
    label(centreX, centreY + outer + 20, 'astern 180°', 'middle'),
    label(centreX - outer - 10, centreY + 4, '270°', 'end'),
    ...rings.flatMap(({ name, shown }, i) => legend(legendTop + i * lineHeight, String(i + 1), shown[0]?.colour ?? 'white', shortened(name))),
    ...(hasHidden ? [
      element('rect', { x: 20, y: legendTop + rings.length * lineHeight + 2, width: 16, height: 11, fill: ink }),
      label(46, legendTop + rings.length * lineHeight + 12, hiddenMeans),
    ] : []),
  ]
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': title }, content.join(''))
}

function ringDrawn({ shown, hidden }: SectorRing, radius: number, number: number): readonly string[] {
  const inner = radius - ringWidth
  const [first] = shown
  const middle = first === undefined ? 0 : first.sector.fromDeg + first.sector.widthDeg / 2
  const [x, y] = point((radius + inner) / 2, middle)
  return [
    ...shown.map(({ sector, colour }) => element('path', { d: band(sector, inner, radius), fill: fills[colour], stroke: ink, 'stroke-width': 0.8 })),
    ...hidden.map(sector => element('path', { d: band(sector, inner, radius), fill: ink })),
    element('circle', { cx: x, cy: y, r: 7, fill: '#ffffff', stroke: ink, 'stroke-width': 0.6 }),
    label(x, y + 4, String(number), 'middle'),
  ]
}

/** A stretch of a ring; the whole ring is two circles. */
function band({ fromDeg, widthDeg }: Sector, inner: number, radius: number): string {
  const spot = (r: number, bearing: number): string => point(r, bearing).map(at).join(' ')
  if (widthDeg >= 359.999) {
    const circle = (r: number, sweep: 0 | 1): string => `M${spot(r, 0)}A${at(r)} ${at(r)} 0 1 ${sweep} ${spot(r, 180)}A${at(r)} ${at(r)} 0 1 ${sweep} ${spot(r, 0)}Z`
    return circle(radius, 1) + circle(inner, 0)
  }
  // A sliver would not show in print.
  const drawn = Math.max(widthDeg, 1.5)
  const [start, end] = [fromDeg - (drawn - widthDeg) / 2, fromDeg + widthDeg + (drawn - widthDeg) / 2]
  const large = drawn > 180 ? 1 : 0
  return `M${spot(radius, start)}A${at(radius)} ${at(radius)} 0 ${large} 1 ${spot(radius, end)}L${spot(inner, end)}A${at(inner)} ${at(inner)} 0 ${large} 0 ${spot(inner, start)}Z`
}

const boat = (): string => element('path', {
  d: `M${centreX} ${centreY - 26}C${centreX + 12} ${centreY - 12} ${centreX + 11} ${centreY + 8} ${centreX + 9} ${centreY + 24}L${centreX - 9} ${centreY + 24}C${centreX - 11} ${centreY + 8} ${centreX - 12} ${centreY - 12} ${centreX} ${centreY - 26}Z`,
  fill: '#ffffff', stroke: ink, 'stroke-width': 1.2,
})

const legend = (y: number, number: string, colour: RingColour, name: string): readonly string[] => [
  element('rect', { x: 20, y: y + 2, width: 16, height: 11, fill: fills[colour], stroke: ink, 'stroke-width': 0.8 }),
  label(28, y + 12, number, 'middle'),
  label(46, y + 12, name),
]
