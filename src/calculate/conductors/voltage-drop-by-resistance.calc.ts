import { class5Citation } from '../../references/tables/iec-60228-class-5.js'
import { copperCitation } from '../../references/tables/iec-60028-copper.js'
import { awgCitation } from '../../references/tables/astm-b258-awg.js'
import type { Method } from '../method.js'
import { conductorResistance, conductorResistanceMethod } from './conductor-resistance.calc.js'

export type ResistanceDropInput = Readonly<{
  currentA: number
  conductorLengthM: number
  resistanceAt20COhmPerKm: number
  conductorTemperatureC: number
}>
export type ResistanceDropOutput = Readonly<{ voltageDropV: number }>

/**
 * Voltage drop by the conductor's resistance at its temperature: what a meter would show.
 *
 * Formula   ΔU = I · L · R′₂₀ · (1 + 0.00393 · (θ − 20)) / 1000
 * Units     I [A], L conductor length out and back [m], R′₂₀ [Ω/km], θ [°C]; ΔU [V]
 * Source    circuit-theory; iec-60228 or astm-b258 for R′₂₀, iec-60028 for the temperature
 * Assumes   both conductors alike; terminals, fuses and switches left out
 */
export function voltageDropByResistance(q: ResistanceDropInput): ResistanceDropOutput {
  const { resistanceOhmPerKm } = conductorResistance(q)
  return { voltageDropV: (q.currentA * q.conductorLengthM * resistanceOhmPerKm) / 1000 }
}

export const voltageDropByResistanceMethod: Method<ResistanceDropInput, ResistanceDropOutput> = {
  id: 'voltage-drop-by-resistance',
  title: 'Voltage drop by the resistance of the conductor',
  formula: String.raw`\Delta U = \frac{I\,L\,R'_{20}\,\bigl(1 + 0.00393\,(\theta - 20)\bigr)}{1000}`,
  symbols: {
    currentA: 'I', conductorLengthM: 'L', resistanceAt20COhmPerKm: "R'_{20}", conductorTemperatureC: String.raw`\theta`,
    voltageDropV: String.raw`\Delta U`,
  },
  citations: [{ source: 'circuit-theory', place: 'Ohm’s law' }, class5Citation, awgCitation, copperCitation],
  assumes: [
    'L is the length of conductor out and back.',
    'Metric conductors have the highest resistance that class 5 allows; where tinning is not recorded they count as tinned.',
    'Gauge conductors have the resistance of their ideal area; stranding adds about 2 %.',
    'Terminals, fuses and switches are left out.',
  ],
  compute: voltageDropByResistance,
  notApplicable: conductorResistanceMethod.notApplicable,
  checks: [
    {
      origin: 'by hand', place: '1.6 A, 22 m out and back, 1.5 mm² of ideal copper at 20 °C, 1000 / (58 · 1.5) = 11.4943 Ω/km: 35.2 · 11.4943 / 1000',
      input: { currentA: 1.6, conductorLengthM: 22, resistanceAt20COhmPerKm: 11.4943, conductorTemperatureC: 20 },
      expected: { voltageDropV: 0.4046 }, tolerance: 5e-5,
    },
    {
      origin: 'by hand', place: 'the same of class 5 tinned, 13.7 Ω/km (IEC 60228): 35.2 · 13.7 / 1000',
      input: { currentA: 1.6, conductorLengthM: 22, resistanceAt20COhmPerKm: 13.7, conductorTemperatureC: 20 },
      expected: { voltageDropV: 0.48224 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '20 A, 10 m each way, 10 mm² class 5 plain, 1.91 Ω/km (IEC 60228): 400 · 1.91 / 1000',
      input: { currentA: 20, conductorLengthM: 20, resistanceAt20COhmPerKm: 1.91, conductorTemperatureC: 20 },
      expected: { voltageDropV: 0.764 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: '1 A through 1 km of 16 AWG at 50 °C: 13.174 · 1.1179',
      input: { currentA: 1, conductorLengthM: 1000, resistanceAt20COhmPerKm: 13.174, conductorTemperatureC: 50 },
      expected: { voltageDropV: 14.727 }, tolerance: 0.001,
    },
  ],
}
