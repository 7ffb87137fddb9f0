import { describe, expect, test } from 'vitest'
import { sourceIndex } from '../../src/load/source-index.js'
import { changed, smallVessel, sourceOf } from '../support/vessel-files.js'

const { entries, texts } = sourceOf(smallVessel)
const locate = sourceIndex(entries)

/** `file:line text`, the text being what stands there to the end of the place or of the line. */
function at(kind: string, id: string, field: string | null): string | null {
  const place = locate({ kind, id }, field)
  if (place === null) return null
  const line = texts.get(place.file)!.split('\n')[place.line - 1]!
  return `${place.file}:${place.line} ${line.slice(place.column - 1, place.endLine === place.line ? place.endColumn - 1 : undefined)}`
}

describe('a field of the model is found in the files', () => {
  test.each([
    // [subject's kind, tag, field of the model, where]
    ['vessel', 'Tern', 'identity.hullNumber', 'vessel.yaml:4 "007"'],
    ['vessel', 'Tern', 'identity.lengthM', 'vessel.yaml:6 31 ft 6 in'],
    ['vessel', 'Tern', 'document.issuedOn', 'vessel.yaml:12 2026-05-04'],
    ['vessel', 'Tern', 'conditions.cableTailM', 'vessel.yaml:15 40 cm'],
    ['vessel', 'Tern', 'conditions.ambientCBySpace.machinery', 'vessel.yaml:14 55 °C'],
    ['vessel', 'whatever its name', 'basis', 'vessel.yaml:9 iso'],
    ['zone', 'bilge', 'ambientC', 'vessel.yaml:26 77 °F'],
    ['zone', 'engine-space', 'ignitionProtection', 'vessel.yaml:25 true'],
    ['wireway', 'WW1', 'fromTag', 'vessel.yaml:30 helm'],
    ['wireway', 'WW2', 'lengthM', 'vessel.yaml:34 10 ft'],
    ['wireway', 'WW2', 'boreMm', 'vessel.yaml:36 32 mm'],
    ['wireway', 'WW2', 'zoneTags', 'vessel.yaml:37 [helm, bilge, engine-space]'],
    ['cable type', '2x2.5', 'size', 'cable-types.yaml:2 2.5 mm2'],
    ['cable type', '2x2.5', 'crossSectionMm2', 'cable-types.yaml:2 2.5 mm2'],
    ['cable type', '2x2.5', 'insulationC', 'cable-types.yaml:2 105 °C'],
    ['cable type', '2x2.5', 'outerDiameterMm', 'cable-types.yaml:2 9 mm'],
    ['cable', 'W1', 'typeTag', 'cables.csv:2 2x2.5'],
    ['cable', 'W2', 'routeTags', 'cables.csv:3 WW2 WW1'],
    ['cable', 'W10', 'lengthM', 'cables.csv:4 2 m'],
    ['cable', 'W10', 'routeLengthM', 'cables.csv:4 2 m'],
    ['equipment', 'P1', 'zoneTag', 'equipment.yaml:19 helm'],
    ['equipment', 'P1', 'positionM', 'equipment.yaml:22 [4.10 m, -0.35 m, 6 ft]'],
    ['equipment', 'P1', 'currentMaxA', 'equipment.yaml:23 1.5 A'],
    ['battery', 'G1', 'nominalVoltageV', 'equipment.yaml:37 12 V'],
    ['busbar', 'X1', 'ratedCurrentA', 'equipment.yaml:41 150 A'],
    ['circuit', 'F1', 'fedFromTag', 'circuits.yaml:4 G1'],
    ['circuit', 'A1.1', 'loadTags', 'circuits.yaml:22 P1 K1'],
    ['circuit', 'A1.1', 'protection.ratedCurrentA', 'circuits.yaml:20 5 A'],
    ['circuit', 'A1.1', 'protection.device', 'circuits.yaml:19 blade fuse'],
    ['circuit', 'F2', 'demandFactor', 'circuits.yaml:13 0.6'],
    ['CAN bus', 'N1', 'backbone.2.deviceTag', 'circuits.yaml:29 P1'],
    ['CAN bus', 'N1', 'backbone.2.dropCableTag', 'circuits.yaml:29 W11'],
    ['CAN bus', 'N1', 'backbone.1.cableTag', 'circuits.yaml:28 W10'],
    ['canBus', 'N1', 'name', 'circuits.yaml:25 Main bus'],
    ['tee', 'T1', null, 'circuits.yaml:29 T1'],
    ['ethernet network', 'N2', 'switchTags', 'circuits.yaml:33 [K1]'],
    ['change', 'A', 'what', 'vessel.yaml:19 First issue.'],
  ])('%s %s, %s', (kind, id, field, expected) => {
    expect(at(kind, id, field)).toBe(expected)
  })

  test('a value of the model is found at the model', () => {
    expect(at('equipment', 'P1', 'massKg')).toBe('equipment.yaml:11 2 lb')
    expect(at('equipment', 'P1', 'ports')).toBe('equipment.yaml:13 - {name: power, kind: power}')
    expect(at('model', 'brook-7', 'supplyMinV')).toBe('equipment.yaml:6 9 V')
  })

  test('a field that is written nowhere: the tag', () => {
    expect(at('equipment', 'P1', 'serial')).toBe('equipment.yaml:16 P1')
    expect(at('circuit', 'F1', 'designCurrentA')).toBe('circuits.yaml:2 F1')
    expect(at('cable', 'W12', 'lengthM')).toBe('cables.csv:6 W12')
  })

  test('part of a field that is written: the part', () => {
    expect(at('circuit', 'F1', 'protection.breakingCapacityA')).toBe('circuits.yaml:5 {type: "class T fuse", rating: 100 A}')
  })

  test('the whole entry: the tag', () => {
    expect(at('panel', 'A1', null)).toBe('equipment.yaml:43 A1')
    expect(at('vessel', '', null)).toBe('vessel.yaml:2 Tern')
  })

  test('a thing that is in no file: nothing', () => {
    expect(at('cable', 'W99', 'lengthM')).toBeNull()
  })

  test('a value behind an alias: the anchor', () => {
    const files = changed(smallVessel, 'equipment.yaml', 'supply-min: 9 V\n    supply-max: 32 V', 'supply-min: &v 12 V\n    supply-max: *v')
    expect(sourceIndex(sourceOf(files).entries)({ kind: 'model', id: 'brook-7' }, 'supplyMaxV'))
      .toEqual({ file: 'equipment.yaml', line: 6, column: 20, endLine: 6, endColumn: 24 })
  })
})
