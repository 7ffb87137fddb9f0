/** What depends on what, item by item: how it is switched, what it lives on, whose data it needs, what fails with it. */
import { grouped, isThere, type Item } from '../../../model/lookup.js'
import type { SupplyLine } from '../../../model/results/dependency.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { equipmentKind } from '../../../references/equipment-kinds.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { joined, lineBreak, muted } from '../../text.js'
import type { Table, Text } from '../../view-model.js'
import { circuitPlace } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import { effectNames } from '../fault-tracing/fault-words.js'
import { networkSupply } from '../networks/network-parts.js'

/** `onPaper`: without what stands in other chapters of the printed manual. */
interface Layout { readonly onPaper?: boolean }

export const itemsTable = (context: ViewContext, items: readonly Item[], { onPaper = false }: Layout = {}): Table => tableOf(items, {
  id: 'on-this-boat',
  caption: 'On this boat',
  empty: '',
  columns: [
    // Two columns, so that the table is read on a telephone without being pushed aside.
    { title: 'What and where', width: 'text', cell: item => [...context.named(item.tag), lineBreak, ...placeText(context, item, { withAccess: !onPaper })] },
    { title: 'Fed and switched by', width: 'text', cell: item => switchedBy(context, item, onPaper) },
  ],
})

/** Only items of which something is known; null without any. */
export function dependsTable(context: ViewContext, items: readonly Item[]): Table | null {
  const facts = items.map(item => ({ item, needs: needs(context, item.tag), livesOn: livesOn(context, item.tag), fails: fails(context, item.tag) }))
    .filter(({ needs: data, livesOn: supply, fails: lost }) => data !== null || supply !== null || lost !== null)
  // What hangs on the same stands in one row.
  const rows = [...grouped(facts, ({ needs: data, livesOn: supply, fails: lost }) => [JSON.stringify([data, supply, lost])]).values()].map(alike => ({ ...alike[0]!, items: alike.map(({ item }) => item) }))
  return rows.length === 0 ? null : tableOf(rows, {
    id: 'depends',
    caption: 'What depends on what',
    empty: '',
    columns: [
      { title: 'What', width: 'text', cell: ({ items: alike }) => joined(alike.map(item => context.named(item.tag)), lineBreak) },
      {
        title: 'Needs, and takes with it', width: 'text', cell: ({ livesOn: supply, needs: data, fails: lost }) => joined([
          ...(supply === null ? [] : [[muted('Lives on '), ...supply]]),
          ...(data === null ? [] : [[muted('Needs data from '), ...data]]),
          ...(lost === null ? [] : [[muted('If it fails: '), ...lost]]),
        ], lineBreak),
      },
    ],
  })
}

// --- switching -------------------------------------------------------------------------------------------------------
function switchedBy(context: ViewContext, item: Item, onPaper: boolean): Text {
  const circuits = context.circuitsOf(item.tag)
  if (circuits.length > 0) return joined(circuits.map(circuit => circuitText(context, item, circuit, onPaper)), lineBreak)
  if (context.lookup.equipment.get(item.tag) !== undefined && equipmentKind((item as { kind: string }).kind).draw === 'nothing') return ['by hand; it hangs on no circuit']
  const port = networkSupply(context, item.tag)
  return port === null ? [muted('on no circuit of its own')] : ['on while its network is on: ', ...port]
}

function circuitText(context: ViewContext, item: Item, circuit: Circuit, onPaper: boolean): Text {
  const panel = context.lookup.panels.get(circuit.fedFromTag)
  const floats = switchesOnWay(context, item.tag, circuit.tag)
  const through: Text = floats.length === 0 ? [] : [', through ', ...joined(floats.map(tag => context.named(tag)))]
  if (panel?.kind !== 'switching module') return [context.tag(circuit.tag), ' ', ...circuitPlace(context, circuit), ...through, ...(circuit.normalState === 'open' ? [' ', muted('(normally off)')] : [])]
  const keypads = keypadsOf(context, panel.tag)
  return [
    context.tag(circuit.tag), ` channel ${circuit.way ?? 'not recorded'} of `, context.tag(panel.tag),
    ...(keypads.length === 0 ? [] : [', from ', ...joined(keypads.map(tag => [context.tag(tag)]))]),
    ...through,
    ...(circuit.normalState === 'open' ? [' ', muted('(normally off)')] : []),
    ...(circuit.manualBypass === null || onPaper ? [] : [lineBreak, muted(`By hand: ${circuit.manualBypass}.`)]),
  ]
}

/** Between the protective device and the item: a float switch, a contactor. */
function switchesOnWay({ results }: ViewContext, tag: Tag, circuitTag: Tag): readonly Tag[] {
  const line = results.dependency.traces.get(tag)?.supplies.find(supply => supply.circuitTag === circuitTag)
  const steps = line?.steps ?? []
  return steps.slice(0, steps.findIndex(({ what }) => ['panel', 'busbar', 'battery', 'source'].includes(what))).filter(({ what }) => what === 'switch').map(step => step.tag)
}

/** Keypads on the bus of the module. */
const keypadsOf = ({ vessel, lookup }: ViewContext, moduleTag: Tag): readonly Tag[] => vessel.canBuses.flatMap(({ backbone }) => {
  const devices = backbone.flatMap(element => (element.kind === 'tee' && element.deviceTag !== null ? [element.deviceTag] : []))
  return devices.includes(moduleTag) ? devices.filter(tag => { const item = lookup.equipment.get(tag); return item?.kind === 'keypad' && isThere(item) }) : []
})

// --- dependency ------------------------------------------------------------------------------------------------------
/** Whose data it cannot do without. */
function needs({ results, named }: ViewContext, tag: Tag): Text | null {
  const givers = (results.dependency.traces.get(tag)?.data ?? []).filter(({ is }) => is === 'giver')
  return givers.length === 0 ? null : joined(givers.map(giver => named(giver.tag)), '; ')
}

/** The sources at the end of its supplies, each with the isolator on the way. */
function livesOn(context: ViewContext, tag: Tag): Text | null {
  const supplies = (context.results.dependency.traces.get(tag)?.supplies ?? []).filter(({ open }) => !open)
  const lines = supplies.flatMap((line): Text[] => {
    const last = line.steps.at(-1)
    return last === undefined ? [] : [[...context.named(last.tag), ...isolatorsOn(context, line)]]
  })
  return lines.length === 0 ? null : joined(unique(lines), '; ')
}

function isolatorsOn(context: ViewContext, { steps }: SupplyLine): Text {
  const isolators = steps.filter(({ tag }) => context.lookup.equipment.get(tag)?.kind === 'battery isolator')
  return isolators.length === 0 ? [] : [', through ', ...joined(isolators.map(({ tag }) => [context.tag(tag)]))]
}

const unique = (lines: readonly Text[]): readonly Text[] => [...new Map(lines.map(line => [JSON.stringify(line), line])).values()]

function fails(context: ViewContext, tag: Tag): Text | null {
  const effects = context.results.dependency.losses.get(tag) ?? []
  return effects.length === 0 ? null : effectNames(context, effects, { most: 6, withCause: false })
}
