import type { Results } from '../../model/results.js'
import type { Upstream } from '../upstream.js'

/** Buses and radios hold their readings against their own sums; here they are listed and counted. */
export type BeforeCommissioning = Upstream & Pick<Results, 'canBus' | 'radio'>
