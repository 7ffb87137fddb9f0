/**
 * How much goes on a sheet. Nothing is drawn here: the size of a drawing is estimated from its boxes, so that the split
 * into sheets is the same with and without a browser.
 */
import { type Box, type BoxClass, type Direction, type Drawing, type Line, rowsOf } from './mermaid-text.js'

/**
 * All sizes are px of the drawing at its natural size, at which its letters are 14 px (10.5 pt) high. A drawing this large
 * prints at 8 pt on A4: 180 mm by 226 mm of paper, 1 px becoming 0.2016 mm. Where the estimate is short by an eighth, it
 * still prints at 7 pt.
 */
const sheetSize = { wide: 892, high: 1121 }
/** Longer one way than this, a drawing is turned if that helps. */
const longestShape = 2.5

// Measured on drawings in the pack's condensed face: the mean width of a character, the height of a line, what the layout
// leaves between boxes, and what mermaid leaves around the lettering of a box and the contents of a frame.
const characterWidth = 6
const lineHeight = 15.4
const narrowestLabel = 76
const gap = { beside: 24, besideInFrame: 32, along: 24, aroundLabel: 24, betweenLabels: 12, perLine: 3, edge: 8 }
const frameMargin: Size = { wide: 28, high: 36 }
const boxMargin: Readonly<Record<BoxClass, Size>> = {
  source: { wide: 28, high: 14 },
  protection: { wide: 17, high: 7 },
  switch: { wide: 28, high: 14 },
  busbar: { wide: 28, high: 14 },
  panel: { wide: 20, high: 20 },
  module: { wide: 17, high: 7 },
  load: { wide: 14, high: 14 },
  junction: { wide: 22, high: 7 },
  reference: { wide: 14, high: 14 },
}

interface Size { readonly wide: number; readonly high: number }

/** The same box is measured for every sheet on which it is tried. */
const measured = new WeakMap<Box, Size>()
function boxSize(box: Box): Size {
  const known = measured.get(box)
  if (known !== undefined) return known
  const rows = rowsOf(box)
  const margin = boxMargin[box.is]
  const size = {
    wide: Math.max(narrowestLabel, ...rows.map(row => row.length * characterWidth)) + margin.wide,
    high: rows.length * lineHeight + margin.high,
  }
  measured.set(box, size)
  return size
}
const labelSize = ({ label }: Line): Size =>
  ({ wide: Math.max(0, ...label.map(text => text.length)) * characterWidth, high: label.length * lineHeight })

/** A drawing without its words: things of a size, and lines between them. */
interface Layout { readonly things: ReadonlyMap<string, Size>; readonly lines: readonly Line[] }

/** About how large the drawing comes out. Each frame is laid out by itself, then counts as one box. */
export function estimatedSize({ boxes, lines, frames, direction }: Drawing): Size {
  const sizes = new Map(boxes.map(box => [box.key, boxSize(box)]))
  const frameOf = new Map(frames.flatMap(frame => frame.boxKeys.map(boxKey => [boxKey, frame] as const)))
  const things = new Map(sizes)
  for (const frame of frames) {
    for (const key of frame.boxKeys) things.delete(key)
    const inside = laidOut({
      things: new Map(frame.boxKeys.map(key => [key, sizes.get(key)!])),
      lines: lines.filter(({ from, to }) => frameOf.get(from) === frame && frameOf.get(to) === frame),
    }, direction, gap.besideInFrame)
    const title = frame.title.map(row => row.length * characterWidth)
    things.set(frame.key, {
      wide: Math.max(inside.wide, ...title) + frameMargin.wide, high: inside.high + title.length * lineHeight + frameMargin.high,
    })
  }
  const outer = lines.map(line => ({ ...line, from: frameOf.get(line.from)?.key ?? line.from, to: frameOf.get(line.to)?.key ?? line.to }))
  return laidOut({ things, lines: outer.filter(({ from, to }) => from !== to) }, direction, gap.beside)
}

function laidOut({ things, lines }: Layout, direction: Direction, between: number): Size {
  const across = direction === 'left to right'
  const layers = layersOf([...things.keys()], lines)
  const layerCount = Math.max(-1, ...layers.values()) + 1
  const along = new Array<number>(layerCount).fill(0)
  for (const [key, { wide, high }] of things) {
    const layer = layers.get(key)!
    along[layer] = Math.max(along[layer]!, across ? wide : high)
  }
  const lineCount = new Array<number>(layerCount).fill(0)
  const labels = new Array<number>(layerCount).fill(0)
  for (const line of lines) {
    const layer = Math.min(layers.get(line.from)!, layers.get(line.to)!)
    const { wide, high } = labelSize(line)
    lineCount[layer]! += 1
    if (line.label.length > 0) labels[layer] = Math.max(labels[layer]!, gap.aroundLabel + (across ? wide : high))
  }
  const gaps = labels.slice(0, -1).map((label, layer) => gap.along + label + lineCount[layer]! * gap.perLine)
  const alongAll = sum(along) + sum(gaps) + gap.edge
  const besideAll = besideEachOther({ things, lines }, layers, across ? 'high' : 'wide', between) + gap.edge
  return across ? { wide: alongAll, high: besideAll } : { wide: besideAll, high: alongAll }
}
const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0)

/** How far the layers reach: each thing stands beside the ones before it in its layer, opposite the middle of what it leads to. */
function besideEachOther({ things, lines }: Layout, layers: ReadonlyMap<string, number>, side: keyof Size, between: number): number {
  const onward = ends(lines, ({ from, to }) => [from, to])
  const arriving = new Map<string, number>()
  for (const line of lines) arriving.set(line.to, (arriving.get(line.to) ?? -gap.betweenLabels) + labelSize(line)[side] + gap.betweenLabels)
  const sizeOf = (key: string): number => Math.max(things.get(key)![side], arriving.get(key) ?? 0)
  const free: number[] = []
  const middles = new Map<string, number>()
  const place = (key: string) => {
    const layer = layers.get(key)!
    const next = (onward.get(key) ?? []).filter(to => !middles.has(to))
    middles.set(key, 0)
    const size = sizeOf(key)
    const group = sum(next.map(to => sizeOf(to) + between)) - between
    const start = (free[layer] ?? 0) + (size - group) / 2
    for (const to of next) {
      if (middles.has(to)) continue
      const ahead = layers.get(to)!
      free[ahead] = Math.max(free[ahead] ?? 0, to === next[0] ? start : 0)
      place(to)
    }
    const [first, last] = [middles.get(next[0] ?? ''), middles.get(next.at(-1) ?? '')]
    const opposite = first === undefined || last === undefined ? 0 : (first + last) / 2 - size / 2
    const at = Math.max(free[layer] ?? 0, opposite)
    middles.set(key, at + size / 2)
    free[layer] = at + size + between
  }
  for (const key of [...things.keys()].toSorted((a, b) => layers.get(a)! - layers.get(b)!)) if (!middles.has(key)) place(key)
  return Math.max(between, ...free.filter(position => position !== undefined)) - between
}

/**
 * The columns (or rows) of the layout. Each thing stands one behind the last that leads to it; then what leads onward at
 * least as much as it is led to moves up to what it leads to. A loop is followed once.
 */
function layersOf(keys: readonly string[], lines: readonly Line[]): ReadonlyMap<string, number> {
  const onward = ends(lines, ({ from, to }) => [from, to])
  const back = ends(lines, ({ from, to }) => [to, from])
  const layers = new Map<string, number>()
  const onTheWay = new Set<string>()
  const place = (key: string, layer: number) => {
    if (onTheWay.has(key) || (layers.get(key) ?? -1) >= layer) return
    layers.set(key, layer)
    onTheWay.add(key)
    for (const next of onward.get(key) ?? []) place(next, layer + 1)
    onTheWay.delete(key)
  }
  for (const key of keys) if (!back.has(key)) place(key, 0)
  for (const key of keys) if (!layers.has(key)) place(key, 0)
  const lastFirst = keys.toSorted((a, b) => layers.get(b)! - layers.get(a)!)
  for (const key of lastFirst) {
    const next = onward.get(key) ?? []
    const nearest = Math.min(...next.map(to => layers.get(to)!)) - 1
    if (next.length >= (back.get(key)?.length ?? 0) && Number.isFinite(nearest)) layers.set(key, Math.max(layers.get(key)!, nearest))
  }
  return layers
}

function ends(lines: readonly Line[], pair: (line: Line) => readonly [string, string]): ReadonlyMap<string, readonly string[]> {
  const byKey = new Map<string, string[]>()
  for (const [key, other] of lines.map(pair)) {
    const others = byKey.get(key)
    if (others === undefined) byKey.set(key, [other])
    else others.push(other)
  }
  return byKey
}

export function fits(drawing: Drawing): boolean {
  const { wide, high } = estimatedSize(drawing)
  return wide <= sheetSize.wide && high <= sheetSize.high
}

/** The drawing in the direction in which it prints larger, or failing a difference less stretched; else left to right. */
export function turned(drawing: Omit<Drawing, 'direction'>): Drawing {
  const [across, down] = (['left to right', 'top down'] as const).map(direction => {
    const turnedOne = { ...drawing, direction }
    const { wide, high } = estimatedSize(turnedOne)
    const scale = Math.min(1, sheetSize.wide / wide, sheetSize.high / high)
    return { drawing: turnedOne, scale, stretched: Math.max(wide / high, high / wide) > longestShape }
  }) as [Turned, Turned]
  return down.scale > across.scale || (down.scale === across.scale && across.stretched && !down.stretched) ? down.drawing : across.drawing
}
interface Turned { readonly drawing: Drawing; readonly scale: number; readonly stretched: boolean }

export interface Sheet<T> { readonly parts: readonly T[]; readonly drawing: Drawing }

/**
 * Parts over as few sheets as hold them, in their order, about equally many on each where that fits. A part too large for
 * a sheet has one of its own.
 */
export function sheetsOf<T>(parts: readonly T[], draw: (parts: readonly T[]) => Drawing): readonly Sheet<T>[] {
  const sheet = (held: readonly T[]): Sheet<T> => ({ parts: held, drawing: draw(held) })
  const filled: Sheet<T>[] = []
  for (const part of parts) {
    const last = filled.at(-1)
    const longer = last === undefined ? null : sheet([...last.parts, part])
    if (longer !== null && fits(longer.drawing)) filled[filled.length - 1] = longer
    else filled.push(sheet([part]))
  }
  const edge = (i: number) => Math.round((i * parts.length) / filled.length)
  const even = filled.map((_, i) => sheet(parts.slice(edge(i), edge(i + 1))))
  return even.every(({ drawing }) => fits(drawing)) ? even : filled
}
