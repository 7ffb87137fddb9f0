import type { Method } from '../method.js'

export type BatteryBankInput = Readonly<{ seriesCount: number; parallelCount: number; blockCurrentA: number; blockCapacityAh: number; blockResistanceMilliOhm: number }>
export type BatteryBankOutput = Readonly<{ bankCurrentA: number; bankCapacityAh: number; bankResistanceMilliOhm: number }>

/**
 * A bank from its blocks: strings in parallel add their currents and capacities, blocks in series do not.
 *
 * Formula   I = n_p · I_1,   C = n_p · C_1,   R = n_s · R_1 / n_p
 * Units     I_1 short-circuit or cranking current of a block [A], C_1 its capacity [Ah], R_1 its internal resistance [mΩ];
 *           n_s blocks in series, n_p strings in parallel
 * Source    circuit-theory; that series blocks do not add to the short-circuit current also abyc-e11
 * Assumes   blocks alike, of one age and state of charge; the resistance of links and cables between them is left out
 */
export function batteryBank(q: BatteryBankInput): BatteryBankOutput {
  return {
    bankCurrentA: q.parallelCount * q.blockCurrentA,
    bankCapacityAh: q.parallelCount * q.blockCapacityAh,
    bankResistanceMilliOhm: (q.seriesCount * q.blockResistanceMilliOhm) / q.parallelCount,
  }
}

export const batteryBankMethod: Method<BatteryBankInput, BatteryBankOutput> = {
  id: 'battery-bank',
  title: 'A battery bank from its blocks',
  formula: String.raw`I = n_p I_1 \qquad C = n_p C_1 \qquad R = n_s R_1 / n_p`,
  symbols: {
    seriesCount: 'n_s', parallelCount: 'n_p', blockCurrentA: 'I_1', blockCapacityAh: 'C_1', blockResistanceMilliOhm: 'R_1', bankCurrentA: 'I', bankCapacityAh: 'C', bankResistanceMilliOhm: 'R',
  },
  citations: [
    { source: 'circuit-theory', place: 'sources in series and in parallel' },
    { source: 'abyc-e11', place: 'short-circuit current of a bank: parallel strings add, series batteries do not' },
  ],
  assumes: ['All blocks are alike, of one age and state of charge.', 'Links and cables between the blocks have no resistance, which makes the short-circuit current larger than it is.'],
  compute: batteryBank,
  notApplicable: q => (q.seriesCount >= 1 && q.parallelCount >= 1 ? null : 'a bank has at least one block'),
  checks: [
    {
      origin: 'published', place: 'ABYC E-11 as quoted in a published guide: six 6 V blocks of 2400 A for 12 V, three strings of two',
      input: { seriesCount: 2, parallelCount: 3, blockCurrentA: 2400, blockCapacityAh: 220, blockResistanceMilliOhm: 2.5 }, expected: { bankCurrentA: 7200 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'the same bank: 3 · 220 Ah, 2 · 2.5 / 3 mΩ',
      input: { seriesCount: 2, parallelCount: 3, blockCurrentA: 2400, blockCapacityAh: 220, blockResistanceMilliOhm: 2.5 }, expected: { bankCapacityAh: 660, bankResistanceMilliOhm: 1.6667 }, tolerance: 5e-5,
    },
    {
      origin: 'published', place: 'ABYC E-11 table V.A as reprinted, entered with two blocks of 700 CCA in parallel: 1400 CCA',
      input: { seriesCount: 1, parallelCount: 2, blockCurrentA: 700, blockCapacityAh: 100, blockResistanceMilliOhm: 6 }, expected: { bankCurrentA: 1400 }, tolerance: 1e-9,
    },
  ],
}
