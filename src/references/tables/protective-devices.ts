/** Kinds of overcurrent protective device and the ratings they are made in. */
import type { Citation } from '../bibliography.js'

export interface ProtectiveDevice {
  /** Standard ratings in ampere, rising; null: set or programmed, so that any rating can occur. */
  readonly ratingsA: readonly number[] | null
  readonly citation: Citation
}

export const protectiveDevices = {
  'blade fuse': {
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    citation: { source: 'iso-8820-3', place: 'type C' },
  },
  'mini blade fuse': {
    ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
    citation: { source: 'iso-8820-3', place: 'type F' },
  },
  'maxi blade fuse': {
    ratingsA: [20, 25, 30, 35, 40, 50, 60, 70, 80, 100],
    citation: { source: 'iso-8820-3', place: 'type E' },
  },
  'bolt-in fuse, small': {
    ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200],
    citation: { source: 'iso-8820-5', place: 'type SF30' },
  },
  'bolt-in fuse, large': {
    ratingsA: [40, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500],
    citation: { source: 'iso-8820-5', place: 'type SF51' },
  },
  'terminal fuse': {
    ratingsA: [30, 40, 50, 60, 75, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300],
    citation: { source: 'common-practice', place: 'fuses mounted on a battery or busbar stud' },
  },
  'flat-link fuse': {
    ratingsA: [35, 40, 50, 60, 80, 100, 130, 150, 175, 200, 225, 250, 275, 300, 325, 350, 400, 500, 600, 675, 750],
    citation: { source: 'common-practice', place: 'bolted flat-link fuses' },
  },
  'class T fuse': {
    ratingsA: [60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400],
    citation: { source: 'ul-248-15', place: 'class T' },
  },
  'circuit breaker': {
    ratingsA: [5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 120, 150, 175, 200],
    citation: { source: 'common-practice', place: 'breaker sizes in common use; above 100 A surface-mounted main breakers' },
  },
  'electronic channel': {
    ratingsA: null,
    citation: { source: 'common-practice', place: 'programmed per channel' },
  },
} as const satisfies Record<string, ProtectiveDevice>

export type ProtectiveDeviceKey = keyof typeof protectiveDevices
export const protectiveDeviceKeys = Object.keys(protectiveDevices) as [ProtectiveDeviceKey, ...ProtectiveDeviceKey[]]

/** The device by the key in the vessel's data, or null when the key is not known. */
export const protectiveDevice = (key: string): ProtectiveDevice | null =>
  Object.hasOwn(protectiveDevices, key) ? protectiveDevices[key as ProtectiveDeviceKey] : null

/** The largest rating the device is made in that is at most the given current; null when there is none or any can be set. */
export const largestRatingA = ({ ratingsA }: ProtectiveDevice, atMostA: number): number | null =>
  ratingsA?.findLast(rating => rating <= atMostA) ?? null

/** The smallest rating the device is made in that is at least the given current; null when there is none or any can be set. */
export const smallestRatingA = ({ ratingsA }: ProtectiveDevice, atLeastA: number): number | null =>
  ratingsA?.find(rating => rating >= atLeastA) ?? null
