/** Workbooks of the pack: what the site prints as tables, to be sorted, filtered and summed. */
import { cableLengthM } from '../../model/results.js'
import type { CableOrder } from '../../model/results/cable-bill.js'
import type { Vessel } from '../../model/vessel.js'
import { ftFromM } from '../../units/convert.js'
import { saySize } from '../../units/format.js'
import type { ViewContext } from '../context.js'
import { labelText } from '../../model/cable-label.js'
import { cablesTable } from '../pages/cables.view.js'
import { circuitTable } from '../pages/circuits/circuits.view.js'
import { equipmentTable } from '../pages/equipment/equipment.view.js'
import { materialTables } from '../pages/workshop/bill.view.js'
import { legendsOf } from '../pages/workshop/legends.view.js'
import { penTables } from '../pages/workshop/test-sheets.view.js'
import { busPartName, zoneName } from '../pages/workshop/wire-lists.view.js'
import { wireLists, type WireRow } from '../pages/workshop/wire-rows.js'
import { workbookFile } from '../pages/workshop/workshop.view.js'
import { fixedPages } from '../site-map.js'
import { byTag, plainText } from '../tables.js'
import type { Page, Sheet, SheetCell, Table, Workbook } from '../view-model.js'

export const workbooks = (context: ViewContext, pages: readonly Page[]): readonly Workbook[] =>
  (!pages.some(({ key }) => key === fixedPages.workshop) ? [] : [{ file: workbookFile, about: 'wire lists, bill of cable, schedules and test sheets as tables', sheets: sheets(context) }])

function sheets(context: ViewContext): readonly Sheet[] {
  const { vessel, lookup } = context
  return [
    wireSheet(context),
    billSheet(context),
    partSheet(materialTables(context)),
    sheetOf('Cables', cablesTable(context, vessel.cables, { id: 'cables', caption: '' })),
    sheetOf('Circuits', circuitTable(context, vessel.circuits, { id: 'circuits', caption: '' })),
    sheetOf('Equipment', equipmentTable(context, [...lookup.items.values()].toSorted(byTag), 'equipment', '')),
    labelSheet(context),
    legendSheet(context),
    testSheet(context),
    findingSheet(context),
  ].filter(({ rows }) => rows.length > 0)
}

interface Column<T> { readonly title: string; readonly numbers?: boolean; cell(thing: T): SheetCell }
const sheetFrom = <T>(name: string, things: readonly T[], columns: readonly Column<T>[]): Sheet => ({
  name,
  columns: columns.map(({ title, numbers }) => ({ title, numbers: numbers ?? false })),
  rows: things.map(thing => columns.map(column => column.cell(thing))),
})

// --- from tables -----------------------------------------------------------------------------------------------------
const written = /^(-?\d+(?:\.\d+)?)(?:\u00A0(\S+))?$/

/**
 * A table of the site as a sheet. A column of quantities that all have one unit becomes one of numbers with the unit in its
 * title; what stands there instead of a quantity ("not assessed") stays as words.
 */
export function sheetOf(name: string, { columns, rows }: Table): Sheet {
  const cells = rows.map(row => row.cells.map(plainText))
  const unitOf = columns.map(({ width }, i) => (width === 'number' ? onlyUnit(cells.map(row => row[i]!)) : null))
  return {
    name,
    columns: columns.map(({ title, unit }, i) => ({ title: titled(title, unitOf[i] || unit), numbers: unitOf[i] !== null })),
    rows: cells.map(row => row.map((text, i) => {
      const number = unitOf[i] === null ? undefined : written.exec(text)?.[1]
      return number === undefined ? text.replaceAll('\u00A0', ' ') : Number(number)
    })),
  }
}
const titled = (title: string, unit: string | null): string => (unit === null || unit === '' ? title : `${title} (${unit})`)

/** The unit of every quantity in a column, empty for plain numbers; null where there are several units, or no quantity. */
function onlyUnit(texts: readonly string[]): string | null {
  const units = new Set(texts.flatMap(text => { const found = written.exec(text); return found === null ? [] : [found[2] ?? ''] }))
  return units.size === 1 ? [...units][0]! : null
}

/** Several tables of parts under one another: which, what, how many. */
const partSheet = (tables: readonly Table[]): Sheet => sheetFrom('Parts', tables.flatMap(({ caption, columns, rows }) => rows.flatMap(row => {
  const texts = row.cells.map(plainText)
  const counts = columns.map(({ width }, i) => ({ title: columns[i]!.title, count: Number(texts[i]), counts: width === 'number' && /^\d+$/.test(texts[i]!) && columns[i]!.title !== 'Poles' })).filter(({ counts }) => counts)
  const what = columns.map(({ title }, i) => (counts.some(count => count.title === title) ? '' : title === 'Poles' ? `poles ${texts[i]}` : texts[i]!)).filter(text => text !== '').join(', ').replaceAll('\u00A0', ' ')
  return counts.map(({ title, count }) => ({ caption, what, title, count }))
})), [
  { title: 'Table', cell: ({ caption }) => caption },
  { title: 'What', cell: ({ what }) => what },
  { title: 'Counted', cell: ({ title }) => title },
  { title: 'Number', numbers: true, cell: ({ count }) => count },
])

// --- lengths as numbers ----------------------------------------------------------------------------------------------
const lengthUnit = ({ units }: Vessel): string => (units === 'us' ? 'ft' : 'm')
/** To the hundredth, so that sums come out as on the site. */
const lengthIn = ({ units }: Vessel, lengthM: number): number => Math.round((units === 'us' ? ftFromM(lengthM) : lengthM) * 100) / 100

export function billSheet({ vessel, lookup, results }: ViewContext): Sheet {
  const unit = lengthUnit(vessel)
  const length = (lengthM: number | undefined): number | null => (lengthM === undefined ? null : lengthIn(vessel, lengthM))
  const order = ({ order, cableCount }: CableOrder): number | null => (order.status === 'computed' && cableCount > 0 ? lengthIn(vessel, order.output.orderLengthM) : null)
  return sheetFrom('Bill of cable', results.cableBill.types, [
    { title: 'Type', cell: ({ typeTag }) => typeTag },
    { title: 'Name', cell: ({ typeTag }) => lookup.cableTypes.get(typeTag)!.name },
    { title: 'Cables', numbers: true, cell: ({ cableCount }) => cableCount },
    { title: 'Pieces', numbers: true, cell: ({ pieceCount }) => pieceCount },
    { title: `Laid (${unit})`, numbers: true, cell: ({ all }) => length(all.laidLengthM) },
    { title: 'Spare (%)', numbers: true, cell: () => vessel.conditions.cableSparePercent },
    { title: `To order (${unit})`, numbers: true, cell: ({ all }) => order(all) },
    { title: `Longest piece (${unit})`, numbers: true, cell: ({ longest }) => length(longest?.pieceLengthM) },
    { title: 'Which is', cell: ({ longest }) => longest?.cableTag ?? '' },
    { title: `Planned (${unit})`, numbers: true, cell: ({ planned }) => length(planned.laidLengthM) },
    { title: `To order for what is planned (${unit})`, numbers: true, cell: ({ planned }) => order(planned) },
    { title: `Positive (${unit})`, numbers: true, cell: ({ byConductor }) => length(byConductor?.positiveLengthM) },
    { title: `Negative (${unit})`, numbers: true, cell: ({ byConductor }) => length(byConductor?.negativeLengthM) },
    { title: 'Length not known, not in the sums', cell: ({ unknownLengthTags }) => unknownLengthTags.join(', ') },
  ])
}

// --- wire list, labels, legends --------------------------------------------------------------------------------------
export function wireSheet(context: ViewContext): Sheet {
  const { lookup, vessel, results } = context
  const typeOf = ({ cable }: WireRow) => lookup.cableTypes.get(cable?.typeTag ?? '') ?? null
  const nameOf = (tag: string): string => context.nameOf(tag) ?? busPartName(context, tag) ?? ''
  const lengthOf = ({ is, cable }: WireRow): number | null => {
    const lengthM = cable === null || is === 'wire' ? null : cableLengthM(results.routing.byCable.get(cable.tag))
    return lengthM === null ? null : lengthIn(vessel, lengthM)
  }
  return sheetFrom('Wire list', wireLists(context).flatMap(({ rows }) => rows), [
    { title: 'Zone', cell: row => zoneName(context, row.zoneTag) },
    { title: 'Item or way', cell: ({ here }) => here.tag },
    { title: 'Terminal', cell: ({ here }) => here.terminal ?? '' },
    { title: 'Name', cell: ({ here }) => nameOf(here.tag) },
    { title: 'Panel or item', cell: ({ ownerTag }) => ownerTag },
    { title: 'Cable', cell: ({ cable, is }) => cable?.tag ?? (is === 'plug' ? 'plugged on' : 'not recorded') },
    { title: 'Name of the cable', cell: ({ cable }) => cable?.name ?? '' },
    { title: 'Conductors', cell: ({ conductors }) => conductors.map(({ what }) => what).join(', ') },
    { title: 'Colours', cell: ({ conductors }) => conductors.map(({ colour }) => colour ?? '').filter(colour => colour !== '').join(', ') },
    { title: 'Label at this end', cell: ({ label }) => label ?? '' },
    { title: 'Type', cell: row => typeOf(row)?.tag ?? '' },
    { title: 'Cores', numbers: true, cell: row => typeOf(row)?.cores ?? null },
    { title: 'Size', cell: row => { const size = typeOf(row)?.size; return size == null ? '' : saySize(size).replaceAll('\u00A0', ' ') } },
    { title: 'In parallel', numbers: true, cell: ({ cable }) => cable?.parallelCount ?? null },
    { title: 'To', cell: ({ far }) => far.tag },
    { title: 'Terminal there', cell: ({ far }) => far.terminal ?? '' },
    { title: 'Name there', cell: ({ far }) => nameOf(far.tag) },
    { title: 'Zone there', cell: row => zoneName(context, row.farZoneTag) },
    { title: 'Route', cell: ({ cable }) => (cable === null ? '' : results.routing.byCable.get(cable.tag)?.wirewayTags.join(' ') ?? '') },
    { title: `Length of the cable (${lengthUnit(vessel)})`, numbers: true, cell: lengthOf },
    { title: 'Status', cell: ({ status }) => status ?? 'not recorded' },
    { title: 'Pulled', cell: () => null },
    { title: 'Terminated', cell: () => null },
    { title: 'Checked', cell: () => null },
  ])
}
const labelSheet = (context: ViewContext): Sheet => sheetFrom('Labels', context.vessel.cables.toSorted(byTag).flatMap(cable => (['from', 'to'] as const).map(end => ({ cable, end }))), [
  { title: 'Cable', cell: ({ cable }) => cable.tag },
  { title: 'End', cell: ({ end }) => (end === 'from' ? 'first' : 'other') },
  { title: 'Label', cell: ({ cable, end }) => labelText(cable, end) },
  { title: 'Status', cell: ({ cable }) => cable.status ?? 'not recorded' },
])

const legendSheet = (context: ViewContext): Sheet => sheetFrom('Panel legends', legendsOf(context).flatMap(card => card.rows.map(row => ({ card, row }))), [
  { title: 'Panel', cell: ({ card }) => card.tag },
  { title: 'Name', cell: ({ card }) => card.name },
  { title: 'Way', cell: ({ row }) => (/^\d+$/.test(row.way) ? Number(row.way) : row.way) },
  { title: 'Circuit', cell: ({ row }) => row.name },
  { title: 'Rating', cell: ({ row }) => row.rating.replaceAll('\u00A0', ' ') },
  { title: 'Feeds', cell: ({ row }) => row.feeds },
  { title: 'Mains', cell: ({ card }) => (card.mains === null ? '' : 'mains voltage') },
])

// --- test sheets and findings ----------------------------------------------------------------------------------------
/** A row for each reading to take: the columns behind what is expected; the last one, where it asks for more than date and initials. */
const testSheet = (context: ViewContext): Sheet => sheetFrom('Test sheets', penTables(context).flatMap(({ caption, columns, rows }) => rows.flatMap(({ cells }) => {
  const texts = cells.map(cell => plainText(cell).replaceAll('\u00A0', ' '))
  return columns.flatMap(({ title, unit }, i) => {
    const reading = title.replace(/,? ?date, initials$/i, '')
    return i < 2 || reading === '' ? [] : [{ caption, what: texts[0]!, expected: texts[1]!, reading, unit: unit ?? '', hint: i === columns.length - 1 ? '' : texts[i]! }]
  })
})), [
  { title: 'Sheet', cell: ({ caption }) => caption },
  { title: 'What', cell: ({ what }) => what },
  { title: 'Expected', cell: ({ expected }) => expected },
  { title: 'To read', cell: ({ reading }) => reading },
  { title: 'Unit', cell: ({ unit }) => unit },
  { title: 'Where, or read already', cell: ({ hint }) => hint },
  { title: 'Reading', cell: () => null },
  { title: 'Instrument', cell: () => null },
  { title: 'Date', cell: () => null },
  { title: 'Name', cell: () => null },
])

const findingSheet = (context: ViewContext): Sheet => sheetFrom('Findings', context.findings, [
  { title: 'Id', cell: ({ id }) => id },
  { title: 'Name', cell: ({ name }) => name },
  { title: 'Severity', cell: ({ severity }) => severity },
  { title: 'Subject', cell: ({ subject }) => subject.id },
  { title: 'Message', cell: ({ message }) => message },
  { title: 'Remedy', cell: ({ remedy }) => remedy },
  { title: 'File', cell: ({ at }) => at?.file ?? '' },
  { title: 'Line', numbers: true, cell: ({ at }) => at?.line ?? null },
])
