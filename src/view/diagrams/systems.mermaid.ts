/** For each system the equipment in it that carries or uses data or radio signals, the cables between, and the neighbours outside. */
import { lookup } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { System, Tag, Vessel } from '../../model/vessel.js'
import { byTag, compareTags } from '../tables.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { carriedInWords, dataLinks, type Link } from './links.js'
import { type Box, type Drawing, mermaidText, wordOf } from './mermaid-text.js'
import { fits, sheetsOf, turned } from './sheets.js'
import { type Address, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

/** A cable with what its two ends belong to: equipment, or the bus whose backbone it comes to. */
interface SystemLink { readonly link: Link; readonly fromTag: Tag; readonly toTag: Tag }

export function systemDiagrams(vessel: Vessel, _results: Results, address: Address): readonly Diagram[] {
  const boxes = vesselBoxes(vessel, address)
  const links = systemLinks(vessel)
  return vessel.systems.flatMap(system => {
    const own = new Set(systemItems(vessel, system))
    const linked = links.filter(({ fromTag, toTag }) => own.has(fromTag) || own.has(toTag))
    const draw = (drawn: readonly SystemLink[]) => systemDrawing(vessel, boxes, own, drawn)
    const sheets = sheetsOf(clusters(linked, own), drawn => draw(drawn.flat()))
      .flatMap(({ parts, drawing }) => (fits(drawing) ? [{ parts: parts.flat(), drawing }] : sheetsOf(parts.flat(), draw)))
    return sheets.map(({ parts, drawing }, i): Diagram => ({
      is: 'diagram',
      id: `system-${wordOf(system.tag)}-${i + 1}`,
      about: system.tag,
      caption: `System ${system.name}: data and antenna cables, sheet ${i + 1} of ${sheets.length}`,
      mermaid: mermaidText(drawing),
      description: inWords(boxes, own, parts),
    }))
  })
}

const systemItems = (vessel: Vessel, { tag }: System): readonly Tag[] =>
  [...lookup(vessel).items.values()].filter(({ systemTag }) => systemTag === tag).map(item => item.tag)

/** Both ends of a cable inside a backbone belong to the same bus, which is no link of a system. */
function systemLinks(vessel: Vessel): readonly SystemLink[] {
  const busOf = new Map(vessel.canBuses.flatMap(({ tag, backbone }) =>
    backbone.filter(element => element.kind !== 'segment').map(element => [element.tag, tag] as const)))
  const ownerOf = (tag: Tag): Tag => busOf.get(tag) ?? tag
  return dataLinks(vessel)
    .map(link => ({ link, fromTag: ownerOf(link.cable.from.tag), toTag: ownerOf(link.cable.to.tag) }))
    .filter(({ fromTag, toTag }) => fromTag !== toTag)
}

/** Links that hang together through items of the system itself. In each, and among them, by item, then by the cable's tag. */
function clusters(links: readonly SystemLink[], own: ReadonlySet<Tag>): readonly (readonly SystemLink[])[] {
  const ownEnds = ({ fromTag, toTag }: SystemLink): readonly Tag[] => [fromTag, toTag].filter(tag => own.has(tag))
  const ordered = links.toSorted((a, b) => compareTags(ownEnds(a)[0]!, ownEnds(b)[0]!) || byTag(a.link.cable, b.link.cable))
  let found: readonly (readonly SystemLink[])[] = []
  for (const link of ordered) {
    const touches = (cluster: readonly SystemLink[]) => cluster.some(other => ownEnds(other).some(tag => ownEnds(link).includes(tag)))
    const united = [...found.filter(touches).flat(), link]
    const first = found.findIndex(touches)
    found = first < 0 ? [...found, united]
      : found.flatMap((cluster, i) => (i === first ? [united] : touches(cluster) ? [] : [cluster]))
  }
  return found
}

function systemDrawing(vessel: Vessel, boxes: VesselBoxes, own: ReadonlySet<Tag>, links: readonly SystemLink[]): Drawing {
  const { items, systems } = lookup(vessel)
  const outside = (tag: Tag): Box => {
    const box = boxes.referenceTo(tag)
    const systemTag = items.get(tag)?.systemTag ?? null
    return systemTag === null ? box : { ...box, below: [...box.below, `in ${systems.get(systemTag)?.name ?? systemTag}`] }
  }
  return turned({
    boxes: [...new Set(links.flatMap(({ fromTag, toTag }) => [fromTag, toTag]))]
      .map(tag => (own.has(tag) ? boxes.boxOf(tag) : outside(tag))),
    lines: links.map(({ link, fromTag, toTag }) => ({
      from: fromTag, to: toTag, label: boxes.cableLabel([link.cable.tag], [carriedInWords(link)]), stroke: 'plain',
    })),
    frames: [],
    placement: 'balanced',
  })
}

function inWords({ tagged }: VesselBoxes, own: ReadonlySet<Tag>, links: readonly SystemLink[]): Text {
  const tags = new Set(links.flatMap(({ fromTag, toTag }) => [fromTag, toTag]))
  const outside = [...tags].filter(tag => !own.has(tag)).toSorted(compareTags)
  const words = ({ link, fromTag, toTag }: SystemLink): Text =>
    [tagged(fromTag), ' to ', tagged(toTag), ` (${carriedInWords(link)}, `, tagged(link.cable.tag), ')']
  return [
    ...joined(links.map(words), '; '), '.',
    ...(outside.length === 0 ? [] : [' Outside the system: ', ...joined(outside.map(tag => [tagged(tag)])), '.']),
  ]
}
