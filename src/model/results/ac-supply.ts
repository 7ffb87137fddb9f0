/** Mains voltage: shore connection, generator and inverter, how they are switched, residual-current protection, earth and polarity. */
import type { Finding } from '../../findings/finding.js'

export interface AcSupplyResults { readonly findings: readonly Finding[] }
