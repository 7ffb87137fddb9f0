/** A position as a person would say it. */
import type { Position, UnitSystem } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'

export function positionWords(options: { readonly units: UnitSystem }, [forwardM, toPortM, upM]: Position): string {
  const away = (valueM: number, positive: string, negative: string): string => `${say('positionM', Math.abs(valueM), options)} ${valueM < 0 ? negative : positive}`
  const across = toPortM === 0 ? 'on the centreline' : away(toPortM, 'to port', 'to starboard')
  return `${away(forwardM, 'forward of', 'abaft')} the transom, ${across}, ${away(upM, 'above', 'below')} the waterline`
}
