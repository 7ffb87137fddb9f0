import type { Method } from '../method.js'

export type ColumnTotalInput = Readonly<{ columnASumA: number; columnBSumA: number; columnBLargestA: number }>
export type ColumnTotalOutput = Readonly<{ columnTotalA: number }>

/**
 * Current that a panel's feeder and its main switch must carry, by the two columns of the d.c. load calculation.
 *
 * Formula   I = A + max(0.1 · B, B_1)
 * Units     A sum of the loads that must be able to run together, B sum of those that run now and then, B_1 the largest of B [A]
 * Source    abyc-e11
 * Assumes   each load with its highest current
 */
export function columnTotal(q: ColumnTotalInput): ColumnTotalOutput {
  return { columnTotalA: q.columnASumA + Math.max(0.1 * q.columnBSumA, q.columnBLargestA) }
}

export const columnTotalMethod: Method<ColumnTotalInput, ColumnTotalOutput> = {
  id: 'column-total',
  title: 'Load of a panel by the column method',
  formula: String.raw`I = A + \max(0.1\,B,\; B_1)`,
  symbols: { columnASumA: 'A', columnBSumA: 'B', columnBLargestA: 'B_1', columnTotalA: 'I' },
  citations: [{ source: 'abyc-e11', place: 'd.c. load calculation', standing: 'from memory' }],
  assumes: [
    'A load counts with its maximum current, else its typical current, else its power over the nominal voltage; a converter with what it takes at full output.',
    'Of several radios the largest stands in column A, the others in column B.',
  ],
  compute: columnTotal,
  notApplicable: q => (q.columnASumA >= 0 && q.columnBSumA >= q.columnBLargestA && q.columnBLargestA >= 0 ? null : 'a sum is below zero or below its largest part'),
  checks: [
    {
      origin: 'by hand', place: 'A = 30 A; B = 20, 5, 5 and 10 A: 30 + max(4, 20)',
      input: { columnASumA: 30, columnBSumA: 40, columnBLargestA: 20 }, expected: { columnTotalA: 50 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'A = 30 A; B = forty loads of 3 A: 30 + max(12, 3)',
      input: { columnASumA: 30, columnBSumA: 120, columnBLargestA: 3 }, expected: { columnTotalA: 42 }, tolerance: 1e-9,
    },
    {
      origin: 'by hand', place: 'A = 18.5 A; B = a windlass of 80 A and twelve loads of 46 A together: 18.5 + max(12.6, 80)',
      input: { columnASumA: 18.5, columnBSumA: 126, columnBLargestA: 80 }, expected: { columnTotalA: 98.5 }, tolerance: 1e-9,
    },
  ],
}
