/** What the parts of the answer of `asfitted reserve` have in common: labelled lines, small tables, names, lengths. */
import type { Examined } from '../build.js'
import { lookup } from '../model/lookup.js'
import type { CableRun } from '../model/results.js'
import type { Tag } from '../model/vessel.js'
import { say, sayForWorking } from '../units/format.js'

export type Lines = readonly string[]

/** A label and its lines, the further ones below the first. */
export const labelled = (label: string, lines: Lines): Lines => lines.map((line, i) => `   ${(i === 0 ? label : '').padEnd(14)} ${line}`)

export function tableLines(rows: readonly Lines[]): Lines {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map(row => row[column]!.length)))
  return rows.map(row => row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ').trimEnd())
}

/** "wheelhouse (Wheelhouse)" */
export function withName({ vessel }: Examined, tag: Tag): string {
  const { zones, points, items } = lookup(vessel)
  const name = (zones.get(tag) ?? points.get(tag) ?? items.get(tag))?.name
  return name === undefined ? tag : `${tag} (${name})`
}

export function lengthText({ vessel }: Examined, { length, wirewayTags }: CableRun): string {
  const by = wirewayTags.length === 0 ? 'within one place' : `by ${wirewayTags.join(', ')}`
  if (length.status === 'not computed') return `not known: ${length.reason}`
  if (length.status === 'declared') return `${say('cableLengthM', length.cableLengthM, vessel)} ${by}`
  const { wirewayLengthM, tailLengthM } = length.input
  return `${say('cableLengthM', length.output.cableLengthM, vessel)} ${by}: ${sayForWorking('wirewayLengthM', wirewayLengthM)} + 2 · ${sayForWorking('tailLengthM', tailLengthM)}`
}
