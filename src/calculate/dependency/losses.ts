/** What is lost with each thing: the statements that fall with it, told as what that means for the items. */
import { grouped, lookup } from '../../model/lookup.js'
import type { Cause, Effect, LossKind } from '../../model/results/dependency.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { Facts, Watch } from './facts.js'
import type { Fallen, Settled, Statement } from './statements.js'

/** The worst first. */
const order: readonly LossKind[] = ['dead', 'no data', 'cut off', 'degraded']

/** The thing that is taken away is not told of itself. */
export function lossesOf(vessel: Vessel, { things, watches }: Facts, settled: Settled): ReadonlyMap<Tag, readonly Effect[]> {
  const place = new Map([...lookup(vessel).items.keys()].map((tag, i) => [tag, i]))
  const watching = grouped(watches.filter(({ statement }) => settled.holds(statement)), ({ statement }) => [statement])
  // Things in one row share what falls with them, and so what that means.
  const known = new Map<readonly Fallen[], readonly Effect[]>()
  const losses = new Map<Tag, readonly Effect[]>()
  for (const [tag, thing] of things) {
    const fallen = settled.fallWith(thing)
    const all = known.get(fallen) ?? effectsOf(fallen, watching)
      .toSorted((a, b) => order.indexOf(a.how) - order.indexOf(b.how) || place.get(a.tag)! - place.get(b.tag)!)
    known.set(fallen, all)
    const effects = all.some(effect => effect.tag === tag) ? all.filter(effect => effect.tag !== tag) : all
    if (effects.length > 0) losses.set(tag, effects)
  }
  return losses
}

/** One effect an item: the worst, with all its causes. */
function effectsOf(fallen: readonly Fallen[], watching: ReadonlyMap<Statement, readonly Watch[]>): readonly Effect[] {
  const worst = new Map<Tag, { readonly how: LossKind; readonly causes: Cause[]; readonly restoreBy: readonly Tag[] }>()
  for (const { statement, restoreBy } of fallen) {
    for (const { tag, how, cause } of watching.get(statement) ?? []) {
      const known = worst.get(tag)
      if (known === undefined || order.indexOf(how) < order.indexOf(known.how)) worst.set(tag, { how, causes: [cause], restoreBy })
      else if (how === known.how && !known.causes.some(each => each.of === cause.of && each.tag === cause.tag)) known.causes.push(cause)
    }
  }
  return [...worst].map(([tag, effect]) => ({ tag, ...effect }))
}
