/** Completeness, readiness for delivery, and the sheet that is signed. */
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { examine } from '../../../src/build.js'
import type { LocatedFinding } from '../../../src/findings/finding.js'
import { contentState } from '../../../src/model/results/completeness.js'
import type { EffectiveTask } from '../../../src/model/results/maintenance.js'
import type { Results } from '../../../src/model/results.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { emergencyTasks, ownerTasks } from '../../../src/references/procedure-places.js'
import { contentKeys, outsideManual, requiredContents } from '../../../src/references/tables/required-contents.js'
import { makeView } from '../../../src/view/make-view.js'
import { completenessPages } from '../../../src/view/pages/completeness/completeness.view.js'
import { fixedPages } from '../../../src/view/site-map.js'
import { plainText } from '../../../src/view/tables.js'
import type { Page, PageKey, Table, Text } from '../../../src/view/view-model.js'
import { labelledVessel, labelsOf } from '../../support/labelled-vessel.js'
import { aCircuit, anEquipment, aVessel, aZone } from '../../support/vessel-builder.js'
import { cellsOf, contextOf, registries, tableIn, tablesOf, wordsOn } from './support.js'

const aPage = (key: PageKey): Page => ({ key, title: `Title of ${key}`, kicker: null, lead: null, blocks: [], printed: null, trail: [] })
const everyPage = [...Object.values(fixedPages), ...emergencyTasks.map(task => `emergency/${task}`), ...ownerTasks.map(task => `owner/${task}`)].map(aPage)
interface Given { readonly findings?: readonly LocatedFinding[]; readonly pages?: readonly Page[] }
const pagesOf = (vessel: Vessel, { findings = [], pages = everyPage }: Given = {}) => completenessPages(contextOf(vessel, { findings }), pages)
const completeness = (vessel: Vessel, given?: Given): Page => pagesOf(vessel, given)[0]!
const readiness = (vessel: Vessel, given?: Given): Page => pagesOf(vessel, given)[1]!
const signOff = (vessel: Vessel, given?: Given): Page => pagesOf(vessel, given)[2]!

const identity = { ...aVessel().identity, name: 'Grey Heron', hullNumber: '7' }
const delivered = { ...identity, deliveredOn: '2026-05-29' }

/** The row of a content: state, and where it is. */
function rowOf(page: Page, table: string, key: string): readonly string[] {
  return cellsOf(tableIn(page, table)).find(([content]) => content!.endsWith(` ${key}`))!.slice(1)
}

describe('the page of completeness', () => {
  it('has a table for each source that asks, and every content in those that ask for it', () => {
    const page = completeness(aVessel())
    expect(tablesOf(page).map(({ id }) => id)).toEqual(['asked-directive', 'asked-owners-manual', 'asked-electrical', 'asked-others'])
    const rows = tablesOf(page).flatMap(table => cellsOf(table).map(([content]) => content!))
    expect(contentKeys.filter(key => !rows.some(row => row.endsWith(` ${key}`)))).toEqual([])
    expect(rows).toContain('2.5, 3.6\u2002Loading and maximum load maximum-load')
  })

  it('names the points that ask for no text', () => {
    const note = plainText(tableIn(completeness(aVessel()), 'asked-directive').note!)
    for (const { title } of outsideManual) expect(note).toContain(title.toLowerCase())
  })

  it('says of what is missing "not yet" while she is being built, and "missing" once she is delivered', () => {
    expect(rowOf(completeness(aVessel({ identity })), 'asked-directive', 'handling')).toEqual(['not yet', 'The pack does not hold it: name the document that does.'])
    expect(rowOf(completeness(aVessel({ identity: delivered })), 'asked-directive', 'handling')[0]).toBe('missing')
    expect(plainText(completeness(aVessel({ identity: delivered })).lead!)).toMatch(/\d+ contents are missing, and \d+ are there in part\.$/)
  })

  it('names the document that holds a content, or why it does not apply', () => {
    const page = completeness(aVessel({
      identity: { ...delivered, builder: 'A yard' },
      manualContents: [
        { contentKey: 'handling', state: 'elsewhere', where: 'leaflet, page 2', reason: null }, { contentKey: 'builders-plate', state: 'elsewhere', where: 'leaflet, page 1', reason: null },
        { contentKey: 'visibility', state: 'not applicable', where: null, reason: 'rowed with one’s back to the bow' },
      ],
    }))
    expect(rowOf(page, 'asked-directive', 'handling')).toEqual(['elsewhere', 'Leaflet, page 2.'])
    expect(rowOf(page, 'asked-directive', 'visibility')).toEqual(['not applicable', 'Rowed with one’s back to the bow.'])
    expect(rowOf(page, 'asked-directive', 'builders-plate')[1]).toMatch(/^Title of vessel For the design category; .*: Leaflet, page 1\.$/)
  })

  it('never takes for held what is on a page that this pack does not have', () => {
    const without = everyPage.filter(({ key }) => key !== fixedPages.safety && key !== 'emergency/fire')
    const page = completeness(aVessel({ identity: delivered }), { pages: without })
    expect(rowOf(completeness(aVessel({ identity: delivered })), 'asked-electrical', 'warning-ratings')[0]).toBe('in the pack')
    expect(rowOf(page, 'asked-electrical', 'warning-ratings')).toEqual(['missing', 'Missing: the page "safety".'])
    expect(rowOf(page, 'asked-directive', 'fire-and-flooding-risks')).toEqual(['in part', 'Title of emergency/flooding Missing: the page "emergency/fire"; the page "safety".'])
  })

  it('counts on paper, where the sheets are, only pages that are printed', () => {
    const context = contextOf(aVessel())
    const [page] = completenessPages(context, everyPage)
    const printed = page!.printed!.filter((block): block is Table => block.is === 'table')
    const numbers = printed.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells.flat())).flatMap(part => (typeof part !== 'string' && part.is === 'page number' ? [part.to] : []))
    expect(numbers).toContain('safety')
    // The index of the systems is on the site only.
    expect(numbers).not.toContain('systems')
    // In another volume than the manual: the print puts its name there.
    expect(numbers).toContain('basis')
    expect(page!.blocks.some(block => block.is === 'table' && block.columns.some(({ title }) => title === 'Sheet'))).toBe(false)
  })

  it('says of the sources of Europe, under American rules, that they are advice', () => {
    expect(plainText(completeness(aVessel({ basis: 'abyc' })).lead!)).toContain('under the rules of this boat they are advice')
  })

  it('does not call complete what is complete without saying what that means', () => {
    const manualContents = contentKeys.map(contentKey => ({ contentKey, state: 'elsewhere' as const, where: 'leaflet', reason: null }))
    expect(plainText(completeness(aVessel({ identity: delivered, manualContents })).lead!)).toContain('whether its words meet the standard is for whoever declares conformity')
  })
})

const finding = (severity: LocatedFinding['severity'], accepted: LocatedFinding['accepted'] = null): LocatedFinding => ({
  id: 'DCD101', name: 'a-kind', severity, subject: { kind: 'circuit', id: 'F1' }, field: null, evidence: {}, limit: null, message: `A ${severity}`, remedy: 'Mend it.', at: null, accepted,
})
const accepted = { by: 'A. Person', date: '2026-05-04', reason: 'Known' }
/** Nothing in her that could be open, and a manual that is all elsewhere. */
const finished = aVessel({
  identity, document: { number: 'H-7', issue: 'A', issuedOn: '2026-05-20', preparedBy: 'A', checkedBy: 'B', approvedBy: 'C', installer: 'D', contact: 'E', manualAddress: null },
  manualContents: contentKeys.map(contentKey => ({ contentKey, state: 'elsewhere' as const, where: 'leaflet', reason: null })),
})
const verdictOn = (page: Page): string => plainText((page.blocks.find(block => block.is === 'paragraph') as { readonly text: Text }).text)
const against = (page: Page): readonly (readonly string[])[] => cellsOf(tableIn(page, 'against-delivery'))

describe('readiness for delivery', () => {
  it('is there only when nothing is open, and even then says what it does not say', () => {
    const page = readiness(finished)
    expect(against(page)).toEqual([])
    expect(verdictOn(page)).toMatch(/^Ready to deliver, as far as the data say: .*It certifies nothing/)
  })

  it.each([
    ['an error', { findings: [finding('error')] }, ['Errors', '1 error']],
    ['an error that is accepted', { findings: [finding('error', accepted)] }, ['Errors', '1 error (accepted)']],
    ['a warning', { findings: [finding('warning')] }, ['Warnings that nobody has accepted', '1 warning']],
  ])('is refused for %s', (_, given, row) => {
    const page = readiness(finished, given)
    expect(against(page)).toEqual([row])
    expect(verdictOn(page)).toBe('Not ready to deliver. 1 point stands open.')
  })

  it('is not refused for a warning that is accepted, nor for a note; both are named', () => {
    const page = readiness(finished, { findings: [finding('warning', accepted), finding('note')] })
    expect(against(page)).toEqual([])
    expect(cellsOf(tableIn(page, 'worth-knowing'))).toEqual([['Accepted deviations', '1 finding'], ['Notes', '1 note']])
  })

  it('counts besides what other pages list: overdue work, unreadable labels, things without a place', () => {
    const placed = { ...finished, zones: [aZone({ tag: 'helm', name: 'Helm' })], equipment: [anEquipment({ tag: 'X1', zoneTag: 'helm' }), anEquipment({ tag: 'X2', zoneTag: 'helm', positionM: [1, 0, 1] }), anEquipment({ tag: 'X3' })] }
    const context = contextOf(placed)
    const label = labelsOf(labelledVessel()).labels[0]!
    const due = { lastDoneOn: null, limits: [], dueOn: null, dueBy: null }
    const results: Results = {
      ...context.results,
      labels: { ...context.results.labels, labels: [{ ...label, comparison: { ...label.comparison, within: false } }, label] },
      maintenance: { ...context.results.maintenance, jobs: [{ task: {} as EffectiveTask, id: 'seacocks', isRoutine: false, items: [{ ...due, itemTag: 'X1', state: 'overdue' }, { ...due, itemTag: 'X2', state: 'overdue' }, { ...due, itemTag: 'X3', state: 'later' }] }] },
    }
    const page = completenessPages({ ...context, results }, everyPage)[1]!
    expect(cellsOf(tableIn(page, 'worth-knowing')).slice(0, 4)).toEqual([
      ['Maintenance overdue on the day of issue', '1 task, told by a warning'], ['Labels whose letters are too small', '1 label, told by a warning'],
      ['Items without a zone', '1 item'], ['Items of which only the zone is known', '1 item'],
    ])
  })

  it('names everything else that is open', () => {
    const open = {
      ...finished,
      zones: [aZone({ tag: 'helm', name: 'Helm' })],
      equipment: [anEquipment({ tag: 'P1', kind: 'display', zoneTag: 'helm', status: 'fitted' })],
      circuits: [aCircuit({ tag: 'F1', fedFromTag: 'G1' })],
      document: { ...finished.document, approvedBy: null },
      manualContents: finished.manualContents.filter(({ contentKey }) => contentKey !== 'handling'),
    }
    const rows = new Map(against(readiness(open)).map(([title, count]) => [title!, count!]))
    expect([...rows.keys()]).toEqual([
      'Results not assessed', 'Equipment that is not commissioned', 'Tests of circuits without all their readings', 'Software versions not read',
      'Required contents of the manual that are missing, or there in part', 'Document control not recorded',
    ])
    expect(rows.get('Equipment that is not commissioned')).toBe('1 item, below')
    expect(rows.get('Results not assessed')).toMatch(/, none of them a pass$/)
    expect(rows.get('Document control not recorded')).toBe('1 entry: approved by')
    expect(cellsOf(tableIn(readiness(open), 'progress-by-zone'))).toEqual([['Helm', '–', '1', '–', '–', 'fitted: P1']])
  })

  it('of a boat that is delivered says since when', () => {
    expect(verdictOn(readiness({ ...finished, identity: delivered }, { findings: [finding('error')] }))).toBe('Open points. Delivered on 2026-05-29; in this issue 1 point stands open.')
    expect(verdictOn(readiness({ ...finished, identity: delivered }))).toMatch(/^Nothing open, as far as the data say/)
  })
})

describe('the sheet that is signed', () => {
  const page = signOff(finished, { findings: [finding('error', accepted), finding('warning')] })
  const words = wordsOn(page)

  it('has vessel, document, issue, findings and what is open', () => {
    for (const fact of ['Grey Heron, hull 7', 'H-7', 'A of 2026-05-20', '1 error (accepted), 1 warning, 0 notes', '2: 1 error; 1 warning']) expect(words).toContain(fact)
  })

  it('names each accepted deviation with who accepts it', () => {
    expect(cellsOf(tableIn(page, 'accepted-deviations'))).toEqual([['DCD101', 'error', 'A error', 'Known', 'A. Person', '2026-05-04']])
  })

  it('says that nothing is certified, and how to see that no file was changed', () => {
    expect(words).toContain('It does not certify it')
    expect(words).toContain('sha256sum -c SHA256SUMS')
  })

  it('has a line for each who signs, to be filled in by hand', () => {
    expect(tableIn(page, 'signatures')).toMatchObject({ forPen: true })
    expect(cellsOf(tableIn(page, 'signatures')).map(([who]) => who!.split('.')[0])).toEqual(['Installer', 'Yard', 'Surveyor, where engaged', 'Owner'])
  })

  it('leaves room for them, however much is accepted', () => {
    const many = Array.from({ length: 30 }, () => finding('note', accepted))
    const table = tableIn(signOff(finished, { findings: many }), 'accepted-deviations')
    expect(table.rows.length).toBeLessThanOrEqual(4)
    expect(plainText(table.note!)).toBe('26 more on the site.')
  })
})

describe('the sample vessel', async () => {
  const examined = await examine(fileURLToPath(new URL('../../../sample-vessel', import.meta.url)))
  if (examined.status !== 'examined') throw new Error('the sample vessel has errors')
  const { vessel, results, basis, content, findings } = examined
  const { pages, schedules } = makeView({ vessel, results, basis, content, findings, registries, edition: 'owner' })
  const keys = new Set(pages.map(({ key }) => key))
  const folders = new Set(pages.map(({ key }) => key.split('/')[0]!))

  it('has every page on which the rules rely', () => {
    // Of a chapter that the pack has nothing of, the page says so of each content.
    const relied = [...new Set(results.completeness.contents.flatMap(({ pageKeys }) => pageKeys))]
    expect(relied.length).toBeGreaterThan(15)
    expect(relied.filter(key => !keys.has(key) && folders.has(key.split('/')[0]!))).toEqual([])
  })

  it('has on its page of safety the warnings that the electrical chapter must have', () => {
    // ISO 10133, annex B, as in tests/reference/required-contents.csv: no work on a live system, no higher ratings, no alteration, by whom.
    const titles = pages.find(({ key }) => key === fixedPages.safety)!.blocks.flatMap(block => (block.is === 'callout' ? [block.title] : []))
    for (const title of ['Do not work on a live system', 'Never fit a higher fuse rating', 'Do not alter the system without a record']) expect(titles).toContain(title)
  })

  it('relies on no address that no page can have', () => {
    const possible = new Set([...everyPage.map(({ key }) => key), ...keys])
    expect(results.completeness.contents.flatMap(({ pageKeys }) => pageKeys).filter(key => !possible.has(key))).toEqual([])
  })

  it('shows in its finding what its data leave open', () => {
    const missing = results.completeness.contents.filter(entry => entry.isRequired && contentState(entry) === 'missing').map(({ key }) => key)
    expect(missing).toEqual(['visibility'])
    expect(findings.find(({ id }) => id === 'CMP201')!.message).toBe('Vessel Grey Quillet: the owner’s manual lacks visibility')
    expect(results.completeness.contents.filter(entry => entry.isRequired && contentState(entry) === 'in part')).toEqual([])
  })

  it('names in its entries only contents that there are', () => {
    expect(vessel.manualContents.map(({ contentKey }) => contentKey).filter(key => !Object.hasOwn(requiredContents, key))).toEqual([])
  })

  it('has in the table of findings who accepts which of them', () => {
    const { columns, rows } = schedules.find(({ file }) => file === 'findings.csv')!
    expect(columns.slice(-3)).toEqual(['Accepted by', 'Accepted on', 'Reason'])
    expect(rows.filter(row => row.at(-2) !== '').map(row => [row[0], row[3], row.at(-3), row.at(-2)]))
      .toEqual([['DEP301', 'F1', 'N. Tavender', '2026-05-28'], ['RAD303', 'B1', 'N. Tavender', '2026-05-28']])
  })

  it('marks its accepted deviations wherever they are shown', () => {
    const cards = pages.flatMap(({ blocks }) => blocks).flatMap(block => (block.is === 'findings' ? block.findings : [])).filter(({ id, message }) => id === 'DEP301' && message.includes('F1'))
    expect(cards.length).toBeGreaterThan(1)
    expect(cards.every(card => card.accepted?.startsWith('Accepted by N. Tavender, 2026-05-28') ?? false)).toBe(true)
  })
})
