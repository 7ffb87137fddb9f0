/** What pictures show and whether they can be shown. */
import { find, type Finding } from '../../findings/finding.js'
import { isThere, lookup } from '../../model/lookup.js'
import type { CallOut, Photograph, Tag, Vessel } from '../../model/vessel.js'
import { callOutOfAnotherZone, callOutOfRemovedItem, pictureFormatNotShown } from './findings.js'

export const pictureFindings = (vessel: Vessel): readonly Finding[] => [
  ...vessel.photographs.flatMap(({ file }) => formatFinding('photograph', 'Photograph', file)),
  ...vessel.arrangementDrawings.flatMap(({ file }) => formatFinding('arrangement drawing', 'Arrangement drawing', file)),
  ...vessel.photographs.flatMap(photograph => photograph.callOuts.flatMap((callOut, i) => callOutFinding(vessel, photograph, callOut, i))),
]

const shownEndings: ReadonlySet<string> = new Set(['.jpg', '.jpeg', '.png'])

/** By the name alone; whether the file holds what its name says is seen when it is read. */
function formatFinding(kind: string, what: string, file: string): readonly Finding[] {
  const ending = /\.[^./]*$/.exec(file)?.[0] ?? ''
  return shownEndings.has(ending.toLowerCase()) ? [] : [find(pictureFormatNotShown, {
    subject: { kind, id: file }, field: 'file', evidence: {}, limit: null, context: { what, ending },
  })]
}

function callOutFinding(vessel: Vessel, { file, zoneTag }: Photograph, { itemTag }: CallOut, i: number): readonly Finding[] {
  const item = lookup(vessel).items.get(itemTag)
  const about = { subject: { kind: 'photograph', id: file }, field: `callOuts.${i}.itemTag`, evidence: {}, limit: null }
  if (item !== undefined && !isThere(item)) return [find(callOutOfRemovedItem, { ...about, context: { item: itemTag } })]
  const itsZone = zoneOf(vessel, itemTag)
  return zoneTag === null || itsZone === null || itsZone === zoneTag ? [] : [find(callOutOfAnotherZone, { ...about, context: { zone: zoneTag, item: itemTag, found: itsZone } })]
}

/** Of an item, or of the protective device of a circuit; null for all else, which may lie in several zones. */
function zoneOf(vessel: Vessel, tag: Tag): Tag | null {
  const { items, circuits } = lookup(vessel)
  const circuit = circuits.get(tag)
  return items.get(tag)?.zoneTag ?? (circuit === undefined ? null : circuit.zoneTag ?? items.get(circuit.fedFromTag)?.zoneTag ?? null)
}
