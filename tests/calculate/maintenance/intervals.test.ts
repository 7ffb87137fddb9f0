/** Every row of the published and usual intervals is carried by a general task with the same interval, or there is a reason why not. */
import { describe, expect, it } from 'vitest'
import { readContent } from '../../../src/load/read-content.js'
import type { GeneralTask } from '../../../src/model/content.js'
import { standingOf } from '../../../src/references/bibliography.js'
import { referenceTable } from '../../support/reference-table.js'

interface Row { readonly item: string; readonly action: string; readonly interval: string; readonly unit: string; readonly source: string; readonly provenance: string }
const rows = referenceTable('maintenance-intervals') as unknown as readonly Row[]
const tasks = new Map((await readContent()).maintenanceTasks.map(task => [task.key, task]))

/** The task that carries each row, in the order of the table. */
const carriedBy: readonly (readonly [item: string, key: string])[] = [
  ['EPIRB', 'beacon-self-test'], ['EPIRB', 'beacon-annual-test'], ['EPIRB', 'beacon-shore-maintenance'], ['EPIRB', 'beacon-battery'],
  ['EPIRB registration', 'beacon-registration'], ['hydrostatic release unit', 'hydrostatic-release'],
  ['SART', 'rescue-transmitter-test'], ['SART / AIS-SART', 'rescue-transmitter-battery'],
  ['VHF DSC', 'dsc-self-test'], ['VHF DSC', 'dsc-test-call'], ['handheld VHF GMDSS', 'handheld-test'], ['radio batteries', 'radio-battery-test'],
  ['antennas and insulators', 'antennas-look'], ['AIS', 'ais-annual-test'],
  ['liferaft SOLAS', 'liferaft-solas-service'], ['liferaft SOLAS', 'liferaft-inflation'], ['liferaft small craft ISO 9650', 'liferaft-service'],
  ['fire extinguisher portable', 'extinguisher-look'], ['fire extinguisher portable', 'extinguisher-service'],
  ['fire extinguisher dry chemical stored pressure', 'extinguisher-internal'], ['fire extinguisher dry chemical stored pressure', 'extinguisher-hydrostatic'],
  ['fire extinguisher CO2', 'extinguisher-co2-hydrostatic'], ['fire extinguisher non-rechargeable', 'extinguisher-disposable-end'],
  ['fire extinguisher fixed CO2/clean agent', 'fixed-extinguisher-service'],
  ['pyrotechnics USCG approved', 'distress-signals-uscg-end'], ['pyrotechnics SOLAS/ISO', 'distress-signals-end'],
  ['battery flooded lead', 'battery-electrolyte'], ['battery AGM / gel', 'battery-sealed-check'], ['battery LiFePO4', 'battery-lithium-check'], ['battery any', 'battery-capacity'],
  ['RCD / ELCI / GFCI', 'rcd-button'], ['RCD', 'rcd-measured'], ['shore cord and inlet', 'shore-cord-look'], ['shore cord and inlet', 'shore-cord-test'],
  ['galvanic isolator', 'galvanic-isolator-test'], ['anodes', 'anodes-look'], ['bonding system', 'bonding-measured'], ['engine raw-water impeller', 'engine-impeller'],
  ['LPG hose and regulator', 'gas-hose-look'], ['LPG hose', 'gas-hose-end'], ['LPG system', 'gas-leak-test'],
  ['navigation lights', 'navigation-lights-test'], ['bilge pump and high-water alarm', 'bilge-pump-test'], ['emergency lights / torches', 'torch-test'],
  ['smoke, CO and gas detectors', 'alarm-test'], ['CO detector', 'gas-detector-end'], ['lifejacket inflatable', 'lifejackets-inspect'],
  ['compass', 'compass-card-check'], ['navigation software and charts', 'chart-update'], ['battery main switch', 'battery-isolator-check'],
  ['terminals and connections in damp spaces', 'damp-connections'], ['masthead and spreader wiring', 'mast-wiring-look'],
]

const inMonths = ({ everyMonthsCount, everyMadeMonthsCount, lifeMonthsCount }: GeneralTask): number | null => everyMonthsCount ?? everyMadeMonthsCount ?? lifeMonthsCount

describe('the published intervals', () => {
  it('are 52 rows, each with its task', () => {
    expect(rows.length).toBe(52)
    expect(carriedBy.map(([item]) => item)).toEqual(rows.map(({ item }) => item))
  })

  it.each(rows.map((row, i) => [`${row.item}: ${row.action}`, row, carriedBy[i]![1]] as const))('%s', (_, row, key) => {
    const task = tasks.get(key)!
    expect(task, key).toBeDefined()
    const interval = Number(row.interval)
    if (row.unit === 'month') expect(inMonths(task)).toBe(interval)
    else expect(task.everyDaysCount).toBe(row.unit === 'week' ? 7 * interval : interval)
    // What is common practice or from memory says so; what is published is cited.
    const standing = standingOf(task.citation)
    if (row.provenance === 'common practice') expect(standing).toBe('common practice')
    else if (row.provenance === 'from memory') expect(standing).toBe('from memory')
    else expect(['public law', 'published']).toContain(standing)
  })

  it('carries the second limit of a hydrostatic release, from manufacture', () => {
    expect(tasks.get('hydrostatic-release')).toMatchObject({ everyMonthsCount: 24, everyMadeMonthsCount: 48 })
  })

  it('asks of a small craft only what is for her: rules for ships and for one sort of extinguisher are asked for by their key', () => {
    expect([...tasks.values()].filter(({ onlyWhenAsked }) => onlyWhenAsked).map(({ key }) => key)).toEqual([
      'extinguisher-internal', 'extinguisher-hydrostatic', 'extinguisher-co2-hydrostatic', 'extinguisher-disposable-end',
      'beacon-shore-maintenance', 'liferaft-solas-service', 'liferaft-inflation', 'distress-signals-uscg-end', 'radio-battery-test',
    ])
  })
})
