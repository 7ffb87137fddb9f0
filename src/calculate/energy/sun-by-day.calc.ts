import type { Method } from '../method.js'
import { solarConstantKWhPerM2, sunOn } from './sun.js'

export type SunByDayInput = Readonly<{ latitudeDeg: number; dayNumber: number }>
export type SunByDayOutput = Readonly<{ declinationDeg: number; sunsetAngleDeg: number; daylightH: number; extraterrestrialKWhPerM2: number }>

/**
 * What the sun would give on level ground in a day if there were no air, and the hours of daylight.
 *
 * Formula   δ = 0.409 · sin(2π · J / 365 − 1.39),   ω_s = arccos(−tan φ · tan δ),   N = 24 · ω_s / π,
 *           R = 24 · G / π · (1 + 0.033 · cos(2π · J / 365)) · (ω_s · sin φ · sin δ + cos φ · cos δ · sin ω_s)
 * Units     φ latitude, north positive [°], J day of the year; δ declination [°], ω_s angle of sunset [°], N [h], R [kWh/m²];
 *           G = 0.0820 MJ/m² a minute, which is 1.3667 kWh/m² an hour
 * Source    fao-56, equations 21 to 25 and 34
 */
export function sunByDay(q: SunByDayInput): SunByDayOutput {
  const { declination, sunset, distance, upright, level } = sunOn(q.latitudeDeg, q.dayNumber)
  return {
    declinationDeg: (declination * 180) / Math.PI,
    sunsetAngleDeg: (sunset * 180) / Math.PI,
    daylightH: (24 * sunset) / Math.PI,
    extraterrestrialKWhPerM2: (24 / Math.PI) * solarConstantKWhPerM2 * distance * (sunset * upright + level * Math.sin(sunset)),
  }
}

export const sunByDayMethod: Method<SunByDayInput, SunByDayOutput> = {
  id: 'sun-by-day',
  title: 'Sun on a day, without the air',
  formula: String.raw`\begin{gathered} \delta = 0.409\sin\!\left(\tfrac{2\pi J}{365} - 1.39\right) \quad \omega_s = \arccos(-\tan\phi\tan\delta) \quad N = \tfrac{24}{\pi}\omega_s \\ R = \tfrac{24}{\pi}G\left(1 + 0.033\cos\tfrac{2\pi J}{365}\right)(\omega_s\sin\phi\sin\delta + \cos\phi\cos\delta\sin\omega_s) \end{gathered}`,
  symbols: { latitudeDeg: String.raw`\phi`, dayNumber: 'J', declinationDeg: String.raw`\delta`, sunsetAngleDeg: String.raw`\omega_s`, daylightH: 'N', extraterrestrialKWhPerM2: 'R' },
  citations: [{ source: 'fao-56', place: 'equations 21 to 25 and 34' }],
  assumes: ['G is 0.0820 MJ/m² a minute, which is 1.3667 kWh/m² an hour.', 'In the formula angles are in radians; they are printed in degrees.'],
  compute: sunByDay,
  notApplicable: q => (Math.abs(q.latitudeDeg) <= 90 && q.dayNumber >= 1 && q.dayNumber <= 366 ? null : 'the latitude or the day is out of range'),
  checks: [
    {
      origin: 'published', place: 'example 8 (from memory), 3 September at 20° south: δ 0.120 rad, ω_s 1.527 rad; in degrees', input: { latitudeDeg: -20, dayNumber: 246 },
      expected: { declinationDeg: 6.88, sunsetAngleDeg: 87.49 }, tolerance: 0.035,
    },
    {
      origin: 'published', place: 'example 8 (from memory): 32.2 MJ/m², divided by 3.6', input: { latitudeDeg: -20, dayNumber: 246 },
      expected: { extraterrestrialKWhPerM2: 8.944 }, tolerance: 0.014,
    },
    { origin: 'published', place: 'example 9 (from memory): 11.7 h of daylight', input: { latitudeDeg: -20, dayNumber: 246 }, expected: { daylightH: 11.7 }, tolerance: 0.05 },
    {
      origin: 'published', place: 'example 10 (from memory), 15 May at 22°54′ south: 25.1 MJ/m², divided by 3.6', input: { latitudeDeg: -22.9, dayNumber: 135 },
      expected: { extraterrestrialKWhPerM2: 6.972 }, tolerance: 0.014,
    },
    { origin: 'published', place: 'example 10 (from memory): 10.9 h of daylight', input: { latitudeDeg: -22.9, dayNumber: 135 }, expected: { daylightH: 10.9 }, tolerance: 0.05 },
  ],
}
