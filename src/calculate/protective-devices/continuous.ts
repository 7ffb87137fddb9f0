/** Loads that run for hours without a break, from the duties recorded for the operating modes. */
import { grouped } from '../../model/lookup.js'
import { designCurrentA, type CircuitFeed } from '../../model/results.js'
import type { ContinuousCheck } from '../../model/results/protective-devices.js'
import type { Duty, Period, Tag, Vessel } from '../../model/vessel.js'
import { deviceAdvice } from '../../references/basis/device-advice.js'
import { compare } from '../compare.js'
import { runMethod } from '../run-method.js'
import { continuousLoadMethod } from './continuous-load.calc.js'
import type { ProtectedCircuit } from './rating-order.js'

const { fromH, ratingFactor, citation } = deviceAdvice.continuous
const dayH = 24

/** The longest stretch of hours without a break; periods that meet count as one, also over midnight. */
export function longestRunH(periods: readonly Period[]): number {
  if (periods.length === 0) return dayH
  // Twice over, so that what ends at midnight meets what begins there.
  const twice = [...periods, ...periods.map(({ fromH: from, toH: to }) => ({ fromH: from + dayH, toH: to + dayH }))].toSorted((a, b) => a.fromH - b.fromH)
  let longest = 0
  let start = -Infinity
  let end = -Infinity
  for (const period of twice) {
    if (period.fromH > end) start = period.fromH
    end = Math.max(end, period.toH)
    longest = Math.max(longest, end - start)
  }
  return Math.min(longest, dayH)
}

const isContinuous = ({ periods, dutyPercent }: Duty): boolean => dutyPercent >= 100 && longestRunH(periods) >= fromH

/** By mode what runs on and on in it, by the item or circuit; of several rows the first counts. */
export type LastingDuties = ReadonlyMap<Tag, ReadonlyMap<Tag, Duty>>

export function lastingDuties({ operatingModes, duties }: Vessel): LastingDuties {
  const byMode = grouped(duties.filter(isContinuous), ({ modeTag }) => [modeTag])
  return new Map(operatingModes.map(({ tag }) => [tag, new Map((byMode.get(tag) ?? []).toReversed().map(duty => [duty.itemTag, duty]))]))
}

/** The mode in which most runs on and on; null where no duty says so. */
export function checkContinuous(lasting: LastingDuties, circuit: ProtectedCircuit, feed: CircuitFeed | undefined): ContinuousCheck | null {
  const modes = [...lasting].flatMap(([modeTag, duties]) => {
    const found = lastingIn(duties, circuit, feed)
    return found === null ? [] : [{ modeTag, ...found }]
  })
  const most = modes.toSorted((a, b) => b.continuousCurrentA - a.continuousCurrentA)[0]
  if (most === undefined) return null
  const least = runMethod(continuousLoadMethod, { continuousCurrentA: most.continuousCurrentA, ratingFactor })
  return {
    modeTag: most.modeTag, loadTags: most.loadTags, least,
    comparison: least.status === 'not computed' ? null
      : compare('ratedCurrentA', circuit.protection.ratedCurrentA, { relation: 'at least', value: least.output.leastRatedCurrentA, citation }),
  }
}

/** A row for the circuit counts for all that it feeds; else the loads with rows of their own add up. */
function lastingIn(duties: ReadonlyMap<Tag, Duty>, circuit: ProtectedCircuit, feed: CircuitFeed | undefined): { readonly loadTags: readonly Tag[]; readonly continuousCurrentA: number } | null {
  const whole = duties.get(circuit.tag)
  if (whole !== undefined) {
    const currentA = whole.currentA ?? designCurrentA(feed)
    return currentA === null ? null : { loadTags: [circuit.tag], continuousCurrentA: currentA }
  }
  const lasting = (feed?.currentParts ?? []).filter(({ from }) => from !== 'circuit' && from !== 'input' && from !== 'output').flatMap(({ tag, currentA }) => {
    const duty = duties.get(tag)
    return duty === undefined ? [] : [{ tag, currentA: duty.currentA ?? currentA }]
  })
  return lasting.length === 0 ? null : { loadTags: lasting.map(({ tag }) => tag), continuousCurrentA: lasting.reduce((sum, { currentA }) => sum + currentA, 0) }
}
