/** Every transmitter with its way to the antenna: what is lost on it, what arrives, and whether the antenna suits. */
import { type Finding, find } from '../../findings/finding.js'
import { grouped, isThere, lookup } from '../../model/lookup.js'
import type { AntennaUse, ChainStep, RadioChain } from '../../model/results/radio.js'
import { lossOf } from '../../model/results/radio.js'
import { cableLengthM, type RoutingResults } from '../../model/results.js'
import type { Antenna, Cable, Equipment, Tag, Transmitter, Vessel } from '../../model/vessel.js'
import { aisCableLossPreferred, cableLoss as cableLossLimit } from '../../references/basis/radio-rules.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { usualConnector, usualConnectorCount } from '../../references/tables/coax-attenuation.js'
import { voiceDuty } from '../../references/tables/exposure-limits.js'
import { compare, exceeds } from '../compare.js'
import { runMethod } from '../run-method.js'
import { isAntenna, splitterKind, wayOf, type WayStep } from './antenna-ways.js'
import { attenuationOf } from './attenuation.js'
import { cableLossMethod } from './cable-loss.calc.js'
import { aisLossHigh, antennaNotForFrequency, antennaNotReached, lossAboveLimit, sharedWithoutSplitter } from './findings.js'
import { partOf } from './geometry.js'
import { powerAtAntennaMethod } from './power-at-antenna.calc.js'
import { radiatedPowerMethod } from './radiated-power.calc.js'

export const isAis = ({ service }: Pick<RadioChain, 'service'>): boolean => /\bais\b/i.test(service)

/** Beacons are left out: they send in distress only. */
export function chainsOf(vessel: Vessel, routing: RoutingResults): readonly RadioChain[] {
  return vessel.equipment.filter(item => isThere(item) && item.kind !== ('safety beacon' satisfies EquipmentKindKey)).flatMap(item => item.transmitters.map(transmitter => chainOf(vessel, routing, item, transmitter)))
}

function chainOf(vessel: Vessel, routing: RoutingResults, item: Equipment, transmitter: Transmitter): RadioChain {
  const { service, terminal, powerW, frequencyMHz } = transmitter
  const way = wayOf(vessel, item, transmitter)
  const steps = way.steps.map(step => stepOf(vessel, routing, step, frequencyMHz))
  const losses = steps.map(lossOf)
  const lossDb = way.antenna === null || losses.some(loss => loss === null) ? null : losses.reduce<number>((sum, loss) => sum + loss!, 0)
  const without = (method: string, reason: string) => ({ status: 'not computed', method, reason }) as const
  const power = lossDb === null
    ? without(powerAtAntennaMethod.id, way.gap ?? `the loss on the way is not known: ${lossGaps(steps).join('; ')}`)
    : runMethod(powerAtAntennaMethod, { powerW, lossDb })
  const facts = way.antenna?.antenna ?? null
  const gainDbi = facts?.gainDbi ?? null
  return {
    itemTag: item.tag, service, terminal, powerW, frequencyMHz,
    dutyPercent: transmitter.dutyPercent ?? (/voice/i.test(service) ? voiceDuty.dutyPercent : 100),
    antennaTag: way.antenna?.tag ?? null, antennaGap: way.gap, steps, lossDb,
    comparison: lossDb === null ? null : compare('lossDb', lossDb, cableLossLimit),
    power,
    radiated: power.status === 'not computed' ? without(radiatedPowerMethod.id, power.reason)
      : gainDbi === null ? without(radiatedPowerMethod.id, `the gain of ${way.antenna!.tag} is not recorded`)
        : runMethod(radiatedPowerMethod, { antennaPowerW: power.output.antennaPowerW, gainDbi }),
    coversFrequency: facts === null ? null : covers(facts, frequencyMHz),
  }
}

/** One end of the range is enough to say no, and not enough to say yes. */
function covers({ fromMHz, toMHz }: Antenna, frequencyMHz: number): boolean | null {
  if ((fromMHz !== null && frequencyMHz < fromMHz) || (toMHz !== null && frequencyMHz > toMHz)) return false
  return fromMHz === null || toMHz === null ? null : true
}

function stepOf(vessel: Vessel, routing: RoutingResults, step: WayStep, frequencyMHz: number): ChainStep {
  if (step.is === 'ports') return { is: 'ports', itemTag: step.item.tag, fromTerminal: step.fromTerminal, toTerminal: step.toTerminal, lossDb: step.lossDb }
  const { cable } = step
  const attenuation = attenuationOf(lookup(vessel).cableTypes.get(cable.typeTag ?? '')?.coax ?? null, frequencyMHz)
  return { is: 'cable', cableTag: cable.tag, attenuation, loss: lossOfCable(cable, attenuation, cableLengthM(routing.byCable.get(cable.tag))) }
}

function lossOfCable({ connectorCount }: Cable, attenuation: Extract<ChainStep, { is: 'cable' }>['attenuation'], lengthM: number | null) {
  const without = (reason: string) => ({ status: 'not computed', method: cableLossMethod.id, reason }) as const
  if (attenuation.status === 'not computed') return without(attenuation.reason)
  if (lengthM === null) return without('its length is not known')
  const attenuationDbPer100M = attenuation.status === 'stated' ? attenuation.attenuationDbPer100M : attenuation.output.attenuationDbPer100M
  return runMethod(cableLossMethod, { attenuationDbPer100M, cableLengthM: lengthM, connectorCount: connectorCount ?? usualConnectorCount, perConnectorDb: usualConnector.lossDb })
}

/** Why the loss of a way is not known, step by step. */
export const lossGaps = (steps: readonly ChainStep[]): readonly string[] => steps.flatMap(step => (
  step.is === 'ports' ? (step.lossDb === null ? [`${step.itemTag} has no loss on record from ${step.fromTerminal} to ${step.toTerminal}`] : [])
    : step.loss.status === 'not computed' ? [`${step.cableTag}: ${step.loss.reason}`] : []))

// --- antennas --------------------------------------------------------------------------------------------------------
const vhfBand = { fromMHz: 100, toMHz: 500 } as const

/** Every antenna that is there: with a record, of an antenna's kind, or reached by a transmitter. */
export function antennasOf(vessel: Vessel, chains: readonly RadioChain[]): readonly AntennaUse[] {
  const serving = grouped(chains, ({ antennaTag }) => (antennaTag === null ? [] : [antennaTag]))
  return vessel.equipment.filter(item => isThere(item) && (isAntenna(item) || serving.has(item.tag) || isReceiverWithAntenna(vessel, item)) && !isScanner(item)).map((item): AntennaUse => {
    const users = serving.get(item.tag) ?? []
    const splitters = users.flatMap(({ steps }) => steps.flatMap(step => (step.is === 'ports' && isSplitting(lookup(vessel).equipment.get(step.itemTag)) ? [step.itemTag] : [])))
    return {
      tag: item.tag, use: useOf(item, users), servesTags: [...new Set(users.map(({ itemTag }) => itemTag))],
      splitterTags: users.length > 1 ? [...new Set(splitters)] : [], part: partOf(item),
    }
  })
}

export const isScanner = ({ kind, radar }: Equipment): boolean => kind === ('radar scanner' satisfies EquipmentKindKey) || radar !== null
/** A splitter, or what has losses between three connectors or more. */
const isSplitting = (item: Equipment | undefined): boolean =>
  item !== undefined && (item.kind === splitterKind || new Set(item.portLosses.flatMap(({ fromTerminal, toTerminal }) => [fromTerminal, toTerminal])).size > 2)

/** A GNSS receiver stands under the sky itself unless a cable leads from it to an antenna. */
function isReceiverWithAntenna(vessel: Vessel, { tag, kind }: Equipment): boolean {
  if (kind !== ('gnss receiver' satisfies EquipmentKindKey)) return false
  const { cablesAt, equipment } = lookup(vessel)
  return !(cablesAt.get(tag) ?? []).some(cable => isThere(cable) && [cable.from, cable.to].some(end => end.tag !== tag && equipment.get(end.tag)?.kind === 'gnss antenna'))
}

function useOf({ kind }: Equipment, users: readonly RadioChain[]): AntennaUse['use'] {
  if (kind === 'gnss antenna' || kind === 'gnss receiver') return 'gnss'
  if (kind === 'satellite antenna') return 'satellite'
  const inBand = users.some(({ frequencyMHz }) => frequencyMHz >= vhfBand.fromMHz && frequencyMHz <= vhfBand.toMHz)
  return kind === 'vhf antenna' || inBand ? 'vhf' : 'other'
}

// --- findings --------------------------------------------------------------------------------------------------------
export const chainFindings = (vessel: Vessel, chains: readonly RadioChain[]): readonly Finding[] => [
  ...chains.flatMap(chain => [...reachFindings(chain), ...lossFindings(chain), ...frequencyFindings(vessel, chain)]),
  ...sharingFindings(vessel, chains),
]

const about = ({ itemTag }: RadioChain) => ({ subject: { kind: 'equipment', id: itemTag }, field: 'transmitters', evidence: {}, limit: null })

const reachFindings = (chain: RadioChain): readonly Finding[] => (chain.antennaGap === null ? [] : [
  find(antennaNotReached, { ...about(chain), context: { service: chain.service, gap: chain.antennaGap } }),
])

function lossFindings(chain: RadioChain): readonly Finding[] {
  const { lossDb, antennaTag, service, power, powerW } = chain
  if (lossDb === null || power.status === 'not computed') return []
  const facts = { ...about(chain), context: { service, antenna: antennaTag! } }
  if (exceeds(lossDb, cableLossLimit)) return [find(lossAboveLimit, { ...facts, evidence: { lossDb, powerW, antennaPowerW: power.output.antennaPowerW }, limit: cableLossLimit })]
  return isAis(chain) && exceeds(lossDb, aisCableLossPreferred) ? [find(aisLossHigh, { ...facts, evidence: { lossDb }, limit: aisCableLossPreferred })] : []
}

function frequencyFindings(vessel: Vessel, chain: RadioChain): readonly Finding[] {
  const { antennaTag, frequencyMHz, coversFrequency, service, itemTag } = chain
  const facts = antennaTag === null ? null : lookup(vessel).equipment.get(antennaTag)?.antenna ?? null
  if (coversFrequency !== false || facts === null) return []
  const [relation, value] = facts.fromMHz !== null && frequencyMHz < facts.fromMHz ? ['at least', facts.fromMHz] as const : ['at most', facts.toMHz!] as const
  return [find(antennaNotForFrequency, {
    subject: { kind: 'equipment', id: antennaTag! }, field: 'antenna', evidence: { frequencyMHz },
    limit: { relation, value, citation: { source: 'makers-data', place: 'range of frequencies of the antenna' } }, context: { service, transmitter: itemTag },
  })]
}

/** Two transmitters that reach one antenna without anything that keeps one's power out of the other. */
function sharingFindings(vessel: Vessel, chains: readonly RadioChain[]): readonly Finding[] {
  const { equipment } = lookup(vessel)
  const onOne = grouped(chains, ({ antennaTag }) => (antennaTag === null ? [] : [antennaTag]))
  return [...onOne].flatMap(([antennaTag, users]) => {
    const loose = users.filter((user, i) => users.some((other, j) => i !== j && !meetAtSplitter(user, other, tag => equipment.get(tag))))
    const tags = [...new Set(loose.map(({ itemTag }) => itemTag))]
    // Two services of one radio are its own affair.
    return tags.length < 2 ? [] : [find(sharedWithoutSplitter, {
      subject: { kind: 'equipment', id: antennaTag }, field: null, evidence: {}, limit: null, context: { transmitters: tags.join(' and ') },
    })]
  })
}

function meetAtSplitter(a: RadioChain, b: RadioChain, itemOf: (tag: Tag) => Equipment | undefined): boolean {
  const portsOf = ({ steps }: RadioChain): readonly Tag[] => steps.flatMap(step => (step.is === 'ports' ? [step.itemTag] : []))
  const others = new Set(portsOf(b))
  return portsOf(a).some(tag => others.has(tag) && isSplitting(itemOf(tag)))
}
