/** What the tests of the diagrams share. */
import { calculate } from '../../../src/calculate/calculate.js'
import type { Results } from '../../../src/model/results.js'
import type { Vessel } from '../../../src/model/vessel.js'
import { bases } from '../../../src/references/basis/bases.js'
import { siteMap } from '../../../src/view/site-map.js'
import { plainText } from '../../../src/view/tables.js'
import type { Diagram, PageKey } from '../../../src/view/view-model.js'

type Maker = (vessel: Vessel, results: Results, address: (tag: string) => PageKey | null) => readonly Diagram[]

export const diagramsOf = (maker: Maker, vessel: Vessel): readonly Diagram[] =>
  maker(vessel, calculate(vessel, bases[vessel.basis]), siteMap(vessel).addressOf)

/** With ordinary spaces between numbers and units. */
export const inWords = ({ description }: Diagram): string => plainText(description).replaceAll('\u00A0', ' ')

/** The boxes of a mermaid text as `A1.7 · 10 A / Helm display`, by their node ids. */
export function boxesIn(mermaid: string): ReadonlyMap<string, string> {
  return new Map([...mermaid.matchAll(/^ {2}(n\w+)\["([^"]*)"\]$/gm)].map(([, id, label]) => [id!, label!.replaceAll('<br/>', ' / ')]))
}

/** The lines of a mermaid text as `G1 -- W1 / 70 mm² -- F1`: tags of the boxes at both ends, what is written between. */
export function linesIn(mermaid: string): readonly string[] {
  const tags = new Map([...boxesIn(mermaid)].map(([id, label]) => [id, label.split(/ · | \/ /)[0]!]))
  return [...mermaid.matchAll(/^ {2}(n\w+) (---|===|-\.-)(?:\|"([^"]*)"\|)? (n\w+)$/gm)].map(([, from, arm, label = '', to]) =>
    `${tags.get(from!)} ${arm} ${label.replaceAll('<br/>', ' / ')}${label === '' ? '' : ' '}${arm} ${tags.get(to!)}`)
}
