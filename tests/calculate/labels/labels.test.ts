/** What stands on labels, on which stock, and in which order. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/calculate/labels/layout.js'
import { labelFaults, labelPlace, labelsOnSheet, wholeHeightMm } from '../../../src/model/label-sheet.js'
import type { Label, LabelWords } from '../../../src/model/results/labels.js'
import type { LabelSize, Vessel } from '../../../src/model/vessel.js'
import { widthFactor } from '../../../src/references/tables/letter-advances.js'
import { knownSize, labelledVessel, labelSizes, labelsOf, resultsWithLabels } from '../../support/labelled-vessel.js'
import { aBattery, aBusbar, aCable, aCableType, aCircuit, anEquipment, anOutput, aPanel, aProtection, aZone } from '../../support/vessel-builder.js'

const textsOf = (labels: readonly Label[], use: Label['use']) =>
  labels.filter(label => label.use === use).map(({ headline, texts }) => [headline, ...texts].filter(part => part !== null).join(' | ').replaceAll('\u00A0', ' '))
const sizesOf = (vessel: Vessel) => Object.fromEntries(labelsOf(vessel).labels.filter(({ end }) => end !== 'to').map(({ aboutTag, sizeKey }) => [aboutTag, sizeKey]))

describe('what stands on them', () => {
  it('is on a cable its tag, this end and the other one, at either end', () => {
    const { labels } = labelsOf(labelledVessel({ cables: [aCable({ tag: 'W7', from: 'X1:4', to: 'X2', typeTag: '6mm' })] }))
    expect(textsOf(labels, 'cables')).toEqual(['W7 | X1:4 / X2', 'W7 | X2 / X1:4'])
  })

  it('is what the author gives in its place', () => {
    const { labels } = labelsOf(labelledVessel({ cables: [aCable({ tag: 'W7', from: 'X1', to: 'X2', typeTag: '6mm', labelTo: 'W7 helm' })] }))
    expect(textsOf(labels, 'cables')).toEqual(['W7 | X1 / X2', 'W7 helm'])
  })

  it('is on a circuit its way, tag and rating over its name', () => {
    expect(textsOf(labelsOf(labelledVessel()).labels, 'ways')[0]).toBe('1  A1.1  10 A | Lights')
  })

  it('is there for each of the conductors that are joined, and for nothing that was taken out', () => {
    const { labels } = labelsOf(labelledVessel({
      cables: [aCable({ tag: 'W1', from: 'X1', to: 'X2', typeTag: '6mm', parallelCount: 3 }), aCable({ tag: 'W2', from: 'X1', to: 'X2', typeTag: '6mm', status: 'removed' })],
      equipment: [anEquipment({ tag: 'X1', zoneTag: 'saloon' }), anEquipment({ tag: 'X2', status: 'removed' })],
    }))
    expect(labels.filter(({ use }) => use === 'cables').map(({ aboutTag, end, copiesCount }) => [aboutTag, end, copiesCount])).toEqual([['W1', 'from', 3], ['W1', 'to', 3]])
    expect(textsOf(labels, 'equipment')).toEqual(['A1 | Panel', 'X1 | Equipment X1'])
  })
})

it('come zone by zone as the vessel lists them, by tag as people read it, and the two ends of a cable together', () => {
  const vessel = labelledVessel({
    zones: [aZone({ tag: 'saloon' }), aZone({ tag: 'engine' })],
    equipment: [anEquipment({ tag: 'X1', zoneTag: 'engine' }), anEquipment({ tag: 'X2', zoneTag: 'saloon' }), anEquipment({ tag: 'X3' })],
    cables: [['W10', 'X2', 'X1'], ['W2', 'X2', 'X1'], ['W1', 'X1', 'X2'], ['W3', 'X3', 'X2']].map(([tag, from, to]) => aCable({ tag: tag!, from: from!, to: to!, typeTag: '6mm' })),
  })
  const order = labelsOf(vessel).labels.filter(({ use }) => use === 'cables').map(({ aboutTag, end }) => `${aboutTag} ${end}`)
  expect(order).toEqual(['W2 from', 'W2 to', 'W10 from', 'W10 to', 'W1 from', 'W1 to', 'W3 from', 'W3 to'])
})

describe('around a cable', () => {
  // A4: prints of 6.35, 12.7, 19.05, 25.4 mm with tails of 12.7, 25.4, 44.45, 76.2 mm. π · 4.04 = 12.69, π · 4.05 = 12.72;
  // π · 8.08 = 25.38, π · 8.09 = 25.42; π · 14.14 = 44.42, π · 14.16 = 44.49; π · 24.25 = 76.18.
  const withDiameter = (outerDiameterMm: number | null) => labelledVessel({
    cableTypes: [aCableType({ tag: '6mm', use: 'signal', outerDiameterMm })], cables: [aCable({ tag: 'W1', from: 'X1', to: 'X2', typeTag: '6mm' })],
  })
  it.each([
    [2.03, 'a4-wrap-25x19'], [4.04, 'a4-wrap-25x19'], [4.05, 'a4-wrap-25x38'], [8.08, 'a4-wrap-25x38'], [8.09, 'a4-wrap-25x63'], [14.14, 'a4-wrap-25x63'],
    [14.16, 'a4-wrap-25x102'], [24.25, 'a4-wrap-25x102'],
  ])('of %d mm goes %s', (diameterMm, size) => {
    const vessel = withDiameter(diameterMm)
    expect(sizesOf(vessel)['W1']).toBe(size)
    expect(labelsOf(vessel).findings).toEqual([])
  })

  it.each([[2.02, 'at least'], [24.26, 'at most']])('of %d mm goes none, and that is found', (diameterMm, takes) => {
    const { findings, labels } = labelsOf(withDiameter(diameterMm))
    expect(findings.map(({ id, context }) => [id, context?.['takes']])).toEqual([['LBL104', takes]])
    // It is printed all the same.
    expect(labels.filter(({ use }) => use === 'cables')).toHaveLength(2)
  })

  it('of unknown diameter goes the usual one, and it is not assessed', () => {
    const vessel = withDiameter(null)
    expect(sizesOf(vessel)['W1']).toBe('a4-wrap-25x38')
    expect(labelsOf(vessel).notAssessed).toEqual([{ subjectTag: 'W1', reason: 'the outside diameter of type 6mm is not recorded, so its label has the usual size' }])
  })

  it('goes US Letter where the vessel uses feet', () => {
    expect(sizesOf({ ...withDiameter(6), units: 'us' })['W1']).toBe('letter-wrap-1x1.5')
  })
})

describe('the yard’s own sizes', () => {
  const own: LabelSize = { ...knownSize('a4-24'), key: 'own', uses: ['equipment'] }
  it('take the place of the usual ones for what they are for', () => {
    const sizes = sizesOf(labelledVessel({ labelSizes: [own] }))
    expect([sizes['X1'], sizes['A1.1']]).toEqual(['own', 'a4-65'])
  })
  it('may be one that is known, for another use', () => {
    expect(sizesOf(labelledVessel({ labelSizes: [{ key: 'a4-24', form: null, uses: ['ways'] }] }))['A1.1']).toBe('a4-24')
  })
  it('with the key of one that is known stand in for it', () => {
    const { labels, sizes } = labelsOf(labelledVessel({ labelSizes: [{ ...knownSize('a4-65'), leftMm: 5.5, uses: [] }] }))
    expect(labels.find(({ use }) => use === 'ways')?.sizeKey).toBe('a4-65')
    expect(sizes.find(({ key }) => key === 'a4-65')?.leftMm).toBe(5.5)
  })
})

describe('the label stock that is known', () => {
  it('lies on its sheet, and no label on another', () => {
    expect(labelSizes.length).toBeGreaterThan(15)
    expect(labelSizes.filter(size => labelFaults(size).length > 0)).toEqual([])
  })
  // By hand: left edges of first and last column, right edge; upper edge of the last row, lower edge.
  it.each([
    ['a4-65', 64, 4.7 + 4 * 40.6, 205.2, 10.7 + 12 * 21.2, 286.3],
    ['a4-189', 188, 8.6 + 6 * 27.9, 201.4, 13.5 + 26 * 10, 283.5],
    ['letter-30', 29, 4.7625 + 2 * 69.85, 211.1375, 12.7 + 9 * 25.4, 266.7],
    ['a4-wrap-25x38', 48, 16.1 + 6 * 25.4, 193.9, 15.15 + 6 * 38.1, 281.85],
  ])('%s has its last label, number %i, where it is by hand', (key, last, xMm, rightMm, yMm, lowerMm) => {
    const size = knownSize(key)
    expect(labelsOnSheet(size) - 1).toBe(last)
    expect(labelPlace(size, last).xMm).toBeCloseTo(xMm, 6)
    expect(labelPlace(size, last).yMm).toBeCloseTo(yMm, 6)
    expect(labelPlace(size, last).xMm + size.labelWidthMm).toBeCloseTo(rightMm, 6)
    expect(labelPlace(size, last).yMm + wholeHeightMm(size)).toBeCloseTo(lowerMm, 6)
  })
})

describe('danger labels', () => {
  const dangersOf = (vessel: Vessel) => labelsOf(vessel).labels.filter(({ use }) => use === 'danger').map(({ aboutTag, danger, texts }) => ({ tag: aboutTag, danger, words: texts.join(' ').replaceAll('\u00A0', ' ') }))
  const supply = { circuits: [], panels: [], cables: [] }

  it('warn at battery, machine and starter of what is recorded of them', () => {
    const found = dangersOf(labelledVessel({
      ...supply, equipment: [anEquipment({ tag: 'M1', name: 'Starter', kind: 'starter motor' }), anEquipment({ tag: 'M2', kind: 'thruster' }), anEquipment({ tag: 'M3', kind: 'windlass', status: 'removed' })],
      batteries: [aBattery({ tag: 'G1', name: 'House', chemistry: 'lfp' }), aBattery({ tag: 'G2', name: 'Starting', chemistry: 'agm' }), aBattery({ tag: 'G3' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G2', loadTags: ['M1'], unprotectedReason: 'engine starting' })],
    }))
    expect(found.map(({ tag, danger }) => [tag, danger])).toEqual([
      ['G1', 'lithium battery'], ['G2', 'lead-acid battery'], ['G2', 'unprotected conductor'], ['M1', 'unprotected conductor'], ['M2', 'moving machine'],
    ])
    expect(found.find(({ tag }) => tag === 'M1')?.words).toContain('G2 Starting')
  })

  it('say of a battery of unknown chemistry that it is not assessed', () => {
    expect(labelsOf(labelledVessel({ batteries: [aBattery({ tag: 'G3' })] })).notAssessed).toEqual([{ subjectTag: 'G3', reason: 'its chemistry is not recorded, so there is no danger label for it' }])
  })

  it('warn at inlet and panel of mains voltage with its source, and of what has two sources with both', () => {
    const found = dangersOf(labelledVessel({
      ...supply,
      equipment: [
        anEquipment({ tag: 'X91', name: 'Inlet', kind: 'shore inlet', outputs: [anOutput({ form: 'ac', nominalVoltageV: 230, frequencyHz: 50, ratedCurrentA: 16 })] }),
        anEquipment({ tag: 'T1', name: 'Charger', kind: 'charger', currentMaxA: 4, outputs: [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 30 })] }),
      ],
      batteries: [aBattery({ tag: 'G1', name: 'House', chemistry: 'agm' })],
      panels: [aPanel({ tag: 'A7', name: 'Mains panel' })],
      circuits: [
        aCircuit({ tag: 'F51', fedFromTag: 'X91', loadTags: ['A7'], protection: aProtection('residual-current breaker', 16) }),
        aCircuit({ tag: 'A7.1', fedFromTag: 'A7', loadTags: ['T1'], protection: aProtection('magnetic breaker', 6) }),
        aCircuit({ tag: 'F2', fedFromTag: 'G1', loadTags: ['T1'], protection: aProtection('blade fuse', 30) }),
      ],
      cables: [aCable({ tag: 'W1', from: 'X91', to: 'A7', typeTag: '6mm' }), aCable({ tag: 'W2', from: 'A7.1', to: 'T1', typeTag: '6mm' }), aCable({ tag: 'W3', from: 'F2', to: 'T1:out', typeTag: '6mm' }), aCable({ tag: 'W4', from: 'G1', to: 'F2', typeTag: '6mm' })],
    }))
    const words = (tag: string, danger: string) => found.find(each => each.tag === tag && each.danger === danger)?.words
    expect(words('X91', 'shore inlet')).toContain('Shore power, 230 V a.c.')
    expect(words('A7', 'mains')).toContain('Mains voltage, 230 V a.c.')
    expect(words('A7', 'mains')).toContain('X91 Inlet')
    // F2 is a fuse at the battery and no isolator stands before the charger: it is the fuse that is taken out.
    expect(words('T1', 'several supplies')).toMatch(/X91 Inlet.*G1 House \(open F2\)|G1 House \(open F2\).*X91 Inlet/)
  })

  it('name the isolator that cuts off each battery, and warn at a busbar of what charges onto it', () => {
    const found = dangersOf(labelledVessel({
      ...supply,
      equipment: [
        anEquipment({ tag: 'Q1', name: 'Isolator', kind: 'battery isolator' }), anEquipment({ tag: 'M13', name: 'Starter', kind: 'starter motor', currentMaxA: 200 }),
        anEquipment({ tag: 'T21', name: 'Solar controller', kind: 'solar charge controller', outputs: [anOutput({ terminal: 'out', nominalVoltageV: 12, ratedCurrentA: 20 })] }),
      ],
      batteries: [aBattery({ tag: 'G1', name: 'House', chemistry: 'lfp' })],
      busbars: [aBusbar({ tag: 'X1', name: 'Busbar' })], cableTypes: [aCableType({ tag: '6mm', use: 'power', outerDiameterMm: 6 })],
      circuits: [
        aCircuit({ tag: 'F1', fedFromTag: 'G1', loadTags: ['X1'], protection: aProtection('blade fuse', 30) }),
        aCircuit({ tag: 'F21', fedFromTag: 'X1', loadTags: ['T21'], protection: aProtection('blade fuse', 30) }),
        aCircuit({ tag: 'F9', fedFromTag: 'G1', loadTags: ['M13'], unprotectedReason: 'engine starting' }),
      ],
      cables: [
        ...[['W1', 'G1', 'F1'], ['W2', 'F1', 'Q1:1'], ['W3', 'Q1:2', 'X1'], ['W4', 'F21', 'T21:out'], ['W5', 'G1', 'M13']].map(([tag, from, to]) => aCable({ tag: tag!, from: from!, to: to!, typeTag: '6mm', carries: 'positive' })),
      ],
    }))
    const words = (tag: string) => found.filter(each => each.tag === tag && each.danger !== 'lithium battery').map(each => each.words)
    // With Q1 open the sun still keeps the busbar alive.
    expect(words('X1')).toEqual([expect.stringContaining('G1 House (open Q1); T21 Solar controller.')])
    // At the battery itself no switch helps.
    expect(words('G1')).toEqual([expect.stringContaining('Disconnect the source before work: G1 House.')])
  })

  it('warn at what solar panels lead to', () => {
    const found = dangersOf(labelledVessel({
      ...supply, equipment: [anEquipment({ tag: 'G41', name: 'Panel, port', kind: 'solar panel', outputs: [anOutput({ nominalVoltageV: 40, ratedCurrentA: 5 })] }), anEquipment({ tag: 'T21', kind: 'solar charge controller' })],
      circuits: [aCircuit({ tag: 'G41.1', fedFromTag: 'G41', loadTags: ['T21'], unprotectedReason: 'the panel limits its current' })],
    }))
    expect(found.map(({ tag, danger }) => [tag, danger])).toEqual([['T21', 'live in light']])
    expect(found[0]?.words).toContain('G41 Panel, port')
  })

  it('say the distance that radio has worked out, and nothing of less than 0.3 m', () => {
    const antenna = (tag: string, powerW: number) => anEquipment({
      tag, kind: 'vhf transceiver', transmitters: [{ service: 'VHF voice', terminal: null, powerW, frequencyMHz: 156.8, dutyPercent: 100 }],
      antenna: { gainDbi: 3, fromMHz: 156, toMHz: 163, lengthM: 1, vswrFactor: null, clearanceM: null }, positionM: [1, 0, 3],
    })
    const vessel = labelledVessel({ ...supply, equipment: [antenna('T1', 25), antenna('T2', 0.05)] })
    const { radio } = resultsWithLabels(vessel)
    const kept = radio.exposures.map(({ tag, deciding }) => [tag, deciding?.value ?? 0] as const)
    expect(kept.find(([tag]) => tag === 'T1')?.[1]).toBeGreaterThan(1)
    expect(kept.find(([tag]) => tag === 'T2')?.[1]).toBeLessThan(0.3)
    const found = dangersOf(vessel)
    expect(found.map(({ tag, danger }) => [tag, danger])).toEqual([['T1', 'radiation']])
    expect(found[0]?.words).toContain(`Keep ${kept.find(([tag]) => tag === 'T1')![1].toFixed(2)} m away`)
  })
})

describe('text on a label', () => {
  const cable = (text: string): LabelWords => ({
    use: 'cables', headline: 'W1', texts: [text], hasCode: false, signal: null, aboutTag: 'W1', end: 'from', danger: null, copiesCount: 1, place: { zoneTag: null, atTag: 'X', words: null },
  })
  // 12.7 mm less two margins of 1.2 mm are 10.3 mm by 23 mm.
  it('has the tag large over the ends where there is room', () => {
    const { layout: { bands } } = layOut(cable('X1 / X2'), knownSize('a4-wrap-25x38'))
    expect(bands.map(({ lines }) => lines.map(line => line.replaceAll('\u00A0', ' ')))).toEqual([['W1'], ['X1 / X2']])
    // The tag in 0.45 of 10.3 mm: 4.635 / 1.2 = 3.8625 mm. The ends: 7 letters of 0.6 in 23 mm would be 5.48; 5.665 / 1.2 = 4.72 mm
    // by height, and no more than 3.6 mm of capitals: 3.6 / 0.698 = 5.16.
    expect(bands.map(({ fit }) => fit.textSizeMm)).toEqual([expect.closeTo(3.8625, 4), expect.closeTo(4.7208, 4)])
  })
  it('is in one band on a low one', () => {
    // 6.35 - 2.4 = 3.95 mm: two bands would have letters of less than 1.67 mm; in one 3.95 / 1.2 = 3.29 mm by height, and 10 letters
    // of 0.6 in 23 mm 3.83 mm.
    const { layout: { bands }, comparison } = layOut(cable('X1 / X2'), knownSize('a4-wrap-25x19'))
    expect(bands.map(({ lines, fit }) => [lines.join('|').replaceAll('\u00A0', ' '), Number(fit.textSizeMm.toFixed(3))])).toEqual([['W1 X1 / X2', 3.292]])
    // 0.698 · 3.2917 against 500 / 300.
    expect([comparison.value, comparison.limit.value].map(each => Number(each.toFixed(3)))).toEqual([2.298, 1.667])
  })
  it('changes to the narrower face rather than to letters that cannot be read', () => {
    // 22 letters of 0.6 in 23 mm: 1.742 mm, capitals of 1.22 mm.
    const { layout: { bands }, comparison } = layOut(cable('starboard-second-helm1'), knownSize('a4-wrap-25x38'))
    expect(bands.map(({ face }) => face)).toEqual(['tag', 'words'])
    expect(comparison.within).toBe(false)
    expect(comparison.value).toBeGreaterThan(1.22)
  })

  const words = fc.record({
    use: fc.constantFrom<LabelWords['use']>('cables', 'ways', 'equipment', 'danger'),
    headline: fc.option(fc.string({ unit: fc.constantFrom('W', '1', '0', '.', 'i', 'Ø'), minLength: 1, maxLength: 12 })),
    text: fc.array(fc.string({ unit: fc.constantFrom('a', 'M', '-', 'i', 'é', '漢'), minLength: 1, maxLength: 14 }), { minLength: 1, maxLength: 12 }),
    hasCode: fc.boolean(),
    size: fc.constantFrom(...labelSizes),
  })
  it('stays inside the label, whatever it is, and no word is lost or cut', () => {
    fc.assert(fc.property(words, ({ use, headline, text, hasCode, size }) => {
      const signal = use === 'danger' && headline !== null ? 'WARNING' as const : null
      const { layout } = layOut({
        use, headline, texts: [text.join(' ')], hasCode, signal, aboutTag: 'X', end: null, danger: null, copiesCount: 1, place: { zoneTag: null, atTag: 'X', words: null },
      }, size)
      for (const { lines, face, leftMm, topMm, widthMm, heightMm, fit } of layout.bands) {
        for (const line of lines) expect(widthFactor(line, face) * fit.textSizeMm).toBeLessThanOrEqual(widthMm + 1e-9)
        expect(lines.length * 1.2 * fit.textSizeMm).toBeLessThanOrEqual(heightMm + 1e-9)
        expect(leftMm + widthMm).toBeLessThanOrEqual(size.labelWidthMm)
        expect(topMm + heightMm).toBeLessThanOrEqual(size.labelHeightMm)
      }
      if (layout.code !== null) expect(layout.bands.every(({ leftMm, widthMm }) => leftMm + widthMm <= layout.code!.leftMm + 1e-9)).toBe(true)
      const printed = layout.bands.flatMap(({ lines }) => lines).join(' ')
      expect(printed).toBe([headline, ...text].filter(part => part !== null).join(' '))
    }))
  })
})
