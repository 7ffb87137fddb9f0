/** How large things are in a drawing of the boat: lines at whole metres or feet, a bar of known length. */
import type { UnitSystem } from '../../model/vessel.js'
import { mPerFt } from '../../units/convert.js'
import { element, label } from './svg.js'

interface Measure { readonly symbol: string; readonly inM: number; readonly steps: readonly number[]; readonly bars: readonly number[] }
const measures: Readonly<Record<UnitSystem, Measure>> = {
  metric: { symbol: 'm', inM: 1, steps: [1, 2, 5, 10], bars: [0.1, 0.2, 0.5, 1, 2, 5, 10] },
  us: { symbol: 'ft', inM: mPerFt, steps: [2, 5, 10, 20], bars: [0.5, 1, 2, 5, 10, 20] },
}

export interface Ticks { readonly symbol: string; readonly list: readonly { readonly atM: number; readonly text: string }[] }

/** Round values between two places, at least so far apart in the drawing. */
export function ticksBetween(fromM: number, toM: number, perM: number, apart: number, units: UnitSystem): Ticks {
  const { symbol, inM, steps } = measures[units]
  const step = steps.find(each => each * inM * perM >= apart) ?? steps.at(-1)!
  const [first, last] = [Math.ceil(fromM / inM / step), Math.floor(toM / inM / step)]
  return { symbol, list: Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => ({ atM: (first + i) * step * inM, text: String((first + i) * step) })) }
}

const longestBar = 120

/** Half black, half white, its right end at `right`, its length written to its left. */
export function scaleBar(right: number, y: number, perM: number, units: UnitSystem): readonly string[] {
  const { symbol, inM, bars } = measures[units]
  const length = bars.findLast(each => each * inM * perM <= longestBar) ?? bars[0]!
  const width = length * inM * perM
  const half = (left: number, fill: string): string => element('rect', { x: left, y: y - 5, width: width / 2, height: 5, fill, stroke: '#17242d', 'stroke-width': 0.8 })
  return [half(right - width, '#17242d'), half(right - width / 2, '#ffffff'), label(right - width - 6, y + 1, `${length} ${symbol}`, 'end')]
}

/** Which way is forward: the words and an arrow to the right. */
export const forwardArrow = (x: number, y: number): readonly string[] => [
  label(x, y, 'forward'),
  element('path', { d: `M${x + 44} ${y - 4}h16m-5 -3.5l5.5 3.5l-5.5 3.5`, fill: 'none', stroke: '#17242d', 'stroke-width': 1.2 }),
]
