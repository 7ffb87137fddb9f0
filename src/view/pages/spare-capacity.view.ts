/** What a service shop asks before it adds something: spare ways, current left in the feeders, free ports and tees, room in conduits. */
import type { Busbar, Panel } from '../../model/vessel.js'
import type { FreePowerPort } from '../../model/results/ethernet.js'
import type { FeederReserve, PointReserve, ReserveLimit, Trial } from '../../model/results/reserve.js'
import { busRules } from '../../references/tables/can-rules.js'
import { say, sayForWorking } from '../../units/format.js'
import { comparisonText } from '../parts/assessment.js'
import type { ViewContext } from '../context.js'
import { sayOrDash } from '../parts/say.js'
import { fixedPages } from '../site-map.js'
import { byTag, type ColumnOf, compareTags, tableOf } from '../tables.js'
import { dash, joined, muted, orDash, orNotRecorded, strong, verdict } from '../text.js'
import type { Block, Page, Table, Text } from '../view-model.js'
import { roomText } from './networks/can-bus-room.js'
import { serialRoomTable } from './networks/serial.view.js'
import { isFree } from './networks/ethernet-links.js'
import { powerLeft } from './networks/ethernet-power.js'
import { spareText } from './panels.view.js'

export function spareCapacityPage(context: ViewContext): Page {
  return {
    key: fixedPages.spareCapacity,
    title: 'Spare capacity',
    kicker: null,
    lead: ['Where something can still be added. A spare way is of use only while the feeder above it has current left; check both, and record what you add.'],
    printed: null,
    trail: [],
    blocks: [
      panelTable(context), trialTable(context), { is: 'heading', text: mainTitle, anchor: null }, feederTable(context), busbarTable(context),
      { is: 'heading', text: 'Asking for more', anchor: null }, commandHelp(context), { is: 'heading', text: 'Ports, tees and conduits', anchor: null },
      portTable(context), busTable(context), serialRoomTable(context), conduitTable(context),
    ],
  }
}

const mainTitle = 'What a feeder could still carry'

function panelTable(context: ViewContext): Table {
  const { vessel, results } = context
  const reserve = ({ tag }: Panel) => results.reserve.byPoint.get(tag)
  return tableOf(vessel.panels.toSorted(byTag), {
    id: 'spare-ways',
    caption: 'Spare ways, and what the panels could still carry',
    empty: 'No panel is recorded.',
    note: ['Taken: what its circuits draw together, demand factors applied. Left: its own rating less that. The feeders above it may have less left: see the next two tables.'],
    columns: [
      { title: 'Panel', width: 'text', cell: panel => context.named(panel.tag) },
      { title: 'Spare ways', width: 'text', cell: panel => spareText(context, panel) },
      { title: 'Taken', width: 'number', cell: panel => currentCell(reserve(panel)?.takenCurrentA) },
      { title: 'Rated', width: 'number', cell: panel => orNotRecorded(panel.ratedCurrentA === null ? null : say('ratedCurrentA', panel.ratedCurrentA)) },
      { title: 'Left', width: 'number', cell: panel => marginCell(reserve(panel)?.rating) },
    ],
  })
}

/** What one more circuit would do, seen from the place where it would be connected. */
function trialTable(context: ViewContext): Table {
  const points = [...context.results.reserve.byPoint.values()].filter(({ chain }) => chain.length > 0).toSorted(byTag)
  return tableOf(points, {
    id: 'one-more-circuit',
    caption: 'What one more circuit would do to the feeders above',
    empty: 'No panel or busbar is fed from a source.',
    note: ['In each cell the feeder that has least left with the new circuit on, demand factor 1. The voltage drop, the new cable and what else hangs on the feeders are not in it: ask with asfitted reserve.'],
    columns: [
      { title: 'Connected at', width: 'text', cell: point => context.named(point.tag) },
      { title: 'Supply', width: 'short', cell: point => [point.nominalVoltageV === null ? muted('not known') : `${say('nominalVoltageV', point.nominalVoltageV)} ${point.supplyForm === 'ac' ? 'a.c.' : 'd.c.'}`] },
      ...trialCurrents(points).map((currentA): ColumnOf<PointReserve> => ({
        title: `${say('ratedCurrentA', currentA)} more`, width: 'text', cell: point => trialText(context, point.trials.find(trial => trial.currentA === currentA)),
      })),
    ],
  })
}

const trialCurrents = (points: readonly PointReserve[]): readonly number[] => points[0]?.trials.map(({ currentA }) => currentA) ?? []

function trialText(context: ViewContext, trial: Trial | undefined): Text {
  if (trial === undefined) return dash
  const mark = verdict(({ 'fits': 'good', 'does not fit': 'error', 'not assessed': 'not assessed' } as const)[trial.verdict], trial.verdict)
  const tightest = trial.feeders.filter(({ least }) => least !== null).toSorted((a, b) => marginOf(a) - marginOf(b))[0]
  return tightest === undefined ? [mark] : [mark, ' ', context.tag(tightest.circuitTag), ` ${say('marginCurrentA', marginOf(tightest))} left`]
}
const marginOf = ({ least }: Pick<FeederReserve, 'least'>): number => least?.margin.output.marginCurrentA ?? 0

/** Every limit of every feeder: a sum a line, the one that governs marked. */
function feederTable(context: ViewContext): Table {
  const { results, vessel } = context
  const rows = [...results.reserve.byFeeder.values()].toSorted((a, b) => compareTags(a.circuitTag, b.circuitTag)).flatMap((feeder): readonly FeederRow[] => [
    ...feeder.limits.map(limit => ({ feeder, limit, reason: null })),
    ...feeder.missing.map(reason => ({ feeder, limit: null, reason })),
  ])
  return tableOf(rows, {
    id: 'feeder-margins',
    caption: 'Feeders: what each part could still carry',
    empty: 'No circuit feeds a panel or busbar.',
    note: ['Margin = limit − what is carried. The least margin of a feeder governs. What charging sources put in flows the other way and makes no room: they may be off.'],
    level: ({ limit }) => (limit === null ? 'not assessed' : limit.within ? null : 'error'),
    columns: [
      { title: 'Feeder', width: 'text', cell: ({ feeder }) => [context.tag(feeder.circuitTag), ' to ', ...joined((context.lookup.circuits.get(feeder.circuitTag)?.loadTags ?? []).map(tag => [context.tag(tag)]))] },
      { title: 'Part', width: 'short', cell: ({ limit }) => (limit === null ? dash : [limit.of, ...(limit.of === 'protective device' ? [] : [' ', context.tag(limit.tag)])]) },
      { title: 'Limit', width: 'number', cell: ({ limit }) => (limit === null ? dash : [sayForWorking('limitCurrentA', limit.margin.input.limitCurrentA)]) },
      { title: 'Carries', width: 'number', cell: ({ limit }) => (limit === null ? dash : [sayForWorking('takenCurrentA', limit.margin.input.takenCurrentA)]) },
      { title: 'Margin', width: 'number', cell: ({ limit }) => (limit === null ? dash : [sayForWorking('marginCurrentA', limit.margin.output.marginCurrentA)]) },
      {
        title: 'Verdict', width: 'text', cell: ({ feeder, limit, reason }) => (limit === null ? [verdict('not assessed', 'not assessed'), ` ${reason}`]
          : [limit.within ? verdict('good', 'within') : verdict('error', 'outside'), ...(limit === feeder.least ? [' ', strong('governs')] : [])]),
      },
      { title: 'Put in', width: 'number', cell: ({ feeder, limit }) => (limit !== feeder.least ? dash : feeder.putInCurrentA === 0 ? ['none'] : sayOrDash('currentA', feeder.putInCurrentA, vessel)) },
    ],
  })
}
interface FeederRow { readonly feeder: FeederReserve; readonly limit: ReserveLimit | null; readonly reason: string | null }

function busbarTable(context: ViewContext): Table {
  const { results, vessel } = context
  const reserve = ({ tag }: Busbar) => results.reserve.byPoint.get(tag)
  return tableOf(vessel.busbars.toSorted(byTag), {
    id: 'busbar-margins',
    caption: 'Busbars: what is taken and what is put in',
    empty: 'No busbar is recorded.',
    note: ['Taken: by the circuits fed from it, demand factors applied. Put in: by charging circuits. Each is held against the rating, since either may flow without the other.'],
    level: busbar => (reserve(busbar)?.rating?.within === false || reserve(busbar)?.putInRating?.within === false ? 'error' : null),
    columns: [
      { title: 'Busbar', width: 'text', cell: busbar => context.named(busbar.tag) },
      { title: 'Rated', width: 'number', cell: busbar => orNotRecorded(busbar.ratedCurrentA === null ? null : say('ratedCurrentA', busbar.ratedCurrentA)) },
      { title: 'Taken', width: 'number', cell: busbar => (busbar.polarity === 'negative' ? [muted('not added up for negative busbars')] : currentCell(reserve(busbar)?.takenCurrentA)) },
      { title: 'Left to take', width: 'number', cell: busbar => marginCell(reserve(busbar)?.rating) },
      { title: 'Put in', width: 'number', cell: busbar => (busbar.polarity === 'negative' ? dash : currentCell(reserve(busbar)?.putInCurrentA)) },
      { title: 'Left to put in', width: 'number', cell: busbar => (busbar.polarity === 'negative' ? dash : marginCell(reserve(busbar)?.putInRating)) },
    ],
  })
}

const currentCell = (currentA: number | null | undefined): Text => [currentA == null ? muted('not assessed') : sayForWorking('currentA', currentA)]
const marginCell = (limit: ReserveLimit | null | undefined): Text => [limit == null ? muted('not assessed') : sayForWorking('marginCurrentA', limit.margin.output.marginCurrentA)]

function commandHelp({ vessel }: ViewContext): Block {
  const place = vessel.zones[0]?.tag ?? 'PLACE'
  return {
    is: 'markdown', source: [
      'The program that made this pack answers the whole question from the vessel’s folder, each figure with its sum. What you ask goes together:',
      'a display may need a circuit, a place on a bus and a network port, and then the answer has a part for each.',
      '',
      `- A circuit of 8 A in ${place}: \`asfitted reserve FOLDER --at ${place} --current "8 A"\`. By which way, with which conductor and protective device, and what that leaves in every feeder above.`,
      '- A device on a CAN bus: `--len 4`, its load equivalency number. At which tee, how long its drop is, and the lowest voltage on the bus before and after.',
      '- A device fed over its network cable: `--power-class 3`; a plain network port: `--ethernet`. Which port, how long the cable is, what power the switch has left, which address is free next.',
      '- A model of the catalogue: `--model KEY` takes all that from there.',
      '',
      '`--at` takes a zone, a wireway point or an item. For a circuit: `--voltage "12 V"` says which supply where there are several; `--critical` holds the load to the',
      'voltage drop of critical circuits; `--continuous` rates its device for hours of use; `--hours "4 h"` adds what it takes out of the battery each day.',
    ].join('\n'),
  }
}

function portTable(context: ViewContext): Table {
  const { ports, power } = context.results.ethernet
  const switches = [...new Set(context.vessel.ethernetNetworks.flatMap(network => network.switchTags))]
  const free = switches.flatMap(tag => (ports.get(tag) ?? []).filter(isFree).map(port => ({ tag, port, supply: power.get(tag)?.freePorts.find(({ name }) => name === port.name) })))
  const left = switches.flatMap(tag => { const supply = power.get(tag); return supply === undefined ? [] : [{ tag, words: powerLeft(supply) }] })
  return tableOf(free, {
    id: 'free-ports',
    caption: 'Free ports of the network switches',
    empty: 'No port is free.',
    note: [
      ...(left.length === 0 ? [] : [`Power left: ${left.map(({ tag, words }) => `${tag} ${words ?? 'not known'}`).join(', ')}. What fits is for one more device; with each the power left shrinks. `]),
      ...joined(context.vessel.ethernetNetworks.flatMap(({ tag }): Text[] => { const next = ethernetNext(context, tag); return next === null ? [] : [['Next free address of ', context.tag(tag), `: ${next}.`]] }), ' '),
    ],
    columns: [
      { title: 'Switch', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Port', width: 'tag', cell: ({ port }) => [port.name] },
      { title: 'Speed', width: 'number', cell: ({ port }) => sayOrDash('speedMbitPerS', port.speedMbitPerS, context.vessel) },
      { title: 'Offers class', width: 'number', cell: ({ port }) => orDash(port.powerClass === null ? null : String(port.powerClass)) },
      { title: 'Class that fits', width: 'short', cell: ({ supply }) => fittingText(supply) },
    ],
  })
}

const ethernetNext = ({ results }: ViewContext, tag: string): string | null => results.ethernet.networks.get(tag)?.addresses.nextFree ?? null

/** What the port offers and the budget of its switch has left. */
function fittingText(supply: FreePowerPort | undefined): Text {
  if (supply === undefined || supply.offeredClass === null) return dash
  if (!supply.known) return [muted('not assessed')]
  return supply.fittingClass === null ? [verdict('warning', 'none')] : [`up to ${supply.fittingClass}`]
}

function busTable(context: ViewContext): Table {
  return tableOf([...context.results.canBus.byBus.values()], {
    id: 'bus-room',
    caption: 'Room on the CAN buses',
    empty: 'No CAN bus is recorded.',
    note: [`LEN 1 is 50 mA. One drop is at most ${sayForWorking('dropLengthM', busRules['nmea 2000'].dropM.value)} long, on an engine bus ${sayForWorking('dropLengthM', busRules['j1939'].dropM.value)}. Zone by zone and tee by tee, with the sum that governs, on the page of the bus.`],
    columns: [
      { title: 'Bus', width: 'text', cell: ({ bus }) => context.named(bus.tag) },
      { title: 'Devices', width: 'number', cell: ({ lengths }) => [String(lengths.devices.value)] },
      { title: 'Room', width: 'text', cell: result => roomText(context, result) },
    ],
  })
}

function conduitTable(context: ViewContext): Table {
  const { results, vessel } = context
  const conduits = vessel.wireways.filter(({ kind }) => kind === 'conduit').toSorted(byTag)
  return tableOf(conduits, {
    id: 'conduit-room',
    caption: 'Room in the conduits',
    empty: 'No conduit is recorded.',
    columns: [
      { title: 'Wireway', width: 'text', cell: wireway => context.named(wireway.tag) },
      { title: 'Between', width: 'text', cell: ({ fromTag, toTag }) => joined([fromTag, toTag].map(context.named), ' and ') },
      { title: 'Cables', width: 'number', cell: wireway => [String(results.routing.byWireway.get(wireway.tag)?.cableTags.length ?? 0)] },
      { title: 'Fill', width: 'text', cell: wireway => { const fill = results.routing.byWireway.get(wireway.tag)?.fillComparison; return fill == null ? [muted('not assessed')] : comparisonText(fill, context) } },
    ],
  })
}
