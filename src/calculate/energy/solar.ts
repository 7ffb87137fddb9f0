/** Sun of an operating mode, and what panels make of it hour by hour. */
import { inWords } from '../../findings/words.js'
import { isDistributionPoint, lookup } from '../../model/lookup.js'
import type { Outcome } from '../../model/results.js'
import type { SunDay } from '../../model/results/energy.js'
import type { Equipment, OperatingMode, Tag, Vessel } from '../../model/vessel.js'
import type { EquipmentKindKey } from '../../references/equipment-kinds.js'
import { runMethod } from '../run-method.js'
import { hoursOfDay } from './duties.js'
import { flatPanelsFactor, solarVoltageFactor, usualSunshinePercent } from './practice.js'
import { solarOutput, solarOutputMethod } from './solar-output.calc.js'
import { middleOfMonth } from './sun.js'
import { sunByDayMethod } from './sun-by-day.calc.js'
import { sunByHour } from './sun-by-hour.calc.js'
import { sunOnDeck, sunOnDeckMethod } from './sun-on-deck.calc.js'

/** A month is reckoned by its middle day. */
export function sunOf({ conditions: { latitudeDeg } }: Vessel, mode: OperatingMode): SunDay | { readonly reason: string } {
  if (latitudeDeg === null) return { reason: 'the latitude of the boat is not recorded, so what the sun gives is not known' }
  if (mode.monthNumber === null) return { reason: 'no month is given for the mode, so what the sun gives is not known' }
  const dayNumber = middleOfMonth[mode.monthNumber - 1]!
  const sunshinePercent = mode.sunshinePercent ?? usualSunshinePercent
  const byDay = runMethod(sunByDayMethod, { latitudeDeg, dayNumber })
  if (byDay.status === 'not computed') return { reason: byDay.reason }
  const { extraterrestrialKWhPerM2 } = byDay.output
  return {
    latitudeDeg, dayNumber, sunshinePercent, sunshineRecorded: mode.sunshinePercent !== null, byDay,
    onDeck: runMethod(sunOnDeckMethod, { extraterrestrialKWhPerM2, sunshinePercent }),
  }
}

interface Panels { readonly tags: readonly Tag[]; readonly peakPowerW: number }

/** The panels that feed a controller, through busbars as well; a panel without a controller is its own. */
export function panelsOf(vessel: Vessel, item: Equipment): Panels | { readonly reason: string } {
  const { equipment, circuitsOfLoad } = lookup(vessel)
  const isPanel = (each: Equipment) => each.kind === ('solar panel' satisfies EquipmentKindKey)
  const found = new Map<Tag, Equipment>()
  const seen = new Set<Tag>()
  const upwards = (tag: Tag) => {
    if (seen.has(tag)) return
    seen.add(tag)
    for (const { fedFromTag } of circuitsOfLoad.get(tag) ?? []) {
      const from = equipment.get(fedFromTag)
      if (from !== undefined && isPanel(from) && from.status !== 'removed') found.set(from.tag, from)
      else if (isDistributionPoint(vessel, fedFromTag)) upwards(fedFromTag)
    }
  }
  if (isPanel(item)) found.set(item.tag, item)
  else upwards(item.tag)
  if (found.size === 0 && item.peakPowerW !== null) found.set(item.tag, item)
  const unknown = [...found.values()].filter(({ peakPowerW }) => peakPowerW === null).map(({ tag }) => tag)
  if (found.size === 0) return { reason: 'no circuit from a solar panel lists it' }
  if (unknown.length > 0) return { reason: `the peak power of ${inWords(unknown)} is not recorded` }
  return { tags: [...found.keys()], peakPowerW: [...found.values()].reduce((sum, { peakPowerW }) => sum + peakPowerW!, 0) }
}

export interface SolarHours { readonly offeredAByHour: readonly number[]; readonly output: Outcome; readonly cutAh: number }

/** `limitA`: what the controller gives at most. */
export function solarByHour({ latitudeDeg, dayNumber, sunshinePercent, onDeck }: SunDay, peakPowerW: number, nominalVoltageV: number, limitA: number | null): SolarHours {
  const panels = { peakPowerW, performanceFactor: flatPanelsFactor, batteryV: solarVoltageFactor * nominalVoltageV }
  const made = hoursOfDay.map(hour => {
    const sun = sunByHour({ latitudeDeg, dayNumber, fromH: hour, toH: hour + 1 })
    return solarOutput({ ...panels, ...sunOnDeck({ ...sun, sunshinePercent }) }).chargeAh
  })
  const offeredAByHour = made.map(chargeAh => Math.min(chargeAh, limitA ?? Infinity))
  return {
    offeredAByHour,
    output: runMethod(solarOutputMethod, { ...panels, irradiationKWhPerM2: onDeck.status === 'computed' ? onDeck.output.irradiationKWhPerM2 : 0 }),
    cutAh: made.reduce((sum, chargeAh, hour) => sum + chargeAh - offeredAByHour[hour]!, 0),
  }
}
