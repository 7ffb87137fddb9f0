import type { Method } from '../method.js'

export type RotatingPowerInput = Readonly<{ radiatedPowerW: number; horizontalBeamDeg: number }>
export type RotatingPowerOutput = Readonly<{ averagePowerW: number }>

/**
 * What a turning beam comes to on average at one place.
 *
 * Formula   P_m = P_EIRP · α / 360
 * Units     P_EIRP radiated while the beam points there [W], α width of the beam [°]; P_m [W]
 * Source    radio-theory
 * Assumes   nothing is radiated outside the beam
 */
export function rotatingPower(q: RotatingPowerInput): RotatingPowerOutput {
  return { averagePowerW: (q.radiatedPowerW * q.horizontalBeamDeg) / 360 }
}

export const rotatingPowerMethod: Method<RotatingPowerInput, RotatingPowerOutput> = {
  id: 'rotating-power',
  title: 'Radiated power of a turning radar on average at one place',
  formula: String.raw`P_m = P_{EIRP}\,\frac{\alpha}{360}`,
  symbols: { radiatedPowerW: 'P_{EIRP}', horizontalBeamDeg: String.raw`\alpha`, averagePowerW: 'P_m' },
  citations: [{ source: 'radio-theory', place: 'mean over a turn' }],
  assumes: ['Nothing is radiated outside the beam; side lobes are left out.'],
  compute: rotatingPower,
  notApplicable: q => (q.horizontalBeamDeg <= 360 ? null : 'the beam is wider than a turn'),
  checks: [
    { origin: 'by hand', place: '336.8 W · 4/360', input: { radiatedPowerW: 336.8, horizontalBeamDeg: 4 }, expected: { averagePowerW: 3.742 }, tolerance: 5e-4 },
    { origin: 'by hand', place: '16 250 W · 1.8/360', input: { radiatedPowerW: 16_250, horizontalBeamDeg: 1.8 }, expected: { averagePowerW: 81.25 }, tolerance: 1e-9 },
  ],
}
