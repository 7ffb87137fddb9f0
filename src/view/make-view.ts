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
import { circuitPages } from './pages/circuits/circuits.view.js'
import { equipmentPages } from './pages/equipment/equipment.view.js'
import { findingKindPages } from './pages/findings/finding-kinds.view.js'
import { findingsPages } from './pages/findings/findings.view.js'
import { emergencyPages } from './pages/emergency/emergency.view.js'
import { faultTreePages } from './pages/fault-tracing/fault-trees.view.js'
import { completenessPages } from './pages/completeness/completeness.view.js'
import { labelPages } from './pages/labels/labels.view.js'
import { locationPages } from './pages/location/location.view.js'
import { photographPages } from './pages/location/photographs.view.js'
import { zonePages } from './pages/location/zones.view.js'
import { maintenancePages } from './pages/maintenance/maintenance.view.js'
import { operatingPages } from './pages/owner/operating.view.js'
import { ownerPages } from './pages/owner/owner.view.js'
import { workshopPages } from './pages/workshop/workshop.view.js'
import { frontMatterPages } from './pages/front-matter.view.js'
import { methodPages } from './pages/methods.view.js'
import { acSupplyPages } from './pages/ac-supply/ac-supply.view.js'
import { commissioningPages } from './pages/commissioning/commissioning.view.js'
import { energyPages } from './pages/energy/energy.view.js'
import { faultTracingPages } from './pages/fault-tracing/fault-tracing.view.js'
import { protectiveDevicesPages } from './pages/protective-devices/protective-devices.view.js'
import { networkPages } from './pages/networks/networks.view.js'
import { outsideLinkPages } from './pages/networks/outside-links.view.js'
import { notAssessedPages } from './pages/not-assessed.view.js'
import { panelPages } from './pages/panels.view.js'
import { systemPages } from './pages/places.view.js'
import { placementPages } from './pages/placement/placement.view.js'
import { radioPages } from './pages/radio/radio.view.js'
import { configurationPages } from './pages/record/configuration.view.js'
import { identifierPages } from './pages/record/identifiers.view.js'
import { safetyPages } from './pages/safety.view.js'
import { spareCapacityPage } from './pages/spare-capacity.view.js'
import { electricalPage, findPage, homePage, vesselPage } from './pages/vessel.view.js'
import { withCautions } from './cautions/caution-pages.js'
import { files } from './files/files.js'
import { labelPrints } from './labels/label-prints.js'
import { navigation } from './navigation.js'
import { schedules } from './files/schedules.js'
import { formulaOnce } from './parts/working.js'
import type { Cover, Diagram, Page, TitleBlock, View } from './view-model.js'
import { volumes } from './volumes.js'
import { workbooks } from './files/workbooks.js'

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
    volumes: volumes(context, pages),
    navigation: navigation(context, pages),
    schedules: schedules(context),
    files: files(context),
    workbooks: workbooks(context, pages),
    labels: labelPrints(context),
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
    ...emergencyPages(context),
    ...safetyPages(context),
    ...ownerPages(context),
    ...operatingPages(context),
    ...locationPages(context),
    ...photographPages(context),
    ...faultTreePages(context),
    ...maintenancePages(context),
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
    ...workshopPages(context),
    ...labelPages(context),
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
  const all = [...pages, ...completenessPages(context, pages)]
  return [homePage(context, new Set(all.map(({ key }) => key))), ...withCautions(context, all)]
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
    note: 'The handover pack documents and checks the installation as fitted. It does not certify it. Local codes, class and flag rules and licensed practice come first.',
  }
}
