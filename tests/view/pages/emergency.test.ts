/** The emergency pages: the order of what is done, the right things on each, the yard's own procedure, what is missing. */
import { describe, expect, it } from 'vitest'
import type { Vessel } from '../../../src/model/vessel.js'
import { emergencyTasks } from '../../../src/references/procedure-places.js'
import { emergencyPages } from '../../../src/view/pages/emergency/emergency.view.js'
import { pageMm, sheetFit } from '../../../src/view/pages/emergency/sheet-fit.js'
import { homePage } from '../../../src/view/pages/vessel.view.js'
import { plainText } from '../../../src/view/tables.js'
import type { Block, Page, Reach } from '../../../src/view/view-model.js'
import { anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { vesselAt } from '../../calculate/dependency/support.js'
import { contextOf, wordsOn } from './support.js'

const sample = await vesselAt('sample-vessel')
const pagesOf = (vessel: Vessel): ReadonlyMap<string, Page> => new Map(emergencyPages(contextOf(vessel)).map(page => [page.key.replace('emergency/', ''), page]))
const samplePages = pagesOf(sample)
const barePages = pagesOf(aVessel())
const reachOf = ({ blocks }: Page): readonly Reach[] => blocks.filter((block): block is Reach => block.is === 'reach')
const tagsIn = (page: Page): readonly string[] => reachOf(page).flatMap(({ entries }) => entries.map(({ what }) => plainText(what).split(' ')[0]!))

/** The numbered steps, without links and marks. */
const stepsOf = ({ blocks }: Page): readonly string[] => {
  const [first] = blocks
  if (first?.is !== 'markdown') throw new Error('no steps')
  return first.source.split('\n').filter(line => /^\d\. /.test(line)).map(line => line.replace(/\]\([^)]*\)/g, '').replace(/[*[\]]/g, ''))
}
/** Each of these stands in a step, and none before the one ahead of it. */
function expectOrder(steps: readonly string[], words: readonly string[]): void {
  const at = words.map(word => steps.findIndex(step => step.includes(word)))
  expect(words.filter((_, i) => at[i] === -1)).toEqual([])
  expect(at).toEqual([...at].toSorted((a, b) => a - b))
}

it('there is a page for each task and one that leads to them, for any boat', () => {
  expect([...samplePages.keys()]).toEqual(['emergency', ...emergencyTasks])
  expect([...barePages.keys()]).toEqual(['emergency', ...emergencyTasks])
})

describe.each([['the sample', samplePages], ['a boat of which nothing is recorded', barePages]] as const)('%s', (_, pages) => {
  it.each(emergencyTasks)('%s has at most eight steps, numbered on, and a source', task => {
    const page = pages.get(task)!
    expect(stepsOf(page).length).toBeGreaterThanOrEqual(4)
    expect(stepsOf(page).length).toBeLessThanOrEqual(8)
    expect(wordsOn(page)).toMatch(/\*Source: .*(common practice|COLREG)/)
    expect(wordsOn(page)).toContain('replaces no training')
    expect(wordsOn(page)).not.toMatch(/\{\{|undefined|\[object/)
  })
})

// The order is common practice of fire drills and of the general safety guidance for small craft; no single source gives it.
describe('the order of what is done', () => {
  it('in a fire: people, call, engines, fuel and gas, current, openings, and only then the fixed extinguisher', () => {
    expectOrder(stepsOf(samplePages.get('fire')!), ['All on deck', 'MAYDAY', 'Stop engines, generator and blower', 'Shut the fuel and the gas', 'Current off', 'Shut every door', 'release the fixed extinguisher', 'small fire that you can see'])
    const fixed = stepsOf(samplePages.get('fire')!).find(step => step.includes('release the fixed extinguisher'))!
    for (const words of ['engines and blower stopped', 'nobody inside', 'all openings shut']) expect(fixed).toContain(words)
    expect(stepsOf(samplePages.get('fire')!).find(step => step.includes('Shut every door'))).toContain('Never open one that is hot')
  })

  it('sends nobody into the engine space of a fire for the stops on the engines', () => {
    const fire = samplePages.get('fire')!
    expect(tagsIn(fire)).not.toContain('S31')
    expect(stepsOf(fire).join(' ')).not.toContain('S31')
    expect(tagsIn(samplePages.get('loss-of-steering')!)).toContain('S31')
  })

  it('without a fixed extinguisher tells of none', () => {
    expect(stepsOf(barePages.get('fire')!).join(' ')).not.toContain('release the fixed')
    expect(stepsOf(barePages.get('fire')!).join(' ')).toContain('keep it shut')
  })

  it('with lithium batteries says that they are not fought; with lead alone does not', () => {
    expect(wordsOn(samplePages.get('fire')!)).toContain('Smoke or hissing from a lithium battery: do not fight it')
    const lead = { ...sample, batteries: sample.batteries.filter(({ chemistry }) => chemistry !== 'lfp') }
    expect(wordsOn(pagesOf(lead).get('fire')!)).not.toContain('hissing')
  })

  it('cutting the power: call, engines, shore, inverter, isolators, and what stays live last', () => {
    expectOrder(stepsOf(samplePages.get('isolate')!), ['Call first', 'Stop the engines', 'Shore power off', 'Inverter off', 'Open the battery isolators', 'Take out what stays live', 'Leave it all off'])
  })

  it('flooding: pumps, call, find, seacocks, the hole', () => {
    expectOrder(stepsOf(samplePages.get('flooding')!), ['All bilge pumps on by hand', 'Call.', 'Find where it comes in', 'Shut every seacock', 'Stop the hole', 'Losing?'])
    expect(wordsOn(samplePages.get('flooding')!)).toMatch(/An engine as the last pump, only with a hose|\*\*An engine as the last pump\*\*, only with a hose/)
  })

  it('person overboard: shout, throw, point, mark, call, come back, lift, warm', () => {
    expectOrder(stepsOf(samplePages.get('person-overboard')!), ['Shout', 'Throw', 'points', 'Mark the place', 'MAYDAY', 'Come back slowly', 'Hold on, then lift', 'Cold kills'])
  })

  it('no steering: way off, warn, autopilot, other station, emergency tiller; no isolator stops an engine', () => {
    expectOrder(stepsOf(samplePages.get('loss-of-steering')!), ['Levers to neutral', 'Warn others', 'Autopilot to standby', 'Try the other station', 'Emergency tiller'])
  })
})

describe('where it is', () => {
  it('names on each page what it sends a hand to, in the order of the steps', () => {
    expect(tagsIn(samplePages.get('isolate')!)).toEqual(['X91', 'T20', 'G41', 'Q1', 'Q4', 'Q2', 'Q3', 'F2', 'F36', 'F37', 'F39', 'F40'])
    expect(tagsIn(samplePages.get('fire')!)).toEqual(['Q31', 'Q32', 'Q33', 'Q34', 'G24', 'X91', 'T20', 'Q1', 'Q4', 'Q2', 'F91', 'F92', 'F93', 'F94', 'F95', 'Q51', 'Q52', 'F81', 'P16', 'P17'])
    expect(tagsIn(samplePages.get('flooding')!)).toEqual(['G11', 'G12', 'G13', 'G14', 'G51', 'Q41', 'Q43', 'Q44', 'Q45', 'Q46', 'F81'])
    expect(tagsIn(samplePages.get('person-overboard')!)).toEqual(['F83', 'F84', 'P1', 'P2', 'P3', 'P8', 'P9', 'F85', 'F86', 'F82'])
  })

  it('says once how to get into each zone that is named', () => {
    const access = samplePages.get('isolate')!.blocks.find(block => block.is === 'facts')
    expect(access?.is === 'facts' && access.entries.map(({ label }) => label).toSorted()).toEqual(['Battery space', 'Electrical locker', 'Transom and bathing platform'])
  })

  it('prints an absence with its reason, and what is needed and not recorded as such', () => {
    const engine = anEquipment({ tag: 'M1', kind: 'engine' })
    const words = wordsOn(pagesOf(aVessel({ equipment: [engine], absences: [{ kind: 'fuel shut-off valve', reason: 'outboard with its own tank' }] })).get('fire')!)
    expect(words).toContain('Fuel shut-off valve | none on board: outboard with its own tank')
    expect(words).toContain('Fire extinguisher | not recorded')
  })
})

describe('the yard’s own procedure', () => {
  const own = { title: 'Fire drill', place: 'fire', aboutTags: [], text: '1. Ring the bell.' } as const
  const page = pagesOf({ ...sample, procedures: [own] }).get('fire')!
  it('takes the place of the steps, and the places stay', () => {
    expect(page.blocks[0]).toEqual({ is: 'markdown', source: '1. Ring the bell.' })
    expect(wordsOn(page)).toContain('Procedure of the yard: Fire drill.')
    expect(wordsOn(page)).not.toContain('MAYDAY')
    expect(tagsIn(page)).toEqual(tagsIn(samplePages.get('fire')!))
  })
  it('of another page does not', () => expect(stepsOf(pagesOf({ ...sample, procedures: [{ ...own, place: 'flooding' }] }).get('fire')!)).toEqual(stepsOf(samplePages.get('fire')!)))
})

describe('ways to the pages', () => {
  it('stand first on the home page, below the distress call', () => {
    const context = contextOf(sample)
    const home = homePage(context, new Set(['distress-call', 'find', ...emergencyPages(context).map(({ key }) => key)]))
    const cards = home.blocks.find(block => block.is === 'cards')
    expect(cards?.is === 'cards' && cards.cards.slice(0, 7).map(({ to }) => to)).toEqual([...emergencyTasks.map(task => `emergency/${task}`), 'find'])
  })
  it('lead from the index to each, and to the distress call where there is something to call with', () => {
    expect(wordsOn(samplePages.get('emergency')!)).toContain('In distress')
    expect(wordsOn(barePages.get('emergency')!)).not.toContain('In distress')
  })
  it('lead to no distress card on a boat that has none', () => {
    for (const page of barePages.values()) expect(JSON.stringify(page)).not.toContain('distress-call')
  })
})

describe('what goes on one sheet', () => {
  const list = (count: number, remark: string | null): Block => ({ is: 'reach', id: 'r', caption: 'Things', entries: Array.from({ length: count }, (_, i) => ({ act: 'Take', what: [`F${i} Extinguisher`], where: ['Cabin: '.repeat(8)], remark: remark === null ? null : [remark] })) })
  const drawing: Block = { is: 'drawing', id: 'd', caption: 'Plan', svg: '<svg/>', description: [] }
  it('is everything of a small boat, in large letters', () => expect(sheetFit([list(4, 'Note'), drawing])).toBe('all, large'))
  it('leaves out the plan first, then remarks, then all but the first of each list', () => {
    const fits = [10, 30, 40, 50, 80, 200].map(count => sheetFit([list(count, 'A note of some length that fills a line'), drawing]))
    expect(fits).toEqual([...fits].toSorted((a, b) => order.indexOf(a) - order.indexOf(b)))
    expect(new Set(fits)).toEqual(new Set(order))
  })
  const order = ['all, large', 'all', 'without drawings', 'without remarks', 'first of each list'] as const
  it('grows with the text', () => expect(pageMm([list(20, 'x')], 'all')).toBeGreaterThan(pageMm([list(10, 'x')], 'all')))
  it('is all of the sample’s pages', () => {
    for (const task of emergencyTasks) expect([task, samplePages.get(task)!.oneSheet]).toEqual([task, expect.stringMatching(/^all/)])
  })
})

it('zones without access are no entry of how to get there', () => {
  const vessel = aVessel({ zones: [aZone({ tag: 'z', name: 'Here' })], equipment: [anEquipment({ tag: 'F1', kind: 'fire extinguisher', zoneTag: 'z' })] })
  expect(pagesOf(vessel).get('fire')!.blocks.some(block => block.is === 'facts')).toBe(false)
})
