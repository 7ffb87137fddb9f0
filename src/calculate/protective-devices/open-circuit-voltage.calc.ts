import type { Method } from '../method.js'

export type OpenCircuitVoltageInput = Readonly<{ cellCount: number; cellVoltageV: number }>
export type OpenCircuitVoltageOutput = Readonly<{ openCircuitVoltageV: number }>

/**
 * Voltage of a charged battery with nothing joined to it, which drives the short-circuit current.
 *
 * Formula   U_0 = n · U_z
 * Units     U_z of one cell [V]: lead 2.1, lithium iron phosphate 3.3; U_0 [V]
 * Source    common-practice for the voltage of a cell
 * Assumes   the battery is charged and at rest
 */
export function openCircuitVoltage(q: OpenCircuitVoltageInput): OpenCircuitVoltageOutput {
  return { openCircuitVoltageV: q.cellCount * q.cellVoltageV }
}

export const openCircuitVoltageMethod: Method<OpenCircuitVoltageInput, OpenCircuitVoltageOutput> = {
  id: 'open-circuit-voltage',
  title: 'Voltage of a charged battery at rest',
  formula: String.raw`U_0 = n\,U_z`,
  symbols: { cellCount: 'n', cellVoltageV: 'U_z', openCircuitVoltageV: 'U_0' },
  citations: [{ source: 'common-practice', place: 'a charged cell at rest: lead 2.1 V, lithium iron phosphate 3.3 V' }],
  assumes: ['The battery is charged and at rest; while it is being charged the voltage is higher, and a fault then starts from that.'],
  compute: openCircuitVoltage,
  notApplicable: q => (q.cellCount >= 1 && q.cellVoltageV > 0 ? null : 'the number of cells or their voltage is not above zero'),
  checks: [
    { origin: 'by hand', place: '12 V lead battery, six cells: 6 · 2.1 = 12.6', input: { cellCount: 6, cellVoltageV: 2.1 }, expected: { openCircuitVoltageV: 12.6 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '12 V lithium iron phosphate battery, four cells: 4 · 3.3 = 13.2', input: { cellCount: 4, cellVoltageV: 3.3 }, expected: { openCircuitVoltageV: 13.2 }, tolerance: 1e-9 },
  ],
}
