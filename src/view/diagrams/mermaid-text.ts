/**
 * A drawing of boxes and lines, and the mermaid text that draws it. All that is mermaid's own (escaping, node ids,
 * classes, links) is in this file; what the boxes stand for is not.
 */
import type { PageKey } from '../view-model.js'

/** What a box stands for decides its outline, after the idea of IEC 60617 where mermaid has something near. */
export type BoxClass = 'source' | 'protection' | 'switch' | 'busbar' | 'panel' | 'module' | 'load' | 'junction' | 'reference'

export interface Box {
  /** Unique in the drawing: a tag, or a tag with its terminal. */
  readonly key: string
  readonly is: BoxClass
  /** The designation, first. */
  readonly tag: string
  /** What stands beside it on the first line: rating, size, way. */
  readonly beside: readonly string[]
  /** Lines below the first. */
  readonly below: readonly string[]
  readonly page: PageKey | null
}
/** `heavy`: more than a plain connection (a backbone, a powered port). `broken`: listed, but no cable is recorded; or normally open. */
export type Stroke = 'plain' | 'heavy' | 'broken'
export interface Line {
  readonly from: string
  readonly to: string
  /** The first is the cable's tag; empty where nothing is written on the line. */
  readonly label: readonly string[]
  readonly stroke: Stroke
}
/** A frame around boxes, with the rows of its title. */
export interface Frame { readonly key: string; readonly title: readonly string[]; readonly boxKeys: readonly string[] }

export type Direction = 'left to right' | 'top down'
export interface Drawing {
  readonly direction: Direction
  readonly boxes: readonly Box[]
  readonly lines: readonly Line[]
  readonly frames: readonly Frame[]
  /** Holds one long chain straight, where the balance of the whole would bend it. */
  readonly straight: boolean
}

/** Characters in a row of lettering before a name goes on in the next row. */
const rowLength = 24

interface ClassStyle { readonly shape: string; readonly style: string; readonly meaning: string }
const ink = '#1b2a33'
const outline = (width: number, more = '') => `fill:#ffffff,stroke:${ink},stroke-width:${width}px,color:${ink}${more}`
const classStyles: Readonly<Record<BoxClass, ClassStyle>> = {
  source: { shape: 'lin-rect', style: outline(3.4), meaning: 'Battery or other source' },
  protection: { shape: 'fr-rect', style: outline(1.7), meaning: 'Fuse, circuit breaker or electronic channel of a circuit' },
  switch: { shape: 'rect', style: outline(1.7), meaning: 'Switch or isolator' },
  busbar: { shape: 'rect', style: `fill:${ink},stroke:${ink},stroke-width:1.7px,color:#ffffff`, meaning: 'Busbar' },
  panel: { shape: 'win-pane', style: outline(2.4), meaning: 'Panel or fuse block' },
  module: { shape: 'notch-rect', style: outline(2.4), meaning: 'Electronic module: switching module or network switch' },
  load: { shape: 'rounded', style: outline(1.7), meaning: 'Equipment' },
  junction: { shape: 'stadium', style: outline(1.7), meaning: 'Junction: terminal block, junction box, shunt, tee, terminator' },
  reference: { shape: 'rounded', style: outline(1.7, ',stroke-dasharray:5 4'), meaning: 'Shown on another sheet or in another system' },
}

/** What each outline means, for the page on how to read the drawings. */
export const legendEntries: readonly { readonly is: BoxClass; readonly meaning: string }[] =
  (Object.keys(classStyles) as BoxClass[]).map(is => ({ is, meaning: classStyles[is].meaning }))

/** A word of letters, digits and underscores, different for different texts: any other character is its code point between underscores. */
export const wordOf = (text: string): string =>
  text.replace(/[^A-Za-z0-9]/gu, character => `_${character.codePointAt(0)!.toString(16)}_`)
// A letter first: a bare "end" is a keyword, and an "o" or "x" after a line is its tip.
const nodeId = (key: string): string => `n${wordOf(key)}`
const frameId = (key: string): string => `f${wordOf(key)}`

/**
 * Text that mermaid prints as it stands. Inside quotes most marks mean nothing to it and are left, so that the source
 * stays readable; the others become codes of its own, `#code point;`: quotes and angle brackets always, the rest where
 * they would begin a code, a reference, a line break, a formula, an icon or a directive.
 */
export function escaped(text: string): string {
  return text
    .replace(/[\s\p{Cc}\p{Cs}]+/gu, ' ')
    .trim()
    .replace(/["<>\\\uFB02\u00B6]|#(?=\w+;)|&(?=#?\w+;)|\$(?=\$)|%(?=%)|:(?=fa-)/g, codeOf)
    // mermaid takes "style…:…#…;" for one of its own lines, wherever it stands.
    .replace(/:(?=\S*#)/g, codeOf)
}
const codeOf = (character: string): string => `#${character.codePointAt(0)};`

const quoted = (lines: readonly string[]): string => `"${lines.map(escaped).join('<br/>')}"`

/** The rows of lettering in a box. Broken here and not by mermaid, which would part a number from its unit. */
export const rowsOf = ({ tag, beside, below }: Box): readonly string[] =>
  [...filled([tag, ...beside], ' · '), ...below.flatMap(text => filled(text.split(' '), ' '))]

function filled(words: readonly string[], between: string): readonly string[] {
  const rows: string[] = []
  for (const word of words) {
    const last = rows.at(-1)
    if (last !== undefined && last.length + between.length + word.length <= rowLength) rows[rows.length - 1] = last + between + word
    else rows.push(word)
  }
  return rows
}

function lineText({ from, to, label, stroke }: Line): string {
  const arm = { plain: '---', heavy: '===', broken: '-.-' }[stroke]
  return `  ${nodeId(from)} ${arm}${label.length === 0 ? '' : `|${quoted(label)}|`} ${nodeId(to)}`
}

/** Lines are named by their number. */
function heavyLines(lines: readonly Line[]): readonly string[] {
  const numbers = lines.flatMap(({ stroke }, i) => (stroke === 'heavy' ? [i] : []))
  return numbers.length === 0 ? [] : [`  linkStyle ${numbers.join(',')} stroke-width:4px`]
}

function boxText(box: Box): readonly string[] {
  const id = nodeId(box.key)
  return [
    `  ${id}[${quoted(rowsOf(box))}]`,
    `  ${id}@{ shape: ${classStyles[box.is].shape} }`,
    `  class ${id} ${box.is}`,
    ...(box.page === null ? [] : [`  click ${id} href "asfitted:${box.page}"`]),
  ]
}

/** The mermaid text of a drawing. The geometry is in it; fonts and what else all drawings share are the renderer's. */
export function mermaidText({ direction, boxes, lines, frames, straight }: Drawing): string {
  const used = (Object.keys(classStyles) as BoxClass[]).filter(is => boxes.some(box => box.is === is))
  return [
    '---',
    'config:',
    '  flowchart:',
    '    wrappingWidth: 2000',
    '  elk:',
    '    nodePlacementStrategy: BRANDES_KOEPF',
    `    nodePlacementAlignment: ${straight ? 'LEFTUP' : 'BALANCED'}`,
    '    straightenEdges: true',
    '---',
    `flowchart ${direction === 'top down' ? 'TB' : 'LR'}`,
    ...used.map(is => `  classDef ${is} ${classStyles[is].style}`),
    ...boxes.flatMap(boxText),
    ...frames.flatMap(({ key, title, boxKeys }) => [
      `  subgraph ${frameId(key)}[${quoted(title)}]`,
      ...boxKeys.map(boxKey => `    ${nodeId(boxKey)}`),
      '  end',
    ]),
    ...lines.map(lineText),
    ...heavyLines(lines),
    '',
  ].join('\n')
}
