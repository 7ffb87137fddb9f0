/** Legend cards: to be cut out and put beside a panel or inside its door. */
import { grouped, isThere } from '../../../model/lookup.js'
import type { Circuit, Panel, Tag } from '../../../model/vessel.js'
import { cableTagsOf } from '../../../model/results.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { compareTags } from '../../tables.js'
import { joined } from '../../text.js'
import type { Block, LegendCard, LegendRow, Page, PageKey } from '../../view-model.js'
import { protectionText } from '../../parts/circuit-parts.js'
import { spareText, spareWays } from '../panels.view.js'

export const legendsKey: PageKey = `${fixedPages.workshop}/legends`

export function legendsPage(context: ViewContext): Page {
  const panels = context.vessel.panels.filter(isThere)
  const unknown = panels.filter(panel => spareWays(context, panel) === null).toSorted((a, b) => compareTags(a.tag, b.tag))
  const cards = legendCards(context)
  return {
    key: legendsKey,
    title: 'Panel legends',
    kicker: 'Workshop',
    lead: ['A card for each panel and module, and for every other place that circuits start from. Print at full size, cut along the broken line, and replace the card whenever a circuit changes.'],
    printed: null,
    trail: [{ text: 'Workshop documents', to: fixedPages.workshop }],
    blocks: [
      ...(unknown.length === 0 ? [] : [{ is: 'paragraph', text: ['Without their spare ways: ', ...joined(unknown.map(panel => [context.tag(panel.tag), ' (', ...spareText(context, panel), ')'])), '.'] } satisfies Block]),
      { is: 'legends', cards, empty: 'No circuit is recorded.' },
    ],
  }
}

/** More rows than fit on a card beside a panel are shared out evenly among several. */
const mostRows = 16

export function legendCards(context: ViewContext): readonly LegendCard[] {
  return legendsOf(context).flatMap(({ rows, ...card }) => {
    const parts = Math.max(1, Math.ceil(rows.length / mostRows))
    const size = Math.ceil(rows.length / parts)
    return Array.from({ length: parts }, (_, i) => ({ ...card, part: parts === 1 ? null : `${i + 1} of ${parts}`, rows: rows.slice(i * size, (i + 1) * size) }))
  })
}

/** Each whole, panels first. */
export function legendsOf(context: ViewContext): readonly LegendCard[] {
  const panels = new Map(context.vessel.panels.filter(isThere).map(panel => [panel.tag, panel]))
  const circuits = grouped(context.vessel.circuits, ({ fedFromTag }) => [fedFromTag])
  const others = [...circuits.keys()].filter(tag => { const item = context.lookup.items.get(tag); return !panels.has(tag) && (item === undefined || isThere(item)) })
  return [...[...panels.keys()].toSorted(compareTags), ...others.toSorted(compareTags)]
    .map(tag => cardOf(context, tag, panels.get(tag) ?? null, circuits.get(tag) ?? []))
    .filter(({ rows }) => rows.length > 0)
}

function cardOf(context: ViewContext, tag: Tag, panel: Panel | null, circuits: readonly Circuit[]): LegendCard {
  const spare = panel === null ? [] : spareWays(context, panel) ?? []
  const rows = [
    ...circuits.map(circuit => ({ way: circuit.way, tag: circuit.tag, row: rowOf(context, circuit) })),
    ...spare.map(way => ({ way, tag: '', row: { way: String(way), name: 'spare', rating: '', feeds: '', spare: true, unprotected: false } })),
  ].toSorted((a, b) => (a.way ?? Number.MAX_VALUE) - (b.way ?? Number.MAX_VALUE) || compareTags(a.tag, b.tag))
  return { tag, name: context.nameOf(tag) ?? '', wayTitle: panel?.kind === 'switching module' ? 'Channel' : panel === null ? 'Tag' : 'Way', part: null, mains: mainsText(context, circuits), rows: rows.map(({ row }) => row) }
}

function rowOf(context: ViewContext, circuit: Circuit): LegendRow {
  const { protection, unprotectedReason } = circuit
  const there = circuit.loadTags.filter(tag => { const item = context.lookup.items.get(tag); return item === undefined || isThere(item) })
  return {
    way: circuit.way === null ? circuit.tag : String(circuit.way),
    name: circuit.name,
    rating: protection !== null ? (protection.device === 'electronic channel' ? `set to ${say('ratedCurrentA', protection.ratedCurrentA)}` : protectionText(circuit))
      : unprotectedReason === null ? 'no device recorded' : `no device: ${unprotectedReason}`,
    feeds: there.map(tag => { const name = context.nameOf(tag); return name === null || name === circuit.name ? tag : `${tag} ${name}` }).join('; '),
    spare: false,
    unprotected: protection === null,
  }
}

/** By what feeds the circuits, or where that is not known by their cables: a card without the warning would say that there is none. */
function mainsText({ lookup, results }: ViewContext, circuits: readonly Circuit[]): string | null {
  const feeds = circuits.map(circuit => ({ circuit, feed: results.feeding.byCircuit.get(circuit.tag) }))
  const voltages = [...new Set(feeds.flatMap(({ feed }) => (feed?.supplyForm === 'ac' && feed.nominalVoltageV !== null ? [feed.nominalVoltageV] : [])))].toSorted((a, b) => a - b)
  const inMainsCable = feeds.some(({ circuit, feed }) => cableTagsOf(circuit, feed).some(tag => lookup.cableTypes.get(lookup.cables.get(tag)?.typeTag ?? '')?.use === 'ac power'))
  if (voltages.length === 0 && !inMainsCable) return null
  const volts = voltages.map(voltageV => say('nominalVoltageV', voltageV)).join(' and ')
  return `Mains voltage${volts === '' ? '' : ` ${volts} a.c.`}: contact kills. Shore plug out, generator and inverter off before a cover is opened. Licensed persons only.`
}
