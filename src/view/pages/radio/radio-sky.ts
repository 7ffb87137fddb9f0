/** What of the sky the antennas for position and satellites see. */
import { cite } from '../../../references/bibliography.js'
import type { SkyView } from '../../../model/results/radio.js'
import { skyCitation, skyFromElevationDeg } from '../../../references/basis/radio-rules.js'
import { say, sayAgainst } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { tableOf } from '../../tables.js'
import { joined, muted, verdict } from '../../text.js'
import type { Block, Text } from '../../view-model.js'
import { workingOf } from '../../parts/working.js'

export function skyBlocks(context: ViewContext): readonly Block[] {
  const { skies } = context.results.radio
  if (skies.length === 0) return []
  const sectors = skies.flatMap(({ tag, sectors: of }) => of.map(sector => ({ tag, ...sector })))
  return [
    { is: 'heading', text: 'View of the sky', anchor: 'sky' },
    tableOf(skies, {
      id: 'radio-sky',
      caption: 'Share of the sky that structures hide',
      empty: '',
      level: ({ comparison }) => (comparison?.within === false ? 'warning' : null),
      columns: [
        { title: 'Antenna', width: 'text', cell: ({ tag }) => context.named(tag) },
        { title: 'Hidden', width: 'number', cell: ({ blockedPercent }) => (blockedPercent === null ? [muted('not assessed')] : [say('blockedPercent', blockedPercent)]) },
        { title: 'Planning value', width: 'text', cell: sky => planningText(context, sky) },
      ],
      note: [
        `The sky from ${say('skyFromElevationDeg', skyFromElevationDeg)} above the horizon to overhead (${cite(skyCitation)}), against the boxes of the recorded structures. People, sails and other antennas are left out. `
        + 'The planning values are common practice without a source.',
      ],
    }),
    ...(sectors.length === 0 ? [] : [tableOf(sectors, {
      id: 'radio-sky-sectors',
      caption: 'Where the sky is hidden',
      empty: '',
      columns: [
        { title: 'Antenna', width: 'tag', cell: ({ tag }) => [context.tag(tag)] },
        { title: 'Clockwise from the bow', width: 'short', cell: ({ fromDeg, toDeg }) => [`${say('bearingDeg', fromDeg)} to ${say('bearingDeg', toDeg)}`] },
        { title: 'Up to', width: 'number', cell: ({ highestElevationDeg }) => [say('highestElevationDeg', highestElevationDeg)] },
        { title: 'By', width: 'text', cell: ({ structureTags }) => joined(structureTags.map(context.named)) },
        { title: 'Of the sky', width: 'number', cell: ({ blockedPercent }) => [say('blockedPercent', blockedPercent)] },
      ],
    })]),
  ]
}

export const skyWorkings = (context: ViewContext): readonly Block[] => context.results.radio.skies.flatMap(({ tag, example }) =>
  (example === null ? [] : [workingOf(context, `Sky hidden from ${tag} at ${example.bearingDeg}° from the bow, one step of the sum`, example.outcome)]))

function planningText({ vessel }: ViewContext, { comparison, gap }: SkyView): Text {
  if (comparison === null) return [muted(gap ?? '')]
  return [`at most ${sayAgainst('blockedPercent', comparison.value, comparison.limit.value, vessel).limit} `, verdict(comparison.within ? 'good' : 'warning', comparison.within ? 'within' : 'more is hidden')]
}
