/** README and DEVELOPERS say what is there. */
import { describe, expect, it } from 'vitest'
import { filesBelow, foldersIn, textOf } from './files.js'

describe('DEVELOPERS.md', () => {
  const text = textOf('DEVELOPERS.md')
  it('names every folder in src, and none that is not there', () => {
    const named = [...text.matchAll(/^\| `src\/([a-z-]+)\/`/gm)].map(([, folder]) => folder!)
    expect(named.toSorted()).toEqual(foldersIn('src'))
  })
})

describe('README.md', () => {
  const text = textOf('README.md')
  it('names only scripts that package.json has', () => {
    const scripts = Object.keys(JSON.parse(textOf('package.json')).scripts as Record<string, string>)
    for (const [, script] of text.matchAll(/npm run ([a-z-]+)/g)) expect(scripts).toContain(script)
  })
  it('is followed by .ci/run', () => {
    const [, command] = /^(npm ci && npm test)\s/m.exec(text) ?? []
    expect(textOf('.ci/run')).toContain(command!)
  })
})

describe('every file', () => {
  it('is at most about 400 lines', () => {
    const long = [...filesBelow('src', '.ts'), ...filesBelow('tests', '.ts')].filter(file => textOf(file).split('\n').length > 420)
    expect(long).toEqual([])
  })
})
