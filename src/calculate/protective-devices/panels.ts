/** Panels and busbars: what feeds them against their own ratings. */
import { type Finding, find } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import { designCurrentA } from '../../model/results.js'
import type { PanelCheck, PanelFeeder } from '../../model/results/protective-devices.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { compare } from '../compare.js'
import type { Upstream } from '../upstream.js'
import { currentAbovePanel, protectionAbovePanel } from './findings.js'

export function checkPanels(vessel: Vessel, basis: Basis, before: Upstream): ReadonlyMap<Tag, PanelCheck> {
  const { circuitsOfLoad } = lookup(vessel)
  const { citation } = basis.devices.panel
  const check = (kind: PanelCheck['kind'], tag: Tag, ratedCurrentA: number | null): [Tag, PanelCheck] => {
    const feeders = ratedCurrentA === null ? [] : (circuitsOfLoad.get(tag) ?? []).map((circuit): PanelFeeder => {
      const feed = before.feeding.byCircuit.get(circuit.tag)
      const drawnA = designCurrentA(feed)
      const putInA = feed?.infeed == null ? 0 : feed.infeed.currentA
      const limit = { relation: 'at most', value: ratedCurrentA, citation } as const
      return {
        circuitTag: circuit.tag,
        protection: circuit.protection === null ? null : compare('ratedCurrentA', circuit.protection.ratedCurrentA, limit),
        current: drawnA === null || putInA === null ? null : compare('currentA', Math.max(drawnA, putInA), limit),
      }
    })
    return [tag, { kind, ratedCurrentA, feeders }]
  }
  return new Map([
    ...vessel.panels.map(({ tag, ratedCurrentA }) => check('panel', tag, ratedCurrentA)),
    ...vessel.busbars.filter(({ polarity }) => polarity === 'positive').map(({ tag, ratedCurrentA }) => check('busbar', tag, ratedCurrentA)),
  ])
}

/** The channels of a switching module against its rating are the business of the spare capacity. */
export function panelFindings(vessel: Vessel, byPanel: ReadonlyMap<Tag, PanelCheck>): readonly Finding[] {
  const { panels } = lookup(vessel)
  return [...byPanel].flatMap(([tag, { kind, feeders }]) => feeders.flatMap(({ circuitTag, protection, current }) => {
    const about = { subject: { kind, id: tag }, field: 'ratedCurrentA', context: { circuit: circuitTag } }
    return [
      ...(protection?.within === false ? [find(protectionAbovePanel, { ...about, limit: protection.limit, evidence: { ratedCurrentA: protection.value } })] : []),
      ...(current?.within === false && panels.get(tag)?.kind !== 'switching module'
        ? [find(currentAbovePanel, { ...about, limit: current.limit, evidence: { currentA: current.value } })] : []),
    ]
  }))
}
