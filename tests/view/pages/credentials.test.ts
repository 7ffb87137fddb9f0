import { describe, expect, it } from 'vitest'
import { vesselForEdition } from '../../../src/model/edition.js'
import type { Credential, Edition } from '../../../src/model/vessel.js'
import { configurationPages } from '../../../src/view/pages/record/configuration.view.js'
import { anEquipment, aVessel } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, wordsOn } from './support.js'

const credential = (given: Partial<Credential> & Pick<Credential, 'name'>): Credential =>
  ({ itemTag: 'K1', user: null, secret: null, keptAt: null, editions: ['owner'], withheld: false, ...given })
const boat = aVessel({
  equipment: [anEquipment({ tag: 'K1', name: 'Router', address: '10.0.0.1' })],
  credentials: [
    credential({ name: 'Administrator', user: 'admin', secret: 'otter', keptAt: 'safe' }),
    credential({ name: 'Dealer menu', secret: '4711', editions: ['service', 'yard'] }),
    credential({ name: 'Key', keptAt: 'folder' }),
  ],
})
const pagesFor = (edition: Edition, vessel = boat) => configurationPages(contextOf(vesselForEdition(vessel, edition), { edition }))
const rowsFor = (edition: Edition) => cellsOf(tableIn(pagesFor(edition).at(-1)!, 'logging-in'))

describe('logging in', () => {
  it('shows in each edition what it may carry, and of the rest where it is kept', () => {
    expect(rowsFor('owner')).toEqual([['K1 Router Administrator', 'admin', 'otter kept: safe'], ['K1 Router Dealer menu', '–', 'not in this edition'], ['K1 Router Key', '–', 'kept: folder']])
    expect(rowsFor('service')).toEqual([['K1 Router Administrator', '–', 'not in this edition kept: safe'], ['K1 Router Dealer menu', '–', '4711'], ['K1 Router Key', '–', 'kept: folder']])
  })

  it('asks to take the sheet out where there is a secret on it, and says that there is none where there is none', () => {
    expect(wordsOn(pagesFor('owner').at(-1)!)).toContain('NOTICE Passwords and keys are on this sheet - Take this sheet out')
    const bare = { ...boat, credentials: [credential({ name: 'Key', keptAt: 'folder' })] }
    expect(wordsOn(pagesFor('yard', bare).at(-1)!)).toContain('This is the yard edition. No password, key or PIN is in it')
  })

  it('is led to from the device in the configuration record', () => {
    expect(wordsOn(pagesFor('owner')[0]!)).toContain('How to log in is under Logging in.')
  })

  it('is left out where nothing asks for a password', () => {
    expect(pagesFor('owner', { ...boat, credentials: [] }).map(({ key }) => key)).toEqual(['settings'])
  })
})
