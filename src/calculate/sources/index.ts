/** Sources: battery banks, and what converters take for what they give. */
import type { AnyMethod } from '../method.js'
import { batteryBankMethod } from './battery-bank.calc.js'
import { converterInputMethod } from './converter-input.calc.js'

export { sourcesPass } from './sources.pass.js'

export const methods: readonly AnyMethod[] = [batteryBankMethod, converterInputMethod]
