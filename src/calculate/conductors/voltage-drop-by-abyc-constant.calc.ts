import type { Citation } from '../../references/bibliography.js'
import type { Method } from '../method.js'

export type AbycDropInput = Readonly<{ currentA: number; conductorLengthFt: number; conductorAreaCmil: number }>
export type AbycDropOutput = Readonly<{ voltageDropV: number }>

/** Ω·cmil/ft; copper at 29.3 °C. */
export const abycConstant = 10.75
export const abycConstantCitation: Citation = { source: 'abyc-e11', place: 'voltage drop, constant K = 10.75' }

/**
 * Voltage drop by the constant of the American standard.
 *
 * Formula   E = K · I · L / CM, with K = 10.75
 * Units     I [A], L conductor length out and back [ft], CM area [cmil]; E [V]
 * Source    abyc-e11
 * Assumes   the constant, which is 3.7 % above the resistivity of copper at 20 °C
 */
export function voltageDropByAbycConstant(q: AbycDropInput): AbycDropOutput {
  return { voltageDropV: (abycConstant * q.currentA * q.conductorLengthFt) / q.conductorAreaCmil }
}

export const voltageDropByAbycConstantMethod: Method<AbycDropInput, AbycDropOutput> = {
  id: 'voltage-drop-by-abyc-constant',
  title: 'Voltage drop by the constant of ABYC E-11',
  formula: String.raw`E = \frac{10.75\,I\,L}{CM}`,
  symbols: { currentA: 'I', conductorLengthFt: 'L', conductorAreaCmil: 'CM', voltageDropV: 'E' },
  citations: [abycConstantCitation],
  assumes: [
    'L is the length of conductor out and back.',
    'CM is the area by the gauge’s formula; 1 mm² is 1973.5 cmil.',
    'The constant corresponds to copper at 29 °C.',
    'Terminals, fuses and switches are left out.',
  ],
  compute: voltageDropByAbycConstant,
  notApplicable: q => (q.conductorAreaCmil > 0 ? null : 'the area is not above zero'),
  checks: [
    {
      origin: 'by hand', place: '12 AWG taken as 6530 cmil, 10 A, 40 ft out and back: 10.75 · 10 · 40 / 6530 = 4300 / 6530',
      input: { currentA: 10, conductorLengthFt: 40, conductorAreaCmil: 6530 }, expected: { voltageDropV: 0.6585 }, tolerance: 5e-5,
    },
    {
      origin: 'published', place: 'distributor’s guide: 10 A over 11 ft and 10 ft with 6270.8 cmil loses the 0.36 V that are 3 % of 12 V',
      input: { currentA: 10, conductorLengthFt: 21, conductorAreaCmil: 6270.8 }, expected: { voltageDropV: 0.36 }, tolerance: 5e-6,
    },
  ],
}
