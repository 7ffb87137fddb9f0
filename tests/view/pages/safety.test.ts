import { expect, it } from 'vitest'
import { aBattery, aCircuit, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { hazards } from '../../../src/references/caution-words.js'
import { safetyPages } from '../../../src/view/pages/safety.view.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

/** One of whatever can hurt. */
const kinds = ['shore inlet', 'inverter', 'charger', 'alternator', 'engine', 'gyro stabiliser', 'radar scanner', 'heading sensor', 'vhf transceiver', 'display', 'transducer', 'gas cylinder', 'loudspeaker', 'bilge pump', 'heater', 'battery isolator']
const full = contextOf(aVessel({
  batteries: [aBattery({ tag: 'G1', chemistry: 'agm' }), aBattery({ tag: 'G2', chemistry: 'lfp' })],
  equipment: kinds.map((kind, i) => anEquipment({ tag: `Z${i}`, kind })), circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1' })],
}))
const pageOf = (context: typeof full) => safetyPages(context)[0]!
const calloutsOf = (context: typeof full) => pageOf(context).blocks.flatMap(block => (block.is === 'callout' ? [block.title] : []))

it('explains the signal words first and then gives every caution once, hazard by hazard', () => {
  expect(pageOf(full).blocks.find(({ is }) => is !== 'paragraph')?.is).toBe('markdown')
  expect(calloutsOf(full).toSorted()).toEqual(full.content.cautions.map(({ title }) => title).toSorted())
  const headings = pageOf(full).blocks.flatMap(block => (block.is === 'heading' ? [block.text.toLowerCase()] : []))
  expect(headings).toEqual([...hazards])
  expect(cellsOf(tableIn(pageOf(full), 'hazards')).map(([hazard]) => hazard!.toLowerCase())).toEqual([...hazards])
})

it('says which things on board each is about', () => {
  const words = wordsOn(pageOf(full))
  expect(words).toContain('On board: Z6 Equipment Z6.')
})

it('leaves out what a boat has nothing of, and names it', () => {
  const bare = contextOf(aVessel({ batteries: [aBattery({ tag: 'G1', chemistry: 'agm' })] }))
  expect(calloutsOf(bare).join(' ')).toMatch(/Lead-acid/)
  expect(calloutsOf(bare).join(' ')).not.toMatch(/Lithium|Cooking gas|gyro|Mains/)
  expect(wordsOn(pageOf(bare))).toMatch(/Left out.*Lithium batteries can burn without air.*Cooking gas/)
})

// The hazards that the owner's manual of a small craft has to name: ISO 10240, 5.8 and 5.9 (fire, explosion, shock), Directive 2013/53/EU annex I, 2.5 (fire, flooding).
it.each(['explosive', 'electrical fire', 'Mains voltage', 'sinks the boat', 'live system', 'higher fuse rating', 'without a record'])('speaks of: %s', words => {
  expect(wordsOn(pageOf(full))).toContain(words)
})
// Of these no boat is without, whatever is recorded.
it.each(['electrical fire', 'sinks the boat', 'live system', 'higher fuse rating', 'without a record'])('speaks of it on every boat: %s', words => {
  expect(wordsOn(pageOf(contextOf(aVessel())))).toContain(words)
})
