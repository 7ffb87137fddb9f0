import type { Method } from '../method.js'

export type DropAtDesignCurrentInput = Readonly<{ measuredDropV: number; currentA: number; designCurrentA: number; nominalVoltageV: number }>
export type DropAtDesignCurrentOutput = Readonly<{ dropAtDesignCurrentV: number; measuredDropPercent: number }>

/** Below this share of the design current the errors of the meter would grow too much. */
const leastShare = 0.5

/**
 * What a measured drop comes to at the design current, for which the limit of the basis holds.
 *
 * Formula   ΔU_B = ΔU · I_B / I,   u = 100 · ΔU_B / Un
 * Units     ΔU as measured [V] at I [A]; I_B [A], Un [V]; ΔU_B [V], u [%]
 * Source    circuit-theory; percentages of the nominal voltage: abyc-e11, iso-13297; that half of the design current
 *           is enough to go by is common-practice
 * Assumes   the resistance of the way stays what it was; feeders carry their other loads in the same proportion
 */
export function dropAtDesignCurrent(q: DropAtDesignCurrentInput): DropAtDesignCurrentOutput {
  const dropAtDesignCurrentV = (q.measuredDropV * q.designCurrentA) / q.currentA
  return { dropAtDesignCurrentV, measuredDropPercent: (100 * dropAtDesignCurrentV) / q.nominalVoltageV }
}

export const dropAtDesignCurrentMethod: Method<DropAtDesignCurrentInput, DropAtDesignCurrentOutput> = {
  id: 'drop-at-design-current',
  title: 'Measured voltage drop brought to the design current',
  formula: String.raw`\Delta U_B = \Delta U \frac{I_B}{I} \qquad u = \frac{100\,\Delta U_B}{U_n}`,
  symbols: {
    measuredDropV: String.raw`\Delta U`, currentA: 'I', designCurrentA: 'I_B', nominalVoltageV: 'U_n',
    dropAtDesignCurrentV: String.raw`\Delta U_B`, measuredDropPercent: 'u',
  },
  citations: [
    { source: 'circuit-theory', place: 'Ohm’s law' }, { source: 'abyc-e11', place: 'voltage drop' }, { source: 'iso-13297', place: 'voltage drop' },
    { source: 'common-practice', place: 'measured with at least half of the design current' },
  ],
  assumes: ['The resistance of the way stays what it was, and feeders carry their other loads in the same proportion.'],
  compute: dropAtDesignCurrent,
  notApplicable: q =>
    !(q.nominalVoltageV > 0) ? 'the nominal voltage is not above zero'
    : !(q.designCurrentA > 0) ? 'the design current is not above zero'
    : !(q.currentA >= leastShare * q.designCurrentA) ? 'less than half of the design current flowed, too little to go by for the limit'
    : null,
  checks: [
    {
      origin: 'by hand', place: '0.24 V at 8 A is 0.30 V at 10 A, 2.5 % of 12 V',
      input: { measuredDropV: 0.24, currentA: 8, designCurrentA: 10, nominalVoltageV: 12 }, expected: { dropAtDesignCurrentV: 0.3, measuredDropPercent: 2.5 }, tolerance: 1e-9,
    },
    {
      origin: 'published', place: 'ABYC E-11 as quoted: 0.36 V, at the design current, is 3 % of 12 V',
      input: { measuredDropV: 0.36, currentA: 10, designCurrentA: 10, nominalVoltageV: 12 }, expected: { measuredDropPercent: 3 }, tolerance: 1e-9,
    },
  ],
}
