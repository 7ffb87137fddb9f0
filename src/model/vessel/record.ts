/** What was set on the devices, and how to get into them. */
import type { Tag } from '../vessel.js'

/** One setting worth keeping, as it stood on the date. */
export interface Setting {
  readonly itemTag: Tag
  readonly name: string
  readonly value: string
  /** Where in its menus. */
  readonly menu: string | null
  readonly date: string | null
  readonly by: string | null
  readonly notes: string | null
}

/** Whom a copy of the pack is made for. */
export type Edition = 'owner' | 'service' | 'yard'

/** How to log in. The secret itself, or where it is kept. */
export interface Credential {
  readonly itemTag: Tag
  readonly name: string
  readonly user: string | null
  readonly secret: string | null
  readonly keptAt: string | null
  /** The editions that may carry it. */
  readonly editions: readonly Edition[]
  /** User and secret are left out of this edition. */
  readonly withheld: boolean
}
