/** Small pieces of the sentences that findings and reasons are made of. */

const most = 8
const list = new Intl.ListFormat('en-GB', { type: 'conjunction' })

/** `P1, P2 and P3`; of a long list the first eight and how many more. */
export function inWords(tags: readonly string[]): string {
  return tags.length <= most ? list.format(tags) : `${tags.slice(0, most).join(', ')} and ${tags.length - most} more`
}
