/** The one place where a value is held against a limit. */
import type { Limit } from '../findings/finding.js'
import type { Comparison } from '../model/results.js'
import { roundingNoise } from '../units/quantity.js'

/** Whether the value is on the wrong side of the limit. Neither is rounded; equal, to the last binary digits, is within. */
export function exceeds(value: number, limit: Limit): boolean {
  return marginTo(value, limit) < -roundingNoise * Math.abs(limit.value)
}

/** A computed quantity held against a limit; `margin` is what is left, in the limit's unit. */
export const compare = (quantity: string, value: number, limit: Limit): Comparison =>
  ({ quantity, value, limit, margin: marginTo(value, limit), within: !exceeds(value, limit) })

const marginTo = (value: number, limit: Limit): number =>
  limit.relation === 'at most' ? limit.value - value : value - limit.value
