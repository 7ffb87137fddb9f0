import { describe, expect, it } from 'vitest'
import type { BackboneElement } from '../../../src/model/vessel.js'
import { canBusDiagrams } from '../../../src/view/diagrams/can-bus.mermaid.js'
import { aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, aZone } from '../../support/vessel-builder.js'
import { boxesIn, diagramsOf, inWords, linesIn } from './support.js'

const terminator = (tag: string): BackboneElement => ({ kind: 'terminator', tag, zoneTag: null, resistanceOhm: null })
const segment = (cableTag: string): BackboneElement => ({ kind: 'segment', cableTag })
const tee = (tag: string, deviceTag: string | null, dropCableTag: string | null = null, zoneTag: string | null = null): BackboneElement =>
  ({ kind: 'tee', tag, zoneTag, deviceTag, dropCableTag, deviceTerminal: null })
const bus = (...backbone: BackboneElement[]) => ({ tag: 'C1', name: 'Navigation bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone })
const canCable = (tag: string, from: string, to: string, lengthM: number) => aCable({ tag, from, to, typeTag: 'can', carries: 'none', lengthM })

const small = aVessel({
  zones: [aZone({ tag: 'Z1', name: 'Wheelhouse' })],
  cableTypes: [aCableType({ tag: 'can', use: 'can bus' })],
  panels: [aPanel({ tag: 'A1', name: 'Panel', kind: 'fuse panel' }), aPanel({ tag: 'K1', name: 'Forward module', kind: 'switching module' })],
  circuits: [aCircuit({ tag: 'A1.9', name: 'Bus supply', fedFromTag: 'A1', way: 9, protection: aProtection('blade fuse', 3) })],
  equipment: [
    anEquipment({ tag: 'P1', name: 'Display', kind: 'display', loadEquivalencyNumber: 4 }),
    anEquipment({ tag: 'B1', name: 'Wind sensor', kind: 'wind sensor' }),
  ],
  cables: [canCable('W1', 'X1', 'X2', 2.5), canCable('W2', 'X3', 'X4', 6), canCable('W11', 'X1', 'P1', 1), canCable('W14', 'X4', 'B1', 3.2)],
  canBuses: [bus(
    terminator('R1'), tee('X1', 'P1', 'W11', 'Z1'), segment('W1'), { kind: 'power', tag: 'X2', zoneTag: null, circuitTag: 'A1.9', dropCableTag: null, supplyVoltageV: null },
    tee('X3', null), segment('W2'), segment('W3'), tee('X4', 'B1', 'W14'), tee('X5', 'K1'), terminator('R2'),
  )],
})

describe('the diagram of a CAN bus', () => {
  const [sheet, ...more] = diagramsOf(canBusDiagrams, small)

  it('keeps the physical order, with every cable and its length', () => {
    expect(more).toEqual([])
    expect(linesIn(sheet!.mermaid)).toEqual([
      'X1 --- W11 / 1.00 m --- P1', 'R1 === plugged === X1',
      'X2 --- --- A1.9', 'X1 === W1 / 2.50 m === X2',
      'X2 === plugged === X3',
      'X4 --- W14 / 3.20 m --- B1', 'X3 === W2 / 6.00 m / W3 === X4',
      'X5 --- --- K1', 'X4 === plugged === X5',
      'X5 === plugged === R2',
    ])
  })
  it('says what each element is, where, what hangs on it and what it takes', () => {
    expect([...boxesIn(sheet!.mermaid).values()]).toEqual([
      'R1 / terminator', 'X1 / tee · Wheelhouse', 'P1 · LEN 4 / Display', 'X2 / power insertion', 'A1.9 · way 9 · 3 A / Bus supply',
      'X3 / tee · free', 'X4 / tee', 'B1 / Wind sensor', 'X5 / tee', 'K1 / Forward module', 'R2 / terminator',
    ])
    expect(inWords(sheet!)).toBe(
      'In physical order: terminator R1; tee X1 with P1 by W11; cable W1, power insertion X2 with A1.9; tee X3; ' +
      'cable W2, W3, tee X4 with B1 by W14; tee X5 with K1; terminator R2.')
  })
  it('is written as it always was', () => expect(sheet!.mermaid).toMatchFileSnapshot('golden/can-bus.mmd'))
})

describe('a long CAN bus', () => {
  const tags = Array.from({ length: 31 }, (_, i) => `X${i + 1}`)
  const sheets = diagramsOf(canBusDiagrams, aVessel({
    canBuses: [bus(terminator('R1'), ...tags.flatMap((tag, i) => [segment(`W${i + 1}`), tee(tag, null)]), terminator('R2'))],
  }))
  const backbone = sheets.flatMap(({ mermaid }) => linesIn(mermaid)).map(line => /^(\S+) === (\S+) === (\S+)$/.exec(line)!.slice(1))

  it('goes on from sheet to sheet: read in order, the stretches make up the whole backbone', () => {
    expect(sheets.map(({ caption }) => caption)).toEqual([1, 2, 3].map(k => `CAN bus C1 Navigation bus, sheet ${k} of 3`))
    // A stretch that a break parts is drawn at both ends of the break.
    const once = backbone.filter((line, i) => i === 0 || line.join() !== backbone[i - 1]!.join())
    expect(once).toEqual(['R1', ...tags].map((from, i) => [from, i < 31 ? `W${i + 1}` : 'plugged', [...tags, 'R2'][i]!]))
  })
  it('marks both ends of a break with what stands on the other side', () => {
    const markers = sheets.map(({ mermaid }) => [...boxesIn(mermaid).values()].filter(label => /precedes|follows/.test(label)))
    expect(markers[0]![0]).toBe('X6 / follows')
    expect(markers[0]![1]).toBe('X5 / precedes')
    expect(markers.flat()).toHaveLength(10)
  })
})

describe('an unfinished CAN bus', () => {
  it('shows an end that is open', () => {
    const [sheet] = diagramsOf(canBusDiagrams, aVessel({ canBuses: [bus(segment('W1'), tee('X1', null), segment('W2'))] }))
    expect(linesIn(sheet!.mermaid)).toEqual(['open end === W1 === X1', 'X1 === W2 === open end'])
    expect(inWords(sheet!)).toBe('In physical order: cable W1, tee X1; then cable W2 to open end.')
  })
  it('has no sheet without an element', () => expect(diagramsOf(canBusDiagrams, aVessel({ canBuses: [bus()] }))).toEqual([]))
})
