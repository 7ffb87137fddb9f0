/** Words of the upkeep: when a task is done by season, and who may do it. */
export const seasons = ['spring', 'autumn', 'before a passage'] as const
export type Season = (typeof seasons)[number]

export const doers = ['owner', 'competent person', 'approved service'] as const
export type Doer = (typeof doers)[number]
