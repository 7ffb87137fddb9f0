/** Kinds of finding of this domain (ENG). */
import type { AnyFindingKind, FindingKind } from '../../findings/finding.js'
import { say, sayAgainst } from '../../units/format.js'

const against = (name: string, value: number, limit: { readonly value: number } | null) => sayAgainst(name, value, limit?.value ?? value)

export const chargeCurrentAboveLimit: FindingKind<{ chargeCurrentA: number }> = {
  id: 'ENG101',
  name: 'charge-current-above-limit',
  since: '0.1.0',
  retired: null,
  severity: 'error',
  meaning: 'Sources that run together in an operating mode can charge a battery with more than the highest charging current recorded for it.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = against('chargeCurrentA', evidence.chargeCurrentA, limit)
    return `Battery ${subject.id}: ${context?.sources} can charge it with ${actual} in mode "${context?.mode}", limit ${most}`
  },
  remedy: () => 'Set the sources lower, or see to it that they do not run together.',
}

export const dischargeCurrentAboveLimit: FindingKind<{ dischargeCurrentA: number }> = {
  id: 'ENG102',
  name: 'discharge-current-above-limit',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The loads of a battery, by the column method or in an operating mode, draw more than the highest current recorded for it; a battery with a guard of its own then switches off.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = against('dischargeCurrentA', evidence.dischargeCurrentA, limit)
    return `Battery ${subject.id}: its loads draw ${actual} ${context?.when}, limit ${most}`
  },
  remedy: () => 'Move loads to another battery, see to it that the largest do not run together, or fit a battery that gives more.',
}

export const depthOfDischargePassed: FindingKind<{ lowestChargePercent: number; lowestHourNumber: number }> = {
  id: 'ENG103',
  name: 'depth-of-discharge-passed',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'Reckoned hour by hour, a battery is discharged deeper in an operating mode than it should be day by day.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: least } = against('chargePercent', evidence.lowestChargePercent, limit)
    return `Battery ${subject.id}: falls to ${actual} in hour ${evidence.lowestHourNumber} of mode "${context?.mode}", limit ${least}`
  },
  remedy: () => 'Change what runs in that mode, charge earlier or longer, or fit a larger bank.',
}

export const loadsWithoutDuty: FindingKind<{ loadCount: number }> = {
  id: 'ENG201',
  name: 'loads-without-duty',
  since: '0.1.0',
  retired: null,
  severity: 'note',
  meaning: 'Loads with a recorded current run in none of the operating modes, so the energy balance leaves them out.',
  message: ({ evidence: { loadCount }, context }) => (loadCount === 1 ? `${context?.loads} runs in no operating mode` : `${loadCount} loads run in no operating mode: ${context?.loads}`),
  remedy: () => 'Add a duty for each of them to the modes in which it runs, or 0 % where it is used too little to count.',
}

export const dailyBalanceNegative: FindingKind<{ balanceAh: number }> = {
  id: 'ENG301',
  name: 'daily-balance-negative',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'In an operating mode in which a battery is charged its loads take more in a day than the sources bring back.',
  message: ({ subject, evidence: { balanceAh }, context }) => `Battery ${subject.id}: loses ${say('balanceAh', -balanceAh)} a day in mode "${context?.mode}" although ${context?.sources} in use`,
  remedy: () => 'Use less, charge longer or with more, or record how many days the mode lasts.',
}

export const columnTotalAboveProtection: FindingKind<{ columnTotalA: number }> = {
  id: 'ENG302',
  name: 'column-total-above-protection',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The loads of a panel come by the column method to more than the rating of the protective device of its feeder.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: most } = against('columnTotalA', evidence.columnTotalA, limit)
    return `Circuit ${subject.id}: what it feeds comes to ${actual} by the column method, rating of its protective device ${most}`
  },
  remedy: () => 'Check which of the loads run together; if they do, move some to another panel or fit a larger feeder with its device.',
}

export const columnTotalAbovePanel: FindingKind<{ columnTotalA: number }> = {
  id: 'ENG303',
  name: 'column-total-above-panel',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'The loads of a panel come by the column method to more than the panel is rated for.',
  message: ({ subject, evidence, limit }) => {
    const { actual, limit: most } = against('columnTotalA', evidence.columnTotalA, limit)
    return `Panel ${subject.id}: its loads come to ${actual} by the column method, its rating is ${most}`
  },
  remedy: () => 'Check which of the loads run together; if they do, move some to another panel.',
}

export const chargeCurrentAboveUsual: FindingKind<{ chargeCurrentA: number }> = {
  id: 'ENG304',
  name: 'charge-current-above-usual',
  since: '0.1.0',
  retired: null,
  severity: 'warning',
  meaning: 'Sources that run together in an operating mode can charge a battery with more than is usual for its chemistry; no limit is recorded for it.',
  message: ({ subject, evidence, limit, context }) => {
    const { actual, limit: most } = against('chargeCurrentA', evidence.chargeCurrentA, limit)
    return `Battery ${subject.id}: ${context?.sources} can charge it with ${actual} in mode "${context?.mode}", usual for its chemistry is up to ${most}`
  },
  remedy: () => 'Record the highest charging current that the maker allows, and set the sources to it.',
}

export const findingKinds: readonly AnyFindingKind[] = [
  chargeCurrentAboveLimit, dischargeCurrentAboveLimit, depthOfDischargePassed, loadsWithoutDuty, dailyBalanceNegative,
  columnTotalAboveProtection, columnTotalAbovePanel, chargeCurrentAboveUsual,
]
