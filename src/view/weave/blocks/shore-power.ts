/** The shore connection for whoever plugs it in: which inlet, which breaker, and what may run together. */
import { isThere } from '../../../model/lookup.js'
import type { AcSource } from '../../../model/results/ac-supply.js'
import type { Tag } from '../../../model/vessel.js'
import { say } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { circuitPlace, protectionText } from '../../parts/circuit-parts.js'
import { placeText } from '../../parts/item-parts.js'
import { tableOf } from '../../tables.js'
import { counted, joined, lineBreak, notRecorded, orNotRecorded } from '../../text.js'
import type { Block, Text } from '../../view-model.js'

const inlets = ({ results }: ViewContext): readonly AcSource[] => results.acSupply.sources.filter(({ kind }) => kind === 'shore inlet')

export function shoreInlets(context: ViewContext): readonly Block[] {
  const items = context.vessel.equipment.filter(item => item.kind === 'shore inlet' && isThere(item))
  const of = (tag: Tag) => inlets(context).find(source => source.tag === tag)
  return items.map((item): Block => {
    const source = of(item.tag)
    const mains = (source?.shore?.mains ?? []).flatMap(({ circuitTag }) => context.lookup.circuits.get(circuitTag) ?? [])
    return {
      is: 'facts', caption: null, entries: [
        { label: 'Shore inlet', value: [...context.named(item.tag), ', ', ...placeText(context, item)] },
        { label: 'It gives', value: orNotRecorded(source?.ratedCurrentA == null ? null : `${say('nominalVoltageV', source.nominalVoltageV)}, ${say('ratedCurrentA', source.ratedCurrentA)} at most`) },
        {
          label: 'Main breaker on board', value: mains.length === 0 ? [notRecorded] : joined(mains.map(circuit =>
            [context.tag(circuit.tag), ` ${circuit.name}, ${protectionText(circuit)}, `, ...circuitPlace(context, circuit, { withAccess: true })]), lineBreak),
        },
        { label: 'Polarity is shown by', value: item.polarityIndicatorTag === null ? [notRecorded] : lampText(context, item.polarityIndicatorTag) },
      ],
    }
  })
}

function lampText(context: ViewContext, tag: Tag): Text {
  const lamp = context.lookup.items.get(tag)
  return lamp === undefined ? context.named(tag) : [...context.named(tag), ', ', ...placeText(context, lamp)]
}

export const shoreTogether = (context: ViewContext): readonly Block[] => inlets(context).flatMap(source => togetherBlocks(context, source))

function togetherBlocks(context: ViewContext, source: AcSource): readonly Block[] {
  const { parts, unknownTags } = source.connected
  return [
    tableOf(parts, {
      id: `together-${source.tag.toLowerCase().replace(/\W+/g, '-')}`,
      caption: `What draws on ${source.tag}`,
      empty: 'Nothing of a known current is connected to it.',
      columns: [
        { title: 'Load', width: 'text', cell: ({ tag }) => context.named(tag) },
        { title: 'Breaker', width: 'tag', cell: ({ circuitTag }) => [context.tag(circuitTag)] },
        { title: 'Takes, at most', width: 'number', cell: ({ powerVa }) => [say('currentA', powerVa / source.nominalVoltageV)] },
      ],
      note: unknownTags.length === 0 ? [] : [`Not counted, since what they take is not recorded: ${unknownTags.join(', ')}.`],
    }),
    { is: 'paragraph', text: togetherText(context, source) },
  ]
}

function togetherText(context: ViewContext, { rating, together, connected: { parts } }: AcSource): Text {
  if (rating.status === 'not computed') return [`What may run together is not assessed: ${rating.reason}.`]
  const limit = `For hours take no more than ${say('workingCurrentA', rating.input.shareFactor * rating.input.ratedCurrentA)} from it. `
  if (together === null) return [limit, 'Which of these may run together is not assessed, since what some of them take is not recorded.']
  if (together.length === 0) return [limit, 'Each of these takes more than that: run none of them for hours.']
  const sizes = new Set(together.map(({ length }) => length))
  const [size = 0] = sizes
  if (together.length === 1 && size === parts.length) return [limit, 'All of these may run at the same time.']
  const isAnyOf = sizes.size === 1 && together.length === combinations(parts.length, size)
  if (isAnyOf) return [limit, size === 1 ? 'Run one of these at a time.' : `Run any ${inNumberWords(size)} of these at a time, not ${inNumberWords(size + 1)}.`]
  return [limit, `These ${counted(together.length, 'group')} may run at the same time, and nothing more with them: `, ...joined(together.map(group => joined(group.map(tag => context.named(tag)), ' and ')), '; '), '.']
}

/** n over k. */
const combinations = (n: number, k: number): number => (k === 0 ? 1 : (combinations(n - 1, k - 1) * n) / k)
const inNumberWords = (n: number): string => ['no', 'one', 'two', 'three', 'four', 'five', 'six'][n] ?? String(n)
