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
