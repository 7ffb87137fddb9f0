/**
 * A CAN bus in its physical order: the backbone from one terminator to the other runs down a column, drops go off to the
 * side. A long backbone goes on in the next column, with a marker at both ends of the break.
 */
import { cableLengthM, type Results } from '../../model/results.js'
import { lookup } from '../../model/lookup.js'
import type { CanBus, Tag, Vessel } from '../../model/vessel.js'
import { say } from '../../units/format.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { type Box, type Drawing, type Line, mermaidText, wordOf } from './mermaid-text.js'
import { type Address, type BackbonePart, elementWords, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

/** An element of the backbone with the cables by which it hangs on the one before it; none where they are plugged together. */
interface Station { readonly element: BackbonePart; readonly cableTags: readonly Tag[] }
/** A stretch of the backbone, with what stands at a break. */
interface Column {
  readonly stations: readonly Station[]
  readonly before: Box | null
  readonly after: { readonly box: Box; readonly cableTags: readonly Tag[] } | null
}

/** As many as print at 8 pt or larger on A4, with the markers at both ends of a column. */
const stationsInColumn = 7
const columnsOnSheet = 2

export function canBusDiagrams(vessel: Vessel, results: Results, address: Address): readonly Diagram[] {
  const boxes = vesselBoxes(vessel, address)
  const lengthOf = (cableTag: Tag): string | null => {
    const lengthM = cableLengthM(results.routing.byCable.get(cableTag))
    return lengthM === null ? null : say('cableLengthM', lengthM, { units: vessel.units })
  }
  return vessel.canBuses.flatMap(bus => {
    const columns = columnsOf(bus, boxes)
    const sheets = Array.from({ length: Math.ceil(columns.length / columnsOnSheet) }, (_, i) =>
      columns.slice(i * columnsOnSheet, (i + 1) * columnsOnSheet))
    return sheets.map((drawn, i): Diagram => ({
      is: 'diagram',
      id: `can-bus-${wordOf(bus.tag)}-${i + 1}`,
      about: bus.tag,
      caption: `CAN bus ${bus.tag} ${bus.name}, sheet ${i + 1} of ${sheets.length}`,
      mermaid: mermaidText(sheetDrawing(vessel, boxes, lengthOf, drawn)),
      description: inWords(boxes, drawn),
    }))
  })
}

function columnsOf({ backbone }: CanBus, boxes: VesselBoxes): readonly Column[] {
  const stations: Station[] = []
  let cableTags: readonly Tag[] = []
  for (const element of backbone) {
    if (element.kind === 'segment') cableTags = [...cableTags, element.cableTag]
    else {
      stations.push({ element, cableTags })
      cableTags = []
    }
  }
  const marker = ({ element }: Station, word: string): Box => ({ ...boxes.referenceTo(element.tag), key: `${element.tag} ${word}`, below: [word] })
  const openEnd = (which: string): Box =>
    ({ key: `${which} end`, is: 'reference', tag: 'open end', beside: [], below: ['nothing recorded'], page: null })

  const count = stations.length <= stationsInColumn ? Math.sign(stations.length)
    : columnsOnSheet * Math.ceil(stations.length / (columnsOnSheet * stationsInColumn))
  const edge = (i: number) => Math.round((i * stations.length) / count)
  return Array.from({ length: count }, (_, i): Column => {
    const held = stations.slice(edge(i), edge(i + 1))
    const [previous, next] = [stations[edge(i) - 1], stations[edge(i + 1)]]
    return {
      stations: held,
      before: previous !== undefined ? marker(previous, 'precedes') : held[0]!.cableTags.length > 0 ? openEnd('first') : null,
      after: next !== undefined ? { box: marker(next, 'follows'), cableTags: next.cableTags }
        : cableTags.length > 0 ? { box: openEnd('last'), cableTags } : null,
    }
  })
}

function sheetDrawing(vessel: Vessel, boxes: VesselBoxes, lengthOf: (cableTag: Tag) => string | null, columns: readonly Column[]): Drawing {
  const { equipment } = lookup(vessel)
  const label = (cableTags: readonly Tag[]): readonly string[] =>
    cableTags.flatMap(tag => [tag, lengthOf(tag)]).filter(text => text !== null)
  const backbone = (from: string, to: string, cableTags: readonly Tag[]): Line =>
    ({ from, to, label: cableTags.length === 0 ? ['plugged'] : label(cableTags), stroke: 'heavy' })

  const ownBox = ({ element }: Station): Box => {
    const free = element.kind === 'tee' && element.deviceTag === null ? ['free'] : []
    const zone = element.zoneTag === null ? [] : [boxes.nameOf(element.zoneTag) ?? element.zoneTag]
    return { ...boxes.boxOf(element.tag), is: 'junction', beside: [], below: [[elementWords[element.kind], ...free, ...zone].join(' · ')] }
  }
  const hungBox = ({ element }: Station): Box | null => {
    const tag = hangsOn(element)
    if (tag === null) return null
    const key = `${tag} on ${element.tag}`
    const box = { ...boxes.boxOf(tag), key }
    const number = equipment.get(tag)?.loadEquivalencyNumber ?? null
    return number === null ? box : { ...box, beside: [`LEN ${number}`, ...box.beside] }
  }
  const drop = (station: Station): readonly Line[] => {
    const hung = hungBox(station)
    return hung === null ? [] : [{ from: station.element.tag, to: hung.key, label: label(dropCables(station.element)), stroke: 'plain' }]
  }
  return {
    direction: 'top down',
    placement: 'straight',
    frames: [],
    boxes: columns.flatMap(({ stations, before, after }) =>
      [before, ...stations.flatMap(station => [ownBox(station), hungBox(station)]), after?.box ?? null]).filter(box => box !== null),
    lines: columns.flatMap(({ stations, before, after }) => [
      ...stations.flatMap((station, i) => {
        const previous = i === 0 ? before?.key : stations[i - 1]!.element.tag
        // The drop first: what is named first is drawn further left, and the backbone stays on the right of its column.
        return [...drop(station), ...(previous === undefined ? [] : [backbone(previous, station.element.tag, station.cableTags)])]
      }),
      ...(after === null ? [] : [backbone(stations.at(-1)!.element.tag, after.box.key, after.cableTags)]),
    ]),
  }
}

/** The device on a tee's drop, or the circuit at a power insertion point. */
const hangsOn = (element: BackbonePart): Tag | null =>
  element.kind === 'tee' ? element.deviceTag : element.kind === 'power' ? element.circuitTag : null
const dropCables = (element: BackbonePart): readonly Tag[] =>
  !('dropCableTag' in element) || element.dropCableTag === null ? [] : [element.dropCableTag]

function inWords({ tagged }: VesselBoxes, columns: readonly Column[]): Text {
  const cables = (tags: readonly Tag[]): Text => joined(tags.map(tag => [tagged(tag)]))
  const words = ({ element, cableTags }: Station): Text => {
    const hung = hangsOn(element)
    const drop = dropCables(element)
    return [
      ...(cableTags.length === 0 ? [] : ['cable ', ...cables(cableTags), ', ']),
      `${elementWords[element.kind]} `, tagged(element.tag),
      ...(hung === null ? [] : [' with ', tagged(hung), ...(drop.length === 0 ? [] : [' by ', ...cables(drop)])]),
    ]
  }
  const { after = null } = columns.at(-1) ?? {}
  const onward: Text = after === null ? [] : after.cableTags.length === 0 ? ['; then '] : ['; then cable ', ...cables(after.cableTags), ' to ']
  return [
    'In physical order: ', ...joined(columns.flatMap(({ stations }) => stations.map(words)), '; '),
    ...onward, ...(after === null ? [] : [after.box.tag]), '.',
  ]
}
