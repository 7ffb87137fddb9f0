/** What an emergency needs on which boats. The needs follow Directive 2013/53/EU, annex I, part A, from memory, and common practice. */
import { describe, expect, it } from 'vitest'
import { becauseOf } from '../../../src/calculate/emergency/conditions.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bibliography } from '../../../src/references/bibliography.js'
import { emergencyNeeds } from '../../../src/references/emergency-needs.js'
import { emergencyTasks } from '../../../src/references/procedure-places.js'
import { aBattery, anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { emergencyOf } from './support.js'

const identity = aVessel().identity
const delivered = (given: Partial<Vessel> = {}): Vessel => aVessel({ ...given, identity: { ...identity, deliveredOn: '2026-05-29', ...given.identity } })
const answer = (vessel: Vessel, key: string) => emergencyOf(vessel).needs.find(need => need.key === key)
const idsOf = (vessel: Vessel) => emergencyOf(vessel).findings.map(({ id, context }) => `${id} ${context?.['words'] ?? context?.['kind'] ?? context?.['items']}`)
const item = (kind: string, given = {}) => anEquipment({ tag: kind.replace(/\W/g, '-'), kind, zoneTag: 'z', location: 'here', ...given })

describe('the table of needs', () => {
  it('has each key once, and names sources, pages and conditions that there are', () => {
    expect(new Set(emergencyNeeds.map(({ key }) => key)).size).toBe(emergencyNeeds.length)
    for (const { citation, tasks, on } of emergencyNeeds) {
      expect(bibliography).toHaveProperty(citation.source)
      expect(tasks.filter(task => !emergencyTasks.includes(task))).toEqual([])
      expect(becauseOf).toHaveProperty([on])
    }
    expect(emergencyTasks.filter(task => !emergencyNeeds.some(({ tasks }) => tasks.includes(task)))).toEqual([])
  })
})

describe('needs', () => {
  it('of every boat are few', () => {
    expect(emergencyOf(aVessel()).needs.map(({ key }) => key)).toEqual(['extinguisher', 'lifebuoy', 'boarding-ladder', 'call-for-help', 'lifejackets'])
  })

  it.each([
    ['engine-stop', { equipment: [item('engine')] }], ['fuel-shut-off', { equipment: [item('engine')] }], ['gas-shut-off', { equipment: [item('gas appliance')] }], ['gas-shut-off', { equipment: [item('gas cylinder')] }],
    ['isolator', { batteries: [aBattery({ tag: 'G1' })] }], ['escape-hatch', { zones: [aZone({ tag: 'c', space: 'interior' })] }], ['fixed-extinguisher', { zones: [aZone({ tag: 'e', space: 'machinery' })] }],
    ['manual-bilge-pump', { equipment: [item('bilge pump')] }], ['manual-bilge-pump', { zones: [aZone({ tag: 'b', space: 'bilge' })] }], ['seacock', { equipment: [item('toilet')] }],
    ['seacock', { equipment: [item('engine', { zoneTag: 'e' })], zones: [aZone({ tag: 'e', space: 'machinery' })] }], ['shore-inlet', { equipment: [item('galvanic isolator')] }],
    ['liferaft', { identity: { ...identity, designCategory: 'B' } }], ['emergency-tiller', { equipment: [item('steering pump'), item('engine')] }],
    ['second-tiller', { equipment: [item('rudder sensor'), item('engine', { tag: 'M1' }), item('engine', { tag: 'M2' })] }],
  ] as const)('%s come of what is on board', (key, given) => {
    expect(answer(aVessel(), key)).toBeUndefined()
    expect(answer(aVessel(given), key)?.state).toBe('not recorded')
  })

  it.each([
    ['seacock', 'an outboard engine takes no water through the hull', { equipment: [item('engine', { zoneTag: 'a' })], zones: [aZone({ tag: 'a', space: 'deck' })] }],
    ['gas-shut-off', 'alarms for vapour and carbon monoxide are gas detectors too', { equipment: [item('gas detector')] }],
    ['emergency-tiller', 'two engines steer, badly', { equipment: [item('rudder sensor'), item('engine', { tag: 'M1' }), item('engine', { tag: 'M2' })] }],
    ['liferaft', 'category C', { identity: { ...identity, designCategory: 'C' } }],
    ['engine-stop', 'the engine is removed', { equipment: [item('engine', { status: 'removed' })] }],
  ] as const)('%s do not come where %s', (key, _, given) => expect(answer(aVessel(given as Partial<Vessel>), key)).toBeUndefined())

  it('a sailing boat with two engines needs a tiller all the same', () => {
    expect(answer(aVessel({ identity: { ...identity, propulsion: 'sailing' }, equipment: [item('rudder sensor'), item('engine', { tag: 'M1' }), item('engine', { tag: 'M2' })] }), 'emergency-tiller')?.state).toBe('not recorded')
  })

  it('are answered by an item, also a planned one, or by an absence, and not by a removed item', () => {
    expect(answer(aVessel({ equipment: [item('lifebuoy')] }), 'lifebuoy')).toMatchObject({ state: 'recorded', itemTags: ['lifebuoy'] })
    expect(answer(aVessel({ equipment: [item('lifebuoy', { status: 'planned' })] }), 'lifebuoy')?.state).toBe('recorded')
    expect(answer(aVessel({ absences: [{ kind: 'lifebuoy', reason: 'a throwing line' }] }), 'lifebuoy')).toMatchObject({ state: 'absent', reasons: ['a throwing line'] })
    expect(answer(aVessel({ equipment: [item('lifebuoy', { status: 'removed' })] }), 'lifebuoy')?.state).toBe('not recorded')
  })
})

describe('findings', () => {
  it('come once the boat is delivered, a warning for what is needed, a note for what is advised', () => {
    expect(emergencyOf(delivered()).findings.map(({ id, severity }) => `${id} ${severity}`)).toEqual(['EMG201 warning', 'EMG201 warning', 'EMG201 warning', 'EMG201 warning', 'EMG202 note'])
    expect(emergencyOf(delivered()).notAssessed).toEqual([])
  })

  it('come with the first absence', () => {
    expect(idsOf(aVessel({ absences: [{ kind: 'lifebuoy', reason: 'none' }] }))).toEqual(['EMG201 fire extinguisher', 'EMG201 boarding ladder', 'EMG201 radio, beacon or distress signals', 'EMG202 lifejackets'])
  })

  it('do not come of gear alone: that is not assessed; of nothing at all the pages say so', () => {
    const begun = emergencyOf(aVessel({ equipment: [item('fire extinguisher', { zoneTag: null, location: null })] }))
    expect(begun.findings).toEqual([])
    expect(begun.notAssessed).toEqual([{ subjectTag: 'Test vessel', reason: expect.stringContaining('not recorded: lifebuoy, boarding ladder, radio, beacon or distress signals and lifejackets') }])
    expect(emergencyOf(aVessel())).toMatchObject({ findings: [], notAssessed: [] })
  })

  it('tell of gear that cannot be found', () => {
    const found = (given: object) => idsOf(delivered({ equipment: [item('seacock', given)] })).filter(id => /EMG20[34]/.test(id))
    expect(found({})).toEqual([])
    expect(found({ zoneTag: null })).toEqual(['EMG203 seacock'])
    expect(found({ location: null })).toEqual(['EMG204 seacock'])
    expect(found({ location: null, positionM: [1, 0, 0] })).toEqual([])
    expect(found({ zoneTag: null, status: 'planned' })).toEqual([])
  })

  it('tell of an absence that an item on board contradicts', () => {
    const found = (status: 'fitted' | 'planned' | 'removed') => idsOf(delivered({ absences: [{ kind: 'liferaft', reason: 'none' }], equipment: [item('liferaft', { status })] })).filter(id => id.startsWith('EMG301'))
    expect(found('fitted')).toEqual(['EMG301 liferaft'])
    expect([...found('planned'), ...found('removed')]).toEqual([])
  })
})
