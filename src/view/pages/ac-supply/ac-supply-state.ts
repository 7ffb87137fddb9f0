/** How a requirement on mains voltage stands, as text. */
import type { Requirement } from '../../../model/results/ac-supply.js'
import type { Comparison } from '../../../model/results.js'
import { sayResidualCurrent } from '../../../references/basis/ac-rules.js'
import { sayAgainst } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { muted, verdict } from '../../text.js'
import type { Inline, Level, Text } from '../../view-model.js'

const marks: Readonly<Record<Requirement['state'], { readonly level: Level; readonly text: string }>> = {
  'met': { level: 'good', text: 'met' },
  'missed': { level: 'error', text: 'missed' },
  'doubtful': { level: 'warning', text: 'doubtful' },
  'not assessed': { level: 'not assessed', text: 'not assessed' },
  'not required': { level: 'note', text: 'not required' },
}
const markOf = ({ state }: Requirement): Inline => verdict(marks[state].level, marks[state].text)

/** The mark, what was found, and the limit where there is one. */
export const stateText = (context: ViewContext, requirement: Requirement): Text => [
  markOf(requirement), ` ${requirement.words}`,
  ...(requirement.comparison === null ? [] : [muted(`, limit ${limitText(context, requirement.comparison)}`)]),
]

/** "at least 1.00 MΩ"; residual currents in milliampere. */
export function limitText({ vessel }: ViewContext, { quantity, value, limit }: Comparison): string {
  if (quantity === 'residualCurrentA') return `${limit.relation} ${sayResidualCurrent(limit.value)}`
  return `${limit.relation} ${sayAgainst(quantity, value, limit.value, vessel).limit}`
}
