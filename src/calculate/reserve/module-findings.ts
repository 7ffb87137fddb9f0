/** About electronic switching modules: what is left when the module or its network is lost, and whether it can carry its channels. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { PointReserve } from '../../model/results/reserve.js'
import type { Panel, Vessel } from '../../model/vessel.js'
import { channelsAboveRating, manualBypassNotRecorded, networkLossNotRecorded } from './findings.js'

export function moduleFindings(vessel: Vessel, panel: Panel, { rating }: PointReserve): readonly Finding[] {
  if (panel.kind !== 'switching module') return []
  const critical = (lookup(vessel).circuitsFedFrom.get(panel.tag) ?? []).filter(({ loadClass }) => loadClass === 'critical')
  const about = { subject: { kind: 'panel', id: panel.tag }, limit: null }
  const unsaid = panel.networkLoss === null ? critical.filter(({ networkLoss }) => networkLoss === null) : []
  return [
    ...critical.filter(({ manualBypass }) => manualBypass === null).map(({ tag }) =>
      find(manualBypassNotRecorded, { subject: { kind: 'circuit', id: tag }, field: null, evidence: {}, limit: null, context: { module: panel.tag } })),
    ...(unsaid.length === 0 ? []
      : [find(networkLossNotRecorded, { ...about, field: null, evidence: {}, context: { circuits: inWords(unsaid.map(({ tag }) => tag)) } })]),
    ...(rating === null || rating.within ? [] : [find(channelsAboveRating, {
      ...about, field: 'ratedCurrentA', evidence: { takenCurrentA: rating.margin.input.takenCurrentA },
      limit: { relation: 'at most', value: rating.margin.input.limitCurrentA, citation: rating.citation },
    })]),
  ]
}
