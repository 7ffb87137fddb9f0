/** Findings about battery banks (SUP). */
import type { FindingKind } from '../../findings/finding.js'
import { say } from '../../units/format.js'

export const blocksGiveOtherVoltage: FindingKind<{ blocksV: number; nominalVoltageV: number }> = {
  id: 'SUP301',
  name: 'blocks-give-other-voltage',
  since: '0.2.0',
  retired: null,
  severity: 'error',
  meaning: 'The blocks in series of a battery bank do not add up to its nominal voltage, so one of the two is wrong, and with it every current and drop.',
  message: ({ subject, evidence }) => `Battery ${subject.id}: its blocks in series give ${say('nominalVoltageV', evidence.blocksV)}, its nominal voltage is ${say('nominalVoltageV', evidence.nominalVoltageV)}`,
  remedy: () => 'Correct the number of blocks in series, the voltage of one, or the nominal voltage.',
}

export const bankDiffersFromBlocks: FindingKind<{ capacityAh: number; blocksAh: number }> = {
  id: 'SUP302',
  name: 'bank-differs-from-blocks',
  since: '0.2.0',
  retired: null,
  severity: 'warning',
  meaning: 'The capacity recorded for a battery bank is not that of its blocks in parallel; the recorded one is used.',
  message: ({ subject, evidence }) => `Battery ${subject.id}: ${say('capacityAh', evidence.capacityAh)} recorded, its blocks give ${say('blocksAh', evidence.blocksAh)}`,
  remedy: () => 'Correct the number of strings in parallel, the capacity of one block, or that of the bank.',
}

export const findingKinds = [blocksGiveOtherVoltage, bankDiffersFromBlocks] as const
