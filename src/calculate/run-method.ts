import type { Outcome } from '../model/results.js'
import type { Quantities } from '../units/quantity.js'
import type { Method } from './method.js'

/** A calculation applied to its input, or the reason why there is no number. */
export function runMethod<In extends Quantities, Out extends Quantities>(method: Method<In, Out>, input: In): Outcome<In, Out> {
  const reason = method.notApplicable(input)
  return reason === null
    ? { status: 'computed', method: method.id, input, output: method.compute(input) }
    : { status: 'not computed', method: method.id, reason }
}
