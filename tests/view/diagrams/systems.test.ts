import { describe, expect, it } from 'vitest'
import { systemDiagrams } from '../../../src/view/diagrams/systems.mermaid.js'
import { aCable, aCableType, anEquipment, aVessel } from '../../support/vessel-builder.js'
import { mediumVessel } from './medium-vessel.js'
import { boxesIn, diagramsOf, inWords, linesIn } from './support.js'

const cable = (tag: string, from: string, to: string, typeTag: string | null) => aCable({ tag, from, to, typeTag, carries: 'none' })
const small = aVessel({
  systems: [{ tag: 'COM', name: 'Radio', purpose: null, kind: null }, { tag: 'NAV', name: 'Navigation', purpose: null, kind: null }, { tag: 'LGT', name: 'Lights', purpose: null, kind: null }],
  cableTypes: (['coax', 'signal', 'can bus', 'power', 'bonding'] as const).map(use => aCableType({ tag: use.replace(' ', '-'), use })),
  equipment: [
    anEquipment({ tag: 'T1', name: 'VHF transceiver', kind: 'vhf transceiver', systemTag: 'COM', ports: [
      { name: 'speaker', kind: 'audio', speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null }, { name: 'power', kind: 'power', speedMbitPerS: null, powerClass: null, baudRates: [], direction: null, signalCurrentA: null },
    ] }),
    anEquipment({ tag: 'T2', name: 'VHF antenna', kind: 'vhf antenna', systemTag: 'COM' }),
    anEquipment({ tag: 'P2', name: 'Loudspeaker', kind: 'loudspeaker', systemTag: 'COM' }),
    anEquipment({ tag: 'P1', name: 'Display', kind: 'display', systemTag: 'NAV' }),
    anEquipment({ tag: 'E1', name: 'Light', kind: 'light', systemTag: 'LGT' }),
  ],
  cables: [
    cable('W1', 'T2', 'T1:antenna', 'coax'), cable('W2', 'T1:speaker', 'P2', 'signal'), cable('W3', 'X1', 'T1:can', 'can-bus'), cable('W4', 'X2', 'P1', 'can-bus'),
    cable('W5', 'X1', 'X2', 'can-bus'), cable('W6', 'T1:speaker', 'P1', null), cable('W7', 'E1', 'T1:power', null), cable('W8', 'E1', 'P1', 'power'),
    cable('W9', 'T1', 'E1', 'bonding'), { ...cable('W10', 'T1', 'P1', 'signal'), status: 'removed' },
  ],
  canBuses: [{ tag: 'C1', name: 'Bus', purpose: null, protocol: 'nmea 2000' as const, suppliesDevices: true, backboneMaxM: null, backbone: [
    { kind: 'tee', tag: 'X1', zoneTag: null, deviceTag: 'T1', dropCableTag: 'W3', deviceTerminal: null }, { kind: 'segment', cableTag: 'W5' },
    { kind: 'tee', tag: 'X2', zoneTag: null, deviceTag: 'P1', dropCableTag: 'W4', deviceTerminal: null },
  ] }],
})

describe('the diagram of a system', () => {
  const diagrams = diagramsOf(systemDiagrams, small)

  it('is made for each system with data or antenna cables, and for no other', () => {
    expect(diagrams.map(({ id, about, caption }) => [id, about, caption])).toEqual([
      ['system-COM-1', 'COM', 'System Radio: data and antenna cables, sheet 1 of 1'],
      ['system-NAV-1', 'NAV', 'System Navigation: data and antenna cables, sheet 1 of 1'],
    ])
  })
  it('says what each cable carries, by its type or the port it ends on; power, bonding and removed cables are left out', () => {
    expect(linesIn(diagrams[0]!.mermaid)).toEqual([
      'T1 --- W2 / audio --- P2', 'C1 --- W3 / CAN bus --- T1', 'T1 --- W6 / audio --- P1', 'T2 --- W1 / coax --- T1',
    ])
  })
  it('draws what lies outside as references, a bus as one', () => {
    expect([...boxesIn(diagrams[0]!.mermaid).values()]).toEqual([
      'T1 / VHF transceiver', 'P2 / Loudspeaker', 'C1 / Bus', 'P1 / Display / in Navigation', 'T2 / VHF antenna',
    ])
    expect(diagrams[0]!.mermaid.match(/class n\w+ reference/g)).toEqual(['class nC1 reference', 'class nP1 reference'])
    expect(inWords(diagrams[0]!)).toBe(
      'T1 to P2 (audio, W2); C1 to T1 (CAN bus, W3); T1 to P1 (audio, W6); T2 to T1 (coax, W1). Outside the system: C1, P1.')
  })
  it('is written as it always was', () => expect(diagrams[0]!.mermaid).toMatchFileSnapshot('golden/system.mmd'))
})

it('draws each cable of a larger system on one of its sheets', () => {
  const sheets = diagramsOf(systemDiagrams, mediumVessel).filter(({ about }) => about === 'NAV')
  const drawn = sheets.flatMap(({ mermaid }) => linesIn(mermaid)).map(line => /W\d+/.exec(line)![0])
  expect(drawn.toSorted()).toEqual([
    'W401', 'W402', 'W403', 'W404', 'W406', 'W407', 'W408', 'W520', 'W521', 'W522', 'W524', 'W525', 'W526', 'W527', 'W529', 'W530', 'W531', 'W606',
  ])
})
