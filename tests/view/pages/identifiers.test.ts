/** The page of identifiers and the card for a distress call. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { makeView } from '../../../src/view/make-view.js'
import { identifierPages } from '../../../src/view/pages/record/identifiers.view.js'
import { fixedPages } from '../../../src/view/site-map.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Page } from '../../../src/view/view-model.js'
import { aCable, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, tableIn, wordsOn, workingsOf } from './support.js'

const identity = { ...aVessel().identity, name: 'Grey Heron', flag: 'Norway', mmsi: '257506153', callSign: 'LABC2', hullIdentification: 'NO-ABC00042D626', maximumPersons: 6, lengthM: 11 }
const vessel = aVessel({
  identity,
  zones: [aZone({ tag: 'helm', name: 'Helm' }), aZone({ tag: 'stern', name: 'Stern' })],
  panels: [aPanel({ tag: 'A1', zoneTag: 'helm' })],
  circuits: [aCircuit({ tag: 'A1.4', fedFromTag: 'A1', way: 4, loadTags: ['T1'], protection: aProtection('circuit breaker', 10) })],
  equipment: [
    anEquipment({ tag: 'T1', name: 'VHF radio', kind: 'vhf transceiver', zoneTag: 'helm', location: 'under the console', dataFromTags: ['B1'] }),
    anEquipment({ tag: 'P2', name: 'Handset', kind: 'vhf handset', zoneTag: 'stern', dataFromTags: ['T1'] }),
    anEquipment({ tag: 'P3', name: 'Second handset', kind: 'vhf handset', zoneTag: 'helm' }),
    anEquipment({ tag: 'P4', name: 'Loose handset', kind: 'vhf handset', zoneTag: 'helm' }),
    anEquipment({ tag: 'B1', name: 'Position sensor', kind: 'gnss receiver', zoneTag: 'stern' }),
    anEquipment({ tag: 'P5', name: 'Chart display', kind: 'display', dataFromTags: ['B1'] }),
    anEquipment({ tag: 'P6', name: 'Rescue transmitter', kind: 'safety beacon', zoneTag: 'stern', location: 'red bag', mmsi: '970100001' }),
    anEquipment({ tag: 'P7', name: 'Distress beacon', kind: 'safety beacon', zoneTag: 'helm', beaconIdentity: '2024F72524FFBFF' }),
    anEquipment({ tag: 'P8', name: 'Beacon taken ashore', kind: 'safety beacon', zoneTag: 'helm', status: 'removed' }),
  ],
  cables: [aCable({ tag: 'W1', from: 'P3', to: 'T1' })],
})

const pagesOf = (given: Vessel): readonly Page[] => identifierPages(contextOf(given))
const pageOf = (given: Vessel, key: string): Page | undefined => pagesOf(given).find(page => page.key === key)
const spokenOn = (page: Page) => page.blocks.find((block): block is Extract<Block, { is: 'spoken' }> => block.is === 'spoken')
const factsOn = (page: Page) => new Map(page.blocks.flatMap(block => (block.is === 'facts' ? block.entries : [])).map(({ label, value }) => [label, plainText(value)]))

describe('the card for a distress call', () => {
  const card = pageOf(vessel, fixedPages.distress)!

  it('gives name, call sign and MMSI, and spells them', () => {
    const facts = factsOn(card)
    expect(facts.get('Name')).toBe('Grey Heron Golf Romeo Echo Yankee Hotel Echo Romeo Oscar November')
    expect(facts.get('Call sign')).toBe('LABC2 Lima Alfa Bravo Charlie two')
    expect(facts.get('MMSI')).toBe('257506153 two five seven, five zero six, one five three')
  })

  // Order of ITU Radio Regulations 32.13C and 32.13D, and 47 CFR 80.314 (c).
  it('has the words of the call in their order', () => {
    expect(spokenOn(card)!.lines.map(({ say }) => plainText(say))).toEqual([
      'MAYDAY, MAYDAY, MAYDAY', 'THIS IS GREY HERON, GREY HERON, GREY HERON',
      'CALL SIGN Lima Alfa Bravo Charlie two, MMSI two five seven, five zero six, one five three',
      'MAYDAY GREY HERON', 'CALL SIGN Lima Alfa Bravo Charlie two, MMSI two five seven, five zero six, one five three',
      'MY POSITION IS', 'I AM', 'I NEED', 'PERSONS ON BOARD', 'ALSO', 'OVER',
    ])
    expect(spokenOn(card)!.lines.filter(({ blank }) => blank !== null)).toHaveLength(5)
    expect(wordsOn(card)).toContain('6 at most')
  })

  it('says where the radio is, what it is spoken into, its fuse, its position', () => {
    const facts = factsOn(card)
    expect(facts.get('Radio')).toBe('T1 VHF radio, Helm: under the console')
    expect(facts.get('Spoken into')).toBe('P2 Handset, Stern P3 Second handset, Helm')
    expect(facts.get('Its fuse')).toMatch(/^A1\.4 circuit breaker 10.A, A1 way 4, Helm/)
    expect(facts.get('Its position')).toBe('from B1 Position sensor, Stern')
    expect(facts.get('Read it off')).toBe('P5 Chart display')
  })

  it('warns where a number cannot be right, and nowhere else', () => {
    const page = pageOf({ ...vessel, identity: { ...identity, mmsi: '002570001' } }, fixedPages.distress)!
    expect(factsOn(page).get('MMSI')).toMatch(/not in order, see Identifiers$/)
    expect(factsOn(page).get('Call sign')).not.toContain('order')
  })

  it('names a handheld radio after the others, and no fuse of it', () => {
    const page = pageOf({ ...vessel, equipment: [anEquipment({ tag: 'A0', name: 'Handheld', kind: 'vhf transceiver', mmsi: '825700001' }), ...vessel.equipment] }, fixedPages.distress)!
    expect([...factsOn(page).keys()].slice(3)).toEqual(['Radio', 'Spoken into', 'Its fuse', 'Its position', 'Read it off', 'Handheld radio', 'Beacon'])
  })

  it('lists each beacon that is on board', () => {
    expect(wordsOn(card)).toContain('Beacon P6 Rescue transmitter, Stern: red bag 970100001')
    expect(wordsOn(card)).toContain('Beacon P7 Distress beacon, Helm 2024F72524FFBFF')
    expect(wordsOn(card)).not.toContain('ashore')
  })

  it('has general words on urgency, safety and false alerts', () => {
    for (const words of ['PAN-PAN', 'SÉCURITÉ', 'False alert', 'channel 16', 'rescue coordination centre']) expect(wordsOn(card)).toContain(words)
  })

  it('leaves room for a call sign that is not recorded', () => {
    const page = pageOf({ ...vessel, identity: { ...identity, callSign: null, mmsi: null } }, fixedPages.distress)!
    expect(spokenOn(page)!.lines.filter(({ say }) => plainText(say) === 'CALL SIGN').map(({ blank }) => blank)).toEqual(Array(2).fill('from the radio licence'))
    expect(factsOn(page).get('MMSI')).toBe('not recorded')
  })

  it('speaks of beacons alone where there is no radio', () => {
    const page = pageOf({ ...vessel, equipment: vessel.equipment.filter(({ kind }) => kind !== 'vhf transceiver') }, fixedPages.distress)!
    expect(spokenOn(page)).toBeUndefined()
    expect(wordsOn(page)).toContain('No VHF radio is recorded.')
    expect(wordsOn(page)).toContain('Beacon P6')
  })

  it('is left out, with the ways to it, where there is neither', () => {
    const without = { ...vessel, equipment: [] }
    expect(pageOf(without, fixedPages.distress)).toBeUndefined()
    expect(linksToCard(without)).toEqual([])
    expect(linksToCard(vessel)).toEqual([fixedPages.home, fixedPages.emergency, fixedPages.safety])
  })
})

/** The pages that lead to the card before anything else. */
function linksToCard(given: Vessel): readonly string[] {
  const { vessel: made, results, basis, content, registries, edition } = contextOf(given)
  return makeView({ vessel: made, results, basis, findings: [], content, registries, edition }).pages
    .filter(({ blocks: [first] }) => first?.is === 'paragraph' && first.text.some(part => typeof part !== 'string' && part.is === 'link' && part.to === fixedPages.distress))
    .map(({ key }) => key)
}

describe('the page of identifiers', () => {
  const page = pageOf(vessel, fixedPages.identifiers)!

  it('lists every identity with form, verdict and source', () => {
    expect(tableIn(page, 'identities').rows.map(({ cells: [number, verdict, form] }) => [plainText(number!), plainText(verdict!), form![0]])).toEqual([
      ['257506153 MMSI, Grey Heron', 'in order', 'ship station'],
      ['LABC2 call sign, Grey Heron', 'in order', 'two characters, two letters and a digit'],
      ['NO-ABC00042D626 hull identification, Grey Heron', 'in order', 'craft identification number (CIN)'],
      ['970100001 MMSI, P6 Rescue transmitter', 'in order', 'AIS search and rescue transmitter (AIS-SART)'],
      ['2024F72524FFBFF beacon identity, P7 Distress beacon', 'in order', 'first generation, ship’s beacon by MMSI, location protocol'],
    ])
    expect(tableIn(page, 'identities').rows.every(({ cells: [, , form] }) => plainText(form!.slice(1)).length > 5)).toBe(true)
  })

  it('says why one is not in order', () => {
    const wrong = pageOf({ ...vessel, identity: { ...identity, mmsi: '002570001' } }, fixedPages.identifiers)!
    expect(cellsOf(tableIn(wrong, 'identities'))[0]![1]).toBe('not in order: the form of a coast station, not of a ship station')
  })

  it('reads each part by part', () => {
    const parts = cellsOf(tableIn(page, 'identity-parts'))
    expect(parts).toContainEqual(['257506153 Grey Heron', '257', 'Norway'])
    // The bits are those of the worked example in the Cospas-Sarsat coding guide.
    expect(parts).toContainEqual(['', '4F72524FFBFF', 'bits 41 to 60, 0111 1011 1001 0010 1001 as a number: last six digits of MMSI 257506153'])
    expect(parts).toContainEqual(['', 'D6', 'built in April of a year ending in 6'])
  })

  // 202 hexadecimal is 514; 514 mod 2048 = 514; half of it 257.
  it('shows how the country of a beacon is worked out', () => {
    const [working] = workingsOf(page)
    expect(working!.title).toBe('P7: 2024F72524FFBFF')
    expect(working!.inputs.map(({ value }) => value)).toEqual(['514', '202'])
    expect(working!.results.map(({ value }) => value)).toEqual(['257'])
  })

  it('is left out where nothing is recorded', () => {
    expect(pagesOf(aVessel())).toEqual([])
  })
})
