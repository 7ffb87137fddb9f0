/** The formatter in the vessel's units, for the page makers. */
import type { SayOptions } from '../../units/format.js'
import { say } from '../../units/format.js'
import { dash } from '../text.js'
import type { Text } from '../view-model.js'

/** A quantity, or a dash where there is none. */
export const sayOrDash = (name: string, value: number | null | undefined, options: SayOptions): Text =>
  value === null || value === undefined ? dash : [say(name, value, options)]
