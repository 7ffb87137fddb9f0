import { describe, expect, it } from 'vitest'
import { radioFacts } from '../../../src/view/pages/radio/item-facts.js'
import { radioPages } from '../../../src/view/pages/radio/radio.view.js'
import { aPlace, aStructure, aTransmitter, coax, gnss, radio, radioBoat, scanner, stated, whip } from '../../calculate/radio/support.js'
import { plainText } from '../../../src/view/tables.js'
import { aMeasurement, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { contextOf, tableIn, tablesOf, wordsOn, workingsOf } from './support.js'

const pageOf = (vessel: Parameters<typeof contextOf>[0]) => radioPages(contextOf(vessel))[0]!

/** Radio 25 W and AIS 2 W through a splitter on one whip; a radar above; somebody beside it; a deckhouse ahead. */
const splitter = anEquipment({ tag: 'X1', name: 'Splitter', kind: 'antenna splitter', portLosses: [{ fromTerminal: 'antenna', toTerminal: 'vhf', lossDb: 0.5 }, { fromTerminal: 'antenna', toTerminal: 'ais', lossDb: 1 }] })
const vessel = aVessel({
  equipment: [
    radio('T1', { name: 'Radio' }), radio('T2', { name: 'AIS', kind: 'ais transceiver', transmitters: [aTransmitter({ service: 'AIS', powerW: 2, frequencyMHz: 162 })] }), splitter,
    { ...whip('T11', [4, 0, 4], { lengthM: 2, vswrFactor: 1.5 }), name: 'Whip' }, { ...scanner('B1', [4, 2, 5]), name: 'Scanner' }, { ...gnss('B5', [3, 0, 2]), name: 'GNSS' },
  ],
  cableTypes: [stated],
  cables: [coax('W1', 'T1:antenna', 'X1:vhf', { lengthM: 1 }), coax('W2', 'T2:antenna', 'X1:ais', { lengthM: 1 }), coax('W3', 'X1:antenna', 'T11:coax')],
  structures: [aStructure('S1', [4, -2, 0], [8, 2, 3])],
  standingPlaces: [aPlace('H1', [4, 1, 3])],
  measurements: [aMeasurement({ number: '7', subjectTag: 'T1', vswrFactor: 1.2, date: '2026-05-04' })],
})

describe('a vessel without radio', () => {
  it('has no such page', () => expect(radioPages(contextOf(aVessel()))).toEqual([]))
  it('has one as soon as there is something to say of it', () => {
    expect(wordsOn(pageOf(aVessel({ equipment: [radio('T1', { transmitters: [] })] })))).toContain('what it transmits is not recorded')
  })
})

describe('the page', () => {
  const words = wordsOn(pageOf(vessel))
  it('begins with the caution and then says all in short', () => {
    const [first, more, summary] = pageOf(vessel).blocks
    expect(first).toMatchObject({ is: 'callout', signal: 'WARNING', title: 'Radar and transmitting antennas radiate' })
    expect(more).toMatchObject({ is: 'paragraph' })
    expect(summary).toMatchObject({ is: 'facts' })
    // 25 · 10^(−2.6/10) = 13.74 W; 2.23 (√5 + √100) = 27.3 NM
    expect(words).toMatch(/Power at the antenna VHF voice: 13\.7 W of 25\.0 W at T11/)
    expect(words).toMatch(/Radio range T11 from 7\.7 NM \(to a handheld\) to 27\.3 NM/)
  })
  // 0.1 + 0.5, 0.5, 1 + 0.5 dB
  it('gives the way to the antenna step by step, with its sum and its sums', () => {
    expect(words).toMatch(/W1 \| 10\.00 dB\/100 m \| 1\.00 m \| 2 \| 0\.60 dB/)
    expect(words).toContain('X1 Splitter vhf to antenna | – | – | – | 0.50 dB')
    expect(words).toContain('Sum 2.6 dB')
    const titles = workingsOf(pageOf(vessel)).map(({ title }) => title)
    expect(titles).toEqual([...new Set(titles)])
    expect(titles).toContain('Power at the antenna, T1 to T11, VHF voice')
  })
  it('says that a shared antenna needs no distance and that the splitter counts', () => {
    expect(words).toContain('T1 Radio and T2 AIS use one antenna, T11 Whip, through X1 Splitter. Between the two no distance is needed; what the splitter takes counts as loss.')
  })
  it('says distances with the rule that holds, the worst first', () => {
    // The radar stands 2 m beside the whip; the GNSS antenna 1 m and, from 2 m up to 4 m, 2 m below it.
    expect(words).toMatch(/T11 Whip B5 GNSS \| 1\.00 m common practice kept \| 1\.00 m \| 2\.00 m \| 2\.24 m/)
    expect(words).toMatch(/B1 Scanner T11 Whip \| 1\.00 m common practice kept \| 2\.00 m \| 0\.00 m \| 2\.00 m/)
  })
  it('prints the positions and gains that all of that comes from', () => {
    expect(words).toMatch(/T11 Whip \| 4\.00 m \| 0\.00 m \| 4\.00 m to 6\.00 m \| 3\.0 dBi/)
    expect(words).toMatch(/B1 Scanner \| 4\.00 m \| 2\.00 m \| 5\.00 m \| 27\.0 dBi/)
  })
  it('says what stands in the beam', () => {
    expect(words).toMatch(/T11 Whip \| in the beam \| 2\.00 m \| level/)
    expect(words).toMatch(/H1 Place H1 \| in the beam \| 1\.00 m \| 11\.3 ° down/)
  })
  it('says who is too near, defers to makers and authorities, and rounds up', () => {
    expect(words).toMatch(/B1 Scanner \| 2\.60 m by 47 CFR 1\.1310 \| 1\.02 m H1 Place H1 too near/)
    // 13.74 W, 3 dBi: 27.4 W; √(27.41 · 2.56 / 8π) = 1.671 m
    expect(words).toMatch(/T11 \| 47 CFR 1\.1310 general public \| 2\.00 W\/m² over 30 min \| 1\.68 m \| 1\.19 m sending 50 % of the time/)
    expect(words).toContain('Makers’ manuals, local law and the authorities come first')
    expect(tableIn(pageOf(vessel), 'radio-keep-away').rows.map(({ level }) => level)).toEqual(['warning', 'warning'])
  })
  it('counts everybody where the maker of a radar states the distance', () => {
    const below = { ...vessel, standingPlaces: [aPlace('H1', [4, 1, 1])] }
    expect(wordsOn(pageOf(below))).toMatch(/B1 Scanner \| 2\.60 m by 47 CFR 1\.1310 \| everybody is clear of the beam kept/)
    // Head at 2.8 m, 2.2 m below and 1 m beside
    const stated = { ...below, equipment: below.equipment.map(item => (item.radar === null ? item : { ...item, radar: { ...item.radar, safeDistanceM: 2 } })) }
    expect(wordsOn(pageOf(stated))).toMatch(/B1 Scanner \| 2\.00 m by its maker \| 2\.42 m H1 Place H1 kept/)
  })
  it('says how much of the sky is hidden, where, and by what', () => {
    // From 3 m forward and 2 m up the deckhouse begins 1 m ahead, 1 m higher, 2 m to both sides: 63.4°, up to 45°
    expect(words).toMatch(/B5 \| 296\.6 ° to 63\.4 ° \| 45\.0 ° \| S1 Structure S1 \| \d+\.\d %/)
  })
  it('says what a reading means at the antenna', () => {
    // RL 20.83 − 2 · 2.6 = 15.63 dB: 1.397; on the limit 13.98 + 5.2 = 19.18 dB: 1.247
    expect(words).toMatch(/T1 Radio towards T11 \| 7 2026-05-04 \| 1\.200 return loss 20\.83 dB \| 1\.247 behind 2\.60 dB \| 1\.39\d limit 1\.500 within/)
  })
  it('draws them from the side and from astern, and says the same in words', () => {
    const drawings = pageOf(vessel).blocks.flatMap(block => (block.is === 'drawing' ? [block] : []))
    expect(drawings.map(({ caption }) => caption)).toEqual(['Antennas seen from starboard, bow to the right', 'Antennas seen from astern, port to the left'])
    expect(words).toContain('T11 Whip, 4.00 m to 6.00 m up; B5 GNSS, 2.00 m up; B1 Scanner')
    // From astern what stands to port stands left of the middle: B1 2 m to port, T11 on the centreline.
    const xOf = (svg: string, fill: string) => Number(new RegExp(`<(?:circle cx|rect x)="([\\d.]+)"[^>]*fill="${fill}"`).exec(svg)?.[1])
    expect(xOf(drawings[1]!.svg, '#a8201a')).toBeLessThan(xOf(drawings[1]!.svg, '#0f5a78'))
  })
  it('keeps its tables narrow and names each once', () => {
    const tables = tablesOf(pageOf(vessel))
    expect(tables.filter(({ columns }) => columns.length > 6).map(({ id }) => id)).toEqual([])
    expect(tables.map(({ id }) => id)).toEqual([...new Set(tables.map(({ id }) => id))])
  })
  it('reads well on a vessel of feet and inches', () => {
    // 2.6 m are 8.53 ft, 1.671 m are 5.48 ft: never less than it is
    const us = wordsOn(pageOf({ ...vessel, units: 'us' }))
    expect(us).toMatch(/B1 Scanner \| 8\.6 ft by 47 CFR 1\.1310/)
    expect(us).toMatch(/2\.00 W\/m² over 30 min \| 5\.5 ft/)
  })
})

describe('what is not assessed', () => {
  it('is said in its cell and in the list, and never as kept', () => {
    const silent = wordsOn(pageOf(radioBoat({}, { gainDbi: null }, null)))
    expect(silent).toMatch(/T11 .* \| not assessed \| not assessed: the gain of T11 is not recorded/)
    expect(silent).toContain('exposure of people: the gain of T11 is not recorded')
    expect(silent).not.toContain('kept')
  })
})

it('names what is not held against a limit that has no value there', () => {
  const noValue = 'no values of ICNIRP 2020 are tabulated: K4 is not held against them'
  const pageAt = (frequencyMHz: number) => wordsOn(pageOf(aVessel({ equipment: [{ ...whip('K4', [1, 0, 2], { fromMHz: 1, toMHz: 9000 }), transmitters: [aTransmitter({ terminal: null, frequencyMHz })] }] })))
  expect([pageAt(847).includes(noValue), pageAt(2400).includes(noValue)]).toEqual([true, false])
})

describe('pages of items', () => {
  const factsOn = (item: Parameters<typeof radioFacts>[1]) => radioFacts(contextOf(vessel), item).map(({ label, value }) => `${label}: ${plainText(value)}`)
  it('say what they send, how their antenna is and what is lost between connectors', () => {
    expect(factsOn(radio('T1', { transmitters: [aTransmitter({ dutyPercent: 50 })] }))).toEqual(['Sends: VHF voice 25\u00A0W, 156.8\u00A0MHz, 50\u00A0% of the time, at connector antenna'])
    expect(factsOn(whip('T11', null, { lengthM: 2, vswrFactor: 1.5, clearanceM: 0.4 }))).toEqual(['Antenna: 3\u00A0dBi gain, 156\u00A0MHz to 163\u00A0MHz, 2.00\u00A0m long above its position, standing wave ratio at most 1.500, 0.40\u00A0m from other antennas asked for'])
    expect(factsOn(splitter)).toEqual(['Loss between connectors: antenna and vhf 0.50\u00A0dB, antenna and ais 1.00\u00A0dB'])
    expect(factsOn(scanner('B1', null, { safeDistanceM: 0.5 }))).toEqual([
      'Radar: 9410\u00A0MHz, 4000\u00A0W peak, 0.7\u00A0µs pulse, 600\u00A0Hz repetition, 27\u00A0dBi gain', 'Its beam: 4\u00A0° wide, 25\u00A0° high', 'People keep: 0.50\u00A0m by its maker',
    ])
    expect(factsOn(gnss('B5'))).toEqual([])
  })
})
