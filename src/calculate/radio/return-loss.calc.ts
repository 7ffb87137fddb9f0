import type { Method } from '../method.js'

export type ReturnLossInput = Readonly<{ vswrFactor: number }>
export type ReturnLossOutput = Readonly<{ reflectionFactor: number; returnLossDb: number; mismatchLossDb: number; reflectedPercent: number }>

/**
 * What a voltage standing wave ratio (VSWR) means: how much comes back.
 *
 * Formula   Γ = (S − 1)/(S + 1),   RL = −20 · log Γ,   ML = −10 · log(1 − Γ²),   r = 100 · Γ²
 * Units     S standing wave ratio; Γ reflection factor, RL return loss [dB], ML mismatch loss [dB], r power reflected [%]
 * Source    radio-theory
 * Errors    none at a ratio of 1, where nothing comes back
 */
export function returnLoss({ vswrFactor }: ReturnLossInput): ReturnLossOutput {
  const reflectionFactor = (vswrFactor - 1) / (vswrFactor + 1)
  return {
    reflectionFactor, returnLossDb: -20 * Math.log10(reflectionFactor), mismatchLossDb: -10 * Math.log10(1 - reflectionFactor ** 2), reflectedPercent: 100 * reflectionFactor ** 2,
  }
}

const rows = [[1.1, 0.0476, 26.44, 0.01, 0.23], [1.2, 0.0909, 20.83, 0.036, 0.83], [1.5, 0.2, 13.98, 0.177, 4], [2, 0.3333, 9.54, 0.512, 11.11], [2.5, 0.4286, 7.36, 0.881, 18.37], [3, 0.5, 6.02, 1.249, 25]] as const

export const returnLossMethod: Method<ReturnLossInput, ReturnLossOutput> = {
  id: 'return-loss',
  title: 'Standing wave ratio and return loss',
  formula: String.raw`\Gamma = \frac{S - 1}{S + 1} \qquad RL = -20\,\lg\Gamma \qquad ML = -10\,\lg(1 - \Gamma^2) \qquad r = 100\,\Gamma^2`,
  symbols: { vswrFactor: 'S', reflectionFactor: String.raw`\Gamma`, returnLossDb: 'RL', mismatchLossDb: 'ML', reflectedPercent: 'r' },
  citations: [{ source: 'radio-theory', place: 'reflection on a line' }],
  assumes: [],
  compute: returnLoss,
  notApplicable: q => (q.vswrFactor > 1 ? null : 'a standing wave ratio of 1 says that nothing at all comes back, and has no return loss'),
  checks: rows.map(([vswrFactor, reflectionFactor, returnLossDb, mismatchLossDb, reflectedPercent]) => ({
    origin: 'by hand', place: `VSWR ${vswrFactor}: Γ = ${Math.round(10 * (vswrFactor - 1)) / 10}/${Math.round(10 * (vswrFactor + 1)) / 10}, to the digits of tables for the trade`,
    input: { vswrFactor }, expected: { reflectionFactor, returnLossDb, mismatchLossDb, reflectedPercent }, tolerance: 0.0055,
  })),
}
