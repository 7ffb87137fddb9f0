/** Order of tags as people read them: W2 before W10. */
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })
export const byTag = (a: { readonly tag: string }, b: { readonly tag: string }): number => collator.compare(a.tag, b.tag) || (a.tag < b.tag ? -1 : 1)
export const compareTags = (a: string, b: string): number => collator.compare(a, b)
