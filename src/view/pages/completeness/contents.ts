/** The contents that are asked for, held against the pages that this pack really has. */
import { contentState, type ContentResult, type ContentState } from '../../../model/results/completeness.js'
import type { ViewContext } from '../../context.js'
import type { PageKey } from '../../view-model.js'

export interface ShownContent extends ContentResult { readonly state: ContentState }

/** A page that the pack does not have holds nothing. */
export const shownContents = ({ results }: ViewContext, there: ReadonlySet<PageKey>): readonly ShownContent[] =>
  results.completeness.contents.map(content => {
    const absent = content.pageKeys.filter(key => !there.has(key))
    const shown = { ...content, pageKeys: content.pageKeys.filter(key => there.has(key)), lacks: [...content.lacks, ...absent.map(key => `the page "${key}"`)] }
    return { ...shown, state: contentState(shown) }
  })

/** Required contents of which nothing, or not all, is said anywhere. */
export const openContents = (contents: readonly ShownContent[]): readonly ShownContent[] =>
  contents.filter(({ isRequired, state }) => isRequired && (state === 'missing' || state === 'in part'))
