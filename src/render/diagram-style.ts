/**
 * How the pack's diagrams look: ink on white paper, thin boxes, right-angled lines. Where a box has several rows of
 * words, the first is its designation and set bold. Accents come only from the `classDef` lines of a diagram's source.
 */
import type { MermaidConfig } from 'mermaid'

const inkColour = '#1b2a33'
/** The second has the Greek and Cyrillic letters that the first lacks. */
const fontFamilies = ['"IBM Plex Sans Condensed"', '"IBM Plex Sans"'] as const

/**
 * Diagrams are laid out with large letters and shown smaller: the layout keeps fixed distances between boxes, which
 * large letters make narrow. At its natural size a diagram has letters of 14 px on the page (10.5 pt in print).
 * All lengths below, and those in the `classDef` lines of a source, are units of the drawing.
 */
const letterHeight = 24
export const pxPerUnit = 14 / letterHeight

/** Faces to have at hand before anything is measured, as CSS `font` values. */
export const diagramFontFaces = fontFamilies.flatMap(name => [400, 600].map(weight => `${weight} ${letterHeight}px ${name}`))

export const mermaidConfig = {
  startOnLoad: false,
  // Any other level drops links with a scheme of our own. What comes out is rebuilt from a short list of elements.
  securityLevel: 'loose',
  suppressErrorRendering: true,
  deterministicIds: true,
  maxTextSize: 500_000,
  maxEdges: 2000,
  layout: 'elk',
  // A box keeps a place of its own for each line that reaches it: lines that only meet at a box must not look joined.
  elk: { mergeEdges: false, nodePlacementStrategy: 'BRANDES_KOEPF', nodePlacementAlignment: 'NONE' },
  theme: 'base',
  look: 'classic',
  // Some outlines are made of strokes with random handles.
  handDrawnSeed: 1,
  htmlLabels: false,
  fontFamily: [...fontFamilies, 'sans-serif'].join(', '),
  fontSize: letterHeight,
  flowchart: { curve: 'linear', padding: 12, wrappingWidth: 480, minNodeWidth: 130, diagramPadding: 4 },
  themeVariables: {
    fontSize: `${letterHeight}px`,
    primaryColor: '#ffffff', primaryTextColor: inkColour, primaryBorderColor: inkColour,
    lineColor: inkColour, clusterBkg: '#ffffff', clusterBorder: inkColour, edgeLabelBackground: '#ffffff',
  },
  themeCSS: `
    .node rect, .node polygon, .node circle, .node ellipse, .node path, .edgePaths path, .flowchart-link { stroke-width: 2px; }
    .edgePaths path.edge-thickness-thick { stroke-width: 4.5px; }
    .edgePaths path.edge-pattern-dotted { stroke-dasharray: 6 5; }
    .edgeLabel rect.background { opacity: 1; stroke: #ffffff; stroke-width: 4px; }
    .node tspan.row:first-child:not(:last-child) tspan, .cluster-label tspan { font-weight: 600; }
    .cluster rect { fill: none; stroke: #71808a; stroke-width: 1.6px; stroke-dasharray: 16 6 3 6; }
    .cluster-label text { fill: #4a5963; paint-order: stroke; stroke: #ffffff; stroke-width: 6px; }
  `,
} as const satisfies MermaidConfig
