/** For each system the equipment in it that carries or uses data or radio signals, the cables between, and the neighbours outside. */
import { lookup } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { System, Tag, Vessel } from '../../model/vessel.js'
import { byTag, compareTags } from '../tables.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { carriedInWords, dataLinks, type Link } from './links.js'
import { type Box, type Drawing, mermaidText, wordOf } from './mermaid-text.js'
import { sheetsOf, turned } from './sheets.js'
import { type Address, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

/** A cable with what its two ends belong to: equipment, or the bus whose backbone it comes to. */
interface SystemLink { readonly link: Link; readonly fromTag: Tag; readonly toTag: Tag }

export function systemDiagrams(vessel: Vessel, _results: Results, address: Address): readonly Diagram[] {
  const boxes = vesselBoxes(vessel, address)
  const links = systemLinks(vessel)
  return vessel.systems.flatMap(system => {
    const own = new Set(systemItems(vessel, system))
    const linked = ordered(links.filter(({ fromTag, toTag }) => own.has(fromTag) || own.has(toTag)), own)
    const sheets = sheetsOf(linked, drawn => systemDrawing(vessel, boxes, own, drawn))
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

/** Cables of the same item beside each other: first by the item of the system, then by the cable's tag. */
function ordered(links: readonly SystemLink[], own: ReadonlySet<Tag>): readonly SystemLink[] {
  const ownEnd = ({ fromTag, toTag }: SystemLink): Tag => (own.has(fromTag) ? fromTag : toTag)
  return links.toSorted((a, b) => compareTags(ownEnd(a), ownEnd(b)) || byTag(a.link.cable, b.link.cable))
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
      .map(tag => (own.has(tag) ? { ...boxes.boxOf(tag), beside: [] } : outside(tag))),
    lines: links.map(({ link, fromTag, toTag }) => ({ from: fromTag, to: toTag, label: [link.cable.tag, carriedInWords(link)], stroke: 'plain' })),
    frames: [],
    straight: false,
  })
}

function inWords({ tagged }: VesselBoxes, own: ReadonlySet<Tag>, links: readonly SystemLink[]): Text {
  const outside = [...new Set(links.flatMap(({ fromTag, toTag }) => [fromTag, toTag]))].filter(tag => !own.has(tag)).toSorted(compareTags)
  return [
    ...joined(links.map(({ link, fromTag, toTag }): Text => [tagged(fromTag), ' to ', tagged(toTag), ` (${carriedInWords(link)}, `, tagged(link.cable.tag), ')']), '; '),
    '.', ...(outside.length === 0 ? [] : [' Outside the system: ', ...joined(outside.map(tag => [tagged(tag)])), '.']),
  ]
}
