import type { Method } from '../method.js'

export type ExpectedDropInput = Readonly<{
  branchDropV: number
  designCurrentA: number
  feederDropV: number
  feederResistanceMilliOhm: number
  currentA: number
}>
export type ExpectedDropOutput = Readonly<{ leastDropV: number; mostDropV: number; lowestAcceptedV: number; highestAcceptedV: number }>

/** Shares of the calculated drop, and the least that a comparison of two readings can tell apart. */
const shareBelow = 0.35
export const shareAbove = 0.25
export const leastToleranceV = 0.1

/**
 * Voltage drop that a meter should show at the current that flows while it is read.
 *
 * Formula   ΔU₁ = ΔU_b · I / I_B + R_f · I / 1000,   ΔU₂ = ΔU_b · I / I_B + max(ΔU_f, R_f · I / 1000)
 *           accepted from ΔU₁ − max(0.35 · ΔU₁, 0.1 V), not below 0, to ΔU₂ + max(0.25 · ΔU₂, 0.1 V)
 * Units     ΔU_b drop in the circuit's own cables at its design current, ΔU_f in the feeders above at theirs [V]; I_B, I [A];
 *           R_f resistance of the feeders, out and back [mΩ]; results [V]
 * Source    circuit-theory for the proportion; the tolerance is common-practice
 * Assumes   see the record. The tolerance is wider below than above: class 5 resistances are the highest that the standard
 *           lets a maker deliver (real ones are some 5 to 10 % less), and a cable under test for a few minutes has not warmed up
 *           as the calculation has it (20 °C in place of 50 °C is 11 % less, of 105 °C 25 % less). Above, what the
 *           calculation leaves out counts: fuse, switch and terminals, some 5 to 10 %; the current, read with a clamp to
 *           3 % or so, and a length that is longer than recorded. Two readings of 13 V, each good to 0.5 %, can differ by 0.1 V.
 */
export function expectedDrop(q: ExpectedDropInput): ExpectedDropOutput {
  const inBranchV = (q.branchDropV * q.currentA) / q.designCurrentA
  const inFeedersAloneV = (q.feederResistanceMilliOhm * q.currentA) / 1000
  const leastDropV = inBranchV + inFeedersAloneV
  const mostDropV = inBranchV + Math.max(q.feederDropV, inFeedersAloneV)
  return {
    leastDropV,
    mostDropV,
    lowestAcceptedV: Math.max(0, leastDropV - Math.max(shareBelow * leastDropV, leastToleranceV)),
    highestAcceptedV: mostDropV + Math.max(shareAbove * mostDropV, leastToleranceV),
  }
}

export const toleranceCitation = { source: 'common-practice', place: 'voltage drop as measured: 25 % above to 35 % below what is calculated, or 0.1 V' } as const

export const expectedDropMethod: Method<ExpectedDropInput, ExpectedDropOutput> = {
  id: 'expected-drop',
  title: 'Voltage drop to be expected at the measured current',
  formula: String.raw`\begin{gathered} \Delta U_1 = \Delta U_b \frac{I}{I_B} + \frac{R_f I}{1000} \qquad \Delta U_2 = \Delta U_b \frac{I}{I_B} + \max\!\left(\Delta U_f, \frac{R_f I}{1000}\right) \\ \Delta U_- = \max\bigl(0,\, \Delta U_1 - \max(0.35\,\Delta U_1,\, 0.1)\bigr) \qquad \Delta U_+ = \Delta U_2 + \max(0.25\,\Delta U_2,\, 0.1) \end{gathered}`,
  symbols: {
    branchDropV: String.raw`\Delta U_b`, designCurrentA: 'I_B', feederDropV: String.raw`\Delta U_f`, feederResistanceMilliOhm: 'R_f', currentA: 'I',
    leastDropV: String.raw`\Delta U_1`, mostDropV: String.raw`\Delta U_2`, lowestAcceptedV: String.raw`\Delta U_-`, highestAcceptedV: String.raw`\Delta U_+`,
  },
  citations: [{ source: 'circuit-theory', place: 'Ohm’s law' }, toleranceCitation],
  assumes: [
    'The calculated drop is that by the resistance of the warm conductor, whose sum is on the page of the circuit; the current divides among the loads of a circuit as it was designed to.',
    'Feeders carry at least the measured current, at most their design current: what else was switched on is not known.',
    'The tolerance covers a cable that has not warmed up, resistances below the highest that the standard allows, contacts and fuses, and errors of the meter.',
  ],
  compute: expectedDrop,
  notApplicable: q =>
    !(q.designCurrentA > 0) ? 'the design current is not above zero'
    : !(q.currentA > 0) ? 'no current flowed while the drop was measured'
    : null,
  checks: [
    {
      origin: 'by hand', place: 'straight from the battery: 0.764 V at 20 A (10 m each way, 10 mm², 1.91 Ω/km by IEC 60228) is 0.382 V at 10 A; 35 % of it, 0.1337 V, is more than 0.1 V, 25 %, 0.0955 V, is less: 0.382 − 0.1337, 0.382 + 0.1',
      input: { branchDropV: 0.764, designCurrentA: 20, feederDropV: 0, feederResistanceMilliOhm: 0, currentA: 10 },
      expected: { leastDropV: 0.382, mostDropV: 0.382, lowestAcceptedV: 0.2483, highestAcceptedV: 0.482 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'behind a feeder of 8 mΩ that loses 0.32 V at its 40 A: alone 0.2 + 8 · 5 / 1000 = 0.24 V, with all on 0.2 + 0.32 = 0.52 V; 0.24 − 0.1 = 0.14, 0.52 + 0.13 = 0.65',
      input: { branchDropV: 0.4, designCurrentA: 10, feederDropV: 0.32, feederResistanceMilliOhm: 8, currentA: 5 },
      expected: { leastDropV: 0.24, mostDropV: 0.52, lowestAcceptedV: 0.14, highestAcceptedV: 0.65 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'a drop below 0.1 V may be read as none: 0.05 · 1 / 2 = 0.025; 0 and 0.125',
      input: { branchDropV: 0.05, designCurrentA: 2, feederDropV: 0, feederResistanceMilliOhm: 0, currentA: 1 },
      expected: { lowestAcceptedV: 0, highestAcceptedV: 0.125 }, tolerance: 1e-9,
    },
  ],
}
