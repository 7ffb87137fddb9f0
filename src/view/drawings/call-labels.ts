/** Names of things in rows above or below a drawing, none upon another. */

export interface Called<T> { readonly thing: T; readonly labelX: number }
export interface LabelRows<T> {
  readonly left: number
  readonly width: number
  textOf(thing: T): string
  /** Where in the drawing the thing is. */
  wantedX(thing: T): number
}

export const labelWidth = (text: string): number => text.length * 6.6 + 9

/** In as many rows as it takes, side by side, each label as near its thing as there is room. */
export function labelRows<T>(things: readonly T[], rows: LabelRows<T>): readonly (readonly Called<T>[])[] {
  const sorted = things.toSorted((a, b) => rows.wantedX(a) - rows.wantedX(b))
  const widthOf = (row: readonly T[]): number => row.reduce((sum, thing) => sum + labelWidth(rows.textOf(thing)), 0)
  const dealt = (rowCount: number): readonly (readonly T[])[] => Array.from({ length: rowCount }, (_, row) => sorted.filter((_thing, i) => i % rowCount === row))
  let rowCount = Math.ceil(widthOf(sorted) / rows.width)
  // Dealt out in turn, long names may come to lie in one row.
  while (rowCount < sorted.length && dealt(rowCount).some(row => widthOf(row) > rows.width)) rowCount += 1
  return dealt(rowCount).map(row => spread(row, rows))
}

/** From left to right, pushed apart where they would touch, then back from the right edge. */
function spread<T>(row: readonly T[], { left, width, textOf, wantedX }: LabelRows<T>): readonly Called<T>[] {
  const half = (i: number): number => labelWidth(textOf(row[i]!)) / 2
  const places: number[] = []
  row.forEach((thing, i) => places.push(Math.max(wantedX(thing), (i === 0 ? left : places[i - 1]! + half(i - 1)) + half(i))))
  for (let i = row.length - 1; i >= 0; i -= 1) {
    places[i] = Math.min(places[i]!, (i === row.length - 1 ? left + width : places[i + 1]! - half(i + 1)) - half(i))
  }
  return row.map((thing, i) => ({ thing, labelX: places[i]! }))
}
