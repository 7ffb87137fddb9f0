/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import type { Finding } from '../../findings/finding.js'

export interface EnergyResults { readonly findings: readonly Finding[] }
