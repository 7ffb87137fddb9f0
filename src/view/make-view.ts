/** The view stage: results become finished text in pages, in the order in which a person reads them. */
import type { LocatedFinding } from '../findings/finding.js'
import type { Content } from '../model/content.js'
import { grouped } from '../model/lookup.js'
import type { Results } from '../model/results.js'
import { editionTitles } from '../model/edition.js'
import type { Edition, Tag, Vessel } from '../model/vessel.js'
import type { Basis } from '../references/basis/basis.js'
import { type Registries, type ViewContext, viewContext } from './context.js'
import { ethernetDiagrams } from './diagrams/ethernet.mermaid.js'
import { legendDiagram } from './diagrams/legend.mermaid.js'
import { oneLineDiagrams } from './diagrams/one-line.mermaid.js'
import { systemDiagrams } from './diagrams/systems.mermaid.js'
import { basisPages } from './pages/basis.view.js'
import { cablePages, wirewayPages } from './pages/cables.view.js'
import { printedIntroduction } from './pages/circuit-printed.js'
import { circuitPages } from './pages/circuits.view.js'
import { equipmentPages } from './pages/equipment.view.js'
import { findingKindPages } from './pages/finding-kinds.view.js'
import { findingsPages } from './pages/findings.view.js'
import { frontMatterPages } from './pages/front-matter.view.js'
import { methodPages } from './pages/methods.view.js'
import { acSupplyPages } from './pages/ac-supply.view.js'
import { commissioningPages } from './pages/commissioning.view.js'
import { energyPages } from './pages/energy.view.js'
import { faultTracingPages } from './pages/fault-tracing.view.js'
import { protectiveDevicesPages } from './pages/protective-devices.view.js'
import { networkPages } from './pages/networks/networks.view.js'
import { outsideLinkPages } from './pages/networks/outside-links.view.js'
import { notAssessedPages } from './pages/not-assessed.view.js'
import { panelPages } from './pages/panels.view.js'
import { systemPages, zonePages } from './pages/places.view.js'
import { placementPages } from './pages/placement/placement.view.js'
import { radioPages } from './pages/radio/radio.view.js'
import { configurationPages } from './pages/record/configuration.view.js'
import { identifierPages } from './pages/record/identifiers.view.js'
import { safetyPages } from './pages/safety.view.js'
import { spareCapacityPage } from './pages/spare-capacity.view.js'
import { electricalPage, findPage, homePage, vesselPage } from './pages/vessel.view.js'
import { schedules } from './schedules.js'
import { fixedPages } from './site-map.js'
import { formulaOnce } from './working.js'
import type { Chapter, Cover, Diagram, NavigationEntry, Page, PageKey, TitleBlock, View } from './view-model.js'

export interface ViewInput {
  readonly edition: Edition
  readonly vessel: Vessel
  readonly results: Results
  readonly basis: Basis
  readonly findings: readonly LocatedFinding[]
  readonly content: Content
  readonly registries: Registries
}

export function makeView({ edition, vessel, results, basis, findings, content, registries }: ViewInput): View {
  const context = viewContext(vessel, results, basis, findings, content, registries, edition)
  const pages = makePages(context).map(page => ({ ...page, printed: formulaOnce(page.printed ?? page.blocks) }))
  return {
    vesselName: vessel.identity.name,
    titleBlock: titleBlock(context),
    cover: cover(context),
    pages,
    chapters: chapters(context, pages),
    navigation: navigation(context, pages),
    schedules: schedules(context),
  }
}

function makePages(context: ViewContext): readonly Page[] {
  const { vessel, results, addressOf } = context
  const oneLine = byAbout(oneLineDiagrams(vessel, results, addressOf))
  const networks = byAbout(ethernetDiagrams(vessel, results, addressOf))
  const systems = byAbout(systemDiagrams(vessel, results, addressOf))
  const pages = [
    findPage(context),
    vesselPage(context),
    ...frontMatterPages(context),
    ...safetyPages(context),
    ...systemPages(context, systems),
    ...zonePages(context),
    electricalPage(context, oneLine.get(null) ?? [], legendDiagram()),
    ...panelPages(context, oneLine),
    ...circuitPages(context),
    ...protectiveDevicesPages(context),
    ...acSupplyPages(context),
    ...energyPages(context),
    ...faultTracingPages(context),
    ...commissioningPages(context),
    ...networkPages(context, networks),
    ...outsideLinkPages(context),
    ...radioPages(context),
    ...identifierPages(context),
    ...placementPages(context),
    ...configurationPages(context),
    ...cablePages(context),
    ...wirewayPages(context),
    ...equipmentPages(context),
    spareCapacityPage(context),
    ...findingsPages(context),
    ...notAssessedPages(context),
    ...basisPages(context),
    ...methodPages(context),
    ...findingKindPages(context),
  ]
  return [homePage(context, new Set(pages.map(({ key }) => key))), ...pages]
}

const byAbout = (diagrams: readonly Diagram[]): ReadonlyMap<Tag | null, readonly Diagram[]> => grouped(diagrams, ({ about }) => [about])

function titleBlock({ vessel: { identity, document }, basis, edition }: ViewContext): TitleBlock {
  const orDash = (text: string | null) => text ?? '–'
  return {
    title: `Handover manual, ${editionTitles[edition]}`,
    vessel: identity.hullNumber === null ? identity.name : `${identity.name}, hull ${identity.hullNumber}`,
    documentNumber: orDash(document.number),
    issue: orDash(document.issue),
    issuedOn: orDash(document.issuedOn),
    preparedBy: orDash(document.preparedBy),
    checkedBy: orDash(document.checkedBy),
    installer: orDash(document.installer),
    basis: basis.title,
  }
}

function cover({ vessel: { identity, document }, basis }: ViewContext): Cover {
  const entry = (label: string, text: string | null) => (text === null ? [] : [{ label, value: [text] }])
  return {
    subtitle: [identity.model, identity.builder].filter(word => word !== null).join(', ') || null,
    facts: [
      ...entry('Craft identification', identity.hullIdentification),
      ...entry('Call sign', identity.callSign),
      ...entry('MMSI', identity.mmsi),
      ...entry('Installed by', document.installer),
      ...entry('Contact', document.contact),
      ...entry('Held against', basis.title),
    ],
    note: 'This manual documents and checks the installation as fitted. It does not certify it. Local codes, class and flag rules and licensed practice come first.',
  }
}

/** The printed manual: chapters in reading order. Pages of single cables and wireways are on the site only; their index rows are printed. */
function chapters(context: ViewContext, pages: readonly Page[]): readonly Chapter[] {
  // What a vessel has nothing of, radio or serial links, takes no chapter.
  const there = new Set(pages.map(({ key }) => key))
  const under = (folder: string): readonly PageKey[] => pages.map(({ key }) => key).filter(key => key.startsWith(`${folder}/`))
  const chapter = (title: string, pageKeys: readonly PageKey[], layout: Partial<Pick<Chapter, 'compact' | 'landscape' | 'listed' | 'introduction'>> = {}) =>
    ({ title, pageKeys, introduction: null, compact: false, landscape: false, listed: true, ...layout })
  return [
    chapter('Distress call', [fixedPages.distress]),
    chapter('Safety', [fixedPages.safety]),
    chapter('How to read this manual', [fixedPages.howToRead]),
    chapter('The vessel and this document', [fixedPages.vessel]),
    chapter('Systems', under('systems'), { compact: true }),
    chapter('Zones', under('zones'), { compact: true }),
    chapter('Power: one-line diagrams', [fixedPages.electrical]),
    chapter('Panels and modules', [fixedPages.panels, ...under('panels')]),
    chapter('Circuit schedule', [fixedPages.circuits], { landscape: true }),
    chapter('Circuits and their working', under('circuits'), { compact: true, listed: false, introduction: printedIntroduction(context) }),
    chapter('Protection and short circuit', [fixedPages.protectiveDevices]),
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
    chapter('Fault tracing', [fixedPages.faultTracing], { compact: true }),
    chapter('Spare capacity', [fixedPages.spareCapacity]),
    chapter('Commissioning', [fixedPages.commissioning]),
    chapter('Findings', [fixedPages.findings, fixedPages.notAssessed], { compact: true }),
    chapter('Basis of calculation', [fixedPages.basis, fixedPages.methods, fixedPages.findingKinds]),
    chapter('Index of names', [fixedPages.find], { listed: false }),
    chapter('Glossary', [fixedPages.glossary]),
  ].map(made => ({ ...made, pageKeys: made.pageKeys.filter(key => there.has(key)) })).filter(({ pageKeys }) => pageKeys.length > 0)
    .map((made, i) => ({ ...made, number: String(i + 1), anchor: `chapter-${i + 1}` }))
}

function navigation({ vessel, addressOf }: ViewContext, pages: readonly Page[]): readonly NavigationEntry[] {
  const there = new Set(pages.map(({ key }) => key))
  const entry = (title: string, key: PageKey, children: readonly NavigationEntry[] = []): NavigationEntry => ({ title, key, children })
  const things = (list: readonly { readonly tag: Tag; readonly name: string }[], withTag: boolean) =>
    list.map(({ tag, name }) => entry(withTag ? `${tag} ${name}` : name, addressOf(tag)!))
  return [
    entry('Distress call', fixedPages.distress),
    entry('Find by tag or name', fixedPages.find),
    entry('Safety', fixedPages.safety),
    entry('How to read this manual', fixedPages.howToRead),
    entry('The vessel and this document', fixedPages.vessel),
    entry('Systems', fixedPages.systems, things(vessel.systems, false)),
    entry('Zones', fixedPages.zones, things(vessel.zones, false)),
    entry('One-line diagrams', fixedPages.electrical),
    entry('Panels and modules', fixedPages.panels, things(vessel.panels, true)),
    entry('Circuit schedule', fixedPages.circuits),
    entry('Protection and short circuit', fixedPages.protectiveDevices),
    entry('Mains and shore power', fixedPages.acSupply),
    entry('Load analysis and energy', fixedPages.energy),
    entry('Data networks', fixedPages.networks, things([...vessel.ethernetNetworks, ...vessel.canBuses, ...vessel.serialLinks], true)),
    entry('Wireless and outside links', fixedPages.outsideLinks),
    entry('Radio and antennas', fixedPages.radio),
    entry('Identifiers', fixedPages.identifiers),
    entry('Placement', fixedPages.placement),
    entry('Configuration record', fixedPages.configuration, [entry('Logging in', fixedPages.credentials)].filter(({ key }) => there.has(key))),
    entry('Cables and labels', fixedPages.cables),
    entry('Wireways', fixedPages.wireways),
    entry('Equipment list', fixedPages.equipment),
    entry('Fault tracing', fixedPages.faultTracing),
    entry('Spare capacity', fixedPages.spareCapacity),
    entry('Commissioning', fixedPages.commissioning),
    entry('Findings', fixedPages.findings),
    entry('Not assessed', fixedPages.notAssessed),
    entry('Basis of calculation', fixedPages.basis, [entry('Calculations', fixedPages.methods), entry('Kinds of finding', fixedPages.findingKinds)]),
    entry('Glossary', fixedPages.glossary),
  ].filter(({ key }) => there.has(key))
}
