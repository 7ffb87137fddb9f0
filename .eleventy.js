/**
 * Wiring only. Everything a template prints comes from one global datum, the view; the render stage adds it, together
 * with the few filters that turn an address into a link and Markdown into HTML.
 */
export default function (config) {
  config.setQuietMode(true)
  config.addPassthroughCopy({ 'templates/assets': 'site/assets' })
  config.addPassthroughCopy({
    'node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2': 'site/assets/fonts/STIXTwoMath.woff2',
  })
  return {
    templateFormats: ['njk'],
    dir: { input: 'templates', includes: 'parts' },
  }
}
