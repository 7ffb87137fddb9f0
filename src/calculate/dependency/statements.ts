/**
 * Statements that hold when one of their grounds does, a ground being other statements that hold together ("the lamp is
 * fed" by "the fuse, the cable and the battery are sound"). Finds which of them fall with one that is taken away.
 */

export type Statement = number

export interface Statements {
  /** Something that simply is so, until it is taken away. */
  given(): Statement
  /** Holds when one of its grounds, added later, does. */
  derived(): Statement
  /** `byHand`: what somebody has to do first; such a ground holds nothing up by itself. */
  ground(of: Statement, premises: readonly Statement[], byHand?: string | null): void
  /** `ofInterest`: the statements that are told of when they fall; all when left out. */
  settle(ofInterest?: ReadonlySet<Statement>): Settled
}

export interface Settled {
  holds(statement: Statement): boolean
  /** What falls with one that is given, itself left out. Of things that stand in one row the same list is returned. */
  fallWith(given: Statement): readonly Fallen[]
}
export interface Fallen {
  readonly statement: Statement
  /** What has to be done by hand to bring it back; empty: nothing does. */
  readonly restoreBy: readonly string[]
}

interface Ground { readonly of: Statement; readonly premises: readonly Statement[]; readonly byHand: string | null }
/** What it is the premise of, and what it rests on itself. */
interface Node { readonly given: boolean; readonly grounds: Ground[]; readonly uses: Ground[]; support: Ground | null; holds: boolean; fallenIn: number; restoredIn: number; restoreBy: readonly string[] }

const none: readonly string[] = []

export function statements(): Statements {
  const nodes: Node[] = []
  const add = (given: boolean): Statement =>
    nodes.push({ given, grounds: [], uses: [], support: null, holds: given, fallenIn: 0, restoredIn: 0, restoreBy: none }) - 1
  return {
    given: () => add(true),
    derived: () => add(false),
    ground: (of, premises, byHand = null) => {
      const ground = { of, premises, byHand }
      nodes[of]!.grounds.push(ground)
      for (const premise of ground.premises) nodes[premise]!.uses.push(ground)
    },
    settle: ofInterest => settled(nodes, ofInterest),
  }
}

function settled(nodes: readonly Node[], ofInterest: ReadonlySet<Statement> | undefined): Settled {
  findSupports(nodes)
  // Marks of one search are told from those of the last by its number, so that nothing has to be wiped.
  let search = 0
  const inOneRow = new Map<Ground, readonly Fallen[]>()

  const stands = (one: Statement): boolean => nodes[one]!.holds && nodes[one]!.fallenIn !== search
  const canStand = (one: Statement): boolean => stands(one) || nodes[one]!.restoredIn === search

  function fallWith(given: Statement): readonly Fallen[] {
    const { given: isGiven, uses } = nodes[given]!
    if (!isGiven) throw new Error(`statement ${given} is not given`)
    const [row] = uses
    const known = uses.length === 1 ? inOneRow.get(row!) : undefined
    if (known !== undefined) return known
    const found = searchFrom(given)
    if (uses.length === 1) inOneRow.set(row!, found)
    return found
  }

  /**
   * First everything falls whose own support falls: what is left holds as it did, for supports never go round in a ring.
   * Then what has another ground among that rises again, until no more does. The work is that of the part that falls.
   */
  function searchFrom(given: Statement): readonly Fallen[] {
    search++
    nodes[given]!.fallenIn = search
    const queue = [given]
    for (const one of queue) {
      for (const ground of nodes[one]!.uses) {
        const next = nodes[ground.of]!
        if (next.support !== ground || next.fallenIn === search) continue
        next.fallenIn = search
        queue.push(ground.of)
      }
    }
    const fell = queue.slice(1)
    raise(fell, one => nodes[one]!.fallenIn === search, ({ byHand, premises }) => byHand === null && premises.every(stands), one => { nodes[one]!.fallenIn = 0 })
    const fallen = fell.filter(one => nodes[one]!.fallenIn === search)
    raise(fallen, one => nodes[one]!.fallenIn === search && nodes[one]!.restoredIn !== search && one !== given, ({ premises }) => premises.every(canStand), restore)
    return (ofInterest === undefined ? fallen : fallen.filter(one => ofInterest.has(one))).map(statement => {
      const { restoredIn, restoreBy } = nodes[statement]!
      return { statement, restoreBy: restoredIn === search ? restoreBy : none }
    })
  }

  /** Most rest on one other thing that was brought back: they share its list. */
  function restore(one: Statement, { byHand, premises }: Ground): void {
    const lists = new Set<readonly string[]>()
    for (const premise of premises) if (!stands(premise)) lists.add(nodes[premise]!.restoreBy)
    const [first = none] = lists
    nodes[one]!.restoredIn = search
    nodes[one]!.restoreBy = byHand === null && lists.size <= 1 ? first : [...new Set([...[...lists].flat(), ...(byHand === null ? none : [byHand])])]
  }

  /** Raises each that waits and has a ground that carries, and then looks again at what rests on it. */
  function raise(
    waiting: readonly Statement[], waits: (one: Statement) => boolean, carries: (ground: Ground) => boolean, lift: (one: Statement, ground: Ground) => void,
  ): void {
    const queue = [...waiting]
    for (const one of queue) {
      const ground = waits(one) ? nodes[one]!.grounds.find(carries) : undefined
      if (ground === undefined) continue
      lift(one, ground)
      for (const { of } of nodes[one]!.uses) if (waits(of)) queue.push(of)
    }
  }

  return { holds: statement => nodes[statement]!.holds, fallWith }
}

/** What holds in normal use, each with the ground that was the first to carry it. */
function findSupports(nodes: readonly Node[]): void {
  const missing = new Map<Ground, number>()
  const queue: Statement[] = []
  const reach = (ground: Ground): void => {
    const node = nodes[ground.of]!
    if (ground.byHand !== null || node.holds) return
    node.holds = true
    node.support = ground
    queue.push(ground.of)
  }
  nodes.forEach(({ given, grounds }, statement) => {
    if (given) queue.push(statement)
    for (const ground of grounds) {
      missing.set(ground, ground.premises.length)
      if (ground.premises.length === 0) reach(ground)
    }
  })
  for (const one of queue) {
    for (const ground of nodes[one]!.uses) {
      const left = missing.get(ground)! - 1
      missing.set(ground, left)
      if (left === 0) reach(ground)
    }
  }
}
