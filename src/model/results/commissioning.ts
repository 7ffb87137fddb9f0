/** Measured values held against calculated ones. */
import type { Finding } from '../../findings/finding.js'

export interface CommissioningResults { readonly findings: readonly Finding[] }
