/** The protective device for a new circuit, by what the place already uses. */
import { lookup } from '../../model/lookup.js'
import type { Computed } from '../../model/results.js'
import type { PanelKind, Tag, Vessel } from '../../model/vessel.js'
import { protectiveDevice, type ProtectiveDeviceKey, smallestRatingA } from '../../references/tables/protective-devices.js'
import { runMethod } from '../run-method.js'
import { hoursLongFactor, type LeastRatingInput, leastRatingMethod, type LeastRatingOutput } from './least-rating.calc.js'

export interface NewProtection {
  readonly device: string
  readonly ratedCurrentA: number
  readonly least: Computed<LeastRatingInput, LeastRatingOutput>
}

/** Where nothing at the place says what devices it takes. */
const usualDevices: Readonly<Record<PanelKind | 'busbar', readonly ProtectiveDeviceKey[]>> = {
  'breaker panel': ['circuit breaker'],
  'fuse panel': ['blade fuse'],
  'fuse block': ['blade fuse'],
  'switching module': ['electronic channel'],
  busbar: ['blade fuse', 'maxi blade fuse', 'bolt-in fuse, large'],
}

/**
 * The smallest standard rating of the first device that has one: of a panel the device that most of its circuits have,
 * of a busbar the smallest fuse, in a holder of its own. An electronic channel is set to just what is needed.
 *
 * Errors   a reason when no device of the place is made so large
 */
export function newProtection(vessel: Vessel, pointTag: Tag, currentA: number, continuous: boolean): NewProtection | { readonly reason: string } {
  const least = runMethod(leastRatingMethod, { currentA, continuousFactor: continuous ? hoursLongFactor : 1 })
  if (least.status === 'not computed') return { reason: least.reason }
  const { leastRatedCurrentA } = least.output
  const candidates = devicesAt(vessel, pointTag)
  for (const name of candidates) {
    const device = protectiveDevice(name)
    if (device === null) continue
    const ratedCurrentA = device.ratingsA === null ? leastRatedCurrentA : smallestRatingA(device, leastRatedCurrentA)
    if (ratedCurrentA !== null) return { device: name, ratedCurrentA, least }
  }
  return { reason: `no ${candidates.at(-1)} is made for the current` }
}

function devicesAt(vessel: Vessel, pointTag: Tag): readonly string[] {
  const { panels, circuitsFedFrom } = lookup(vessel)
  const panel = panels.get(pointTag)
  if (panel === undefined) return usualDevices.busbar
  const counts = new Map<string, number>()
  for (const { protection } of circuitsFedFrom.get(pointTag) ?? []) if (protection !== null) counts.set(protection.device, (counts.get(protection.device) ?? 0) + 1)
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a)
  return most === undefined ? usualDevices[panel.kind] : [most[0]]
}
