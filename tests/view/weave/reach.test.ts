/** Lists of what to lay a hand on, made from the boat: right things, right order, what is missing told. */
import { describe, expect, it } from 'vitest'
import { plainText } from '../../../src/view/tables.js'
import type { Reach } from '../../../src/view/view-model.js'
import { weave } from '../../../src/view/weave/weave.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { twoBanks } from '../../calculate/emergency/support.js'
import { vesselAt } from '../../calculate/dependency/support.js'
import { contextOf } from '../pages/support.js'

const entriesOf = (vessel: Vessel, text: string) => weave(contextOf(vessel), text).filter((block): block is Reach => block.is === 'reach').flatMap(({ entries }) => entries)
  .map(({ act, what, where, remark }) => ({ act, what: plainText(what), where: plainText(where ?? []), remark: plainText(remark ?? []).replaceAll('\u00A0', ' ') }))
const lines = (vessel: Vessel, text: string) => entriesOf(vessel, text).map(entry => Object.values(entry).filter(part => part !== null && part !== '').join(' | '))

const valve = (tag: string, given = {}) => anEquipment({ tag, name: `Valve ${tag}`, kind: 'fuel shut-off valve', zoneTag: 'aft', location: 'port side', ...given })
const boat = (given: Partial<Vessel> = {}) => aVessel({ zones: [aZone({ tag: 'aft', name: 'Aft' }), aZone({ tag: 'engine', name: 'Engine space', space: 'machinery' })], ...given })

describe('things of some kinds', () => {
  it('say what the hand does, which, where, and what is noted', () => {
    expect(lines(boat({ equipment: [valve('Q31', { notes: 'Pull.' })] }), '{{ reach: Shut, fuel shut-off valve }}')).toEqual(['Shut | Q31 Valve Q31 | Aft: port side | Pull.'])
  })
  it('are one entry where place and note are one', () => {
    expect(lines(boat({ equipment: [valve('Q31'), valve('Q32'), valve('Q33', { location: 'starboard' })] }), '{{ reach: Shut, fuel shut-off valve }}'))
      .toEqual(['Shut | Q31 Valve Q31, Q32 Valve Q32 | Aft: port side', 'Shut | Q33 Valve Q33 | Aft: starboard'])
  })
  it('come kind by kind in the order of the text', () => {
    const equipment = [valve('Q31'), anEquipment({ tag: 'F91', kind: 'fire extinguisher', zoneTag: 'aft' })]
    expect(entriesOf(boat({ equipment }), '{{ reach: X, fire extinguisher, fuel shut-off valve }}').map(({ what }) => what.slice(0, 3))).toEqual(['F91', 'Q31'])
  })
  it('that are not there are told where the boat needs them: the reason, that they are planned, or that nothing is recorded', () => {
    const text = '{{ reach: X, fuel shut-off valve }}'
    const engine = anEquipment({ tag: 'M1', kind: 'engine' })
    expect(lines(boat({ equipment: [engine] }), text)).toEqual(['Fuel shut-off valve | not recorded'])
    expect(lines(boat({ equipment: [engine], absences: [{ kind: 'fuel shut-off valve', reason: 'gravity cannot feed her' }] }), text)).toEqual(['Fuel shut-off valve | none on board: gravity cannot feed her'])
    expect(lines(boat({ equipment: [engine, valve('Q31', { status: 'planned' })] }), text)).toEqual(['Fuel shut-off valve | planned, not yet on board: Q31'])
    expect(lines(boat(), text)).toEqual([])
  })
  it('outside machinery spaces leave out what is in one', () => {
    expect(lines(boat({ equipment: [valve('Q31'), valve('Q32', { zoneTag: 'engine' })] }), '{{ reach-outside: X, fuel shut-off valve }}')).toEqual(['Shut | Q31 Valve Q31 | Aft: port side'])
  })
})

describe('cutting the power', () => {
  const vessel = twoBanks()
  it('numbers the isolators, and says what ends, what is left, and whose engine stops first', () => {
    expect(lines(vessel, '{{ isolators }}')).toEqual([
      '1 Turn off | Q1 Equipment Q1 | not recorded | Ends distress radio; navigation lights; with 4 other things. Engine stopped first: G3 charges through it.',
      '2 Turn off | Q2 Equipment Q2 | not recorded | Ends M2 Equipment M2.',
      'Leave open | Q3 Equipment Q3 | not recorded | Closed, it joins G2 to the other side, and that stays live.',
    ])
  })
  it('lists what stays live with its device', () => {
    expect(entriesOf(vessel, '{{ always-live }}').map(({ act, what, remark }) => `${act}: ${what}: ${remark}`)).toEqual([
      'Take out: F2 Circuit F2, blade fuse 5 A: Keeps alive G11 Equipment G11.', 'Take out: F7 Circuit F7, blade fuse 10 A: Keeps alive P19 Equipment P19.', 'Take out: F3 Circuit F3, blade fuse 10 A: Keeps alive M1 Equipment M1.',
    ].map(line => line.replace(/(\d) A/, '$1\u00A0A')))
  })
  it('says when no isolator is recorded', () => expect(lines(aVessel(), '{{ isolators }}')).toEqual(['Battery isolator | not recorded']))
  it('in haste gives places alone, without the link', async () => {
    const sample = await vesselAt('sample-vessel')
    const entries = entriesOf(sample, '{{ current-off: Off }}')
    expect(entries.map(({ act, what }) => `${act} ${what.split(' ')[0]}`)).toEqual(['Unplug X91', 'Switch off T20', 'Turn off Q1', 'Turn off Q4', 'Turn off Q2'])
    expect(entries.map(({ remark }) => remark)).toEqual(['', '', '', '', ''])
  })
})

describe('the sample', async () => {
  const sample = await vesselAt('sample-vessel')
  it('says what the sun keeps live and what parts it', () => {
    const [sun] = entriesOf(sample, '{{ other-sources }}').filter(({ act }) => act === 'Cover')
    expect(sun!.what).toBe('G41 Solar panel, port, G42 Solar panel, starboard')
    expect(sun!.remark).toContain('By day they keep X1 live; F21 Charging, solar')
  })
  it('says of each bank what ends, what is left, and how it is isolated', () => {
    const [house, start] = entriesOf(sample, '{{ banks }}')
    expect(house!.remark).toMatch(/^Ends navigation lights; position; alarms \(only B41, B42, B46, B47 left\); part of engine control \(left M12, S16, S12\); part of bilge pumping \(left G14\); part of distress radio \(left P16, P17\); with \d+ other things\. .*Part of it back by Q3 \(link F38\)\. If faulty, isolate by Q1 \(/)
    expect(start!.remark).toMatch(/^Ends engine control \(only S11, S12 left\); part of bilge pumping \(left G11, G12, G13\); with \d+ other things\. Lives on: distress radio, navigation lights, position, alarms\. Only flat: Q3 \(link F38\) can start an engine, isolators closed\. Faulty: no link brings it back\. If faulty, isolate by Q4 .*, Q2 \(/)
  })
  it('of what a terminal fuse feeds says its own switch, since nobody unscrews that under load', () => {
    const entries = entriesOf(sample, '{{ switch-off-first }}')
    const gyro = entries.find(({ what }) => what.startsWith('M15'))!
    expect(gyro.act).toBe('Switch off')
    expect(gyro.remark).toMatch(/^Saves about .* Leave its fuse F16 in\.$/)
    expect(entries.filter(({ act }) => act === 'Take out')).toEqual([])
  })
  it('never offers the link without its caution', () => {
    const blocks = weave(contextOf(sample), '{{ links }}')
    expect(blocks.map(({ is }) => is)).toEqual(['reach', 'paragraph'])
    expect(blocks[1]!.is === 'paragraph' && plainText(blocks[1]!.text)).toContain('First find the fault: what is faulty stays cut off')
    expect(lines(sample, '{{ links }}')[0]).toContain('Only to start an engine from the house bank')
  })
  it('says how each pump starts by hand and by itself', () => {
    const pumps = entriesOf(sample, '{{ bilge-pumps }}')
    expect(pumps.map(({ act, what }) => `${act ?? '-'} ${what.split(' ')[0]}`)).toEqual(['Switch on G11', 'Switch on G12', 'Switch on G13', '- G14'])
    expect(pumps[2]!.remark).toMatch(/^By hand: A4\.11 electronic channel 7\.5 A, A4 way 11.*Does not start: Bypass strip row 11.*By itself: A5\.3 circuit breaker 7\.5 A, A5 way 3.*always live\.$/)
    expect(pumps[3]!.remark).toMatch(/^By hand: no way recorded\. By itself: F40/)
  })
  it('finds the fuse of each lever and of the autopilot, and says what has none of its own', () => {
    const fuses = lines(sample, '{{ fuses: Fuses, autopilot computer, autopilot drive, engine control }}')
    expect(fuses[0]).toMatch(/^K2 Autopilot computer \| A2\.1 Autopilot, circuit breaker 20.A, A2 way 1/)
    expect(fuses[1]).toBe('M1 Autopilot drive | no fuse of its own: it works with K2')
    expect(fuses[2]).toMatch(/^S11 .* A1\.9 .*Wheelhouse/)
  })
})
