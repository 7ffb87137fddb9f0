import type { Method } from '../method.js'

export type SkyBlockedInput = Readonly<{ widthDeg: number; lowestElevationDeg: number; highestElevationDeg: number; skyFromElevationDeg: number }>
export type SkyBlockedOutput = Readonly<{ blockedPercent: number }>

/**
 * Share of the sky that something hides which is so wide and reaches from one elevation up to another.
 *
 * Formula   s = 100 · φ/360 · (sin e_2 − sin e_1) / (1 − sin e_0)
 * Units     φ width along the horizon [°], e_1 and e_2 elevations between which it hides [°], e_0 elevation from which the sky counts [°]; s [%]
 * Source    plane-geometry
 */
export function skyBlockedBy({ widthDeg, lowestElevationDeg, highestElevationDeg, skyFromElevationDeg }: SkyBlockedInput): SkyBlockedOutput {
  return { blockedPercent: (100 * widthDeg * (sine(highestElevationDeg) - sine(lowestElevationDeg))) / (360 * (1 - sine(skyFromElevationDeg))) }
}
const sine = (angleDeg: number): number => Math.sin(angleDeg * (Math.PI / 180))

export const skyBlockedMethod: Method<SkyBlockedInput, SkyBlockedOutput> = {
  id: 'sky-blocked',
  title: 'Share of the sky that is hidden',
  formula: String.raw`s = 100\,\frac{\varphi}{360}\,\frac{\sin e_2 - \sin e_1}{1 - \sin e_0}`,
  symbols: { widthDeg: String.raw`\varphi`, lowestElevationDeg: 'e_1', highestElevationDeg: 'e_2', skyFromElevationDeg: 'e_0', blockedPercent: 's' },
  citations: [{ source: 'plane-geometry', place: 'area of a zone of a sphere' }, { source: 'ais-manuals', place: 'view of the sky from 5° to 90°' }],
  assumes: ['All parts of the sky count alike.', 'In steps of a tenth of a degree along the horizon, each with the elevations that the boxes hide in its middle.'],
  compute: skyBlockedBy,
  notApplicable: q => (q.skyFromElevationDeg < 90 && q.lowestElevationDeg <= q.highestElevationDeg ? null : 'there is no sky left'),
  checks: [
    { origin: 'by hand', place: 'half of the horizon up to the zenith: half of the sky', input: { widthDeg: 180, lowestElevationDeg: 5, highestElevationDeg: 90, skyFromElevationDeg: 5 }, expected: { blockedPercent: 50 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'all round up to 30° of a sky from the horizon: sin 30° is 1/2', input: { widthDeg: 360, lowestElevationDeg: 0, highestElevationDeg: 30, skyFromElevationDeg: 0 }, expected: { blockedPercent: 50 }, tolerance: 1e-9 },
    {
      origin: 'by hand', place: '90° wide up to 30°: 1/4 · (0.5 − 0.08716)/(1 − 0.08716)', input: { widthDeg: 90, lowestElevationDeg: 5, highestElevationDeg: 30, skyFromElevationDeg: 5 },
      expected: { blockedPercent: 11.306 }, tolerance: 1e-3,
    },
  ],
}
