import type { Method } from '../method.js'

export type DesignCurrentInput = Readonly<{ connectedCurrentA: number; demandFactor: number; largestCurrentA: number }>
export type DesignCurrentOutput = Readonly<{ designCurrentA: number }>

/**
 * Design current of a circuit from what is connected to it.
 *
 * Formula   I_B = max(g · I_c, I_1),   I_c = Σ I_k,   g = Σ g_k · I_k / Σ I_k,   I_1 = max I_k with g_k > 0
 * Units     I_k current of a load, or design current of a circuit fed onwards [A]; g_k its demand factor, 1 for a load; I_B [A]
 * Source    circuit-theory (currents into a point equal those out of it); that the largest single current counts whole is
 *           common-practice
 * Assumes   all loads at their recorded currents at once; only normally closed circuits count
 */
export function designCurrent(q: DesignCurrentInput): DesignCurrentOutput {
  return { designCurrentA: Math.max(q.demandFactor * q.connectedCurrentA, q.largestCurrentA) }
}

export const designCurrentMethod: Method<DesignCurrentInput, DesignCurrentOutput> = {
  id: 'design-current',
  title: 'Design current of a circuit',
  formula: String.raw`I_B = \max(g\,I_c,\; I_1) \qquad I_c = \sum_k I_k \qquad g = \sum_k g_k I_k \big/ I_c \qquad I_1 = \max_{g_k > 0} I_k`,
  symbols: { connectedCurrentA: 'I_c', demandFactor: 'g', largestCurrentA: 'I_1', designCurrentA: 'I_B' },
  citations: [
    { source: 'circuit-theory', place: "Kirchhoff's current law" },
    { source: 'common-practice', place: 'a feeder carries at least the largest current that one of its circuits can draw' },
  ],
  assumes: [
    'A load counts with its maximum current, else its typical current, else its power over the nominal voltage.',
    'All loads of a circuit draw at once; a circuit fed onwards counts with its demand factor, and only if it is normally closed.',
    'The largest single current counts whole, however small its demand factor; with the factor 0 it does not count.',
    'What charging sources put in is reckoned by itself: it flows the other way.',
  ],
  compute: designCurrent,
  notApplicable: q => (q.connectedCurrentA >= 0 && q.largestCurrentA >= 0 && q.demandFactor >= 0 && q.demandFactor <= 1 ? null : 'a current is below zero or a demand factor outside 0 to 1'),
  checks: [
    {
      origin: 'by hand', place: 'loads of 3.5 A, 1.5 A and 5 A: 3.5 + 1.5 + 5',
      input: { connectedCurrentA: 10, demandFactor: 1, largestCurrentA: 5 }, expected: { designCurrentA: 10 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'circuits of 10 A with factor 1 and 15 A with factor 0.4: 10 + 6, g = 16/25, more than the largest',
      input: { connectedCurrentA: 25, demandFactor: 0.64, largestCurrentA: 15 }, expected: { designCurrentA: 16 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'a windlass of 60 A with factor 0.1 alone: 6 A together, but 60 A while it pulls',
      input: { connectedCurrentA: 60, demandFactor: 0.1, largestCurrentA: 60 }, expected: { designCurrentA: 60 }, tolerance: 1e-9,
    },
  ],
}
