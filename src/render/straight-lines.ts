/**
 * Takes the small steps out of a diagram's lines. The layout sets each line to the middle of its place on a box, and
 * where two such places almost face each other it draws a step of a few units. This function is sent to the page as
 * text, so it reaches nothing outside itself.
 */
export function straightenLines(drawing: SVGSVGElement): void {
  /** A longer step is a bend that means something. */
  const longestStep = 22
  /** What a line that is moved must keep from other lines and from the corner of its box. */
  const clearance = 8
  const cornerRadius = 7

  type Point = Readonly<{ x: number; y: number }>
  interface Line { readonly path: SVGPathElement; points: readonly Point[]; moved: boolean }
  const same = (a: number, b: number) => Math.abs(a - b) < 0.5
  const add = (point: Point, dx: number, dy: number): Point => ({ x: point.x + dx, y: point.y + dy })
  const between = (value: number, a: number, b: number, margin: number) =>
    value > Math.min(a, b) - margin && value < Math.max(a, b) + margin

  const withoutIdlePoints = (points: readonly Point[]): readonly Point[] => points.reduce<Point[]>((kept, point) => {
    const [before, last] = [kept.at(-2), kept.at(-1)]
    if (last !== undefined && same(last.x, point.x) && same(last.y, point.y)) return kept
    const idle = before !== undefined && last !== undefined &&
      ((same(before.x, last.x) && same(last.x, point.x)) || (same(before.y, last.y) && same(last.y, point.y)))
    return [...(idle ? kept.slice(0, -1) : kept), point]
  }, [])
  const pointsOf = (path: SVGPathElement): readonly Point[] => {
    const points = JSON.parse(atob(path.dataset.points ?? 'W10=')) as Point[]
    // The path itself stops short of the box where it ends in an arrow.
    const length = path.getTotalLength()
    return points.length < 2 ? [] : withoutIdlePoints([path.getPointAtLength(0), ...points.slice(1, -1), path.getPointAtLength(length)])
  }
  const lines: Line[] = [...drawing.querySelectorAll<SVGPathElement>('.edgePaths path')]
    .map(path => ({ path, points: pointsOf(path), moved: false }))
  const toDrawing = drawing.getScreenCTM()!.inverse()
  const boxes = [...drawing.querySelectorAll('.node')].map(node => {
    const { left, top, right, bottom } = node.getBoundingClientRect()
    const [from, to] = [new DOMPoint(left, top), new DOMPoint(right, bottom)].map(corner => corner.matrixTransform(toDrawing))
    return { left: from!.x, top: from!.y, right: to!.x, bottom: to!.y }
  })
  const labels = [...drawing.querySelectorAll<SVGGElement>('.edgeLabels > .edgeLabel')]
    .flatMap(label => {
      const at = label.transform.baseVal.consolidate()?.matrix
      return at === undefined || label.textContent === '' ? [] : [{ label, x: at.e, y: at.f }]
    })

  /** Whether the run from the end of a line to its first bend can move sideways and still meet its box, clear of other lines. */
  const canMove = (line: Line, end: Point, bend: Point, dx: number, dy: number): boolean => {
    const along = dx === 0 ? 'x' as const : 'y' as const
    const across = dx === 0 ? 'y' as const : 'x' as const
    const to = add(end, dx, dy)
    const box = boxes.find(({ left, top, right, bottom }) => between(end.x, left, right, 8) && between(end.y, top, bottom, 8))
    if (box === undefined) return false
    const [low, high] = across === 'x' ? [box.left, box.right] : [box.top, box.bottom]
    if (to[across] < low + clearance || to[across] > high - clearance) return false
    return lines.every(other => other === line || other.points.slice(1).every((b, i) => {
      const a = other.points[i]!
      const beside = between(to[across], a[across], b[across], clearance) && !between(end[across], a[across], b[across], 0)
      const overlapping = Math.min(a[along], b[along]) < Math.max(end[along], bend[along])
        && Math.max(a[along], b[along]) > Math.min(end[along], bend[along])
      return !(beside && overlapping && same(a[across], b[across]))
    }))
  }
  const straightenOnce = (line: Line): boolean => {
    const { points } = line
    for (let i = 1; i + 2 < points.length; i++) {
      const [before, from, to, after] = [points[i - 1]!, points[i]!, points[i + 1]!, points[i + 2]!]
      const [dx, dy] = [same(from.x, to.x) ? 0 : to.x - from.x, same(from.y, to.y) ? 0 : to.y - from.y]
      const goesOn = dx === 0 ? (from.x - before.x) * (after.x - to.x) > 0 : (from.y - before.y) * (after.y - to.y) > 0
      if (Math.abs(dx) + Math.abs(dy) > longestStep || (dx !== 0 && dy !== 0) || !goesOn) continue
      const onRun = (a: Point, b: Point) => labels.filter(({ x, y }) => between(x, a.x, b.x, 3) && between(y, a.y, b.y, 3))
      const choices = []
      if (i === 1 && canMove(line, before, from, dx, dy)) {
        choices.push({ moved: onRun(before, from), dx, dy, points: [add(before, dx, dy), ...points.slice(2)] })
      }
      if (i + 3 === points.length && canMove(line, after, to, -dx, -dy)) {
        choices.push({ moved: onRun(to, after), dx: -dx, dy: -dy, points: [...points.slice(0, -2), add(after, -dx, -dy)] })
      }
      const choice = choices.find(({ moved }) => moved.length === 0) ?? choices[0]
      if (choice === undefined) continue
      for (const label of choice.moved) {
        label.x += choice.dx
        label.y += choice.dy
        label.label.setAttribute('transform', `translate(${label.x},${label.y})`)
      }
      line.points = withoutIdlePoints(choice.points)
      line.moved = true
      return true
    }
    return false
  }

  const rounded = (points: readonly Point[]): string => points.map((point, i) => {
    const [before, after] = [points[i - 1], points[i + 1]]
    if (before === undefined) return `M${point.x},${point.y}`
    if (after === undefined) return `L${point.x},${point.y}`
    const towards = (other: Point): Point => {
      const length = Math.hypot(other.x - point.x, other.y - point.y)
      const share = Math.min(cornerRadius, length / 2) / length
      return add(point, (other.x - point.x) * share, (other.y - point.y) * share)
    }
    const [start, end] = [towards(before), towards(after)]
    return `L${start.x},${start.y}Q${point.x},${point.y} ${end.x},${end.y}`
  }).join('')

  for (const line of lines) {
    // A line that hops over another stays as it is: its hops are in its path only.
    if (/[Aa]/.test(line.path.getAttribute('d') ?? '')) continue
    while (straightenOnce(line));
    if (line.moved) line.path.setAttribute('d', rounded(line.points))
  }
}
