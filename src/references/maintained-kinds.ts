/** Words besides the kinds of equipment by which a task of maintenance says what it is for. */
export const maintainedKinds = [
  'battery', 'lead-acid battery', 'lithium battery', 'flooded battery', 'agm battery', 'gel battery',
  'busbar', 'panel', 'breaker panel', 'fuse panel', 'fuse block', 'switching module',
  // Safety beacons of two sorts, and a radio that is carried.
  'distress beacon', 'rescue transmitter', 'handheld vhf transceiver',
] as const
export type MaintainedKind = (typeof maintainedKinds)[number]

export const isMaintainedKind = (key: string): key is MaintainedKind => maintainedKinds.some(kind => kind === key)
