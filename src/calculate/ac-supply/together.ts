/** Which loads of an a.c. source can run for hours at the same time. */
import type { Tag } from '../../model/vessel.js'
import { workingShare } from '../../references/basis/ac-rules.js'
import { exceeds } from '../compare.js'
import { type Consumer, isNormallyOn } from './loads.js'

/** Two to the power of this many groups are looked at. */
const mostLoads = 12

/**
 * The largest groups of loads, each at full current, whose sum stays within what the source can give for hours and within the
 * rating of each protective device on their way. No group is part of another.
 *
 * Formula   Σ S ≤ k · U_n · I_n of the source,   Σ I ≤ I_n of each device
 * Source    common practice for k: what runs for hours takes at most 80 % of the rating
 * Errors    null where a current is not known, or with more loads than can be gone through
 *
 * @param workingPowerVa  k · U_n · I_n
 */
export function groupsThatFit(consumers: readonly Consumer[], workingPowerVa: number): readonly (readonly Tag[])[] | null {
  const loads = consumers.filter(isNormallyOn)
  if (loads.length > mostLoads || loads.some(({ currentA }) => currentA === null)) return null
  const indexes = loads.map((_, i) => i)
  const chosen = (mask: number): readonly Consumer[] => loads.filter((_, i) => (mask & (1 << i)) !== 0)
  const fits = (mask: number): boolean => fitTogether(chosen(mask), workingPowerVa)
  const masks = Array.from({ length: 1 << loads.length }, (_, mask) => mask).filter(mask => mask > 0 && fits(mask))
  const fitting = new Set(masks)
  return masks.filter(mask => !indexes.some(i => fitting.has(mask | (1 << i)) && (mask & (1 << i)) === 0)).map(mask => chosen(mask).map(({ tag }) => tag))
}

function fitTogether(loads: readonly Consumer[], workingPowerVa: number): boolean {
  const atMost = (value: number) => ({ relation: 'at most', value, citation: workingShare.citation }) as const
  const powerVa = loads.reduce((sum, { currentA, nominalVoltageV }) => sum + currentA! * nominalVoltageV, 0)
  if (exceeds(powerVa, atMost(workingPowerVa))) return false
  const circuits = new Set(loads.flatMap(({ way }) => way))
  return [...circuits].every(circuit => {
    const rated = circuit.protection?.ratedCurrentA
    const through = loads.filter(({ way }) => way.includes(circuit)).reduce((sum, { currentA }) => sum + currentA!, 0)
    return rated === undefined || !exceeds(through, atMost(rated))
  })
}
