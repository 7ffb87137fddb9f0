/** Pages of the manual on which a procedure of the yard can take the place of the general text; the same words address them. */
export const emergencyTasks = ['isolate', 'fire', 'flooding', 'loss-of-supply', 'loss-of-steering', 'person-overboard'] as const
export type EmergencyTask = (typeof emergencyTasks)[number]

export const ownerTasks = ['orientation', 'first-hour', 'shore-power-connect', 'shore-power-disconnect', 'start-up', 'shut-down', 'night-at-anchor', 'leaving-the-boat'] as const
export type OwnerTask = (typeof ownerTasks)[number]

export const procedurePlaces = [...emergencyTasks, ...ownerTasks] as const
export type ProcedurePlace = (typeof procedurePlaces)[number]
