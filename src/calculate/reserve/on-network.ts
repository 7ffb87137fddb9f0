/** Where on the Ethernet networks one more device could go: every switch, the nearest first, with the port, the power and the address. */
import { lookup } from '../../model/lookup.js'
import { type CableRun, cableLengthM, type Comparison, type Results } from '../../model/results.js'
import type { EthernetLink, NetworkPower, PortUse, PowerFeed } from '../../model/results/ethernet.js'
import type { ReserveVerdict } from '../../model/results/reserve.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { powerClassOf } from '../../references/tables/poe-classes.js'
import { sayAgainst, sayAgainstBoth } from '../../units/format.js'
import { compare } from '../compare.js'
import { budgetSource } from '../ethernet/power.js'
import type { Place } from '../wireways/places.js'
import { feedOfNew, type WithNetworkDevice, withNetworkDevice } from './new-network-device.js'
import { placeFor } from './place-named.js'
import { verdictBy } from './verdicts.js'

export interface NetworkRequest {
  readonly atTag: Tag
  /** That it asks of its port; null: a port without power will do. */
  readonly powerClass: number | null
}

export interface SwitchAnswer {
  readonly switchTag: Tag
  readonly networkTag: Tag
  readonly verdict: ReserveVerdict
  readonly reasons: readonly string[]
  readonly freePorts: readonly PortUse[]
  /** The one that is meant; null where none is free. */
  readonly port: PortUse | null
  readonly run: CableRun | null
  readonly length: Comparison | null
  /** Null where it asks for none, or the switch gives none. */
  readonly power: SwitchPower | null
  readonly address: { readonly subnet: string | null; readonly nextFree: string | null; readonly freeCount: number | null; readonly isGiven: boolean }
}
export interface SwitchPower {
  readonly before: Pick<NetworkPower, 'reservedMargin' | 'drawnMargin'>
  readonly after: Pick<NetworkPower, 'reservedMargin' | 'drawnMargin'>
  /** Of the new device. */
  readonly feed: PowerFeed | null
}

/** Every switch of every network, the nearest first. */
export function onNetworks(vessel: Vessel, basis: Basis, results: Results, request: NetworkRequest): readonly SwitchAnswer[] {
  const at = placeFor(vessel, request.atTag)
  const { items } = lookup(vessel)
  return vessel.ethernetNetworks.flatMap(({ tag: networkTag, switchTags }) =>
    switchTags.filter(tag => items.has(tag) && items.get(tag)!.status !== 'removed').map(switchTag => atSwitch({ vessel, basis, results, request, at }, networkTag, switchTag)))
    .toSorted((a, b) => lengthOf(a) - lengthOf(b))
}
const lengthOf = ({ run }: SwitchAnswer): number => (run === null ? null : cableLengthM(run)) ?? Number.MAX_VALUE

interface Asked {
  readonly vessel: Vessel
  readonly basis: Basis
  readonly results: Results
  readonly request: NetworkRequest
  readonly at: Place
}

function atSwitch({ vessel, basis, results, request, at }: Asked, networkTag: Tag, switchTag: Tag): SwitchAnswer {
  const { powerClass } = request
  const ports = results.ethernet.ports.get(switchTag)
  const freePorts = (ports ?? []).filter(({ cables }) => cables.length === 0)
  const address = addressOn(vessel, results, networkTag)
  const bare = { switchTag, networkTag, freePorts, port: null, run: null, length: null, power: null, address }
  if (ports === undefined) return { ...bare, ...verdictBy([], ['its ports are not recorded']) }
  const port = portFor(freePorts, powerClass)
  if (port === null) return { ...bare, ...verdictBy(['no port is free'], []) }
  const added = withNetworkDevice(vessel, basis, results, { switchTag, port, at, powerClass, address: address.nextFree })
  const before = results.ethernet.power.get(switchTag) ?? null
  const power = powerClass === null || before === null || added.power === null ? null : { before: marginsOf(before), after: marginsOf(added.power), feed: feedOfNew(added.power) }
  const against = [...lengthAgainst(added.link), ...(powerClass === null ? [] : powerAgainst(port, powerClass, power)), ...addressAgainst(address), ...besidesOf(added)]
  return { ...bare, port, run: added.run, length: added.link?.lengthComparison ?? null, power, ...verdictBy(against, unknownOf(added, power)) }
}

const marginsOf = ({ reservedMargin, drawnMargin }: NetworkPower): SwitchPower['before'] => ({ reservedMargin, drawnMargin })
const wattsOf = ({ powerClass }: PortUse): number => powerClassOf(powerClass)?.sourcePowerW ?? 0

/** The one that gives least of those that give enough; where none does, the one that gives most. */
function portFor(freePorts: readonly PortUse[], powerClass: number | null): PortUse | null {
  const byPower = freePorts.toSorted((a, b) => wattsOf(a) - wattsOf(b))
  const asked = powerClassOf(powerClass)?.sourcePowerW ?? 0
  return byPower.find(port => wattsOf(port) >= asked) ?? byPower.at(-1) ?? null
}

function addressOn(vessel: Vessel, { ethernet }: Results, networkTag: Tag): SwitchAnswer['address'] {
  const addresses = ethernet.networks.get(networkTag)?.addresses
  const free = addresses?.free
  return {
    subnet: addresses?.subnet ?? null, nextFree: addresses?.nextFree ?? null, freeCount: free?.status === 'computed' ? free.output.freeCount : null,
    isGiven: lookup(vessel).ethernetNetworks.get(networkTag)?.dynamicRange != null,
  }
}

function lengthAgainst(link: EthernetLink | null): readonly string[] {
  const held = link?.lengthComparison ?? null
  if (held === null || held.within) return []
  const { actual, limit } = sayAgainstBoth('channelLengthM', held.value, held.limit.value)
  return [`the cable would be ${actual} long, limit ${limit}`]
}

function powerAgainst({ name, powerClass: offered }: PortUse, asked: number, power: SwitchPower | null): readonly string[] {
  const [given, needed] = [powerClassOf(offered), powerClassOf(asked)]
  if (needed !== null && (given?.sourcePowerW ?? 0) < needed.sourcePowerW) {
    return [given === null ? 'no free port gives power' : `no free port gives class ${asked}; the most is class ${given.classNumber}, at port ${name}`]
  }
  if (power === null) return []
  return (['reserved', 'drawn'] as const).flatMap(what => {
    const margin = power.after[`${what}Margin`]
    if (margin.status !== 'computed') return []
    const held = compare('takenPowerW', margin.input.takenPowerW, { relation: 'at most', value: margin.input.powerBudgetW, citation: budgetSource })
    const { actual, limit } = sayAgainst('takenPowerW', held.value, held.limit.value)
    return held.within ? [] : [what === 'reserved' ? `the classes on its ports would reserve ${actual}, power budget ${limit}` : `its devices would take ${actual}, power budget ${limit}`]
  })
}

const addressAgainst = ({ subnet, nextFree, freeCount, isGiven }: SwitchAnswer['address']): readonly string[] =>
  (subnet !== null && nextFree === null && freeCount !== null && !isGiven ? [`no address of ${subnet} is free`] : [])

const besidesOf = ({ besides }: WithNetworkDevice): readonly string[] => besides.map(({ message }) => `elsewhere a limit would be passed: ${message}`)

function unknownOf({ run, link }: WithNetworkDevice, power: SwitchPower | null): readonly string[] {
  const length = run.length.status === 'not computed' ? [`the length of the cable: ${run.length.reason}`] : link?.length.status === 'not computed' ? [link.length.reason] : []
  if (power === null) return length
  const { after: { reservedMargin, drawnMargin }, feed } = power
  return [...length, ...new Set([
    ...(reservedMargin.status === 'not computed' ? [reservedMargin.reason] : []),
    ...(drawnMargin.status === 'not computed' && length.length === 0 ? [drawnMargin.reason] : []),
    ...(feed?.power.status === 'not computed' && length.length === 0 ? [feed.power.reason] : []),
  ])]
}
