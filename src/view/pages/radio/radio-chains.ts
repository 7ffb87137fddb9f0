/** From the transmitter to its antenna: cables, connectors, splitters, and what arrives. */
import { cite } from '../../../references/bibliography.js'
import { type ChainStep, lossOf, type RadioChain } from '../../../model/results/radio.js'
import { cableLoss, aisCableLossPreferred } from '../../../references/basis/radio-rules.js'
import { say, sayForWorking } from '../../../units/format.js'
import type { ViewContext } from '../../context.js'
import { sayOrDash } from '../../say.js'
import { tableOf } from '../../tables.js'
import { joined, lineBreak, muted, verdict } from '../../text.js'
import type { Block, Inline, Text } from '../../view-model.js'
import { workingOf } from '../../working.js'

export function chainBlocks(context: ViewContext): readonly Block[] {
  const { chains } = context.results.radio
  const heading: Block = { is: 'heading', text: 'From the transmitter to the antenna', anchor: 'losses' }
  if (chains.length === 0) return [heading, { is: 'paragraph', text: ['No transmitter is recorded.'] }]
  return [
    heading,
    { is: 'paragraph', text: ['Cable, connectors and splitters take away from what is sent and from what is received alike. 3 dB are half of the power, and the range to the horizon changes little by it; weak and distant stations are lost first.'] },
    tableOf(chains, {
      id: 'radio-losses',
      caption: 'Power at the antenna',
      empty: '',
      level: ({ comparison, coversFrequency }) => (coversFrequency === false ? 'error' : comparison?.within === false ? 'warning' : null),
      columns: [
        { title: 'Transmitter', width: 'text', cell: ({ itemTag, service }) => [...context.named(itemTag), lineBreak, muted(service)] },
        { title: 'Sends', width: 'number', cell: ({ powerW, frequencyMHz }) => [sayForWorking('powerW', powerW), lineBreak, muted(sayForWorking('frequencyMHz', frequencyMHz))] },
        { title: 'Lost', width: 'short', cell: chain => lossText(chain) },
        { title: 'At the antenna', width: 'number', cell: ({ power }) => (power.status === 'computed' ? [sayForWorking('antennaPowerW', power.output.antennaPowerW, 'result')] : [muted('not assessed')]) },
        { title: 'Antenna', width: 'text', cell: chain => antennaText(context, chain) },
      ],
      note: [
        `Lost: at most ${say('lossDb', cableLoss.value)} (${cite(cableLoss.citation)}); of AIS ${say('lossDb', aisCableLossPreferred.value)} preferred. Distress beacons send in distress only and are left out.`,
      ],
    }),
    ...sharedBlocks(context),
    ...chains.filter(({ steps }) => steps.length > 0).flatMap(chain => wayBlocks(context, chain)),
  ]
}

const lossText = ({ lossDb, comparison }: RadioChain): Text => (lossDb === null ? [muted('not assessed')]
  : [`${say('lossDb', lossDb)} `, comparison === null ? '' : verdict(comparison.within ? 'good' : 'warning', comparison.within ? 'within' : 'above limit')])

function antennaText(context: ViewContext, { antennaTag, itemTag, antennaGap, coversFrequency }: RadioChain): Text {
  if (antennaTag === null) return [muted(antennaGap ?? 'not recorded')]
  const suits: Inline = coversFrequency === null ? muted('range of frequencies not recorded') : verdict(coversFrequency ? 'good' : 'error', coversFrequency ? 'made for it' : 'not made for it')
  return [...(antennaTag === itemTag ? ['built in'] : context.named(antennaTag)), lineBreak, suits]
}

/** Said of each antenna that several transmitters use. */
const sharedBlocks = (context: ViewContext): readonly Block[] => context.results.radio.antennas.filter(({ servesTags }) => servesTags.length > 1).map(({ tag, servesTags, splitterTags }): Block => ({
  is: 'paragraph',
  text: [
    ...joined(servesTags.map(context.named), ' and '), ' use one antenna, ', ...context.named(tag),
    ...(splitterTags.length === 0 ? [', and no splitter is recorded between them.']
      : [', through ', ...joined(splitterTags.map(context.named)), '. Between the two no distance is needed; what the splitter takes counts as loss.']),
  ],
}))

function wayBlocks(context: ViewContext, chain: RadioChain): readonly Block[] {
  const { itemTag, service, antennaTag, steps, lossDb, power, radiated } = chain
  const title = `${service} of ${itemTag}`
  return [
    tableOf(steps, {
      id: `radio-way-${itemTag}-${antennaTag}-${service}`.toLowerCase().replace(/[^a-z0-9]+/g, '-'),
      caption: `${title} to ${antennaTag}, step by step`,
      empty: '',
      columns: [
        { title: 'Step', width: 'text', cell: step => stepText(context, step) },
        { title: 'Length', width: 'number', cell: step => sayOrDash('cableLengthM', step.is === 'cable' && step.loss.status === 'computed' ? step.loss.input.cableLengthM : null, context.vessel) },
        { title: 'Connectors', width: 'number', cell: step => [step.is === 'cable' && step.loss.status === 'computed' ? String(step.loss.input.connectorCount) : '–'] },
        { title: 'Loss', width: 'number', cell: step => (lossOf(step) === null ? [muted('not assessed')] : [say('lossDb', lossOf(step)!)]) },
      ],
      note: lossDb === null ? [] : [`Sum ${sayForWorking('lossDb', lossDb, 'result')}.`],
    }),
    ...steps.flatMap((step): readonly Block[] => (step.is === 'ports' ? [] : [
      ...(step.attenuation.status === 'computed' ? [workingOf(context, `Attenuation of ${step.cableTag}`, step.attenuation)] : []),
      workingOf(context, `Loss of ${step.cableTag}`, step.loss, { remarks: step.attenuation.status === 'stated' ? [{ label: 'attenuation', text: 'as its maker states it at this frequency' }] : [] }),
    ])),
    workingOf(context, `Power at the antenna, ${title}`, power),
    workingOf(context, `Radiated power, ${title}`, radiated),
  ]
}

const stepText = ({ named }: ViewContext, step: ChainStep): Text =>
  (step.is === 'cable' ? named(step.cableTag) : [...named(step.itemTag), muted(` ${step.fromTerminal} to ${step.toTerminal}`)])
