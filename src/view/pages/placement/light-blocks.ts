/** Navigation lights: which there must be, how far and over what each shows, how high it stands, what hides it. */
import type { LightPlacement } from '../../../model/results/placement.js'
import { slug } from '../../../model/address.js'
import { cite } from '../../../references/bibliography.js'
import { arcCitation, lightTypes } from '../../../references/tables/navigation-lights.js'
import { say } from '../../../units/format.js'
import { comparisonText } from '../../parts/assessment.js'
import type { ViewContext } from '../../context.js'
import { mostRings, type SectorRing, sectorPlot } from '../../drawings/sector-plot.js'
import { byTag, tableOf } from '../../tables.js'
import { dash, joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Drawing, Table, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'
import { hiddenTable, sectorText } from './bearings.js'

export function lightBlocks(context: ViewContext): readonly Block[] {
  const { lights: { lights, required, lengthClass } } = context.results.placement
  if (lights.length === 0 && required.length === 0) return []
  const { propulsion, lengthM } = context.vessel.identity
  const sorted = lights.toSorted(byTag)
  return [
    { is: 'heading', text: 'Navigation lights', anchor: 'navigation-lights' },
    {
      is: 'paragraph', text: [
        ...(lengthClass === null || lengthM === null ? [] : [`Held against the collision regulations for a ${propulsion ?? 'vessel of unknown propulsion'}${propulsion === null ? '' : ' vessel'} of ${lengthClass} (she is ${say('lengthM', lengthM, context.vessel)}). `]),
        'What a light must be like and where it must stand is for the flag state to decide and to approve; this page helps to see what to look at. Figures marked “from memory” are to be confirmed.',
      ],
    },
    ...(required.length === 0 ? [] : [requiredTable(context)]),
    ...(sorted.length === 0 ? [] : [lightTable(context, sorted), placeTable(context, sorted)]),
    ...lightDrawings(context, sorted),
    ...sorted.filter(({ obscured }) => (obscured?.by.length ?? 0) > 0).map(light => hiddenTable(context, light.obscured!.by, { id: `light-hidden-${slug(light.tag)}`, caption: `What hides ${light.tag}, ${titleOf(light)}` })),
    ...intensityWorkings(context, sorted),
  ]
}

const titleOf = ({ kind }: LightPlacement): string => lightTypes[kind].title.toLowerCase()
const uniqueCites = (citations: readonly string[]): string => [...new Set(citations)].join('; ')

function requiredTable(context: ViewContext): Table {
  const { required } = context.results.placement.lights
  return tableOf(required, {
    id: 'lights-required',
    caption: 'Lights that she must have',
    empty: '',
    level: ({ state }) => (state === 'missing' ? 'error' : null),
    columns: [
      { title: 'Light', width: 'text', cell: ({ what }) => [what] },
      { title: 'When', width: 'short', cell: ({ when }) => [when] },
      { title: 'Recorded', width: 'text', cell: ({ state, tags }) => (state === 'there' ? joined(tags.map(tag => [context.tag(tag)])) : [verdict(state === 'missing' ? 'error' : 'not assessed', state)]) },
    ],
    note: [`${uniqueCites(required.map(({ citation }) => cite(citation)))}. Lights for towing, fishing, pilots and vessels not under command are not looked at.`],
  })
}

function lightTable(context: ViewContext, lights: readonly LightPlacement[]): Table {
  return tableOf(lights, {
    id: 'lights',
    caption: 'Range, intensity and sector',
    empty: '',
    level: ({ range, intensityComparison, arc, onWrongSide, obscured }) => (range?.within === false || intensityComparison?.within === false || arc?.alike === false || onWrongSide ? 'error' : obscured?.comparison.within === false ? 'warning' : null),
    columns: [
      { title: 'Light', width: 'text', cell: light => [...context.named(light.tag), muted(`, ${titleOf(light)}, ${lightTypes[light.kind].colours.join(', ')}`), ...(light.onWrongSide ? [' ', verdict('error', 'on the wrong side')] : [])] },
      { title: 'Range', width: 'short', cell: ({ range }) => (range === null ? [muted('not assessed')] : comparisonText(range, context)) },
      { title: 'Intensity', width: 'short', cell: ({ intensityComparison }) => (intensityComparison === null ? dash : comparisonText(intensityComparison, context)) },
      { title: 'Shows over', width: 'short', cell: arcText },
      { title: 'Hidden', width: 'short', cell: ({ obscured }) => (obscured === null ? [muted('not assessed')] : comparisonText(obscured.comparison, context)) },
    ],
    note: [
      `${uniqueCites([...lights.flatMap(({ range, intensityComparison, obscured }) => [range, intensityComparison, obscured?.comparison ?? null].flatMap(each => (each === null ? [] : [cite(each.limit.citation)]))), `sectors: ${cite(arcCitation)}`])}. `
      + 'Hidden: by the structures recorded, within 5° above and below the horizontal, over the part of the sector where the light must be seen in full. An anchor light is to stand as high as practicable.',
    ],
  })
}

function arcText({ arc, sector }: LightPlacement): Text {
  const shown: Text = [say('arcDeg', sector.widthDeg), ...(sector.widthDeg >= 360 ? [] : [lineBreak, muted(sectorText(sector))])]
  return arc?.alike === false ? [say('arcDeg', arc.arcDeg), muted(` must be ${say('arcDeg', arc.ruleArcDeg)}`), ' ', verdict('error', 'differs')] : shown
}

function placeTable(context: ViewContext, lights: readonly LightPlacement[]): Table {
  const rows = lights.flatMap(({ tag, places }) => places.map(place => ({ tag, place })))
  return tableOf(rows, {
    id: 'light-places',
    caption: 'Heights and places',
    empty: 'No rule for the place of a light could be held against the positions recorded.',
    level: ({ place }) => (place.comparison.within ? null : 'warning'),
    columns: [
      { title: 'Light', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
      { title: 'Stands', width: 'text', cell: ({ place }) => comparisonText(place.comparison, context) },
      { title: 'How', width: 'text', cell: ({ place }) => [place.words] },
    ],
    note: rows.length === 0 ? [] : [`${uniqueCites(rows.map(({ place }) => cite(place.comparison.limit.citation)))}. The height of the gunwale stands for the hull.`],
  })
}

function lightDrawings(context: ViewContext, lights: readonly LightPlacement[]): readonly Drawing[] {
  const sheets = Array.from({ length: Math.ceil(lights.length / mostRings) }, (_, i) => lights.slice(i * mostRings, (i + 1) * mostRings))
  return sheets.map((sheet, i) => ({
    is: 'drawing' as const,
    id: `light-sectors${i === 0 ? '' : `-${i + 1}`}`,
    caption: `Sectors of the navigation lights${sheets.length === 1 ? '' : `, ${i + 1} of ${sheets.length}`}`,
    svg: sectorPlot({ title: 'Sectors of the navigation lights, seen from above', rings: sheet.map(light => ringOf(context, light)), hiddenMeans: 'hidden by a structure' }),
    description: joined(sheet.map((light): Text => [
      context.tag(light.tag), ` shows ${lightTypes[light.kind].colours.join(', ')} ${light.sector.widthDeg >= 360 ? 'all round' : `from ${sectorText(light.sector)}`}`,
      ...(light.obscured === null || light.obscured.sectors.length === 0 ? ['.'] : [`, hidden ${light.obscured.sectors.map(sectorText).join(', ')}.`]),
    ]), ' '),
  }))
}

const starboard = { fromDeg: 0, widthDeg: 112.5 } as const
const port = { fromDeg: 247.5, widthDeg: 112.5 } as const
const astern = { fromDeg: 112.5, widthDeg: 135 } as const

function ringOf(context: ViewContext, { tag, kind, sector, obscured }: LightPlacement): SectorRing {
  const [first] = lightTypes[kind].colours
  const sides = [{ sector: port, colour: 'red' as const }, { sector: starboard, colour: 'green' as const }]
  return {
    name: `${tag} ${context.nameOf(tag) ?? ''}: ${lightTypes[kind].colours.join(', ')}`,
    shown: kind === 'both sides' ? sides : kind === 'tricolour' ? [...sides, { sector: astern, colour: 'white' }] : [{ sector, colour: first ?? 'white' }],
    hidden: obscured?.sectors ?? [],
  }
}

/** One for each range that is asked for. */
function intensityWorkings(context: ViewContext, lights: readonly LightPlacement[]): readonly Block[] {
  const byRange = new Map(lights.flatMap(({ intensity }) => (intensity?.status === 'computed' ? [[intensity.input.rangeNmi, intensity] as const] : [])))
  return [...byRange].toSorted(([a], [b]) => a - b).map(([rangeNmi, intensity]) => {
    const printed = lights.find(({ intensityComparison, range }) => intensityComparison !== null && range?.limit.value === rangeNmi)?.intensityComparison
    return workingOf(context, `Intensity for ${say('rangeNmi', rangeNmi)}`, intensity, {
      limit: printed === undefined || printed === null ? null : [`The table of the law prints ${say('intensityCd', printed.limit.value)}; lights are held against that.`],
    })
  })
}
