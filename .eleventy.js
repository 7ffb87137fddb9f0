/**
 * Wiring only. Eleventy runs once for the site and once for the document behind the PDF, each with its own folder of
 * templates; both share the parts and the assets. Everything a template prints comes from the view, which the render stage
 * adds together with the few filters that turn an address into a link and Markdown into HTML.
 */
export default function (config) {
  config.setQuietMode(true)
  config.addPassthroughCopy({ 'templates/assets': 'assets' })
  config.addPassthroughCopy({
    'node_modules/@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2': 'assets/fonts/STIXTwoMath.woff2',
  })
  return {
    templateFormats: ['njk'],
    dir: { includes: '../parts' },
  }
}
