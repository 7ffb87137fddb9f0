/** What stands on the label of a cable's end: one text for schedules, pages and the printed label. */
import type { Cable, CableEnd } from './vessel.js'

export type CableEndName = 'from' | 'to'
/** `headline`: the cable's tag, set large; null where the author gives the text. */
export interface CableLabelText { readonly headline: string | null; readonly text: string }

/** IEC 62491 practice (from memory): the cable's tag, this end, then the other end. */
export function cableLabel(cable: Cable, end: CableEndName): CableLabelText {
  const given = end === 'from' ? cable.labelFrom : cable.labelTo
  if (given !== null) return { headline: null, text: given }
  const [here, there] = end === 'from' ? [cable.from, cable.to] : [cable.to, cable.from]
  return { headline: cable.tag, text: `${endText(here)} / ${endText(there)}` }
}

export function labelText(cable: Cable, end: CableEndName): string {
  const { headline, text } = cableLabel(cable, end)
  return headline === null ? text : `${headline} ${text}`
}

export const endText = ({ tag, terminal }: CableEnd): string => (terminal === null ? tag : `${tag}:${terminal}`)
