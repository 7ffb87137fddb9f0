import { describe, expect, it } from 'vitest'
import { calculate } from '../../../src/calculate/calculate.js'
import type { Equipment } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { aCircuit, anEquipment, anOutput } from '../../support/vessel-builder.js'
import { boat, cables, circuit, load } from '../feeding/support.js'

/** The isolator Q1 of the small boat, before its main fuse; 40 A drawn, 60 A put in by an alternator on the busbar. */
function throughIsolator(given: Partial<Equipment>, { charging = true } = {}) {
  const vessel = boat({
    equipment: [load('P1', 40), anEquipment({ tag: 'G3', kind: 'alternator', outputs: [anOutput({ nominalVoltageV: 12, ratedCurrentA: 60 })] })],
    circuits: [circuit('A1.1', ['P1']), ...(charging ? [aCircuit({ tag: 'F17', fedFromTag: 'X1', loadTags: ['G3'] })] : [])],
    cables: cables('W1: A1.1 > P1', ...(charging ? ['W17: X1 > F17', 'W18: F17 > G3'] : [])),
  })
  const equipment = vessel.equipment.map(item => (item.tag === 'Q1' ? { ...item, ...given } : item))
  const { switches, findings, notAssessed } = calculate({ ...vessel, equipment }, bases.iso).protectiveDevices
  return {
    of: switches.find(({ tag }) => tag === 'Q1'), findings: findings.filter(({ id }) => id === 'PDV110').map(({ message }) => message.replaceAll('\u00A0', ' ')),
    gaps: notAssessed.filter(({ subjectTag }) => subjectTag === 'Q1').map(({ reason }) => reason),
  }
}

describe('a switch against its rating', () => {
  it('carries what is drawn or what is put in, the larger of the two', () => {
    expect(throughIsolator({ ratedCurrentA: 60 })).toMatchObject({ of: { currentA: 60, comparison: { within: true, margin: 0 } }, findings: [], gaps: [] })
    expect(throughIsolator({ ratedCurrentA: 60 }, { charging: false }).of).toMatchObject({ currentA: 40, comparison: { margin: 20 } })
  })

  it('with less than that is an error', () => {
    expect(throughIsolator({ ratedCurrentA: 50 }).findings).toEqual(['Q1 carries 60.0 A, rated 50.0 A'])
  })

  it('is not assessed without a rating where it is a main switch; a plain switch without one is left alone', () => {
    expect(throughIsolator({})).toMatchObject({ of: { comparison: null }, gaps: ['current through the switch against its rating: its rating is not recorded'] })
    expect(throughIsolator({ kind: 'switch' }).of).toBeUndefined()
  })

  it('is not assessed while the current is not known, and not at all once removed', () => {
    expect(throughIsolator({ ratedCurrentA: 300, status: 'removed' }).of).toBeUndefined()
    const unknown = boat({ equipment: [load('P1')], circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1') })
    const equipment = unknown.equipment.map(item => (item.tag === 'Q1' ? { ...item, ratedCurrentA: 300 } : item))
    expect(calculate({ ...unknown, equipment }, bases.iso).protectiveDevices.switches).toMatchObject([{ tag: 'Q1', currentA: null, comparison: null }])
  })

  it('is not assessed where one of the cables at it carries what is not known', () => {
    const vessel = boat({
      equipment: [load('P1'), load('P2', 5), anEquipment({ tag: 'S1', kind: 'switch', ratedCurrentA: 10 })], circuits: [circuit('A1.1', ['P1', 'P2'])],
      cables: cables('W1: A1.1 > S1', 'W2: S1 > P1', 'W3: S1 > P2'),
    })
    expect(calculate(vessel, bases.iso).protectiveDevices.switches.find(({ tag }) => tag === 'S1')).toMatchObject({ currentA: null, comparison: null })
  })
})
