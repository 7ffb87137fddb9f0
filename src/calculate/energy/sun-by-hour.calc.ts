import type { Method } from '../method.js'
import { solarConstantKWhPerM2, sunOn } from './sun.js'

export type SunByHourInput = Readonly<{ latitudeDeg: number; dayNumber: number; fromH: number; toH: number }>
export type SunByHourOutput = Readonly<{ extraterrestrialKWhPerM2: number }>

/**
 * What the sun would give on level ground between two hours of a day if there were no air.
 *
 * Formula   R = 12 · G / π · d_r · ((ω_2 − ω_1) · sin φ · sin δ + cos φ · cos δ · (sin ω_2 − sin ω_1)),   ω = π / 12 · (t − 12)
 * Units     t_1, t_2 solar time [h], kept between sunrise and sunset; the rest as for the day
 * Source    fao-56, equations 28 to 33
 */
export function sunByHour(q: SunByHourInput): SunByHourOutput {
  const { sunset, distance, upright, level } = sunOn(q.latitudeDeg, q.dayNumber)
  const [from, to] = [q.fromH, q.toH].map(hour => Math.max(-sunset, Math.min(sunset, (Math.PI / 12) * (hour - 12)))) as [number, number]
  return { extraterrestrialKWhPerM2: (12 / Math.PI) * solarConstantKWhPerM2 * distance * ((to - from) * upright + level * (Math.sin(to) - Math.sin(from))) }
}

export const sunByHourMethod: Method<SunByHourInput, SunByHourOutput> = {
  id: 'sun-by-hour',
  title: 'Sun in an hour, without the air',
  formula: String.raw`\begin{gathered} R = \tfrac{12}{\pi}G\left(1 + 0.033\cos\tfrac{2\pi J}{365}\right)\bigl((\omega_2 - \omega_1)\sin\phi\sin\delta + \cos\phi\cos\delta\,(\sin\omega_2 - \sin\omega_1)\bigr) \\ \omega_1 = \tfrac{\pi}{12}(t_1 - 12) \qquad \omega_2 = \tfrac{\pi}{12}(t_2 - 12) \end{gathered}`,
  symbols: { latitudeDeg: String.raw`\phi`, dayNumber: 'J', fromH: 't_1', toH: 't_2', extraterrestrialKWhPerM2: 'R' },
  citations: [{ source: 'fao-56', place: 'equations 28 to 33' }],
  assumes: ['Ship’s time is taken as solar time, with the sun highest at 12.', 'Before sunrise and after sunset nothing comes.'],
  compute: sunByHour,
  notApplicable: q => (Math.abs(q.latitudeDeg) <= 90 && q.toH >= q.fromH ? null : 'the latitude or the hours are out of range'),
  checks: [
    {
      origin: 'published', place: 'example 19 (from memory), 1 October at 16°13′ north, 14 to 15 h by the clock, 0.1056 h later by the sun: 3.543 MJ/m², divided by 3.6',
      input: { latitudeDeg: 16.2167, dayNumber: 274, fromH: 14.1056, toH: 15.1056 }, expected: { extraterrestrialKWhPerM2: 0.9842 }, tolerance: 0.0005,
    },
    { origin: 'by hand', place: 'at night: nothing', input: { latitudeDeg: 16.2167, dayNumber: 274, fromH: 1, toH: 2 }, expected: { extraterrestrialKWhPerM2: 0 }, tolerance: 1e-12 },
  ],
}
