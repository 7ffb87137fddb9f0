/** Numbers of steps, once it is known which of them hold for this boat. */

/** Steps count on over tables and over what is left out; a step written as number 1, and the first after a heading, begins again. */
export function numberedOn(lines: readonly string[]): readonly string[] {
  let last = 0
  return lines.map(line => {
    if (line.startsWith('#')) last = 0
    const [, written, rest] = /^(\d+)\.(\s.*)$/.exec(line) ?? []
    if (written === undefined) return line
    last = written === '1' ? 1 : last + 1
    return `${last}.${rest}`
  })
}
