import type { Method } from '../method.js'

export type BatteryVentilationInput = Readonly<{ cellsCount: number; gasCurrentA: number }>
export type BatteryVentilationOutput = Readonly<{ airM3PerH: number; openingCm2: number }>

/**
 * Air that carries off the hydrogen of a lead-acid bank, and the openings through which it comes and goes by itself.
 *
 * Formula   Q = 0.05 · n · I_g,   A = 28 · Q
 * Units     n cells in series, I_g current that produces gas, its value per ampere-hour times the capacity [A]; Q [m³/h], A [cm²] at the inlet and at the outlet
 * Source    iec-62485-2
 * Assumes   air that moves by itself; openings far apart, the outlet high
 */
export function batteryVentilation(q: BatteryVentilationInput): BatteryVentilationOutput {
  const airM3PerH = 0.05 * q.cellsCount * q.gasCurrentA
  return { airM3PerH, openingCm2: 28 * airM3PerH }
}

export const batteryVentilationMethod: Method<BatteryVentilationInput, BatteryVentilationOutput> = {
  id: 'battery-ventilation',
  title: 'Ventilation of a battery space',
  formula: String.raw`Q = 0.05\,n\,I_g \qquad A = 28\,Q`,
  symbols: { cellsCount: 'n', gasCurrentA: 'I_g', airM3PerH: 'Q', openingCm2: 'A' },
  citations: [{ source: 'iec-62485-2', place: 'ventilation requirements' }],
  assumes: ['The air moves by itself; inlet low, outlet high, both with at least that opening and far apart.', 'A land rule, used as advice; it gives the least, for a charger that works as it should.'],
  compute: batteryVentilation,
  notApplicable: q => (q.cellsCount > 0 && q.gasCurrentA >= 0 ? null : 'the number of cells is not above zero'),
  checks: [
    { origin: 'by hand', place: '6 vented cells of 200 Ah, boost charge at 20 mA/Ah, so 4 A: 0.05 · 6 · 4 and 28 times that', input: { cellsCount: 6, gasCurrentA: 4 }, expected: { airM3PerH: 1.2, openingCm2: 33.6 }, tolerance: 1e-9 },
    { origin: 'by hand', place: 'the same valve-regulated at 8 mA/Ah, so 1.6 A', input: { cellsCount: 6, gasCurrentA: 1.6 }, expected: { airM3PerH: 0.48, openingCm2: 13.4 }, tolerance: 0.05 },
  ],
}
