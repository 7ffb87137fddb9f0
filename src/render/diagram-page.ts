/**
 * What runs inside the browser to draw a diagram: mermaid's drawing, its kinks, titles and symbols seen to. These
 * functions are sent to the page as text, so they reach nothing outside themselves and each other.
 */
import type { Mermaid, MermaidConfig } from 'mermaid'

declare const mermaid: Mermaid
declare const straightenLines: typeof import('./straight-lines.js').straightenLines
declare const plainSvg: typeof import('./plain-svg.js').plainSvg

export interface DrawingRequest {
  readonly id: string
  readonly title: string
  readonly source: string
  readonly pxPerUnit: number
  /** Path data by class of box. */
  readonly symbols: Readonly<Record<string, string>>
}
/** `svg` is complete in itself and scales down from its natural size. `message` is mermaid's own, with the diagram's id. */
export type DiagramOutcome =
  | { readonly status: 'drawn'; readonly svg: string; readonly widthPx: number; readonly heightPx: number }
  | { readonly status: 'failed'; readonly message: string }

/** Sets mermaid up, with the faces loaded for every letter of `text`: boxes are measured by it. */
export async function preparePage(config: MermaidConfig, faces: readonly string[], text: string): Promise<void> {
  await Promise.all(faces.map(face => document.fonts.load(face, text)))
  mermaid.initialize(config)
}

export async function drawInPage(request: DrawingRequest): Promise<DiagramOutcome> {
  try {
    const { svg: rendered } = await mermaid.render('drawing', request.source)
    document.body.innerHTML = rendered
    const drawing = document.body.querySelector('svg')!
    // One unit of the drawing is one pixel of the page, for all that is measured below.
    drawing.setAttribute('style', `width:${drawing.viewBox.baseVal.width}px`)
    straightenLines(drawing)
    placeZoneTitles(drawing)
    addSymbols(drawing, request.symbols)
    return { status: 'drawn', ...plainSvg(drawing, request) }
  } catch (error) {
    return { status: 'failed', message: error instanceof Error ? error.message : String(error) }
  } finally {
    document.body.replaceChildren()
  }
}

/** Moves the title of each zone to the top left of its frame, or the first place along the top where no line crosses it. */
export function placeZoneTitles(drawing: SVGSVGElement): void {
  const step = 6
  const inset = 12
  const boxes = [...drawing.querySelectorAll('.node, .edgeLabel')].map(element => element.getBoundingClientRect())
  const lines = [...drawing.querySelectorAll<SVGPathElement>('.edgePaths path')].map(line => {
    let points: readonly DOMPoint[] | null = null
    return { box: line.getBoundingClientRect(), points: () => (points ??= pointsAlong(line)) }
  })

  const pointsAlong = (line: SVGPathElement): DOMPoint[] => {
    const toPage = line.getScreenCTM()!
    const count = Math.floor(line.getTotalLength() / step)
    return Array.from({ length: count + 1 }, (_, i) => line.getPointAtLength(i * step).matrixTransform(toPage))
  }
  const isFree = (place: DOMRect): boolean => {
    const touches = ({ left, right, top, bottom }: DOMRect) =>
      left < place.right + step && right > place.left - step && top < place.bottom && bottom > place.top
    return !boxes.some(touches)
      && !lines.some(({ box, points }) => touches(box) && points().some(({ x, y }) => touches(new DOMRect(x, y, 0, 0))))
  }

  for (const zone of drawing.querySelectorAll('.cluster')) {
    const title = zone.querySelector<SVGGElement>('.cluster-label')!
    const frame = zone.querySelector('rect')!.getBoundingClientRect()
    const box = title.querySelector('text')?.getBoundingClientRect()
    if (box === undefined || box.width === 0) continue
    const placeAt = (left: number) => new DOMRect(left, frame.top + inset / 2, box.width, box.height)
    let place = placeAt(frame.left + inset)
    while (!isFree(place) && place.right + step <= frame.right - inset) place = placeAt(place.left + step)
    if (!isFree(place)) place = placeAt(frame.left + inset)
    const { e, f } = title.transform.baseVal.consolidate()!.matrix
    title.setAttribute('transform', `translate(${e + place.left - box.left},${f + place.top - box.top})`)
    // Where every place is crossed, the line is interrupted by the title and not the other way round.
    drawing.querySelector('.edgePaths')!.after(title)
  }
}

/** Adds to each box of a class that has a symbol that symbol, left of the tag, if there is room for both. */
export function addSymbols(drawing: SVGSVGElement, symbols: Readonly<Record<string, string>>): void {
  const width = 36
  const height = 22
  const inset = 9
  const gap = 6
  for (const node of drawing.querySelectorAll<SVGGElement>('.node')) {
    const path = [...node.classList].map(name => symbols[name]).find(found => found !== undefined)
    const box = node.querySelector<SVGGraphicsElement>(':scope > .label-container')
    const tag = node.querySelector<SVGTSpanElement>('tspan.row')
    if (path === undefined || box === null || tag === null) continue
    const frame = box.getBoundingClientRect()
    const tagBox = tag.getBoundingClientRect()
    const left = frame.left + inset
    const shift = Math.max(0, left + width + gap - tagBox.left)
    if (tagBox.right + shift > frame.right - inset) continue
    tag.setAttribute('x', String(Number(tag.getAttribute('x')) + shift))
    const corner = new DOMPoint(left, (tagBox.top + tagBox.bottom - height) / 2).matrixTransform(node.getScreenCTM()!.inverse())
    const symbol = document.createElementNS('http://www.w3.org/2000/svg', 'path')
    symbol.setAttribute('d', path)
    symbol.setAttribute('transform', `translate(${corner.x},${corner.y})`)
    const style = { fill: 'none', stroke: getComputedStyle(tag).fill, 'stroke-width': '2px', 'stroke-dasharray': 'none' }
    for (const [property, value] of Object.entries(style)) symbol.style.setProperty(property, value, 'important')
    node.append(symbol)
  }
}
