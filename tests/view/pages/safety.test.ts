import { expect, it } from 'vitest'
import { aVessel } from '../../support/vessel-builder.js'
import { safetyPages } from '../../../src/view/pages/safety.view.js'
import { contextOf, wordsOn } from './support.js'

const context = contextOf(aVessel())
const [page] = safetyPages(context)

it('explains the signal words first and then gives every caution in its own block', () => {
  expect(page!.blocks[0]?.is).toBe('markdown')
  const callouts = page!.blocks.slice(1)
  expect(callouts.map(block => block.is === 'callout' && [block.signal, block.title, block.markdown]))
    .toEqual(context.content.cautions.map(({ signal, title, markdown }) => [signal, title, markdown]))
  expect(callouts.length).toBeGreaterThanOrEqual(18)
})

// The hazards that the owner's manual of a small craft has to name: ISO 10240, 5.8 and 5.9 (fire, explosion, shock), Directive 2013/53/EU annex I, 2.5 (flooding).
it.each(['explosive', 'electrical fire', 'Mains voltage', 'sinks the boat', 'live system', 'higher fuse rating', 'without a record'])('speaks of: %s', words => {
  expect(wordsOn(page!)).toContain(words)
})
