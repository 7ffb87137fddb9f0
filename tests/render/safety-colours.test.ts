/**
 * Colours of the signal words against ANSI Z535.1, which fixes them in the Munsell system: safety red 7.5R 4/14, orange
 * 5YR 6/15, yellow 5Y 8/12, blue 2.5PB 3.5/10 (from memory). The pairs of word, colour and meaning are in ANSI Z535.4 and ISO 3864-2.
 */
import { describe, expect, it } from 'vitest'
import { textOf } from '../repository/files.js'

const css = textOf('templates/assets/blocks.css')
const colourOf = (word: string) => {
  const [, field, ink] = new RegExp(`^\\.signal-${word} \\{ --signal: (#[0-9a-f]{6}); --signal-ink: (#[0-9a-f]{3}); \\}$`, 'm').exec(css) ?? []
  if (field === undefined || ink === undefined) throw new Error(`no colour for ${word}`)
  return { field, ink: ink === '#fff' ? '#ffffff' : '#000000' }
}
const channels = (hex: string) => [1, 3, 5].map(at => parseInt(hex.slice(at, at + 2), 16) / 255) as [number, number, number]
const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
/** Relative luminance, IEC 61966-2-1 (sRGB). */
const luminance = (hex: string): number => { const [r, g, b] = channels(hex).map(linear) as [number, number, number]; return 0.2126 * r + 0.7152 * g + 0.0722 * b }
/** WCAG 2: 4.5 for running text, 3 for large. */
const contrast = (a: string, b: string): number => { const [low, high] = [luminance(a), luminance(b)].toSorted((x, y) => x - y) as [number, number]; return (high + 0.05) / (low + 0.05) }
/** Lightness of CIE 1976; a Munsell value is a tenth of it, within 0.2 (ASTM D1535, from memory). */
const munsellValue = (hex: string): number => (116 * Math.cbrt(luminance(hex)) - 16) / 10
function hueDeg(hex: string): number {
  const [r, g, b] = channels(hex)
  return ((Math.atan2(Math.sqrt(3) * (g - b), 2 * r - g - b) * 180) / Math.PI + 360) % 360
}

describe('signal colours', () => {
  // Hue on the colour circle of the screen: red at 0°, yellow at 60°, blue at 240°. A Munsell orange of 5YR lies about half way to yellow.
  it.each([
    ['danger', 4, 350, '#ffffff'], ['warning', 6, 30, '#000000'], ['caution', 8, 48, '#000000'], ['notice', 3.5, 216, '#ffffff'],
  ] as const)('%s: value %f, hue about %f°', (word, value, hue, ink) => {
    const colour = colourOf(word)
    expect(Math.abs(munsellValue(colour.field) - value)).toBeLessThan(0.8)
    const apart = Math.abs(hueDeg(colour.field) - hue)
    expect(Math.min(apart, 360 - apart)).toBeLessThan(12)
    expect(colour.ink).toBe(ink)
    expect(contrast(colour.field, ink)).toBeGreaterThan(4.5)
  })
  it('stay as they are in the dark and in print', () => {
    for (const file of ['site.css', 'manual.css']) expect(textOf(`templates/assets/${file}`)).not.toMatch(/--signal|\.signal-(danger|warning|caution|notice)\s*\{/)
    expect(css).toMatch(/\.callout \.signal \{[^}]*print-color-adjust: exact/)
  })
  it('the alert symbol stands with every word but NOTICE', () => {
    expect(css).toMatch(/\.callout:not\(\.signal-notice\) \.signal::before \{[^}]*clip-path: var\(--alert\)/)
  })
})
