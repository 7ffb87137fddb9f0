/** State of charge of the batteries over the hours of an operating mode, with the lowest allowed and the nights. */
import { at, element, label } from './svg.js'

export interface ChargeCurve {
  readonly name: string
  /** At the start and after each hour. */
  readonly chargePercent: readonly number[]
  readonly limitPercent: number
}
export interface ChargePlot {
  readonly title: string
  readonly curves: readonly ChargeCurve[]
  /** Hours of the day between sunrise and sunset; null where they are not known, or always the one. */
  readonly daylight: { readonly fromH: number; readonly toH: number } | null
}

const frame = { left: 38, right: 12, top: 10, width: 370, height: 200 } as const
const lineHeight = 17
/** Told apart by the line and its mark; the colour only helps. */
const styles = [
  { colour: '#0f5a78', dash: 'none', mark: 'circle' },
  { colour: '#8a5200', dash: '7 3', mark: 'square' },
  { colour: '#1d6b43', dash: '2.5 2.5', mark: 'triangle' },
  { colour: '#6a3d9a', dash: '9 3 2 3', mark: 'diamond' },
] as const
type Style = (typeof styles)[number]
const styleOf = (i: number): Style => styles[i % styles.length]!
/** A name that would run out of the sheet. */
const mostLetters = 52
const shortened = (name: string): string => (name.length <= mostLetters ? name : `${name.slice(0, mostLetters - 1)}…`)

export function chargePlot({ title, curves, daylight }: ChargePlot): string {
  const hoursCount = Math.max(1, ...curves.map(({ chargePercent }) => chargePercent.length - 1))
  const x = (hour: number) => frame.left + (frame.width * hour) / hoursCount
  const y = (percent: number) => frame.top + frame.height * (1 - percent / 100)
  const foot = frame.top + frame.height
  const legendTop = foot + 44
  const limits = [...new Set(curves.map(({ limitPercent }) => limitPercent))].toSorted((a, b) => b - a)
  const rows = curves.length + limits.length
  const totalWidth = frame.left + frame.width + frame.right
  const totalHeight = legendTop + rows * lineHeight + 2

  const content = [
    ...nights(daylight, hoursCount).map(([from, to]) => element('rect', { class: 'night', x: x(from), y: frame.top, width: x(to) - x(from), height: frame.height })),
    ...[0, 25, 50, 75, 100].flatMap(percent => [
      element('line', { class: 'grid', x1: frame.left, x2: frame.left + frame.width, y1: y(percent), y2: y(percent) }),
      label(frame.left - 5, y(percent) + 4, `${percent} %`, 'end'),
    ]),
    ...hourTicks(hoursCount).flatMap(({ hour, text }) => [
      element('line', { class: 'grid', x1: x(hour), x2: x(hour), y1: frame.top, y2: foot + 4 }),
      label(x(hour), foot + 17, text, hour === hoursCount ? 'end' : 'middle'),
    ]),
    element('rect', { class: 'frame', x: frame.left, y: frame.top, width: frame.width, height: frame.height }),
    label(frame.left, foot + 32, hoursCount <= 24 ? `hour of the day${daylight === null ? '' : '; shaded: night'}` : `days, midnight to midnight${daylight === null ? '' : '; shaded: night'}`),
    ...limits.map(percent => element('line', { class: 'limit', x1: frame.left, x2: frame.left + frame.width, y1: y(percent), y2: y(percent) })),
    ...curves.flatMap(({ chargePercent }, i) => curve(chargePercent.map((percent, hour) => [x(hour), y(percent)] as const), styleOf(i), hoursCount, i)),
    ...curves.flatMap(({ name }, i) => legend(legendTop + i * lineHeight, shortened(name), styleOf(i))),
    ...limits.flatMap((percent, i) => limitLegend(legendTop + (curves.length + i) * lineHeight, percent, curves)),
  ]
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${totalWidth} ${totalHeight}`, role: 'img', 'aria-label': title }, content.join(''))
}

function curve(points: readonly (readonly [number, number])[], style: Style, hoursCount: number, position: number): readonly string[] {
  // Marks of several curves are set beside one another, not on top.
  const every = Math.max(1, Math.ceil(hoursCount / 8))
  const marked = points.filter((_, hour) => hour % every === Math.min(every - 1, Math.floor((position * every) / styles.length)))
  return [
    element('polyline', { class: 'curve', points: points.map(([px, py]) => `${at(px)},${at(py)}`).join(' '), stroke: style.colour, 'stroke-dasharray': style.dash }),
    ...marked.map(([px, py]) => mark(px, py, style)),
  ]
}

function mark(x: number, y: number, { colour, mark: shape }: Style): string {
  const d = 3.4
  switch (shape) {
    case 'circle': return element('circle', { cx: x, cy: y, r: d, fill: colour })
    case 'square': return element('rect', { x: x - d, y: y - d, width: 2 * d, height: 2 * d, fill: colour })
    case 'triangle': return element('polygon', { points: `${at(x)},${at(y - d - 1)} ${at(x - d - 1)},${at(y + d)} ${at(x + d + 1)},${at(y + d)}`, fill: colour })
    case 'diamond': return element('polygon', { points: `${at(x)},${at(y - d - 1)} ${at(x + d + 1)},${at(y)} ${at(x)},${at(y + d + 1)} ${at(x - d - 1)},${at(y)}`, fill: colour })
  }
}

const sample = { from: 38, to: 74, text: 82 } as const
const legend = (y: number, name: string, style: Style): readonly string[] => [
  element('line', { class: 'curve', x1: sample.from, x2: sample.to, y1: y + 8, y2: y + 8, stroke: style.colour, 'stroke-dasharray': style.dash }),
  mark((sample.from + sample.to) / 2, y + 8, style),
  label(sample.text, y + 12, name),
]
function limitLegend(y: number, percent: number, curves: readonly ChargeCurve[]): readonly string[] {
  const whose = curves.filter(({ limitPercent }) => limitPercent === percent).map(({ name }) => name.split(' ')[0]!)
  return [
    element('line', { class: 'limit', x1: sample.from, x2: sample.to, y1: y + 8, y2: y + 8 }),
    label(sample.text, y + 12, shortened(`lowest allowed ${at(percent)} %${curves.length === 1 ? '' : `: ${whose.join(', ')}`}`)),
  ]
}

/** Stretches of night, in hours from the start. */
function nights(daylight: ChargePlot['daylight'], hoursCount: number): readonly (readonly [number, number])[] {
  if (daylight === null || daylight.toH - daylight.fromH >= 24) return []
  const days = Array.from({ length: Math.ceil(hoursCount / 24) }, (_, day) => day * 24)
  return days.flatMap(start => [[start, start + daylight.fromH], [start + daylight.toH, start + 24]] as const)
    .map(([from, to]) => [from, Math.min(to, hoursCount)] as const).filter(([from, to]) => to > from)
}

function hourTicks(hoursCount: number): readonly { readonly hour: number; readonly text: string }[] {
  if (hoursCount <= 24) return [0, 6, 12, 18, 24].map(hour => ({ hour, text: String(hour) }))
  const days = hoursCount / 24
  const every = Math.ceil(days / 8)
  return Array.from({ length: Math.floor(days / every) + 1 }, (_, i) => i * every).map(day => ({ hour: day * 24, text: String(day) }))
}
