/**
 * The one-line power diagram: from the batteries through protective devices, isolators and busbars down to the panels and
 * the consumers that hang on a battery or busbar directly, then a sheet for each panel. The negative side is not drawn.
 */
import { lookup } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { Circuit, Tag, Vessel } from '../../model/vessel.js'
import { byTag, compareTags } from '../tables.js'
import { joined } from '../text.js'
import type { Diagram, Text } from '../view-model.js'
import { type CircuitPart, circuitPart } from './circuit-part.js'
import { type Drawing, filled, mermaidText, titleLength, wordOf } from './mermaid-text.js'
import { type Sheet, sheetsOf, turned } from './sheets.js'
import { type Address, type VesselBoxes, vesselBoxes } from './vessel-boxes.js'

interface TitledSheet extends Sheet<CircuitPart> { readonly id: string; readonly about: Tag | null; readonly title: string }

export function oneLineDiagrams(vessel: Vessel, results: Results, address: Address): readonly Diagram[] {
  const { panels, busbars } = lookup(vessel)
  const boxes = vesselBoxes(vessel, address)
  const parts = vessel.circuits.toSorted(byPlace)
    .map(circuit => circuitPart(vessel, boxes, circuit, results.feeding.byCircuit.get(circuit.tag)))
  const feeders = parts.filter(({ loadTags }) => loadTags.some(tag => panels.has(tag) || busbars.has(tag)))
  const direct = parts.filter(part => !panels.has(part.circuit.fedFromTag) && !feeders.includes(part))

  const sheets = [
    ...mainSheets(vessel, feeders, direct),
    ...vessel.panels.toSorted(byTag).flatMap(({ tag, name }) =>
      pointSheets(vessel, tag, `${tag} ${name}`, parts).map(sheet => ({ ...sheet, about: tag }))),
  ]
  return sheets.map(({ id, about, title, parts: drawn, drawing }, i) => ({
    is: 'diagram',
    id: `one-line-${id}`,
    about,
    caption: `One-line diagram, sheet ${i + 1} of ${sheets.length}: ${title}`,
    mermaid: mermaidText(drawing),
    description: [...inWords(boxes, drawn), ...(about === null ? negativeInWords(vessel, boxes) : [])],
  }))
}

/** On one sheet where there is room, else the feeders first and then what else hangs on each battery and busbar. */
function mainSheets(vessel: Vessel, feeders: readonly CircuitPart[], direct: readonly CircuitPart[]): readonly TitledSheet[] {
  const titled = (title: string, parts: readonly CircuitPart[]): readonly TitledSheet[] =>
    sheetsOf(parts, draw).map((sheet, i) => ({ ...sheet, id: `main-${i + 1}`, about: null, title }))
  const together = titled('from the batteries to the panels and direct consumers', [...feeders, ...direct])
  const sources = vessel.equipment.filter(({ tag }) => lookup(vessel).circuitsFedFrom.has(tag))
  const points = [...vessel.batteries, ...vessel.busbars, ...sources].toSorted(byTag)
  return together.length <= 1 ? together : [
    ...titled('from the batteries to the panels', feeders),
    ...points.flatMap(({ tag, name }) => pointSheets(vessel, tag, `consumers on ${tag} ${name}`, direct)),
  ]
}

/** What is fed from one battery, busbar or panel. */
function pointSheets(vessel: Vessel, tag: Tag, title: string, parts: readonly CircuitPart[]): readonly TitledSheet[] {
  const feeders = (lookup(vessel).circuitsOfLoad.get(tag) ?? []).map(circuit => circuit.tag).toSorted(compareTags)
  return sheetsOf(parts.filter(fedFrom(tag)), drawn => drawFramed(drawn, feeders)).map((sheet, i, all) => {
    const [first, last] = [sheet.parts[0]!.circuit.tag, sheet.parts.at(-1)!.circuit.tag]
    const span = all.length === 1 ? '' : first === last ? `, ${first}` : `, ${first} to ${last}`
    return { ...sheet, id: `${wordOf(tag)}-${i + 1}`, about: null, title: title + span }
  })
}

/** In the order in which a panel's front is read, what has no way last; distribution points by their tags. */
function byPlace(a: Circuit, b: Circuit): number {
  const place = ({ way }: Circuit): number => way ?? Number.MAX_SAFE_INTEGER
  return compareTags(a.fedFromTag, b.fedFromTag) || place(a) - place(b) || compareTags(a.tag, b.tag)
}

const draw = (parts: readonly CircuitPart[]): Drawing => turned({
  boxes: unique(parts.flatMap(part => part.boxes), ({ key }) => key),
  lines: unique(parts.flatMap(part => part.lines), ({ from, to, label }) => [from, to, ...label].join(' ')),
  frames: [],
  placement: 'balanced',
})

/**
 * The circuits of one distribution point. Where all their protective devices sit on it, it is drawn as a frame around
 * them, not as a box with a line to each.
 */
function drawFramed(parts: readonly CircuitPart[], feederTags: readonly Tag[]): Drawing {
  const boxed = draw(parts)
  const { boxes, lines } = boxed
  const tag = parts[0]!.circuit.fedFromTag
  const point = boxes.find(({ key }) => key === tag)!
  if (!parts.every(({ mounted }) => mounted) || lines.some(({ to }) => to === tag)) return boxed
  const fedBy = feederTags.length === 0 ? [] : [`fed by ${feederTags.join(', ')}`]
  const title = [
    ...filled([tag, ...point.below].join(' ').split(' '), ' ', titleLength),
    ...filled([...point.beside, ...fedBy], ' · ', titleLength),
  ]
  return turned({
    boxes: boxes.filter(({ key }) => key !== tag),
    lines: lines.filter(({ from }) => from !== tag),
    frames: [{ key: tag, title, boxKeys: parts.map(({ circuit }) => circuit.tag) }],
    placement: 'straight',
  })
}
const fedFrom = (tag: Tag) => ({ circuit }: CircuitPart): boolean => circuit.fedFromTag === tag

function unique<T>(things: readonly T[], keyOf: (thing: T) => string): readonly T[] {
  const byKey = new Map<string, T>()
  for (const thing of things) if (!byKey.has(keyOf(thing))) byKey.set(keyOf(thing), thing)
  return [...byKey.values()]
}

function inWords({ tagged }: VesselBoxes, parts: readonly CircuitPart[]): Text {
  const points = [...new Set(parts.map(({ circuit }) => circuit.fedFromTag))]
  const sentences = points.map((tag): Text => [
    tagged(tag), ' feeds ', ...joined(parts.filter(fedFrom(tag)).map(({ words }) => words), '; '), '.',
  ])
  return joined(sentences, ' ')
}

function negativeInWords({ busbars }: Vessel, { tagged }: VesselBoxes): Text {
  const negative = busbars.filter(({ polarity }) => polarity === 'negative').toSorted(byTag)
  const named: Text = negative.length === 0 ? [] : ['; negative busbars: ', ...joined(negative.map(({ tag }) => [tagged(tag)]))]
  return [' The negative side is not drawn', ...named, '.']
}
