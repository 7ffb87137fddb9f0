/** Loads by operating mode, hour by hour; what the batteries hold, how long they last, what charges them. */
import type { AnyMethod } from '../method.js'
import { alternatorOutputMethod } from './alternator-output.calc.js'
import { bankCapacityMethod } from './bank-capacity.calc.js'
import { batteryVentilationMethod } from './battery-ventilation.calc.js'
import { chargeTakenMethod } from './charge-taken.calc.js'
import { chargingTimeMethod } from './charging-time.calc.js'
import { columnTotalMethod } from './column-total.calc.js'
import { dailyBalanceMethod } from './daily-balance.calc.js'
import { dailyChargeMethod } from './daily-charge.calc.js'
import { dischargeMethod } from './discharge.calc.js'
import { enduranceMethod } from './endurance.calc.js'
import { peukertExponentMethod } from './peukert-exponent.calc.js'
import { solarOutputMethod } from './solar-output.calc.js'
import { sourceSizeMethod } from './source-size.calc.js'
import { sunByDayMethod } from './sun-by-day.calc.js'
import { sunByHourMethod } from './sun-by-hour.calc.js'
import { sunOnDeckMethod } from './sun-on-deck.calc.js'

export { energyPass } from './energy.pass.js'

export const methods: readonly AnyMethod[] = [
  columnTotalMethod, dailyChargeMethod, dischargeMethod, chargeTakenMethod, dailyBalanceMethod, enduranceMethod, peukertExponentMethod,
  chargingTimeMethod, alternatorOutputMethod, sunByDayMethod, sunByHourMethod, sunOnDeckMethod, solarOutputMethod, bankCapacityMethod,
  sourceSizeMethod, batteryVentilationMethod,
]
