/** How sources are switched: never two on one panel or busbar, and alike in voltage and frequency. */
import { type Finding, find } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { grouped, lookup } from '../../model/lookup.js'
import type { AcBus, AcFeeder, Requirement } from '../../model/results/ac-supply.js'
import type { FeedingResults } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { alikeVoltageFactor } from '../../references/basis/ac-rules.js'
import { segmentsTo } from '../feeding/segments.js'
import { busFrequenciesDiffer, busVoltagesDiffer, severalNormallyClosed, sourcesNotInterlocked } from './findings.js'
import { met, missed, doubtful, notAssessed } from './requirement.js'
import type { AcOutput } from './supplied.js'

export interface BusJudged { readonly bus: AcBus; readonly findings: readonly Finding[] }

/** Panels and busbars to which more than one a.c. circuit leads. */
export function busesOf(vessel: Vessel, feeding: FeedingResults, sources: ReadonlyMap<Tag, readonly AcOutput[]>): readonly BusJudged[] {
  const { circuitsOfLoad } = lookup(vessel)
  return [...vessel.panels.map(panel => ({ kind: 'panel', tag: panel.tag })), ...vessel.busbars.map(busbar => ({ kind: 'busbar', tag: busbar.tag }))].flatMap(({ kind, tag }) => {
    const circuits = (circuitsOfLoad.get(tag) ?? []).filter(circuit => (sources.get(circuit.tag) ?? []).length > 0)
    if (circuits.length < 2) return []
    const feeders = circuits.map(circuit => feederOf(vessel, feeding, circuit, tag, sources))
    const outputs = [...new Set(circuits.flatMap(circuit => sources.get(circuit.tag) ?? []))]
    const subject = { kind, id: tag }
    const joined = joinedOf(subject, feeders)
    const alike = alikeOf(subject, outputs)
    return [{ bus: { tag, feeders, joined: joined.requirement, alike: alike.requirement }, findings: [...joined.findings, ...alike.findings] }]
  })
}

function feederOf(vessel: Vessel, feeding: FeedingResults, circuit: Circuit, busTag: Tag, sources: ReadonlyMap<Tag, readonly AcOutput[]>): AcFeeder {
  const { equipment } = lookup(vessel)
  const segments = segmentsTo(feeding.byCircuit.get(circuit.tag)?.segments ?? [], busTag)
  const selectors = segments.flatMap(({ nearTag, farTag }) => [nearTag, farTag]).filter(tag => equipment.get(tag)?.kind === 'source selector')
  return {
    circuitTag: circuit.tag,
    sourceTags: [...new Set((sources.get(circuit.tag) ?? []).map(({ item }) => item.tag))],
    normallyClosed: circuit.normalState === 'closed',
    interlockTags: [...new Set([...(circuit.interlockTag === null ? [] : [circuit.interlockTag]), ...selectors])],
  }
}

interface Subject { readonly kind: string; readonly id: string }
interface Judged { readonly requirement: Requirement; readonly findings: readonly Finding[] }

function joinedOf(subject: Subject, feeders: readonly AcFeeder[]): Judged {
  const pairs = feeders.flatMap((a, i) => feeders.slice(i + 1).map(b => [a, b] as const))
  const loose = pairs.filter(([a, b]) => haveDifferentSources(a, b) && !a.interlockTags.some(tag => b.interlockTags.includes(tag)))
  if (loose.length > 0) {
    const circuits = inWords([...new Set(loose.flat().map(({ circuitTag }) => circuitTag))])
    const sources = inWords([...new Set(loose.flat().flatMap(({ sourceTags }) => sourceTags))])
    return {
      requirement: missed(`nothing keeps ${circuits} from being closed together`),
      findings: [find(sourcesNotInterlocked, { subject, field: null, evidence: {}, limit: null, context: { circuits, sources } })],
    }
  }
  const closed = feeders.filter(({ normallyClosed }) => normallyClosed).map(({ circuitTag }) => circuitTag)
  if (closed.length > 1) return { requirement: doubtful(`${inWords(closed)} are all recorded as normally closed`), findings: [] }
  if (closed.length === 0) return { requirement: doubtful('none of its feeders is recorded as normally closed'), findings: [] }
  const tags = [...new Set(feeders.flatMap(({ interlockTags }) => interlockTags))]
  return { requirement: met(tags.length === 0 ? 'all come from one source' : `${inWords(tags)} ${tags.length === 1 ? 'lets' : 'let'} one be closed at a time`), findings: [] }
}

/** Two feeders of one and the same source may be closed together without two sources meeting. */
const haveDifferentSources = (a: AcFeeder, b: AcFeeder): boolean =>
  a.sourceTags.some(tag => b.sourceTags.some(other => other !== tag))

function alikeOf(subject: Subject, outputs: readonly AcOutput[]): Judged {
  const voltages = outputs.map(({ output }) => output.nominalVoltageV)
  const [lowest, highest] = [Math.min(...voltages), Math.max(...voltages)]
  if (highest > lowest * alikeVoltageFactor) {
    return {
      requirement: missed('its sources differ in voltage'),
      findings: [find(busVoltagesDiffer, { subject, field: null, evidence: { highestVoltageV: highest, lowestVoltageV: lowest }, limit: null })],
    }
  }
  const known = outputs.flatMap(({ output }) => output.frequencyHz ?? [])
  const [least, most] = [Math.min(...known), Math.max(...known)]
  if (known.length > 1 && most !== least) {
    return {
      requirement: doubtful('its sources differ in frequency'),
      findings: [find(busFrequenciesDiffer, { subject, field: null, evidence: { highestFrequencyHz: most, lowestFrequencyHz: least }, limit: null })],
    }
  }
  const missing = outputs.filter(({ output }) => output.frequencyHz === null).map(({ item }) => item.tag)
  return { requirement: missing.length > 0 ? notAssessed(`the frequency of ${inWords(missing)} is not recorded`) : met('its sources are alike in voltage and frequency'), findings: [] }
}

/** Circuits, d.c. ones too, that share an interlock and are recorded as closed together. */
export function interlockFindings(vessel: Vessel): readonly Finding[] {
  const groups = grouped(vessel.circuits, ({ interlockTag }) => (interlockTag === null ? [] : [interlockTag]))
  return [...groups].flatMap(([interlock, circuits]) => {
    const closed = circuits.filter(({ normalState }) => normalState === 'closed').map(({ tag }) => tag)
    if (closed.length < 2) return []
    return [find(severalNormallyClosed, {
      subject: { kind: 'circuit', id: closed[1]! }, field: 'normalState', evidence: {}, limit: null, context: { interlock, others: inWords(closed.filter((_, i) => i !== 1)) },
    })]
  })
}
