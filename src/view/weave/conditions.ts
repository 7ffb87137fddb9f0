/** What `{{ if: … }}` of general text may ask for: a kind that is on board, or one of the facts below. Any of several will do. */
import type { ViewContext } from '../context.js'
import { hasDistressCard } from '../pages/record/distress-card.view.js'
import { itemsOfKinds, titleOfKind } from './kinds.js'

const facts: Readonly<Record<string, (context: ViewContext) => boolean>> = {
  'distress card': hasDistressCard,
  'link between banks': ({ results }) => results.emergency.links.length > 0,
  'two engines': context => itemsOfKinds(context, ['engine']).length > 1,
  'two engine levers': context => itemsOfKinds(context, ['engine control']).length > 1,
}

/** Errors: neither a kind nor a fact. */
export function holds(context: ViewContext, asked: readonly string[]): boolean {
  return asked.map(word => {
    const fact = Object.hasOwn(facts, word) ? facts[word]! : null
    if (fact !== null) return fact(context)
    titleOfKind(word)
    return itemsOfKinds(context, [word]).length > 0
  }).some(Boolean)
}
