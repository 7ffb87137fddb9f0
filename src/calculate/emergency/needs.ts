/** What an emergency needs on this boat, and whether it is recorded and can be found. */
import { find, type Finding } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { isOnBoard, isThere } from '../../model/lookup.js'
import type { NeedAnswer } from '../../model/results/emergency.js'
import type { Gap } from '../../model/results/gap.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { cite } from '../../references/bibliography.js'
import { type EmergencyNeed, emergencyNeeds, isEmergencyGear, isNeededKind } from '../../references/emergency-needs.js'
import { becauseOf } from './conditions.js'
import { absenceContradicted, advisedNotRecorded, gearWithoutPlace, gearWithoutZone, neededNotRecorded } from './findings.js'

export function needAnswers(vessel: Vessel): readonly NeedAnswer[] {
  return emergencyNeeds.flatMap(({ key, tasks, kinds, on }): readonly NeedAnswer[] => {
    const becauseTags = becauseOf[on](vessel)
    if (becauseTags === null) return []
    // What is planned is on its way.
    const itemTags = vessel.equipment.filter(item => isThere(item) && kinds.some(kind => kind === item.kind)).map(({ tag }) => tag)
    const reasons = vessel.absences.filter(({ kind }) => kinds.some(known => known === kind)).map(({ reason }) => reason)
    return [{ key, tasks, kinds, itemTags, reasons, becauseTags, state: itemTags.length > 0 ? 'recorded' : reasons.length > 0 ? 'absent' : 'not recorded' }]
  })
}

/**
 * What is not entered yet is no fault of a boat under construction, and an extinguisher may be entered for its upkeep alone: what is missing
 * counts once the boat is delivered, or from the first absence that somebody states. Before, it is not assessed; and while none of it is
 * entered at all, the pages alone say so.
 */
const isAsked = ({ identity, absences }: Vessel): boolean => identity.deliveredOn !== null || absences.length > 0

const isBegun = ({ equipment }: Vessel): boolean => equipment.some(item => isThere(item) && isEmergencyGear(item.kind))

export function needGaps(vessel: Vessel, answers: readonly NeedAnswer[]): readonly Gap[] {
  const missing = answers.filter(({ state }) => state === 'not recorded')
  if (isAsked(vessel) || !isBegun(vessel) || missing.length === 0) return []
  return [{ subjectTag: vessel.identity.name, reason: `whether all that an emergency needs is on board: no day of delivery is recorded and no absence is stated; not recorded: ${inWords(missing.map(wordsOf))}` }]
}

export function needFindings(vessel: Vessel, answers: readonly NeedAnswer[]): readonly Finding[] {
  if (!isAsked(vessel)) return []
  return [
    ...answers.filter(({ state }) => state === 'not recorded').map(answer => missingFinding(vessel, answer)),
    ...vessel.equipment.filter(item => isOnBoard(item) && isNeededKind(item.kind)).flatMap(placeFindings),
    ...contradictedAbsences(vessel),
  ]
}

const needOf = ({ key }: NeedAnswer): EmergencyNeed => emergencyNeeds.find(need => need.key === key)!
const wordsOf = (answer: NeedAnswer): string => needOf(answer).words

function missingFinding({ identity }: Vessel, answer: NeedAnswer): Finding {
  const { words, weight, citation } = needOf(answer)
  return find(weight === 'needed' ? neededNotRecorded : advisedNotRecorded, {
    subject: { kind: 'vessel', id: identity.name }, field: null, evidence: {}, limit: null,
    context: { words, because: inWords(answer.becauseTags), source: cite(citation), pages: inWords(answer.tasks) },
  })
}

function placeFindings({ tag, kind, zoneTag, location, positionM }: Equipment): readonly Finding[] {
  const about = { subject: { kind: 'equipment', id: tag }, field: null, evidence: {}, limit: null, context: { kind } }
  if (zoneTag === null) return [find(gearWithoutZone, about)]
  return location === null && positionM === null ? [find(gearWithoutPlace, about)] : []
}

const contradictedAbsences = ({ absences, equipment }: Vessel): readonly Finding[] => absences.flatMap(({ kind }) => {
  const items = equipment.filter(item => item.kind === kind && isOnBoard(item))
  return items.length === 0 ? [] : [find(absenceContradicted, {
    subject: { kind: 'absence', id: kind }, field: null, evidence: {}, limit: null, context: { items: inWords(items.map(({ tag }) => tag)) },
  })]
})
