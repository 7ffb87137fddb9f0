/** What needs what: the chain of each item to its source, what goes dead with each device, single points behind safety services. */
import type { Finding } from '../../findings/finding.js'

export interface DependencyResults { readonly findings: readonly Finding[] }
