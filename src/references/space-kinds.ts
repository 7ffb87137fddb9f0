/** Kinds of space that a zone can be. */
export const spaceKinds = ['interior', 'machinery', 'bilge', 'battery', 'deck', 'mast', 'cockpit', 'locker'] as const
export type SpaceKind = (typeof spaceKinds)[number]
