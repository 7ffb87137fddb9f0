/** What outlines and lines mean, drawn with the outlines and lines themselves. */
import type { Diagram } from '../view-model.js'
import { type Box, legendEntries, type Line, mermaidText } from './mermaid-text.js'

const lines: readonly Line[] = [
  { from: 'source', to: 'protection', label: ['cable tag', 'size'], stroke: 'plain' },
  { from: 'protection', to: 'switch', label: [], stroke: 'plain' },
  { from: 'switch', to: 'busbar', label: [], stroke: 'plain' },
  { from: 'module', to: 'load', label: ['port that powers', 'its device, or', 'backbone of a bus'], stroke: 'heavy' },
  { from: 'panel', to: 'junction', label: [], stroke: 'plain' },
  { from: 'junction', to: 'reference', label: ['listed as a load,', 'no cable recorded'], stroke: 'broken' },
]

export function legendDiagram(): Diagram {
  const boxes = legendEntries.map(({ is, name, examples }): Box =>
    ({ key: is, is, tag: name, beside: [], below: examples === null ? [] : [examples], page: null }))
  const outlines = legendEntries.map(({ name, examples }) => (examples === null ? name : `${name} (${examples})`))
  return {
    is: 'diagram',
    id: 'legend',
    about: null,
    caption: 'Outlines and lines used in the diagrams',
    mermaid: mermaidText({
      direction: 'top down',
      placement: 'balanced',
      frames: [{ key: 'frame', title: ['Frame: zone, or panel', 'or busbar with what', 'sits on it'], boxKeys: ['module', 'load'] }],
      boxes,
      lines,
    }),
    description: [
      `Each outline has its meaning: ${outlines.join('; ')}. A plain line is a cable with its tag and size, or devices that sit on each other; ` +
      'a heavy line is a port that powers its device, or the backbone of a bus; a broken line leads to a load that is listed but that no ' +
      'recorded cable reaches. A chain-dotted frame is a zone, or a panel or busbar with the devices that sit on it.',
    ],
  }
}
