/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import { type AcSource, type AcSupplyResults, clockTime, type ModeLoad, type Requirement, type ResidualDevice } from '../../model/results/ac-supply.js'
import type { Vessel } from '../../model/vessel.js'
import { type AcRules, acRules, workingShare } from '../../references/basis/ac-rules.js'
import type { Basis } from '../../references/basis/basis.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { runMethod } from '../run-method.js'
import type { Upstream } from '../upstream.js'
import { acSourceDataMissing, connectedLoadAboveRating, modeLoadAboveRating } from './findings.js'
import { connectedLoadOf, consumersOf, modeLoadsOf, type SourceTags } from './loads.js'
import { devicesOnWay, socketChecks } from './residual-current.js'
import { neutralOf, shoreChecks } from './shore-inlet.js'
import { sourceRatingMethod } from './source-rating.calc.js'
import { type AcOutput, acOutputsOf, sourcesByCircuit, suppliedBy, type SuppliedCircuit } from './supplied.js'
import { busesOf, interlockFindings } from './switching.js'
import { groupsThatFit } from './together.js'

export function acSupplyPass(vessel: Vessel, basis: Basis, before: Upstream): AcSupplyResults {
  const rules = acRules[basis.id]
  const outputs = acOutputsOf(vessel)
  const supplied = new Map(outputs.map(output => [output, suppliedBy(vessel, output, { beyond: false })]))
  const carried = new Map(outputs.map(output => [output, suppliedBy(vessel, output, { beyond: true })]))
  const sources = outputs.map(output => sourceOf(vessel, rules, before, output, { supplied: supplied.get(output)!, carried }))
  const buses = busesOf(vessel, before.feeding, sourcesByCircuit(supplied))
  const sockets = socketChecks(vessel, before.feeding, rules, supplied)
  const silent = sourcesWithoutData(vessel)
  return {
    sources: sources.map(({ source }) => source),
    buses: buses.map(({ bus }) => bus),
    sockets: sockets.map(({ check }) => check),
    residualDevices: residualDevicesIn(vessel, before, [...supplied.values()].flat()),
    notAssessed: [
      ...silent.map(({ subject }) => ({ subjectTag: subject.id, reason: 'its a.c. output is not recorded' })),
      ...sources.flatMap(({ source }) => gapsOf(vessel, source)),
      ...buses.flatMap(({ bus }) => gap(bus.tag, 'sources of one kind', bus.alike)),
      ...sockets.flatMap(({ check }) => gap(check.tag, 'residual-current protection', check.check)),
    ],
    findings: [...silent, ...sources.flatMap(({ findings }) => findings), ...buses.flatMap(({ findings }) => findings), ...sockets.flatMap(({ findings }) => findings), ...interlockFindings(vessel)],
  }
}

function sourceOf(
  vessel: Vessel, rules: AcRules, before: Upstream, from: AcOutput,
  { supplied, carried }: { readonly supplied: readonly SuppliedCircuit[]; readonly carried: ReadonlyMap<AcOutput, readonly SuppliedCircuit[]> },
): { readonly source: AcSource; readonly findings: readonly Finding[] } {
  const { item, output } = from
  const { nominalVoltageV, frequencyHz, ratedCurrentA } = output
  const subject = { kind: 'equipment', id: item.tag }
  const limit: Limit | null = ratedCurrentA === null ? null : { relation: 'at most', value: ratedCurrentA, citation: ratingCitation }
  const consumers = consumersOf(vessel, before.feeding, carried.get(from)!)
  const connected = connectedLoadOf(from, consumers, limit)
  const modes = modeLoadsOf(vessel, from, consumers, sourceTagsOf(from, carried), limit)
  const neutral = neutralOf(from)
  const shore = item.kind !== 'shore inlet' ? null : shoreChecks({
    vessel, feeding: before.feeding, lengths: before.routing.byCable, rules, inletTag: item.tag, supplied,
  }, from)
  const rating: AcSource['rating'] = ratedCurrentA === null
    ? { status: 'not computed', method: sourceRatingMethod.id, reason: 'its rated current is not recorded' }
    : runMethod(sourceRatingMethod, { nominalVoltageV, ratedCurrentA, shareFactor: workingShare.shareFactor })
  const source: AcSource = {
    tag: item.tag, terminal: output.terminal, kind: item.kind, nominalVoltageV, frequencyHz, ratedCurrentA, rating,
    circuitTags: supplied.map(({ circuit }) => circuit.tag), connected, modes,
    together: rating.status === 'computed' ? groupsThatFit(consumers, rating.output.workingPowerVa) : null, neutral: neutral.requirement, shore: shore?.checks ?? null,
  }
  const overRating = limit === null ? [] : modes.flatMap(mode => modeFindings(vessel, subject, mode, limit))
  return {
    source,
    findings: [
      ...(ratedCurrentA === null ? [find(acSourceDataMissing, { subject, field: 'outputs', evidence: {}, limit: null, context: { missing: 'its rated current is not recorded' } })] : []),
      ...overRating,
      ...(modes.length === 0 && connected.comparison?.within === false
        ? [find(connectedLoadAboveRating, { subject, field: 'outputs', evidence: { connectedCurrentA: connected.comparison.value }, limit })] : []),
      ...neutral.findings,
      ...shore?.findings ?? [],
    ],
  }
}

const ratingCitation = { source: 'common-practice', place: 'rated current as its maker states it' } as const

/** What runs a source: itself, and of what only passes on the sources before it. */
function sourceTagsOf(from: AcOutput, carried: ReadonlyMap<AcOutput, readonly SuppliedCircuit[]>): SourceTags {
  const before = [...carried].filter(([source, circuits]) => source === from || circuits.some(({ circuit }) => circuit.fedFromTag === from.item.tag))
  return { own: new Set(before.map(([{ item }]) => item.tag)), all: new Set([...carried.keys()].map(({ item }) => item.tag)) }
}

function modeFindings(vessel: Vessel, subject: { readonly kind: string; readonly id: string }, { modeTag, running, largest, largestFromH, largestToH }: ModeLoad, limit: Limit): readonly Finding[] {
  if (!running || largest.comparison?.within !== false) return []
  const mode = vessel.operatingModes.find(({ tag }) => tag === modeTag)?.name ?? modeTag
  const hours = `${clockTime(largestFromH)} to ${clockTime(largestToH)}`
  return [find(modeLoadAboveRating, { subject, field: 'outputs', evidence: { connectedCurrentA: largest.comparison.value }, limit, context: { mode, hours } })]
}

const acKinds: ReadonlySet<string> = new Set<EquipmentKindKey>(['shore inlet', 'generator', 'inverter', 'inverter charger', 'isolation transformer'])

/** What must be an a.c. source by its kind, and says nothing of what it gives. */
const sourcesWithoutData = (vessel: Vessel): readonly Finding[] =>
  vessel.equipment.filter(({ kind, outputs, status }) => acKinds.has(kind) && status !== 'removed' && outputs.length === 0).map(({ tag }) => find(acSourceDataMissing, {
    subject: { kind: 'equipment', id: tag }, field: 'outputs', evidence: {}, limit: null, context: { missing: 'what it gives is not recorded' },
  }))

/** Every residual-current device of the a.c. system once, sockets with one inside as well. */
function residualDevicesIn(vessel: Vessel, { feeding }: Upstream, supplied: readonly SuppliedCircuit[]): readonly ResidualDevice[] {
  const { equipment } = lookup(vessel)
  const found = supplied.flatMap(({ circuit }) => circuit.loadTags.flatMap((tag): readonly ResidualDevice[] => {
    const socket = equipment.get(tag)
    const own = socket?.kind === 'socket' && socket.residualCurrentA !== null ? [{ tag, circuitTag: circuit.tag, residualCurrentA: socket.residualCurrentA, tripTimeMs: socket.tripTimeMs }] : []
    return [...devicesOnWay(vessel, feeding, [circuit], tag), ...own]
  }))
  return [...new Map(found.map(device => [device.tag, device])).values()]
}

// --- what is not assessed --------------------------------------------------------------------------------------------
type Gap = AcSupplyResults['notAssessed'][number]
const gap = (subjectTag: string, what: string, { state, words }: Requirement): readonly Gap[] =>
  (state === 'not assessed' ? [{ subjectTag, reason: `${what}: ${words}` }] : [])

function gapsOf(vessel: Vessel, { tag, rating, connected, modes, neutral, shore }: AcSource): readonly Gap[] {
  const tooSmall = [...new Set([connected, ...modes.map(({ largest }) => largest)].flatMap(({ unknownTags }) => unknownTags))]
  const mains = shore?.mains ?? []
  return [
    ...(rating.status === 'not computed' ? [{ subjectTag: tag, reason: `loads against its rating: ${rating.reason}` }] : []),
    ...tooSmall.map(unknown => ({ subjectTag: unknown, reason: `loads of ${tag}: its current is not known` })),
    ...(vessel.operatingModes.length > 0 && modes.length === 0 ? [{ subjectTag: tag, reason: 'loads by operating mode: no duty names what runs from it' }] : []),
    ...gap(tag, 'joint of neutral and protective conductor', neutral),
    ...(shore === null ? [] : [
      ...gap(tag, 'polarity', shore.polarity),
      ...(mains.length === 0 ? [{ subjectTag: tag, reason: 'main shore breaker: no circuit is fed from it' }] : []),
      ...mains.flatMap(({ circuitTag, rating: breaker, distance, poles, residualCurrent }) => [
        ...gap(circuitTag, 'rating of the main shore breaker', breaker), ...gap(circuitTag, 'distance from the inlet', distance),
        ...gap(circuitTag, 'poles of the main shore breaker', poles), ...gap(circuitTag, 'residual-current protection', residualCurrent),
      ]),
    ]),
  ]
}
