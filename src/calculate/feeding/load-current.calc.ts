import type { Method } from '../method.js'

export type LoadCurrentInput = Readonly<{ powerW: number; nominalVoltageV: number }>
export type LoadCurrentOutput = Readonly<{ loadCurrentA: number }>

/**
 * Current of a load of which only the power is recorded.
 *
 * Formula   I = P / U_n
 * Units     P [W], U_n [V]; I [A]
 * Source    circuit-theory
 * Assumes   the power holds at the nominal voltage; a load that keeps its power draws more when the voltage sags
 */
export function loadCurrent(q: LoadCurrentInput): LoadCurrentOutput {
  return { loadCurrentA: q.powerW / q.nominalVoltageV }
}

export const loadCurrentMethod: Method<LoadCurrentInput, LoadCurrentOutput> = {
  id: 'load-current',
  title: 'Current of a load from its power',
  formula: 'I = P/U_n',
  symbols: { powerW: 'P', nominalVoltageV: 'U_n', loadCurrentA: 'I' },
  citations: [{ source: 'circuit-theory', place: 'P = U · I' }],
  assumes: ['The power holds at the nominal voltage; a load that keeps its power draws more when the voltage sags.'],
  compute: loadCurrent,
  notApplicable: q => (q.nominalVoltageV > 0 ? null : 'the nominal voltage is not above zero'),
  checks: [
    { origin: 'by hand', place: '60 W at 12 V: 60 / 12', input: { powerW: 60, nominalVoltageV: 12 }, expected: { loadCurrentA: 5 }, tolerance: 1e-9 },
    { origin: 'by hand', place: '60 W at 24 V: 60 / 24', input: { powerW: 60, nominalVoltageV: 24 }, expected: { loadCurrentA: 2.5 }, tolerance: 1e-9 },
  ],
}
