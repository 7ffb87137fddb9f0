import type { Method } from '../method.js'

export type ConnectedLoadInput = Readonly<{ connectedPowerVa: number; nominalVoltageV: number }>
export type ConnectedLoadOutput = Readonly<{ connectedCurrentA: number }>

/**
 * Current that an a.c. source gives to loads that run at the same time.
 *
 * Formula   I = ΣS / U_n
 * Units     ΣS sum of the loads, each its current times the voltage of its own system [VA], U_n of the source [V]; I [A]
 * Source    circuit-theory
 * Assumes   currents add as if they were in phase; a transformer on the way loses nothing; at 120/240 V all on one of the two lives
 */
export function connectedLoad(q: ConnectedLoadInput): ConnectedLoadOutput {
  return { connectedCurrentA: q.connectedPowerVa / q.nominalVoltageV }
}

export const connectedLoadMethod: Method<ConnectedLoadInput, ConnectedLoadOutput> = {
  id: 'ac-connected-load',
  title: 'Loads on an a.c. source',
  formula: String.raw`I = \frac{\Sigma S}{U_n}`,
  symbols: { connectedPowerVa: String.raw`\Sigma S`, nominalVoltageV: 'U_n', connectedCurrentA: 'I' },
  citations: [{ source: 'circuit-theory', place: 'S = U · I; currents add at a node' }],
  assumes: [
    'Currents add as if they were in phase, which makes the sum larger than it is.',
    'A transformer on the way loses nothing.',
    'Of a 120/240 V supply all loads count as if they were on one of its two live conductors.',
  ],
  compute: connectedLoad,
  notApplicable: q => (q.nominalVoltageV > 0 ? null : 'the nominal voltage is not above zero'),
  checks: [
    {
      origin: 'by hand', place: 'kettle 2000 VA, water heater 1200 VA, charger 1104 VA at 230 V: 4304 / 230',
      input: { connectedPowerVa: 4304, nominalVoltageV: 230 }, expected: { connectedCurrentA: 18.713 }, tolerance: 5e-4,
    },
    {
      origin: 'by hand', place: 'a load of 3600 VA behind a transformer fills an inlet of 120 V, 30 A',
      input: { connectedPowerVa: 3600, nominalVoltageV: 120 }, expected: { connectedCurrentA: 30 }, tolerance: 1e-9,
    },
  ],
}
