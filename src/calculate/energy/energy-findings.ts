/** What is to be pointed out of the energy of the boat. */
import { exceeds } from '../compare.js'
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { BatteryFacts, ColumnLoad, ModeEnergy, Sourced } from '../../model/results/energy.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import { chemistryCitation } from '../../references/tables/battery-chemistry.js'
import {
  chargeCurrentAboveLimit, chargeCurrentAboveUsual, columnTotalAbovePanel, columnTotalAboveProtection, dailyBalanceNegative, depthOfDischargePassed,
  dischargeCurrentAboveLimit, loadsWithoutDuty,
} from './findings.js'
import { dutiesOf } from './duties.js'
import type { LoadRun } from './loads.js'
import type { SourceRun } from './charging.js'

/** An operating mode with what the pages do not need. */
export interface ModeRun { readonly energy: ModeEnergy; readonly loads: readonly LoadRun[]; readonly sources: readonly SourceRun[] }

const limitOf = (relation: Limit['relation'], { value, from }: Sourced, place: string): Limit =>
  ({ relation, value, citation: from === 'recorded' ? { source: 'makers-data', place } : chemistryCitation })

export function energyFindings(vessel: Vessel, facts: readonly BatteryFacts[], columns: readonly ColumnLoad[], modes: readonly ModeRun[]): readonly Finding[] {
  return [
    ...columns.flatMap(columnFindings),
    ...facts.flatMap(battery => dischargeFindings(vessel, battery, columns, modes)),
    ...modes.flatMap(mode => facts.flatMap(battery => modeFindings(vessel, battery, mode))),
    ...idleLoads(vessel),
  ]
}

function columnFindings({ tag, panelTag, againstProtection, againstPanel }: ColumnLoad): readonly Finding[] {
  return [
    againstProtection === null || againstProtection.within ? [] : [find(columnTotalAboveProtection, {
      subject: { kind: 'circuit', id: tag }, field: 'protection.ratedCurrentA', evidence: { columnTotalA: againstProtection.value }, limit: againstProtection.limit,
    })],
    againstPanel === null || againstPanel.within ? [] : [find(columnTotalAbovePanel, {
      subject: { kind: 'panel', id: panelTag ?? tag }, field: 'ratedCurrentA', evidence: { columnTotalA: againstPanel.value }, limit: againstPanel.limit,
    })],
  ].flat()
}

/** The largest current that is known of: by the column method, else the largest average of an hour. */
function dischargeFindings(vessel: Vessel, { tag, dischargeCurrentMaxA }: BatteryFacts, columns: readonly ColumnLoad[], modes: readonly ModeRun[]): readonly Finding[] {
  if (dischargeCurrentMaxA === null) return []
  const total = columns.find(column => column.tag === tag)?.total
  const found = [
    ...(total?.status === 'computed' ? [{ currentA: total.output.columnTotalA, when: 'by the column method' }] : []),
    ...modes.map(({ energy, loads }) => ({ currentA: hourly(loads, tag), when: `in mode "${nameOf(vessel, energy.modeTag)}"` })),
  ]
  const largest = found.reduce<(typeof found)[number] | null>((best, each) => (best === null || each.currentA > best.currentA ? each : best), null)
  const limit = limitOf('at most', dischargeCurrentMaxA, 'highest discharge current')
  return largest === null || !exceeds(largest.currentA, limit) ? [] : [find(dischargeCurrentAboveLimit, {
    subject: { kind: 'battery', id: tag }, field: 'dischargeCurrentMaxA', evidence: { dischargeCurrentA: largest.currentA }, limit, context: { when: largest.when },
  })]
}

const hourly = (runs: readonly LoadRun[], batteryTag: Tag): number => {
  const own = runs.filter(({ day }) => day.batteryTag === batteryTag)
  return Math.max(0, ...Array.from({ length: 24 }, (_, hour) => own.reduce((sum, { averageAByHour }) => sum + averageAByHour[hour]!, 0)))
}

const nameOf = (vessel: Vessel, modeTag: Tag): string => vessel.operatingModes.find(({ tag }) => tag === modeTag)?.name ?? modeTag

function modeFindings(vessel: Vessel, battery: BatteryFacts, { energy, sources }: ModeRun): readonly Finding[] {
  const mode = nameOf(vessel, energy.modeTag)
  const day = energy.batteries.find(({ batteryTag }) => batteryTag === battery.tag)
  const own = sources.filter(source => source.day.batteryTag === battery.tag && source.day.offeredAh > 0)
  const tags = [...new Set(own.map(source => source.day.itemTag))]
  const subject = { kind: 'battery', id: battery.tag }
  const findings: Finding[] = []

  const together = Array.from({ length: 24 }, (_, hour) => own.filter(({ offeredAByHour }) => offeredAByHour[hour]! > 0).reduce((sum, source) => sum + strengthOf(source, hour), 0))
  const chargeCurrentA = Math.max(0, ...together)
  if (battery.chargeCurrentMaxA !== null) {
    const limit = limitOf('at most', battery.chargeCurrentMaxA, 'highest charging current')
    const kind = battery.chargeCurrentMaxA.from === 'recorded' ? chargeCurrentAboveLimit : chargeCurrentAboveUsual
    if (exceeds(chargeCurrentA, limit)) findings.push(find(kind, { subject, field: 'chargeCurrentMaxA', evidence: { chargeCurrentA }, limit, context: { mode, sources: inWords(tags) } }))
  }
  if (day === undefined) return findings

  if (own.length > 0 && day.balance.status === 'computed') {
    const { balanceAh } = day.balance.output
    const limit: Limit = { relation: 'at least', value: 0, citation: { source: 'common-practice', place: 'what is taken is to be brought back' } }
    // A balance that is only the rest of decimal fractions is none.
    if (balanceAh < -1e-6) {
      const areInUse = `${inWords(tags)} ${tags.length === 1 ? 'is' : 'are'}`
      findings.push(find(dailyBalanceNegative, { subject, field: null, evidence: { balanceAh }, limit, context: { mode, sources: areInUse } }))
    }
  }
  if (day.run !== null && battery.depthOfDischargePercent !== null) {
    const { lowestPercent, lowestHourNumber, limitPercent } = day.run
    const limit = limitOf('at least', { ...battery.depthOfDischargePercent, value: limitPercent }, 'depth of discharge')
    if (lowestHourNumber > 0 && exceeds(lowestPercent, limit)) {
      findings.push(find(depthOfDischargePassed, {
        subject, field: 'depthOfDischargePercent', evidence: { lowestChargePercent: lowestPercent, lowestHourNumber }, limit, context: { mode },
      }))
    }
  }
  return findings
}

/** While it runs: of the sun what the hour gives, else its current, whatever its share of the time. */
const strengthOf = ({ day, offeredAByHour }: SourceRun, hour: number): number => (day.kind === 'solar' ? offeredAByHour[hour]! : day.currentA)

/** One finding for all of them; without any operating mode there is nothing to miss. */
function idleLoads(vessel: Vessel): readonly Finding[] {
  if (vessel.operatingModes.length === 0) return []
  const { circuitsOfLoad } = lookup(vessel)
  const rows = vessel.operatingModes.map(({ tag }) => dutiesOf(vessel, tag))
  const used = new Set(rows.flatMap(({ items }) => items.map(({ itemTag }) => itemTag)))
  const covering = new Set(rows.flatMap(({ coveringTags }) => [...coveringTags]))
  const idle = vessel.equipment.filter(({ tag, status, outputs, currentMaxA, currentTypicalA, powerW }) => {
    const circuits = circuitsOfLoad.get(tag) ?? []
    return status !== 'removed' && outputs.length === 0 && !(currentMaxA === null && currentTypicalA === null && powerW === null)
      && circuits.length > 0 && !used.has(tag) && !circuits.some(circuit => isCovered(vessel, circuit.tag, covering))
  }).map(({ tag }) => tag)
  return idle.length === 0 ? [] : [find(loadsWithoutDuty, {
    subject: { kind: 'vessel', id: vessel.identity.name }, field: null, evidence: { loadCount: idle.length }, limit: null, context: { loads: inWords(idle) },
  })]
}

/** Whether the circuit, or one above it, has the current of all that it feeds in a duty. */
function isCovered(vessel: Vessel, circuitTag: Tag, covering: ReadonlySet<Tag>, seen: ReadonlySet<Tag> = new Set()): boolean {
  if (covering.has(circuitTag)) return true
  const { circuits, circuitsOfLoad } = lookup(vessel)
  const from = circuits.get(circuitTag)?.fedFromTag ?? ''
  if (seen.has(circuitTag)) return false
  return covering.has(from) || (circuitsOfLoad.get(from) ?? []).some(({ tag }) => isCovered(vessel, tag, covering, new Set([...seen, circuitTag])))
}
