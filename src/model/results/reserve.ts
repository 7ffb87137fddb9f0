/** What is left: spare ways, and the margin of every feeder, busbar and panel above them. */
import type { Finding } from '../../findings/finding.js'

export interface ReserveResults { readonly findings: readonly Finding[] }
