/** The printed documents: which pages, in which chapters. */
import { editionTitles } from '../model/edition.js'
import type { ViewContext } from './context.js'
import { printedIntroduction } from './pages/circuits/circuit-printed.js'
import { billKey } from './pages/workshop/bill.view.js'
import { legendsKey } from './pages/workshop/legends.view.js'
import { testSheetsKey } from './pages/workshop/test-sheets.view.js'
import { calculationsFile, fixedPages } from './site-map.js'
import type { Chapter, Page, PageKey, Volume } from './view-model.js'

type Layout = Partial<Pick<Chapter, 'compact' | 'twoColumns' | 'landscape' | 'listed' | 'introduction'>>
type Planned = Omit<Chapter, 'number' | 'anchor'>

const chapter = (title: string, pageKeys: readonly PageKey[], layout: Layout = {}): Planned =>
  ({ title, pageKeys, introduction: null, compact: false, twoColumns: false, landscape: false, listed: true, ...layout })

export function volumes(context: ViewContext, pages: readonly Page[]): readonly Volume[] {
  const titles = new Map(pages.map(({ key, title }) => [key, title]))
  const under = (folder: string): readonly PageKey[] => pages.map(({ key }) => key).filter(key => key.startsWith(`${folder}/`))
  /** A chapter to each page, so that none shares its sheet. */
  const each = (keys: readonly PageKey[]): readonly Planned[] => keys.flatMap(key => { const title = titles.get(key); return title === undefined ? [] : [chapter(title, [key])] })
  const bare = barePages(context)
  const emergency = each([fixedPages.distress, ...under(fixedPages.emergency)])
  // What a vessel has nothing of, radio or serial links, takes no chapter; what has no chapter is no document.
  const volume = (file: string, name: string, fronted: boolean, planned: readonly Planned[]): readonly Volume[] => {
    const chapters = planned.map(made => ({ ...made, pageKeys: made.pageKeys.filter(key => titles.has(key) && !bare.has(key)) })).filter(({ pageKeys }) => pageKeys.length > 0)
      .map((made, i) => ({ ...made, number: String(i + 1), anchor: `chapter-${i + 1}` }))
    return chapters.length === 0 ? [] : [{ file, name, title: `${name}, ${editionTitles[context.edition]}`, fronted, chapters }]
  }
  return [
    ...volume('manual.pdf', 'Handover manual', true, [...emergency, ...manualChapters(under)]),
    ...volume(calculationsFile, 'Calculations', true, calculationChapters(context, under)),
    ...volume('emergency.pdf', 'Emergency cards', false, emergency),
    ...volume('workshop.pdf', 'Workshop documents', true, workshopChapters(under)),
  ]
}

/** Pages whose lists hold nothing on this vessel: the site says so, paper leaves them out. */
function barePages({ vessel }: ViewContext): ReadonlySet<PageKey> {
  const { panels, circuits, batteries, operatingModes, cables, wireways } = vessel
  const without = (lists: readonly (readonly unknown[])[], ...keys: readonly PageKey[]): readonly PageKey[] => (lists.every(list => list.length === 0) ? keys : [])
  return new Set([
    ...without([panels], fixedPages.panels),
    ...without([circuits], fixedPages.circuits, fixedPages.protectiveDevices, legendsKey),
    ...without([batteries, panels, circuits], fixedPages.electrical),
    ...without([batteries, operatingModes, circuits], fixedPages.energy),
    ...without([cables], fixedPages.cables, fixedPages.workshop, billKey),
    ...without([wireways], fixedPages.wireways),
  ])
}

/** In reading order. Pages of single cables and wireways are on the site only; their index rows are printed. */
const manualChapters = (under: (folder: string) => readonly PageKey[]): readonly Planned[] => [
  chapter('Safety', [fixedPages.safety]),
  chapter('How to read this manual', [fixedPages.howToRead]),
  chapter('The vessel and this document', [fixedPages.vessel]),
  chapter('Living with the boat', under(fixedPages.owner), { compact: true }),
  chapter('Systems', under('systems'), { compact: true }),
  chapter('Operating the equipment', under(fixedPages.operating), { compact: true, twoColumns: true }),
  chapter('Location plan', [fixedPages.location]),
  chapter('Zones', under('zones'), { compact: true }),
  chapter('Photographs', under(fixedPages.photographs), { compact: true }),
  chapter('Fault tracing', [fixedPages.faultTracing, ...under(fixedPages.faultTrees)], { compact: true }),
  chapter('Maintenance', [fixedPages.maintenance, ...under(fixedPages.maintenance)], { compact: true }),
  chapter('Power: one-line diagrams', [fixedPages.electrical]),
  chapter('Panels and modules', [fixedPages.panels, ...under('panels')], { compact: true }),
  chapter('Circuit schedule', [fixedPages.circuits], { landscape: true }),
  chapter('Mains and shore power', [fixedPages.acSupply]),
  chapter('Load analysis and energy', [fixedPages.energy]),
  chapter('Data networks', under('networks'), { compact: true }),
  chapter('Wireless and outside links', [fixedPages.outsideLinks]),
  chapter('Radio and antennas', [fixedPages.radio]),
  chapter('Identifiers', [fixedPages.identifiers]),
  chapter('Placement', [fixedPages.placement]),
  chapter('Configuration record', [fixedPages.configuration, fixedPages.credentials]),
  chapter('Cable and label index', [fixedPages.cables], { landscape: true }),
  chapter('Wireways', [fixedPages.wireways], { landscape: true }),
  chapter('Equipment', [fixedPages.equipment, ...under('equipment')], { compact: true, listed: false }),
  chapter('Spare capacity', [fixedPages.spareCapacity]),
  chapter('Commissioning', [fixedPages.commissioning]),
  chapter('Completeness and delivery', [fixedPages.completeness, fixedPages.readiness, fixedPages.signOff]),
  chapter('Findings', [fixedPages.findings, fixedPages.notAssessed], { compact: true }),
  chapter('Index of names', [fixedPages.find], { listed: false }),
  chapter('Glossary', [fixedPages.glossary], { twoColumns: true }),
]

/** What is read to check a figure, at a table and not in a boat in trouble. */
const calculationChapters = (context: ViewContext, under: (folder: string) => readonly PageKey[]): readonly Planned[] => [
  chapter('Circuits and their working', under('circuits'), { compact: true, listed: false, introduction: printedIntroduction(context) }),
  chapter('Protection and short circuit', [fixedPages.protectiveDevices]),
  chapter('Basis of calculation', [fixedPages.basis, fixedPages.methods, fixedPages.findingKinds]),
]

/** Pages of the folder that have a chapter of their own. */
const workshopChapterKeys: readonly PageKey[] = [billKey, legendsKey, testSheetsKey]

const workshopChapters = (under: (folder: string) => readonly PageKey[]): readonly Planned[] => [
  chapter('Wire lists', [fixedPages.workshop, ...under(fixedPages.workshop).filter(key => !workshopChapterKeys.includes(key))], { landscape: true, compact: true }),
  chapter('Bill of cable and parts', [billKey]),
  chapter('Panel legends', [legendsKey]),
  chapter('Test sheets', [testSheetsKey]),
]
