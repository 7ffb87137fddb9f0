/** Switches, isolators and what else a circuit goes through: what flows through each against its own rating. */
import { type Finding, find } from '../../findings/finding.js'
import { lookup } from '../../model/lookup.js'
import type { Gap } from '../../model/results/gap.js'
import type { SwitchCheck } from '../../model/results/protective-devices.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { type EquipmentKindKey, equipmentKind } from '../../references/equipment-kinds.js'
import { compare } from '../compare.js'
import { cableUses, currentInA } from '../conductors/circuit-cables.js'
import type { Upstream } from '../upstream.js'
import { currentAboveSwitch } from './findings.js'

/** Kinds whose rating must be known: they carry the current of a bank or of a whole rail. */
const mainSwitches: ReadonlySet<string> = new Set<EquipmentKindKey>(['battery isolator', 'source selector'])

/** Each that has a rating, and each main switch; `currentA` is the largest in any cable at it, drawn or put in. */
export function checkSwitches(vessel: Vessel, basis: Basis, { feeding }: Upstream): readonly SwitchCheck[] {
  const { cablesAt } = lookup(vessel)
  const uses = cableUses(vessel, feeding)
  return vessel.equipment.filter(isOnTheWay).map(({ tag, ratedCurrentA }) => {
    const currents = (cablesAt.get(tag) ?? []).flatMap(cable => { const used = uses.get(cable.tag); return used === undefined ? [] : [currentInA(basis.protection, used)] })
    const known = currents.filter(current => current !== null)
    const currentA = known.length === 0 || known.length < currents.length ? null : Math.max(...known)
    return {
      tag, ratedCurrentA, currentA,
      comparison: currentA === null || ratedCurrentA === null ? null
        : compare('currentA', currentA, { relation: 'at most', value: ratedCurrentA, citation: { source: 'vessel-data', place: `rating of ${tag}` } }),
    }
  })
}

function isOnTheWay({ kind, status, ratedCurrentA }: Equipment): boolean {
  const { joins } = equipmentKind(kind)
  return status !== 'removed' && joins !== 'nothing' && (ratedCurrentA !== null || mainSwitches.has(kind))
}

export const switchFindings = (checks: readonly SwitchCheck[]): readonly Finding[] => checks.flatMap(({ tag, comparison }) =>
  (comparison?.within === false ? [find(currentAboveSwitch, {
    subject: { kind: 'equipment', id: tag }, field: 'ratedCurrentA', evidence: { currentA: comparison.value }, limit: comparison.limit,
  })] : []))

/** Why one could not be held against its rating. */
export const switchGaps = (checks: readonly SwitchCheck[]): readonly Gap[] =>
  checks.filter(({ comparison }) => comparison === null).map(({ tag, ratedCurrentA }) => ({
    subjectTag: tag,
    reason: ratedCurrentA === null ? 'current through the switch against its rating: its rating is not recorded' : 'current through the switch against its rating: the current is not known',
  }))
