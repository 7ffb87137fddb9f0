/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import { lookup } from '../../model/lookup.js'
import type { EnergyGap, EnergyResults } from '../../model/results/energy.js'
import type { OperatingMode, Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { converterInputs, sizingOf, ventilationOf } from './advice.js'
import { batteryDays } from './battery-days.js'
import { batteryFacts, storeOf } from './battery-facts.js'
import { chargingWays, sourcesOf } from './charging.js'
import { columnLoads } from './columns.js'
import { dutiesOf, hoursOfDay, type ModeDuties, shareOfHour } from './duties.js'
import { energyFindings, type ModeRun } from './energy-findings.js'
import { loadsOf } from './loads.js'
import { simulate } from './simulation.js'
import { sunOf } from './solar.js'
import { supplyFinder } from './supplies.js'

export function energyPass(vessel: Vessel, _basis: Basis, { feeding }: Pick<Upstream, 'feeding'>): EnergyResults {
  const batteries = batteryFacts(vessel)
  const columns = columnLoads(vessel, feeding)
  const finder = supplyFinder(vessel, feeding)
  const ways = chargingWays(vessel, feeding)
  const stores = batteries.flatMap(battery => { const store = storeOf(battery); return 'reason' in store ? [] : [store] })

  const runOf = (mode: OperatingMode): ModeRun & { readonly gaps: readonly EnergyGap[] } => {
    const duties = dutiesOf(vessel, mode.tag)
    const running = runningByHour(vessel, duties)
    const sun = sunOf(vessel, mode)
    const { runs: loads, gaps: loadGaps } = loadsOf(vessel, feeding, mode.tag, duties, finder, running)
    const { runs: sources, gaps: sourceGaps } = sourcesOf(vessel, mode.tag, duties, ways, finder, running, sun)
    const runs = simulate({ mode, stores, loads, sources })
    return {
      loads, sources, gaps: [...loadGaps, ...sourceGaps],
      energy: {
        modeTag: mode.tag,
        loads: loads.map(({ day }) => day),
        sources: sources.map(({ day }) => day),
        batteries: batteryDays(batteries, loads, sources, runs),
        sun: 'reason' in sun ? null : sun,
      },
    }
  }
  const runs = vessel.operatingModes.map(runOf)
  const modes = runs.map(({ energy }) => energy)
  return {
    batteries, columns, modes,
    sizing: sizingOf(batteries, modes),
    converterInputs: converterInputs(vessel, feeding),
    ventilation: ventilationOf(batteries),
    notAssessed: [
      ...batteries.flatMap((battery): EnergyGap[] => { const store = storeOf(battery); return 'reason' in store ? [{ subjectTag: battery.tag, modeTag: null, reason: store.reason }] : [] }),
      ...(modes.length === 0 ? batteries.map(({ tag }): EnergyGap => ({ subjectTag: tag, modeTag: null, reason: 'no operating mode is recorded, so what is used in a day is not known' })) : []),
      ...columns.flatMap(({ tag, total }): EnergyGap[] => (total.status === 'computed' ? [] : [{ subjectTag: tag, modeTag: null, reason: `load by the column method: ${total.reason}` }])),
      ...runs.flatMap(({ gaps }) => gaps),
    ],
    findings: energyFindings(vessel, batteries, columns, runs),
  }
}

/** Sources in use in each hour of the day. */
function runningByHour(vessel: Vessel, { items }: ModeDuties): readonly ReadonlySet<Tag>[] {
  const { equipment } = lookup(vessel)
  const sources = items.filter(({ itemTag }) => {
    const item = equipment.get(itemTag)
    return item !== undefined && item.outputs.length > 0 && item.status !== 'removed'
  })
  return hoursOfDay.map(hour => new Set(sources.filter(({ duty }) => duty.dutyPercent > 0 && shareOfHour(duty.periods, hour) > 0).map(({ itemTag }) => itemTag)))
}
