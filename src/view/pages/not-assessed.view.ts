/** What could not be calculated, with the reason and what to record to get it. Silence is never a pass. */
import { lookup } from '../../model/lookup.js'
import type { Results } from '../../model/results.js'
import type { Gap as ResultGap, NotAssessed } from '../../model/results/gap.js'
import type { Tag, Vessel } from '../../model/vessel.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { compareTags, tableOf } from '../tables.js'
import { counted, joined } from '../text.js'
import type { Block, Page, Table, Text } from '../view-model.js'

/** One result that is missing. `part`: the load or cable of the subject that it is about. */
interface Gap { readonly tag: Tag; readonly part: Tag | null; readonly reason: string }

interface Calculation {
  readonly id: string
  readonly title: string
  /** What to record so that it can be calculated. */
  readonly needs: string
  readonly subject: string
  /** Of how many; null where the calculation has no fixed list of subjects. */
  readonly subjectCount: number | null
  readonly gaps: readonly Gap[]
}

export function notAssessedPages(context: ViewContext): readonly Page[] {
  const calculations = calculationsOf(context)
  const missing = countGaps(calculations)
  return [{
    key: fixedPages.notAssessed,
    title: 'Not assessed',
    kicker: null,
    lead: missing === 0
      ? ['Everything that this version calculates was calculated.']
      : [`${counted(missing, 'result')} could not be calculated. None of them is a pass. Often one missing fact stands behind many of them.`],
    printed: null,
    trail: [],
    blocks: calculations.flatMap(calculation => calculationBlocks(context, calculation)),
  }]
}

/** Every result that is missing for a vessel, calculation by calculation as the page lists them. */
export const listNotAssessed = (vessel: Vessel, results: Results): readonly NotAssessed[] =>
  calculationsOf({ results, lookup: lookup(vessel) }).flatMap(({ title, needs, gaps }) =>
    gaps.map(({ tag, part, reason }) => ({ calculation: title, needs, subjectTag: tag, partTag: part, reason })))

export const countNotAssessed = (vessel: Vessel, results: Results): number => listNotAssessed(vessel, results).length

const countGaps = (calculations: readonly Calculation[]): number => calculations.reduce((sum, { gaps }) => sum + gaps.length, 0)

/** Every result that a pass can leave out. What has no such figure is no gap: a tray has no fill, a removed cable no length. */
function calculationsOf({ results, lookup }: Pick<ViewContext, 'results' | 'lookup'>): readonly Calculation[] {
  const { routing, feeding, currentCarryingCapacity, voltageDrop, protection, conductorSize } = results
  return [
    calculation(only(routing.byCable, tag => lookup.cables.get(tag)?.status !== 'removed'), {
      id: 'cable-length', title: 'Length of cables', subject: 'cable',
      needs: 'Record the zone of what the cable joins and the wireways between the two, or the length as measured.',
      gapsOf: run => reasonsIn(run.length),
    }),
    calculation(only(routing.byWireway, tag => lookup.wireways.get(tag)?.kind === 'conduit'), {
      id: 'conduit-fill', title: 'Conduit fill', subject: 'conduit',
      needs: 'Record the bore of the conduit and the outside diameter of the types of cable in it.',
      gapsOf: load => reasonsIn(load.fill),
    }),
    calculation(feeding.byCircuit, {
      id: 'design-current', title: 'Design current', subject: 'circuit',
      needs: 'Record the loads of the circuit and the current or power of each, or the design current of the circuit itself.',
      gapsOf: feed => reasonsIn(feed.designCurrent),
    }),
    calculation(currentCarryingCapacity.byCable, {
      id: 'current-carrying-capacity', title: 'Current-carrying capacity (ampacity)', subject: 'cable',
      needs: 'Record the type of the cable with its size and the temperature rating of its insulation, and the zones it passes.',
      gapsOf: capacity => reasonsIn(capacity.outcome),
    }),
    calculation(voltageDrop.byCircuit, {
      id: 'voltage-drop', title: 'Voltage drop', subject: 'circuit',
      needs: 'Record the cables of the circuit with both ends, their type and their length or route, the current of the loads, and the feeders up to the battery.',
      gapsOf: drop => drop.notAssessed.map(({ loadTag, reason }) => ({ part: loadTag, reason })),
    }),
    calculation(voltageDrop.byCircuit, {
      id: 'physical-drop', title: 'Voltage drop by resistance', subject: 'circuit',
      needs: 'The drop by the basis is there; the physical value beside it is not. Record the size and the insulation of the cable.',
      gapsOf: drop => drop.toLoads.flatMap(({ steps }) =>
        steps.flatMap(({ cableTag, physical }) => reasonsIn(physical).map(({ reason }) => ({ part: cableTag, reason })))),
    }),
    calculation(protection.byCircuit, {
      id: 'protection', title: 'Overcurrent protection', subject: 'circuit',
      needs: 'Record the type and rating of the protective device, the loads of the circuit, and the type and route of its cables.',
      gapsOf: circuit => circuit.notAssessed.map(reason => ({ part: null, reason })),
    }),
    calculation(conductorSize.byCircuit, {
      id: 'conductor-size', title: 'Advice on conductor size', subject: 'circuit',
      needs: 'It follows when the voltage drop of the circuit and the capacity of its cables can be calculated.',
      gapsOf: reasonsIn,
    }),
    ...domains.map(({ of, ...domain }) => domainCalculation(domain, results[of].notAssessed)),
  ]
}

interface Domain extends Omit<Calculation, 'gaps' | 'subjectCount'> { readonly of: 'protectiveDevices' | 'acSupply' | 'energy' | 'dependency' | 'faultTracing' | 'reserve' | 'commissioning' | 'canBus' | 'serial' | 'ethernet' | 'radio' | 'placement' | 'identifiers' | 'configuration'
    | 'location' | 'emergency' | 'maintenance' | 'cableBill' | 'labels' | 'completeness' }

/** Those that list themselves what they could not assess. */
const domains: readonly Domain[] = [
  {
    of: 'protectiveDevices', id: 'protective-devices', title: 'Protective devices and short circuit', subject: 'thing',
    needs: 'Record the internal resistance or the short-circuit current of the batteries, the length and size of the cables up to the device, and its type.',
  },
  {
    of: 'acSupply', id: 'ac-supply', title: 'Mains and shore power', subject: 'thing',
    needs: 'Record the outputs of the sources, residual-current protection with its trip time, the bond of neutral and earth, and how sources are switched.',
  },
  { of: 'energy', id: 'energy', title: 'Load analysis and energy', subject: 'thing', needs: 'Record chemistry and capacity of the batteries, the current of loads and sources, and the operating modes with their duties.' },
  { of: 'dependency', id: 'dependency', title: 'Dependency', subject: 'thing', needs: 'Record what feeds the thing, the network that it is on, and what it needs data from.' },
  { of: 'faultTracing', id: 'fault-tracing', title: 'Voltage to be expected when tracing a fault', subject: 'thing', needs: 'It follows when the voltage drop of the circuit, or the supply of the CAN bus, can be calculated by resistance: record lengths, sizes and insulation of the cables.' },
  { of: 'reserve', id: 'reserve', title: 'Reserve', subject: 'thing', needs: 'Record ways and ratings of panels and busbars, and what is missing for the design current of the feeders.' },
  { of: 'commissioning', id: 'commissioning', title: 'Measured against calculated', subject: 'thing', needs: 'It follows when what was measured can be calculated.' },
  { of: 'canBus', id: 'can-bus', title: 'CAN buses', subject: 'thing', needs: 'Record the backbone with its cables and their kind, the load equivalency number of each device, and what it sends.' },
  { of: 'serial', id: 'serial', title: 'Serial links', subject: 'thing', needs: 'Record the rate of the link and the sentences that its talker sends.' },
  { of: 'ethernet', id: 'ethernet', title: 'Ethernet', subject: 'thing', needs: 'Record the ports with speed and power class, the power budget of the switches, addresses, and the streams of cameras, radar and sonar.' },
  { of: 'radio', id: 'radio', title: 'Radio and antennas', subject: 'thing', needs: 'Record transmitters, antennas with gain, length and position, the kind and length of their cables, radars with their beam and pulses, structures, and the places of people.' },
  { of: 'placement', id: 'placement', title: 'Placement', subject: 'thing', needs: 'Record positions, compass safe distances, lights, transducers, structures, and the particulars of the vessel.' },
  { of: 'identifiers', id: 'identifiers', title: 'Identifiers', subject: 'thing', needs: 'Record MMSI, call sign, flag, hull identification, year of build, the identities of the beacons, and the MMSI that is set in each radio.' },
  { of: 'configuration', id: 'configuration', title: 'Configuration record', subject: 'thing', needs: 'Record software versions and the settings that a replacement needs.' },
  { of: 'location', id: 'location', title: 'Location', subject: 'thing', needs: 'Record the zone of everything, the boxes of the zones, and positions.' },
  { of: 'emergency', id: 'emergency', title: 'Emergency pages', subject: 'thing', needs: 'Record what is reached for in an emergency, each with its zone and place.' },
  { of: 'maintenance', id: 'maintenance', title: 'Maintenance', subject: 'thing', needs: 'Record when things were fitted, what was done to them, and running hours.' },
  { of: 'cableBill', id: 'cable-bill', title: 'Bill of cable', subject: 'thing', needs: 'Record the type of each cable, and its length or route.' },
  { of: 'labels', id: 'labels', title: 'Labels', subject: 'thing', needs: 'Record the outside diameter of the types of cable.' },
  { of: 'completeness', id: 'completeness', title: 'Completeness', subject: 'thing', needs: 'Record what the pack does not hold, and where it is.' },
]

function domainCalculation(of: Omit<Domain, 'of'>, notAssessed: readonly ResultGap[]): Calculation {
  const gaps = notAssessed.map(({ subjectTag, reason }): Gap => ({ tag: subjectTag, part: null, reason }))
  const once = [...new Map(gaps.map(gap => [`${gap.tag} ${gap.reason}`, gap])).values()]
  return { ...of, subjectCount: null, gaps: once.toSorted((a, b) => compareTags(a.tag, b.tag)) }
}

type PartialGap = Omit<Gap, 'tag'>

function calculation<T>(
  bySubject: ReadonlyMap<Tag, T>, { gapsOf, ...of }: Omit<Calculation, 'gaps' | 'subjectCount'> & { gapsOf(result: T): readonly PartialGap[] },
): Calculation {
  const gaps = [...bySubject].flatMap(([tag, result]) => distinct(gapsOf(result)).map(gap => ({ tag, ...gap })))
  return { ...of, subjectCount: bySubject.size, gaps: gaps.toSorted((a, b) => compareTags(a.tag, b.tag)) }
}

const only = <T>(bySubject: ReadonlyMap<Tag, T>, applies: (tag: Tag) => boolean): ReadonlyMap<Tag, T> =>
  new Map([...bySubject].filter(([tag]) => applies(tag)))

const reasonsIn = (outcome: { readonly status: string; readonly reason?: string }): readonly PartialGap[] =>
  outcome.status === 'not computed' ? [{ part: null, reason: outcome.reason ?? '' }] : []

/** A feeder's cable is a step on the way to every load behind it; its gap counts once. */
const distinct = (gaps: readonly PartialGap[]): readonly PartialGap[] =>
  [...new Map(gaps.map(gap => [`${gap.part} ${gap.reason}`, gap])).values()]

function calculationBlocks(context: ViewContext, { id, title, needs, subject, subjectCount, gaps }: Calculation): readonly Block[] {
  if (gaps.length === 0) return []
  const subjects = new Set(gaps.map(({ tag }) => tag)).size
  return [
    { is: 'heading', text: title, anchor: id },
    { is: 'paragraph', text: [`${subjectCount === null ? counted(subjects, subject) : `${subjects} of ${counted(subjectCount, subject)}`}. ${needs}`] },
    reasonTable(context, id, title, gaps),
  ]
}

/** What shares a reason stands in one row. */
function reasonTable(context: ViewContext, id: string, title: string, gaps: readonly Gap[]): Table {
  const byReason = new Map<string, Gap[]>()
  for (const gap of gaps) {
    const listed = byReason.get(gap.reason)
    if (listed === undefined) byReason.set(gap.reason, [gap])
    else listed.push(gap)
  }
  return tableOf([...byReason].map(([reason, sharing]) => ({ reason, sharing })), {
    id: `not-assessed-${id}`,
    caption: `${title}, not assessed`,
    empty: '',
    columns: [
      { title: 'Because', width: 'text', cell: ({ reason }) => [reason] },
      { title: 'Results', width: 'number', cell: ({ sharing }) => [String(sharing.length)] },
      { title: 'For', width: 'text', cell: ({ sharing }) => joined(sharing.map(gap => gapText(context, gap))) },
    ],
  })
}

const gapText = ({ tag }: ViewContext, gap: Gap): Text =>
  gap.part === null ? [tag(gap.tag)] : [tag(gap.tag), ' (', tag(gap.part), ')']
