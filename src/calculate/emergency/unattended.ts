/** How long each bank carries what stays live while nobody is on board. */
import type { AlwaysLive, Unattended } from '../../model/results/emergency.js'
import { isThere } from '../../model/lookup.js'
import type { Equipment, Vessel } from '../../model/vessel.js'
import { equipmentKind } from '../../references/equipment-kinds.js'
import { batteryFacts, storeOf } from '../energy/battery-facts.js'
import { enduranceMethod } from '../energy/endurance.calc.js'
import { loadCurrent } from '../feeding/load-current.calc.js'
import { runMethod } from '../run-method.js'

/** Live, and drawing nothing worth counting while she lies: a pump runs for seconds, an engine stands. */
const atRest: ReadonlySet<string> = new Set(['bilge pump', 'engine'])

/**
 * A row for each bank from which something draws with every isolator open. Every item counts with its typical current, else its
 * maximum, else its power over the bank's voltage; of which none is recorded, or what is fed for others, stands by name in `unknownTags`.
 */
export function unattended(vessel: Vessel, live: readonly AlwaysLive[]): readonly Unattended[] {
  const items = new Map(vessel.equipment.filter(isThere).map(item => [item.tag, item]))
  return batteryFacts(vessel).flatMap((facts): Unattended[] => {
    const tags = new Set(live.filter(({ sourceTag }) => sourceTag === facts.tag).flatMap(({ itemTags }) => itemTags))
    const awake = [...tags].flatMap(tag => { const item = items.get(tag); return item === undefined || atRest.has(item.kind) || !draws(item) ? [] : [item] })
    const currents = awake.map(item => ({ tag: item.tag, currentA: currentOf(item, facts.nominalVoltageV) }))
    const known = currents.flatMap(({ tag, currentA }) => (currentA === null ? [] : [{ tag, currentA }]))
    const loadCurrentA = known.reduce((sum, { currentA }) => sum + currentA, 0)
    const unknownTags = currents.filter(({ currentA }) => currentA === null).map(({ tag }) => tag)
    if (awake.length === 0) return []
    const store = storeOf(facts)
    return [{
      batteryTag: facts.tag, itemTags: known.map(({ tag }) => tag), unknownTags, loadCurrentA,
      endurance: 'reason' in store ? { status: 'not computed', method: enduranceMethod.id, reason: store.reason }
        : loadCurrentA === 0 ? { status: 'not computed', method: enduranceMethod.id, reason: 'no current of what stays live is recorded' }
        : runMethod(enduranceMethod, { loadCurrentA, capacityAh: store.capacityAh, ratedTimeH: store.ratedTimeH, peukertNumber: store.peukertNumber, depthOfDischargePercent: store.depthOfDischargePercent }),
    }]
  })
}

/** A switch or a terminal block only passes current on. */
const draws = ({ kind }: Equipment): boolean => { const { draw, joins } = equipmentKind(kind); return draw !== 'junction' && draw !== 'nothing' && joins === 'nothing' }

function currentOf({ currentTypicalA, currentMaxA, powerW, outputs }: Equipment, nominalVoltageV: number): number | null {
  if (currentTypicalA !== null) return currentTypicalA
  // At full output a converter takes what nothing of this list asks of it.
  if (outputs.length > 0) return null
  return currentMaxA ?? (powerW === null ? null : loadCurrent({ powerW, nominalVoltageV }).loadCurrentA)
}
