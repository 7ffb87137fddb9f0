/**
 * A drawing in the page, rewritten as SVG that is complete in itself: no style sheet, no script, no id that another
 * drawing may have. These functions are sent to the page as text, so they reach nothing outside themselves and each other.
 */

export interface PlainSvgRequest {
  /** Starts every id in the drawing. */
  readonly id: string
  readonly title: string
  readonly pxPerUnit: number
}

export function plainSvg(
  drawing: SVGSVGElement, { id, title, pxPerUnit }: PlainSvgRequest,
): { readonly svg: string; readonly widthPx: number; readonly heightPx: number } {
  const svgNamespace = 'http://www.w3.org/2000/svg'
  const geometry: Readonly<Record<string, readonly string[]>> = {
    rect: ['x', 'y', 'width', 'height', 'rx', 'ry'], path: ['d'], polygon: ['points'], polyline: ['points'],
    circle: ['cx', 'cy', 'r'], ellipse: ['cx', 'cy', 'rx', 'ry'], line: ['x1', 'y1', 'x2', 'y2'],
  }
  const round = (text: string) => text.replace(/-?\d*\.\d+(e-?\d+)?/g, number => String(Math.round(Number(number) * 10) / 10))
  const hex = (colour: string) => {
    const channels = /^rgb\((\d+), (\d+), (\d+)\)$/.exec(colour)
    return channels ? '#' + channels.slice(1).map(channel => Number(channel).toString(16).padStart(2, '0')).join('') : colour
  }
  const make = (parent: Element, name: string, attributes: Readonly<Record<string, string | null>>): Element => {
    const element = document.createElementNS(svgNamespace, name)
    for (const [key, value] of Object.entries(attributes)) if (value !== null && value !== '') element.setAttribute(key, value)
    return parent.appendChild(element)
  }

  const { width, height, x, y } = drawing.viewBox.baseVal
  const widthPx = Math.ceil(width * pxPerUnit)
  const heightPx = Math.ceil(height * pxPerUnit)
  const inherited = getComputedStyle(drawing)
  const root = make(document.createElement('div'), 'svg', {
    xmlns: svgNamespace,
    viewBox: round(`${x} ${y} ${width} ${height}`),
    style: `display:block;width:100%;max-width:${widthPx}px;height:auto`,
    // An image has no parts that a reader could reach, so a drawing with links is a group.
    role: drawing.querySelector('a') === null ? 'img' : 'group',
    'aria-labelledby': `${id}:title`,
    'font-family': inherited.fontFamily, 'font-size': inherited.fontSize, fill: hex(inherited.fill),
  })
  make(root, 'title', { id: `${id}:title` }).textContent = title
  const markers = new Map<string, string>()

  const markerOf = (shape: Element, end: 'marker-start' | 'marker-end'): string | null => {
    const original = /#([^")]+)/.exec(shape.getAttribute(end) ?? '')?.[1]
    if (original === undefined) return null
    if (!markers.has(original)) markers.set(original, `${id}:arrow${markers.size + 1}`)
    return `url(#${markers.get(original)!})`
  }
  const copyShape = (shape: SVGGraphicsElement, parent: Element): void => {
    const style = getComputedStyle(shape)
    const filled = style.fill !== 'none' && style.opacity !== '0'
    const stroked = style.stroke !== 'none' && style.strokeWidth !== '0px'
    const { width, height } = shape.getBBox()
    if ((!filled && !stroked) || (width === 0 && height === 0)) return
    make(parent, shape.tagName, {
      ...Object.fromEntries(geometry[shape.tagName]!.map(name => [name, round(shape.getAttribute(name) ?? '')])),
      ...(shape.tagName === 'path' ? { d: round(plainOutline(shape.getAttribute('d') ?? '')) } : {}),
      transform: round(shape.getAttribute('transform') ?? ''),
      fill: filled ? hex(style.fill) : 'none',
      stroke: stroked ? hex(style.stroke) : null,
      'stroke-width': stroked ? style.strokeWidth.replace('px', '') : null,
      'stroke-dasharray': stroked && /[1-9]/.test(style.strokeDasharray) ? style.strokeDasharray.replace(/px/g, '') : null,
      'marker-start': markerOf(shape, 'marker-start'),
      'marker-end': markerOf(shape, 'marker-end'),
    })
  }
  const copyText = (text: SVGTextElement, parent: Element): void => {
    const rows = [...text.querySelectorAll<SVGTSpanElement>(':scope > tspan.row')]
    for (const row of rows.length > 0 ? rows : [text]) {
      const words = (row.textContent ?? '').trim()
      const characters = row.getNumberOfChars()
      if (words === '' || characters === 0) continue
      const style = getComputedStyle(row.querySelector('tspan') ?? row)
      const start = row.getStartPositionOfChar(0)
      const end = row.getEndPositionOfChar(characters - 1)
      const along = { start: start.x, middle: (start.x + end.x) / 2, end: end.x }[style.textAnchor] ?? start.x
      make(parent, 'text', {
        x: round(String(along)), y: round(String(start.y)), transform: round(text.getAttribute('transform') ?? ''),
        'text-anchor': style.textAnchor === 'start' ? null : style.textAnchor,
        'font-weight': style.fontWeight === '400' ? null : style.fontWeight,
        'font-style': style.fontStyle === 'normal' ? null : style.fontStyle,
        'font-size': style.fontSize === inherited.fontSize ? null : style.fontSize.replace('px', ''),
        fill: style.fill === inherited.fill ? null : hex(style.fill),
        // A paper-coloured edge keeps a line that has to pass behind the words off them.
        stroke: style.stroke === 'none' ? null : hex(style.stroke),
        'stroke-width': style.stroke === 'none' ? null : style.strokeWidth.replace('px', ''),
        'paint-order': style.stroke === 'none' ? null : 'stroke',
      }).textContent = words
    }
  }
  const linkOf = (element: Element): string | null => {
    const href = element.getAttribute('href') ?? element.getAttribute('xlink:href') ?? ''
    return href.startsWith('asfitted:') ? href : null
  }
  const copy = (element: Element, parent: Element): void => {
    if (element.tagName in geometry) return copyShape(element as SVGGraphicsElement, parent)
    if (element.tagName === 'text') return copyText(element as SVGTextElement, parent)
    if (element.tagName !== 'g' && element.tagName !== 'a') return
    const node = /-flowchart-(.+)-\d+$/.exec(element.id)?.[1]
    const group = make(parent, linkOf(element) === null ? 'g' : 'a', {
      transform: round(element.getAttribute('transform') ?? ''),
      href: linkOf(element),
      id: node === undefined ? null : `${id}:${node}`,
      class: node === undefined ? null : [...element.classList].filter(name => name !== 'default' && name !== 'clickable').join(' '),
    })
    for (const child of element.children) copy(child, group)
    if (group.childElementCount === 0) group.remove()
    // A group that only holds others adds nothing.
    else if (group.attributes.length === 0) group.replaceWith(...group.childNodes)
  }
  for (const child of drawing.children) copy(child, root)

  const defs = make(document.createElement('div'), 'defs', {})
  for (const [original, name] of markers) {
    const from = drawing.querySelector(`#${CSS.escape(original)}`)!
    const marker = make(defs, 'marker', {
      id: name,
      ...Object.fromEntries(['viewBox', 'refX', 'refY', 'markerUnits', 'markerWidth', 'markerHeight', 'orient']
        .map(attribute => [attribute, from.getAttribute(attribute)])),
    })
    for (const child of from.children) copy(child, marker)
  }
  if (markers.size > 0) root.firstElementChild!.after(defs)
  return { svg: new XMLSerializer().serializeToString(root), widthPx, heightPx }
}

/**
 * Outlines of some boxes come as hundreds of short strokes, each twice and each a curve that is straight. The same line
 * as one chain of points; any other path as it is.
 */
export function plainOutline(path: string): string {
  const strokes = [...path.matchAll(/M([-\d., e]+)((?:C[-\d., e]+)*)/g)]
  if (strokes.length === 0 || strokes.map(([whole]) => whole).join('').length !== path.trim().length) return path
  const numbers = (text: string): number[] => text.trim().split(/[\s,]+/).map(Number)

  const chains: (readonly [number, number])[][] = []
  for (const [, start, curves] of strokes) {
    let [x, y] = numbers(start!) as [number, number]
    for (const [, curve] of curves!.matchAll(/C([-\d., e]+)/g)) {
      const [x1, y1, x2, y2, endX, endY] = numbers(curve!) as [number, number, number, number, number, number]
      const offLine = (px: number, py: number) => Math.abs((endX - x) * (py - y) - (endY - y) * (px - x))
      const length = Math.hypot(endX - x, endY - y)
      if (offLine(x1, y1) > 0.3 * length || offLine(x2, y2) > 0.3 * length) return path
      const chain = chains.at(-1)
      const last = chain?.at(-1)
      const before = chain?.at(-2)
      const same = (point: readonly [number, number] | undefined, atX: number, atY: number) =>
        point !== undefined && Math.hypot(point[0] - atX, point[1] - atY) < 0.01
      if (same(last, x, y)) chain!.push([endX, endY])
      else if (!(same(before, x, y) && same(last, endX, endY))) chains.push([[x, y], [endX, endY]])
      ;[x, y] = [endX, endY]
    }
  }
  return chains.map(chain => `M${chain.map(([x, y]) => `${x} ${y}`).join('L')}`).join('')
}
