/** Small makers of SVG text. */

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }
export const escaped = (text: string): string => text.replace(/[&<>"]/g, letter => entities[letter]!)

/** Coordinates with a tenth of a unit; the same bytes for the same place. */
export const at = (value: number): string => String(Math.round(value * 10) / 10)

export const element = (name: string, attributes: Readonly<Record<string, string | number>>, content = ''): string => {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${typeof value === 'number' ? at(value) : escaped(value)}"`).join('')
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`
}
export const label = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): string =>
  element('text', { x, y, 'text-anchor': anchor }, escaped(text))
/** Drawn things that lead to a page; `title` for those that carry no words of their own. */
export const linked = (to: string | null, content: string, title: string | null = null): string => {
  const titled = title === null ? content : element('title', {}, escaped(title)) + content
  return to === null ? element('g', {}, titled) : element('a', { href: `asfitted:${to}` }, titled)
}
