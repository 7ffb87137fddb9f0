import { lenCitation } from '../../references/tables/can-rules.js'
import type { Method } from '../method.js'

export type LenByVoltageInput = Readonly<{ marginV: number; resistanceOhm: number }>
export type LenLeftOutput = Readonly<{ lenLeftNumber: number }>

/** A sum that comes to a whole number must not lose a unit to its last binary digit. */
const wholeUnits = (units: number): number => Math.max(0, Math.floor(Number(units.toPrecision(12))))

/**
 * Largest load equivalency number that one more device may have so that a voltage stays within its limit.
 *
 * Formula   N = ⌊ΔU / (0.05 R)⌋
 * Units     ΔU voltage left [V], R out and back of what both share [Ω]: along the backbone for a drop there, from the source on for a voltage that arrives; N
 * Source    circuit-theory; bus-cable-guides for the unit
 */
export function lenByVoltage({ marginV, resistanceOhm }: LenByVoltageInput): LenLeftOutput {
  return { lenLeftNumber: wholeUnits(marginV / (0.05 * resistanceOhm)) }
}

export const lenByVoltageMethod: Method<LenByVoltageInput, LenLeftOutput> = {
  id: 'len-left-by-voltage',
  title: 'Room for one more device by voltage',
  formula: String.raw`N = \left\lfloor \frac{\Delta U}{0.05\,R} \right\rfloor`,
  symbols: { marginV: String.raw`\Delta U`, resistanceOhm: 'R', lenLeftNumber: 'N' },
  citations: [{ source: 'circuit-theory', place: 'Ohm’s law' }, lenCitation],
  assumes: ['The voltage at the source stays as it is.', 'A limit on the drop of the backbone counts from the power insertion; one on what arrives at a device from the source, with the circuit between.', 'Below zero there is no room.'],
  compute: lenByVoltage,
  notApplicable: q => (q.resistanceOhm > 0 ? null : 'nothing is shared on the way'),
  checks: [
    { origin: 'by hand', place: '1.5 V left, 13.16 m of light cable, 1.50024 Ω out and back: 1.5 / 0.075012 = 19.997', input: { marginV: 1.5, resistanceOhm: 1.50024 }, expected: { lenLeftNumber: 19 }, tolerance: 0 },
    { origin: 'by hand', place: '0.3 V left over 1 Ω: 0.3 / 0.05', input: { marginV: 0.3, resistanceOhm: 1 }, expected: { lenLeftNumber: 6 }, tolerance: 0 },
    { origin: 'by hand', place: 'already 0.1 V over: none', input: { marginV: -0.1, resistanceOhm: 1 }, expected: { lenLeftNumber: 0 }, tolerance: 0 },
  ],
}

export type LenByCurrentInput = Readonly<{ marginA: number }>

/**
 * Largest load equivalency number that one more device may have so that a current stays within its limit.
 *
 * Formula   N = ⌊ΔI / 0.05⌋
 * Units     ΔI current left [A]; N
 * Source    bus-cable-guides
 */
export function lenByCurrent({ marginA }: LenByCurrentInput): LenLeftOutput {
  return { lenLeftNumber: wholeUnits(marginA / 0.05) }
}

export const lenByCurrentMethod: Method<LenByCurrentInput, LenLeftOutput> = {
  id: 'len-left-by-current',
  title: 'Room for one more device by current',
  formula: String.raw`N = \left\lfloor \frac{\Delta I}{0.05} \right\rfloor`,
  symbols: { marginA: String.raw`\Delta I`, lenLeftNumber: 'N' },
  citations: [lenCitation],
  assumes: ['Below zero there is no room.'],
  compute: lenByCurrent,
  notApplicable: () => null,
  checks: [
    { origin: 'by hand', place: '3 A less 53 LEN of 0.05 A leave 0.35 A: 0.35 / 0.05', input: { marginA: 3 - 53 * 0.05 }, expected: { lenLeftNumber: 7 }, tolerance: 0 },
    { origin: 'by hand', place: '0.12 A left: two units and a bit', input: { marginA: 0.12 }, expected: { lenLeftNumber: 2 }, tolerance: 0 },
  ],
}
