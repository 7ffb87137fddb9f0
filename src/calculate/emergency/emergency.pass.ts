/** What the emergency pages need to know of this boat. */
import type { DependencyResults } from '../../model/results/dependency.js'
import type { EmergencyResults } from '../../model/results/emergency.js'
import { isThere } from '../../model/lookup.js'
import type { Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import type { Upstream } from '../upstream.js'
import { feedBacks, isolators, staysLive } from './isolation.js'
import { lossesOf } from './losses.js'
import { needAnswers, needFindings, needGaps } from './needs.js'
import { bankLinks, pumpSupplies, shedding } from './supplies.js'
import { unattended } from './unattended.js'

export function emergencyPass(vessel: Vessel, _basis: Basis, { feeding, dependency }: Pick<Upstream, 'feeding'> & { readonly dependency: DependencyResults }): EmergencyResults {
  const needs = needAnswers(vessel)
  const losses = lossesOf(vessel, dependency)
  const live = staysLive(vessel, feeding)
  return {
    needs,
    isolators: isolators(vessel, feeding, losses),
    alwaysLive: live.rows,
    unattended: unattended(vessel, live.rows),
    feedBacks: feedBacks(vessel, feeding),
    banks: vessel.batteries.filter(isThere).map(({ tag }) => losses.loss(tag)),
    links: bankLinks(vessel, feeding),
    shedding: shedding(vessel, feeding),
    pumps: pumpSupplies(vessel, feeding, live),
    notAssessed: needGaps(vessel, needs),
    findings: needFindings(vessel, needs),
  }
}
