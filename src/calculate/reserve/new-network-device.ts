/** A vessel with one more device on a port of a network switch: the pass on networks is run on it as on the vessel itself. */
import type { Finding } from '../../findings/finding.js'
import { blankCable, blankCableType, blankEquipment, blankPort } from '../../model/blank.js'
import type { CableRun, Results } from '../../model/results.js'
import type { EthernetLink, NetworkPower, PortUse } from '../../model/results/ethernet.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { drawnPowerAboveBudget, linkTooLong, portPowerTooLow, reservedPowerAboveBudget } from '../ethernet/findings.js'
import { ethernetPass } from '../ethernet/index.js'
import { fourPairsCoreCount } from '../ethernet/practice.js'
import { routingPass } from '../wireways/index.js'
import type { Place } from '../wireways/places.js'
import { newlyFound } from './newly-found.js'

/** Tags that no vessel has: a tag holds no blank. */
const newTags = { device: 'the new device', cable: 'the new cable', cableType: 'the type of the new cable' } as const
const ownPort = 'lan'

export interface NetworkProposal {
  readonly switchTag: Tag
  readonly port: PortUse
  readonly at: Place
  /** Null: it is supplied elsewhere. */
  readonly powerClass: number | null
  /** Null: it is given one. */
  readonly address: string | null
}

export interface WithNetworkDevice {
  readonly run: CableRun
  readonly link: EthernetLink | null
  /** Of the switch; null where it supplies nobody. */
  readonly power: NetworkPower | null
  readonly besides: readonly Finding[]
}

/** What is held against its limit by whoever asks. */
const heldElsewhere: ReadonlySet<string> = new Set([drawnPowerAboveBudget, linkTooLong, portPowerTooLow, reservedPowerAboveBudget].map(({ id }) => id))

export function withNetworkDevice(vessel: Vessel, basis: Basis, results: Results, proposal: NetworkProposal): WithNetworkDevice {
  const added = vesselWith(vessel, proposal)
  const routing = routingPass(added)
  const ethernet = ethernetPass(added, basis, { ...results, routing })
  return {
    run: routing.byCable.get(newTags.cable)!,
    link: ethernet.links.find(({ tag }) => tag === newTags.cable) ?? null,
    power: ethernet.power.get(proposal.switchTag) ?? null,
    besides: newlyFound(results, [routing, ethernet], Object.values(newTags)).filter(({ id }) => !heldElsewhere.has(id)),
  }
}

/** What the new device takes of the power of its switch. */
export const feedOfNew = (power: NetworkPower | null) => power?.feeds.find(({ deviceTag }) => deviceTag === newTags.device) ?? null

function vesselWith(vessel: Vessel, { switchTag, port, at, powerClass, address }: NetworkProposal): Vessel {
  return {
    ...vessel,
    cableTypes: [...vessel.cableTypes, { ...blankCableType(newTags.cableType, 'ethernet'), cores: fourPairsCoreCount }],
    cables: [...vessel.cables, {
      ...blankCable(newTags.cable, { tag: switchTag, terminal: port.name }, { tag: newTags.device, terminal: ownPort }), typeTag: newTags.cableType, status: 'planned',
    }],
    equipment: [...vessel.equipment, {
      ...blankEquipment(newTags.device, ''), zoneTag: at.zoneTag, pointTag: at.pointTag, status: 'planned', address, addressing: address === null ? 'dynamic' : 'static',
      ports: [{ ...blankPort(ownPort, 'ethernet'), speedMbitPerS: port.speedMbitPerS, powerClass }],
    }],
  }
}
