/** What the passes on conductors found, which every later domain builds on. */
import type { Results } from '../model/results.js'

export type Upstream = Pick<Results, 'routing' | 'sources' | 'feeding' | 'currentCarryingCapacity' | 'voltageDrop' | 'protection' | 'conductorSize'>
