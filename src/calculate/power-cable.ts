import type { Cable, CableType } from '../model/vessel.js'

/** Whether a cable holds conductors of a circuit that supplies something. Where no type is recorded, what it is said to carry tells. */
export const isPowerCable = (cable: Cable, type: CableType | null): boolean =>
  cable.carries !== 'none' && (type === null || type.use === 'power' || type.use === 'ac power')
