/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { Finding } from '../../findings/finding.js'

export interface ProtectiveDevicesResults { readonly findings: readonly Finding[] }
