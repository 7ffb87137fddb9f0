/** From each circuit back to its source. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { feedingPass } from '../../../src/calculate/feeding/index.js'
import { aBattery, aBusbar, aCircuit, anEquipment, aPanel, aVessel } from '../../support/vessel-builder.js'
import { boat, cables, circuit, feed, load, messages } from './support.js'

const supplied = boat({ equipment: [load('P1', 5)], circuits: [circuit('A1.1', ['P1'])], cables: cables('W1: A1.1 > P1') })

describe('the chain of a circuit', () => {
  it('leads from the source down to it, with the voltage of the source', () => {
    expect(feed(supplied, 'A1.1')).toMatchObject({ chain: ['F1', 'F2', 'A1.1'], sourceTag: 'G1', nominalVoltageV: 12 })
    expect(feed(supplied, 'F1')).toMatchObject({ chain: ['F1'], sourceTag: 'G1' })
  })

  it('is empty where nothing feeds the panel; the user is told once for the panel', () => {
    const circuits = [...supplied.circuits, ...['A2.1', 'A2.2'].map(tag => aCircuit({ tag, fedFromTag: 'A2' }))]
    const vessel = { ...supplied, circuits, panels: [...supplied.panels, aPanel({ tag: 'A2' })] }
    expect(feed(vessel, 'A2.1')).toMatchObject({ chain: [], sourceTag: null, nominalVoltageV: null })
    expect(feedingPass(vessel).findings).toMatchObject([
      { id: 'FED205', severity: 'warning', subject: { kind: 'panel', id: 'A2' }, message: 'Nothing feeds A2, from which 2 circuits are fed' },
    ])
  })

  it('goes by what is normally closed: an emergency feeder that is normally open does not count', () => {
    const emergency = aCircuit({ tag: 'F9', fedFromTag: 'G2', loadTags: ['A1'], normalState: 'open' })
    const vessel = { ...supplied, batteries: [...supplied.batteries, aBattery({ tag: 'G2' })], circuits: [emergency, ...supplied.circuits] }
    expect(feed(vessel, 'A1.1').chain).toEqual(['F1', 'F2', 'A1.1'])
    // Closed, it would carry all that the panel draws.
    expect(feed(vessel, 'F9')).toMatchObject({ chain: ['F9'], sourceTag: 'G2', designCurrent: { output: { designCurrentA: 5 } } })
    expect(feed(vessel, 'F2').designCurrent).toMatchObject({ output: { designCurrentA: 5 } })
  })

  it('takes the only feeder even if it is normally open', () => {
    const circuits = supplied.circuits.map(each => (each.tag === 'F2' ? { ...each, normalState: 'open' as const } : each))
    expect(feed({ ...supplied, circuits }, 'A1.1')).toMatchObject({ chain: ['F1', 'F2', 'A1.1'] })
  })
})

describe('several feeders of one panel', () => {
  it('leave what it draws through which not assessed, downstream and upstream, and are reported', () => {
    const vessel = {
      ...supplied, batteries: [...supplied.batteries, aBattery({ tag: 'G2' })],
      circuits: [...supplied.circuits, aCircuit({ tag: 'F9', fedFromTag: 'G2', loadTags: ['A1'] })],
    }
    expect(feed(vessel, 'A1.1')).toMatchObject({ chain: [], sourceTag: null, designCurrent: { status: 'computed' } })
    for (const tag of ['F2', 'F9']) {
      expect(feed(vessel, tag).designCurrent).toMatchObject({ status: 'not computed', reason: 'A1 is fed by F2 and F9, so how the current divides is not known' })
    }
    expect(feed(vessel, 'F1').designCurrent).toMatchObject({ status: 'not computed' })
    expect(messages(vessel)).toContain('FED306 A1 is fed by F2 and F9; how the current divides is not assessed')
  })
})

describe('circuits that feed one another', () => {
  const ring = aVessel({
    busbars: ['X1', 'X2', 'X3'].map(tag => aBusbar({ tag })), equipment: [anEquipment({ tag: 'P1', currentMaxA: 1 })],
    circuits: [
      aCircuit({ tag: 'F0', fedFromTag: 'X3', loadTags: ['P1'] }),
      aCircuit({ tag: 'F1', fedFromTag: 'X1', loadTags: ['X2'] }), aCircuit({ tag: 'F2', fedFromTag: 'X2', loadTags: ['X3'] }), aCircuit({ tag: 'F3', fedFromTag: 'X3', loadTags: ['X1'] }),
    ],
  })

  it('reach no source, have no design current, and are reported once', () => {
    for (const tag of ['F0', 'F1', 'F2', 'F3']) expect(feed(ring, tag)).toMatchObject({ chain: [], sourceTag: null })
    for (const tag of ['F1', 'F2', 'F3']) expect(feed(ring, tag).designCurrent.status).toBe('not computed')
    expect(feedingPass(ring).findings.filter(({ id }) => id === 'FED307')).toMatchObject([
      { severity: 'error', message: 'Circuit F3: F3, F1 and F2 feed one another in a ring, so no source is reached' },
    ])
  })

  it('of a circuit that feeds what it is fed from', () => {
    const vessel = aVessel({ busbars: [aBusbar({ tag: 'X1' })], circuits: [aCircuit({ tag: 'F1', fedFromTag: 'X1', loadTags: ['X1'] })] })
    expect(feed(vessel, 'F1')).toMatchObject({ chain: [], designCurrent: { status: 'not computed' } })
    expect(messages(vessel)).toContain('FED307 Circuit F1: F1 feeds itself, so no source is reached')
  })
})

describe('on any net of feeders and cables, right or wrong', () => {
  const points = ['G1', 'X1', 'X2', 'A1', 'A2']
  const tags = ['F1', 'F2', 'F3', 'F4', 'F5', 'F6']
  const ends = fc.constantFrom(...points, ...tags, 'J1', 'J2', 'P1', 'P2', 'TB1:1', 'TB1:2', 'TB1')
  const nets = fc.record({
    circuits: fc.tuple(...tags.map(tag => fc.record({
      fedFromTag: fc.constantFrom(...points), loadTags: fc.uniqueArray(fc.constantFrom(...points, 'P1', 'P2'), { maxLength: 3 }),
      normalState: fc.constantFrom('closed' as const, 'open' as const),
    }).map(given => aCircuit({ tag, ...given })))),
    ends: fc.array(fc.tuple(ends, ends), { maxLength: 25 }),
  })

  it('the pass ends, every circuit has a result, no cable stands twice in a circuit, every parent comes before', () => {
    fc.assert(fc.property(nets, ({ circuits, ends }) => {
      const { byCircuit } = feedingPass(aVessel({
        batteries: [aBattery({ tag: 'G1' })], busbars: [aBusbar({ tag: 'X1' }), aBusbar({ tag: 'X2' })], panels: [aPanel({ tag: 'A1' }), aPanel({ tag: 'A2' })],
        equipment: [load('P1', 1), load('P2'), ...['J1', 'J2'].map(tag => anEquipment({ tag, kind: 'junction box' })), anEquipment({ tag: 'TB1', kind: 'terminal block' })],
        circuits, cables: cables(...ends.map(([from, to], i) => `W${i}: ${from} > ${to}`)),
      }))
      expect([...byCircuit.keys()]).toEqual(tags)
      for (const { segments, supplySegments, chain, sourceTag, reachedTags, unreachedTags } of byCircuit.values()) {
        const used = [...supplySegments, ...segments].map(({ cableTag }) => cableTag)
        expect(new Set(used).size).toBe(used.length)
        for (const [i, { parent, nearTag }] of segments.entries()) {
          expect(parent ?? -1).toBeLessThan(i)
          if (parent !== null) expect(segments[parent]!.farTag).toBe(nearTag)
        }
        expect(sourceTag === null).toBe(chain.length === 0)
        expect(new Set(chain).size).toBe(chain.length)
        expect(reachedTags.filter(tag => unreachedTags.includes(tag))).toEqual([])
      }
    }), { numRuns: 500 })
  })
})
