/** What the builders of supply and of data share: the things of a vessel as statements, and what is watched of them. */
import type { Cause, LossKind } from '../../model/results/dependency.js'
import type { Gap } from '../../model/results/gap.js'
import type { Tag } from '../../model/vessel.js'
import { type Settled, type Statement, type Statements, statements } from './statements.js'

/** What it means for an item when a statement falls. */
export interface Watch { readonly statement: Statement; readonly tag: Tag; readonly how: LossKind; readonly cause: Cause }

export interface Facts extends Omit<Statements, 'settle'> {
  /** The thing itself is sound. */
  sound(tag: Tag): Statement
  /** Every thing that was asked for. */
  readonly things: ReadonlyMap<Tag, Statement>
  watch(watch: Watch): void
  readonly watches: readonly Watch[]
  notAssessed(subjectTag: Tag, reason: string): void
  readonly gaps: readonly Gap[]
  settle(): Settled
}

export function facts(): Facts {
  const made = statements()
  const things = new Map<Tag, Statement>()
  const watches: Watch[] = []
  const gaps: Gap[] = []
  return {
    ...made, things, watches, gaps,
    sound: tag => {
      const statement = things.get(tag) ?? made.given()
      things.set(tag, statement)
      return statement
    },
    watch: watch => watches.push(watch),
    settle: () => made.settle(new Set(watches.map(({ statement }) => statement))),
    notAssessed: (subjectTag, reason) => gaps.push({ subjectTag, reason }),
  }
}

/** Statements by name, each made when it is first asked for. */
export function named<K>(make: (name: K) => Statement): (name: K) => Statement {
  const known = new Map<K, Statement>()
  return name => {
    const statement = known.get(name) ?? make(name)
    known.set(name, statement)
    return statement
  }
}
