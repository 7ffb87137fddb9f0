/** Texts of cable labels that lead to the wrong cable. */
import { find, type Finding } from '../../findings/finding.js'
import { type CableEndName, labelText } from '../../model/cable-label.js'
import { grouped, isThere, lookup } from '../../model/lookup.js'
import type { Cable, Vessel } from '../../model/vessel.js'
import { cablesLabelledAlike, labelNamesAnotherCable, labelWithoutTag } from './findings.js'

interface Given { readonly cable: Cable; readonly field: 'labelFrom' | 'labelTo'; readonly text: string }
const ends: readonly (readonly [CableEndName, Given['field']])[] = [['from', 'labelFrom'], ['to', 'labelTo']]

/** Only a text that its author gives can mislead: the one that is made begins with the cable's own tag. */
export function labelTextFindings(vessel: Vessel): readonly Finding[] {
  const { cables } = lookup(vessel)
  const fitted = vessel.cables.filter(isThere)
  const printed = fitted.flatMap(cable => ends.map(([end, field]): Given => ({ cable, field, text: labelText(cable, end) })))
  const given = printed.filter(({ cable, field }) => cable[field] !== null)
  const about = ({ cable, field }: Given) => ({ subject: { kind: 'cable', id: cable.tag }, field, evidence: {}, limit: null })
  const byText = grouped(printed, ({ text }) => [text.trim().toLowerCase()])

  return given.flatMap(label => {
    const { cable, text } = label
    const tags = text.split(/[\s/,;()]+/)
    const other = byText.get(text.trim().toLowerCase())!.find(each => each.cable !== cable)
    if (other !== undefined) return [find(cablesLabelledAlike, { ...about(label), context: { text, other: other.cable.tag } })]
    if (tags.includes(cable.tag)) return []
    const named = tags.find(tag => cables.has(tag))
    return [named === undefined ? find(labelWithoutTag, { ...about(label), context: { text } }) : find(labelNamesAnotherCable, { ...about(label), context: { text, other: named } })]
  })
}
