/**
 * A CAN backbone in its physical order, from top to bottom: stations on the backbone, drops to the right, zones as bands.
 * A long one goes on on the next sheet, with a marker at both sides of the break. A sheet is as wide as a telephone shows
 * at reading size; on paper two stand side by side, at 8 pt.
 */
import type { DrawnBackbone, DrawnCable, DrawnStation, Label } from './backbone-parts.js'
import { at, element, escaped } from './svg.js'

const width = 344
const spine = 62
const hang = 142
const right = width - 6
/** As high as fits on a printed sheet beside the rest of the page. */
const mostHeight = 830
const rowHeight = { station: 38, bare: 30, cable: 24, zone: 20, end: 24, marker: 20 } as const

/** `zone`: whose band it lies in. `heading`: it names that zone. `tag`: of the station in it. */
interface Row { readonly height: number; readonly zone: DrawnStation['zone']; readonly heading?: true; readonly tag?: string; draw(y: number): string }

/** The sheets, in order. */
export function backboneDrawings(backbone: DrawnBackbone): readonly string[] {
  const rows = rowsOf(backbone)
  if (rows.length === 0) return []
  const sheets = sheetsOf(rows)
  const lastTag = (held: readonly Row[] | undefined) => held?.findLast(({ tag }) => tag !== undefined)?.tag
  const firstTag = (held: readonly Row[] | undefined) => held?.find(({ tag }) => tag !== undefined)?.tag
  return sheets.map((held, i) => sheet(`${backbone.title}, sheet ${i + 1} of ${sheets.length}`, [
    ...(i === 0 ? [] : [marker(`from ${lastTag(sheets[i - 1]) ?? 'the sheet before'}`), ...headingAgain(held)]),
    ...held,
    ...(i === sheets.length - 1 ? [] : [marker(`goes on to ${firstTag(sheets[i + 1]) ?? 'the next sheet'}`)]),
  ]))
}

const headingAgain = ([first]: readonly Row[]): readonly Row[] => (first === undefined || first.zone === null || first.heading ? [] : [headingOf(first.zone, true)])

// --- rows ------------------------------------------------------------------------------------------------------------
function rowsOf({ stations, spans }: DrawnBackbone): readonly Row[] {
  if (stations.length === 0) return []
  const onward = spans.at(-1)!
  const startsOpen = spans[0]!.length > 0
  return [
    ...(startsOpen ? [openEnd(false)] : []),
    ...stations.flatMap((station, i): readonly Row[] => {
      const { zone } = station
      const goesOn = zone !== null && zone.key === stations[i - 1]?.zone?.key
      const [isFirst, isLast] = [i === 0 && !startsOpen, i === stations.length - 1 && onward.length === 0]
      return [
        ...spans[i]!.map(cable => cableRow(cable, goesOn ? zone : null)),
        ...(zone === null || goesOn ? [] : [headingOf(zone, !isFirst)]),
        { height: heightOf(station), zone, tag: station.tag, draw: y => stationRow(station, y, isFirst, isLast) },
      ]
    }),
    ...onward.map(cable => cableRow(cable, null)),
    ...(onward.length === 0 ? [] : [openEnd(true)]),
  ]
}

const heightOf = ({ hung }: DrawnStation): number => (hung === null ? rowHeight.bare : rowHeight.station)

const line = (kind: 'backbone' | 'drop', x1: number, y1: number, x2: number, y2: number): string => element('line', { class: kind, x1, y1, x2, y2 })
const text = (kind: string, x: number, y: number, words: string, anchor: 'start' | 'end' = 'start'): string => element('text', { class: kind, x, y, 'text-anchor': anchor }, escaped(words))

/** Letters of the condensed face are a little more than five units wide at 12 on average, those of the label face seven. */
const letterWidth = { plain: 5.4, tag: 7 } as const
const fitting = (words: string, room: number, letter: keyof typeof letterWidth): string => {
  const most = Math.max(1, Math.floor(room / letterWidth[letter]))
  return words.length <= most ? words : `${words.slice(0, most - 1)}…`
}
const linked = ({ text: words, to }: Label, x: number, y: number, room: number, anchor: 'start' | 'end' = 'start'): string => {
  const written = text('tag', x, y, fitting(words, room, 'tag'), anchor)
  return to === null ? written : element('a', { href: `asfitted:${to}` }, written)
}

function stationRow(station: DrawnStation, y: number, first: boolean, last: boolean): string {
  const { kind, tag, beneath, hung, words } = station
  const height = heightOf(station)
  const middle = y + height / 2
  return [
    line('backbone', spine, first ? middle : y, spine, last ? middle : y + height),
    ...(hung === null ? [] : [line('drop', spine, middle, hang, middle)]),
    mark(kind, middle),
    text('tag', spine - 10, beneath === null ? middle + 4 : middle - 3, fitting(tag, spine - 14, 'tag'), 'end'),
    ...(beneath === null ? [] : [text('said', spine - 10, middle + 11, fitting(beneath, spine - 14, 'plain'), 'end')]),
    ...(words === null ? [] : [text('said', spine + 14, middle + 4, fitting(words, right - spine - 14, 'plain'))]),
    ...(hung === null ? [] : hungText(hung, middle)),
  ].join('')
}

function hungText({ cable, length, item, beside, name }: NonNullable<DrawnStation['hung']>, middle: number): readonly string[] {
  const room = right - hang - 8
  const itemRoom = room - (beside === null ? 0 : beside.length * letterWidth.plain + 10)
  return [
    ...(cable === null ? [] : [linked(cable, spine + 14, middle - 4, hang - spine - 18)]),
    ...(length === null ? [] : [text('said', spine + 14, middle + 14, fitting(length, hang - spine - 18, 'plain'))]),
    element('rect', { class: 'item', x: hang, y: middle - 17, width: right - hang, height: 34 }),
    linked(item, hang + 5, middle - 4, itemRoom),
    ...(beside === null ? [] : [text('said', right - 5, middle - 4, beside, 'end')]),
    text('said', hang + 5, middle + 11, fitting(name, room, 'plain')),
  ]
}

/** Told apart by shape: a bar ends the backbone, a square feeds it, a dot is a tee; where the supply is parted only a thin line goes on, the data. */
function mark(kind: DrawnStation['kind'], y: number): string {
  switch (kind) {
    case 'tee': return element('circle', { class: 'mark', cx: spine, cy: y, r: 4.5 })
    case 'power': return element('rect', { class: 'mark filled', x: spine - 6, y: y - 6, width: 12, height: 12 })
    case 'terminator': return element('rect', { class: 'mark filled', x: spine - 8, y: y - 3.5, width: 16, height: 7 })
    case 'isolator': return element('rect', { class: 'gap', x: spine - 7, y: y - 5, width: 14, height: 10 }) + [-5, 5].map(d => line('drop', spine - 9, y + d, spine + 9, y + d)).join('') + line('drop', spine, y - 5, spine, y + 5)
  }
}

const cableRow = ({ cable, facts }: DrawnCable, zone: DrawnStation['zone']): Row => ({
  height: rowHeight.cable, zone,
  draw: y => line('backbone', spine, y, spine, y + rowHeight.cable) + linked(cable, spine + 14, y + 16, 70) + text('said', hang, y + 16, fitting(facts, right - hang, 'plain')),
})

const headingOf = (zone: NonNullable<DrawnStation['zone']>, through: boolean): Row => ({
  height: rowHeight.zone, zone, heading: true,
  draw: y => (through ? line('backbone', spine, y, spine, y + rowHeight.zone) : '') + text('zone', right, y + 14, fitting(zone.name, right - spine - 14, 'plain'), 'end'),
})

const openEnd = (last: boolean): Row => ({
  height: rowHeight.end, zone: null,
  draw: y => line('backbone', spine, last ? y : y + 12, spine, last ? y + 12 : y + rowHeight.end) + text('said', spine + 14, y + (last ? 14 : 16), 'open end: nothing recorded'),
})

/** At a break: what stands on its other side. */
const marker = (words: string): Row => ({
  height: rowHeight.marker, zone: null,
  draw: y => element('line', { class: 'backbone onward', x1: spine, y1: y, x2: spine, y2: y + rowHeight.marker }) + text('zone', spine + 14, y + 14, words),
})

// --- sheets ----------------------------------------------------------------------------------------------------------
/** As few sheets as hold it, filled alike. */
function sheetsOf(rows: readonly Row[]): readonly (readonly Row[])[] {
  const total = rows.reduce((sum, { height }) => sum + height, 0)
  const share = total / Math.ceil(total / mostHeight)
  const sheets: Row[][] = [[]]
  let filled = 0
  for (const row of rows) {
    // A zone's heading goes with its first station.
    if (sheets.at(-1)!.length > 0 && filled + row.height / 2 > share) {
      const last = sheets.at(-1)!.at(-1)!
      const moves = last.heading === true && sheets.at(-1)!.length > 1
      if (moves) sheets.at(-1)!.pop()
      sheets.push(moves ? [last] : [])
      filled = moves ? last.height : 0
    }
    sheets.at(-1)!.push(row)
    filled += row.height
  }
  return sheets
}

function sheet(title: string, rows: readonly Row[]): string {
  let y = 6
  const placed = rows.map(row => {
    const top = y
    y += row.height
    return { row, top }
  })
  const content = [...bands(placed), ...placed.map(({ row, top }) => row.draw(top))].join('')
  // An image has no parts that a reader could reach, so a drawing with links is a group.
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', class: 'backbone-sheet', viewBox: `0 0 ${width} ${at(y + 6)}`, role: 'group', 'aria-label': title }, content)
}

interface Placed { readonly row: Row; readonly top: number }
/** One shade behind all rows of a zone that follow one another. */
function bands(placed: readonly Placed[]): readonly string[] {
  const found: { readonly key: string; readonly top: number; bottom: number }[] = []
  for (const { row: { zone, height }, top } of placed) {
    const open = found.at(-1)
    if (zone === null) continue
    if (open?.key === zone.key && open.bottom === top) open.bottom = top + height
    else found.push({ key: zone.key, top, bottom: top + height })
  }
  return found.map(({ top, bottom }) => element('rect', { class: 'band', x: 1, y: top, width: width - 2, height: bottom - top }))
}
