import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { oneLineDiagrams } from '../../../src/view/diagrams/one-line.mermaid.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, aPanel, aProtection, aVessel, awg, mm2 } from '../../support/vessel-builder.js'
import { mediumVessel } from './medium-vessel.js'
import { boxesIn, diagramsOf, inWords, linesIn } from './support.js'

const fuse = (ratedCurrentA: number) => aProtection('blade fuse', ratedCurrentA)

/** Battery, fuse, isolator, busbar, a feeder with two cables side by side, a panel whose ways share a terminal block. */
const small = aVessel({
  cableTypes: [aCableType({ tag: 'thick', cores: 1, size: mm2(70) }), aCableType({ tag: 'pair', size: awg('14') })],
  batteries: [aBattery({ tag: 'G1', name: 'House battery', capacityAh: 400 })],
  busbars: [aBusbar({ tag: 'X1', name: 'Busbar', ratedCurrentA: 300 }), aBusbar({ tag: 'X2', name: 'Negative busbar', polarity: 'negative' })],
  panels: [aPanel({ tag: 'A1', name: 'Helm panel', ways: 12, ratedCurrentA: 60 })],
  equipment: [
    anEquipment({ tag: 'Q1', name: 'Isolator', kind: 'battery isolator' }),
    anEquipment({ tag: 'X5', name: 'Mast foot', kind: 'terminal block' }),
    anEquipment({ tag: 'E1', name: 'Anchor light', kind: 'navigation light', currentMaxA: 0.35 }),
    anEquipment({ tag: 'E2', name: 'Steaming light', kind: 'navigation light', powerW: 10, status: 'planned' }),
    anEquipment({ tag: 'P1', name: 'Display', kind: 'display', currentTypicalA: 2, currentMaxA: 3.5 }),
    anEquipment({ tag: 'M1', name: 'Starter', kind: 'starter motor' }),
  ],
  circuits: [
    aCircuit({ tag: 'A1.10', name: 'Steaming light', fedFromTag: 'A1', way: 10, protection: fuse(5), loadTags: ['E2'] }),
    aCircuit({ tag: 'A1.2', name: 'Anchor light', fedFromTag: 'A1', way: 2, protection: fuse(7.5), loadTags: ['E1'] }),
    aCircuit({ tag: 'A1.3', name: 'Display', fedFromTag: 'A1', way: 3, normalState: 'open', loadTags: ['P1'] }),
    aCircuit({ tag: 'F1', name: 'Main', fedFromTag: 'G1', protection: fuse(250), loadTags: ['X1'] }),
    aCircuit({ tag: 'F2', name: 'Helm panel', fedFromTag: 'X1', protection: fuse(60), loadTags: ['A1'] }),
    aCircuit({ tag: 'F3', name: 'Starter', fedFromTag: 'G1', unprotectedReason: 'engine starting', loadTags: ['M1'] }),
  ],
  cables: [
    aCable({ tag: 'W1', from: 'G1', to: 'F1', typeTag: 'thick', carries: 'positive' }),
    aCable({ tag: 'W2', from: 'F1', to: 'Q1:in', typeTag: 'thick', carries: 'positive' }),
    aCable({ tag: 'W3', from: 'Q1:out', to: 'X1', typeTag: 'thick', carries: 'positive' }),
    aCable({ tag: 'W10', from: 'F2', to: 'A1', typeTag: 'thick', carries: 'positive' }),
    aCable({ tag: 'W9', from: 'A1', to: 'F2', typeTag: 'thick', carries: 'positive' }),
    aCable({ tag: 'W11', from: 'F3', to: 'M1', carries: 'positive' }),
    aCable({ tag: 'W20', from: 'A1.2', to: 'X5:1', typeTag: 'pair' }),
    aCable({ tag: 'W21', from: 'X5:1', to: 'E1', typeTag: 'pair' }),
    aCable({ tag: 'W22', from: 'A1.10', to: 'X5:2', typeTag: 'pair', status: 'planned' }),
    aCable({ tag: 'W23', from: 'X5:2', to: 'E2', typeTag: 'pair' }),
  ],
})

describe('the one-line diagram of a small vessel', () => {
  const [main, panel, ...more] = diagramsOf(oneLineDiagrams, small)

  it('has a sheet down to the panel, then one for the panel', () => {
    expect(more).toEqual([])
    expect([main!.caption, panel!.caption]).toEqual([
      'One-line diagram, sheet 1 of 2: from the batteries to the panels and direct consumers',
      'One-line diagram, sheet 2 of 2: A1 Helm panel',
    ])
    expect([main!.about, panel!.about]).toEqual([null, 'A1'])
  })
  it('draws the way of the current, with every cable and its size', () => {
    expect(linesIn(main!.mermaid)).toEqual([
      'G1 --- W1 / 70 mm² --- F1', 'F1 --- W2 / 70 mm² --- Q1', 'Q1 --- W3 / 70 mm² --- X1',
      'X1 --- --- F2', 'F2 --- W9, W10 / 70 mm² each --- A1',
      'G1 --- --- F3', 'F3 --- W11 / type not recorded --- M1',
    ])
    expect([...boxesIn(main!.mermaid).values()].toSorted()).toEqual([
      'A1 · 60 A / Helm panel', 'F1 · 250 A / Main', 'F2 · 60 A / Helm panel', 'F3 · unprotected / Starter',
      'G1 · 12 V · 400 Ah / House battery', 'M1 / Starter', 'Q1 / Isolator', 'X1 · 300 A / Busbar',
    ])
  })
  it('draws each way of the panel in the order of the ways; terminals that are not joined stay apart', () => {
    expect(linesIn(panel!.mermaid)).toEqual([
      'A1.2 --- W20 / 2 × 14 AWG --- X5:1', 'X5:1 --- W21 / 2 × 14 AWG --- E1',
      'A1.3 -.- -.- P1',
      'A1.10 --- W22 / 2 × 14 AWG / planned --- X5:2', 'X5:2 --- W23 / 2 × 14 AWG --- E2',
    ])
    const boxes = [...boxesIn(panel!.mermaid).values()]
    expect(boxes).toContain('A1.2 · way 2 · 7.5 A / Anchor light')
    expect(boxes).toContain('A1.3 · way 3 / protection not recorded / normally open / Display')
    expect(boxes).toContain('E1 · 0.35 A / Anchor light')
    expect(boxes).toContain('P1 · 3.5 A / Display')
    expect(boxes).toContain('E2 · 10 W · planned / Steaming light')
    expect(panel!.mermaid).toContain('subgraph fA1["A1 Helm panel<br/>60 A · fed by F2"]')
  })
  it('says the same in words, and names the negative side that it does not draw', () => {
    expect(inWords(main!)).toBe(
      'G1 feeds F1 (250 A) through Q1 to X1 by W1, W2, W3; F3 (unprotected) to M1 by W11. ' +
      'X1 feeds F2 (60 A) to A1 by W9, W10. The negative side is not drawn; negative busbars: X2.')
    expect(inWords(panel!)).toBe(
      'A1 feeds A1.2 (way 2, 7.5 A) through X5 to E1 by W20, W21; ' +
      'A1.3 (way 3, protection not recorded, normally open), no cable recorded to P1; A1.10 (way 10, 5 A) through X5 to E2 by W22, W23.')
  })
  it('leads from every box to its page', () => {
    expect(main!.mermaid).toContain('click nX1 href "asfitted:equipment/x1"')
    expect(panel!.mermaid).toContain('click nA1_2e_2 href "asfitted:circuits/a1.2"')
    expect(panel!.mermaid).toContain('click nX5_3a_1 href "asfitted:equipment/x5"')
  })
  it('is written as it always was', async () => {
    await expect(main!.mermaid).toMatchFileSnapshot('golden/one-line-main.mmd')
    await expect(panel!.mermaid).toMatchFileSnapshot('golden/one-line-panel.mmd')
  })
})

describe('the one-line diagram of a larger vessel', () => {
  const diagrams = diagramsOf(oneLineDiagrams, mediumVessel)
  const circuitTagsOn = (mermaid: string) => new Set([...boxesIn(mermaid).values()].map(label => label.split(' ')[0]!))

  it('numbers its sheets, under ids of their own', () => {
    expect(diagrams.map(({ caption }) => /sheet (\d+) of (\d+)/.exec(caption)!.slice(1).map(Number))).toEqual(
      diagrams.map((_, i) => [i + 1, diagrams.length]))
    expect(new Set(diagrams.map(({ id }) => id)).size).toBe(diagrams.length)
  })
  it('shows every circuit of a panel on one sheet of that panel, and feeders on the main sheet as well', () => {
    for (const { tag, fedFromTag } of mediumVessel.circuits) {
      const sheets = diagrams.filter(({ mermaid }) => circuitTagsOn(mermaid).has(tag)).map(({ about }) => about)
      expect(sheets, tag).toEqual([mediumVessel.panels.some(panel => panel.tag === fedFromTag) ? fedFromTag : null])
    }
  })
  it('does not depend on the order in which the data was written', () => {
    const { batteries, busbars, panels, circuits, cables, equipment } = mediumVessel
    fc.assert(fc.property(fc.nat(50), fc.boolean(), (places, backwards) => {
      const moved = <T>(list: readonly T[]): readonly T[] => {
        const rotated = [...list.slice(places % list.length), ...list.slice(0, places % list.length)]
        return backwards ? rotated.toReversed() : rotated
      }
      expect(diagramsOf(oneLineDiagrams, {
        ...mediumVessel, batteries: moved(batteries), busbars: moved(busbars), panels: moved(panels), circuits: moved(circuits),
        cables: moved(cables), equipment: moved(equipment),
      })).toEqual(diagrams)
    }), { numRuns: 10 })
  })
})

describe('what is odd in the data', () => {
  it('draws nothing where there is no circuit', () => expect(diagramsOf(oneLineDiagrams, aVessel({ batteries: small.batteries }))).toEqual([]))

  it('draws a protective device that sits away from its panel on the cable to it', () => {
    const [sheet] = diagramsOf(oneLineDiagrams, aVessel({
      panels: [aPanel({ tag: 'A1', name: 'Panel' })],
      equipment: [anEquipment({ tag: 'E1', name: 'Light' })],
      circuits: [aCircuit({ tag: 'F9', name: 'Light', fedFromTag: 'A1', protection: fuse(5), loadTags: ['E1'] })],
      cables: [aCable({ tag: 'W1', from: 'A1', to: 'F9' }), aCable({ tag: 'W2', from: 'F9', to: 'E1' })],
    }))
    expect(linesIn(sheet!.mermaid)).toEqual(['A1 --- W1 / type not recorded --- F9', 'F9 --- W2 / type not recorded --- E1'])
    expect(sheet!.mermaid).not.toContain('subgraph')
  })
  it('follows the ways of a panel where the tags run otherwise', () => {
    const [sheet] = diagramsOf(oneLineDiagrams, aVessel({
      panels: [aPanel({ tag: 'A1', name: 'Panel' })],
      circuits: ([['C1', 3], ['C2', null], ['C3', 1], ['C4', 2]] as const).map(([tag, way]) => aCircuit({ tag, name: 'Light', fedFromTag: 'A1', way })),
    }))
    expect([...boxesIn(sheet!.mermaid).values()].map(label => label.split(' ')[0])).toEqual(['C3', 'C4', 'C1', 'C2'])
  })
  it('ends where two busbars feed each other', () => {
    const [sheet] = diagramsOf(oneLineDiagrams, aVessel({
      busbars: [aBusbar({ tag: 'X1', name: 'One' }), aBusbar({ tag: 'X2', name: 'Two' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'X1', loadTags: ['X2'] }), aCircuit({ tag: 'F2', fedFromTag: 'X2', loadTags: ['X1'] })],
    }))
    expect(linesIn(sheet!.mermaid)).toEqual(['X1 --- --- F1', 'F1 -.- -.- X2', 'X2 --- --- F2', 'F2 -.- -.- X1'])
  })
})
