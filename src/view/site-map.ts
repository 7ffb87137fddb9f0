/** Every page's address, made before anything is rendered. */
import { slug } from '../model/address.js'
import type { Tag, Vessel } from '../model/vessel.js'
import type { PageKey } from './view-model.js'

/** The anchor of a page inside the single printed document. */
export const anchorOf = (key: PageKey): string => key.replace(/\//g, '-')

/** Pages that every pack has, whatever the vessel. */
export const fixedPages = {
  home: 'home',
  find: 'find',
  emergency: 'emergency',
  owner: 'owner',
  operating: 'operating',
  location: 'location',
  photographs: 'photographs',
  maintenance: 'maintenance',
  readiness: 'readiness',
  completeness: 'completeness',
  signOff: 'sign-off',
  labels: 'labels',
  workshop: 'workshop',
  faultTrees: 'fault-trees',
  vessel: 'vessel',
  howToRead: 'how-to-read',
  safety: 'safety',
  systems: 'systems',
  zones: 'zones',
  electrical: 'electrical',
  circuits: 'circuits',
  protectiveDevices: 'protection',
  acSupply: 'mains',
  energy: 'energy',
  faultTracing: 'fault-tracing',
  commissioning: 'commissioning',
  panels: 'panels',
  networks: 'networks',
  outsideLinks: 'outside-links',
  radio: 'radio',
  placement: 'placement',
  identifiers: 'identifiers',
  distress: 'distress-call',
  configuration: 'settings',
  credentials: 'logging-in',
  cables: 'cables',
  wireways: 'wireways',
  spareCapacity: 'spare-capacity',
  equipment: 'equipment',
  findings: 'findings',
  notAssessed: 'not-assessed',
  basis: 'basis',
  methods: 'methods',
  findingKinds: 'finding-kinds',
  glossary: 'glossary',
} as const satisfies Record<string, PageKey>

/** The printed document that checks every figure. */
export const calculationsFile = 'calculations.pdf'

export interface SiteMap {
  /** Null when nothing with that tag has a page. */
  addressOf(tag: Tag): PageKey | null
  /** Of a photograph's page, by its file. */
  photographPage(file: string): PageKey
}

export function siteMap(vessel: Vessel): SiteMap {
  const addresses = new Map<Tag, PageKey>()
  const place = (folder: string, things: readonly { readonly tag: Tag }[]) => {
    for (const { tag } of things) addresses.set(tag, `${folder}/${slug(tag)}`)
  }
  place('systems', vessel.systems)
  place('zones', vessel.zones)
  place('wireways', vessel.wireways)
  place('cables', vessel.cables)
  place('circuits', vessel.circuits)
  place('panels', vessel.panels)
  place('networks', [...vessel.canBuses, ...vessel.ethernetNetworks, ...vessel.serialLinks])
  // These are on one page together.
  for (const { tag } of [...vessel.wirelessNetworks, ...vessel.outsideLinks]) addresses.set(tag, fixedPages.outsideLinks)
  for (const { tag } of [...vessel.structures, ...vessel.standingPlaces]) addresses.set(tag, fixedPages.placement)
  place('equipment', [...vessel.equipment, ...vessel.batteries, ...vessel.busbars])
  // Parts of a backbone have no page of their own; their bus has.
  for (const bus of vessel.canBuses) {
    for (const element of bus.backbone) {
      if (element.kind !== 'segment' && !addresses.has(element.tag)) addresses.set(element.tag, `networks/${slug(bus.tag)}`)
    }
  }
  for (const point of vessel.points) {
    const zone = addresses.get(point.zoneTag)
    if (zone !== undefined && !addresses.has(point.tag)) addresses.set(point.tag, zone)
  }
  const photographs = photographPages(vessel)
  return { addressOf: tag => addresses.get(tag) ?? null, photographPage: file => photographs.get(file)! }
}

/** By the file's name without its ending; of files that come out alike the later ones, in the order of the data, get a number. */
function photographPages({ photographs }: Vessel): ReadonlyMap<string, PageKey> {
  const pages = new Map<string, PageKey>()
  const taken = new Set<PageKey>()
  for (const file of new Set(photographs.map(each => each.file))) {
    const wanted = `${fixedPages.photographs}/${slug(file.replace(/^photographs\//i, '').replace(/\.[^./]*$/, ''))}`
    let page = wanted
    for (let number = 2; taken.has(page); number += 1) page = `${wanted}-${number}`
    taken.add(page)
    pages.set(file, page)
  }
  return pages
}
