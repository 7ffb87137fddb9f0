/** What a line of general text such as `{{ where: battery isolator }}` is replaced by. */
import type { ViewContext } from '../context.js'
import type { Block } from '../view-model.js'
import { photographsOfKinds, planOfKinds } from './pictures-of-kinds.js'
import { whereTable } from './where-table.js'

export type Directive = (context: ViewContext, words: readonly string[]) => readonly Block[]

export const directives: Readonly<Record<string, Directive>> = {
  /** Items of these kinds with their places. */
  'where': (context, kinds) => whereTable(context, kinds),
  /** The same on a plan of the boat. */
  'plan': planOfKinds,
  /** Photographs that show one of them. */
  'photographs': photographsOfKinds,
}
