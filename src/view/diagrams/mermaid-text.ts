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
/** `heavy`: more than a plain connection (a backbone, a powered port). `broken`: listed, but no cable is recorded. */
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

/** `straight`: chains run straight. `balanced`: a box stands in the middle of what hangs on it. */
export type Placement = 'straight' | 'balanced'
export type Direction = 'left to right' | 'top down'
export interface Drawing {
  readonly direction: Direction
  readonly boxes: readonly Box[]
  readonly lines: readonly Line[]
  readonly frames: readonly Frame[]
  readonly placement: Placement
}

/** Characters in a row of lettering before a name goes on in the next row. */
const rowLength = 24
/** The same for the title of a frame: a longer row would stick out beside narrow boxes. */
export const titleLength = 20

interface ClassStyle { readonly shape: string; readonly style: string; readonly name: string; readonly examples: string | null }
const ink = '#1b2a33'
const outline = (width: number, more = '') => `fill:#ffffff,stroke:${ink},stroke-width:${width}px,color:${ink}${more}`
const classStyles: Readonly<Record<BoxClass, ClassStyle>> = {
  source: { shape: 'lin-rect', style: outline(4), name: 'Source', examples: 'battery, charger, alternator' },
  protection: { shape: 'fr-rect', style: outline(2), name: 'Protective device', examples: 'fuse, circuit breaker, electronic channel' },
  switch: { shape: 'rect', style: outline(2), name: 'Switch', examples: 'isolator, contactor, float switch' },
  busbar: { shape: 'rect', style: `fill:${ink},stroke:${ink},stroke-width:2px,color:#ffffff`, name: 'Busbar', examples: null },
  panel: { shape: 'win-pane', style: outline(3), name: 'Panel', examples: 'breaker panel, fuse panel, fuse block' },
  module: { shape: 'notch-rect', style: outline(3), name: 'Electronic module', examples: 'switching module, network switch' },
  load: { shape: 'rounded', style: outline(2), name: 'Equipment', examples: null },
  junction: { shape: 'stadium', style: outline(2), name: 'Junction', examples: 'terminals, junction box, shunt, tee, terminator' },
  reference: { shape: 'rounded', style: outline(2, ',stroke-dasharray:5 4'), name: 'Reference', examples: 'drawn in full elsewhere' },
}

/** What each outline means, for the legend and the page on how to read the drawings. */
export const legendEntries: readonly { readonly is: BoxClass; readonly name: string; readonly examples: string | null }[] =
  (Object.keys(classStyles) as BoxClass[]).map(is => ({ is, name: classStyles[is].name, examples: classStyles[is].examples }))

/** A word of letters, digits and underscores, different for different texts: any other character is its code point between underscores. */
export const wordOf = (text: string): string =>
  text.replace(/[^A-Za-z0-9]/gu, character => `_${character.codePointAt(0)!.toString(16)}_`)
// A letter first: a bare "end" is a keyword, and an "o" or "x" after a line is its tip.
const nodeId = (key: string): string => `n${wordOf(key)}`
const frameId = (key: string): string => `f${wordOf(key)}`

/**
 * Text that mermaid prints as it stands, whether it draws labels as HTML or as SVG text. Inside quotes most marks mean
 * nothing to it. Angle brackets and ampersands become the three references that it always reads. What would begin one of
 * its codes, a line break, a formula, an icon or a directive is parted by a word joiner, which is not seen. Straight double
 * quotes would end the label, and only some of its labels read a code for them: they become the quotes of print.
 */
export function escaped(text: string): string {
  return text
    .replace(/[\s\p{Cc}\p{Cs}]+/gu, ' ')
    .trim()
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/(^|[\s([])"/g, '$1\u201C')
    .replace(/"/g, '\u201D')
    .replace(/#(?=\w+;)|\\|\$(?=\$)|%(?=%)|:(?=fa-)|\uFB02(?=\u00B0)|\u00B6(?=\u00DF)/g, `$&${wordJoiner}`)
}
const wordJoiner = '\u2060'

function quoted(lines: readonly string[]): string {
  const label = lines.map(escaped).join('<br/>')
  // mermaid takes "style…:…#…;" for one of its own lines, wherever it stands.
  const words = label.includes('#') ? label.replace(/styl(?=e)|classDe(?=f)/g, `$&${wordJoiner}`) : label
  return `"${words}"`
}

/** The rows of lettering in a box. Broken here and not by mermaid, which would part a number from its unit. */
export const rowsOf = ({ tag, beside, below }: Box): readonly string[] =>
  [...filled([tag, ...beside], ' · '), ...below.flatMap(text => filled(text.split(' '), ' '))]

/** Words in rows no longer than `length` where a single word is not. */
export function filled(words: readonly string[], between: string, length = rowLength): readonly string[] {
  const rows: string[] = []
  for (const word of words) {
    const last = rows.at(-1)
    if (last !== undefined && last.length + between.length + word.length <= length) rows[rows.length - 1] = last + between + word
    else rows.push(word)
  }
  return rows
}

function lineText({ from, to, label, stroke }: Line): string {
  const arm = { plain: '---', heavy: '===', broken: '-.-' }[stroke]
  return `  ${nodeId(from)} ${arm}${label.length === 0 ? '' : `|${quoted(label)}|`} ${nodeId(to)}`
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

const alignments = { straight: 'LEFTUP', balanced: 'BALANCED' } as const

/** The mermaid text of a drawing. The geometry is in it; fonts and what else all drawings share are the renderer's. */
export function mermaidText({ direction, boxes, lines, frames, placement }: Drawing): string {
  const used = (Object.keys(classStyles) as BoxClass[]).filter(is => boxes.some(box => box.is === is))
  return [
    '---',
    'config:',
    '  flowchart:',
    '    wrappingWidth: 2000',
    '  elk:',
    '    nodePlacementStrategy: BRANDES_KOEPF',
    `    nodePlacementAlignment: ${alignments[placement]}`,
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
    '',
  ].join('\n')
}
