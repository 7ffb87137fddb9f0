/** Protection and short circuit: what a dead short would draw at each place, and whether the devices are equal to it. */
import { grouped } from '../../../model/lookup.js'
import { slug } from '../../../model/address.js'
import { type BatteryFault, type DeviceCheck, doesNotFall, type ExposedConductor, type LoopStep, type PanelFeeder, prospectiveA } from '../../../model/results/protective-devices.js'
import type { Circuit, Tag } from '../../../model/vessel.js'
import { deviceAdvice } from '../../../references/basis/device-advice.js'
import { cite } from '../../../references/bibliography.js'
import { protectiveDevices } from '../../../references/tables/protective-devices.js'
import { say, sayBoth, sayForWorking } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { fixedPages } from '../../site-map.js'
import { sayOrDash } from '../../parts/say.js'
import { byTag, compareTags, tableOf } from '../../tables.js'
import { counted, dash, joined, linkTo, muted, orDash, strong, verdict } from '../../text.js'
import type { Block, Inline, Page, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import {
  adviceText, capabilityText, chainText, currentText, distanceText, faultWorking, hasGap, makersText, notAssessedMark, ratioAdvice, ratioText, startText,
} from './device-blocks.js'

/** A circuit with the checks of its device. */
interface Device { readonly circuit: Circuit; readonly check: DeviceCheck }

export function protectiveDevicesPages(context: ViewContext): readonly Page[] {
  const devices = context.vessel.circuits.toSorted(byTag).flatMap((circuit): Device[] => {
    const check = context.results.protectiveDevices.byCircuit.get(circuit.tag)
    return check === undefined ? [] : [{ circuit, check }]
  })
  const before: readonly Block[] = [
    { is: 'paragraph', text: [
      strong('A short circuit across a battery draws hundreds to many thousands of amperes. '),
      'Isolate the battery before work near its terminals, take off rings and watches, insulate tools. The figures here are worked out from what is recorded; they hold for full batteries at rest. While a battery is being charged its voltage, and with it the current, is up to a tenth higher, so a margin of less than that is none. They replace neither a measurement nor the judgement of a licensed electrician.',
    ] },
    heading('Prospective short-circuit current', 'short-circuit'),
    pointTable(context),
    ...batteryBlocks(context),
  ]
  const after: readonly (Block | null)[] = [
    heading('What each device can break', 'devices'),
    ...deviceTables(context, devices),
    typeTable(),
    heading('Distance from the source', 'distances'),
    distanceTable(context, devices),
    heading('Conductors ahead of a device, or without one', 'exposed'),
    exposedTable(context),
    heading('Order of ratings', 'order'),
    orderParagraph,
    ...orderTables(context, devices),
    heading('Motors and starting currents', 'motors'),
    motorParagraph,
    motorTable(context, devices),
    heading('Loads that run on and on', 'continuous'),
    continuousTable(context, devices),
    heading('Panels, busbars, switches and charging', 'panels'),
    panelTable(context),
    switchTable(context),
    chargingTable(context, devices),
    heading('Not assessed', 'not-assessed'),
    gapTable(context),
  ]
  return [{
    key: fixedPages.protectiveDevices,
    title: 'Protection and short circuit',
    kicker: null,
    lead: [`${counted(devices.length, 'protective device')}: what each must be able to break, how far it sits from its source, and which opens first. Ratings against loads and conductors are in the `, linkTo(fixedPages.circuits, 'circuit schedule'), '; limits and sources under ', linkTo(fixedPages.basis, 'Basis'), '.'],
    // On paper the sums stand in one table, a place a row.
    printed: [...before, sumsTable(context), ...after].filter(block => block !== null),
    trail: [],
    blocks: [...before, ...pointWorkings(context), ...after].filter(block => block !== null),
  }]
}

const heading = (text: string, anchor: string): Block => ({ is: 'heading', text, anchor })
const inside = (within: boolean): Inline => (within ? verdict('good', 'within') : verdict('error', 'outside'))
/** Of an output the terminal stands after the tag. */
const pointInline = (context: ViewContext, key: string): Text => {
  const [tag = '', terminal] = key.split(':')
  return [...context.named(tag), ...(terminal === undefined ? [] : [` ${terminal}`])]
}

// --- prospective current ---------------------------------------------------------------------------------------------
function pointTable(context: ViewContext): Table {
  return tableOf([...context.results.protectiveDevices.byPoint], {
    id: 'short-circuit-points',
    caption: 'Prospective short-circuit current',
    empty: 'No source, busbar or panel is recorded.',
    columns: [
      { title: 'At', width: 'text', cell: ([key]) => pointInline(context, key) },
      { title: 'Drawn from', width: 'tag', cell: ([, { sourceTag }]) => (sourceTag === null ? dash : [context.tag(sourceTag)]) },
      { title: 'Conductors', width: 'number', cell: ([, { current }]) => (current.status === 'computed' ? [sayForWorking('conductorResistanceMilliOhm', current.input.conductorResistanceMilliOhm, 'result')] : dash) },
      { title: 'Current', width: 'number', cell: ([, prospective]) => (prospectiveA(prospective) === null ? [notAssessedMark] : [currentText(context, prospective)]) },
    ],
    note: ['A dead short between the two poles at that place, everything charged. Conductors: resistance out and back from the source. “At most”: conductors could not be counted, or the value is one stated for the source. Of batteries in parallel strings the currents add, of batteries in series they do not.'],
  })
}

function batteryBlocks(context: ViewContext): readonly Block[] {
  return [...context.results.protectiveDevices.byBattery].flatMap(([tag, fault]) => [
    workingOf(context, `Voltage of ${tag} at rest`, fault.openCircuitVoltage),
    resistanceBlock(context, tag, fault),
    ...(fault.otherSources.length === 0 ? [] : [otherSourcesTable(context, tag, fault)]),
  ])
}

function resistanceBlock(context: ViewContext, tag: Tag, { internalResistance }: BatteryFault): Block {
  return internalResistance.status === 'recorded'
    ? { is: 'paragraph', text: [strong(`Internal resistance of ${tag}: `), `${sayForWorking('internalResistanceMilliOhm', internalResistance.internalResistanceMilliOhm)}, as recorded.`] }
    : workingOf(context, `Internal resistance of ${tag}`, internalResistance)
}

function otherSourcesTable(context: ViewContext, tag: Tag, { otherSources }: BatteryFault): Table {
  return tableOf(otherSources, {
    id: `other-sources-${slug(tag)}`,
    caption: `What other sources add to a fault in the system of ${tag}`,
    empty: '',
    columns: [
      { title: 'Source', width: 'text', cell: source => context.named(source.tag) },
      { title: 'Adds', width: 'number', cell: ({ currentA }) => (currentA === null ? [muted('not recorded')] : [say('currentA', currentA, context.vessel)]) },
      { title: 'Taken from', width: 'short', cell: ({ from, currentA }) => (currentA === null ? dash : [from]) },
    ],
    note: ['Alternators, chargers and converters limit themselves; without a stated short-circuit current their rated current is taken.'],
  })
}

function sumsTable(context: ViewContext): Table {
  const sums = [...context.results.protectiveDevices.byPoint].flatMap(([key, { current, steps }]) => (current.status === 'computed' ? [{ key, current, steps }] : []))
  return tableOf(sums, {
    id: 'short-circuit-sums',
    caption: 'The sum at each place',
    empty: 'No sum can be made.',
    columns: [
      { title: 'At', width: 'tag', cell: ({ key }) => [key.replace(':', ' ')] },
      { title: 'Voltage', width: 'number', cell: ({ current }) => [sayForWorking('openCircuitVoltageV', current.input.openCircuitVoltageV)] },
      { title: 'Inside the source', width: 'number', cell: ({ current }) => [sayForWorking('internalResistanceMilliOhm', current.input.internalResistanceMilliOhm)] },
      { title: 'Conductors, out and back', width: 'text', cell: ({ steps }) => (steps.length === 0 ? dash : joined(steps.map(step => [stepText(step)]), '; ')) },
      { title: 'Sum of them', width: 'number', cell: ({ current }) => [sayForWorking('conductorResistanceMilliOhm', current.input.conductorResistanceMilliOhm, 'result')] },
      { title: 'Other sources', width: 'number', cell: ({ current }) => [sayForWorking('otherSourcesCurrentA', current.input.otherSourcesCurrentA)] },
      { title: 'Current', width: 'number', cell: ({ current }) => [sayForWorking('prospectiveShortCircuitCurrentA', current.output.prospectiveShortCircuitCurrentA, 'result')] },
    ],
    note: ['Current = 1000 × voltage / (inside the source + sum of the conductors) + other sources, in ampere, volt and milliohm.'],
  })
}

/** `W5 3.2 m 70 mm² 0.788 mΩ` */
function stepText({ cableTag, resistance }: LoopStep): string {
  if (resistance.status === 'not computed') return `${cableTag} left out`
  const { conductorLengthM, crossSectionMm2, parallelCount } = resistance.input
  const size = `${parallelCount > 1 ? `${parallelCount} × ` : ''}${sayForWorking('crossSectionMm2', crossSectionMm2)}`
  return `${cableTag} ${sayForWorking('conductorLengthM', conductorLengthM)} ${size} ${sayForWorking('conductorResistanceMilliOhm', resistance.output.conductorResistanceMilliOhm, 'result')}`
}

/** Of batteries the sum is that of their own workings. */
function pointWorkings(context: ViewContext): readonly Block[] {
  return [...context.results.protectiveDevices.byPoint].flatMap(([key, prospective]) =>
    (prospectiveA(prospective) === null ? [] : faultWorking(context, `Short-circuit current at ${key.replace(':', ' ')}`, prospective)))
}

// --- devices ---------------------------------------------------------------------------------------------------------
function deviceTables(context: ViewContext, devices: readonly Device[]): readonly Table[] {
  return [...grouped(devices, ({ circuit }) => [circuit.fedFromTag])].toSorted(([a], [b]) => compareTags(a, b)).map(([tag, fed]) => tableOf(fed, {
    id: `devices-${slug(tag)}`,
    caption: `Devices fed from ${tag} ${context.nameOf(tag) ?? ''}`.trim(),
    empty: '',
    level: ({ check }) => (breaks(check) === false ? 'error' : null),
    columns: [
      { title: 'Device', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
      { title: 'Type and rating', width: 'short', cell: ({ circuit }) => [protectionText(circuit)] },
      { title: 'Where', width: 'text', cell: ({ circuit }) => (circuit.way === null ? circuitPlace(context, circuit) : [`way ${circuit.way}`]) },
      { title: 'Voltage rating', width: 'number', cell: ({ check }) => voltageCell(context, check) },
      { title: 'Can break', width: 'number', cell: ({ check }) => [capabilityText(context, check)] },
      { title: 'Must break', width: 'number', cell: ({ check }) => mustBreak(context, check) },
      { title: 'Verdict', width: 'short', cell: ({ check }) => [breaksMark(check)] },
    ],
  }))
}

const voltageCell = ({ vessel }: ViewContext, { capability: { voltageRatingV } }: DeviceCheck): Text =>
  orDash(voltageRatingV === null ? null : say('ratedVoltageV', voltageRatingV, vessel))

/** The prospective current, and beside it what its class asks for. */
function mustBreak(context: ViewContext, { prospective, againstClass }: DeviceCheck): Text {
  return [
    currentText(context, prospective),
    ...(againstClass === null ? [] : [{ is: 'break' }, muted(`class ${say(againstClass.quantity, againstClass.limit.value, context.vessel)}`)] as const),
  ]
}

/** Null: not assessed. */
function breaks(check: DeviceCheck): boolean | null {
  const { againstCurrent, againstClass, againstVoltage } = check
  if ([againstCurrent, againstClass, againstVoltage].some(comparison => comparison?.within === false)) return false
  return againstCurrent === null || hasGap(check, 'interrupting') ? null : true
}
const breaksMark = (check: DeviceCheck): Inline => { const known = breaks(check); return known === null ? notAssessedMark : inside(known) }

function typeTable(): Table {
  const types = Object.entries(protectiveDevices).flatMap(([type, { interrupts }]) => (interrupts === null ? [] : [{ type, interrupts }]))
  return tableOf(types, {
    id: 'capacity-by-type',
    caption: 'What a type breaks on d.c., where nothing is recorded of the device itself',
    empty: '',
    columns: [
      { title: 'Type', width: 'short', cell: ({ type }) => [type] },
      { title: 'Breaks', width: 'text', cell: ({ interrupts }) => [interrupts.steps.map(({ upToV, capacityA }) => `${say('ratedCurrentA', capacityA)} up to ${say('ratedVoltageV', upToV)}`).join(', ')] },
      { title: 'Source', width: 'text', cell: ({ interrupts }) => [cite(interrupts.citation)] },
    ],
    note: ['Of breakers and electronic channels it differs from make to make: record what is printed on them. Voltages are nominal; a 12 V system counts as 12 V, though it is charged at more.'],
  })
}

// --- distance --------------------------------------------------------------------------------------------------------
function distanceTable(context: ViewContext, devices: readonly Device[]): Table {
  const apart = devices.filter(({ check: { distance } }) => distance.from !== 'panel')
  const inPanels = devices.length - apart.length
  return tableOf(apart, {
    id: 'device-distances',
    caption: 'Devices outside panels: length of conductor from the source',
    empty: 'Every device sits in its panel.',
    level: ({ check: { distance } }) => (distance.comparison?.within === false ? 'error' : null),
    columns: [
      { title: 'Device', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
      { title: 'From', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.fedFromTag)] },
      { title: 'Distance', width: 'text', cell: ({ circuit, check }) => distanceText(context, circuit, check) },
      { title: 'Limit from', width: 'text', cell: ({ check: { distance } }) => orDash(distance.comparison === null ? null : cite(distance.comparison.limit.citation)) },
    ],
    note: [`${inPanels === 0 ? '' : `${counted(inPanels, 'device')} in panels, with no conductor ahead. `}${context.basis.id === 'iso' && context.vessel.conditions.deviceDistanceMm === null ? 'The limit of 200 mm is from memory; one published page gives 300 mm for ISO 13297. Where that, or another rule, holds for this vessel, record the distance under conditions. ' : ''}Engine-starting conductors are exempt.`],
  })
}

// --- conductors without a device -------------------------------------------------------------------------------------
const stateWords: Readonly<Record<ExposedConductor['state'], Inline>> = {
  'exempt': verdict('note', 'exempt'),
  'protected above': verdict('good', 'protected above'),
  'within distance': verdict('good', 'within the distance'),
  'beyond distance': verdict('error', 'too long'),
  'distance not known': notAssessedMark,
  'unprotected': verdict('error', 'unprotected'),
  'on no circuit': verdict('warning', 'on no circuit'),
}

function exposedTable(context: ViewContext): Table {
  return tableOf(context.results.protectiveDevices.exposed.toSorted((a, b) => compareTags(a.cableTag, b.cableTag)), {
    id: 'exposed-conductors',
    caption: 'Live conductors with no device between them and a source',
    empty: 'Every power cable that is entered lies behind a protective device.',
    level: ({ state }) => (state === 'unprotected' || state === 'beyond distance' ? 'error' : null),
    columns: [
      { title: 'Cable', width: 'tag', cell: ({ cableTag }) => [context.tag(cableTag)] },
      { title: 'Live from', width: 'tag', cell: ({ fromTag }) => [context.tag(fromTag)] },
      { title: 'Of circuit', width: 'tag', cell: ({ circuitTag }) => (circuitTag === null ? dash : [context.tag(circuitTag)]) },
      { title: 'Length', width: 'number', cell: ({ lengthM }) => orDash(lengthM === null ? null : sayBoth('lengthM', lengthM, context.vessel)) },
      { title: 'Verdict', width: 'text', cell: ({ state, because }) => [stateWords[state], ...(because === null ? [] : [` ${because}`])] },
    ],
    note: ['Found by following the cables from every battery, busbar, panel and source to the first device. The far ends of charging cables, at alternators and chargers, are not listed: those sources limit themselves. A cable on no circuit has a finding of its own (FED305).'],
  })
}

// --- order -----------------------------------------------------------------------------------------------------------
const orderParagraph: Block = { is: 'paragraph', text: [
  'At a fault the device nearest to it should open and leave the rest alive. Only ratings are compared here: a smaller one downstream may be expected to open first, but at a large short circuit the time–current curves decide, and they are not recorded. ',
  muted(`Advice for fuses of one type: ratio at least ${deviceAdvice.fuseRatio.ratioFactor} (${cite(deviceAdvice.fuseRatio.citation)}); on d.c. common practice.`),
] }

function orderTables(context: ViewContext, devices: readonly Device[]): readonly Table[] {
  const below = devices.flatMap(({ circuit, check }) => (check.order === null ? [] : [{ circuit, order: check.order }]))
  return [...grouped(below, ({ order }) => [order.aboveTag])].toSorted(([a], [b]) => compareTags(a, b)).map(([aboveTag, behind]) => tableOf(behind, {
    id: `order-${slug(aboveTag)}`,
    caption: `Behind ${aboveTag} ${context.nameOf(aboveTag) ?? ''}`.trim(),
    empty: '',
    columns: [
      { title: 'Device', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
      { title: 'Rating', width: 'number', cell: ({ circuit }) => [say('ratedCurrentA', circuit.protection!.ratedCurrentA, context.vessel)] },
      { title: 'Ratio', width: 'number', cell: ({ order }) => [ratioText(order)] },
      { title: 'Verdict', width: 'text', cell: ({ order }) => (doesNotFall(order) ? [verdict('warning', 'doubtful'), ' not rated below the one above'] : [verdict('good', 'falls'), ...(ratioAdvice(order) === '' ? [] : [muted(' ratio below the advice')])]) },
    ],
    note: ['From the source: ', ...chainText(context, aboveTag), '.'],
  }))
}

// --- motors, lasting loads -------------------------------------------------------------------------------------------
const motorParagraph: Block = { is: 'paragraph', text: [
  'A motor’s maker knows best: the fuse that he asks for comes before any general rule. A motor that is jammed must not start a fire ',
  muted(`(${cite(deviceAdvice.lockedRotor.citation)})`), '; whether the device or a thermal switch in the motor sees to that is not recorded. Without a maker’s value the advice is a land rule ',
  muted(`(${cite(deviceAdvice.motor.citation)})`), '.',
] }

function motorTable(context: ViewContext, devices: readonly Device[]): Table {
  const rows = devices.flatMap(({ circuit, check }) => check.motors.map(motor => ({ circuit, motor })))
  return tableOf(rows, {
    id: 'motors',
    caption: 'Motors, and loads with a maker’s fuse or a starting current',
    empty: 'No motor, maker’s fuse or starting current is recorded.',
    level: ({ motor }) => (motor.againstMakers === 'above' ? 'error' : null),
    columns: [
      { title: 'Load', width: 'text', cell: ({ motor }) => context.named(motor.loadTag) },
      { title: 'Device', width: 'short', cell: ({ circuit }) => [context.tag(circuit.tag), ` ${say('ratedCurrentA', circuit.protection!.ratedCurrentA, context.vessel)}`] },
      { title: 'Maker’s fuse', width: 'short', cell: ({ motor }) => makersText(context, motor) ?? dash },
      { title: 'Starting', width: 'short', cell: ({ motor }) => startText(context, motor) ?? dash },
      { title: 'General rule', width: 'text', cell: ({ motor }) => adviceText(context, motor) ?? dash },
    ],
  })
}

function continuousTable(context: ViewContext, devices: readonly Device[]): Table {
  const rows = devices.flatMap(({ circuit, check: { continuous } }) => (continuous?.comparison == null ? [] : [{ circuit, continuous, comparison: continuous.comparison }]))
  const { ratingFactor, fromH, citation } = deviceAdvice.continuous
  return tableOf(rows, {
    id: 'continuous-loads',
    caption: 'Devices of loads that run without a break',
    empty: 'No duty is recorded that runs for three hours or more without a break.',
    columns: [
      { title: 'Device', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
      { title: 'Loads', width: 'text', cell: ({ continuous }) => joined(continuous.loadTags.map(tag => [context.tag(tag)])) },
      { title: 'In mode', width: 'short', cell: ({ continuous }) => [context.vessel.operatingModes.find(({ tag }) => tag === continuous.modeTag)?.name ?? continuous.modeTag] },
      { title: 'Current', width: 'number', cell: ({ continuous: { least } }) => (least.status === 'computed' ? [say('currentA', least.input.continuousCurrentA, context.vessel)] : dash) },
      { title: 'Rating', width: 'text', cell: ({ comparison }) => comparisonText(comparison, context) },
    ],
    note: [`Advice: at least ${100 * ratingFactor} % of what runs at full current for ${fromH} h or more (${cite(citation)}). Does not bind devices that are rated for their full value without a break.`],
  })
}

// --- panels, charging ------------------------------------------------------------------------------------------------
function panelTable(context: ViewContext): Table {
  const rows = [...context.results.protectiveDevices.byPanel].flatMap(([tag, { ratedCurrentA, feeders }]): { tag: Tag; ratedCurrentA: number; feeder: PanelFeeder }[] =>
    (ratedCurrentA === null ? [] : feeders.map(feeder => ({ tag, ratedCurrentA, feeder }))))
  return tableOf(rows, {
    id: 'panel-ratings',
    caption: 'Panels and busbars against what feeds them',
    empty: 'No rating of a panel or busbar is recorded.',
    level: ({ feeder: { protection, current } }) => (protection?.within === false || current?.within === false ? 'error' : null),
    columns: [
      { title: 'Panel or busbar', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Rated', width: 'number', cell: ({ ratedCurrentA }) => [say('ratedCurrentA', ratedCurrentA, context.vessel)] },
      { title: 'Fed by', width: 'tag', cell: ({ feeder }) => [context.tag(feeder.circuitTag)] },
      { title: 'Its device', width: 'text', cell: ({ feeder }) => (feeder.protection === null ? [muted('none')] : comparisonText(feeder.protection, context)) },
      { title: 'Current', width: 'text', cell: ({ feeder }) => (feeder.current === null ? [notAssessedMark] : comparisonText(feeder.current, context)) },
    ],
    note: [`Limit: ${cite(context.basis.devices.panel.citation)}. Current: the larger of what is drawn and what charging sources put in.`],
  })
}

function switchTable(context: ViewContext): Table {
  return tableOf(context.results.protectiveDevices.switches, {
    id: 'switch-ratings',
    caption: 'Switches and isolators against what flows through them',
    empty: 'No switch with a rating, and no battery isolator, is recorded.',
    level: ({ comparison }) => (comparison?.within === false ? 'error' : null),
    columns: [
      { title: 'Switch', width: 'text', cell: ({ tag }) => context.named(tag) },
      { title: 'Rated', width: 'number', cell: ({ ratedCurrentA }) => sayOrDash('ratedCurrentA', ratedCurrentA, context.vessel) },
      { title: 'Current', width: 'text', cell: ({ comparison }) => (comparison === null ? [notAssessedMark] : comparisonText(comparison, context)) },
    ],
    note: ['Current: the largest in any cable at it, drawn or put in by charging sources.'],
  })
}

function chargingTable(context: ViewContext, devices: readonly Device[]): Table {
  const rows = devices.flatMap(({ circuit, check: { charging } }) => (charging === null ? [] : [{ circuit, charging }]))
  return tableOf(rows, {
    id: 'charging-through',
    caption: 'Charging current through each device on its way to the battery',
    empty: 'No charging source is recorded as feeding in.',
    level: ({ charging }) => (charging.within ? null : 'error'),
    columns: [
      { title: 'Device', width: 'tag', cell: ({ circuit }) => [context.tag(circuit.tag)] },
      { title: 'Name', width: 'text', cell: ({ circuit }) => [circuit.name] },
      { title: 'Charging current', width: 'text', cell: ({ charging }) => comparisonText(charging, context) },
    ],
  })
}

// --- not assessed ----------------------------------------------------------------------------------------------------
function gapTable(context: ViewContext): Table {
  const byReason = [...grouped(context.results.protectiveDevices.notAssessed, ({ reason }) => [reason])]
  return tableOf(byReason, {
    id: 'devices-not-assessed',
    caption: 'Not assessed, with the reason',
    empty: 'All of the above was assessed.',
    columns: [
      { title: 'Because', width: 'text', cell: ([reason]) => [reason] },
      { title: 'For', width: 'text', cell: ([, gaps]) => joined([...new Set(gaps.map(({ subjectTag }) => subjectTag))].toSorted(compareTags).map(tag => [context.tag(tag)])) },
    ],
    note: ['None of these is a pass. Time–current curves, thermal cut-outs in motors and the reactance of a.c. sources are not recorded, and nothing is said about them.'],
  })
}
