/** Power over the network cable: what each device asks and takes, what the switch has left. */
import { type Finding, find, type Limit } from '../../findings/finding.js'
import { inWords } from '../../findings/words.js'
import { lookup } from '../../model/lookup.js'
import type { Outcome } from '../../model/results.js'
import type { FreePowerPort, LinkEnd, NetworkPower, PortUse, PowerFeed } from '../../model/results/ethernet.js'
import type { Gap } from '../../model/results/gap.js'
import type { Equipment, Tag, Vessel } from '../../model/vessel.js'
import {
  type PowerClass, powerClassCitation, powerClasses, powerClassOf, powerTypes, sourceVoltageCitation, usualSourceVoltageV,
} from '../../references/tables/poe-classes.js'
import { exceeds } from '../compare.js'
import { runMethod } from '../run-method.js'
import { converterInputMethod } from '../sources/converter-input.calc.js'
import { usualEfficiencyPercent } from '../sources/efficiency.js'
import type { Upstream } from '../upstream.js'
import { drawnPowerAboveBudget, portPowerTooLow, powerAboveClass, powerVoltageLow, reservedPowerAboveBudget } from './findings.js'
import type { BareLink } from './links.js'
import { networkPowerMethod } from './network-power.calc.js'
import type { Part } from './part.js'
import { powerMarginMethod } from './power-margin.calc.js'

export const budgetSource = { source: 'makers-data', place: 'power budget of the switch' } as const

export function powerPart(
  vessel: Vessel, { feeding }: Upstream, links: readonly BareLink[], ports: ReadonlyMap<Tag, readonly PortUse[]>,
): Part<ReadonlyMap<Tag, NetworkPower>> {
  const suppliers = suppliersOf(vessel)
  const lines = links.flatMap(link => linesOf(suppliers, link))
  const supplied = new Map([...suppliers.values()].flatMap((item): [Tag, NetworkPower][] => {
    const feeds = lines.filter(line => line.near.tag === item.tag).flatMap(line => feedOf(vessel, item, line) ?? [])
    const offers = item.powerBudgetW !== null || (ports.get(item.tag) ?? []).some(({ powerClass }) => powerClass !== null)
    return feeds.length === 0 && !offers ? [] : [[item.tag, powerOf(vessel, feeding, item, feeds, ports.get(item.tag) ?? [])]]
  }))
  return {
    value: supplied,
    findings: [...lines.flatMap(line => lineFindings(vessel, line)), ...[...supplied.values()].flatMap(power => supplierFindings(suppliers.get(power.tag)!, power))],
    notAssessed: [
      ...[...supplied.values()].flatMap(power => gapsOf(suppliers.get(power.tag)!, power)),
      ...links.filter(link => eachHasClass(link) && link.ends.every(({ tag }) => !suppliers.has(tag)))
        .map(({ tag }) => ({ subjectTag: tag, reason: 'power over the cable: which end supplies the other is not known; record the power budget of the one that does' })),
    ],
  }
}

/** At these the class of a port is what it gives; at all others what it asks. */
function suppliersOf(vessel: Vessel): ReadonlyMap<Tag, Equipment> {
  const switchTags = new Set(vessel.ethernetNetworks.flatMap(network => network.switchTags))
  return new Map(vessel.equipment.filter(({ tag, kind, status, powerBudgetW }) => status !== 'removed' && (kind === 'network switch' || switchTags.has(tag) || powerBudgetW !== null))
    .map(item => [item.tag, item]))
}

/** A link by which one end may supply the other. */
interface Line { readonly link: BareLink; readonly near: LinkEnd; readonly far: LinkEnd }

/** What asks for power of something that supplies nobody gets none. */
function linesOf(suppliers: ReadonlyMap<Tag, Equipment>, link: BareLink): readonly Line[] {
  const [a, b] = link.ends
  const [line, back]: readonly [Line, Line] = [{ link, near: a, far: b }, { link, near: b, far: a }]
  if (suppliers.has(a.tag) !== suppliers.has(b.tag)) return [suppliers.has(a.tag) ? line : back]
  if (suppliers.has(a.tag) || eachHasClass(link)) return []
  return [line, back].filter(({ far }) => far.powerClass !== null)
}
const eachHasClass = ({ ends }: BareLink): boolean => ends.every(({ powerClass }) => powerClass !== null)

const hasCircuit = (vessel: Vessel, tag: Tag): boolean => (lookup(vessel).circuitsOfLoad.get(tag) ?? []).length > 0

/** Null where the device does not live on the port. What a port cannot give in full is a finding, and counts as what it can give. */
function feedOf(vessel: Vessel, item: Equipment, { link, near, far }: Line): PowerFeed | null {
  const device = lookup(vessel).equipment.get(far.tag)
  const offered = powerClassOf(near.powerClass)
  const asked = powerClassOf(far.powerClass)
  if (offered === null) return null
  if (asked === null && device?.networkPowerW == null) return device === undefined || hasCircuit(vessel, device.tag) ? null : unknownFeed(link, near, device.tag, offered)
  const given = asked === null ? offered : lesser(asked, offered)
  const { sourceMinV, loopOhmPerM } = powerTypes[given.type]
  const recordedW = device?.networkPowerW ?? null
  return {
    portName: near.portName, deviceTag: far.tag, linkTag: link.tag, offeredClass: offered.classNumber, askedClass: asked?.classNumber ?? null,
    reservedPowerW: asked === null ? null : given.sourcePowerW,
    byClass: recordedW === null,
    power: link.length.status === 'not computed' ? { ...link.length, method: networkPowerMethod.id } : runMethod(networkPowerMethod, {
      devicePowerW: recordedW ?? given.devicePowerW,
      portVoltageV: item.powerVoltageV ?? Math.max(usualSourceVoltageV, sourceMinV),
      channelLengthM: link.length.output.channelLengthM, loopResistanceOhmPerM: loopOhmPerM, pairSetCount: given.pairCount / 2,
    }),
  }
}

/** What has no circuit lives on the port that could feed it, as far as is recorded; it must not leave the budget as if it took nothing. */
const unknownFeed = ({ tag }: BareLink, { portName }: LinkEnd, deviceTag: Tag, { classNumber }: PowerClass): PowerFeed => ({
  portName, deviceTag, linkTag: tag, offeredClass: classNumber, askedClass: null, reservedPowerW: null, byClass: true,
  power: { status: 'not computed', method: networkPowerMethod.id, reason: 'it has no circuit, and neither its power class nor what it takes is recorded' },
})

const lesser = (a: PowerClass, b: PowerClass): PowerClass => (b.sourcePowerW < a.sourcePowerW ? b : a)

function powerOf(vessel: Vessel, feeding: Upstream['feeding'], item: Equipment, feeds: readonly PowerFeed[], ports: readonly PortUse[]): NetworkPower {
  const reservedPowerW = sumOf(feeds.map(feed => feed.reservedPowerW))
  const drawnPowerW = sumOf(feeds.map(({ power }) => (power.status === 'computed' ? power.output.portPowerW : null)))
  const reservedMargin = marginOf(item, reservedPowerW, 'reserved')
  return {
    tag: item.tag, feeds, voltageRecorded: item.powerVoltageV !== null, reservedPowerW, drawnPowerW, reservedMargin,
    drawnMargin: marginOf(item, drawnPowerW, 'drawn'),
    freePorts: ports.filter(({ cables }) => cables.length === 0).map(port => freePort(port, reservedMargin)),
    supply: supplyOf(vessel, feeding, item),
  }
}

const sumOf = (parts: readonly (number | null)[]): number | null =>
  parts.reduce<number | null>((sum, part) => (sum === null || part === null ? null : sum + part), 0)

function marginOf({ tag, powerBudgetW }: Equipment, takenPowerW: number | null, what: 'reserved' | 'drawn'): NetworkPower['reservedMargin'] {
  const missing = powerBudgetW === null ? `the power budget of ${tag} is not recorded`
    : takenPowerW === null ? `what its devices ${what === 'reserved' ? 'reserve' : 'take'} is not known of all` : null
  return missing !== null ? { status: 'not computed', method: powerMarginMethod.id, reason: missing }
    : runMethod(powerMarginMethod, { powerBudgetW: powerBudgetW ?? 0, takenPowerW: takenPowerW ?? 0 })
}

function freePort({ name, powerClass }: PortUse, reservedMargin: NetworkPower['reservedMargin']): FreePowerPort {
  const offered = powerClassOf(powerClass)
  if (offered === null || reservedMargin.status === 'not computed') return { name, offeredClass: powerClass, fittingClass: null, known: offered === null }
  const limit: Limit = { relation: 'at most', value: Math.max(0, reservedMargin.output.marginPowerW), citation: budgetSource }
  // Of two classes of one power the later: class 3, which says what it takes, before class 0.
  const fitting = powerClasses.filter(each => each.sourcePowerW <= offered.sourcePowerW && !exceeds(each.sourcePowerW, limit))
    .reduce<PowerClass | null>((best, each) => (best === null || each.sourcePowerW >= best.sourcePowerW ? each : best), null)
  return { name, offeredClass: powerClass, fittingClass: fitting?.classNumber ?? null, known: true }
}

function supplyOf(vessel: Vessel, feeding: Upstream['feeding'], item: Equipment): NetworkPower['supply'] {
  const missing = (reason: string): Outcome<never, never> => ({ status: 'not computed', method: converterInputMethod.id, reason })
  const voltages = (lookup(vessel).circuitsOfLoad.get(item.tag) ?? []).map(({ tag }) => feeding.byCircuit.get(tag)?.nominalVoltageV ?? null).filter(voltage => voltage !== null)
  if (item.powerBudgetW === null) return missing(`the power budget of ${item.tag} is not recorded`)
  if (voltages.length === 0) return missing(`the voltage of the circuit of ${item.tag} is not known`)
  return runMethod(converterInputMethod, { outputPowerW: item.powerBudgetW, inputVoltageV: Math.min(...voltages), efficiencyPercent: item.efficiencyPercent ?? usualEfficiencyPercent })
}

// --- findings --------------------------------------------------------------------------------------------------------
function lineFindings(vessel: Vessel, { near, far }: Line): readonly Finding[] {
  const device = lookup(vessel).equipment.get(far.tag)
  const [offered, asked] = [powerClassOf(near.powerClass), powerClassOf(far.powerClass)]
  if (device === undefined || asked === null) return []
  const about = { subject: { kind: 'equipment', id: device.tag } }
  const given = (offered?.sourcePowerW ?? 0) >= asked.sourcePowerW
  const allowed: Limit = { relation: 'at most', value: asked.devicePowerW, citation: powerClassCitation }
  return [
    // What has a circuit of its own does not live on the port.
    ...(given || near.portName === null || hasCircuit(vessel, device.tag) ? [] : [find(portPowerTooLow, {
      ...about, field: null, evidence: { offeredPowerW: offered?.devicePowerW ?? 0, askedPowerW: asked.devicePowerW },
      limit: { relation: 'at least', value: asked.devicePowerW, citation: powerClassCitation },
      context: { asked: String(asked.classNumber), port: near.portName, switch: near.tag, ...(offered === null ? {} : { offered: String(offered.classNumber) }) },
    })]),
    ...(device.networkPowerW === null || !exceeds(device.networkPowerW, allowed) ? [] : [find(powerAboveClass, {
      ...about, field: 'networkPowerW', evidence: { networkPowerW: device.networkPowerW }, limit: allowed, context: { asked: String(asked.classNumber) },
    })]),
  ]
}

function supplierFindings(item: Equipment, power: NetworkPower): readonly Finding[] {
  const about = { subject: { kind: 'equipment', id: item.tag } }
  const budget: Limit | null = item.powerBudgetW === null ? null : { relation: 'at most', value: item.powerBudgetW, citation: budgetSource }
  const above = (takenPowerW: number | null): takenPowerW is number => budget !== null && takenPowerW !== null && exceeds(takenPowerW, budget)
  const highest = item.ports.flatMap(port => powerClassOf(port.kind === 'ethernet' ? port.powerClass : null) ?? []).toSorted((a, b) => b.type - a.type || b.classNumber - a.classNumber)[0]
  const least: Limit | null = highest === undefined ? null : { relation: 'at least', value: powerTypes[highest.type].sourceMinV, citation: sourceVoltageCitation }
  return [
    ...(above(power.drawnPowerW) ? [find(drawnPowerAboveBudget, { ...about, field: 'powerBudgetW', evidence: { drawnPowerW: power.drawnPowerW }, limit: budget })]
      : above(power.reservedPowerW) ? [find(reservedPowerAboveBudget, { ...about, field: 'powerBudgetW', evidence: { reservedPowerW: power.reservedPowerW }, limit: budget })] : []),
    ...(highest === undefined || least === null || item.powerVoltageV === null || !exceeds(item.powerVoltageV, least) ? [] : [find(powerVoltageLow, {
      ...about, field: 'powerVoltageV', evidence: { powerVoltageV: item.powerVoltageV }, limit: least, context: { offered: String(highest.classNumber) },
    })]),
  ]
}

function gapsOf({ tag, powerBudgetW }: Equipment, { feeds, freePorts }: NetworkPower): readonly Gap[] {
  const unknownClass = feeds.filter(({ askedClass }) => askedClass === null).map(({ deviceTag }) => deviceTag)
  return [
    ...(powerBudgetW === null && (feeds.length > 0 || freePorts.some(({ offeredClass }) => offeredClass !== null)) ? [{ subjectTag: tag, reason: 'power left at its ports: its power budget is not recorded' }] : []),
    ...(unknownClass.length > 0 ? [{ subjectTag: tag, reason: `power left at its ports: the class that ${inWords(unknownClass)} ${unknownClass.length === 1 ? 'asks' : 'ask'} for is not recorded` }] : []),
    ...feeds.flatMap(({ deviceTag, power }) => (power.status === 'not computed' ? [{ subjectTag: deviceTag, reason: `power over its network cable: ${power.reason}` }] : [])),
  ]
}
