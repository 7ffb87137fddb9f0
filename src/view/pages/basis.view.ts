/** What the figures rest on: limits, tables and constants with their sources, what was assumed, units, bibliography. */
import type { Limit } from '../../findings/finding.js'
import type { SpaceKind } from '../../model/vessel.js'
import type { Basis } from '../../references/basis/basis.js'
import { deviceAdvice } from '../../references/basis/device-advice.js'
import { bibliography, type Citation, type Source, type SourceKey, standingOf } from '../../references/bibliography.js'
import { temperatureCoefficientPerK, copperCitation, resistivityAt20COhmMm2PerM } from '../../references/tables/iec-60028-copper.js'
import { batteryClasses, shoreClasses } from '../../references/tables/interrupting-capacity.js'
import { conduitFillLimit } from '../../references/tables/nec-conduit-fill.js'
import { protectiveDevices } from '../../references/tables/protective-devices.js'
import { cmilFromMm2, ftFromM } from '../../units/convert.js'
import { say, sayBoth, sayForWorking, saySize, saySizeBoth } from '../../units/format.js'
import { unitEndings } from '../../units/quantity.js'
import type { ViewContext } from '../context.js'
import { fixedPages } from '../site-map.js'
import { tableOf } from '../tables.js'
import { dash, joined, linkTo, muted, orDash, strong } from '../text.js'
import type { Block, Facts, Page, Table, Text } from '../view-model.js'
import { methodOf } from '../parts/working.js'
import { generalText } from './front-matter.view.js'

export function basisPages(context: ViewContext): readonly Page[] {
  const { basis } = context
  const { title, markdown } = generalText(context, 'basis')
  return [{
    key: fixedPages.basis,
    title,
    kicker: null,
    lead: ['This installation is held against ', strong(basis.title), '. Formulas are under ', linkTo(fixedPages.methods, 'Calculations'), '.'],
    printed: null,
    trail: [],
    blocks: [
      { is: 'markdown', source: markdown },
      limitsTable(basis),
      ...dropConstantBlocks(context),
      { is: 'heading', text: 'Current-carrying capacity', anchor: 'capacity' },
      capacityTable(basis),
      engineSpaceTable(basis),
      bundleTable(basis),
      { is: 'heading', text: 'How the rules are read', anchor: 'readings' },
      { is: 'markdown', source: basis.readings.map(reading => `- ${reading}`).join('\n') },
      { is: 'heading', text: 'What is taken where the data are silent', anchor: 'assumptions' },
      ambientTable(context),
      assumptionFacts(context),
      ratingsTable(),
      unitsTable(),
      bibliographyTable(),
    ],
  }]
}

// --- limits ----------------------------------------------------------------------------------------------------------
interface LimitRow { readonly what: string; readonly limit: Text; readonly citation: Citation }

function limitsTable(basis: Basis): Table {
  const drop = (what: string, { relation, value, citation }: Basis['voltageDropPercent']['general']): LimitRow =>
    ({ what, limit: [`${relation} ${say('voltageDropPercent', value)}`], citation })
  const fill = (what: string, cableCount: number): LimitRow => {
    const { relation, value, citation } = conduitFillLimit(cableCount)
    return { what, limit: [`${relation} ${say('fillPercent', value)}`], citation }
  }
  const { protection, minimumSize } = basis
  const rows: readonly LimitRow[] = [
    drop('Voltage drop from the source to a load of a critical circuit', basis.voltageDropPercent.critical),
    drop('Voltage drop from the source to a load of a general circuit', basis.voltageDropPercent.general),
    drop('Voltage drop from the source to a panel or busbar', basis.voltageDropPercent.feeder),
    { what: 'Design current of a cable', limit: ['at most its current-carrying capacity'], citation: basis.ampacity.citation },
    { what: 'Rating of the protective device', limit: ['at most the current-carrying capacity of the conductor'], citation: protection.citation },
    ...permittedRows(basis),
    ...deviceRows(basis),
    ...protection.exempt.map(({ reason, citation }) => ({ what: `Circuit for ${reason}`, limit: ['may be without overcurrent protection'], citation })),
    { what: 'Conductor in a sheath', limit: [`at least ${saySizeBoth(minimumSize.inSheath)}`], citation: minimumSize.citation },
    { what: 'Separate conductor', limit: [`at least ${saySizeBoth(minimumSize.separate)}`], citation: minimumSize.citation },
    fill('Conduit with one cable', 1),
    fill('Conduit with two cables', 2),
    fill('Conduit with more cables', 3),
  ]
  return tableOf(rows, {
    id: 'limits',
    caption: `Limits of ${basis.title}`,
    empty: '',
    columns: [
      { title: 'What', width: 'text', cell: ({ what }) => [what] },
      { title: 'Limit', width: 'short', cell: ({ limit }) => limit },
      { title: 'Source', width: 'text', cell: ({ citation }) => [sourceText(citation)] },
      { title: 'Standing', width: 'short', cell: ({ citation }) => standingText(citation) },
    ],
    note: ['Voltage drop is in percent of the nominal voltage, feeder and final circuit added. Smallest sizes bear on the advice on sizes, conduit fill on the wireway; neither bears on the verdict of a circuit.'],
  })
}

function permittedRows({ protection: { permitted } }: Basis): readonly LimitRow[] {
  if (permitted === null) return []
  const { shareOfCapacity, anyRatingBelowV, citation } = permitted
  const share = say('sharePercent', 100 * shareOfCapacity)
  const from = say('nominalVoltageV', anyRatingBelowV)
  return [
    { what: `Rating above the capacity, below ${from}`, limit: [`permitted up to ${share} of the capacity`], citation },
    { what: `Rating above the capacity, from ${from} on`, limit: [`permitted for the next standard rating only, up to ${share} of the capacity`], citation },
  ]
}

function deviceRows({ devices: { distance, interruptingCapacity, voltageRating, panel } }: Basis): readonly LimitRow[] {
  const far = (what: string, limit: Limit | null): readonly LimitRow[] =>
    limit === null ? [] : [{ what, limit: [`${limit.relation} ${sayBoth('distanceMm', limit.value)}`], citation: limit.citation }]
  const { continuous, fuseRatio, motor, parallel } = deviceAdvice
  return [
    ...far('Conductor from the source to its device', distance.normal),
    ...far('The same, wholly in a sheath or enclosure', distance.enclosed),
    ...far('The same, joined directly to a battery terminal', distance.atBattery),
    { what: 'Interrupting capacity of a device', limit: ['at least the prospective short-circuit current'], citation: interruptingCapacity.citation },
    ...(interruptingCapacity.byClass ? [...batteryClasses.flatMap(({ classes }) => classes), ...shoreClasses].map(({ mainA, branchA, citation }) => (
      { what: 'Interrupting capacity by class', limit: [`main ${say('ratedCurrentA', mainA)}, branch ${say('ratedCurrentA', branchA)}`], citation }
    )) : []),
    { what: 'Voltage rating of a device', limit: ['at least the nominal voltage'], citation: voltageRating.citation },
    { what: 'Device that feeds a panel or busbar', limit: ['at most the rating of the panel or busbar'], citation: panel.citation },
    { what: 'Device of a load that runs on and on (advice)', limit: [`at least ${say('sharePercent', 100 * continuous.ratingFactor)} of its current`], citation: continuous.citation },
    { what: 'Device of a d.c. motor without a maker’s value (advice)', limit: [`at most ${say('sharePercent', 100 * motor.ratingFactor)} of its current`], citation: motor.citation },
    { what: 'Ratings of two fuses in a row (advice)', limit: [`ratio at least ${say('ratioFactor', fuseRatio.ratioFactor)}`], citation: fuseRatio.citation },
    { what: 'Conductors joined in parallel (advice)', limit: [`at least ${parallel.awg} AWG or ${parallel.mm2} mm²`], citation: parallel.citation },
  ]
}

/** A standing that must be read before the figure is relied on stands out. */
function standingText(citation: Citation): Text {
  const standing = standingOf(citation)
  return [standing === 'from memory' ? strong('from memory') : standing]
}

/** By its designation: "ISO 10133, 7.7". The full title is in the table of sources. */
function sourceText({ source, place }: Citation): string {
  const { designation } = bibliography[source]
  return place === '' ? designation : `${designation}, ${place}`
}

// --- the constant of the voltage drop --------------------------------------------------------------------------------
interface Constant { readonly of: string; readonly printed: string; readonly ohmMm2PerM: number; readonly citation: Citation; readonly used: boolean }

/** A constant is the drop of 1 A along 1 m of 1 mm², so the calculations themselves give it. */
function constantsOf(context: ViewContext): { readonly iso: Constant; readonly abyc: Constant; readonly copper: Constant } {
  const isoMethod = methodOf(context, 'voltage-drop-by-iso-constant')
  const abycMethod = methodOf(context, 'voltage-drop-by-abyc-constant')
  const iso: number = isoMethod.compute({ currentA: 1, conductorLengthM: 1, crossSectionMm2: 1 }).voltageDropV
  const perCircularMil: number = abycMethod.compute({ currentA: 1, conductorLengthFt: 1, conductorAreaCmil: 1 }).voltageDropV
  const abyc: number = abycMethod.compute({ currentA: 1, conductorLengthFt: ftFromM(1), conductorAreaCmil: cmilFromMm2(1) }).voltageDropV
  const { dropMethod } = context.basis
  return {
    iso: { of: 'ISO 13297', printed: sayForWorking('constantOhmMm2PerM', iso), ohmMm2PerM: iso, citation: isoMethod.citations[0]!, used: dropMethod === isoMethod.id },
    abyc: { of: 'ABYC E-11', printed: `${sayForWorking('constantNumber', perCircularMil)}\u00A0Ω·cmil/ft`, ohmMm2PerM: abyc, citation: abycMethod.citations[0]!, used: dropMethod === abycMethod.id },
    copper: { of: 'Copper at 20 °C', printed: sayForWorking('resistivityOhmMm2PerM', resistivityAt20COhmMm2PerM), ohmMm2PerM: resistivityAt20COhmMm2PerM, citation: copperCitation, used: false },
  }
}

/** By how much `value` lies above `reference`, in percent. */
const abovePercent = (value: number, reference: number): number => 100 * (value / reference - 1)
const aboveCopperPercent = ({ ohmMm2PerM }: Constant): number => abovePercent(ohmMm2PerM, resistivityAt20COhmMm2PerM)
/** Temperature at which copper has that resistivity. */
const copperTemperatureC = (constant: Constant): number => 20 + aboveCopperPercent(constant) / 100 / temperatureCoefficientPerK

function dropConstantBlocks(context: ViewContext): readonly Block[] {
  const { iso, abyc, copper } = constantsOf(context)
  const apart = sayForWorking('differencePercent', abovePercent(abyc.ohmMm2PerM, iso.ohmMm2PerM), 'result')
  return [
    { is: 'heading', text: 'The constant of the voltage drop', anchor: 'drop-constant' },
    {
      is: 'paragraph', text: [
        `The two standards give different constants for the same wire. They disagree by ${apart}. `,
        `The constant of ${iso.of} is ${sideOfCopper(iso)} the resistivity of copper at 20 °C, so it understates the drop. `,
        `That of ${abyc.of} is ${sideOfCopper(abyc)}. `,
        `This pack follows ${iso.used ? iso.of : abyc.of}. The physical value stands beside it: the drop by the resistance of the conductor at its own temperature.`,
      ],
    },
    tableOf([iso, abyc, copper], {
      id: 'drop-constants',
      caption: 'Constants of the voltage drop',
      empty: '',
      columns: [
        { title: 'By', width: 'text', cell: ({ of, used }) => (used ? [of, ' ', strong('used here')] : [of]) },
        { title: 'As printed there', width: 'number', cell: ({ printed }) => [printed] },
        { title: 'In metric units', width: 'number', cell: ({ ohmMm2PerM }) => [sayForWorking('constantOhmMm2PerM', ohmMm2PerM, 'result')] },
        { title: 'Above copper at 20 °C', width: 'number', cell: constant => [sayForWorking('differencePercent', aboveCopperPercent(constant), 'result')] },
        { title: 'Copper has it at', width: 'number', cell: constant => [sayForWorking('temperatureC', copperTemperatureC(constant), 'result')] },
        { title: 'Source', width: 'text', cell: ({ citation }) => [sourceText(citation)] },
        { title: 'Standing', width: 'short', cell: ({ citation }) => standingText(citation) },
      ],
    }),
  ]
}

function sideOfCopper(constant: Constant): string {
  const percent = aboveCopperPercent(constant)
  return `${sayForWorking('differencePercent', Math.abs(percent), 'result')} ${percent < 0 ? 'below' : 'above'}`
}

// --- capacity --------------------------------------------------------------------------------------------------------
function capacityTable({ ampacity }: Basis): Table {
  return tableOf(ampacity.rows, {
    id: 'capacity-table',
    caption: `Current by ${ampacity.title}, at an ambient of ${say('ambientC', ampacity.ambientC)}, by the temperature rating of the insulation`,
    empty: '',
    columns: [
      { title: 'Size', width: 'tag', cell: ({ size }) => [saySize(size)] },
      ...ampacity.columns.map(({ title }, i) => (
        { title, width: 'number' as const, cell: ({ currentsA }: (typeof ampacity.rows)[number]): Text => [say('ratedCurrentA', currentsA[i]!)] }
      )),
    ],
    note: [`${sourceText(ampacity.citation)} (`, ...standingText(ampacity.citation), ').'],
  })
}

function engineSpaceTable({ ampacity }: Basis): Table {
  return tableOf(ampacity.columns, {
    id: 'engine-space-factors',
    caption: `Factor in an engine space, up to an ambient of ${say('ambientC', ampacity.engineSpaceAmbientC)}`,
    empty: '',
    columns: [
      { title: 'Insulation', width: 'short', cell: ({ title }) => [title] },
      { title: 'Factor', width: 'number', cell: ({ engineSpace: { factor } }) => (factor === null ? [muted('not used there')] : [say('ambientFactor', factor)]) },
      { title: 'Source', width: 'text', cell: ({ engineSpace }) => [sourceText(engineSpace.citation)] },
      { title: 'Standing', width: 'short', cell: ({ engineSpace }) => standingText(engineSpace.citation) },
    ],
  })
}

function bundleTable({ bundle }: Basis): Table {
  const rows = bundle.steps.map(({ fromCount, factor }, i) => ({ fromCount, factor, next: bundle.steps[i + 1]?.fromCount ?? null }))
  return tableOf(rows, {
    id: 'bundle-factors',
    caption: bundle.requiredFromV === 0 ? 'Factor of the bundle' : `Factor of the bundle, required from ${say('nominalVoltageV', bundle.requiredFromV)} on, below that as advice`,
    empty: 'The basis has no factor for bundles.',
    columns: [
      { title: 'Loaded conductors', width: 'short', cell: ({ fromCount, next }) => [countRange(fromCount, next)] },
      { title: 'Factor', width: 'number', cell: ({ factor }) => [say('bundleFactor', factor)] },
    ],
    note: [`${sourceText(bundle.citation)} (`, ...standingText(bundle.citation), ').'],
  })
}

function countRange(from: number, next: number | null): string {
  if (next === null) return `${from} and more`
  return next === from + 1 ? String(from) : `${from} to ${next - 1}`
}

function ratingsTable(): Table {
  return tableOf(Object.entries(protectiveDevices), {
    id: 'standard-ratings',
    caption: 'Standard ratings of protective devices',
    empty: '',
    columns: [
      { title: 'Device', width: 'short', cell: ([device]) => [device] },
      { title: 'Ratings', width: 'text', cell: ([, { ratingsA }]) => [ratingsA === null ? 'any, set or programmed' : ratingsA.map(rating => say('ratedCurrentA', rating)).join(', ')] },
      { title: 'Source', width: 'text', cell: ([, { citation }]) => [sourceText(citation)] },
      { title: 'Standing', width: 'short', cell: ([, { citation }]) => standingText(citation) },
    ],
  })
}

// --- assumptions -----------------------------------------------------------------------------------------------------
function ambientTable({ vessel, tag }: ViewContext): Table {
  const spaces = Object.entries(vessel.conditions.ambientCBySpace) as [SpaceKind, number][]
  return tableOf(spaces, {
    id: 'ambient-temperatures',
    caption: 'Highest ambient temperature by kind of space',
    empty: '',
    columns: [
      { title: 'Kind of space', width: 'short', cell: ([space]) => [space] },
      { title: 'Ambient', width: 'number', cell: ([, ambientC]) => [sayBoth('ambientC', ambientC, vessel)] },
      {
        title: 'Zones with their own', width: 'text', cell: ([space, ambientC]) => {
          const own = vessel.zones.filter(zone => zone.space === space && zone.ambientC !== ambientC)
          return own.length === 0 ? dash : joined(own.map(zone => [tag(zone.tag), ` ${sayBoth('ambientC', zone.ambientC, vessel)}`]))
        },
      },
    ],
    note: ['As recorded for this vessel; where nothing was recorded, common practice.'],
  })
}

function assumptionFacts({ vessel }: ViewContext): Facts {
  const voltages = [...new Set(vessel.batteries.map(({ nominalVoltageV }) => nominalVoltageV))].sort((a, b) => a - b)
  return {
    is: 'facts', caption: 'Taken for every circuit and cable', entries: [
      { label: 'Cable tail', value: [`${sayBoth('cableTailM', vessel.conditions.cableTailM, vessel)} at each end of a cable whose length comes from its route`] },
      { label: 'Nominal voltage', value: [voltages.length === 0 ? 'that of the battery; none is recorded' : `that of the battery a circuit comes from: ${voltages.map(v => say('nominalVoltageV', v)).join(', ')}`] },
      { label: 'Current of a load', value: ['its maximum current; else its typical current; else its power over the nominal voltage'] },
      { label: 'Current of a feeder', value: ['the sum over the circuits fed from what it feeds, each times its demand factor; normally open circuits do not count'] },
      { label: 'Demand factor', value: ['1, unless the circuit gives one'] },
      { label: 'Load class', value: ['general, unless the circuit is recorded as critical'] },
      { label: 'Way back', value: ['like the way out, unless the circuit names its return cables'] },
    ],
  }
}

// --- units and sources -----------------------------------------------------------------------------------------------
function unitsTable(): Table {
  const printed = unitEndings.filter(({ symbol }) => symbol !== '')
  return tableOf(printed, {
    id: 'units',
    caption: 'Units',
    empty: '',
    columns: [
      { title: 'Quantity', width: 'text', cell: ({ quantity }) => [quantity] },
      { title: 'Unit in formulas', width: 'short', cell: ({ symbol }) => [symbol] },
      { title: 'In the other system', width: 'short', cell: unit => orDash('counterpart' in unit ? unit.counterpart.symbol : null) },
    ],
    note: ['Conductor sizes keep the designation they are sold by, in mm² or AWG.'],
  })
}

function bibliographyTable(): Table {
  return tableOf(Object.keys(bibliography) as SourceKey[], {
    id: 'sources',
    caption: 'Sources',
    empty: '',
    columns: [
      { title: 'Cited as', width: 'short', cell: key => [sourceOf(key).designation] },
      { title: 'Title', width: 'text', cell: key => [sourceOf(key).title] },
      { title: 'Publisher', width: 'short', cell: key => orDash(sourceOf(key).publisher || null) },
      { title: 'Edition', width: 'short', cell: key => orDash(sourceOf(key).edition) },
      { title: 'Standing', width: 'short', cell: key => standingText({ source: key, place: '' }) },
      { title: 'Remark', width: 'text', cell: key => orDash(sourceOf(key).remark) },
    ],
  })
}

const sourceOf = (key: SourceKey): Source => bibliography[key]
