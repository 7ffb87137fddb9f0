import { describe, expect, it } from 'vitest'
import type { Equipment } from '../../../src/model/vessel.js'
import { ethernetDiagrams } from '../../../src/view/diagrams/ethernet.mermaid.js'
import { aCable, aCableType, anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { boxesIn, diagramsOf, inWords, linesIn } from './support.js'

const port = (name: string, powerClass: number | null = null) => ({ name, kind: 'ethernet' as const, speedMbitPerS: null, powerClass, baudRates: [], direction: null, signalCurrentA: null })
const aSwitch = (tag: string, zoneTag: string, poweredPorts: number, ports: number): Equipment => anEquipment({
  tag, name: `Switch ${tag}`, kind: 'network switch', zoneTag,
  ports: Array.from({ length: ports }, (_, i) => port(String(i + 1), i < poweredPorts ? 4 : null)),
})
const link = (tag: string, from: string, to: string) => aCable({ tag, from, to, typeTag: 'eth', carries: 'none' })
const network = (tag: string, ...switchTags: string[]) => ({ tag, name: 'Boat network', purpose: null, subnet: null, gatewayAddress: null, dynamicRange: null, switchTags })

const small = aVessel({
  zones: [aZone({ tag: 'Z1', name: 'Wheelhouse' }), aZone({ tag: 'Z2', name: 'Mast' })],
  cableTypes: [aCableType({ tag: 'eth', use: 'ethernet' }), aCableType({ tag: 'power' })],
  equipment: [
    aSwitch('N1', 'Z1', 2, 5), aSwitch('N2', 'Z2', 0, 3), aSwitch('N9', 'Z2', 0, 4),
    anEquipment({ tag: 'B1', name: 'Camera', kind: 'camera', zoneTag: 'Z2', ports: [port('net', 2)] }),
    anEquipment({ tag: 'B2', name: 'Thermal camera', kind: 'thermal camera', zoneTag: 'Z2', ports: [port('net', 3)] }),
    anEquipment({ tag: 'P1', name: 'Display', kind: 'display', zoneTag: 'Z1', ports: [port('lan 1'), port('lan 2')] }),
    anEquipment({ tag: 'P3', name: 'Instrument', kind: 'instrument', zoneTag: 'Z1' }),
    anEquipment({ tag: 'P2', name: 'Second display', kind: 'display', status: 'planned' }),
  ],
  cables: [
    link('W10', 'N1:5', 'N2:1'), link('W2', 'B1:net', 'N1:1'), link('W3', 'N2:2', 'B2:net'), link('W4', 'N1:3', 'P1'), link('W5', 'P1', 'P2'),
    link('W6', 'N1:2', 'P3'), link('W11', 'N2:3', 'N9:1'), link('W12', 'N9:2', 'P9'),
    aCable({ tag: 'W99', from: 'N1:power', to: 'P1:power', typeTag: 'power' }),
  ],
  ethernetNetworks: [network('E1', 'N1', 'N2'), network('E2', 'N9')],
})

describe('the diagram of an Ethernet network', () => {
  const [sheet, other] = diagramsOf(ethernetDiagrams, small)

  it('goes from the switches outwards, cable by cable, and ends at the switch of another network', () => {
    expect(linesIn(sheet!.mermaid)).toEqual([
      'N1 === W2 / port 1 / powered, class 2 === B1',
      'N1 --- W4 / port 3 --- P1',
      'N1 --- W6 / port 2 --- P3',
      'N1 --- W10 / port 5 to 1 --- N2',
      'N2 --- W3 / port 2 / asks class 3, not supplied --- B2',
      'N2 --- W11 / port 3 --- N9',
      'P1 --- W5 --- P2',
    ])
    expect([...boxesIn(sheet!.mermaid).values()]).toEqual([
      'N1 · 5 ports / Switch N1', 'B1 / Camera', 'P1 / Display', 'P3 / Instrument', 'N2 · 3 ports / Switch N2', 'B2 / Thermal camera', 'N9 / Switch N9',
      'P2 · planned / Second display',
    ])
    expect(sheet!.mermaid).toContain('class nN9 reference')
    expect(linesIn(other!.mermaid)).toEqual(['N9 --- W11 / port 1 --- N2', 'N9 --- W12 / port 2 --- P9'])
  })
  it('says of a port that gives too little what it gives', () => {
    const [drawn] = diagramsOf(ethernetDiagrams, { ...small, equipment: small.equipment.map(item => (item.tag === 'B1' ? { ...item, ports: [port('net', 6)] } : item)) })
    expect(linesIn(drawn!.mermaid)).toContain('N1 --- W2 / port 1 / asks class 6, port gives 4 --- B1')
  })
  it('says how long a cable is, where that is known', () => {
    const [drawn] = diagramsOf(ethernetDiagrams, { ...small, cables: [aCable({ tag: 'W2', from: 'B1:net', to: 'N1:1', typeTag: 'eth', carries: 'none', lengthM: 12.5 })] })
    expect(linesIn(drawn!.mermaid)).toEqual(['N1 === W2 / 12.50 m / port 1 / powered, class 2 === B1'])
  })
  it('groups by zone', () => {
    expect(sheet!.mermaid).toMatch(/subgraph fZ1\["Wheelhouse"\]\n {4}nN1\n {4}nP1\n {4}nP3\n {2}end\n {2}subgraph fZ2\["Mast"\]\n {4}nB1\n {4}nN2\n {4}nB2\n {4}nN9\n {2}end/)
  })
  it('says the same in words, with the ports that are free', () => {
    expect(inWords(sheet!)).toBe(
      'N1 is linked to B1 by W2 (port 1, powered, class 2); P1 by W4 (port 3); P3 by W6 (port 2); N2 by W10 (port 5 to 1); free ports: 4. ' +
      'N2 is linked to B2 by W3 (port 2, asks class 3, not supplied); N9 by W11 (port 3). P1 is linked to P2 by W5.')
    expect([sheet!.about, sheet!.caption]).toEqual(['E1', 'Ethernet network E1 Boat network, sheet 1 of 1'])
  })
  it('is written as it always was', () => expect(sheet!.mermaid).toMatchFileSnapshot('golden/ethernet.mmd'))

  it('has a sheet for each switch when there is too much for one, with the other switch as a reference', () => {
    const cameras = (count: number, from: number) => Array.from({ length: count }, (_, i) => from + i)
    const large = aVessel({
      cableTypes: small.cableTypes,
      equipment: [aSwitch('N1', 'Z1', 0, 24), aSwitch('N2', 'Z1', 0, 24), ...cameras(40, 1).map(i => anEquipment({ tag: `B${i}`, name: 'Camera', kind: 'camera' }))],
      cables: [link('W100', 'N1:24', 'N2:24'), ...cameras(20, 1).map(i => link(`W${i}`, `N1:${i}`, `B${i}`)), ...cameras(20, 21).map(i => link(`W${i}`, `N2:${i - 20}`, `B${i}`))],
      ethernetNetworks: [network('E1', 'N1', 'N2')],
    })
    const sheets = diagramsOf(ethernetDiagrams, large)
    expect(sheets.length).toBeGreaterThan(1)
    const drawn = sheets.flatMap(({ mermaid }) => linesIn(mermaid))
    for (let i = 1; i <= 40; i++) expect(drawn.filter(line => line.endsWith(` B${i}`))).toHaveLength(1)
    for (const { mermaid, caption } of sheets) {
      const own = caption.endsWith('switch N1') ? 'N1' : 'N2'
      if (mermaid.includes('W100')) expect(mermaid).toContain(`class n${own === 'N1' ? 'N2' : 'N1'} reference`)
      expect(mermaid).toContain(`class n${own} module`)
    }
  })
  it('has no sheet for a network without links', () =>
    expect(diagramsOf(ethernetDiagrams, aVessel({ equipment: [aSwitch('N1', 'Z1', 0, 4)], ethernetNetworks: [network('E1', 'N1')] }))).toEqual([]))
})
