/** Device by device: where it sits, what it must break, in which order devices trip; conductors without one. */
import type { AnyMethod } from '../method.js'

export { protectiveDevicesPass } from './protective-devices.pass.js'

export const methods: readonly AnyMethod[] = []
