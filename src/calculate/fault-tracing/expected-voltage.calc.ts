import { leastToleranceV, shareAbove, toleranceCitation } from '../commissioning/expected-drop.calc.js'
import type { Method } from '../method.js'

export type ExpectedVoltageInput = Readonly<{ sourceVoltageV: number; voltageDropV: number }>
export type ExpectedVoltageOutput = Readonly<{ expectedVoltageV: number; leastVoltageV: number }>

/**
 * Voltage that a meter should show at a point of a circuit, and the least that is still in order.
 *
 * Formula   U = U_s − ΔU,   U_min = U − max(0.25 · ΔU, 0.1 V)
 * Units     U_s voltage of the source, ΔU drop from the source to the point, U, U_min [V]
 * Source    circuit-theory for the difference; the tolerance is common-practice, that of a measured drop
 * Assumes   see the record. Fuses, switches and terminals on the way, and the meter, are what the tolerance is for.
 */
export function expectedVoltage(q: ExpectedVoltageInput): ExpectedVoltageOutput {
  const expectedVoltageV = q.sourceVoltageV - q.voltageDropV
  return { expectedVoltageV, leastVoltageV: expectedVoltageV - Math.max(shareAbove * q.voltageDropV, leastToleranceV) }
}

export const expectedVoltageMethod: Method<ExpectedVoltageInput, ExpectedVoltageOutput> = {
  id: 'expected-voltage',
  title: 'Voltage to be expected at a point of a circuit',
  formula: String.raw`U = U_s - \Delta U \qquad U_{\min} = U - \max(0.25\,\Delta U,\, 0.1)`,
  symbols: { sourceVoltageV: 'U_s', voltageDropV: String.raw`\Delta U`, expectedVoltageV: 'U', leastVoltageV: String.raw`U_{\min}` },
  citations: [{ source: 'circuit-theory', place: 'Kirchhoff’s voltage law' }, toleranceCitation],
  assumes: [
    'The source has its nominal voltage, or what it is set to; the load is switched on, and everything else on the way draws its design current. With less switched on the voltage is higher.',
    'The drop is that by the resistance of the warm conductor, out and back, whose sum is on the page of the circuit.',
  ],
  compute: expectedVoltage,
  notApplicable: q =>
    !(q.sourceVoltageV > 0) ? 'the voltage of the source is not above zero'
    : !(q.voltageDropV >= 0) ? 'the drop is below zero'
    : q.voltageDropV >= q.sourceVoltageV ? 'the drop is as large as the voltage of the source'
    : null,
  checks: [
    { origin: 'by hand', place: '12 − 0.36 = 11.64; a quarter of 0.36 is 0.09, less than 0.1: 11.64 − 0.1', input: { sourceVoltageV: 12, voltageDropV: 0.36 }, expected: { expectedVoltageV: 11.64, leastVoltageV: 11.54 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '24 − 0.8 = 23.2; a quarter of 0.8 is 0.2: 23.0', input: { sourceVoltageV: 24, voltageDropV: 0.8 }, expected: { expectedVoltageV: 23.2, leastVoltageV: 23 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'at the source itself: 12 and 12 − 0.1', input: { sourceVoltageV: 12, voltageDropV: 0 }, expected: { expectedVoltageV: 12, leastVoltageV: 11.9 }, tolerance: 1e-9 },
  ],
}
