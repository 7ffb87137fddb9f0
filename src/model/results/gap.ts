/** A result that is missing for want of data, or because no rule is known for the case. */
import type { Tag } from '../vessel.js'

export interface Gap { readonly subjectTag: Tag; readonly reason: string }
