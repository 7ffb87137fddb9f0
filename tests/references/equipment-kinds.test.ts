import { describe, expect, it } from 'vitest'
import { classLetters, equipmentKind, equipmentKindKeys, equipmentKinds, isEquipmentKind } from '../../src/references/equipment-kinds.js'

describe('equipment kinds', () => {
  it('use keys that an author can write: lower-case trade words', () => {
    for (const key of equipmentKindKeys) expect(key).toMatch(/^[a-z]+([ -][a-z]+)*$/)
  })

  it('use every class letter that is explained, and no title twice', () => {
    expect(new Set(Object.values(equipmentKinds).map(kind => kind.classLetter))).toEqual(new Set(Object.keys(classLetters)))
    const titles = Object.values(equipmentKinds).map(kind => kind.title)
    expect(new Set(titles).size).toBe(titles.length)
  })

  // IEC 81346-2, from memory: classes that designers of plants use daily.
  it.each([
    ['temperature sensor', 'B'], ['fuse holder', 'F'], ['alternator', 'G'], ['gateway', 'K'], ['windlass', 'M'], ['display', 'P'],
    ['switch', 'Q'], ['charger', 'T'], ['terminal block', 'X'], ['light', 'E'], ['keypad', 'S'], ['can bus terminator', 'R'],
  ])('put a %s in class %s', (key, letter) => {
    expect(equipmentKind(key).classLetter).toBe(letter)
  })

  it('end a circuit at every load and source, and lead it through switches, protection and junctions', () => {
    for (const key of equipmentKindKeys) {
      const { draw, joins } = equipmentKinds[key]
      if (draw === 'nothing' || draw === 'load' || draw === 'source') expect([key, joins]).toEqual([key, 'nothing'])
      else if (!key.startsWith('can bus')) expect([key, joins]).not.toEqual([key, 'nothing'])
    }
    expect(equipmentKinds['terminal block'].joins).toBe('same terminal')
  })

  it('know a key from what is not one', () => {
    expect(isEquipmentKind('bilge pump')).toBe(true)
    expect(isEquipmentKind('constructor')).toBe(false)
    expect(() => equipmentKind('bilgepump')).toThrow('no equipment kind "bilgepump"')
  })
})
