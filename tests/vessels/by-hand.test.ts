/**
 * The three boats without a fault against sums done by hand. `expected/by-hand.md` writes the sums out, from the data and
 * the published tables of tests/reference; `expected/by-hand.csv` holds what they come to.
 */
import { parse } from 'csv-parse/sync'
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { designCurrentA } from '../../src/model/results.js'
import { referenceTable } from '../support/reference-table.js'
import { examineCase, expectedFile } from './cases.js'

interface Row {
  readonly circuit: string
  readonly load: string
  readonly design_current_a: string
  readonly voltage_drop_v: string
  readonly voltage_drop_percent: string
  /** Empty where it was not worked out. */
  readonly physical_drop_v: string
  /** One of the circuit's cables. */
  readonly cable: string
  readonly capacity_a: string
}

/** What is not assessed: the trawler's searchlight is planned and on no circuit. */
const notAssessedCounts = { 'day-boat': 0, 'trawler-abyc': 1, 'cruiser-24v': 0 } as const
const boats = Object.keys(notAssessedCounts) as readonly (keyof typeof notAssessedCounts)[]

const lastDigit = (written: string): number => 10 ** -(written.split('.')[1]?.length ?? 0)

/** Within one unit of the last digit written: the sums carry rounded figures on. */
function expectAsWritten(actual: number | null | undefined, written: string): void {
  expect(actual).toBeTypeOf('number')
  expect(Math.abs(actual! - Number(written)), `${actual} against ${written}`).toBeLessThanOrEqual(lastDigit(written))
}

/** `table: row, column = value`; the row by its first cells. */
const cellPattern = /^([a-z0-9-]+): (.+), (\w+) = ([\d.]+)$/
/** `sum = value unit` */
const sumPattern = /^(.+) = ([\d.]+) (?:A|V|%|m|ft|°C)$/

function linesOfFrames(text: string): readonly string[] {
  return [...text.matchAll(/^```\n(.*?)^```$/gms)].flatMap(([, frame]) => frame!.split('\n').filter(line => line !== ''))
}

const resultsIn = (text: string): readonly number[] =>
  linesOfFrames(text).map(line => Number(cellPattern.exec(line)?.[4] ?? sumPattern.exec(line)?.[2]))

/** Rounded to the digits written. */
function expectRounded(actual: unknown, written: string): void {
  expect(actual).toBeTypeOf('number')
  expect(Math.abs(Number(actual) - Number(written))).toBeLessThanOrEqual(0.5001 * lastDigit(written))
}

async function resultsOf(boat: (typeof boats)[number]) {
  const examination = await examineCase(boat)
  if (examination.status !== 'examined') throw new Error(`${boat} cannot be read as a vessel`)
  // What the later domains leave out for want of data is the business of other cases.
  const later = Object.values(examination.results).flatMap(domain => ('notAssessed' in domain ? domain.notAssessed : [])).map(({ subjectTag, reason }) => `${subjectTag} ${reason}`)
  return { ...examination, conductorGaps: examination.notAssessed.length - new Set(later).size }
}

describe.each(boats)('%s', boat => {
  const rows: readonly Row[] = parse(expectedFile(boat, 'by-hand.csv'), { columns: true })
  const sums = expectedFile(boat, 'by-hand.md')

  it('leaves nothing about conductors and ratings unassessed for want of data', async () => {
    expect((await resultsOf(boat)).conductorGaps).toBe(notAssessedCounts[boat])
  })

  it('has six circuits or more worked by hand', () => {
    expect(rows.length).toBeGreaterThanOrEqual(6)
  })

  it.each(rows)('$circuit to $load comes out as by hand', async ({ circuit, load, cable, ...written }) => {
    const { feeding, voltageDrop, currentCarryingCapacity } = (await resultsOf(boat)).results
    const drop = voltageDrop.byCircuit.get(circuit)!.toLoads.find(({ loadTag }) => loadTag === load)
    // Sums and products of figures with few digits: nothing is rounded in them.
    expect(designCurrentA(feeding.byCircuit.get(circuit))).toBeCloseTo(Number(written.design_current_a), 9)
    expectAsWritten(drop?.voltageDropV, written.voltage_drop_v)
    expectAsWritten(drop?.voltageDropPercent, written.voltage_drop_percent)
    if (written.physical_drop_v !== '') expectAsWritten(drop?.physicalDropV, written.physical_drop_v)

    const capacity = currentCarryingCapacity.byCable.get(cable)!
    expect(capacity.circuitTag).toBe(circuit)
    expect(capacity.outcome).toMatchObject({ output: { currentCarryingCapacityA: expect.closeTo(Number(written.capacity_a), 9) } })
  })

  it.each(rows)('the sum for $circuit to $load is written out', ({ circuit, load, ...written }) => {
    const section = sums.split(/^## /m).find(part => part.startsWith(`${circuit} to `)) ?? ''
    expect(section.split('\n', 1)[0]).toMatch(new RegExp(`\\b${load}\\b`))
    const worked = [written.voltage_drop_v, written.voltage_drop_percent, written.physical_drop_v].filter(value => value !== '')
    expect(worked.filter(value => !resultsIn(section).includes(Number(value)))).toEqual([])
    expect(resultsIn(sums)).toContain(Number(written.capacity_a))
  })

  it.each(linesOfFrames(sums).filter(line => cellPattern.test(line)))('the table has %s', line => {
    const [, table, row, column, written] = cellPattern.exec(line)!
    const keys = row!.split(' ')
    const found = referenceTable(table!).filter(cells => keys.every((key, i) => Object.values(cells)[i] === key))
    expect(found.map(cells => Number(cells[column!]))).toEqual([Number(written)])
  })

  it.each(linesOfFrames(sums).filter(line => !cellPattern.test(line)))('the sum is right: %s', line => {
    const [, sum, written] = sumPattern.exec(line) ?? []
    expectRounded(evaluate(sum!), written!)
  })
})
