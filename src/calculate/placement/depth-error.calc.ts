import type { Method } from '../method.js'

export type DepthErrorInput = Readonly<{ offsetM: number; expectedOffsetM: number }>
export type DepthErrorOutput = Readonly<{ depthErrorM: number }>

/**
 * By how much the depth shown is off: above zero it shows more water than there is.
 *
 * Formula   e = o_s − o
 * Units     o_s offset that is set, o offset that is right [m]; e [m]
 * Source    plane-geometry
 */
export function depthError(q: DepthErrorInput): DepthErrorOutput {
  const depthErrorM = q.offsetM - q.expectedOffsetM
  // What remains in the last binary digits of equal offsets is no error.
  return { depthErrorM: Math.abs(depthErrorM) < 1e-9 ? 0 : depthErrorM }
}

export const depthErrorMethod: Method<DepthErrorInput, DepthErrorOutput> = {
  id: 'depth-error',
  title: 'Error of the depth shown',
  formula: String.raw`e = o_s - o`,
  symbols: { offsetM: 'o_s', expectedOffsetM: 'o', depthErrorM: 'e' },
  citations: [{ source: 'plane-geometry', place: 'difference of two offsets' }],
  assumes: ['The device adds the offset to what it measures.'],
  compute: depthError,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: '+0.6 m, the offset to the waterline, set where −1.3 m to the keel belongs: 0.6 + 1.3', input: { offsetM: 0.6, expectedOffsetM: -1.3 }, expected: { depthErrorM: 1.9 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '−1.6 m set, −1.3 m is right: 0.3 m too shallow', input: { offsetM: -1.6, expectedOffsetM: -1.3 }, expected: { depthErrorM: -0.3 }, tolerance: 1e-9 },
  ],
}
