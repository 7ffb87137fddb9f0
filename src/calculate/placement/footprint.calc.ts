import type { Method } from '../method.js'

export type FootprintInput = Readonly<{ depthM: number; beamDeg: number }>
export type FootprintOutput = Readonly<{ diameterM: number }>

/**
 * How wide the beam of a transducer is at a depth.
 *
 * Formula   D = 2 · d · tan(θ/2)
 * Units     d depth below the transducer [m], θ full angle of the beam [°]; D [m]
 * Source    plane-geometry
 */
export function footprint(q: FootprintInput): FootprintOutput {
  return { diameterM: 2 * q.depthM * Math.tan((q.beamDeg * Math.PI) / 360) }
}

export const footprintMethod: Method<FootprintInput, FootprintOutput> = {
  id: 'transducer-footprint',
  title: 'Footprint of a transducer',
  formula: String.raw`D = 2\,d \tan\frac{\theta}{2}`,
  symbols: { depthM: 'd', beamDeg: String.raw`\theta`, diameterM: 'D' },
  citations: [{ source: 'plane-geometry', place: 'width of a cone' }],
  assumes: ['The bottom is level and the beam looks straight down. The shallowest echo in the footprint is what is shown.'],
  compute: footprint,
  notApplicable: q => (q.beamDeg > 0 && q.beamDeg < 180 ? null : 'the beam is not between 0 and 180°'),
  checks: ([[20, 30, 10.58], [9, 50, 7.87], [45, 10, 8.284], [12, 100, 21.021]] as const).map(([beamDeg, depthM, diameterM]) => ({
    origin: 'by hand', place: `2 · ${depthM} · tan(${beamDeg / 2}°)`, input: { depthM, beamDeg }, expected: { diameterM }, tolerance: 5.001e-4,
  })),
}
