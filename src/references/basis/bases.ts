import type { BasisId } from '../../model/vessel.js'
import { abyc } from './abyc.js'
import type { Basis } from './basis.js'
import { iso } from './iso.js'

export const bases: Readonly<Record<BasisId, Basis>> = { iso, abyc }
