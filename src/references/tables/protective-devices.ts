/** Kinds of overcurrent protective device: the ratings they are made in, and what they can interrupt. */
import type { Citation } from '../bibliography.js'

export interface ProtectiveDevice {
  /** Standard ratings in ampere, rising; null: set or programmed, so that any rating can occur. */
  readonly ratingsA: readonly number[] | null
  readonly citation: Citation
  /** What it can interrupt on d.c.; null where that differs from make to make and must be read off the device. */
  readonly interrupts: Interrupts | null
}
export interface Interrupts {
  /** Largest current it can break at up to each voltage, by rising voltage; the last is its voltage rating. */
  readonly steps: readonly { readonly upToV: number; readonly capacityA: number }[]
  readonly citation: Citation
}

const interrupts = (source: Citation['source'], place: string, ...steps: readonly (readonly [upToV: number, capacityA: number])[]): Interrupts =>
  ({ steps: steps.map(([upToV, capacityA]) => ({ upToV, capacityA })), citation: { source, place: `${place}, voltage and interrupting capacity`, standing: 'from memory' } })

export const protectiveDevices = {
  'blade fuse': {
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    citation: { source: 'iso-8820-3', place: 'type C' },
    interrupts: interrupts('iso-8820-3', 'type C', [32, 1000]),
  },
  'mini blade fuse': {
    ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
    citation: { source: 'iso-8820-3', place: 'type F' },
    interrupts: interrupts('iso-8820-3', 'type F', [32, 1000]),
  },
  'maxi blade fuse': {
    ratingsA: [20, 25, 30, 35, 40, 50, 60, 70, 80, 100],
    citation: { source: 'iso-8820-3', place: 'type E' },
    interrupts: interrupts('iso-8820-3', 'type E', [32, 1000]),
  },
  'bolt-in fuse, small': {
    ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200],
    citation: { source: 'iso-8820-5', place: 'type SF30' },
    interrupts: interrupts('iso-8820-5', 'type SF30', [32, 2000]),
  },
  'bolt-in fuse, large': {
    ratingsA: [40, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500],
    citation: { source: 'iso-8820-5', place: 'type SF51' },
    interrupts: interrupts('iso-8820-5', 'type SF51', [32, 2000]),
  },
  'terminal fuse': {
    ratingsA: [30, 40, 50, 60, 75, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300],
    citation: { source: 'common-practice', place: 'fuses mounted on a battery or busbar stud' },
    interrupts: interrupts('common-practice', 'fuses mounted on a battery or busbar stud', [14, 10000], [32, 5000], [58, 2000]),
  },
  'flat-link fuse': {
    ratingsA: [35, 40, 50, 60, 80, 100, 130, 150, 175, 200, 225, 250, 275, 300, 325, 350, 400, 500, 600, 675, 750],
    citation: { source: 'common-practice', place: 'bolted flat-link fuses' },
    interrupts: interrupts('common-practice', 'bolted flat-link fuses', [32, 6000]),
  },
  'class T fuse': {
    ratingsA: [60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400],
    citation: { source: 'ul-248-15', place: 'class T' },
    interrupts: interrupts('ul-248-15', 'class T', [125, 20000]),
  },
  'circuit breaker': {
    ratingsA: [5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 120, 150, 175, 200],
    citation: { source: 'common-practice', place: 'breaker sizes in common use; above 100 A surface-mounted main breakers' },
    interrupts: null,
  },
  'miniature circuit breaker': {
    ratingsA: [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125],
    citation: { source: 'iec-60898-1', place: 'preferred rated currents' },
    interrupts: null,
  },
  'electronic channel': {
    ratingsA: null,
    citation: { source: 'common-practice', place: 'programmed per channel' },
    interrupts: null,
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

/** The largest current that a device of the kind can break on d.c. of a voltage; null above its voltage rating, and when its kind does not tell. */
export const typicalCapacityA = ({ interrupts }: ProtectiveDevice, voltageV: number): number | null =>
  interrupts?.steps.find(({ upToV }) => voltageV <= upToV)?.capacityA ?? null

/** The voltage rating on d.c. that devices of the kind have; null when their kind does not tell. */
export const typicalVoltageRatingV = ({ interrupts }: ProtectiveDevice): number | null => interrupts?.steps.at(-1)?.upToV ?? null
