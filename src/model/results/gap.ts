/** A result that is missing for want of data, or because no rule is known for the case. */
import type { Tag } from '../vessel.js'

export interface Gap { readonly subjectTag: Tag; readonly reason: string }

/** The same for all calculations together. `needs`: what to record so that it can be calculated. `partTag`: the load or cable of the subject that it is about. */
export interface NotAssessed { readonly calculation: string; readonly needs: string; readonly subjectTag: Tag; readonly partTag: Tag | null; readonly reason: string }
