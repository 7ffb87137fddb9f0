/** What outlines and lines mean, drawn with the outlines and lines themselves. */
import type { Diagram } from '../view-model.js'
import { type Box, legendEntries, type Line, mermaidText, type Stroke } from './mermaid-text.js'

const strokes: readonly (readonly [Stroke, string])[] = [
  ['plain', 'Cable, with its tag and size'],
  ['heavy', 'Backbone of a bus, or a port that powers its device'],
  ['broken', 'Listed as a load; no cable recorded'],
]

export function legendDiagram(): Diagram {
  const outlines = legendEntries.map(({ is, meaning }): Box => ({ key: is, is, tag: meaning, beside: [], below: [], page: null }))
  const ends = strokes.map(([stroke, meaning]) => ({
    boxes: [`from ${stroke}`, `to ${stroke}`].map((key, i): Box => ({ key, is: 'load', tag: i === 0 ? 'Line' : meaning, beside: [], below: [], page: null })),
    line: { from: `from ${stroke}`, to: `to ${stroke}`, label: [], stroke } satisfies Line,
  }))
  return {
    is: 'diagram',
    id: 'legend',
    about: null,
    caption: 'Outlines and lines used in the diagrams',
    mermaid: mermaidText({
      direction: 'left to right', straight: false, frames: [],
      boxes: [...outlines, ...ends.flatMap(({ boxes }) => boxes)], lines: ends.map(({ line }) => line),
    }),
    description: [[...legendEntries.map(({ meaning }) => meaning), ...strokes.map(([stroke, meaning]) => `${stroke} line: ${meaning}`)].join('; '), '.'],
  }
}
