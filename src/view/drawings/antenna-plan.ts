/** Antennas, radar beams, people and structures seen from one side, true to scale. */
import { type Called, labelRows, labelWidth } from './call-labels.js'
import { at, element, label } from './svg.js'

export interface PlanMark {
  readonly tag: string
  readonly is: 'antenna' | 'scanner' | 'person'
  /** To the right in the drawing. */
  readonly acrossM: number
  readonly footM: number
  readonly topM: number
  /** Distance that people keep from it; null where none is known. */
  readonly keepM: number | null
  /** Half the height of a scanner's beam. */
  readonly beamDeg: number | null
}
export interface PlanBox { readonly tag: string; readonly fromM: number; readonly toM: number; readonly footM: number; readonly topM: number }
export interface AntennaPlan {
  readonly title: string
  readonly marks: readonly PlanMark[]
  readonly boxes: readonly PlanBox[]
  /** The lines of height: every so many metres, and what stands at each. */
  readonly heights: { readonly everyM: number; text(step: number): string }
}

const frame = { left: 40, right: 8, width: 372, mostHeight: 320, rowHeight: 17 } as const
const marginM = 1.2
const mostPerM = 70
const colours = { antenna: '#0f5a78', scanner: '#a8201a', person: '#17242d', box: '#eef2f4', edge: '#9fb0ba', beam: '#f3d6d2', keep: '#8a5200' } as const

export function antennaPlan({ title, marks, boxes, heights }: AntennaPlan): string {
  const across = marks.map(({ acrossM }) => acrossM)
  const middleM = (Math.min(...across) + Math.max(...across)) / 2
  const spanM = Math.max(...across) - Math.min(...across) + 2 * marginM
  const topM = Math.max(...marks.map(mark => mark.topM)) + 0.6
  const bottomM = Math.min(0, ...marks.map(({ footM }) => footM))
  const perM = Math.min(frame.width / spanM, frame.mostHeight / (topM - bottomM), mostPerM)
  const height = (topM - bottomM) * perM
  const rowsOf = (called: readonly PlanMark[]) =>
    labelRows(called, { left: frame.left, width: frame.width, textOf: ({ tag }) => tag, wantedX: ({ acrossM }) => frame.left + frame.width / 2 + (acrossM - middleM) * perM })
  const above = rowsOf(marks.filter(({ is }) => is !== 'person'))
  const below = rowsOf(marks.filter(({ is }) => is === 'person'))
  const top = above.length * frame.rowHeight + 10
  const foot = top + height
  const x = (acrossM: number): number => frame.left + frame.width / 2 + (acrossM - middleM) * perM
  const y = (heightM: number): number => top + (topM - heightM) * perM
  // A drawing in the drawing: what reaches beyond the frame is cut off at it.
  const inside = (content: readonly string[]): string => element('svg', {
    x: frame.left, y: top, width: frame.width, height, viewBox: `${frame.left} ${at(top)} ${frame.width} ${at(height)}`,
  }, content.join(''))

  const steps = Array.from({ length: Math.floor(topM / heights.everyM) + 1 }, (_, step) => step)
  const content = [
    inside([
      ...boxes.map(box => boxOf(box, x, y)),
      ...marks.flatMap(mark => beamOf(mark, x, y)),
      ...steps.map(step => element('line', { class: step === 0 ? 'frame' : 'grid', x1: frame.left, x2: frame.left + frame.width, y1: y(step * heights.everyM), y2: y(step * heights.everyM) })),
      ...boxes.flatMap(box => nameOfBox(box, x, y, perM)),
      ...marks.flatMap(mark => keepOf(mark, x, y, perM)),
      ...marks.flatMap(mark => symbolOf(mark, x, y)),
    ]),
    element('rect', { class: 'frame', x: frame.left, y: top, width: frame.width, height }),
    ...steps.map(step => label(frame.left - 5, y(step * heights.everyM) + 4, heights.text(step), 'end')),
    ...above.flatMap((row, i) => row.flatMap(placed => called(placed, top - 8 - i * frame.rowHeight, x, y(placed.thing.topM), -1))),
    ...below.flatMap((row, i) => row.flatMap(placed => called(placed, foot + 17 + i * frame.rowHeight, x, y(placed.thing.footM), 1))),
  ]
  const totalHeight = foot + (below.length === 0 ? 4 : 8 + below.length * frame.rowHeight)
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${frame.left + frame.width + frame.right} ${at(totalHeight)}`, role: 'img', 'aria-label': title }, content.join(''))
}

type Scale = (valueM: number) => number

/** The tag, and a thin line from it to the thing. */
const called = ({ thing: mark, labelX }: Called<PlanMark>, labelY: number, x: Scale, toY: number, side: -1 | 1): readonly string[] => [
  element('line', { x1: labelX, y1: side === -1 ? labelY + 3 : labelY - 11, x2: x(mark.acrossM), y2: toY, stroke: colours.edge, 'stroke-width': '0.8' }),
  label(labelX, labelY, mark.tag, 'middle'),
]

const boxOf = ({ fromM, toM, footM, topM }: PlanBox, x: Scale, y: Scale): string =>
  element('rect', { x: x(fromM), y: y(topM), width: x(toM) - x(fromM), height: y(footM) - y(topM), fill: colours.box, stroke: colours.edge, 'stroke-width': '1' })

/** Where there is room for it inside what is seen of the box. */
function nameOfBox({ tag, fromM, toM, footM, topM }: PlanBox, x: Scale, y: Scale, perM: number): readonly string[] {
  const [left, right] = [Math.max(x(fromM), frame.left), Math.min(x(toM), frame.left + frame.width)]
  return right - left < labelWidth(tag) + 8 || (topM - footM) * perM < 24 ? [] : [label(right - 5, y(footM) - 6, tag, 'end')]
}

/** Both ways from the scanner, as far as the frame. */
function beamOf({ acrossM, footM, topM, beamDeg }: PlanMark, x: Scale, y: Scale): readonly string[] {
  if (beamDeg === null || beamDeg >= 90) return []
  const far = 2 * frame.width
  const rise = far * Math.tan(beamDeg * (Math.PI / 180))
  const [cx, cy] = [x(acrossM), y((footM + topM) / 2)]
  return [-1, 1].map(side => element('polygon', {
    points: `${at(cx)},${at(cy)} ${at(cx + side * far)},${at(cy - rise)} ${at(cx + side * far)},${at(cy + rise)}`, fill: colours.beam, 'fill-opacity': '0.7',
  }))
}

/** Round an antenna all that is nearer than people keep; of a scanner only in its beam. */
function keepOf({ is, acrossM, footM, topM, keepM, beamDeg }: PlanMark, x: Scale, y: Scale, perM: number): readonly string[] {
  if (keepM === null || keepM * perM < 6) return []
  const line = { fill: 'none', stroke: colours.keep, 'stroke-width': '1.2', 'stroke-dasharray': '5 3' }
  const r = keepM * perM
  if (is === 'scanner' && beamDeg !== null && beamDeg < 90) {
    const [cx, cy] = [x(acrossM), y((footM + topM) / 2)]
    const [dx, dy] = [r * Math.cos(beamDeg * (Math.PI / 180)), r * Math.sin(beamDeg * (Math.PI / 180))]
    return [1, -1].map(side => element('path', { d: `M${at(cx + side * dx)} ${at(cy - dy)} A${at(r)} ${at(r)} 0 0 ${side === 1 ? 1 : 0} ${at(cx + side * dx)} ${at(cy + dy)}`, ...line }))
  }
  return [element('rect', { x: x(acrossM) - r, y: y(topM) - r, width: 2 * r, height: y(footM) - y(topM) + 2 * r, rx: r, ...line })]
}

function symbolOf({ is, acrossM, footM, topM }: PlanMark, x: Scale, y: Scale): readonly string[] {
  const [cx, foot, top] = [x(acrossM), y(footM), y(topM)]
  switch (is) {
    case 'antenna': return [
      element('line', { x1: cx, x2: cx, y1: foot, y2: top, stroke: colours.antenna, 'stroke-width': '2.4', 'stroke-linecap': 'round' }),
      element('circle', { cx, cy: foot, r: 3, fill: colours.antenna }),
    ]
    case 'scanner': return [element('rect', { x: cx - 11, y: (foot + top) / 2 - 4, width: 22, height: 8, rx: 3, fill: colours.scanner })]
    case 'person': return [
      element('line', { x1: cx, x2: cx, y1: foot, y2: top + 5, stroke: colours.person, 'stroke-width': '2.4' }),
      element('circle', { cx, cy: top + 4.5, r: 4.5, fill: '#fff', stroke: colours.person, 'stroke-width': '1.6' }),
    ]
  }
}
