import type { Method } from '../method.js'

export type SkyBlockedInput = Readonly<{ widthDeg: number; lowestDeg: number; highestDeg: number; skyFromDeg: number }>
export type SkyBlockedOutput = Readonly<{ blockedPercent: number }>

/**
 * Share of the sky that something hides which is so wide and reaches from one elevation up to another.
 *
 * Formula   s = 100 · φ/360 · (sin e_2 − sin e_1) / (1 − sin e_0)
 * Units     φ width along the horizon [°], e_1 and e_2 elevations between which it hides [°], e_0 elevation from which the sky counts [°]; s [%]
 * Source    sight-lines
 */
export function skyBlockedBy({ widthDeg, lowestDeg, highestDeg, skyFromDeg }: SkyBlockedInput): SkyBlockedOutput {
  return { blockedPercent: (100 * widthDeg * (sine(highestDeg) - sine(lowestDeg))) / (360 * (1 - sine(skyFromDeg))) }
}
const sine = (angleDeg: number): number => Math.sin(angleDeg * (Math.PI / 180))

export const skyBlockedMethod: Method<SkyBlockedInput, SkyBlockedOutput> = {
  id: 'sky-blocked',
  title: 'Share of the sky that is hidden',
  formula: String.raw`s = 100\,\frac{\varphi}{360}\,\frac{\sin e_2 - \sin e_1}{1 - \sin e_0}`,
  symbols: { widthDeg: String.raw`\varphi`, lowestDeg: 'e_1', highestDeg: 'e_2', skyFromDeg: 'e_0', blockedPercent: 's' },
  citations: [{ source: 'sight-lines', place: 'area of a zone of a sphere' }, { source: 'ais-manuals', place: 'view of the sky from 5° to 90°' }],
  assumes: ['All parts of the sky count alike.', 'Degree by degree along the horizon, each with the elevations that the boxes hide in its middle.'],
  compute: skyBlockedBy,
  notApplicable: q => (q.skyFromDeg < 90 && q.lowestDeg <= q.highestDeg ? null : 'there is no sky left'),
  checks: [
    { origin: 'by hand', place: 'half of the horizon up to the zenith: half of the sky', input: { widthDeg: 180, lowestDeg: 5, highestDeg: 90, skyFromDeg: 5 }, expected: { blockedPercent: 50 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'all round up to 30° of a sky from the horizon: sin 30° is 1/2', input: { widthDeg: 360, lowestDeg: 0, highestDeg: 30, skyFromDeg: 0 }, expected: { blockedPercent: 50 }, tolerance: 1e-9 },
    {
      origin: 'by hand', place: '90° wide up to 30°: 1/4 · (0.5 − 0.08716)/(1 − 0.08716)', input: { widthDeg: 90, lowestDeg: 5, highestDeg: 30, skyFromDeg: 5 },
      expected: { blockedPercent: 11.306 }, tolerance: 1e-3,
    },
  ],
}
