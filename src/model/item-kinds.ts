/** The kinds by which general text, cautions and general tasks name an item. */
import type { Item } from './lookup.js'

/** Errs on the safe side: a battery whose chemistry is not recorded is of either kind. */
export function kindsOf(item: Item): readonly string[] {
  if ('chemistry' in item) return ['battery', ...(item.chemistry === 'lfp' ? [] : ['lead-acid battery']), ...(item.chemistry === 'lfp' || item.chemistry === null ? ['lithium battery'] : [])]
  if ('polarity' in item) return ['busbar']
  return 'ways' in item ? ['panel'] : [item.kind]
}
