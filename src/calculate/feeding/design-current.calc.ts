import type { Method } from '../method.js'

export type DesignCurrentInput = Readonly<{ connectedCurrentA: number; demandFactor: number }>
export type DesignCurrentOutput = Readonly<{ designCurrentA: number }>

/**
 * Design current of a circuit from what is connected to it.
 *
 * Formula   I_B = g · I_c,   I_c = Σ I_k,   g = Σ g_k · I_k / Σ I_k
 * Units     I_k current of a load, or design current of a circuit fed onwards [A]; g_k its demand factor, 1 for a load; I_B [A]
 * Source    circuit-theory (currents into a point equal those out of it)
 * Assumes   all loads at their recorded currents at once; only normally closed circuits count
 */
export function designCurrent(q: DesignCurrentInput): DesignCurrentOutput {
  return { designCurrentA: q.demandFactor * q.connectedCurrentA }
}

export const designCurrentMethod: Method<DesignCurrentInput, DesignCurrentOutput> = {
  id: 'design-current',
  title: 'Design current of a circuit',
  formula: String.raw`I_B = g\,I_c \qquad I_c = \sum_k I_k \qquad g = \sum_k g_k I_k \big/ I_c`,
  symbols: { connectedCurrentA: 'I_c', demandFactor: 'g', designCurrentA: 'I_B' },
  citations: [{ source: 'circuit-theory', place: "Kirchhoff's current law" }],
  assumes: [
    'A load counts with its maximum current, else its typical current, else its power over the nominal voltage.',
    'All loads of a circuit draw at once; a circuit fed onwards counts with its demand factor, and only if it is normally closed.',
  ],
  compute: designCurrent,
  notApplicable: q => (q.connectedCurrentA >= 0 && q.demandFactor >= 0 && q.demandFactor <= 1 ? null : 'a current is below zero or a demand factor outside 0 to 1'),
  checks: [
    {
      origin: 'by hand', place: 'loads of 3.5 A, 1.5 A and 5 A: 3.5 + 1.5 + 5',
      input: { connectedCurrentA: 10, demandFactor: 1 }, expected: { designCurrentA: 10 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'circuits of 10 A with factor 1 and 20 A with factor 0.4: 10 + 8, g = 18/30',
      input: { connectedCurrentA: 30, demandFactor: 0.6 }, expected: { designCurrentA: 18 }, tolerance: 1e-9,
    },
  ],
}
