/** The list of pages beside every page of the site. */
import type { Tag } from '../model/vessel.js'
import type { ViewContext } from './context.js'
import { fixedPages } from './site-map.js'
import type { NavigationEntry, Page, PageKey } from './view-model.js'

export function navigation({ vessel, addressOf }: ViewContext, pages: readonly Page[]): readonly NavigationEntry[] {
  const there = new Set(pages.map(({ key }) => key))
  const entry = (title: string, key: PageKey, children: readonly NavigationEntry[] = []): NavigationEntry => ({ title, key, children })
  const under = (folder: string) => pages.filter(({ key }) => key.startsWith(`${folder}/`)).map(({ title, key }) => entry(title, key))
  const things = (list: readonly { readonly tag: Tag; readonly name: string }[], withTag: boolean) =>
    list.map(({ tag, name }) => entry(withTag ? `${tag} ${name}` : name, addressOf(tag)!))
  return [
    entry('Distress call', fixedPages.distress),
    entry('In an emergency', fixedPages.emergency, under(fixedPages.emergency)),
    entry('Find by tag or name', fixedPages.find),
    entry('Fault tracing', fixedPages.faultTracing, under(fixedPages.faultTrees)),
    entry('Safety', fixedPages.safety),
    entry('Living with the boat', fixedPages.owner, under(fixedPages.owner)),
    entry('Operating the equipment', fixedPages.operating),
    entry('Maintenance', fixedPages.maintenance, under(fixedPages.maintenance)),
    entry('Location plan', fixedPages.location),
    entry('Photographs', fixedPages.photographs),
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
    entry('Spare capacity', fixedPages.spareCapacity),
    entry('Commissioning', fixedPages.commissioning),
    entry('Workshop documents', fixedPages.workshop, under(fixedPages.workshop)),
    entry('Labels', fixedPages.labels),
    entry('Completeness', fixedPages.completeness, [entry('Readiness for delivery', fixedPages.readiness), entry('Sign-off', fixedPages.signOff)].filter(({ key }) => there.has(key))),
    entry('Findings', fixedPages.findings),
    entry('Not assessed', fixedPages.notAssessed),
    entry('Basis of calculation', fixedPages.basis, [entry('Calculations', fixedPages.methods), entry('Kinds of finding', fixedPages.findingKinds)]),
    entry('Glossary', fixedPages.glossary),
  ].filter(({ key }) => there.has(key))
}
